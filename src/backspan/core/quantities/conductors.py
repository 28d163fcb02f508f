"""American Wire Gage sizes, the names by which flexible cords and cables are sold."""

import re
from collections.abc import Mapping
from fractions import Fraction
from types import MappingProxyType

from backspan.core.quantities.numerals import refusal
from backspan.core.quantities.units import CIRCULAR_MIL, CONDUCTOR_AREA

# Circular mils rounded to 5 figures, by ASTM B258: 5 mils diameter at gage 36, 460 mils at 4/0 and
# 39 equal ratios between, d = 5 mil * 92 ** ((36 - n) / 39), where n is 0 for 1/0 and -3 for 4/0.
# The formula is from memory; a test computes this table from it.
CIRCULAR_MILS: Mapping[str, Fraction] = MappingProxyType(
    {
        gage: Fraction(circular_mils)
        for gage, circular_mils in (
            ("4/0", "211600"),
            ("3/0", "167810"),
            ("2/0", "133080"),
            ("1/0", "105530"),
            ("1", "83693"),
            ("2", "66371"),
            ("3", "52635"),
            ("4", "41741"),
            ("5", "33102"),
            ("6", "26251"),
            ("7", "20818"),
            ("8", "16510"),
            ("9", "13093"),
            ("10", "10383"),
            ("11", "8234.1"),
            ("12", "6529.9"),
            ("13", "5178.5"),
            ("14", "4106.7"),
            ("15", "3256.8"),
            ("16", "2582.7"),
            ("17", "2048.2"),
            ("18", "1624.3"),
            ("19", "1288.1"),
            ("20", "1021.5"),
        )
    }
)
LARGEST_KCMIL = 2000  # common practice, no source
_GAGE = re.compile(
    r"#?(?P<before>[0-9]+(?:/0)?)[\s-]*AWG|AWG[\s-]*#?(?P<after>[0-9]+(?:/0)?)", re.IGNORECASE
)
_CORES = re.compile(r"[0-9]+/[1-9][0-9]*[\s-]*(?:AWG)?", re.IGNORECASE)


def read_conductor(body: str, *, found: str) -> Fraction | None:
    """Square metres of conductor in a gage such as "10 AWG"; None if the text names no gage.

    Raises QuantityError if the table has no such gage, or the text counts conductors too.
    """
    match = _GAGE.fullmatch(body)
    if match is not None:
        gage = match["before"] or match["after"]
        if gage not in CIRCULAR_MILS:
            reason = f"the table has no gage {gage}, only 20 to 1 and 1/0 to 4/0"
            raise refusal(CONDUCTOR_AREA, found=found, reason=reason)
        return CIRCULAR_MILS[gage] * CIRCULAR_MIL
    if body.startswith("#"):
        raise refusal(CONDUCTOR_AREA, found=found, reason='a gage is written with "AWG"')
    if _CORES.fullmatch(body):
        reason = "a gage with a count of conductors; write the gage alone"
        raise refusal(CONDUCTOR_AREA, found=found, reason=reason)
    return None


def conductor_size(area: Fraction) -> str | None:
    """The name `area` (m2) is sold by, "10 AWG" or "250 kcmil"; None if it is neither."""
    circular_mils = area / CIRCULAR_MIL
    for gage, size in CIRCULAR_MILS.items():
        if _same(circular_mils, size):
            return f"{gage} AWG"
    thousands = round(circular_mils / 1000)
    sold = 1 <= thousands <= LARGEST_KCMIL and _same(circular_mils, Fraction(1000 * thousands))
    return f"{thousands:,} kcmil" if sold else None


def _same(area: Fraction, other: Fraction) -> bool:
    # What one rounding to a float can do is far below this.
    return abs(area - other) <= other / 1_000_000_000
