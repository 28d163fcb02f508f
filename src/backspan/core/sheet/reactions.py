"""What a counterweighted beam presses on its two stands, as it was built.

The front carries P + W + G - N. The rear stand carries N = (W b + G x_G - P a) / c while that is
above nothing; at the tipping limit it carries none, and the front carries all.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from backspan.core.mechanics.bearing import front_reaction, rear_reaction
from backspan.core.mechanics.tipping import resisting_moment_with_beam
from backspan.core.numbers import at_least, surely_above
from backspan.core.sheet.beam_as_built import (
    AsBuilt,
    BeamReads,
    OwnWeight,
    as_built,
    every_way,
    inboard_of,
    own_weight,
)
from backspan.core.sheet.case import Case
from backspan.core.sheet.reads import UNKNOWN, Read, read_of
from backspan.core.sheet.sheet import Sheet
from backspan.core.sheet.subjects import BeamSubject


@dataclass(frozen=True, slots=True)
class TwoStands:
    """A beam on its fulcrum and its rear stand, in SI; `held` is what turns it back."""

    built: AsBuilt
    own: OwnWeight
    held: float
    stand: float

    def rear(self, sheet: Sheet, load: float) -> float:
        """What the rear stand carries under a load on the line; negative where it lifts."""
        return sheet.do(
            rear_reaction,
            resisting=self.held,
            load=load,
            reach=self.built.reach,
            rear_stand=self.stand,
        )

    def front(self, sheet: Sheet, load: float, *, carried_behind: float) -> float:
        """What the fulcrum carries then."""
        return sheet.do(
            front_reaction,
            load=load,
            counterweight=self.built.counterweight,
            beam_weight=self.own.weight,
            carried_behind=carried_behind,
        )

    def in_doubt_behind(self, beam: BeamReads) -> bool:
        """Whether something of a doubtful mass lies behind the rear stand."""
        built = self.built
        furthest = built.inboard - built.tail_gap if beam.from_stack else built.backspan
        arms = (furthest, self.own.centroid_inboard)
        behind = any(surely_above(one, limit=self.stand) for one in arms)
        masses = (beam.mass, *(group.mass for group in beam.groups))
        return behind and any(
            one.stated is not None and bool(one.stated.tolerance) for one in masses
        )


@dataclass(frozen=True, slots=True)
class Standing:
    """A beam whose front stays down; `idle` is what the rear carries then."""

    stands: TwoStands
    idle: float
    in_full: bool
    """Whether nothing is taken off at the front for what the rear stand carries."""

    def front(self, sheet: Sheet, load: float) -> float:
        """What the fulcrum carries under a load on the line."""
        return most_in_front(sheet, self.stands, load, in_full=self.in_full)


def standing(sheet: Sheet, beam: BeamReads, rear_stand: Read) -> Standing:
    """A beam on its two stands; outside its domain where its front lifts."""
    return sheet.part(
        "standing", lambda sheet: _stands(sheet, beam, rear_stand), of=(beam, rear_stand)
    )


def rear_stand_read(case: Case, subject: BeamSubject) -> Read:
    """How far back the rear stand is: the same for all checks, as `beam_reads` is."""
    return case.once(
        ("rear-stand", subject.place),
        lambda: read_of("rear_stand", subject.support, subject.place),
    )


def _stands(sheet: Sheet, beam: BeamReads, rear_stand: Read) -> Standing:
    stands = on_two_stands(sheet, beam, rear_stand)
    idle = most_behind(sheet, stands, beam)
    # Less than nothing at the front: the beam would lift off and turn about its rear stand.
    sheet.positive("front", stands.front(sheet, 0.0, carried_behind=idle))
    return Standing(stands, idle, stands.in_doubt_behind(beam))


def on_two_stands(sheet: Sheet, beam: BeamReads, rear_stand: Read) -> TwoStands:
    """A beam with its stack and its own weight; outside its domain where no stand is under it."""
    built = as_built(sheet, beam)
    own = own_weight(sheet, beam, built.reach)
    return _standing(sheet, built, own, stand_under(sheet, beam, rear_stand, built.reach))


def stand_under(sheet: Sheet, beam: BeamReads, rear_stand: Read, reach: float) -> float:
    """How far behind the fulcrum the rear stand is; outside its domain where no beam lies on it."""
    stand = sheet.positive("rear_stand", sheet.read(rear_stand))
    left = sheet.positive("beyond_tail", inboard_of(sheet, beam, reach) - stand)
    return UNKNOWN if math.isnan(left) else stand


def _standing(sheet: Sheet, built: AsBuilt, own: OwnWeight, stand: float) -> TwoStands:
    held = sheet.do(
        resisting_moment_with_beam,
        counterweight=built.counterweight,
        beam_weight=own.weight,
        backspan=built.backspan,
        beam_centroid_inboard=own.centroid_inboard,
    )
    return TwoStands(built, own, held, stand)


def most_in_front(sheet: Sheet, stands: TwoStands, load: float, *, in_full: bool) -> float:
    """What the fulcrum carries under a load; with `in_full` nothing is taken off for the rear."""
    carried = 0.0 if in_full else at_least(stands.rear(sheet, load), least=0.0)
    return stands.front(sheet, load, carried_behind=carried)


def most_behind(sheet: Sheet, stands: TwoStands, beam: BeamReads) -> float:
    """The most the rear stand carries: with nothing on the line, at the longer of two backspans.

    A beam is judged by its shorter backspan where it is known both ways, which asks less of the
    rear stand. None where the beam would lift it even so; the other way is looked at aside.
    """
    most = at_least(stands.rear(sheet, 0.0), least=0.0)
    if not beam.both:
        return most
    for beside, built in every_way(sheet, beam):
        one = _standing(beside, built, stands.own, stands.stand)
        most = at_least(one.rear(beside, 0.0), least=most)
    return most
