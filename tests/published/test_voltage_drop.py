"""Published sums of the voltage a cord loses, and the table of gages held against its physics."""

from __future__ import annotations

import pytest

from backspan.core.mechanics.power import (
    current_on_cord,
    drop_single_phase,
    longest_single_phase,
    power_single_phase,
    share_lost,
)
from backspan.core.quantities import CONDUCTOR_AREA, LINEAR_RESISTANCE, parse
from backspan.core.quantities.units import CIRCULAR_MIL
from backspan.core.rules.shape import Limit
from backspan.exchange.files import load_rule_library

FOOT = 0.3048
PRACTICE = load_rule_library().get("trade-practice", "2026")
GAGES = ("14", "12", "10", "8", "6", "4", "2")


def resistance(gage: str) -> float:
    """Of the table, ohm/m."""
    value = PRACTICE.value(f"power.resistance-{gage}-awg")
    assert value is not None
    content = value.readings[0].content
    assert isinstance(content, Limit)
    return content.amount.value


def test_a_two_wire_drop_of_a_course_for_electricians() -> None:
    """electrician2.com, page 135: 2 x 100 x 4.99/1000 x 4 = 3.992 V, 16.63 % of 24 V."""
    drop = drop_single_phase(
        cord_length=100 * FOOT,
        conductor_resistance=parse("4.99 ohm/kft", LINEAR_RESISTANCE),
        current=4.0,
    )
    assert drop.value == pytest.approx(3.992)
    assert share_lost(drop=drop.value, supply_voltage=24.0).value == pytest.approx(
        0.16633, abs=5e-5
    )


@pytest.mark.parametrize(
    ("amps", "feet", "gage", "thinner"),
    [(12, 100, "10", "12"), (7, 100, "12", "14"), (5, 150, "12", "14")],
)
def test_a_power_tool_makers_table_of_cords(amps: int, feet: int, gage: str, thinner: str) -> None:
    """A maker's manual (manualsdump.com 280976, page 7): 5 V at 150 % of the rated amperes."""

    def drop(size: str) -> float:
        return drop_single_phase(
            cord_length=feet * FOOT, conductor_resistance=resistance(size), current=1.5 * amps
        ).value

    assert drop(gage) <= 5.0 < drop(thinner)


@pytest.mark.parametrize(("gage", "percent"), [("12", 10.8), ("10", 6.8), ("8", 4.2), ("6", 2.7)])
def test_two_hoists_on_three_hundred_feet(gage: str, percent: float) -> None:
    """Worked by hand for this project: 2 x 300 ft x r x 20 A on 220 V; currents add up."""
    current = current_on_cord(
        running_hoists=2, running_current=10.0, starting_hoists=0, starting_current=60.0
    )
    drop = drop_single_phase(
        cord_length=300 * FOOT, conductor_resistance=resistance(gage), current=current.value
    )
    assert share_lost(drop=drop.value, supply_voltage=220.0).value * 100 == pytest.approx(
        percent, abs=0.05
    )


@pytest.mark.parametrize(("gage", "feet"), [("10", 133), ("8", 212), ("6", 336)])
def test_the_longest_cord_for_three_percent(gage: str, feet: float) -> None:
    """By hand: 0.03 x 220 V / (2 r 20 A) = 6.6 / (40 r), with r of 1.24, 0.778, 0.491 ohm/kft."""
    longest = longest_single_phase(
        allowed_drop=6.6, conductor_resistance=resistance(gage), current=20.0
    )
    assert longest.value / FOOT == pytest.approx(feet, abs=0.5)


@pytest.mark.parametrize("gage", GAGES)
def test_the_table_is_what_copper_of_that_area_has_when_warm(gage: str) -> None:
    """R = rho L / A: annealed copper has 10.371 ohm circular mil/ft at 20 C and 0.393 % a degree.

    Source: International Annealed Copper Standard (IEC 60028), from memory. Strands are some 2 %
    longer than their cable: the table is above the solid wire's value, and within 4 %.
    """
    circular_mils = parse(f"{gage} AWG", CONDUCTOR_AREA) / float(CIRCULAR_MIL)
    warm = 10.371 * (1 + 0.00393 * (75 - 20))
    solid = warm / circular_mils / FOOT
    assert 1.0 < resistance(gage) / solid < 1.04


def test_what_a_motor_draws_of_a_generator() -> None:
    """Two of 1 hp on 230 V, 8 A each by NEC table 430.248 (from memory): 230 x 16 = 3,680 VA."""
    assert power_single_phase(supply_voltage=230.0, current=16.0).value == pytest.approx(3680)
