"""Measure how long the main jobs take, each beside its aim: `make bench`.

Medians of several runs. Absolute times depend on the machine; the ratio to the frame solvers is
taken in the same run, so it holds when the machine's speed drifts. Nothing here is a test: no
time makes it fail, only a benchmark that cannot run. With `--write` the table also replaces the
last result in docs/benchmarks.md.
"""

from __future__ import annotations

import argparse
import datetime
import itertools
import math
import os
import platform
import statistics
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path

from backspan.core.ledger.document import at, put
from backspan.core.ledger.entry import Entry
from backspan.core.mechanics.tipping import required_moment
from backspan.core.model.project import Project
from backspan.core.review import review, review_findings
from backspan.core.review.envelope import envelopes
from backspan.core.review.front import front_data
from backspan.core.review.report import formula_descriptions, review_data
from backspan.core.review.run import case_of, with_margins
from backspan.core.rules.selected import RuleLibrary
from backspan.core.sheet.case import Case
from backspan.core.sheet.kept import Kept
from backspan.core.wire import from_changed, to_data
from backspan.drawings import (
    drop_section,
    envelope_picture,
    plan_figure,
    roof_plan,
    section_figure,
    to_svg,
)
from backspan.exchange.files import load, load_rule_library
from backspan.papers import DropDrawings, drop_content, package_content, paper_pdf
from benchmarks.frame_solvers import anastruct_beam, pynite_beam
from benchmarks.ledger import MANY, folded, history, kept_by_four, kept_in_batches, one_sync
from benchmarks.pages import pages_and_slider
from benchmarks.roof_plan import under_a_hand
from tests.postgres_server import running_server

ROOT = Path(__file__).resolve().parent.parent
PAGE = ROOT / "docs" / "benchmarks.md"
HEADING = "## Last result\n"
DEMO = ROOT / "examples" / "demo" / "site.yaml"
ON = datetime.date(2026, 11, 25)
DROP = "S1"
TWO_RULE_SETS, FROM_STACK = "N1", "S2"


@dataclass(frozen=True)
class Row:
    """One measured figure as it is printed, beside its aim; no aim where it is for comparison."""

    what: str
    measured: str
    aim: str = ""


def timed(what: str, seconds: float, aim: str = "") -> Row:
    """A row with a time in the unit that suits it."""
    for unit, factor in (("us", 1e6), ("ms", 1e3)):
        if seconds * factor < 1000:
            return Row(what, f"{seconds * factor:.3g} {unit}", aim)
    return Row(what, f"{seconds:.3g} s", aim)


def median_of(work: Callable[[], object], *, runs: int, each: int = 1) -> float:
    """Median seconds of one call, over `runs` timings of `each` calls after one warm-up."""
    work()
    timings = []
    for _ in range(runs):
        start = time.perf_counter()
        for _ in range(each):
            work()
        timings.append((time.perf_counter() - start) / each)
    return statistics.median(timings)


def process(*arguments: str, status: int) -> Callable[[], object]:
    """A run of the command as a whole process; another exit status is an error."""

    def work() -> None:
        done = subprocess.run(
            [sys.executable, "-m", "backspan.cli", *arguments],
            capture_output=True,
            check=False,
            cwd=ROOT,
        )
        if done.returncode != status:
            raise RuntimeError(f"backspan {' '.join(arguments)} ended with {done.returncode}")

    return work


def formulas(anew: Callable[[], Case]) -> list[Row]:
    """A formula with its record, and a drop's findings, beside the frame solvers, in one run."""
    recorded = median_of(
        lambda: required_moment(factor=4.0, load=4448.0, reach=1.2), runs=15, each=20_000
    )
    solvers = {"anastruct": anastruct_beam(), "PyNite": pynite_beam()}
    times = {name: median_of(work, runs=9, each=5) for name, work in solvers.items()}
    fastest = min(times.values())
    findings = median_of(lambda: review_findings(anew()), runs=9, each=5)
    ratio = f"{fastest / recorded:,.0f} x"
    return [
        timed("a formula with its record", recorded, "at most 5 us"),
        *(timed(f"overhanging beam in {name}", took) for name, took in times.items()),
        Row("the faster solver, over the formula", ratio, "at least 100 x"),
        timed("findings of one drop, in the same run", findings),
    ]


