"""From typed text to an exact number: one plain text, then the numeral at its start."""

import re
from dataclasses import dataclass
from enum import Enum, auto
from fractions import Fraction

from backspan.core.quantities.dimension import Dimension
from backspan.core.quantities.errors import QuantityError

LONGEST_TEXT = 64
LONGEST_DIGITS = 15
#: A float written out in full has up to 17, and zeros before them where it is small.
LONGEST_DECIMALS = 25

_SAME_CHARACTER = str.maketrans(
    {
        **dict.fromkeys("′‘’", "'"),
        **dict.fromkeys("″“”", '"'),
        **dict.fromkeys("‐‑‒–−", "-"),
        **dict.fromkeys("⋅∙", "·"),
        "⁄": "/",
        "º": "°",
    }
)
_VULGAR = {"½": "1/2", "¼": "1/4", "¾": "3/4", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8"}
_VULGAR_CHARACTER = re.compile(r"(?P<digit>(?<=[0-9]))?(?P<vulgar>[½¼¾⅛⅜⅝⅞])")
_VULGAR_THEN_NUMBER = re.compile(r"[½¼¾⅛⅜⅝⅞]\s*[0-9./]")
_GROUPED = re.compile(r"[1-9][0-9]{0,2}(,[0-9]{3})+")
_SIGN = re.compile(r"(?P<sign>[+-])(?=[0-9.])")
_SUBTRACTION = re.compile(r"(?P<whole>[0-9][0-9,]*)(\s+-\s*|-\s+)(?P<part>[0-9]+/[0-9]+)")
_DECIMAL_AND_FRACTION = re.compile(r"[0-9,]*\.[0-9]+[ -]+[0-9]+/[0-9]")
_NUMERAL = re.compile(
    r"(?P<whole>[0-9][0-9,]*)(?:-|\s+)(?P<over>[0-9]+)/(?P<under>[0-9]+)"
    r"|(?P<top>[0-9]+)/(?P<bottom>[0-9]+)"
    r"|(?P<decimal>(?:[0-9][0-9,]*)?\.[0-9]+)"
    r"|(?P<integer>[0-9][0-9,]*)"
)


class Kind(Enum):
    """How a numeral was written."""

    INTEGER = auto()
    DECIMAL = auto()
    FRACTION = auto()
    MIXED = auto()


@dataclass(frozen=True)
class Numeral:
    """An unsigned number at the start of a text, and the text that follows it."""

    value: Fraction
    kind: Kind
    rest: str


def refusal(dimension: Dimension, *, found: str, reason: str) -> QuantityError:
    """The error for a text that is not taken, with the forms that would be."""
    return QuantityError(
        reason=f"{reason}; {dimension.wanted} is wanted", found=found, expected=dimension.forms
    )


def plain_text(text: str, dimension: Dimension) -> str:
    """`text` with one character for each meaning: straight primes, plain fractions, single blanks.

    Raises QuantityError if it is empty, too long, or a fraction character touches another number.
    """
    if len(text) > LONGEST_TEXT:
        shown = text[:LONGEST_TEXT] + "..."
        raise refusal(dimension, found=shown, reason=f"longer than {LONGEST_TEXT} characters")
    if not text.strip():
        raise refusal(dimension, found=text, reason="nothing is written")
    if _VULGAR_THEN_NUMBER.search(text):
        raise refusal(dimension, found=text, reason="a number follows a fraction")
    spelled = _VULGAR_CHARACTER.sub(_spell_fraction, text)
    spelled = spelled.translate(_SAME_CHARACTER).replace("''", '"')
    return " ".join(spelled.split())


def split_sign(text: str) -> tuple[int, str]:
    """The sign in front, as 1 or -1, and the text after it."""
    match = _SIGN.match(text)
    if match is None:
        return 1, text
    return (-1 if match["sign"] == "-" else 1), text[match.end() :]


def read_numeral(text: str, *, dimension: Dimension, found: str) -> Numeral:
    """The unsigned numeral at the start of `text`; `found` is the whole text, for the error.

    Raises QuantityError if there is none, or it can be read in two ways.
    """
    subtraction = _SUBTRACTION.match(text)
    if subtraction is not None:
        whole, part = subtraction["whole"], subtraction["part"]
        reason = f'ambiguous: "{whole} {part}" (one mixed number) or {whole} minus {part}'
        raise refusal(dimension, found=found, reason=reason)
    if _DECIMAL_AND_FRACTION.match(text):
        raise refusal(dimension, found=found, reason="a decimal number mixed with a fraction")
    match = _NUMERAL.match(text)
    if match is None:
        raise refusal(dimension, found=found, reason="no number where one should stand")
    for point, digits in re.findall(r"(\.?)([0-9]+)", match[0].replace(",", "")):
        most = LONGEST_DECIMALS if point else LONGEST_DIGITS
        if len(digits) > most:
            reason = f"more than {most} digits in a row"
            raise refusal(dimension, found=found, reason=reason)
    try:
        value, kind = _value(match)
    except _UnreadableError as error:
        raise refusal(dimension, found=found, reason=str(error)) from error
    return Numeral(value=value, kind=kind, rest=text[match.end() :])


class _UnreadableError(Exception):
    """Why a numeral was not taken; never leaves this module."""


def _spell_fraction(match: re.Match[str]) -> str:
    gap = " " if match["digit"] is not None else ""
    return gap + _VULGAR[match["vulgar"]]


def _value(match: re.Match[str]) -> tuple[Fraction, Kind]:
    if match["decimal"] is not None:
        whole, _, digits = match["decimal"].partition(".")
        tail = Fraction(int(digits), 10 ** len(digits))
        return (_whole(whole) if whole else Fraction(0)) + tail, Kind.DECIMAL
    if match["integer"] is not None:
        return _whole(match["integer"]), Kind.INTEGER
    if match["top"] is not None:
        return _fraction(match["top"], match["bottom"]), Kind.FRACTION
    part = _fraction(match["over"], match["under"])
    if part >= 1:
        raise _UnreadableError(f"the fraction of a mixed number is below one, not {part}")
    return _whole(match["whole"]) + part, Kind.MIXED


def _whole(text: str) -> Fraction:
    if "," in text and not _GROUPED.fullmatch(text):
        raise _UnreadableError(
            "ambiguous comma: it parts thousands in groups of three, never decimals"
        )
    return Fraction(int(text.replace(",", "")))


def _fraction(top: str, bottom: str) -> Fraction:
    if int(top) == 0 or int(bottom) == 0:
        raise _UnreadableError("a fraction with zero")
    return Fraction(int(top), int(bottom))
