"""Laws of the margins: take what is left and the rig holds, take one step more and it does not.

They are margins of the tipping finding. A margin that is used up is told as what is short: make
up for it and the rig holds, make up for one step less and it does not.
"""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from backspan.core.findings import ComparisonRow, Verdict
from backspan.core.model.basis import ReadingChoice, RuleChoice
from backspan.core.model.project import Project
from backspan.core.model.rigs import PieceGroup
from backspan.core.numbers import meets
from backspan.core.quantities import FORCE, Style, parse
from backspan.core.review import review
from backspan.core.review.comparison import compare
from backspan.core.rules.selected import RuleLibrary
from tests.properties.rig_strategies import (
    COUNT,
    RANK,
    TEXTS,
    beam_holds_backspan,
    is_stacked,
    moved,
    one_kind_of_piece,
    rigs,
    stack_fits,
    stands,
    tipping,
)
from tests.unit.core.rigs import (
    ARM,
    HOIST,
    LIBRARY,
    ON,
    OSHA,
    QUEBEC,
    STACK,
    at,
    case,
    count,
    force,
    margin,
    on_basis,
    put,
)

SOME = settings(max_examples=60)
NUMBERED = tuple(one for one in TEXTS if one != QUEBEC)
#: Not so far from what the beam holds that every margin is yards long.
WITHIN_REACH = st.floats(0.8, 1.25)


def step_of(project: Project) -> float:
    return 0.001 if project.units is Style.METRIC else 0.0254 / 16


def told(project: Project, name: str) -> bool:
    return name in {one.id for one in tipping(project).margins}


def beam_may_harm(project: Project) -> bool:
    """Whether the beam's own weight comes into the sum, or would have to be looked at."""
    return "beam_mass" in {used.name for used in tipping(project).inputs}


@given(rigs(texts=NUMBERED, share=WITHIN_REACH))
@SOME
def test_more_reach_is_what_is_left_and_no_more(rig: Project) -> None:
    """It may end sooner only where the beam's own weight would have to be looked at."""
    left = margin(tipping(rig), "more-reach")
    assume(at(rig, (*ARM, "reach")).value + left > step_of(rig))
    assert stands(moved(rig, (*ARM, "reach"), left))
    further = moved(rig, (*ARM, "reach"), left + step_of(rig))
    assert not stands(further) or beam_may_harm(
        moved(rig, (*ARM, "reach"), left + 2 * step_of(rig))
    )


@given(rigs(texts=NUMBERED, share=WITHIN_REACH))
@SOME
def test_less_backspan_is_what_is_left_and_no_more(rig: Project) -> None:
    """Of a taped backspan, or of a stack that stands further from the tail."""
    left = margin(tipping(rig), "less-backspan")

    def nearer(by: float) -> Project:
        if is_stacked(rig):
            return moved(rig, (*STACK, "tail_gap"), by)
        return moved(rig, (*ARM, "backspan"), -by)

    if is_stacked(rig):
        assume(at(rig, (*STACK, "tail_gap")).value + left >= 0.0)
    else:
        assume(at(rig, (*ARM, "backspan")).value - left > step_of(rig))
    at_least, further = nearer(left), nearer(left + step_of(rig))
    # A backspan longer than the beam is no measurement of it: the beam-length finding fails.
    assume(beam_holds_backspan(at_least) and beam_holds_backspan(further))
    assert stands(at_least)
    assert not stands(further)


@given(rigs(texts=NUMBERED, share=WITHIN_REACH))
@SOME
def test_fulcrum_inboard_is_what_is_left_and_no_more(rig: Project) -> None:
    """Reach grows and backspan shrinks by the same length; the exception is that of the reach."""
    left = margin(tipping(rig), "fulcrum-inboard")
    assume(at(rig, (*ARM, "reach")).value + left > step_of(rig))

    def inboard(by: float) -> Project:
        shifted = moved(rig, (*ARM, "reach"), by)
        return shifted if is_stacked(rig) else moved(shifted, (*ARM, "backspan"), -by)

    assert stands(inboard(left))
    assert not stands(inboard(left + step_of(rig))) or beam_may_harm(
        inboard(left + 2 * step_of(rig))
    )


@given(rigs(texts=NUMBERED, share=WITHIN_REACH))
@SOME
def test_pieces_spare_are_spare_and_one_more_is_not(rig: Project) -> None:
    """Pieces needed: the achieved moment with so many holds and with one fewer it does not.

    Varied in the innermost group, the one that is told of.
    """
    assume(told(rig, "pieces-spare"))
    spare = margin(tipping(rig), "pieces-spare")
    there = at(rig, COUNT).value
    assume(there - spare >= 0)
    needed = put(rig, COUNT, count(there - spare))
    assert stands(needed)
    if there - spare > 0:
        assert not stands(put(rig, COUNT, count(there - spare - 1)))