def reviews(project: Project, library: RuleLibrary) -> list[Row]:
    """Findings of drops, with margins and envelope, and the whole review with comparison."""

    def found(drop: str, *, left: bool) -> float:
        def work() -> object:
            case = case_of(project, drop, library, on=ON)
            findings = review_findings(case).findings
            return (with_margins(case, findings), envelopes(case)) if left else findings

        return median_of(work, runs=15, each=5)

    rows = [timed("findings of one drop", found(DROP, left=False), "under 12 ms")]
    rows += [
        timed(f"the same, after {what}", findings_after(project, library, *places), "under 12 ms")
        for what, *places in (
            ("a word was stated", "tiebacks", "TB-L", "found"),
            ("a beam was moved", "counterweighted_beam", "reach"),
        )
    ]
    rows += [
        timed(f"{what}, margins and envelope", found(drop, left=True), aim)
        for what, drop, aim in (
            ("the same", DROP, "under 10 ms"),
            ("a drop under two rule sets", TWO_RULE_SETS, ""),
            ("a backspan from the stack", FROM_STACK, ""),
        )
    ]
    whole = median_of(lambda: review(project, DROP, library, on=ON), runs=15, each=5)
    return [*rows, timed("the whole review of one drop, with comparison", whole)]


def findings_after(project: Project, library: RuleLibrary, *field: str) -> float:
    """Findings of a drop that differs from the one before in one field, answers kept of that."""
    data = to_data(project)
    place = ("drops", DROP, "rig", "suspension_points", "L", *field)
    stated = at(data, place)
    value = stated["value"] + 0.01 if isinstance(stated["value"], float) else "defective"
    changed = put(data, place, {**stated, "value": value, "text": ""})
    other = from_changed(Project, changed, data, project)
    sites, kept = itertools.cycle((project, other)), Kept()

    def work() -> object:
        return review_findings(case_of(next(sites), DROP, library, on=ON, kept=kept))

    return median_of(work, runs=15, each=10)


def package(project: Project, library: RuleLibrary) -> list[Row]:
    """The papers of one drop, drawings included, warm."""
    descriptions = formula_descriptions()
    done = review(project, DROP, library, on=ON)

    def work() -> tuple[bytes, bytes]:
        to_svg(roof_plan(project, {DROP: done}, "MAIN"))
        sheet = to_svg(drop_section(project, DROP, done))
        section = to_svg(section_figure(project, DROP, done))
        near = to_svg(plan_figure(project, DROP, done))
        envelopes = [to_svg(envelope_picture(one, project.units)) for one in done.envelopes]
        drawings = DropDrawings(section, near, sheet, tuple(envelopes))
        data = review_data(done, formulas=descriptions)
        front = package_content(project, [front_data(done)], [], {DROP: "drop.pdf"})
        paper = drop_content(project, data, drawings)
        return paper_pdf(front, issued=ON), paper_pdf(paper, issued=ON)

    return [timed("papers of one drop, with its drawings", median_of(work, runs=7), "under 0.3 s")]


def processes() -> list[Row]:
    """Whole processes, as a person waits for them."""
    with tempfile.TemporaryDirectory() as folder:
        out = str(Path(folder) / "out")
        return [
            timed("backspan --help", median_of(process("--help", status=0), runs=7), "under 0.4 s"),
            timed(
                "review of the demo, without papers",
                median_of(process("review", str(DEMO), status=10), runs=7),
                "under 1 s",
            ),
            timed(
                "review of the demo, with papers and drawings",
                median_of(process("review", str(DEMO), "--out", out, status=10), runs=3),
            ),
        ]


