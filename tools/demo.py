"""Review the invented demo site as a user would, and check that everything promised is there."""

from __future__ import annotations

import json
import subprocess
import sys
import time
from pathlib import Path

from backspan.exchange.output_set import set_in_force

ROOT = Path(__file__).resolve().parent.parent
SITE = Path("examples") / "demo" / "site.yaml"
OUT = Path("out")

#: The day on which the story of the demo site is told.
DAY = "2026-11-25"
#: Exit status of a review in which a drop fails; the demo has such drops on purpose.
REFUSED = 10
#: Seconds by which a file system may round the time of a file.
CLOCK_SLACK = 2.0
ANSWERS = {"pass", "fail", "refer", "missing"}


def main() -> int:
    """Run the review, check its results, say where to look; 0 when all is well."""
    # The command is started as a user starts it, so its own import time and exit status count.
    # The day is that of the story: letters end, and what was seen on the roof grows old.
    review = ["review", str(SITE), "--on", DAY, "--out", str(OUT)]
    command = [sys.executable, "-m", "backspan.cli", *review]
    started = time.time()
    done = subprocess.run(command, cwd=ROOT, check=False)
    if done.returncode != REFUSED:
        return _stop(f"the review ended with status {done.returncode}, expected {REFUSED}")
    name = set_in_force(ROOT / OUT)
    if name is None:
        return _stop(f"no set of papers was written to {OUT}")
    problem = _problem(ROOT / OUT / name, started - CLOCK_SLACK)
    if problem is not None:
        return _stop(problem)
    print(f"The demo site is invented, and some of its drops are refused on purpose: see {OUT}/.")
    print(f"Begin with {OUT}/{name}/package.pdf.")
    print(f"{SITE.parent}/README.md tells the story of each drop.")
    print("The same building on the workbench, on this machine alone: make serve")
    return 0


def _problem(folder: Path, since: float) -> str | None:
    """What is wrong with the results; None when nothing is."""
    report = folder / "review.json"
    if not _is_new(report, since):
        return f"{report.name} was not written"
    reviews = json.loads(report.read_text(encoding="utf-8"))["reviews"]
    answers = {review["verdict"] for review in reviews}
    if answers != ANSWERS:
        return f"the demo shows {', '.join(sorted(answers))}, expected all four answers"
    absent = [name for name in _promised(reviews) if not _is_new(folder / name, since)]
    return f"not written anew or empty: {', '.join(absent)}" if absent else None


def _promised(reviews: list[dict[str, object]]) -> list[str]:
    """The files a review of these drops writes."""
    names = ["package.pdf"]
    for review in reviews:
        drop = review["drop"]
        names.append(f"drop-{drop}.pdf")
        names += [
            f"{one}-{drop}.{kind}" for one in ("section", "details") for kind in ("svg", "dxf")
        ]
    return [*names, "roof-MAIN.svg", "roof-MAIN.dxf", "roof-TERRACE.svg", "roof-TERRACE.dxf"]


def _is_new(path: Path, since: float) -> bool:
    """Whether a file has content and is of this run, not left over from an earlier one."""
    return path.is_file() and path.stat().st_size > 0 and path.stat().st_mtime >= since


def _stop(reason: str) -> int:
    print(f"demo: {reason}", file=sys.stderr)
    return 1


if __name__ == "__main__":
    sys.exit(main())
