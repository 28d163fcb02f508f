"""Does the surface carry what the two stands press on it, under each rule set that asks.

The place of the rear stand decides (core/sheet/reactions.py); where it is not known nothing is.

The front is pressed more by each pound on the line, R' = 1 + a/c: with nothing on it it is only
asked whether it stays down. What lies behind the rear stand (b or x_G above c) presses the front
less the heavier it is, once the stand carries, and more until then: the worst of a doubtful mass
then lies inside its range, at N = 0, where no corner is. With one N is not taken off, which is
never less than what is pressed.

On a wall a plate counts no wider than it lies there around its centre (core/sheet/room_across.py).
A plank or pad under the plate presses no further out than the load spreads through its thickness:
a thin one is not stiff. What lies out there is left out, which is never less pressure.

The rear is pressed less by each pound, N' = -a/c: the largest of idle and loaded is idle under
every load, so no load is read. It is dead load, and the text speaks of the load imposed with the
scaffold working at a load of its hoist: that each factor of it goes on the idle reaction is this
program's strict reading. Of a backspan known two ways the longer presses it more.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace

from backspan.core.findings import Decider, DoesNotApply, Finding, Message, Need
from backspan.core.mechanics.bearing import (
    bearing_pressure,
    pressed_area,
    spread_side,
)
from backspan.core.model.rigs import Pad
from backspan.core.model.topics import Topic
from backspan.core.numbers import at_least, at_most, smaller
from backspan.core.quantities import PRESSURE, RATIO
from backspan.core.rules.selected import SelectedValue
from backspan.core.rules.shape import FactorOnLoad
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.decide import ENDINGS
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.limits import limit_of, needed_value
from backspan.core.sheet.load_on_line import load_on_line
from backspan.core.sheet.moments import SupportReads, factor_values, support_reads
from backspan.core.sheet.presence import judge_presence
from backspan.core.sheet.question import Asked, Judged, Question, Told, asked_each
from backspan.core.sheet.reactions import rear_stand_read, standing
from backspan.core.sheet.reads import Read, read_of
from backspan.core.sheet.room_across import Across, across, room_of
from backspan.core.sheet.sheet import Sheet
from backspan.core.sheet.signed import signed_for
from backspan.core.sheet.subjects import BeamSubject, counterweighted, no_rule

ID = TOPIC = "bearing"
REAR_ID, PAD_SPREAD = "rear-bearing", "bearing.pad-spread"


@dataclass(slots=True, kw_only=True)
class Pressed(Compared):
    """A pressure against the surface; whether what the rear stand carries was not taken off."""

    in_full: bool


@dataclass(frozen=True, slots=True)
class PadReads:
    """A pad under the plate, and the rule value by which a load spreads through it."""

    length: Read
    width: Read
    thickness: Read
    spread: SelectedValue


@dataclass(frozen=True, slots=True)
class Standing:
    """A beam with what one of its stands stands on; `rear` says which of the two."""

    support: SupportReads
    rear_stand: Read
    plate_length: Read
    plate_width: Read
    strength: Read
    rear: bool = False
    across: Across | None = None
    """Where the front stands at its wall."""
    pad: PadReads | None = None


def work(sheet: Sheet, one: Asked[Standing]) -> Iterator[Pressed]:
    """The pressure under each load of the rule against what the surface is said to carry."""
    standing = one.subject
    reactions = sheet.part("reactions", lambda sheet: _reactions(sheet, standing, one.values))
    area = sheet.part("area", lambda sheet: _area(sheet, standing))
    strength = sheet.read(standing.strength)
    for value, factor, reaction, in_full in reactions:
        pressure = sheet.do(bearing_pressure, factor=factor, reaction=reaction, plate_area=area)
        numbers = (("pressure", pressure, PRESSURE), ("strength", strength, PRESSURE))
        yield Pressed(pressure, strength, numbers=numbers, value=value, in_full=in_full)


def _reactions(
    sheet: Sheet, one: Standing, values: tuple[SelectedValue, ...]
) -> list[tuple[SelectedValue, float, float, bool]]:
    """Under each branch: its factor, what the stand carries, whether the rear took nothing off."""
    support, found = one.support, []
    there = standing(sheet, support.beam, one.rear_stand)
    in_full = not one.rear and there.in_full
    for value in values:
        rule = value.content
        if not isinstance(rule, FactorOnLoad):
            continue
        reaction = there.idle
        if not one.rear:
            reaction = there.front(sheet, load_on_line(sheet, support.line, rule.load))
        found.append((value, rule.factor, reaction, in_full))
    return found


def _area(sheet: Sheet, standing: Standing) -> float:
    """What the plate presses; through a pad what it spreads to, and no more than the pad has."""
    length, width = sheet.read(standing.plate_length), sheet.read(standing.plate_width)
    pad, says = standing.pad, "rear-plate" if standing.rear else "plate"
    room = None if standing.across is None else room_of(sheet, standing.across)
    if pad is None:
        return sheet.positive(says, _within(sheet, (length, width), room))
    # A plate that may be none at all presses nothing through a pad either.
    sheet.positive(says, length * width)
    spread, thickness = limit_of(pad.spread, RATIO), sheet.read(pad.thickness)
    wide, broad = (
        sheet.do(spread_side, plate_side=one, pad_spread=spread, pad_thickness=thickness)
        for one in (length, width)
    )
    sides = (
        at_most(wide, most=sheet.read(pad.length)),
        at_most(broad, most=sheet.read(pad.width)),
    )
    return sheet.positive(says, _within(sheet, sides, room))


def _within(sheet: Sheet, sides: tuple[float, float], room: float | None) -> float:
    """What a rectangle presses where one of its sides lies across a wall, the worse of the two."""
    length, width = sides
    if room is not None:
        shorter, longer = smaller(length, width), at_least(length, least=width)
        # The longer side across loses most: min(long, room) x short is never more than the other.
        length, width = at_most(longer, most=room), shorter
    return sheet.do(pressed_area, pressed_length=length, pressed_width=width)


def tells(judged: Judged[Standing, Pressed]) -> Told:
    """The pressure and the strength, and whether the rear stand got no credit."""
    ending = ENDINGS[judged.weighed.met]
    shown = judged.weighed.shown
    says = REAR_ID if judged.asked.subject.rear else ID
    full = any(one.in_full for one in judged.weighed.branches)
    notes = (Message("note.behind-rear-stand"),) if full else ()
    return Told(Message(f"{says}.{ending}", () if shown is None else tuple(shown.told())), notes)


QUESTION = Question(ID, ID, PRESSURE, work, tells)
REAR_QUESTION = Question(REAR_ID, REAR_ID, PRESSURE, work, tells)


def asked(case: Case) -> Iterator[Asked[Standing] | DoesNotApply]:
    """Each fulcrum under the branches of each rule set."""
    return _asked(case, rear=False)


def asked_of_rear(case: Case) -> Iterator[Asked[Standing] | DoesNotApply]:
    """Each rear stand likewise."""
    return _asked(case, rear=True)


def _asked(case: Case, *, rear: bool) -> Iterator[Asked[Standing] | DoesNotApply]:
    check = REAR_ID if rear else ID
    having = [values for rules in case.under(TOPIC) if (values := factor_values(rules, TOPIC))]
    for beam in counterweighted(case, check):
        if isinstance(beam, DoesNotApply):
            yield beam
            continue
        standing = _standing(case, beam, rear=rear)
        signed = signed_for(case, beam, "most_rear" if rear else "most_front")
        if signed is not None and (standing.strength.stated is None or not having):
            yield DoesNotApply(check, beam.name, beam.place, Message("na.signed-for", signed))
        elif not having:
            yield DoesNotApply(check, beam.name, beam.place, no_rule(case, TOPIC))
        else:
            spread = () if standing.pad is None else (standing.pad.spread,)
            for values in having:
                yield Asked(standing, beam.name, beam.place, (*values, *spread))


def _standing(case: Case, beam: BeamSubject, *, rear: bool) -> Standing:
    record = beam.support.rear if rear else beam.support.fulcrum
    place = (*beam.place, "rear" if rear else "fulcrum")
    before = "rear_" if rear else ""
    names = ("plate_length", "plate_width", "surface_strength")
    length, width, strength = (read_of(f"{before}{name}", record, place) for name in names)
    stand = rear_stand_read(case, beam)
    pad = None if record is None else record.pad
    return Standing(
        support_reads(case, beam),
        stand,
        length,
        width,
        strength,
        rear,
        None if rear else across(case, beam.point),
        None if pad is None else _pad(case, pad, (*place, "pad")),
    )


def _pad(case: Case, pad: Pad, place: Place) -> PadReads:
    length, width, thickness = (
        read_of(f"pad_{name}", pad, place) for name in ("length", "width", "thickness")
    )
    return PadReads(length, width, thickness, needed_value(case.practice, PAD_SPREAD))


def _check(
    question: Question[Standing, Pressed],
    ask: Callable[[Case], Iterator[Asked[Standing] | DoesNotApply]],
) -> Check:
    def judge(case: Case) -> Iterator[Answer]:
        """One finding a beam and rule set that says what its surface must carry."""
        for one in ask(case):
            if isinstance(one, DoesNotApply) and one.reason.id == "na.no-rule":
                yield _silent(case, one)
            else:
                yield from asked_each(question, case, (one,))

    return Check(question.check, Topic.STANDS_ON, judge)


def _silent(case: Case, one: DoesNotApply) -> Finding:
    """No rule set in force says what a surface must carry: an engineer does."""
    found = judge_presence(
        Inputs(case),
        check=one.check,
        subject=one.subject,
        place=one.place,
        message=Message(f"{one.check}.silent", one.reason.values),
        met=True,
        refer=(Need(Decider.LICENSED_ENGINEER, Message("need.surface")),),
        question=one.check,
    )
    return replace(found, not_judged=True)


CHECK = _check(QUESTION, asked)
REAR = _check(REAR_QUESTION, asked_of_rear)
