"""Feet with inches: the one form in which a quantity has two numbers."""

import re
from fractions import Fraction

from backspan.core.quantities.numerals import Kind, Numeral, read_numeral, refusal
from backspan.core.quantities.units import FOOT, INCH, LENGTH

_FEET_MARK = re.compile(r"\s*(?:'|(?:feet|foot|ft)(?![a-z])\.?)\s*", re.IGNORECASE)
_HYPHEN = re.compile(r"(?P<before>\s*)-(?P<after>\s*)")
_ANOTHER_NUMBER = re.compile(r"\s*[0-9.]")
_INCH_MARK = re.compile(r"\s*(?:\"|(?:inches|inch|in)\.?)", re.IGNORECASE)

INCHES_IN_A_FOOT = 12


def read_length(body: str, *, found: str) -> Fraction | None:
    """Metres in a text of feet and inches; None if the text has no number after a feet mark.

    Raises QuantityError if it has, but not as whole feet and less than twelve inches.
    """
    feet = read_numeral(body, dimension=LENGTH, found=found)
    mark = _FEET_MARK.match(feet.rest)
    if mark is None:
        return None
    gap = mark[0][len(mark[0].rstrip()) :]
    tail = gap + feet.rest[mark.end() :]
    hyphen = _HYPHEN.match(tail)
    inches_text = tail[hyphen.end() :] if hyphen is not None else tail.lstrip()
    if not re.match(r"[0-9.]", inches_text):
        return None
    inches = read_numeral(inches_text, dimension=LENGTH, found=found)
    reason = _why_not(feet, inches, hyphen)
    if reason is not None:
        raise refusal(LENGTH, found=found, reason=reason)
    return feet.value * FOOT + inches.value * INCH


def _why_not(feet: Numeral, inches: Numeral, hyphen: re.Match[str] | None) -> str | None:
    faults = (
        (not inches.rest, "ambiguous: the number after the feet has no inch mark"),
        (bool(_ANOTHER_NUMBER.match(inches.rest)), "two numbers in a row"),
        (not _INCH_MARK.fullmatch(inches.rest), "mixed units: only feet and inches go together"),
        (feet.kind is not Kind.INTEGER, "feet with inches must be whole feet"),
        (inches.value >= INCHES_IN_A_FOOT, "twelve inches or more after the feet"),
        (
            hyphen is not None and _looks_like_minus(hyphen, inches),
            "ambiguous hyphen: feet with inches, or feet minus inches",
        ),
    )
    return next((reason for is_so, reason in faults if is_so), None)


def _looks_like_minus(hyphen: re.Match[str], inches: Numeral) -> bool:
    blank_before, blank_after = bool(hyphen["before"]), bool(hyphen["after"])
    return blank_before and (not blank_after or inches.kind is Kind.FRACTION)
