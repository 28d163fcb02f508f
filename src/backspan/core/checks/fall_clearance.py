"""Is a fall stopped before what is below, also at the lowest place, where the line is longest.

The grab counts as level with the D-ring wherever it is kept above: a rider may sit, and nobody
measures that height. Kept below, the free fall is not known. The line goes from its anchor to the
farther end of the drop, up the parapet and down it, and down to the lowest place; the rider's own
height is not taken off. An anchor of another roof adds what it stands above or below this one.

A line that passes the edge aside of its anchor may slide along the coping until it is opposite:
what goes slack then is fallen too, and beyond an angle of practice the line is refused. Where it
passes has to be stated. Station and anchor are off by as much as the trade allows a plan.

An absorber's opening has to be enough for the heaviest rider placed, and for a usual one at the
least, after the free fall and the grab's slip, at its mean force, a share of the most it states.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from math import isnan

from backspan.core.angles import direction
from backspan.core.findings import DoesNotApply
from backspan.core.mechanics.fall import (
    fall_distance,
    free_fall,
    lifeline_length,
    lifeline_stretch,
    line_slack,
    lowest_in_time,
    opening_needed,
    slowing_force,
)
from backspan.core.mechanics.tipping import weight
from backspan.core.model.rigs import Lifeline
from backspan.core.model.seen import GrabHeight
from backspan.core.model.site import Roof
from backspan.core.model.topics import Topic
from backspan.core.numbers import at_least, root
from backspan.core.quantities import ANGLE, FORCE, LENGTH, MASS, RATIO, Dimension
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.lifelines import Life, anchored, each_lifeline, lanyard_of
from backspan.core.sheet.limits import limit_of, needed_value
from backspan.core.sheet.placed import Load, weight_of
from backspan.core.sheet.question import Asked, Question
from backspan.core.sheet.reads import UNKNOWN, Read, read_of
from backspan.core.sheet.riders import riders_of
from backspan.core.sheet.sheet import Sheet
from backspan.core.sheet.subjects import in_force_or_practice
from backspan.core.sheet.tied import PLAN_POSITION, on_edge

ID = "fall-clearance"
MARGIN, SHIFT = "fall.margin", "fall.harness-shift"
COUNTS, FREE, SLOWED, FORCED = (
    *("fall.counts-from", "fall.most-free-fall"),
    *("fall.most-deceleration", "fall.most-force"),
)
ANGLED = "fall.most-line-angle"
MEAN, LEAST_RIDER = "fall.mean-to-most-force", "fall.least-rider-mass"


@dataclass(frozen=True, slots=True)
class Arrest:
    """A lifeline, its rider's lanyard and the drop they go down."""

    lanyard: Read
    deceleration: Read
    slide: Read
    shift: Read
    force: Read
    elongation: Read
    height: Read
    clear: Read
    wall: Read
    levels: tuple[Read, Read] | None
    """The levels of the anchor's roof and of the drop's, where they are two."""
    run: float
    level: bool
    """Whether the grab is kept level with the D-ring or above; where it may be below, not."""
    grab_at: Place
    aside: float
    """How far along the edge the anchor is from where the line passes; NaN where nobody said."""
    inward: float
    station_at: Place
    riders: tuple[Load, ...]
    """Who is placed on the stages of the drop."""
    usual_rider: float
    mean_share: float
    usual_shift: float
    margin: float


def falls(sheet: Sheet, one: Asked[Arrest]) -> Iterator[Compared]:
    """The free fall against the most that each text allows."""
    free = _free(sheet, one.subject)
    for value in one.values:
        most = limit_of(value, LENGTH)
        yield Compared(
            free, most, numbers=(("found", free, LENGTH), ("most", most, LENGTH)), value=value
        )


def _free(sheet: Sheet, arrest: Arrest) -> float:
    if not arrest.level:
        sheet.want("grab_height", arrest.grab_at)
    above = 0.0 if arrest.level else UNKNOWN
    length = sheet.read(arrest.lanyard)
    return sheet.do(free_fall, lanyard_length=length, above_ring=above)


