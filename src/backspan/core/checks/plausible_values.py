"""Values that are possible but unlikely: kept, and questioned until a second person has looked."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass, replace

from backspan.core.findings import Decider, DoesNotApply, Finding, Message, Need
from backspan.core.mechanics.tipping import weight
from backspan.core.model.evidence import StatedValue
from backspan.core.model.kit import Hoist
from backspan.core.model.rigs import CounterweightedBeam, SuspensionPoint
from backspan.core.numbers import exact_sum, meets, surely_above
from backspan.core.quantities import FORCE, LENGTH, MASS, RATIO, Amount, Dimension
from backspan.core.sheet.beam_as_built import as_built, beam_reads
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.inputs import Inputs, where
from backspan.core.sheet.limits import limit_of, needed_value
from backspan.core.sheet.presence import judge_presence
from backspan.core.sheet.sheet import BareSheet
from backspan.core.sheet.subjects import BeamSubject

ID = "plausible-values"


@dataclass(frozen=True, slots=True)
class Questioned:
    """A value outside the band the trade knows, or against another value."""

    name: str
    place: Place
    stated: StatedValue[float]
    dimension: Dimension
    key: str
    least: bool


def judge(case: Case) -> Iterator[Answer]:
    """One finding a questioned value; one reason for the drop when nothing is questioned."""
    questioned = list(_questions(case))
    if not questioned:
        yield DoesNotApply(ID, case.subject, case.place, Message("na.nothing-questioned"))
    for one in questioned:
        again = one.stated.checked_by
        if again is not None and again != one.stated.by:
            words = (("input", one.name), ("by", again))
            yield DoesNotApply(ID, case.subject, one.place, Message("na.looked-again", words))
        else:
            yield _finding(case, one)


def _finding(case: Case, one: Questioned) -> Finding:
    inputs = Inputs(case)
    value = Amount(one.stated.value, one.dimension)
    inputs.fact(one.name, value, one.place)
    rule = needed_value(case.practice, one.key)
    bound = Amount(limit_of(rule, one.dimension), one.dimension)
    words = (("input", one.name), ("value", value), ("bound", bound))
    need = Need(Decider.COMPETENT_PERSON, Message("need.look-again", words))
    return judge_presence(
        inputs,
        check=ID,
        subject=case.subject,
        place=one.place,
        message=Message("unlikely.small" if one.least else "unlikely.large", words),
        met=True,
        rules=(rule,),
        refer=(need,),
        question=f"{one.name} {where(one.place)} {rule.key}",
    )


def _questions(case: Case) -> Iterator[Questioned]:
    seen: set[Place] = set()
    for point in case.points:
        for one in (*_of_beam(case, point), *_of_hoist(case, case.hoist(point.hoist))):
            if one.place not in seen:
                seen.add(one.place)
                yield one
    for hung in () if case.drop.rig is None else case.drop.rig.stages:
        stage = case.stage(hung.stage)
        place = ("kit", "stages", stage.id, "length")
        yield from _band(case, "stage_length", stage.length, LENGTH, place, most="stage-length")


def _of_beam(case: Case, point: SuspensionPoint) -> Iterator[Questioned]:
    beam = point.counterweighted_beam
    if beam is None:
        return
    place = (*case.place_of(point), "counterweighted_beam")
    yield from _band(
        case, "reach", beam.reach, LENGTH, (*place, "reach"), least="reach", most="reach"
    )
    yield from _band(
        case,
        "backspan",
        beam.backspan,
        LENGTH,
        (*place, "backspan"),
        least="backspan",
        most="backspan",
    )
    yield from _taped_against_stack(case, BeamSubject(point, beam, case.name_of(point), place))
    for group in beam.stack.groups:
        piece = case.piece(group.piece)
        mass_place = ("kit", "pieces", piece.id, "mass")
        yield from _band(
            case,
            "piece_mass",
            piece.mass,
            MASS,
            mass_place,
            least="piece-mass",
            most="piece-mass",
        )
    yield from _pieces_on_beam(case, beam, (*place, "stack", "groups"))


def _pieces_on_beam(case: Case, beam: CounterweightedBeam, place: Place) -> Iterator[Questioned]:
    """All pieces of one beam together; looked at again when every count was."""
    counts = [group.count for group in beam.stack.groups]
    if counts:
        # Whoever counted a group and counted it again is still one person.
        again = [one.checked_by if one.checked_by != one.by else None for one in counts]
        total = StatedValue(
            exact_sum(one.value for one in counts),
            by=counts[0].by,
            checked_by=again[0] if all(again) else None,
        )
        yield from _band(case, "pieces", total, RATIO, place, most="pieces")


def _taped_against_stack(case: Case, subject: BeamSubject) -> Iterator[Questioned]:
    """The taped backspan against the one the beam and the stack give, where both are known."""
    beam, taped = beam_reads(case, subject), subject.support.backspan
    if taped is None or beam.from_stack:
        return
    built = as_built(BareSheet({}, {}), replace(beam, from_stack=True))
    if math.isnan(built.backspan) or not surely_above(built.counterweight, limit=0.0):
        return
    apart = StatedValue(abs(taped.value - built.backspan), by=taped.by, checked_by=taped.checked_by)
    place, most = beam.backspan.place, "backspan-against-stack"
    yield from _band(case, "backspan_apart", apart, LENGTH, place, most=most)


def _of_hoist(case: Case, hoist: Hoist) -> Iterator[Questioned]:
    place = ("kit", "hoists", hoist.id)
    yield from _band(
        case,
        "rated_load",
        hoist.rated_load,
        FORCE,
        (*place, "rated_load"),
        least="rated-load",
        most="rated-load",
    )
    pulls = (
        ("stall_load", "stall_load_to_rated", hoist.stall_load),
        ("limiter_trip", "limiter_trip_to_rated", hoist.limiter_trip),
    )
    for field, name, stated in pulls:
        if stated is not None:
            to_rated = StatedValue(
                stated.value / hoist.rated_load.value, by=stated.by, checked_by=stated.checked_by
            )
            yield from _band(
                case,
                name,
                to_rated,
                RATIO,
                (*place, field),
                least="pull-to-rated-load",
            )
    mass = hoist.mass
    if mass is not None:
        # A practice value like the others: a hoist lighter than what it lifts is what is expected.
        heavy = StatedValue(
            weight(mass=mass.value).value / hoist.rated_load.value,
            by=mass.by,
            checked_by=mass.checked_by,
        )
        at, most = (*place, "mass"), "hoist-mass-to-rated-load"
        yield from _band(case, "hoist_mass", heavy, RATIO, at, most=most)


def _band(
    case: Case,
    name: str,
    stated: StatedValue[float] | None,
    dimension: Dimension,
    place: Place,
    *,
    least: str | None = None,
    most: str | None = None,
) -> Iterator[Questioned]:
    if stated is None:
        return
    for side, bound in (("least", least), ("most", most)):
        if bound is None:
            continue
        key = f"plausible.{side}-{bound}"
        limit = limit_of(needed_value(case.practice, key), dimension)
        low, high = (limit, stated.value) if side == "least" else (stated.value, limit)
        if not meets(demand=low, capacity=high):
            yield Questioned(name, place, stated, dimension, key, least=side == "least")


CHECK = Check(ID, judge)
