"""How much room a text takes on paper, and where it is broken into lines.

No font is shipped, so the room is that of the widest common sans-serif; a narrower one leaves
some paper blank. Widths: advance widths of DejaVu Sans and its bold, read from the font files.
"""

from __future__ import annotations

import unicodedata

CAP_HEIGHT = 0.72
"""Height of a capital letter over the size of the font (most sans-serif fonts: 0.71 to 0.73)."""

ASCENT = 1.15
DESCENT = 0.32
LEADING = 1.65
"""Room above and below the base line, and from base line to base line, over the height."""

# Printable ASCII from the space on, in thousandths of the font size.
_REGULAR = (
    "318 401 460 838 636 950 780 275 390 390 500 838 318 361 318 337 636 636 636 636 636 636 636 "
    "636 636 636 337 337 838 838 838 531 1000 684 686 698 770 632 575 775 752 295 295 656 557 863 "
    "748 787 603 787 695 635 611 732 684 989 685 611 685 390 337 390 838 500 500 613 635 550 635 "
    "615 352 635 634 278 278 579 278 974 634 612 635 635 411 521 392 634 592 818 592 592 525 636 "
    "337 636 838"
)
_BOLD = (
    "348 456 521 838 696 1002 872 306 457 457 523 838 380 415 380 365 696 696 696 696 696 696 696 "
    "696 696 696 400 400 838 838 838 580 1000 774 762 734 830 683 683 821 837 372 372 775 637 995 "
    "837 850 733 850 770 720 682 812 774 1103 771 724 725 457 365 457 838 500 500 675 716 593 716 "
    "678 435 716 712 343 343 665 343 1042 712 687 716 716 493 595 478 712 652 924 645 652 582 712 "
    "365 712 838"
)
_WIDTHS = {
    bold: {chr(32 + place): int(width) / 1000 for place, width in enumerate(row.split())}
    for bold, row in ((False, _REGULAR), (True, _BOLD))
}
_WIDE = 1.0
_OTHER = 0.85


def font_size(height: float) -> float:
    """Size of the font whose capitals are `height` high."""
    return height / CAP_HEIGHT


def text_width(text: str, *, height: float, bold: bool = False) -> float:
    """Width of one line on paper, in the unit of `height`."""
    return sum(_width(letter, bold=bold) for letter in text) * font_size(height)


def _width(letter: str, *, bold: bool) -> float:
    known = _WIDTHS[bold].get(letter)
    if known is not None:
        return known
    if unicodedata.combining(letter):
        return 0.0
    # An accented letter is as wide as the letter it is made from.
    base = _WIDTHS[bold].get(unicodedata.normalize("NFD", letter)[0])
    if base is not None:
        return base
    return _WIDE if unicodedata.east_asian_width(letter) in "WF" else _OTHER


def plain(text: str) -> str:
    """`text` on one line, without characters that a drawing cannot show."""
    kept = (" " if letter.isspace() else letter for letter in text)
    return " ".join("".join(one for one in kept if unicodedata.category(one)[0] != "C").split())


def shortened(text: str, *, room: float, height: float, bold: bool = False) -> str:
    """`text`, cut with "..." where it is wider than `room`."""
    text = plain(text)
    if text_width(text, height=height, bold=bold) <= room:
        return text
    while text and text_width(f"{text}...", height=height, bold=bold) > room:
        text = text[:-1]
    return f"{text.rstrip()}..."


def wrapped(
    text: str, *, room: float, height: float, bold: bool = False, most: int | None = None
) -> tuple[str, ...]:
    """`text` broken at spaces into lines no wider than `room`; the last of `most` ends in "..."."""
    lines: list[str] = []
    for word in plain(text).split():
        joined = f"{lines[-1]} {word}" if lines else word
        if lines and text_width(joined, height=height, bold=bold) <= room:
            lines[-1] = joined
        else:
            lines.extend(_pieces(word, room=room, height=height, bold=bold))
    if most is not None and len(lines) > most:
        last = shortened(f"{lines[most - 1]} ...", room=room, height=height, bold=bold)
        return (*lines[: most - 1], last)
    return tuple(lines)


def _pieces(word: str, *, room: float, height: float, bold: bool) -> list[str]:
    pieces = [""]
    for letter in word:
        joined = pieces[-1] + letter
        if pieces[-1] and text_width(joined, height=height, bold=bold) > room:
            pieces.append(letter)
        else:
            pieces[-1] = joined
    return pieces