def _as_stated(
    of: Callable[[Arrest], Read], dimension: Dimension
) -> Callable[[Sheet, Asked[Arrest]], Iterator[Compared]]:
    """What the maker states of the lanyard against the most that each text allows."""

    def work(sheet: Sheet, one: Asked[Arrest]) -> Iterator[Compared]:
        found = sheet.read(of(one.subject))
        for value in one.values:
            most = limit_of(value, dimension)
            numbers = (("found", found, dimension), ("most", most, dimension))
            yield Compared(found, most, numbers=numbers, value=value)

    return work


def turns(sheet: Sheet, one: Asked[Arrest]) -> Iterator[Compared]:
    """How far a line turns off the perpendicular to the edge, from its anchor to the edge."""
    off = direction(across=_aside(sheet, one.subject), along=one.subject.inward)
    for value in one.values:
        most = limit_of(value, ANGLE)
        numbers = (("off", off, ANGLE), ("most", most, ANGLE))
        yield Compared(off, most, numbers=numbers, value=value)


def _aside(sheet: Sheet, arrest: Arrest) -> float:
    if isnan(arrest.aside):
        sheet.want("station", arrest.station_at)
    return arrest.aside


def opens(sheet: Sheet, one: Asked[Arrest]) -> Iterator[Compared]:
    """By how much the absorber has to open for the heaviest rider against what it opens by."""
    arrest = one.subject
    rider = sheet.do(weight, mass=arrest.usual_rider)
    for other in arrest.riders:
        rider = at_least(rider, least=weight_of(sheet, other))
    force = sheet.read(arrest.force)
    left = sheet.do(
        slowing_force, mean_share=arrest.mean_share, most_force=force, rider_weight=rider
    )
    needed = sheet.do(
        opening_needed,
        rider_weight=rider,
        falls_free=_free(sheet, arrest),
        grab_slide=sheet.read(arrest.slide),
        slows=sheet.positive("force_left", left),
    )
    found = sheet.read(arrest.deceleration)
    told = (("needed", needed, LENGTH), ("found", found, LENGTH), ("rider", rider, FORCE))
    yield Compared(needed, found, numbers=told)


def stops(sheet: Sheet, one: Asked[Arrest]) -> Iterator[Compared]:
    """The height that a fall takes against the least from which one counts at this drop."""
    arrest = one.subject
    elongation, clear = sheet.read(arrest.elongation), sheet.read(arrest.clear)
    stretch = sheet.do(lifeline_stretch, elongation=elongation, lifeline=_lifeline(sheet, arrest))
    shift = arrest.usual_shift if arrest.shift.stated is None else sheet.read(arrest.shift)
    needed = sheet.do(
        fall_distance,
        falls_free=_free(sheet, arrest),
        deceleration=sheet.read(arrest.deceleration),
        grab_slide=sheet.read(arrest.slide),
        harness_shift=shift,
        line_stretch=stretch,
        line_slack=sheet.do(
            line_slack, line_aside=_aside(sheet, arrest), line_inward=arrest.inward
        ),
        fall_margin=arrest.margin,
    )
    for value in one.values:
        there = at_least(clear, least=limit_of(value, LENGTH))
        lowest = sheet.do(lowest_in_time, distance=needed, elongation=elongation, above_level=there)
        told = (("needed", needed), ("there", there), ("lowest", lowest))
        numbers = tuple((name, number, LENGTH) for name, number in told)
        yield Compared(needed, there, numbers=numbers, value=value)


def _lifeline(sheet: Sheet, arrest: Arrest) -> float:
    wall = sheet.read(arrest.wall)
    run = arrest.run
    if arrest.levels is not None:
        theirs, ours = (sheet.read(one) for one in arrest.levels)
        run += at_least(theirs - ours, least=ours - theirs)
    height = sheet.read(arrest.height)
    return sheet.do(lifeline_length, line_run=run, wall_height=wall, drop_height=height)


