"""Laws of the margins: take what is left and the rig holds, take one step more and it does not."""

from __future__ import annotations

import pytest
from hypothesis import assume, given

from backspan.core.findings import Verdict
from backspan.core.model.project import Project
from backspan.core.model.rigs import PieceGroup
from backspan.core.quantities import FORCE, Style, parse
from tests.properties.rig_strategies import (
    COUNT,
    RANK,
    TEXTS,
    is_stacked,
    moved,
    rigs,
    stack_fits,
    tipping,
)
from tests.unit.core.rigs import ARM, HOIST, OSHA, QUEBEC, STACK, at, count, force, margin, put

NUMBERED = tuple(one for one in TEXTS if one != QUEBEC)

pytestmark = pytest.mark.law("tipping")


def stands(project: Project) -> bool:
    """Whether the left point would hold, if what is only remembered were confirmed."""
    return tipping(project).verdict in {Verdict.PASS, Verdict.REFER}


def step_of(project: Project) -> float:
    return 0.001 if project.units is Style.METRIC else 0.0254 / 16


def told(project: Project, name: str) -> bool:
    return name in {one.id for one in tipping(project).margins}


def beam_may_harm(project: Project) -> bool:
    """Whether the beam's own weight comes into the sum, or would have to be looked at."""
    names = {used.name for used in tipping(project).inputs}
    return "beam_mass" in names


@given(rigs(texts=NUMBERED))
def test_more_reach(rig: Project) -> None:
    assume(told(rig, "more-reach"))
    left = margin(tipping(rig), "more-reach")
    assume(at(rig, (*ARM, "reach")).value + left > step_of(rig))
    at_most = moved(rig, (*ARM, "reach"), left)
    if not beam_changes_sides(rig, at_most):
        assert stands(at_most)
    further = moved(rig, (*ARM, "reach"), left + step_of(rig))
    assert not stands(further) or beam_may_harm(
        moved(rig, (*ARM, "reach"), left + 2 * step_of(rig))
    )


def beam_changes_sides(before: Project, after: Project) -> bool:
    """Whether the beam's own weight did harm before and is not looked at after."""
    return beam_may_harm(before) and not beam_may_harm(after)


@given(rigs(texts=NUMBERED, stacked=False))
def test_less_backspan(rig: Project) -> None:
    assume(told(rig, "less-backspan"))
    left = margin(tipping(rig), "less-backspan")
    least = at(rig, (*ARM, "backspan")).value - left
    assume(least > step_of(rig))
    at_least = moved(rig, (*ARM, "backspan"), -left)
    assume(beam_may_harm(at_least) == beam_may_harm(rig))
    assert stands(at_least)
    assert not stands(moved(rig, (*ARM, "backspan"), -left - step_of(rig)))


@given(rigs(texts=NUMBERED))
def test_fulcrum_inboard(rig: Project) -> None:
    assume(told(rig, "fulcrum-inboard"))
    left = margin(tipping(rig), "fulcrum-inboard")
    assume(at(rig, (*ARM, "reach")).value + left > step_of(rig))

    def inboard(by: float) -> Project:
        shifted = moved(rig, (*ARM, "reach"), by)
        return shifted if is_stacked(rig) else moved(shifted, (*ARM, "backspan"), -by)

    at_most = inboard(left)
    if not beam_changes_sides(rig, at_most):
        assert stands(at_most)
    assert not stands(inboard(left + step_of(rig))) or beam_may_harm(
        inboard(left + 2 * step_of(rig))
    )


@given(rigs(texts=NUMBERED))
def test_pieces_spare(rig: Project) -> None:
    """Varied in the innermost group, the one that is told of."""
    assume(told(rig, "pieces-spare"))
    spare = margin(tipping(rig), "pieces-spare")
    there = at(rig, COUNT).value
    assume(there - spare >= 0)
    needed = put(rig, COUNT, count(there - spare))
    assert stands(needed)
    if there - spare > 0:
        assert not stands(put(rig, COUNT, count(there - spare - 1)))


@given(rigs(texts=NUMBERED, stacked=True))
def test_where_no_number_of_pieces_is_enough_none_is(rig: Project) -> None:
    """Under a hoist so large that hardly any beam is long enough for its counterweight."""
    rig = put(rig, (*HOIST, "rated_load"), force("40,000 lb"))
    assume(told(rig, "no-number-of-pieces"))
    for number in (0, 5, 15, 40):
        filled = put(rig, COUNT, count(number))
        if stack_fits(filled):
            assert not stands(filled)


@given(rigs(texts=(OSHA,)))
def test_most_rated_and_most_stall_load(rig: Project) -> None:
    assume(told(rig, "most-rated-load"))
    step = 10.0 if rig.units is Style.METRIC else parse("1 lb", FORCE)
    light = put(rig, (*HOIST, "stall_load"), force("1 lb"))
    light = put(light, (*HOIST, "rated_load"), force("1 lb"))
    for name in ("rated", "stall"):
        most = margin(tipping(rig), f"most-{name}-load")
        place = (*HOIST, f"{name}_load", "value")
        if most > 0.0 and stands(light):
            assert stands(put(light, place, most))
            assert not stands(put(light, place, most + step))


@given(rigs(texts=NUMBERED))
def test_something_is_left_exactly_where_it_holds(rig: Project) -> None:
    found = tipping(rig)
    for one in found.margins:
        if one.id in {"more-reach", "less-backspan", "fulcrum-inboard", "pieces-spare"}:
            assert one.beyond is not (RANK[found.verdict] > RANK[Verdict.MISSING])


@given(rigs(texts=(OSHA,), stacked=False))
def test_a_piece_more_leaves_a_piece_more(rig: Project) -> None:
    spare = margin(tipping(rig), "pieces-spare")
    more = moved(rig, COUNT, 1)
    assert margin(tipping(more), "pieces-spare") == spare + 1


@given(rigs(texts=(OSHA,), stacked=False))
def test_pieces_of_one_kind_in_two_groups_are_pieces(rig: Project) -> None:
    (first, *_) = at(rig, (*STACK, "groups"))
    number = first.count.value
    assume(number > 1)
    whole = put(rig, (*STACK, "groups"), (PieceGroup("P", count(number)),))
    parts = (PieceGroup("P", count(1)), PieceGroup("P", count(number - 1)))
    split = put(rig, (*STACK, "groups"), parts)
    assert stands(split) is stands(whole)
