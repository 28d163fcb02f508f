"""Voltage lost in a hoist's cord, and the power that hoists draw.

Direct-current resistance alone: the power factor is taken as 1 and the cord's reactance is left
out. Of copper to 6 AWG that is on the side of caution or within half a percent; thicker ones lose
up to some percent more than is worked out here.
"""

from __future__ import annotations

from backspan.core.numbers import root
from backspan.core.quantities import (
    ApparentPower,
    Current,
    Length,
    LinearMass,
    LinearResistance,
    Mass,
    Ratio,
    Voltage,
)
from backspan.core.worked.formula import formula


@formula(symbol="I")
def current_on_cord(
    *,
    running_hoists: Ratio,
    running_current: Current,
    starting_hoists: Ratio,
    starting_current: Current,
) -> Current:
    """Current on one cord: hoists that run and hoists that start on it add up.

    Source: Kirchhoff's current law, power factors taken as equal.
    """
    return running_hoists * running_current + starting_hoists * starting_current


@formula(symbol="U_d")
def drop_single_phase(
    *, cord_length: Length, conductor_resistance: LinearResistance, current: Current
) -> Voltage:
    """Voltage lost in a single-phase cord, there and back; resistance alone, power factor 1.

    Source: Ohm's law; text-books on the NEC give it as 2 L R I / 1000 with R by chapter 9, table 8.
    """
    return 2 * cord_length * conductor_resistance * current


@formula(symbol="U_d")
def drop_three_phase(
    *, cord_length: Length, conductor_resistance: LinearResistance, current: Current
) -> Voltage:
    """Voltage lost between two lines of a three-phase cord; resistance alone, power factor 1.

    Source: Ohm's law on balanced lines; text-books on the NEC give it as sqrt(3) L R I / 1000.
    """
    return root(3) * cord_length * conductor_resistance * current


@formula(symbol="U_h")
def voltage_left(*, supply_voltage: Voltage, drop: Voltage) -> Voltage:
    """Voltage left at the hoist, of that where its cord begins.

    Source: Kirchhoff's voltage law, power factor 1.
    """
    return supply_voltage - drop


@formula(symbol="k_d")
def share_lost(*, drop: Voltage, supply_voltage: Voltage) -> Ratio:
    """Share of the voltage that the cord loses.

    Source: the meaning of a voltage drop in percent.
    """
    return drop / supply_voltage


@formula(symbol="U_a")
def drop_by_share(*, most_drop: Ratio, supply_voltage: Voltage) -> Voltage:
    """Voltage that the cord may lose, where a share of it is allowed.

    Source: the meaning of a voltage drop in percent.
    """
    return most_drop * supply_voltage


@formula(symbol="U_a")
def drop_by_least(*, supply_voltage: Voltage, least_voltage: Voltage) -> Voltage:
    """Voltage that the cord may lose, where a least one at the hoist is asked for.

    Source: Kirchhoff's voltage law, power factor 1.
    """
    return supply_voltage - least_voltage


@formula(symbol="L_most")
def longest_single_phase(
    *, allowed_drop: Voltage, conductor_resistance: LinearResistance, current: Current
) -> Length:
    """Longest single-phase cord for a loss that is allowed; resistance alone, power factor 1.

    Source: the voltage lost in such a cord, solved for its length.
    """
    return allowed_drop / (2 * conductor_resistance * current)


@formula(symbol="L_most")
def longest_three_phase(
    *, allowed_drop: Voltage, conductor_resistance: LinearResistance, current: Current
) -> Length:
    """Longest three-phase cord for a loss that is allowed; resistance alone, power factor 1.

    Source: the voltage lost in such a cord, solved for its length.
    """
    return allowed_drop / (root(3) * conductor_resistance * current)


@formula(symbol="m_w")
def cord_mass(*, cord_linear_mass: LinearMass, cord_length: Length) -> Mass:
    """Mass of a cord by its length.

    Source: the meaning of a mass for a length.
    """
    return cord_linear_mass * cord_length


@formula(symbol="S_h")
def power_single_phase(*, supply_voltage: Voltage, current: Current) -> ApparentPower:
    """Apparent power that a single-phase current draws.

    Source: the meaning of apparent power, voltage times current.
    """
    return supply_voltage * current


@formula(symbol="S_h")
def power_three_phase(*, supply_voltage: Voltage, current: Current) -> ApparentPower:
    """Apparent power that a balanced three-phase current draws, by the voltage between lines.

    Source: the meaning of apparent power on three balanced lines, sqrt(3) U I.
    """
    return root(3) * supply_voltage * current
