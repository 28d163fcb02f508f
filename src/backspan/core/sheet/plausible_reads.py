"""Every number of a drop that the trade has a band for, some of them worked out of others."""

from __future__ import annotations

from collections.abc import Iterator

from backspan.core.mechanics.tipping import weight
from backspan.core.model.kit import Hoist, RopeKind, TerminationKind
from backspan.core.model.rigs import Lifeline
from backspan.core.model.stages import HungStage
from backspan.core.model.work import LoadKind
from backspan.core.numbers import ends_around, exact_sum, larger
from backspan.core.quantities import MASS
from backspan.core.quantities.named import QUANTITIES
from backspan.core.sheet.case import Case
from backspan.core.sheet.decks import line_out
from backspan.core.sheet.limits import limit_of, needed_value
from backspan.core.sheet.plausible_beams import of_beam, of_fulcrum
from backspan.core.sheet.reads import Read, beside, read_of
from backspan.core.sheet.subjects import BeamSubject

_HOIST = "load.least-hoist"
_PULLS = (("stall_load", "stall_load_to_rated"), ("limiter_trip", "limiter_trip_to_rated"))
_OF_LANYARD = ("lanyard_length", "deceleration", "most_force", "grab_slide", "harness_shift")


def plausible_reads(case: Case) -> Iterator[Read]:
    """Every number that has a band, those worked out of others among them."""
    for point in case.points:
        support = point.counterweighted_beam
        if support is not None:
            place = (*case.place_of(point), "counterweighted_beam")
            yield from of_beam(case, BeamSubject(point, support, case.name_of(point), place))
            yield from of_fulcrum(support, place)
        yield from _of_hoist(case.hoist(point.hoist))
    for hung in () if case.drop.rig is None else case.drop.rig.stages:
        yield from _of_stage(case, hung)
    for line in () if case.drop.rig is None else case.drop.rig.lines:
        yield from _of_lifeline(case, line)
    yield from _of_drop(case)


def _of_hoist(hoist: Hoist) -> Iterator[Read]:
    """What is on its plate, and each of its other numbers over its rated load."""
    place, rated = ("kit", "hoists", hoist.id), hoist.rated_load.value
    yield read_of("rated_load", hoist, place)
    for name, over in _PULLS:
        pull = read_of(name, hoist, place)
        if pull.stated is not None:
            yield beside(over, pull.as_stated / rated, pull.stated, pull.place)
    trip, stall = hoist.limiter_trip, hoist.stall_load
    if trip is not None and stall is not None:
        share = trip.value / stall.value
        yield beside("limiter_trip_to_stall", share, trip, (*place, "limiter_trip"))
    if hoist.mass is not None:
        # A hoist lighter than what it lifts is what the trade expects.
        share = weight(mass=hoist.mass.value).value / rated
        yield beside("hoist_mass", share, hoist.mass, (*place, "mass"))


def _of_stage(case: Case, hung: HungStage) -> Iterator[Read]:
    """What is on its plate, what hangs with it, and who rides."""
    stage = case.stage(hung.stage)
    place = ("kit", "stages", stage.id)
    yield read_of("stage_length", stage, place)
    yield read_of("intended_load", stage, place)
    if stage.dead_mass is not None:
        of_dead, dead = (*place, "dead_mass"), stage.dead_mass
        yield beside("hanging_to_dead", exact_sum(_hanging(case, hung)) / dead.value, dead, of_dead)
        # What is left for the deck with its rails and stirrups, over its length.
        hung_with_it = exact_sum((*_hanging(case, hung), *_hoists_at_least(case, hung)))
        long = read_of("stage_length", stage, place).stated
        if long is not None:
            yield beside("deck_mass", (dead.value - hung_with_it) / long.value, dead, of_dead)
    yield from _gap_to_face(case, hung)
    around = (*case.place, "rig", "stages", hung.stage, "work")
    for step in hung.work or ():
        for load in step.loads:
            if load.kind is LoadKind.PERSON:
                at = (*around, step.id, "loads", load.id, "mass")
                yield Read(QUANTITIES["person_mass"], load.mass, at)


def _gap_to_face(case: Case, hung: HungStage) -> Iterator[Read]:
    """The gap that was taped, against what its lines and its width leave; the worst line alone."""
    taped, wide = hung.found.to_face, case.stage(hung.stage).width
    if taped is None or wide is None:
        return
    outs = [line_out(point) for point in case.points if point.id in hung.from_points]
    gaps = [ends_around(out, long=wide.value)[0] for out in outs if out is not None]
    if gaps:
        apart = larger(*(abs(gap - taped.value) for gap in gaps))
        at = (*case.place, "rig", "stages", hung.stage, "found", "to_face")
        yield beside("to_face_apart", apart, taped, at)


def _hanging(case: Case, hung: HungStage) -> Iterator[float]:
    """The masses that are stated of what hangs with a stage: hoists, ropes, bottom weights."""
    for point in case.points:
        if point.id in hung.from_points:
            masses = (case.hoist(point.hoist).mass, point.rope_mass, point.bottom_weight)
            yield from (one.value for one in masses if one is not None)


def _hoists_at_least(case: Case, hung: HungStage) -> Iterator[float]:
    """For each hoist whose mass nobody stated what one weighs at the least."""
    least = limit_of(needed_value(case.practice, _HOIST), MASS)
    for point in case.points:
        if point.id in hung.from_points and case.hoist(point.hoist).mass is None:
            yield least


def _of_lifeline(case: Case, line: Lifeline) -> Iterator[Read]:
    """What a rope, its end and a lanyard do when they arrest a fall."""
    kit = case.project.kit
    rope = None if line.rope is None else kit.rope(line.rope)
    end = None if line.termination is None else kit.termination(line.termination)
    lanyard = None if line.lanyard is None else kit.lanyard(line.lanyard)
    if rope is not None:
        place = ("kit", "ropes", rope.id)
        yield read_of("elongation", rope, place)
        breaking = (*place, "breaking_force")
        yield Read(QUANTITIES["lifeline_breaking_force"], rope.breaking_force, breaking)
        thick, strength = rope.diameter, rope.breaking_force
        # A rope of wire is stronger, and no word passes it as a lifeline.
        if strength is not None and rope.kind is not RopeKind.WIRE:
            share = strength.value / (thick.value * thick.value)
            yield beside("lifeline_strength_to_diameter", share, thick, (*place, "diameter"))
    if end is not None and end.kind is TerminationKind.KNOT:
        keeps = ("kit", "terminations", end.id, "efficiency")
        yield Read(QUANTITIES["knot_efficiency"], end.efficiency, keeps)
    if lanyard is not None:
        place = ("kit", "lanyards", lanyard.id)
        for name in _OF_LANYARD:
            yield read_of(name, lanyard, place)


def _of_drop(case: Case) -> Iterator[Read]:
    """How far the stage goes down, and how far that would lead below the ground."""
    yield read_of("drop_height", case.drop, case.place)
    height, clear, top = case.drop.height, case.drop.clear_below, _top_of_wall(case)
    if height is not None and clear is not None and top is not None:
        below = height.value + clear.value - top
        yield beside("below_ground", below, height, (*case.place, "height"))


def _top_of_wall(case: Case) -> float | None:
    """How high the wall at the drop's edge ends above the ground; None where there is no roof."""
    for roof in case.project.site.roofs:
        for edge in roof.edges:
            if (roof.id, edge.id) == (case.drop.roof, case.drop.edge):
                wall = 0.0 if edge.parapet is None else edge.parapet.height.value
                return roof.level.value + wall
    return None
