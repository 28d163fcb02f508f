"""Open the invented demo building on the workbench: `make serve`.

The demo's project file is of one day. Its dates are moved so that this day is today, or all that
was seen would be too old to count. Some drops are taken into service, one is stopped, one
deficiency is open: all of it invented.
"""

from __future__ import annotations

import datetime
import re
import sys
from collections.abc import Iterator
from pathlib import Path

from backspan.cli import main as backspan
from backspan.core.findings import Verdict
from backspan.core.ledger import bodies
from backspan.core.ledger.answers import answer_of, papers_of
from backspan.core.ledger.described import entries_of
from backspan.core.ledger.entry import Signer
from backspan.core.ledger.fold import fold
from backspan.core.ledger.happenings import lines_of
from backspan.core.ledger.kinds import Body
from backspan.core.model.project import Project
from backspan.core.review import review
from backspan.core.rules.selected import RuleLibrary
from backspan.core.wire import configuration_code
from backspan.exchange.files import load_rule_library
from backspan.exchange.parse import parse_project
from backspan.records.api import SiteRecord, make_record
from backspan.records.store import Statement

ROOT = Path(__file__).resolve().parent.parent
DEMO = ROOT / "examples" / "demo" / "site.yaml"
#: The day that the demo's file is of.
ITS_DAY = datetime.date(2026, 11, 25)
_DATE = re.compile(r"\b\d{4}-\d{2}-\d{2}\b")


def demo_of(day: datetime.date, library: RuleLibrary) -> Project:
    """The demo with its dates moved, so that its day is another one.

    The dates of anchors are part of what is accepted: papers that name a configuration name the
    new one.
    """

    def later(found: re.Match[str]) -> str:
        return (datetime.date.fromisoformat(found[0]) + (day - ITS_DAY)).isoformat()

    text = DEMO.read_text("utf-8")
    then, moved = parse_project(text, str(DEMO), library), _DATE.sub(later, text)
    now = parse_project(moved, str(DEMO), library)
    for old, new in zip(then.drops, now.drops, strict=True):
        moved = moved.replace(configuration_code(then, old), configuration_code(now, new))
    return parse_project(moved, str(DEMO), library)


def filled(folder: Path, now: datetime.datetime) -> None:
    """Make the record of the demo as of a time, where it is not there yet."""
    library = load_rule_library()
    project = demo_of(now.date(), library)
    with make_record(folder, project.site.name) as record:
        if not record.entries():
            _say(record, project, entries_of(project), now)
            for several in _scenario(record, project, library, now.date()):
                _say(record, project, several, now)


def _say(
    record: SiteRecord, project: Project, said: Iterator[Body], now: datetime.datetime
) -> None:
    one = next(one for one in project.people if one.role == "owner's engineer")
    signer = Signer(one.id, one.name, one.role, one.employer, one.card)
    at = now.isoformat(timespec="seconds")
    record.say([Statement(body, signer) for body in said], at=at)


def _scenario(
    record: SiteRecord, project: Project, library: RuleLibrary, on: datetime.date
) -> Iterator[Iterator[Body]]:
    """What happens that day, step by step."""
    drops = [one.id for one in project.drops]
    found = {one: review(project, one, library, on=on, compared=False) for one in drops}
    passing = [name for name, one in found.items() if one.verdict is Verdict.PASS]
    second = next(one.id for one in project.people if one.role == "competent person")
    for name in passing:
        rig = fold(record.entries()).rig(name)
        yield (bodies.LineConnected(name, line, second) for line in lines_of(rig))
        codes = fold(record.entries()).codes(name)
        if codes is not None:
            answer, papers = answer_of(found[name]), papers_of(found[name])
            yield iter([bodies.UsePermitted(name, *codes, answer, papers)])
    first, *others = passing
    yield iter([bodies.ShiftChecked(first, on.isoformat(), fit=True)])
    if others:
        yield iter([bodies.UseStopped((others[-1],), "a noise at the hoist on the way up")])
    failing = next(name for name, one in found.items() if one.verdict is Verdict.FAIL)
    says = "pin of the stack not locked"
    yield iter([bodies.DeficiencyRaised("DEMO-1", (failing,), "stack R", says, forbids_use=True)])


def main() -> int:
    """Make the record of today and serve it."""
    now = datetime.datetime.now().astimezone()
    folder = ROOT / "out" / f"workbench-{now.date()}"
    folder.parent.mkdir(exist_ok=True)
    filled(folder, now)
    return backspan(["serve", str(folder), *sys.argv[1:]])


if __name__ == "__main__":
    raise SystemExit(main())
