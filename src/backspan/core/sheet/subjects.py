"""Which suspension points a check looks at, and the reason where there is nothing to judge."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from backspan.core.findings import DoesNotApply, Message
from backspan.core.model.rigs import CounterweightedBeam, SuspensionPoint
from backspan.core.rules.selected import SelectedRules, SelectedValue
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.limits import needed_value


@dataclass(frozen=True, slots=True)
class BeamSubject:
    """A suspension point on a counterweighted beam."""

    point: SuspensionPoint
    support: CounterweightedBeam
    name: str
    place: Place


def counterweighted(case: Case, check: str) -> Iterator[BeamSubject | DoesNotApply]:
    """The suspension points held by counterweight; the others with the reason they are not."""
    if not case.points:
        yield DoesNotApply(check, case.subject, case.place, Message("na.no-suspension-point"))
    for point in case.points:
        name, place = case.name_of(point), case.place_of(point)
        if point.counterweighted_beam is None:
            yield DoesNotApply(check, name, place, Message("na.no-counterweight"))
        else:
            yield BeamSubject(
                point, point.counterweighted_beam, name, (*place, "counterweighted_beam")
            )


@dataclass(frozen=True, slots=True)
class RuledSubject:
    """A subject and the one rule value it is held against."""

    beam: BeamSubject
    rules: SelectedRules
    value: SelectedValue


def under_value(case: Case, check: str, key: str) -> Iterator[RuledSubject | DoesNotApply]:
    """Each counterweighted beam under each rule set of the basis that has the value `key`.

    Where no rule set of the basis has it, one reason is given for each beam.
    """
    having = in_force(case, key)
    for beam in counterweighted(case, check):
        if isinstance(beam, DoesNotApply):
            yield beam
        elif not having:
            yield DoesNotApply(check, beam.name, beam.place, no_rule(case, key))
        else:
            for rules, value in having:
                yield RuledSubject(beam, rules, value)


def in_force(case: Case, key: str) -> tuple[tuple[SelectedRules, SelectedValue], ...]:
    """Each rule set of the basis that has the value `key`, with the value."""
    return tuple(
        (rules, value) for rules in case.under(key) if (value := rules.find(key)) is not None
    )


def in_force_or_practice(case: Case, key: str) -> tuple[SelectedValue, ...]:
    """The value under each rule set of the basis that has it; the trade's own where none has.

    RuleError where the trade practice lacks it too.
    """
    having = tuple(value for _, value in in_force(case, key))
    return having or (needed_value(case.practice, key),)


def in_order(names: Iterable[str]) -> tuple[str, ...]:
    """Names without repeats, in an order that does not depend on how they were written down."""
    return tuple(sorted(set(names)))


def no_rule(case: Case, key: str) -> Message:
    """Why nothing is held against a value: no rule set of the basis has it."""
    names = tuple(rules.rule_set.id for rules in case.under(key))
    return Message("na.no-rule", (("value", key), ("rule_sets", names)))
