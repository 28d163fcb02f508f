"""Published sums of a fall, each with its datum; the program counts from the rider's feet."""

from __future__ import annotations

import pytest

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

FOOT = 0.3048


def test_the_total_of_a_general_how_to() -> None:
    """0685.com, page 60807: 4 + 3 + 1 + 3 + 1 = 12 ft, a total fall distance."""
    step = fall_distance(
        falls_free=4 * FOOT,
        deceleration=3 * FOOT,
        grab_slide=0.0,
        harness_shift=1 * FOOT,
        line_stretch=3 * FOOT,
        line_slack=0.0,
        fall_margin=1 * FOOT,
    )
    assert step.value == pytest.approx(12 * FOOT)


@pytest.mark.parametrize(("above", "falls"), [(4.0, 2.0), (-2.0, 8.0)])
def test_free_fall_by_the_height_of_the_attachment(above: float, falls: float) -> None:
    """A maker's instructions for lanyards of 6 ft: 4 ft above the D-ring, and 2 ft below it."""
    step = free_fall(lanyard_length=6 * FOOT, above_ring=above * FOOT)
    assert step.value == pytest.approx(falls * FOOT)


def test_the_clearance_of_a_lanyard_manual() -> None:
    """Lanyard manual, page 10: free fall 2 + 3.5 + 1.5 + 1.5 = 8.5 ft, derived from its rule."""
    step = fall_distance(
        falls_free=2 * FOOT,
        deceleration=3.5 * FOOT,
        grab_slide=0.0,
        harness_shift=1.5 * FOOT,
        line_stretch=0.0,
        line_slack=0.0,
        fall_margin=1.5 * FOOT,
    )
    assert step.value == pytest.approx(8.5 * FOOT)


def test_the_fall_height_of_a_guided_grab() -> None:
    """Harness manual, page 31: 2 x 0.34 + 0.60 + 0.10 = 1.38 m, without any margin."""
    step = fall_distance(
        falls_free=2 * 0.34,
        deceleration=0.60,
        grab_slide=0.10,
        harness_shift=0.0,
        line_stretch=0.0,
        line_slack=0.0,
        fall_margin=0.0,
    )
    assert step.value == pytest.approx(1.38)


def test_a_kit_manual_counts_the_d_ring_from_the_working_level() -> None:
    """Vertical lifeline kit, page 9: 0.5 + 1.0 + 1.8 + 1.8 + 1.0 = 6.1 m.

    Its 1.8 m for the height of the D-ring is no fall of the feet: from there it is 4.3 m.
    """
    step = fall_distance(
        falls_free=0.5,
        deceleration=1.8,
        grab_slide=1.0,
        harness_shift=0.0,
        line_stretch=0.0,
        line_slack=0.0,
        fall_margin=1.0,
    )
    assert step.value + 1.8 == pytest.approx(6.1)


def test_a_manual_that_counts_from_the_anchor() -> None:
    """A maker's manual: lanyard 2 + opening 1.5 + 2.5 for body and margin = 6.0 m, from anchor.

    With the anchor at the D-ring the lanyard is the free fall; the 2.5 m hold the body, which from
    the feet is no term, and a margin.
    """
    step = fall_distance(
        falls_free=free_fall(lanyard_length=2.0, above_ring=0.0).value,
        deceleration=1.5,
        grab_slide=0.0,
        harness_shift=0.0,
        line_stretch=0.0,
        line_slack=0.0,
        fall_margin=2.5,
    )
    assert step.value == pytest.approx(6.0)


def test_the_lowest_height_is_where_the_shorter_line_is_just_in_time() -> None:
    """Derived: at that height, with a line shorter by the difference, the sum is that height."""
    there, share = 3.0, 0.05
    line = lifeline_length(line_run=4.0, wall_height=1.0, drop_height=40.0).value
    needed = 3.0 + lifeline_stretch(elongation=share, lifeline=line).value
    lowest = lowest_in_time(distance=needed, elongation=share, above_level=there).value
    assert 3.0 + share * (line - (lowest - there)) == pytest.approx(lowest)


@pytest.mark.parametrize(
    ("falls", "most", "share", "opens"),
    [(4.0, 6e3, 1.0, 0.782), (4.0, 6e3, 0.875, 0.919), (1.8, 4e3, 1.0, 0.585)],
)
def test_what_an_absorber_has_to_open_by(
    falls: float, most: float, share: float, opens: float
) -> None:
    """Derived: 100 kg stopped by a constant mean force, by the energy of the fall."""
    rider = weight(mass=100.0).value
    slows = slowing_force(mean_share=share, most_force=most, rider_weight=rider).value
    step = opening_needed(rider_weight=rider, falls_free=falls, grab_slide=0.0, slows=slows)
    assert step.value == pytest.approx(opens, abs=1e-3)


def test_the_slack_of_a_line_that_slides_along_the_edge() -> None:
    """Derived: 40 ft aside and 2 ft in, 38.05 ft go slack; opposite its anchor nothing does."""
    far = line_slack(line_aside=40 * FOOT, line_inward=2 * FOOT)
    assert far.value == pytest.approx(38.05 * FOOT, abs=1e-3)
    assert line_slack(line_aside=0.0, line_inward=12 * FOOT).value == 0.0
