"""What is placed on a stage that hangs from two points, and what comes of it on each hoist.

A load is asked where it brings most: each where it was placed or goes to, and anywhere on the deck
where nobody placed it. People walk: of whom nobody said how far, the worst walk is all of the deck,
wherever they began. The share is linear in the place, so an end of its range is the worst. What
would help, by standing at the other end, is not counted on.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.mechanics.hoist_share import (
    deck_beyond_line,
    half_of_dead,
    hoist_share,
    share_of_load,
)
from backspan.core.mechanics.tipping import weight
from backspan.core.model.stages import HungStage
from backspan.core.model.work import LoadKind, PlacedLoad
from backspan.core.numbers import at_least, total
from backspan.core.quantities import FORCE, MASS
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.limits import limit_of, needed_value
from backspan.core.sheet.reads import Read, hoist_reads, read_of
from backspan.core.sheet.sheet import Sheet

PERSON = "load.person"
SIDES = ("left", "right")


@dataclass(frozen=True, slots=True)
class Load:
    """A load on the stage: its mass, if stated, and where it is least and most along the deck."""

    mass: Read
    assumed: float | None = None
    """The mass in kilograms that stands in for one that nobody stated."""
    places: tuple[float, ...] = ()
    """Empty where it may be anywhere on the deck."""
    walks: bool = False
    """Whether it may leave these places for anywhere on the deck."""
    person: bool = False


@dataclass(frozen=True, slots=True)
class Step:
    """What is on the stage at one time."""

    name: str
    loads: tuple[Load, ...]
    people: int = 0


@dataclass(frozen=True, slots=True)
class OnTwo:
    """A stage on two hoists, the left one first, and what is on it."""

    dead: Read
    length: Read
    apart: Read
    rated: tuple[Read, Read]
    steps: tuple[Step, ...] = ()


def on_two(case: Case, hung: HungStage) -> OnTwo | None:
    """The stage on its two points; None where it hangs from any other number."""
    points = sorted(
        (point for point in case.points if point.id in hung.from_points), key=lambda p: p.station
    )
    match points:
        case [left, right] if len(hung.from_points) == len(points):
            pass
        case _:
            return None
    stage = case.stage(hung.stage)
    place = ("kit", "stages", stage.id)
    return OnTwo(
        read_of("dead_mass", stage, place),
        read_of("stage_length", stage, place),
        read_of("stirrup_spacing", stage, place),
        (hoist_reads(case, left)[0], hoist_reads(case, right)[0]),
    )


def placed(case: Case, one: PlacedLoad, place: Place) -> Load:
    """A load of a step; a person of whom nobody said otherwise weighs what is planned with."""
    assumed = None
    if one.kind is LoadKind.PERSON and one.mass is None:
        assumed = limit_of(needed_value(case.practice, PERSON), MASS)
    places = tuple(x for x in (one.at, one.to) if x is not None) if one.at is not None else ()
    person = one.kind is LoadKind.PERSON
    walks = person and one.to is None
    return Load(read_of("load_mass", one, place), assumed, places, walks, person)


def all_of_it(case: Case, hung: HungStage) -> Step:
    """All that is intended as one load that may be anywhere."""
    stage = case.stage(hung.stage)
    load = Load(read_of("intended_load", stage, ("kit", "stages", stage.id)))
    return Step(stage.id, (load,))


def steps_of(case: Case, hung: HungStage, place: Place) -> tuple[Step, ...]:
    """The steps of the work as they are stated."""
    return tuple(
        Step(
            one.id,
            tuple(
                placed(case, load, (*place, "work", one.id, "loads", load.id)) for load in one.loads
            ),
            len([load for load in one.loads if load.kind is LoadKind.PERSON]),
        )
        for one in hung.work or ()
    )


def mass_of(sheet: Sheet, one: Load) -> float:
    """The mass of a load: as stated, else what stands in for it."""
    return sheet.read(one.mass) if one.assumed is None else one.assumed


def weight_of(sheet: Sheet, one: Load) -> float:
    """The weight of a load."""
    return sheet.do(weight, mass=mass_of(sheet, one))


def shares(sheet: Sheet, on: OnTwo) -> Iterator[Compared]:
    """What comes on each hoist at the most in each step, against what it is rated for."""
    dead = sheet.do(weight, mass=sheet.read(on.dead))
    apart = sheet.positive("stirrup_spacing", sheet.read(on.apart))
    beyond = _beyond(sheet, on, apart)
    for step in on.steps:
        weights = [weight_of(sheet, one) for one in step.loads]
        for side, hoist in zip(SIDES, on.rated, strict=True):
            rated = sheet.read(hoist)
            arms = [_arm(one, side, apart, beyond) for one in step.loads]
            brought = _brought(sheet, weights, arms, apart)
            share = sheet.do(hoist_share, dead_load=dead, shares=brought)
            words = (("side", side), ("step", step.name))
            numbers = (("load", share, FORCE), ("rated", rated, FORCE))
            yield Compared(share, rated, words=words, numbers=numbers)


def lifts(sheet: Sheet, on: OnTwo) -> Iterator[Compared]:
    """What loads beyond one line take off the other in each step, against what holds that taut."""
    dead = sheet.do(weight, mass=sheet.read(on.dead))
    apart = sheet.positive("stirrup_spacing", sheet.read(on.apart))
    beyond = _beyond(sheet, on, apart)
    held = sheet.do(half_of_dead, dead_load=dead)
    for step in on.steps:
        weights = [weight_of(sheet, one) for one in step.loads]
        for side in SIDES:
            out = [
                at_least(_arm(one, side, apart, beyond) - apart, least=0.0) for one in step.loads
            ]
            lifted = _brought(sheet, weights, out, apart)
            words = (("side", side), ("step", step.name))
            numbers = (("lifted", lifted, FORCE), ("held", held, FORCE))
            yield Compared(lifted, held, words=words, numbers=numbers)


def _brought(sheet: Sheet, weights: list[float], arms: list[float], apart: float) -> float:
    """What loads bring together, each by its arm."""
    return total(
        [
            sheet.do(share_of_load, placed_load=load, arm=arm, stirrup_spacing=apart)
            for load, arm in zip(weights, arms, strict=True)
        ]
    )


def _beyond(sheet: Sheet, on: OnTwo, apart: float) -> float:
    length = sheet.read(on.length)
    reach = sheet.do(deck_beyond_line, stage_length=length, stirrup_spacing=apart)
    return at_least(reach, least=0.0)


def _arm(one: Load, side: str, apart: float, beyond: float) -> float:
    """How far a load is at the most from the line on the other side."""
    if not one.places or one.walks:
        return apart + beyond
    first, *others = one.places if side == "right" else [apart - x for x in one.places]
    for other in others:
        first = at_least(first, least=other)
    return first
