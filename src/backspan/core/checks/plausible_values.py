"""Values that are possible but unlikely: kept, and questioned until a second person has looked."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass, replace

from backspan.core.findings import Decider, DoesNotApply, Finding, Message, Need
from backspan.core.mechanics.tipping import weight
from backspan.core.model.evidence import StatedValue
from backspan.core.model.kit import Hoist
from backspan.core.model.rigs import CounterweightedBeam
from backspan.core.model.topics import Topic
from backspan.core.numbers import exact_sum, meets, surely_above
from backspan.core.quantities import RATIO, Amount, Dimension
from backspan.core.quantities.named import QUANTITIES
from backspan.core.rules.selected import SelectedValue
from backspan.core.sheet.beam_as_built import BeamReads, as_built, beam_reads, inboard_of
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.limits import limit_of, needed_value
from backspan.core.sheet.presence import judge_presence
from backspan.core.sheet.reads import Read, read_of
from backspan.core.sheet.section_weight import section_over_mass
from backspan.core.sheet.sheet import BareSheet
from backspan.core.sheet.subjects import BeamSubject
from backspan.core.sheet.witness import where

ID = "plausible-values"
_PULLS = (("stall_load", "stall_load_to_rated"), ("limiter_trip", "limiter_trip_to_rated"))


@dataclass(frozen=True, slots=True)
class Questioned:
    """A value outside the band the trade knows, or too far from another value."""

    read: Read
    stated: StatedValue[float] | StatedValue[int]
    rule: SelectedValue
    least: bool


def judge(case: Case) -> Iterator[Answer]:
    """One finding a questioned value; one reason for the drop when nothing is questioned."""
    questioned = list(_questions(case))
    if not questioned:
        yield DoesNotApply(ID, case.subject, case.place, Message("na.nothing-questioned"))
    for one in questioned:
        again = one.stated.checked_by
        if again is not None and one.stated.by not in {None, again}:
            words = (("input", one.read.quantity.name), ("by", again))
            reason = Message("na.looked-again", words)
            yield DoesNotApply(ID, case.subject, one.read.place, reason)
        else:
            yield _finding(case, one)


def _finding(case: Case, one: Questioned) -> Finding:
    inputs = Inputs(case)
    name, place = one.read.quantity.name, one.read.place
    dimension = _dimension(one.read)
    value = Amount(one.stated.value, dimension)
    inputs.fact(name, value, place)
    bound = Amount(limit_of(one.rule, dimension), dimension)
    words = (("input", name), ("value", value), ("bound", bound))
    need = Need(Decider.COMPETENT_PERSON, Message("need.look-again", words))
    return judge_presence(
        inputs,
        check=ID,
        subject=case.subject,
        place=place,
        message=Message("unlikely.small" if one.least else "unlikely.large", words),
        met=True,
        rules=(one.rule,),
        refer=(need,),
        question=f"{name} {where(place)} {one.rule.key}",
    )


def _questions(case: Case) -> Iterator[Questioned]:
    seen: set[Place] = set()
    for read in _numbers(case):
        for one in _outside(case, read):
            if read.place not in seen:
                seen.add(read.place)
                yield one


def _numbers(case: Case) -> Iterator[Read]:
    """Every number that has a band, those worked out of others among them."""
    for point in case.points:
        support = point.counterweighted_beam
        if support is not None:
            place = (*case.place_of(point), "counterweighted_beam")
            yield from _of_beam(case, BeamSubject(point, support, case.name_of(point), place))
            yield from _of_fulcrum(support, place)
        yield from _of_hoist(case.hoist(point.hoist))
    for hung in () if case.drop.rig is None else case.drop.rig.stages:
        stage = case.stage(hung.stage)
        yield read_of("stage_length", stage, ("kit", "stages", stage.id))
        yield read_of("intended_load", stage, ("kit", "stages", stage.id))


def _of_fulcrum(support: CounterweightedBeam, place: Place) -> Iterator[Read]:
    """Where the beam bears, at the front and behind, and what it bears on."""
    yield read_of("rear_stand", support, place)
    for name in ("setback", "fulcrum_height", "plate_length", "plate_width", "surface_strength"):
        yield read_of(name, support.fulcrum, (*place, "fulcrum"))


def _of_beam(case: Case, subject: BeamSubject) -> Iterator[Read]:
    beam = beam_reads(case, subject)
    yield from (beam.reach, beam.backspan)
    yield from _taped_against_stack(beam)
    yield from _tip_against_inboard(beam)
    yield from _of_section(case, subject)
    yield from _of_label(case, subject)
    yield from (group.mass for group in beam.groups)
    counts = [group.count for group in subject.support.stack.groups]
    if counts:
        # Whoever counted a group and counted it again is still one person.
        again = [one.checked_by if one.by not in {None, one.checked_by} else None for one in counts]
        whole = StatedValue(
            exact_sum(one.value for one in counts),
            by=counts[0].by,
            checked_by=again[0] if all(again) else None,
        )
        yield Read(QUANTITIES["pieces"], whole, (*subject.place, "stack", "groups"))


def _of_section(case: Case, subject: BeamSubject) -> Iterator[Read]:
    """What the sizes of its section weigh, over what the beam weighs."""
    share = section_over_mass(case, subject)
    if share is not None:
        place = ("kit", "beams", case.beam(subject.support.beam).id, "section")
        yield Read(QUANTITIES["section_to_mass"], share, place)


def _of_label(case: Case, subject: BeamSubject) -> Iterator[Read]:
    """What the label of the beam allows."""
    beam = case.beam(subject.support.beam)
    place = ("kit", "beams", beam.id, "label")
    for name in ("label_load", "label_reach", "label_pieces", "label_mass"):
        yield read_of(name, beam.label, place)


def _taped_against_stack(beam: BeamReads) -> Iterator[Read]:
    """The taped backspan against the one the beam and the stack give, where both are known."""
    taped = beam.backspan.stated
    if taped is None or beam.from_stack:
        return
    built = as_built(BareSheet({}, {}), replace(beam, from_stack=True, both=False))
    if math.isnan(built.backspan) or not surely_above(built.counterweight, limit=0.0):
        return
    apart = abs(taped.value - built.backspan)
    yield _beside("backspan_apart", apart, taped, beam.backspan.place)


def _tip_against_inboard(beam: BeamReads) -> Iterator[Read]:
    """What the beam has beyond the line over what it has inboard, where both are known."""
    tip = beam.tip.stated
    inboard = inboard_of(BareSheet({}, {}), beam, beam.reach.as_stated)
    if tip is not None and surely_above(inboard, limit=0.0):
        yield _beside("tip_to_inboard", tip.value / inboard, tip, beam.tip.place)


def _of_hoist(hoist: Hoist) -> Iterator[Read]:
    """What is on its plate, and each of its other numbers over its rated load."""
    place, rated = ("kit", "hoists", hoist.id), hoist.rated_load.value
    yield read_of("rated_load", hoist, place)
    for name, beside in _PULLS:
        pull = read_of(name, hoist, place)
        if pull.stated is not None:
            yield _beside(beside, pull.as_stated / rated, pull.stated, pull.place)
    trip, stall = hoist.limiter_trip, hoist.stall_load
    if trip is not None and stall is not None:
        share = trip.value / stall.value
        yield _beside("limiter_trip_to_stall", share, trip, (*place, "limiter_trip"))
    if hoist.mass is not None:
        # A hoist lighter than what it lifts is what the trade expects.
        share = weight(mass=hoist.mass.value).value / rated
        yield _beside("hoist_mass", share, hoist.mass, (*place, "mass"))


def _beside(
    name: str, number: float, stated: StatedValue[float] | StatedValue[int], place: Place
) -> Read:
    """A number worked out of a stated one: who looked at that one again looked at this."""
    worked_out = StatedValue(number, by=stated.by, checked_by=stated.checked_by)
    return Read(QUANTITIES[name], worked_out, place)


def _outside(case: Case, read: Read) -> Iterator[Questioned]:
    stated, quantity = read.stated, read.quantity
    if stated is None:
        return
    for side, bound in (("least", quantity.least), ("most", quantity.most)):
        if not bound:
            continue
        rule = needed_value(case.practice, f"plausible.{side}-{bound}")
        limit = limit_of(rule, _dimension(read))
        low, high = (limit, stated.value) if side == "least" else (stated.value, limit)
        if not meets(demand=low, capacity=high):
            yield Questioned(read, stated, rule, least=side == "least")


def _dimension(read: Read) -> Dimension:
    return read.quantity.dimension or RATIO


CHECK = Check(ID, Topic.TIPPING, judge)
