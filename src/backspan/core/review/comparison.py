"""The same support under every counterweight rule at hand, largest counterweight first.

A factor alone says little: what it multiplies changes the answer more. Both are shown, with
the mark of how far each value was verified.

The counterweight a rule asks for is W = (k P a - G x_G) / b, which grows without end as the
backspan b goes to nothing and changes its sign there: beyond, no counterweight holds, and a number
would be read as if one did. So there is none.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.findings import ComparisonRow, DoesNotApply, Message
from backspan.core.mechanics.constants import STANDARD_GRAVITY
from backspan.core.mechanics.tipping import (
    pieces_in_weight,
    required_counterweight,
    required_counterweight_with_beam,
    required_moment,
    weight,
)
from backspan.core.numbers import at_least, whole_up
from backspan.core.quantities import FORCE, MASS, Amount
from backspan.core.review.basis import confirmations
from backspan.core.rules.selected import RuleLibrary, SelectedRules, SelectedValue
from backspan.core.rules.shape import BeamWeight, FactorOnLoad, RuleSet, RuleValue
from backspan.core.sheet.beam_as_built import OwnWeight, as_built, own_weight, weight_outboard
from backspan.core.sheet.case import Case
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.load_on_line import load_on_line
from backspan.core.sheet.moments import TOPIC, SupportReads, support_reads
from backspan.core.sheet.question import Asked, Question
from backspan.core.sheet.sheet import Sheet
from backspan.core.sheet.subjects import BeamSubject, counterweighted

COMPARED = "comparison"


def compare(case: Case, library: RuleLibrary) -> tuple[ComparisonRow, ...]:
    """One row for each beam, rule value and reading; rows without a number come last."""
    rows: list[ComparisonRow] = []
    for subject in counterweighted(case, COMPARED):
        if not isinstance(subject, DoesNotApply):
            rows += sorted(_rows(case, subject, library), key=_order)
    return tuple(rows)


def _order(row: ComparisonRow) -> tuple[float, str, str, str]:
    size = 1.0 if row.required is None else -row.required.value
    return (size, row.rule.rule_set, row.rule.key, row.rule.reading)


@dataclass(slots=True, kw_only=True)
class Needed(Compared):
    """The weight of counterweight a rule asks for against what is there, in SI."""

    load: float
    piece_mass: float


def needed(sheet: Sheet, one: Asked[SupportReads]) -> Iterator[Needed]:
    """What the rule asks for at the backspan as built, never below none."""
    support, (value,) = one.subject, one.values
    rule = value.content
    if not isinstance(rule, FactorOnLoad):
        return
    built = as_built(sheet, support.beam)
    backspan = sheet.positive("backspan", built.backspan)
    load = load_on_line(sheet, support.line, rule.load)
    required = sheet.do(required_moment, factor=rule.factor, load=load, reach=built.reach)
    if rule.beam_weight is BeamWeight.CREDITED:
        own: OwnWeight | None = own_weight(sheet, support.beam, built.reach)
    else:
        own = weight_outboard(sheet, support.beam, built)
    groups = support.beam.groups
    yield Needed(
        _counterweight(sheet, required, backspan, own),
        built.counterweight,
        load=load,
        piece_mass=sheet.read(groups[-1].mass) if groups else 0.0,
    )


def _counterweight(sheet: Sheet, required: float, backspan: float, own: OwnWeight | None) -> float:
    if own is None:
        return sheet.do(required_counterweight, required=required, backspan=backspan)
    asked_for = sheet.do(
        required_counterweight_with_beam,
        required=required,
        backspan=backspan,
        beam_weight=own.weight,
        beam_centroid_inboard=own.centroid_inboard,
    )
    return at_least(asked_for, least=0.0)


QUESTION = Question(COMPARED, COMPARED, FORCE, needed)


def _rows(case: Case, subject: BeamSubject, library: RuleLibrary) -> Iterator[ComparisonRow]:
    """One row a rule, each at the corner where the counterweight falls shortest under it."""
    support = support_reads(case, subject)
    for value, in_basis in _readings(case, library):
        if isinstance(value.content, FactorOnLoad):
            one = Asked(support, subject.name, subject.place, (value,))
            yield _row(case, one, in_basis=in_basis)
        else:
            reason = Message("compare.no-number")
            yield ComparisonRow(subject.name, value, in_basis, reason=reason)


def _readings(case: Case, library: RuleLibrary) -> Iterator[tuple[SelectedValue, bool]]:
    """Every rule value and reading that is compared, and whether the basis judges by it."""
    in_basis = {(one.rule_set.id, one.rule_set.edition): one for one in case.under(TOPIC)}
    for rule_set in library.rule_sets:
        key = (rule_set.id, rule_set.edition)
        rules = in_basis.get(key) or SelectedRules(rule_set, {}, confirmations(case.project, *key))
        for value in _compared(rule_set):
            chosen = rules.select(value).reading
            for reading in value.readings:
                judged = key in in_basis and reading.name == chosen
                yield rules.select(value, reading.name), judged


def _compared(rule_set: RuleSet) -> tuple[RuleValue, ...]:
    """The values with a factor; where a text has none, its first remark stands for it."""
    values = rule_set.topic(TOPIC)
    factors = tuple(
        value
        for value in values
        if any(isinstance(one.content, FactorOnLoad) for one in value.readings)
    )
    return factors or values[:1]


def _row(case: Case, one: Asked[SupportReads], *, in_basis: bool) -> ComparisonRow:
    worst, (value,) = QUESTION.worst(case, one), one.values
    if worst is None:
        reason = Message("compare.too-much-doubt")
        return ComparisonRow(one.name, value, in_basis, reason=reason)
    (found,) = worst.found.branches
    load = None if math.isnan(found.load) else Amount(found.load, FORCE)
    if math.isnan(found.demand):
        lacking = tuple(read.quantity.name for read in worst.reads.values() if read.stated is None)
        reason = Message("compare.not-known", (("inputs", lacking),))
        if worst.found.outside or not lacking:
            reason = Message("compare.no-backspan")
        return ComparisonRow(one.name, value, in_basis, load, reason=reason)
    pieces = None
    if found.piece_mass > 0.0:
        each = weight(mass=found.piece_mass).value
        pieces = whole_up(pieces_in_weight(counterweight=found.demand, piece_weight=each).value)
    required = Amount(found.demand / STANDARD_GRAVITY, MASS)
    return ComparisonRow(one.name, value, in_basis, load, required, pieces, found.met)
