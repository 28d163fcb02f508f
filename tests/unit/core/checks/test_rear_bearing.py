"""What the rear stand asks of its surface: most with nothing on the line.

880 lb of plates at 10 ft and a beam of 200 lb at 6 ft 6 in, a rear stand at 10 ft: it carries
(8,800 + 1,300) / 10 = 1,010 lb idle, 810 lb at 1,000 lb on 2 ft. On 4 sq ft four times 1,010 lb are
1,010 psf.
"""

from __future__ import annotations

import pytest

from backspan.core.findings import Finding, Verdict
from backspan.core.model.evidence import Evidence
from backspan.core.model.project import Project
from backspan.core.quantities import PRESSURE, parse
from tests.unit.core.rigs import (
    ARM,
    HOIST,
    PIECE,
    PROJECT,
    STACK,
    STACKED,
    finding,
    length,
    mass,
    needs,
    put,
    stated,
    without_stall,
)

REAR = (*ARM, "rear")
STRENGTH = (*REAR, "surface_strength")


def rear(project: Project) -> Finding:
    return finding(project, "rear-bearing")


def asked(project: Project) -> float:
    found = rear(project)
    assert found.demand is not None
    return found.demand.value / parse("1 psf", PRESSURE)


def test_four_times_what_lies_on_it_with_nothing_on_the_line() -> None:
    assert asked(PROJECT) == pytest.approx(1010.0, rel=1e-9)
    assert rear(PROJECT).governing == "bearing.rated-load"


@pytest.mark.parametrize(("text", "verdict"), [("1010 psf", "pass"), ("1009 psf", "fail")])
def test_equal_is_enough(text: str, verdict: str) -> None:
    strength = stated(text, PRESSURE, Evidence.CERTIFICATE)
    assert rear(put(PROJECT, STRENGTH, strength)).verdict == verdict


def test_no_load_on_the_line_makes_it_more_and_none_need_be_known() -> None:
    assert asked(put(PROJECT, (*HOIST, "rated_load", "value"), 1.0)) == asked(PROJECT)
    assert rear(without_stall(PROJECT)).verdict is Verdict.PASS


@pytest.mark.parametrize(
    ("place", "name"),
    [
        ((*ARM, "rear_stand"), "rear_stand"),
        ((*REAR, "plate_length"), "rear_plate_length"),
        ((*REAR, "plate_width"), "rear_plate_width"),
        (STRENGTH, "rear_surface_strength"),
        (("kit", "beams", "B", "mass"), "beam_mass"),
    ],
)
def test_what_is_not_known_is_missing(place: tuple[str, ...], name: str) -> None:
    found = rear(put(PROJECT, place, None))
    assert found.verdict is Verdict.MISSING
    assert needs(found) == (("need.input", name),)


def test_a_rear_bearing_that_nobody_spoke_of_is_missing() -> None:
    found = rear(put(PROJECT, REAR, None))
    assert found.verdict is Verdict.MISSING
    assert {name for _, name in needs(found)} == {
        "rear_plate_length",
        "rear_plate_width",
        "rear_surface_strength",
    }


def test_the_heaviest_of_doubtful_pieces_is_judged() -> None:
    # 16 pieces of 56 lb: (8,960 + 1,300) / 10.
    doubtful = put(PROJECT, (*PIECE, "mass"), mass("55 lb", tolerance="1 lb"))
    assert asked(doubtful) == pytest.approx(1026.0, rel=1e-9)


def test_of_a_backspan_known_two_ways_the_longer_presses() -> None:
    """By beam and stack 13 ft 3 in, by the tape 10 ft: tipping is judged by the shorter."""
    stacked = put(PROJECT, (*STACK, "tail_gap"), length("3 in", tolerance="0 in"))
    for both in (stacked, put(STACKED, (*ARM, "backspan"), length("10 ft", tolerance="0 in"))):
        rig = put(both, (*ARM, "rear_stand"), length("13 ft 6 in", tolerance="0 in"))
        exact = put(rig, (*STACK, "tail_gap"), length("3 in", tolerance="0 in"))
        # Inboard 15 ft 6 in, the stack of 4 ft ends 3 in before the tail: its middle at 13 ft 3 in.
        assert asked(exact) == pytest.approx((880 * 13.25 + 1300) / 13.5, rel=1e-9)
