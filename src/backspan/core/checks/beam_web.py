"""Does the web of a beam without a rating take its shear, and what presses it where it bears.

Outboard of the fulcrum the shear is the load and the beam itself; inboard never more than stack and
beam, as long as the front stays down, and what lies there has no factor of its own. Over the
fulcrum the web yields or cripples by what presses it: that the factor of a rule goes on all of it,
the stack too, is this program's strict reading, as of the surface below. Over the rear stand it is
asked in service alone, idle, for that is dead load.

How much of the beam lies on its fulcrum is rarely known: where nobody stated it, and over the rear
stand always, none is counted. Within its depth from an end a web takes half. A doubtful reach may
lie to either side of that border, where the worst is: the nearer end of the doubt differs from it
by that doubt over the distance of the rear stand, of the load.

How the wall of a tube or a pipe takes what presses it no equation here says. A thin wall gives way
there before the section yields, so that its shear alone must not pass it: the wall is a finding of
its own that an engineer answers, of every tube and pipe. Not asked of an I is what presses it
where the line hangs and where the stack lies: a note says so. Whether it buckles sideways is a
question of its own (beam_sideways). The web of a single channel is asked as that of an I, and is
left to an engineer where it would hold: its flanges bear to one side of it.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.findings import Message
from backspan.core.mechanics.beam_web import (
    allowed_force,
    from_tail_end,
    from_tip_end,
    shear_inboard,
    shear_outboard,
)
from backspan.core.mechanics.bearing import imposed_load
from backspan.core.model.topics import Topic
from backspan.core.quantities import FORCE, RATIO
from backspan.core.rules.selected import SelectedValue
from backspan.core.rules.shape import FactorOnLoad, LoadBasis
from backspan.core.sheet.beam_section import OPEN
from backspan.core.sheet.beam_web import (
    CRIPPLING,
    KEYS_OF,
    SHEAR,
    YIELDING,
    Bears,
    Pressed,
    pressed_taken,
    shear_taken,
)
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.decide import ENDINGS
from backspan.core.sheet.labelled_beam import unless_rated
from backspan.core.sheet.limits import limit_of
from backspan.core.sheet.load_on_line import load_on_line
from backspan.core.sheet.moments import SupportReads, support_reads
from backspan.core.sheet.own_bending import own_outboard
from backspan.core.sheet.plain_beam import (
    PlainBeam,
    left_to_engineer,
    plain_beams,
    unless_it_twists,
)
from backspan.core.sheet.question import Asked, Judged, Question, Told
from backspan.core.sheet.reactions import Standing, rear_stand_read, standing
from backspan.core.sheet.reads import Read, read_of
from backspan.core.sheet.sheet import Sheet

ID, WALL = "beam-web", "web-wall"


@dataclass(slots=True, kw_only=True)
class OnWeb(Compared):
    """A force on the web against what it takes; `says` which of them."""

    says: str
    in_full: bool = False


@dataclass(frozen=True, slots=True)
class Web:
    """A beam as built, how its section is reckoned, and on what it bears at the front."""

    plain: PlainBeam
    support: SupportReads
    rear_stand: Read
    bearing: Read


@dataclass(frozen=True, slots=True)
class Local:
    """What the web of an I takes over the fulcrum and over the rear stand."""

    front: Pressed
    rear: Pressed


def work(sheet: Sheet, one: Asked[Web]) -> Iterator[OnWeb]:
    """Shear and what presses the web, under each rule's load and in service."""
    web = one.subject
    stands = standing(sheet, web.support.beam, web.rear_stand)
    yield from _sheared(sheet, one, stands)
    if web.plain.form in OPEN:
        yield from _pressed(sheet, one, stands)


def _sheared(sheet: Sheet, one: Asked[Web], there: Standing) -> Iterator[OnWeb]:
    web, stands = one.subject, there.stands
    beam, line = web.support.beam, web.support.line
    taken = sheet.part("shear", lambda sheet: shear_taken(sheet, web.plain))
    outboard = own_outboard(sheet, beam, stands.built.reach)
    for value in one.values:
        rule = value.content
        if isinstance(rule, FactorOnLoad):
            load = load_on_line(sheet, line, rule.load)
            shear = sheet.do(
                shear_outboard, factor=rule.factor, load=load, outboard_weight=outboard
            )
            yield _on_web(shear, taken.nominal, value, "shear-four")
        elif value.key == taken.safety:
            allowed = _allowed(sheet, taken.nominal, value)
            load = load_on_line(sheet, line, LoadBasis.HOIST_RATED)
            shear = sheet.do(shear_outboard, factor=1.0, load=load, outboard_weight=outboard)
            yield _on_web(shear, allowed, value, "shear")
            shear = sheet.do(
                shear_inboard,
                counterweight=stands.built.counterweight,
                beam_weight=stands.own.weight,
            )
            yield _on_web(shear, allowed, value, "inboard")


