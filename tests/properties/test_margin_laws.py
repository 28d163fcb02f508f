"""Laws of the margins: take what is left and the rig holds, take one step more and it does not."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from hypothesis import assume, given

from backspan.core.findings import Margin, Verdict
from backspan.core.model.project import Project
from backspan.core.model.rigs import PieceGroup
from backspan.core.quantities import FORCE, TAPE_STEP, Amount, Style, parse
from backspan.core.review.run import with_margins
from tests.properties.rig_strategies import (
    COUNT,
    TEXTS,
    beam_fits,
    contradicted,
    is_stacked,
    moved,
    rigs,
    tipping,
)
from tests.unit.core.rigs import ARM, HOIST, OSHA, QUEBEC, STACK, at, case, count, force, put

NUMBERED = tuple(one for one in TEXTS if one != QUEBEC)

pytestmark = pytest.mark.law("tipping")

Change = Callable[[Project, int], Project]


def margins(project: Project) -> dict[str, Margin]:
    """What is left of the left point, by name."""
    (found,) = with_margins(case(project), (tipping(project),))
    return {one.id: one for one in found.margins}


def stands(project: Project) -> bool:
    """Whether the left point would hold, if what is only remembered were confirmed."""
    found = tipping(project)
    return found.verdict in {Verdict.PASS, Verdict.REFER} and not contradicted(found)


def falls(project: Project) -> bool:
    """Whether the left point is known not to hold, by the shorter backspan where two are known."""
    found = tipping(project)
    return found.verdict is Verdict.FAIL or contradicted(found)


def longer(*fields: tuple[str, int]) -> Change:
    """Lengths of the left beam that change by so many steps."""

    def change(project: Project, steps: int) -> Project:
        for name, sign in fields:
            place = STACK if name == "tail_gap" else ARM
            by = sign * steps * TAPE_STEP[project.units]
            project = moved(project, (*place, name), by)
        return project

    return change


def hold_to(project: Project, name: str, change: Change) -> None:
    """What is left may be taken, each step of it, and not one more; what is short is needed."""
    told = margins(project).get(name)
    assume(told is not None)
    assert told is not None
    step = TAPE_STEP[project.units]
    steps = round(told.value.value / step) if isinstance(told.value, Amount) else int(told.value)
    if told.beyond:
        assert not falls(change(project, -steps))
        assert falls(change(project, 1 - steps))
        return
    fits = beam_fits(project)
    for part in {0, steps // 2, steps}:
        there = change(project, part)
        assert stands(there)
        assert beam_fits(there) or not fits
    beyond = change(project, steps + 1)
    assert not stands(beyond) or (fits and not beam_fits(beyond))


@given(rigs(texts=NUMBERED))
def test_more_reach(rig: Project) -> None:
    hold_to(rig, "more-reach", longer(("reach", 1)))


@given(rigs(texts=NUMBERED))
def test_less_backspan(rig: Project) -> None:
    stacked = longer(("tail_gap", 1))
    hold_to(rig, "less-backspan", stacked if is_stacked(rig) else longer(("backspan", -1)))


@given(rigs(texts=NUMBERED))
def test_fulcrum_inboard(rig: Project) -> None:
    both = longer(("reach", 1), ("backspan", -1))
    hold_to(rig, "fulcrum-inboard", longer(("reach", 1)) if is_stacked(rig) else both)


@given(rigs(texts=NUMBERED))
def test_pieces_spare(rig: Project) -> None:
    """Varied in the innermost group, the one that is told of."""
    there = at(rig, COUNT).value
    told = margins(rig).get("pieces-spare")
    # All of them may be spare, where others hold or the beam is credited.
    assume(told is None or told.beyond or told.value != there)
    hold_to(rig, "pieces-spare", lambda project, steps: put(project, COUNT, count(there - steps)))


@given(rigs(texts=NUMBERED, stacked=True))
def test_where_no_number_of_pieces_is_enough_none_is(rig: Project) -> None:
    """Under a hoist so large that hardly any beam is long enough for its counterweight."""
    rig = put(rig, (*HOIST, "rated_load"), force("40,000 lb"))
    assume("no-number-of-pieces" in margins(rig))
    for number in (0, 5, 15, 40):
        filled = put(rig, COUNT, count(number))
        assert not (stands(filled) and beam_fits(filled))


@given(rigs(texts=(OSHA,)))
def test_most_rated_and_most_stall_load(rig: Project) -> None:
    step = 10.0 if rig.units is Style.METRIC else parse("1 lb", FORCE)
    light = put(rig, (*HOIST, "stall_load"), force("1 lb"))
    light = put(light, (*HOIST, "rated_load"), force("1 lb"))
    told = margins(rig)
    for name in ("rated", "stall"):
        most = told.get(f"most-{name}-load")
        place = (*HOIST, f"{name}_load", "value")
        if most is not None and isinstance(most.value, Amount) and stands(light):
            assert stands(put(light, place, most.value.value))
            assert not stands(put(light, place, most.value.value + step))


@given(rigs(texts=NUMBERED))
def test_something_is_left_exactly_where_it_holds(rig: Project) -> None:
    short = falls(rig)
    for name, one in margins(rig).items():
        if name in {"more-reach", "less-backspan", "fulcrum-inboard", "pieces-spare"}:
            assert one.beyond is short


@given(rigs(texts=(OSHA,), stacked=False))
def test_a_piece_more_leaves_a_piece_more(rig: Project) -> None:
    rig = put(rig, (*STACK, "tail_gap"), None)
    assume("pieces-spare" in margins(rig))

    def spare(project: Project) -> int:
        one = margins(project)["pieces-spare"]
        assert isinstance(one.value, int)
        return -one.value if one.beyond else one.value

    assert spare(moved(rig, COUNT, 1)) == spare(rig) + 1


@given(rigs(texts=(OSHA,), stacked=False))
def test_pieces_of_one_kind_in_two_groups_are_pieces(rig: Project) -> None:
    rig = put(rig, (*STACK, "tail_gap"), None)
    (first, *_) = at(rig, (*STACK, "groups"))
    number = first.count.value
    assume(number > 1)
    whole = put(rig, (*STACK, "groups"), (PieceGroup("P", count(number)),))
    parts = (PieceGroup("P", count(1)), PieceGroup("P", count(number - 1)))
    split = put(rig, (*STACK, "groups"), parts)
    assert stands(split) is stands(whole)
