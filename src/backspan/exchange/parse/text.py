"""Bytes to text that a person could have typed: size, encoding, control characters."""

from __future__ import annotations

import re

from backspan.exchange.parse.problems import Place, Problem, ProjectError

#: Bytes. A site of 200 drops written out in full is a fifth of it.
MOST_BYTES = 2_000_000

_BYTE_ORDER_MARK = "\ufeff"
_TYPED_TEXT = "a text file in UTF-8"
#: Control characters, surrogates, and a byte order mark that is not at the start.
_NOT_TYPED = re.compile(
    "[\x00-\x08\x0b\x0c\x0e-\x1f\x7f-\x84\x86-\x9f\ud800-\udfff\ufeff\ufffe\uffff]"
)


#: What an escape in quotes may bring back: controls, marks of direction, ends of lines.
_NOT_READ = re.compile(
    "[\x00-\x08\x0b-\x1f\x7f-\x9f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069\ud800-\udfff\ufeff\ufffe\uffff]"
)


def stranger_in(text: str) -> str | None:
    """The first character, as U+XXXX, that would hide or move other text where this is shown."""
    found = _NOT_READ.search(text)
    return None if found is None else f"U+{ord(found.group()):04X}"


def decoded(content: bytes, origin: str) -> str:
    """The text of a file's `content`.

    Raises ProjectError, with the place, if it is too large or not UTF-8.
    """
    if len(content) > MOST_BYTES:
        raise too_large(origin)
    try:
        return content.decode("utf-8")
    except UnicodeDecodeError as error:
        before = content[: error.start].decode("utf-8")
        found = f"the byte 0x{content[error.start]:02X}, which is not UTF-8"
        raise _refused(origin, before, found) from error


def checked(text: str, origin: str) -> str:
    """`text` without its byte order mark.

    Raises ProjectError, with the place, if it is too large or holds a character that no person
    types: it is then no text file, or a damaged one.
    """
    plain = text.removeprefix(_BYTE_ORDER_MARK)
    stranger = _NOT_TYPED.search(plain)
    if stranger is not None:
        found = f"the character U+{ord(stranger.group()):04X}, which no text holds"
        raise _refused(origin, plain[: stranger.start()], found)
    if len(plain) > MOST_BYTES or len(plain.encode("utf-8")) > MOST_BYTES:
        raise too_large(origin)
    return plain


def too_large(origin: str) -> ProjectError:
    """The error for a file beyond the limit."""
    found = f"a file of more than {MOST_BYTES:,} bytes"
    return ProjectError([Problem(origin, 1, 1, "", found, f"at most {MOST_BYTES:,} bytes")])


def _refused(origin: str, before: str, found: str) -> ProjectError:
    place = place_after(before.removeprefix(_BYTE_ORDER_MARK))
    return ProjectError([Problem(origin, place.line, place.column, "", found, _TYPED_TEXT)])


def place_after(before: str) -> Place:
    """The place of the character that follows `before`."""
    lines = re.split("\r\n|\r|\n", before)
    return Place(line=len(lines), column=len(lines[-1]) + 1)