def _pressed(sheet: Sheet, one: Asked[Web], there: Standing) -> Iterator[OnWeb]:
    web, full = one.subject, there.in_full
    local = sheet.part("local", lambda sheet: _local(sheet, web))
    for value in one.values:
        rule = value.content
        if isinstance(rule, FactorOnLoad):
            load = load_on_line(sheet, web.support.line, rule.load)
            reaction = there.front(sheet, load)
            force = sheet.do(imposed_load, factor=rule.factor, reaction=reaction)
            for nominal in (local.front.yields, local.front.cripples):
                yield _on_web(force, nominal, value, "bears-four", in_full=full)
        elif value.key in {YIELDING, CRIPPLING}:
            load = load_on_line(sheet, web.support.line, LoadBasis.HOIST_RATED)
            yields = value.key == YIELDING
            for pressed, force, says in (
                (local.front, there.front(sheet, load), "bears"),
                (local.rear, there.idle, "rear"),
            ):
                nominal = pressed.yields if yields else pressed.cripples
                allowed = _allowed(sheet, nominal, value)
                yield _on_web(force, allowed, value, says, in_full=full)


def _local(sheet: Sheet, web: Web) -> Local:
    """What the web takes; of how much of it bears nothing is counted that nobody stated."""
    beam, bearing = web.support.beam, web.bearing
    reach, tip = sheet.read(beam.reach), sheet.read(beam.tip)
    front = Bears(
        sheet.do(from_tip_end, reach=reach, tip_beyond_line=tip),
        0.0 if bearing.stated is None else sheet.read(bearing),
    )
    behind = sheet.do(
        from_tail_end,
        beam_length=sheet.read(beam.length),
        reach=reach,
        tip_beyond_line=tip,
        rear_stand=sheet.read(web.rear_stand),
    )
    return Local(
        pressed_taken(sheet, web.plain, front),
        pressed_taken(sheet, web.plain, Bears(behind, 0.0)),
    )


def _allowed(sheet: Sheet, nominal: float, value: SelectedValue) -> float:
    return sheet.do(allowed_force, nominal_force=nominal, safety_factor=limit_of(value, RATIO))


def _on_web(
    demand: float, capacity: float, value: SelectedValue, says: str, *, in_full: bool = False
) -> OnWeb:
    numbers = (("force", demand, FORCE), ("takes", capacity, FORCE))
    return OnWeb(demand, capacity, numbers=numbers, value=value, says=says, in_full=in_full)


def tells(judged: Judged[Web, OnWeb]) -> Told:
    """Which of the forces governs, what was not counted, and what was not asked."""
    weighed, web = judged.weighed, judged.asked.subject
    notes = []
    if web.plain.form in OPEN:
        notes += ["web-not-asked"] + (["no-bearing-length"] if web.bearing.stated is None else [])
    notes += ["behind-rear-stand"] if any(one.in_full for one in weighed.branches) else []
    said = tuple(Message(f"note.{one}") for one in notes)
    if weighed.shown is None or weighed.met is None:
        return Told(Message("web-force.missing"), said)
    shown = weighed.shown
    return Told(Message(f"web-{shown.says}.{ENDINGS[weighed.met]}", tuple(shown.told())), said)


QUESTION = Question(ID, "web-strength", FORCE, work, tells)


def judge(case: Case) -> Iterator[Answer]:
    """One finding a beam that is reckoned by its section; of tubes and pipes one on the wall."""
    for plain in plain_beams(case, ID, SHEAR, KEYS_OF.__getitem__):
        if not isinstance(plain, PlainBeam):
            yield plain
            continue
        subject = plain.subject
        fulcrum = subject.support.fulcrum
        web = Web(
            plain,
            support_reads(case, subject),
            rear_stand_read(case, subject),
            read_of("bearing_length", fulcrum, (*subject.place, "fulcrum")),
        )
        found = QUESTION.judge(case, Asked(web, subject.name, subject.place, plain.values))
        yield unless_it_twists(case, plain, found, "web-twists")
        if plain.form not in OPEN:
            yield left_to_engineer(case, ID, WALL, subject, WALL)


CHECK = Check(ID, Topic.BEAM, unless_rated(ID, judge))
