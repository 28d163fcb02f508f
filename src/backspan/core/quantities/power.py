"""Numbers of the hoists' power: cord, motors, generator. Rows of the table in named.py.

No project file states them yet: they are asked on the roof.
"""

from __future__ import annotations

from backspan.core.quantities.quantity import Quantity
from backspan.core.quantities.units import (
    APPARENT_POWER,
    CONDUCTOR_AREA,
    CURRENT,
    LENGTH,
    LINEAR_MASS,
    LINEAR_RESISTANCE,
    RATIO,
    VOLTAGE,
)

POWER: tuple[Quantity, ...] = (
    Quantity(
        name="supply_voltage",
        words="voltage where the cord begins",
        dimension=VOLTAGE,
        symbol="U_s",
        asked="volts",
        hint="measured there while all hoists lift",
    ),
    Quantity(
        name="least_voltage",
        words="least voltage at the hoist that its maker asks for",
        dimension=VOLTAGE,
        symbol="U_min",
        asked="least-volts",
    ),
    Quantity(
        name="running_current",
        words="current of one hoist that lifts its rated load",
        dimension=CURRENT,
        symbol="I_r",
        asked="amps",
    ),
    Quantity(
        name="starting_current",
        words="current of one hoist as it starts, its rotor locked",
        dimension=CURRENT,
        symbol="I_l",
        asked="start-amps",
    ),
    Quantity(
        name="cord_length",
        words="length of the cord from the board to the hoists, one way",
        dimension=LENGTH,
        symbol="L_c",
        asked="length",
    ),
    Quantity(
        name="conductor_area",
        words="size of the cord's conductors",
        dimension=CONDUCTOR_AREA,
        asked="gage",
    ),
    Quantity(
        name="conductor_resistance",
        words="resistance of one conductor of the cord for its length",
        dimension=LINEAR_RESISTANCE,
        symbol="r_c",
        asked="ohms",
    ),
    Quantity(
        name="cord_linear_mass",
        words="mass of the cord for its length",
        dimension=LINEAR_MASS,
        symbol="m_c",
        asked="cord-mass",
    ),
    Quantity(
        name="most_drop",
        words="largest share of the voltage that the cord may lose",
        dimension=RATIO,
        symbol="k_U",
        asked="most-drop",
        hint="in percent, most-drop=5%",
    ),
    Quantity(
        name="generator_rating",
        words="what the generator gives without end",
        dimension=APPARENT_POWER,
        asked="set",
        hint="its plate's kVA",
    ),
    Quantity(
        name="generator_starting",
        words="what the generator gives while a motor starts",
        dimension=APPARENT_POWER,
        asked="set-start",
        hint="its maker's kVA",
    ),
)
