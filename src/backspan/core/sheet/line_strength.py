"""What hangs on a suspension line, by the factors of a rule, against what one part of it carries.

Rope and connecting hardware are held against the same branches: each part of the line carries the
whole of what hangs on it.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from typing import Any

from backspan.core.findings import DoesNotApply, Message
from backspan.core.mechanics.ropes import load_to_carry
from backspan.core.model.rigs import SuspensionPoint
from backspan.core.quantities import FORCE, RATIO
from backspan.core.rules.selected import SelectedValue
from backspan.core.rules.shape import FactorOnLoad
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.decide import ENDINGS
from backspan.core.sheet.load_on_line import LineReads, load_on_line
from backspan.core.sheet.moments import factor_values
from backspan.core.sheet.question import Judged, Told
from backspan.core.sheet.sheet import Sheet
from backspan.core.sheet.subjects import no_rule

TOPIC = "line"


@dataclass(slots=True, kw_only=True)
class Carried(Compared):
    """A force asked of a part of the line against what it carries; on which load it is asked."""

    load: str


@dataclass(frozen=True, slots=True)
class RuledPoint:
    """A suspension point and, for each rule set with a factor on its line, the branches."""

    point: SuspensionPoint
    name: str
    place: Place
    having: tuple[tuple[SelectedValue, ...], ...]


def under_line_rules(case: Case, check: str) -> Iterator[RuledPoint | DoesNotApply]:
    """Each suspension point under each rule set of the basis that says what its line carries."""
    rules = case.under(TOPIC)
    having = tuple(values for one in rules if (values := factor_values(one, TOPIC)))
    if not case.points:
        yield DoesNotApply(check, case.subject, case.place, Message("na.no-suspension-point"))
    for point in case.points:
        name, place = case.name_of(point), case.place_of(point)
        if having:
            yield RuledPoint(point, name, place, having)
        else:
            yield DoesNotApply(check, name, place, no_rule(case, TOPIC))


def carried(
    sheet: Sheet, line: LineReads, values: Iterable[SelectedValue], strength: float
) -> Iterator[Carried]:
    """What each branch of the rule asks of a part of the line against its strength."""
    for value in values:
        rule = value.content
        if not isinstance(rule, FactorOnLoad):
            continue
        load = load_on_line(sheet, line, rule.load)
        required = sheet.do(load_to_carry, factor=rule.factor, load=load)
        numbers = (
            ("strength", strength, FORCE),
            ("required", required, FORCE),
            ("factor", rule.factor, RATIO),
        )
        yield Carried(required, strength, numbers=numbers, value=value, load=str(rule.load))


def told_as(says: str) -> Callable[[Judged[Any, Carried]], Told]:
    """Tells what is asked, on which load, and what a part of the line carries."""

    def tells(judged: Judged[Any, Carried]) -> Told:
        weighed = judged.weighed
        shown = weighed.shown
        values = () if shown is None else (*shown.told(), ("load", shown.load))
        return Told(Message(f"{says}.{ENDINGS[weighed.met]}", tuple(values)))

    return tells