@given(rigs(texts=NUMBERED, stacked=True))
@settings(max_examples=15)
def test_where_no_number_of_pieces_is_enough_none_is(rig: Project) -> None:
    """Under a hoist so large that hardly any beam is long enough for its counterweight."""
    rig = put(rig, (*HOIST, "rated_load"), force("40,000 lb"))
    assume(told(rig, "no-number-of-pieces"))
    for number in (0, 5, 15, 40):
        filled = put(rig, COUNT, count(number))
        if stack_fits(filled):
            assert not stands(filled)


@given(rigs(stacked=False))
@settings(max_examples=30)
def test_the_pieces_of_a_comparison_row_hold_under_its_rule_and_one_fewer_do_not(
    rig: Project,
) -> None:
    """Under every text at hand, in the basis or not, for one kind of piece at a taped backspan."""
    assume(one_kind_of_piece(rig))
    rows = review(rig, "D", LIBRARY, on=ON).comparison
    for choice in {choice_of(one) for one in rows if one.pieces is not None}:
        under = on_basis(rig, choice)
        alone = RuleLibrary((LIBRARY.get(choice.rule_set, choice.edition),))
        compared = compare(case(under), alone)
        asked = [one for one in compared if one.in_basis and one.subject == "D/L"]
        pieces = [one.pieces for one in asked if one.pieces is not None]
        if len(pieces) < len(asked):
            continue
        needed = max(pieces)
        assert holds_with(under, needed)
        assert needed == 0 or not holds_with(under, needed - 1)


def choice_of(row: ComparisonRow) -> RuleChoice:
    """The text of a row with the row's reading."""
    rule = row.rule
    readings = (ReadingChoice(rule.key, rule.reading),) if rule.of_readings > 1 else ()
    return RuleChoice(rule.rule_set, rule.edition, readings)


def holds_with(project: Project, pieces: int) -> bool:
    """Whether so many pieces are enough, whatever else is open."""
    found = tipping(put(project, COUNT, count(pieces)))
    assert found.demand is not None
    assert found.capacity is not None
    return meets(demand=found.demand.value, capacity=found.capacity.value)


@given(rigs(texts=NUMBERED))
@settings(max_examples=20)
def test_enough_in_the_comparison_is_what_the_tipping_finding_says(rig: Project) -> None:
    """Of the rules of the basis, whose rows together answer what the finding answers."""
    made = review(rig, "D", LIBRARY, on=ON)
    enough = [one.enough for one in made.comparison if one.in_basis and one.subject == "D/L"]
    assume(None not in enough)
    assert all(enough) is stands(rig)


@given(rigs(texts=NUMBERED))
@settings(max_examples=20)
def test_the_point_as_built_lies_inside_the_envelope_exactly_where_tipping_holds(
    rig: Project,
) -> None:
    """The envelope is straight between its points."""
    drawn = [one for one in review(rig, "D", LIBRARY, on=ON).envelopes if one.subject == "D/L"]
    assume(drawn)
    (envelope,) = drawn
    now = envelope.backspan_now.value
    for one, other in pairwise(envelope.points):
        near, far = one.backspan.value, other.backspan.value
        if near < now <= far * (1 + 1e-12):
            along = (now - near) / (far - near)
            most = one.most_reach.value + along * (other.most_reach.value - one.most_reach.value)
            assert meets(demand=envelope.reach_now.value, capacity=most) is stands(rig)
            return
    pytest.fail("the backspan as built does not lie on the curve")


@given(rigs(texts=(OSHA,), share=WITHIN_REACH))
@SOME
def test_most_rated_and_most_stall_load_hold_and_one_step_more_does_not(rig: Project) -> None:
    """Each by itself, with the other load of the hoist out of the way."""
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
@SOME
def test_something_is_left_exactly_where_tipping_holds(rig: Project) -> None:
    """No margin is told as left on a rig that fails, none as short on one that holds."""
    found = tipping(rig)
    for one in found.margins:
        if one.id in {"more-reach", "less-backspan", "fulcrum-inboard", "pieces-spare"}:
            assert one.beyond is not (RANK[found.verdict] > RANK[Verdict.MISSING])


@given(rigs(texts=(OSHA,), stacked=False))
@SOME
def test_a_piece_more_leaves_a_piece_more(rig: Project) -> None:
    """At a taped backspan."""
    spare = margin(tipping(rig), "pieces-spare")
    more = moved(rig, COUNT, 1)
    assert margin(tipping(more), "pieces-spare") == spare + 1


@given(rigs(texts=(OSHA,)))
@SOME
def test_pieces_of_one_kind_in_two_groups_are_pieces(rig: Project) -> None:
    """Splitting a group where a row ends does not change the answer."""
    (first, *_) = at(rig, (*STACK, "groups"))
    number, per_row = first.count.value, first.per_row
    assume(number > per_row)
    whole = put(rig, (*STACK, "groups"), (replace(first, count=count(number)),))
    parts = (
        PieceGroup(first.piece, count(per_row), per_row),
        PieceGroup(first.piece, count(number - per_row), per_row),
    )
    split = put(rig, (*STACK, "groups"), parts)
    assert stands(split) is stands(whole)
