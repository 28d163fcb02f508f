"""The moments of one support under one rule set: every branch of the rule, and which governs."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from backspan.core.judgement import beam_as_built
from backspan.core.judgement.beam_as_built import AsBuilt, OwnWeight
from backspan.core.judgement.inputs import Inputs
from backspan.core.judgement.load_basis import BasisLoad, LoadReader
from backspan.core.judgement.subjects import BeamSubject
from backspan.core.mechanics.tipping import (
    required_moment,
    resisting_moment,
    resisting_moment_with_beam,
)
from backspan.core.numbers import meets
from backspan.core.rules.selected import SelectedRules, SelectedValue
from backspan.core.rules.shape import BeamWeight, FactorOnLoad
from backspan.core.worked.formula import Step

TOPIC = "tipping"

#: The branches of one rule set's tipping rule.
FactorValues = Sequence[tuple[SelectedValue, FactorOnLoad]]


@dataclass(frozen=True, slots=True)
class Branch:
    """One branch of a tipping rule on one support, in SI."""

    value: SelectedValue
    rule: FactorOnLoad
    load: float
    required: float
    resisting: float
    held_by_beam: float
    beam_weight: float
    steps: tuple[Step, ...]

    @property
    def met(self) -> bool:
        """Whether the counterweight holds this branch."""
        return meets(demand=self.required, capacity=self.resisting)


@dataclass(frozen=True, slots=True)
class TippingSums:
    """All branches that could be worked out, the governing one, and those that could not."""

    built: AsBuilt
    branches: tuple[Branch, ...]
    unknown: tuple[SelectedValue, ...]
    governing: Branch | None
    left_out_until: float | None
    """How much further out the beam may reach before weight that is left out could do harm."""

    @property
    def met(self) -> bool | None:
        """False when a known branch is not held; None when a branch is unknown; else True."""
        if any(not branch.met for branch in self.branches):
            return False
        if self.unknown or not self.branches:
            return None
        return True


def factor_values(rules: SelectedRules) -> FactorValues:
    """The branches of a rule set's tipping rule; none where the text has no number."""
    return tuple(
        (value, value.content)
        for value in rules.topic(TOPIC)
        if isinstance(value.content, FactorOnLoad)
    )


def tipping_sums(
    inputs: Inputs,
    subject: BeamSubject,
    values: FactorValues,
) -> TippingSums:
    """The moments of every branch, all inputs read through `inputs`."""
    built = beam_as_built.read(inputs, subject)
    reader = LoadReader(inputs, subject.point, subject.place[:-1])
    harmful = _harmful_weight(inputs, subject, built)
    branches: list[Branch] = []
    unknown: list[SelectedValue] = []
    for value, rule in values:
        basis = reader.read(rule.load)
        own = harmful
        if rule.beam_weight is BeamWeight.CREDITED and built.reach is not None:
            own = beam_as_built.own_weight(inputs, subject, built.reach, credited=True)
            if own is not None and own.centroid_inboard < 0.0:
                own = harmful or own  # it does harm: counted at the heavy end, if that is known
        branch = _branch(value, rule, built, basis, own)
        if branch is None or inputs_lack_beam(rule, own, built):
            unknown.append(value)
        else:
            branches.append(branch)
    return TippingSums(
        built,
        tuple(branches),
        tuple(unknown),
        governing_branch(branches),
        beam_as_built.left_out_until(inputs, subject, built),
    )


def inputs_lack_beam(rule: FactorOnLoad, own: OwnWeight | None, built: AsBuilt) -> bool:
    """Whether a rule that counts the beam's weight has to do without it."""
    return rule.beam_weight is BeamWeight.CREDITED and own is None and built.reach is not None


def _harmful_weight(inputs: Inputs, subject: BeamSubject, built: AsBuilt) -> OwnWeight | None:
    """The beam's own weight where it pulls outboard; helpful weight is left out."""
    if built.reach is None or not beam_as_built.may_be_harmful(inputs, subject, built):
        return None
    own = beam_as_built.own_weight(inputs, subject, built.reach, credited=False)
    return own if own is not None and own.centroid_inboard < 0.0 else None


def _branch(
    value: SelectedValue,
    rule: FactorOnLoad,
    built: AsBuilt,
    basis: BasisLoad,
    own: OwnWeight | None,
) -> Branch | None:
    load = basis.load
    if load is None or built.reach is None or built.backspan is None:
        return None
    if built.counterweight is None:
        return None
    own_steps: tuple[Step, ...] = ()
    required = required_moment(factor=rule.factor, load=load, reach=built.reach)
    if own is None:
        held = resisting_moment(counterweight=built.counterweight, backspan=built.backspan)
        beam_moment = beam_weight = 0.0
    else:
        held = resisting_moment_with_beam(
            counterweight=built.counterweight,
            backspan=built.backspan,
            beam_weight=own.weight,
            beam_centroid_inboard=own.centroid_inboard,
        )
        beam_moment, own_steps = own.weight * own.centroid_inboard, own.steps
        beam_weight = own.weight
    return Branch(
        value,
        rule,
        load,
        required.value,
        held.value,
        beam_moment,
        beam_weight,
        (*basis.steps, required, *built.steps, *own_steps, held),
    )


def governing_branch(branches: Sequence[Branch]) -> Branch | None:
    """The branch that falls shortest, or has least to spare; the first of equals."""

    def shortfall(branch: Branch) -> float:
        return branch.required - branch.resisting

    return max(branches, key=shortfall, default=None)
