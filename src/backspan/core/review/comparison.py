"""The same support under every counterweight rule at hand, largest counterweight first.

A factor alone says little: what it multiplies changes the answer more. Both are shown, with
the mark of how far each value was verified.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from backspan.core.findings import ComparisonRow, DoesNotApply, InputUsed, Message, Need
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
from backspan.core.rules.shape import BeamWeight, FactorOnLoad, LoadBasis, RuleSet, RuleValue

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


def _rows(case: Case, subject: BeamSubject, library: RuleLibrary) -> list[ComparisonRow]:
    """One row a rule, each at the corner where the counterweight falls shortest under it."""
    compared = tuple(_readings(case, library))
    rules = [one.content for one, _ in compared]
    bases = {rule.load for rule in rules if isinstance(rule, FactorOnLoad)}

    def work(at: Case) -> tuple[list[ComparisonRow], list[InputUsed]]:
        beam = Inputs(at)
        built = beam_as_built.read(beam, subject)
        # What is not stated is told of each rule by itself; beam and loads are read once for all.
        loads = {basis: _load(at, subject, basis, beam.not_stated) for basis in bases}
        rows, used = [], list(beam.used)
        for one, judged in compared:
            rule = one.content
            if isinstance(rule, FactorOnLoad):
                load, read = loads[rule.load]
                inputs = Inputs(at, not_stated=list(read.not_stated))
                needed = _needed(inputs, subject, rule, built, load)
                absent = _names([need.what for need in inputs.not_stated])
                rows.append(
                    _row(
                        subject,
                        built,
                        one,
                        of_load=load,
                        needed=needed,
                        absent=absent,
                        in_basis=judged,
                    )
                )
                used += (*read.used, *inputs.used)
            else:
                reason = Message("compare.no-number")
                rows.append(ComparisonRow(subject.name, one, judged, reason=reason))
        return rows, used

    results = results_at_corners(case, work)
    if results is None:
        reason = Message("compare.too-much-doubt")
        return [ComparisonRow(subject.name, one, judged, reason=reason) for one, judged in compared]
    return [
        min(rows, key=_falls_shortest) for rows in zip(*(one.found for one in results), strict=True)
    ]


def _readings(case: Case, library: RuleLibrary) -> Iterator[tuple[SelectedValue, bool]]:
    """Every rule value and reading that is compared, and whether the basis judges by it."""
    in_basis = {(one.rule_set.id, one.rule_set.edition): one for one in case.rules}
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


def _falls_shortest(row: ComparisonRow) -> tuple[bool, bool, float]:
    """A row that cannot be worked out comes first, then what is not enough, then what asks most."""
    most = 0.0 if row.required is None else -row.required.value
    return (row.required is not None, row.enough is not False, most)


def _load(
    at: Case, subject: BeamSubject, basis: LoadBasis, lacking: Sequence[Need]
) -> tuple[float | None, Inputs]:
    """A load at a corner, with what was read for it and what is lacking of it and of the beam."""
    inputs = Inputs(at, not_stated=list(lacking))
    return LoadReader(inputs, subject.point, subject.place[:-1]).read(basis).load, inputs


def _row(
    subject: BeamSubject,
    built: AsBuilt,
    value: SelectedValue,
    *,
    of_load: float | None,
    needed: float | None,
    absent: tuple[str, ...],
    in_basis: bool,
) -> ComparisonRow:
    load = None if of_load is None else Amount(of_load, FORCE)
    if needed is None:
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