def ledger(project: Project) -> list[Row]:
    """Ten thousand entries kept and folded, four writers at once, the disk's own rate beside."""
    entries = history(project, MANY)
    fold_time, one_more = folded(entries)
    with tempfile.TemporaryDirectory() as name, running_server(fsync=True) as server:
        folder = Path(name)
        file = kept(entries, "", folder / "batches.sqlite", folder / "four.sqlite")
        database = kept(entries, " (PostgreSQL)", server.database(), server.database())
        sync = one_sync(folder)
    return [
        *file,
        *database,
        timed("the disk alone, one write and sync", sync),
        timed("10,000 entries folded", fold_time, "under 2 s"),
        timed("one entry more", one_more, "under 20 ms"),
    ]


def kept(entries: Sequence[Entry], what: str, batches: str | Path, four: str | Path) -> list[Row]:
    """Entries kept in batches in one place, and one by one by four writers in another."""
    in_batches = kept_in_batches(entries, batches)
    times = sorted(kept_by_four(four))
    slow = times[len(times) * 99 // 100]
    return [
        timed(f"10,000 entries, 100 a commit{what}", in_batches, "under 20 s"),
        timed(f"four writers, one entry, 99 %{what}", slow, "under 0.1 s"),
        timed(f"the same, middle{what}", statistics.median(times)),
    ]


def _slow(times: Sequence[float]) -> float:
    """What 95 of 100 of them do not exceed: of twenty, the second largest."""
    return sorted(times)[math.ceil(len(times) * 95 / 100) - 1]


def workbench() -> list[Row]:
    """Pages of the demo and a slider's answer, in a real browser."""
    with tempfile.TemporaryDirectory() as name:
        pages, slider = pages_and_slider(Path(name) / "demo")
    every = [one for times in pages.values() for one in times]
    slowest, path = max((_slow(times), path) for path, times in pages.items())
    return [
        timed(f"a page of the demo, any of {len(pages)}, 95 of 100", _slow(every), "under 0.15 s"),
        timed("the same, middle", statistics.median(every)),
        timed(f"the slowest, {path.partition('?')[0]}", slowest, "under 0.15 s"),
        timed("a slider's answer, 95 of 100", _slow(slider), "under 0.1 s"),
        timed("the same, middle", statistics.median(slider)),
    ]


def plan_under_a_hand() -> list[Row]:
    """The roof plan on a roof larger than any, in a real browser."""
    with tempfile.TemporaryDirectory() as name:
        frames, paints, answers = under_a_hand(Path(name) / "large")
    slow, late = _slow(frames), _slow(answers)
    return [
        timed("a frame of the moved plan, 95 of 100", slow, "under 33.3 ms"),
        timed("its first paint", statistics.median(paints), "under 1 s"),
        timed("a moved beam's answer, 95 of 100", late, "under 0.15 s"),
        timed("the same, middle", statistics.median(answers)),
    ]


def table() -> str:
    """Everything measured, under a line that names the machine and the day."""
    project, library = load(DEMO), load_rule_library()
    day = datetime.datetime.now(tz=datetime.UTC).date()
    machine = f"{platform.system()} {platform.machine()}, {os.cpu_count()} cores"
    rows = [
        *formulas(lambda: case_of(project, DROP, library, on=ON)),
        *reviews(project, library),
        *package(project, library),
        *ledger(project),
        *workbench(),
        *plan_under_a_hand(),
        *processes(),
    ]
    lines = [f"{row.what:48}{row.measured:>10}   {row.aim}".rstrip() for row in rows]
    return "\n".join([f"{day}, Python {platform.python_version()}, {machine}", "", *lines, ""])


def main() -> None:
    """Print the table; write it into the page where that is asked."""
    parser = argparse.ArgumentParser(description="Measure how long the main jobs take.")
    parser.add_argument("--write", action="store_true", help=f"also write it into {PAGE.name}")
    writing = parser.parse_args().write
    measured = table()
    print(measured, end="")
    if writing:
        kept, _, _ = PAGE.read_text(encoding="utf-8").partition(HEADING)
        text = f"{kept}{HEADING}\n```text\n{measured}```\n"
        PAGE.write_text(text, encoding="utf-8", newline="\n")


if __name__ == "__main__":
    main()
