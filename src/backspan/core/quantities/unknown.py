"""What to tell a person whose text does not end in a unit of the wanted dimension."""

import re

from backspan.core.quantities.dimension import Dimension, unit_key
from backspan.core.quantities.units import DIMENSIONS

_TELLING_STARTS = (
    (re.compile(r"$"), "a bare number, without its unit"),
    (re.compile(r"[eE][+-]?[0-9]"), "powers of ten are not read"),
    (re.compile(r","), "ambiguous comma: it parts thousands in groups of three, never decimals"),
    (re.compile(r"-"), "a range or a subtraction; one number is wanted"),
    (re.compile(r"[0-9.]"), "two numbers in a row"),
    (
        re.compile(r"(?:[Tt]ons?|TONS?|T)$"),
        'ambiguous ton: 2,000 lb, 2,240 lb or 1,000 kg (the tonne is "t")',
    ),
)
_UNIT_THEN_NUMBER = re.compile(r"(?P<unit>[^0-9]*[^0-9 -])[ -]*[0-9]")


def why_not_a_unit(rest: str, dimension: Dimension) -> str:
    """Why `rest`, the text after a numeral, is not a unit of `dimension`."""
    for start, reason in _TELLING_STARTS:
        if start.match(rest):
            return reason
    near = _differs_in_case(rest, dimension)
    if near is not None:
        return f'"{rest}" is not a unit of {dimension.name}, but "{near}" is: letter case matters'
    owners = _owners(rest)
    if owners:
        return f'"{rest}" is a unit of {" or ".join(owners)}'
    first = _UNIT_THEN_NUMBER.match(rest)
    if first is not None and _owners(first["unit"]):
        return "mixed units: one number and one unit, or feet and inches"
    return f'"{rest}" is not a known unit'


def _owners(unit_text: str) -> list[str]:
    return [dimension.name for dimension in DIMENSIONS if dimension.unit(unit_text) is not None]


def _differs_in_case(rest: str, dimension: Dimension) -> str | None:
    key = unit_key(rest).casefold()
    for unit in dimension.units:
        if any(symbol.casefold() == key for symbol in unit.symbols):
            return unit.label
    return None
