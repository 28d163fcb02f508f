"""Text with a unit to a number in SI: exact until the one final float."""

import re
from collections.abc import Mapping
from fractions import Fraction
from types import MappingProxyType
from typing import Protocol

from backspan.core.quantities.conductors import read_conductor
from backspan.core.quantities.dimension import Dimension
from backspan.core.quantities.lengths import read_length
from backspan.core.quantities.numerals import plain_text, read_numeral, refusal, split_sign
from backspan.core.quantities.units import ANGLE, CONDUCTOR_AREA, LENGTH, RATIO
from backspan.core.quantities.unknown import why_not_a_unit


class _Reader(Protocol):
    """Reads a form that only one dimension has; None if the text is not in that form."""

    def __call__(self, body: str, *, found: str) -> Fraction | None: ...


_PROPORTION = re.compile(r"(?P<left>[^:]+):(?P<right>[^:]+)")


def parse(text: str, dimension: Dimension) -> float:
    """The value `text` states, in the SI unit of `dimension`, correctly rounded once.

    Equal quantities give the same float in whatever unit they are written. In a force field "kg"
    and "t" mean the weight of that mass at standard gravity.
    Raises QuantityError if the text is not a number with a unit of `dimension`, or is ambiguous.
    """
    return float(parse_exact(text, dimension))


def parse_exact(text: str, dimension: Dimension) -> Fraction:
    """As `parse`, without the final rounding."""
    sign, body = split_sign(plain_text(text, dimension))
    special = _SPECIAL_FORMS.get(dimension)
    value = special(body, found=text) if special is not None else None
    return sign * (value if value is not None else _read_with_unit(body, dimension, found=text))


def _read_with_unit(body: str, dimension: Dimension, *, found: str) -> Fraction:
    numeral = read_numeral(body, dimension=dimension, found=found)
    unit = dimension.unit(numeral.rest)
    if unit is None:
        reason = why_not_a_unit(numeral.rest.strip(), dimension)
        raise refusal(dimension, found=found, reason=reason)
    return numeral.value * unit.factor


def _read_proportion(body: str, *, found: str) -> Fraction | None:
    match = _PROPORTION.fullmatch(body)
    if match is None:
        return None
    left = read_numeral(match["left"].strip(), dimension=RATIO, found=found)
    right = read_numeral(match["right"].strip(), dimension=RATIO, found=found)
    if left.rest or right.rest:
        raise refusal(RATIO, found=found, reason="something beside the two numbers of a proportion")
    if right.value == 0:
        raise refusal(RATIO, found=found, reason="a proportion to zero")
    return left.value / right.value


def _refuse_slope(body: str, *, found: str) -> None:
    if ":" in body or "%" in body or re.search(r"\bin\b", body):
        raise refusal(ANGLE, found=found, reason="a slope is not read as an angle")


_SPECIAL_FORMS: Mapping[Dimension, _Reader] = MappingProxyType(
    {
        LENGTH: read_length,
        CONDUCTOR_AREA: read_conductor,
        RATIO: _read_proportion,
        ANGLE: _refuse_slope,
    }
)
