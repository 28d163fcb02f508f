"""The moments of one counterweighted beam: every branch of a rule, required against resisting.

About the fulcrum the load P turns with P a, and a rule asks that k P a be held. The counterweight
holds W b: nothing at b = 0 and less than nothing beyond, so that a pass there would rest on the
beam alone. The beam's own weight holds G x_G, and pulls where x_G is negative: what holds at one
reach may not at a longer one, although no piece was touched, and by more than the load alone.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.mechanics.tipping import (
    required_moment,
    resisting_moment,
    resisting_moment_with_beam,
)
from backspan.core.rules.selected import SelectedRules, SelectedValue
from backspan.core.rules.shape import BeamWeight, FactorOnLoad
from backspan.core.sheet.beam_as_built import (
    AsBuilt,
    BeamReads,
    OwnWeight,
    beam_reads,
    own_weight,
    weight_outboard,
)
from backspan.core.sheet.case import Case
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.load_on_line import LineReads, line_reads, load_on_line
from backspan.core.sheet.sheet import Sheet
from backspan.core.sheet.subjects import BeamSubject

TOPIC = "tipping"


@dataclass(frozen=True, slots=True)
class SupportReads:
    """What may be read of a counterweighted beam and of the line that hangs from it."""

    beam: BeamReads
    line: LineReads
    tiebacks: int


@dataclass(slots=True, kw_only=True)
class Branch(Compared):
    """One branch of a tipping rule on one support, in SI; NaN where it is not known."""

    rule: FactorOnLoad
    built: AsBuilt
    load: float
    own: OwnWeight | None
    """The beam's own weight, where the branch counts it."""

    @property
    def own_moment(self) -> float:
        """Moment of the beam's own weight, negative where it pulls outboard; 0 if left out."""
        return 0.0 if self.own is None else self.own.weight * self.own.centroid_inboard


def support_reads(case: Case, subject: BeamSubject) -> SupportReads:
    """What may be read of one support."""
    point = subject.point
    return SupportReads(beam_reads(case, subject), line_reads(case, point), len(point.tied))


def factor_values(rules: SelectedRules, topic: str = TOPIC) -> tuple[SelectedValue, ...]:
    """The branches of a rule set's rule on a topic; none where the text has no number."""
    values = rules.topic(topic)
    return tuple(value for value in values if isinstance(value.content, FactorOnLoad))


def branches(
    sheet: Sheet, support: SupportReads, built: AsBuilt, values: tuple[SelectedValue, ...]
) -> Iterator[Branch]:
    """Every branch, compared by itself.

    Where the beam's own weight may pull outboard and is not known, a branch is told twice: without
    it, since what falls short even so is a fail, and with it, unknown.
    """
    outboard = weight_outboard(sheet, support.beam, built)
    for value in values:
        rule = value.content
        if not isinstance(rule, FactorOnLoad):
            continue
        load = load_on_line(sheet, support.line, rule.load)
        required = sheet.do(required_moment, factor=rule.factor, load=load, reach=built.reach)
        if rule.beam_weight is BeamWeight.CREDITED:
            counted: tuple[OwnWeight | None, ...] = (own_weight(sheet, support.beam, built.reach),)
        elif outboard is not None and math.isnan(outboard.weight * outboard.centroid_inboard):
            counted = (None, outboard)
        else:
            counted = (outboard,)
        for own in counted:
            held = _held(sheet, built, own)
            yield Branch(required, held, value=value, rule=rule, built=built, load=load, own=own)


def _held(sheet: Sheet, built: AsBuilt, own: OwnWeight | None) -> float:
    if own is None:
        return sheet.do(
            resisting_moment, counterweight=built.counterweight, backspan=built.backspan
        )
    return sheet.do(
        resisting_moment_with_beam,
        counterweight=built.counterweight,
        backspan=built.backspan,
        beam_weight=own.weight,
        beam_centroid_inboard=own.centroid_inboard,
    )
