"""The same support under every counterweight rule at hand, largest counterweight first.

A factor alone says little: what it multiplies changes the answer more. Both are shown, with
the mark of how far each value was verified.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from backspan.core.findings import ComparisonRow, DoesNotApply, InputUsed, Message
from backspan.core.judgement import beam_as_built
from backspan.core.judgement.beam_as_built import AsBuilt
from backspan.core.judgement.case import Case
from backspan.core.judgement.corners import results_at_corners
from backspan.core.judgement.inputs import Inputs
from backspan.core.judgement.load_basis import LoadReader
from backspan.core.judgement.subjects import BeamSubject, counterweighted
from backspan.core.judgement.tipping_sums import TOPIC
from backspan.core.mechanics.constants import STANDARD_GRAVITY
from backspan.core.mechanics.tipping import (
    pieces_in_weight,
    required_counterweight,
    required_counterweight_with_beam,
    required_moment,
    weight,
)
from backspan.core.numbers import meets, whole_up
from backspan.core.quantities import FORCE, MASS, Amount
from backspan.core.review.basis import confirmations
from backspan.core.rules.selected import RuleLibrary, SelectedRules, SelectedValue
from backspan.core.rules.shape import BeamWeight, FactorOnLoad, RuleSet, RuleValue

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


def _rows(case: Case, subject: BeamSubject, library: RuleLibrary) -> Iterator[ComparisonRow]:
    in_basis = {(one.rule_set.id, one.rule_set.edition): one for one in case.rules}
    for rule_set in library.rule_sets:
        key = (rule_set.id, rule_set.edition)
        rules = in_basis.get(key) or SelectedRules(rule_set, {}, confirmations(case.project, *key))
        for value in _compared(rule_set):
            chosen = rules.select(value).reading
            for reading in value.readings:
                selected = rules.select(value, reading.name)
                judged = key in in_basis and reading.name == chosen
                if isinstance(reading.content, FactorOnLoad):
                    yield _row(case, subject, selected, reading.content, in_basis=judged)
                else:
                    reason = Message("compare.no-number")
                    yield ComparisonRow(subject.name, selected, judged, reason=reason)


def _compared(rule_set: RuleSet) -> tuple[RuleValue, ...]:
    """The values with a factor; where a text has none, its first remark stands for it."""
    values = rule_set.topic(TOPIC)
    factors = tuple(
        value
        for value in values
        if any(isinstance(one.content, FactorOnLoad) for one in value.readings)
    )
    return factors or values[:1]


def _row(
    case: Case,
    subject: BeamSubject,
    value: SelectedValue,
    rule: FactorOnLoad,
    *,
    in_basis: bool,
) -> ComparisonRow:
    """The row at the corner where the counterweight falls shortest."""

    def work(at: Case) -> tuple[ComparisonRow, list[InputUsed]]:
        inputs = Inputs(at)
        return _row_at(inputs, subject, value, rule, in_basis=in_basis), inputs.used

    rows = results_at_corners(case, work)
    if rows is None:
        reason = Message("compare.too-much-doubt")
        return ComparisonRow(subject.name, value, in_basis, reason=reason)
    return min(rows, key=_falls_shortest)


def _falls_shortest(row: ComparisonRow) -> tuple[bool, bool, float]:
    """A row that cannot be worked out comes first, then what is not enough, then what asks most."""
    most = 0.0 if row.required is None else -row.required.value
    return (row.required is not None, row.enough is not False, most)


def _row_at(
    inputs: Inputs,
    subject: BeamSubject,
    value: SelectedValue,
    rule: FactorOnLoad,
    *,
    in_basis: bool,
) -> ComparisonRow:
    built = beam_as_built.read(inputs, subject)
    basis = LoadReader(inputs, subject.point, subject.place[:-1]).read(rule.load)
    load = None if basis.load is None else Amount(basis.load, FORCE)
    needed = _needed(inputs, subject, rule, built, basis.load)
    if needed is None:
        absent = _names([need.what for need in inputs.not_stated])
        reason = Message("compare.not-known", (("inputs", absent),))
        if not absent:
            reason = Message("compare.no-backspan")
        return ComparisonRow(subject.name, value, in_basis, load, reason=reason)
    pieces = enough = None
    if built.rows and built.rows[-1].piece_mass > 0.0:
        one = weight(mass=built.rows[-1].piece_mass)
        count = pieces_in_weight(counterweight=needed, piece_weight=one.value)
        pieces = whole_up(count.value)
    if built.counterweight is not None:
        enough = meets(demand=needed, capacity=built.counterweight)
    required = Amount(needed / STANDARD_GRAVITY, MASS)
    return ComparisonRow(subject.name, value, in_basis, load, required, pieces, enough)


def _needed(
    inputs: Inputs,
    subject: BeamSubject,
    rule: FactorOnLoad,
    built: AsBuilt,
    load: float | None,
) -> float | None:
    """Weight of counterweight the rule asks for at the backspan as built, never below none."""
    if load is None or built.reach is None or built.backspan is None or built.backspan <= 0.0:
        return None
    required = required_moment(factor=rule.factor, load=load, reach=built.reach)
    credited = rule.beam_weight is BeamWeight.CREDITED
    if not credited and not beam_as_built.may_be_harmful(inputs, subject, built):
        return required_counterweight(required=required.value, backspan=built.backspan).value
    own = beam_as_built.own_weight(inputs, subject, built.reach, credited=credited)
    if own is None:
        return None
    if not credited and own.centroid_inboard >= 0.0:
        return required_counterweight(required=required.value, backspan=built.backspan).value
    needed = required_counterweight_with_beam(
        required=required.value,
        backspan=built.backspan,
        beam_weight=own.weight,
        beam_centroid_inboard=own.centroid_inboard,
    )
    return max(0.0, needed.value)


def _names(messages: Sequence[Message]) -> tuple[str, ...]:
    return tuple(
        str(value) for message in messages for name, value in message.values if name == "input"
    )
