"""A number in SI to the text people on a roof read."""

import math
from collections.abc import Iterable
from fractions import Fraction
from functools import lru_cache
from typing import Literal

from backspan.core.numbers import step_down, step_up
from backspan.core.quantities.amount import Amount
from backspan.core.quantities.conductors import conductor_size
from backspan.core.quantities.dimension import Dimension, Unit
from backspan.core.quantities.errors import QuantityError
from backspan.core.quantities.style import ROOF_STEPS, USUAL_UNITS, Style
from backspan.core.quantities.units import CONDUCTOR_AREA, INCH, LENGTH

DEFAULT_DIGITS = 5
INCH_DIGITS = 6
INCH_PLACES = 3
MOST_PLACES = 15
# Inches: far below what a tape shows, far above what arithmetic in floats loses.
SIXTEENTH_WITHIN = Fraction(1, 1_000_000)
# In the shown unit: less than this is written 0.
NOTHING_BELOW = Fraction(1, 1_000_000_000)
# Texts of so many numbers are kept; a drop tells some hundreds.
_REMEMBERED = 16_384


def display(
    value: float,
    dimension: Dimension,
    style: Style,
    *,
    digits: int | None = None,
    unit: str | None = None,
) -> str:
    """`value` (SI) as text with its unit, such as `5'-6 1/2"`, `1,391.3 lb` or `6.188 kN`.

    `digits` is the number of significant digits. Without it: 5; in metres to 0.1 mm; in decimal
    inches 6, or as many as show that the length is no sixteenth. Whole units are never rounded
    away, so 123,456 lb stays so. `unit` picks a unit in place of the style's own. `parse` reads
    every such text of up to 15 whole digits back, to the digits shown.
    Raises QuantityError if the value is not finite or `unit` is not one of the dimension's.
    """
    return _displayed(value, dimension, style, digits, unit)


@lru_cache(maxsize=_REMEMBERED)
def _displayed(
    value: float, dimension: Dimension, style: Style, digits: int | None, unit: str | None
) -> str:
    """The text of a number. It is asked for again and again: pages and papers tell the same."""
    exact = Fraction(Amount(value=value, dimension=dimension).value)
    if unit is not None:
        return _in_unit(exact, _unit_named(unit, dimension), digits=digits)
    if dimension == LENGTH and style is Style.US:
        return _feet_and_inches(exact, digits=digits)
    if dimension == CONDUCTOR_AREA and style is Style.US:
        size = conductor_size(exact)
        if size is not None:
            return size
    usual = _usual_unit(exact, dimension, style)
    if usual.label == "m" and digits is None:
        return _with_label(_decimal(exact, places=4), label="m")
    return _in_unit(exact, usual, digits=digits)


def shared_unit(amounts: Iterable[Amount], style: Style) -> dict[Dimension, str]:
    """The unit for each kind of quantity whose amounts would else be told in different ones.

    What is compared is read in one unit: that of the largest. Lengths are not: a tape has both.
    """
    units: dict[Dimension, list[tuple[Fraction, str]]] = {}
    for amount in amounts:
        if amount.dimension in USUAL_UNITS[style] and amount.dimension != LENGTH:
            exact = Fraction(amount.value)
            label = _usual_unit(exact, amount.dimension, style).label
            units.setdefault(amount.dimension, []).append((abs(exact), label))
    return {
        dimension: max(found)[1]
        for dimension, found in units.items()
        if len({label for _, label in found}) > 1
    }


def display_round(amount: Amount, style: Style, *, direction: Literal["up", "down"]) -> str:
    """`amount` as text in whole steps of what people use on a roof, rounded to the side asked.

    Steps are 1/16 in or 1 mm, 1 lb, 0.01 kN, 1 kg and their like; "down" is towards less, also
    below zero. A value within 1e-9 of a step is that step.
    """
    label, step = ROOF_STEPS[style][amount.dimension]
    factor = _unit_named(label, amount.dimension).factor
    in_unit = float(Fraction(amount.value) / factor)
    stepped = step_up(in_unit, step=step) if direction == "up" else step_down(in_unit, step=step)
    if amount.dimension == LENGTH and style is Style.US:
        return _feet_and_inches(Fraction(stepped) * factor, digits=None)
    return _with_label(_decimal(Fraction(stepped), places=2), label=label)


def _unit_named(text: str, dimension: Dimension) -> Unit:
    unit = dimension.unit(text)
    if unit is None:
        raise QuantityError(
            reason=f"not a unit of {dimension.name}",
            found=text,
            expected=[unit.label for unit in dimension.units if unit.label],
        )
    return unit


def _usual_unit(exact: Fraction, dimension: Dimension, style: Style) -> Unit:
    choices = USUAL_UNITS[style][dimension]
    label = next(label for label, from_size in choices if abs(exact) >= from_size)
    return _unit_named(label, dimension)


def _in_unit(exact: Fraction, unit: Unit, *, digits: int | None) -> str:
    number = exact / unit.factor
    places = _places(number, DEFAULT_DIGITS if digits is None else digits)
    return _with_label(_decimal(number, places=places), label=unit.label)


def _with_label(number: str, *, label: str) -> str:
    return f"{number} {label}" if label else number


def _feet_and_inches(exact: Fraction, *, digits: int | None) -> str:
    inches = exact / INCH
    if not _is_sixteenth(inches):
        places = _inch_places(inches) if digits is None else _places(inches, digits)
        return _with_label(_decimal(inches, places=places), label="in")
    sixteenths = round(inches * 16)
    feet, rest = divmod(abs(sixteenths), 12 * 16)
    whole, part = divmod(rest, 16)
    feet_text = f"{feet:,}'-" if feet else ""
    whole_text = str(whole) if whole or feet or not part else ""
    part_text = str(Fraction(part, 16)) if part else ""
    inches_text = f"{whole_text} {part_text}".strip()
    return f'{"-" if sixteenths < 0 else ""}{feet_text}{inches_text}"'


def _is_sixteenth(inches: Fraction) -> bool:
    return abs(inches - Fraction(round(inches * 16), 16)) <= SIXTEENTH_WITHIN


def _inch_places(inches: Fraction) -> int:
    """Decimal places that do not make a sixteenth of what is none."""
    fewest = max(INCH_PLACES, _places(inches, INCH_DIGITS))
    enough = (p for p in range(fewest, MOST_PLACES) if not _is_sixteenth(round(inches, p)))
    return next(enough, MOST_PLACES)


def _places(number: Fraction, digits: int) -> int:
    """Decimal places that give `number` that many significant digits, within what is read back."""
    size = abs(number)
    if size < NOTHING_BELOW:
        return 0
    if size >= 1:
        places = digits - len(str(math.floor(size)))
    else:
        # Whole-number counting of the zeros behind the point: a logarithm may miss by one.
        places = digits - 1 + len(str(math.ceil(1 / size) - 1))
    return min(max(0, places), MOST_PLACES)


def _decimal(number: Fraction, *, places: int) -> str:
    """Decimal text with thousands commas, rounded half to even, without idle zeros or "-0"."""
    if abs(number) < NOTHING_BELOW:
        return "0"
    scaled = round(abs(number) * 10**places)
    whole, part = divmod(scaled, 10**places)
    decimals = f".{part:0{places}d}".rstrip("0").rstrip(".") if places else ""
    return f"{'-' if number < 0 and scaled else ''}{whole:,}{decimals}"
