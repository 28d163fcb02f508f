"""Unlikely values are kept and questioned. The bands are common practice, no source."""

from __future__ import annotations

from dataclasses import replace

import pytest

from backspan.core.findings import DoesNotApply, Finding, Verdict
from backspan.core.model.evidence import StatedValue
from backspan.core.model.project import Project
from backspan.core.model.work import LoadKind, PlacedLoad, WorkStep
from backspan.core.quantities import RATIO
from tests.unit.core.checks.test_beam_strength import SIZES, W6X12, by, on_label
from tests.unit.core.rigs import (
    ARM,
    BEAM,
    HOIST,
    LEFT,
    PIECE,
    PROJECT,
    RIG,
    RIGHT,
    STACK,
    STAGE,
    answers,
    count,
    force,
    length,
    mass,
    needs,
    put,
    reasons,
    stated,
    without_stall,
)

CHECK = "plausible-values"
LANYARD = ("kit", "lanyards", "LAN")
LIFE = ("kit", "ropes", "LIFE")
COUNT = (*STACK, "groups", 0, "count")
PLACES: dict[str, tuple[str | int, ...]] = {
    "reach": (*ARM, "reach"),
    "backspan": (*ARM, "backspan"),
    "piece_mass": (*PIECE, "mass"),
    "pieces": COUNT,
    "rated_load": (*HOIST, "rated_load"),
    "stall_load_to_rated": (*HOIST, "stall_load"),
    "limiter_trip_to_rated": (*HOIST, "limiter_trip"),
    "hoist_mass": (*HOIST, "mass"),
    "stage_length": (*STAGE, "length"),
    "drop_height": ("drops", "D", "height"),
    "below_ground": ("drops", "D", "height"),
    "lanyard_length": (*LANYARD, "length"),
    "deceleration": (*LANYARD, "deceleration"),
    "most_force": (*LANYARD, "most_force"),
    "grab_slide": (*LANYARD, "slide"),
    "harness_shift": (*LANYARD, "stretch"),
    "lifeline_strength_to_diameter": (*LIFE, "diameter"),
    "elongation": (*LIFE, "elongation"),
    "lifeline_breaking_force": (*LIFE, "breaking_force"),
    "person_mass": (*RIG, "stages", "ST-1", "work", "UP", "loads", "P1", "mass"),
}
UP = WorkStep(
    "UP", (PlacedLoad("P1", LoadKind.PERSON), PlacedLoad("B", LoadKind.TOOLS, mass("9 lb")))
)
#: Without a tail gap the taped backspan has nothing to be held against, nor a reach without a gap.
_NO_GAP = put(without_stall(PROJECT), (*RIG, "stages", "ST-1", "found", "to_face"), None)
LOOSE = put(
    put(
        put(_NO_GAP, (*HOIST, "limiter_trip"), None),
        (*RIG, "stages", "ST-1", "work"),
        (UP,),
    ),
    (*STAGE, "dead_mass"),
    mass("5000 lb"),
)


def questioned(project: Project) -> list[Finding]:
    return [one for one in answers(project, CHECK) if isinstance(one, Finding)]


@pytest.mark.parametrize(
    ("name", "usual", "unlikely", "message"),
    [
        ("reach", length("15 ft"), length("15 ft 1/16 in"), "unlikely.large"),
        ("reach", length("6 in"), length("5 15/16 in"), "unlikely.small"),
        ("stall_load_to_rated", force("1000 lb"), force("999 lb"), "unlikely.small"),
        ("limiter_trip_to_rated", force("1000 lb"), force("999 lb"), "unlikely.small"),
        ("backspan", length("30 ft"), length("31 ft"), "unlikely.large"),
        ("backspan", length("18 in"), length("17 in"), "unlikely.small"),
        ("piece_mass", mass("110 lb"), mass("111 lb"), "unlikely.large"),
        ("piece_mass", mass("20 lb"), mass("19 lb"), "unlikely.small"),
        ("pieces", count(40), count(41), "unlikely.large"),
        ("rated_load", force("3000 lb"), force("3001 lb"), "unlikely.large"),
        ("rated_load", force("500 lb"), force("499 lb"), "unlikely.small"),
        ("hoist_mass", mass("1000 lb"), mass("1001 lb"), "unlikely.large"),
        ("stage_length", length("60 ft"), length("61 ft"), "unlikely.large"),
        ("drop_height", length("8 ft"), length("7 ft"), "unlikely.small"),
        # The roof is 130 ft up and its parapet 3.5 ft; 20 ft stay clear.
        ("below_ground", length("116 ft 6 in"), length("116 ft 7 in"), "unlikely.large"),
        ("lanyard_length", length("1 ft"), length("11 in"), "unlikely.small"),
        ("deceleration", length("3 in"), length("2 15/16 in"), "unlikely.small"),
        ("most_force", force("400 lb"), force("399 lb"), "unlikely.small"),
        ("elongation", stated("2 %", RATIO), stated("1.9 %", RATIO), "unlikely.small"),
        ("elongation", stated("25 %", RATIO), stated("40 %", RATIO), "unlikely.large"),
        # It breaks at 9,000 lb.
        ("lifeline_strength_to_diameter", length("1/2 in"), length("7/16 in"), "unlikely.large"),
        ("grab_slide", length("2 ft"), length("25 in"), "unlikely.large"),
        ("harness_shift", length("6 in"), length("5 in"), "unlikely.small"),
        ("person_mass", mass("309 lb"), mass("310 lb"), "unlikely.large"),
        ("person_mass", mass("130 lb"), mass("129 lb"), "unlikely.small"),
    ],
)
def test_a_value_beyond_its_band_is_questioned(
    name: str, usual: StatedValue[float], unlikely: StatedValue[float], message: str
) -> None:
    assert questioned(put(LOOSE, PLACES[name], usual)) == []
    (found,) = questioned(put(LOOSE, PLACES[name], unlikely))
    assert found.verdict is Verdict.REFER
    assert found.message.id == message
    assert found.place == PLACES[name][: len(found.place)]
    assert needs(found) == (("need.look-again", name),)
    assert [need.who for need in found.needs] == ["competent person"]


