"""Deep searches in rounds that can be interrupted: `make soak PART=laws`.

A part is a module of tests/soak with `ROUNDS` and `one_round(number)`, which returns counts or
raises AssertionError with the counterexample. Finished rounds are kept in .soak/ for the commit
they ran on, so that a stopped run goes on where it was. A finished part writes its result, the
day and the commit to docs/evidence.
"""

from __future__ import annotations

import argparse
import datetime
import importlib
import json
import subprocess
import sys
import time
from collections import Counter
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parent.parent
KEPT = ROOT / ".soak"
EVIDENCE = ROOT / "docs" / "evidence"


def parts() -> tuple[str, ...]:
    """The names of the parts there are."""
    return tuple(sorted(one.stem for one in (ROOT / "tests" / "soak").glob("*.py")))


def commit() -> str:
    """The commit the tree is at; a tree with changes says so."""

    def git(*arguments: str) -> str:
        command = ("git", *arguments)
        return subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=True).stdout

    changed = git("status", "--porcelain", "--", "src", "tests").strip()
    return git("rev-parse", "--short=12", "HEAD").strip() + (" with changes" if changed else "")


def run(part: str, *, again: bool) -> int:
    """Run what is left of a part; the exit status."""
    module = importlib.import_module(f"tests.soak.{part}")
    kept, at = KEPT / f"{part}.json", commit()
    state = json.loads(kept.read_text(encoding="utf-8")) if kept.exists() and not again else {}
    if state.get("commit") != at or at.endswith("changes"):
        state = {"commit": at, "done": 0, "counts": {}, "seconds": 0.0}
    KEPT.mkdir(exist_ok=True)
    while state["done"] < module.ROUNDS:
        began = time.monotonic()
        try:
            found = module.one_round(state["done"])
        except AssertionError as error:
            print(f"{part}: round {state['done']} found a counterexample\n{error}", file=sys.stderr)
            return 1
        state["counts"] = dict(Counter(state["counts"]) + Counter(found))
        state["done"] += 1
        state["seconds"] += time.monotonic() - began
        kept.write_text(json.dumps(state), encoding="utf-8")
        print(f"{part}: round {state['done']} of {module.ROUNDS}, {found}", flush=True)
    EVIDENCE.mkdir(exist_ok=True)
    (EVIDENCE / f"soak-{part}.md").write_text(page(part, module.__doc__, state), encoding="utf-8")
    return 0


def page(part: str, about: str | None, state: dict[str, Any]) -> str:
    """The result of a part as a page."""
    today = datetime.datetime.now(tz=datetime.UTC).date()
    counts = state["counts"]
    lines = "\n".join(f"| {name} | {number:,} |" for name, number in sorted(counts.items()))
    return (
        f"# Deep search: {part}\n\n{(about or '').strip()}\n\n"
        f"Run on {today} at commit {state['commit']}, {state['done']} rounds, "
        f"{state['seconds']:.0f} s. No counterexample.\n\n"
        f"| counted | number |\n|---|---:|\n{lines}\n"
    )


def main() -> None:
    """Read the command line and run a part."""
    parser = argparse.ArgumentParser(description=(__doc__ or "").splitlines()[0])
    parser.add_argument("part", choices=parts())
    parser.add_argument("--again", action="store_true", help="begin at the first round")
    asked = parser.parse_args()
    sys.path.insert(0, str(ROOT))
    raise SystemExit(run(asked.part, again=asked.again))


if __name__ == "__main__":
    main()