QUESTIONS = (
    (Question(ID, "free-fall", LENGTH, falls, strength=False), FREE),
    (
        Question(
            ID, "deceleration", LENGTH, _as_stated(lambda a: a.deceleration, LENGTH), strength=False
        ),
        SLOWED,
    ),
    (
        Question(ID, "arrest-force", FORCE, _as_stated(lambda a: a.force, FORCE), strength=False),
        FORCED,
    ),
    (Question(ID, "line-angle", ANGLE, turns, strength=False), ANGLED),
    (Question(ID, ID, LENGTH, stops, strength=False), COUNTS),
)
OPENS = Question(ID, "absorber", LENGTH, opens, strength=False)


def judge(case: Case) -> Iterator[Answer]:
    """Six findings a lifeline, the last the height that it all takes."""
    riders = riders_of(case)
    for one in each_lifeline(case, ID):
        if isinstance(one, DoesNotApply):
            yield one
            continue
        arrest = _arrest(case, one, riders)
        mean = (needed_value(case.practice, MEAN),)
        yield OPENS.judge(case, Asked(arrest, one.name, one.place, mean))
        for question, key in QUESTIONS:
            values = in_force_or_practice(case, key)
            yield question.judge(case, Asked(arrest, one.name, one.place, values))


def _arrest(case: Case, one: Life, riders: tuple[Load, ...]) -> Arrest:
    line, kit = one.line, case.project.kit
    lanyard, worn = lanyard_of(case, one)
    rope = None if line.rope is None else kit.rope(line.rope)
    of_rope = (*one.place, "rope") if rope is None else ("kit", "ropes", rope.id)
    theirs, anchor = anchored(case, line)
    wall = case.edge.parapet
    at_wall = (*case.edge_place, "parapet")
    apart = theirs.id != case.drop.roof
    station, inward = on_edge(case, anchor.at)
    off = limit_of(needed_value(case.practice, PLAN_POSITION), LENGTH)
    passes = UNKNOWN if line.station is None else line.station
    return Arrest(
        lanyard=read_of("lanyard_length", lanyard, worn),
        deceleration=read_of("deceleration", lanyard, worn),
        slide=read_of("grab_slide", lanyard, worn),
        shift=read_of("harness_shift", lanyard, worn),
        force=read_of("most_force", lanyard, worn),
        elongation=read_of("elongation", rope, of_rope),
        height=read_of("drop_height", case.drop, case.place),
        clear=read_of("clear_below", case.drop, case.place),
        wall=read_of("parapet_height", wall, at_wall),
        levels=(_level(theirs), _level(_own(case))) if apart else None,
        run=_run(case, station, inward),
        level=_level_grab(line),
        grab_at=(*one.place, "grab_height"),
        aside=abs(station - passes) + off,
        inward=inward - off,
        station_at=(*one.place, "station"),
        riders=riders,
        usual_rider=limit_of(needed_value(case.practice, LEAST_RIDER), MASS),
        mean_share=limit_of(needed_value(case.practice, MEAN), RATIO),
        usual_shift=limit_of(needed_value(case.practice, SHIFT), LENGTH),
        margin=limit_of(needed_value(case.practice, MARGIN), LENGTH),
    )


def _own(case: Case) -> Roof:
    return next(one for one in case.project.site.roofs if one.id == case.drop.roof)


def _level(roof: Roof) -> Read:
    return read_of("roof_level", roof, ("site", "roofs", roof.id))


def _level_grab(line: Lifeline) -> bool:
    said = None if line.grab_height is None else line.grab_height.value
    return said in {GrabHeight.ABOVE, GrabHeight.LEVEL}


def _run(case: Case, station: float, inward: float) -> float:
    """From an anchor there to the farther end of the drop, in plan."""
    start = case.drop.start - station
    end = start + case.drop.width.value
    along = at_least(start * start, least=end * end)
    return root(along + inward * inward)


CHECK = Check(ID, Topic.FALL_ARREST, judge)