@pytest.mark.parametrize(
    ("backspan", "asked"),
    [("10 ft", 0), ("10 ft 6 in", 0), ("10 ft 6 1/16 in", 1), ("9 ft 6 in", 0), ("9 ft 5 in", 1)],
)
def test_a_taped_backspan_far_from_the_stack_is_questioned(backspan: str, asked: int) -> None:
    both = put(PROJECT, (*STACK, "tail_gap"), length("3 ft 6 in"))
    found = questioned(put(both, (*ARM, "backspan"), length(backspan)))
    assert [needs(one) for one in found] == [(("need.look-again", "backspan_apart"),)] * asked


@pytest.mark.parametrize(
    ("dead", "asked"),
    [
        ("438 lb", ()),
        ("437 lb", ("deck_mass",)),
        ("238 lb", ("deck_mass",)),
        ("237 lb", ("hanging_to_dead",)),
        ("100 lb", ("hanging_to_dead",)),
    ],
)
def test_all_that_hangs_is_no_less_than_what_hangs(dead: str, asked: tuple[str, ...]) -> None:
    """Two hoists of 105 lb, a rope of 20 lb and a bottom weight of 8 lb are stated; 10 lb/ft."""
    hung = put(LOOSE, (*HOIST, "mass"), mass("105 lb"))
    for name, one in (("rope_mass", "20 lb"), ("bottom_weight", "8 lb")):
        hung = put(put(hung, (*LEFT, name), mass(one)), (*RIGHT, name), None)
    found = questioned(put(hung, (*STAGE, "dead_mass"), mass(dead)))
    assert [needs(one) for one in found] == [(("need.look-again", one),) for one in asked]


def test_a_second_person_settles_it_and_the_first_does_not() -> None:
    far = length("16 ft")
    again = put(LOOSE, PLACES["reach"], replace(far, checked_by="PE"))
    alone = put(LOOSE, PLACES["reach"], replace(far, checked_by="MT"))
    assert questioned(again) == []
    assert reasons(again, CHECK) == (("D", "na.looked-again"),)
    assert [one.verdict for one in questioned(alone)] == [Verdict.REFER]


def test_kit_shared_by_two_points_is_questioned_once() -> None:
    assert len(questioned(put(LOOSE, PLACES["piece_mass"], mass("111 lb")))) == 1


def test_where_nothing_is_unusual_the_drop_says_so() -> None:
    (only,) = answers(PROJECT, CHECK)
    assert isinstance(only, DoesNotApply)
    assert only.reason.id == "na.nothing-questioned"


@pytest.mark.parametrize(
    ("size", "slip", "asked"),
    [
        ("flange_thickness", "0.28 in", 0),
        ("flange_thickness", "2.8 in", 1),
        ("web_thickness", "2.3 in", 1),
        ("flange_width", "4.9 in", 0),
        ("flange_width", "6.5 in", 1),
    ],
)
def test_sizes_that_weigh_more_than_the_beam_are_questioned(
    size: str, slip: str, asked: int
) -> None:
    """W6x12 by its sizes weighs 11.8 lb/ft; the beam of 18 ft weighs 216 lb."""
    plain = put(by(SIZES), (*BEAM, "mass"), mass("216 lb"))
    found = questioned(put(plain, (*BEAM, "section", size), on_label(length(slip))))
    assert [needs(one) for one in found] == [(("need.look-again", "section_to_mass"),)] * asked
    assert all(one.verdict is Verdict.REFER for one in found)


def test_a_shape_heavier_than_the_beam_is_questioned() -> None:
    """W6x15 of 18 ft weighs 270 lb and no 216."""
    light = put(by(replace(W6X12, shape="W6x15")), (*BEAM, "mass"), mass("216 lb"))
    found = questioned(light)
    assert [needs(one) for one in found] == [(("need.look-again", "section_to_mass"),)]
    assert questioned(put(by(W6X12), (*BEAM, "mass"), mass("216 lb"))) == []


@pytest.mark.parametrize(
    ("field", "value", "name"),
    [
        ("most_load", force("1250 kip"), "label_load"),
        ("most_reach", length("36 ft"), "label_reach"),
        ("most_pieces", count(3200), "label_pieces"),
        ("most_mass", mass("9000 lb"), "label_mass"),
    ],
)
def test_what_no_label_allows_is_questioned(
    field: str, value: StatedValue[float], name: str
) -> None:
    found = questioned(put(PROJECT, (*BEAM, "label", field), value))
    assert [needs(one) for one in found] == [(("need.look-again", name),)]
