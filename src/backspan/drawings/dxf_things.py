r"""Which thing of the site an entity of a DXF file shows, and its values.

A sign is an INSERT with attributes: KIND, ID and PATH, then the facts of the thing by their
names, in capitals. Those attributes are invisible: the label beside the sign stays the text that
is read. In a plan X and Y are the place as it is printed, X_M and Y_M the same in metres; wherever
a name ends in _M, _N or _KG the value is exact, in metres, newtons or kilograms, whatever the unit
of the file.

A line, an outline or a circle has the same as extended data under the application BACKSPAN: one
string for each value, `KIND=edge`, and where a value is longer than a string may be, more strings
that begin with `+` and go on with it. Texts, dimensions, hatches and leaders carry none.

What a DXF file may hold only encoded (a backslash, a caret, two percent signs, a space at an end,
what cannot be printed) is written as the format's own `\U+XXXX`, which readers turn back.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterator, Sequence

from backspan.drawings.scene import DrawingError
from backspan.drawings.things import Thing

APPLICATION = "BACKSPAN"
"""The name under which lines carry their thing."""

KIND, ID, PATH = "KIND", "ID", "PATH"
GOES_ON = "+"
"""What a string begins with that goes on with the value before it."""

MOST_OF_A_VALUE = 2000
"""The longest value, in characters as they are written: a line of a DXF file has 2,049."""

MOST_OF_A_STRING = 240
"""The longest string of extended data, in bytes: 255 by the format."""

LAST_OF_FOUR_DIGITS = 0xFFFF
LONGEST_SIGN = 7
"""The most bytes that one character takes, encoded."""

_ENCODED = re.compile(r"\\U\+([0-9A-Fa-f]{4})")
_NOT_PLAIN = frozenset("\\^%")


def tag_of(name: str) -> str:
    """The tag of a value: its name in capitals, which `name_of` turns back."""
    return name.upper()


def name_of(tag: str) -> str:
    """The name of a value whose tag it is."""
    return tag.lower()


def values_of(thing: Thing) -> Iterator[tuple[str, str]]:
    """All that an entity says of its thing: tags and values."""
    yield KIND, str(thing.kind)
    yield ID, thing.id
    yield PATH, thing.where
    for name, value in thing.facts:
        yield tag_of(name), value


def written(thing: Thing) -> Iterator[tuple[str, str]]:
    """All that an entity says of its thing, as a DXF file holds it.

    Raises DrawingError for a value that the format has no way to write.
    """
    for tag, value in values_of(thing):
        yield tag, "".join(_encoded(_checked(tag, value, thing)))


def strings(thing: Thing) -> Iterator[str]:
    """The same in strings of extended data, none of them cut within a character."""
    for tag, value in values_of(thing):
        yield from _strings(_encoded(f"{tag}={_checked(tag, value, thing)}"))


def decoded(value: str) -> str:
    """What a file holds, with its encoded characters turned back."""
    return _ENCODED.sub(lambda found: chr(int(found[1], 16)), value)


def _checked(tag: str, value: str, thing: Thing) -> str:
    """The value, unless the format has no way to write it."""
    if len(value) > MOST_OF_A_VALUE or (
        not value.isascii() and any(map(_cannot_be_written, value))
    ):
        what = f"{thing.kind} {thing.id[:40]!r}: its {tag} {value[:40]!r}"
        raise DrawingError(
            f"{what} has {len(value)} characters, at most {MOST_OF_A_VALUE} can be written in a "
            "DXF file, and none that stands for nothing printable"
        )
    return value


def _cannot_be_written(sign: str) -> bool:
    half = unicodedata.category(sign) == "Cs"
    return half or (ord(sign) > LAST_OF_FOUR_DIGITS and not sign.isprintable())


def _encoded(value: str) -> Sequence[str]:
    """The characters of a value as a DXF file holds them."""
    if value.isprintable() and _NOT_PLAIN.isdisjoint(value) and value == value.strip():
        return value
    percent = "%%" in value
    last = len(value) - 1
    return [
        f"\\U+{ord(sign):04X}"
        if sign in "\\^"
        or (sign == "%" and percent)
        or (sign == " " and at in (0, last))
        or not sign.isprintable()
        else sign
        for at, sign in enumerate(value)
    ]


def _strings(signs: Sequence[str]) -> Iterator[str]:
    if len(signs) * LONGEST_SIGN <= MOST_OF_A_STRING:
        yield "".join(signs)
        return
    string, room = "", MOST_OF_A_STRING
    for sign in signs:
        if room < len(sign.encode("utf-8")):
            yield string
            string, room = GOES_ON, MOST_OF_A_STRING
        string += sign
        room -= len(sign.encode("utf-8"))
    yield string
