"""What a file's bytes tell before a library loads them: that it is a whole DXF, not too large."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator

from backspan.core.errors import quoted
from backspan.exchange.drawings_in.errors import DrawingError, refused
from backspan.exchange.wrong import MOST_SHOWN, Wrong

MOST_BYTES, MOST_ENTITIES = 50_000_000, 200_000
_ASCII = "a drawing saved as DXF, ASCII"
_BINARY, _OTHER_DRAWING = b" Binary DXF\r\n\x1a\0", re.compile(rb"AC\d{4}")
_SIGNATURE, _LAST_LINES = 22, 80
_STEP = 1 << 20
_ODD_NUMBER = re.compile(
    rb"^[ \t]*[+-]?(?:nan|inf(?:inity)?|[\d.]+e\+?\d{3,})[ \t]*\r?$", re.IGNORECASE | re.MULTILINE
)
_LARGE = re.compile(rb"e\+?\d{3,}[ \t]*\r?\n")
_BEGINNING = re.compile(
    rb"(?:\xef\xbb\xbf)?(?:\s*999[ \t]*\r?\n[^\n]*\n)*\s*0[ \t]*\r?\n\s*SECTION\b"
)
_END = re.compile(rb"\n[ \t]*0[ \t]*\r?\n[ \t]*EOF\Z")
#: Group codes of coordinates, lengths, scales and directions.
_FLOATS = (range(10, 60), range(110, 150), range(210, 240), range(460, 470))


def look(content: bytes, origin: str) -> None:
    """Raise DrawingError for bytes that are no whole DXF file in text, or too much of one."""
    if len(content) > MOST_BYTES:
        raise refused(origin, f"more than {MOST_BYTES:,} bytes", f"at most {MOST_BYTES:,}")
    _refuse_other_kinds(content, origin)
    _refuse_many(content, origin)
    if _END.search(content.rstrip(b"\0\x1a \t\r\n")[-_LAST_LINES:]) is None:
        found = "no end: the file was cut short"
        raise refused(origin, found, "its last line to be EOF; save or send it again")
    wrong = list(_odd_numbers(content))
    if wrong:
        raise DrawingError(wrong)


def _refuse_other_kinds(content: bytes, origin: str) -> None:
    if not content.strip():
        raise refused(origin, "nothing in it", _ASCII)
    if content[:_SIGNATURE].endswith(_BINARY):
        raise refused(origin, "a binary DXF", f"{_ASCII}: save it as that")
    if _OTHER_DRAWING.match(content):
        raise refused(origin, "a DWG", f"{_ASCII}: save it as that")
    if _BEGINNING.match(content) is None:
        raise refused(origin, f"no DXF: it begins with {quoted(content[:24])}", _ASCII)
    if b"\0" in content.rstrip(b"\0"):
        line = content[: content.index(b"\0")].count(b"\n") + 1
        raise refused(f"line {line}", "the character U+0000, which no text holds", _ASCII)


def _refuse_many(content: bytes, origin: str) -> None:
    """Every second line is a code, and the code 0 begins an entity."""
    many, rest, parity = 0, b"", 0
    for start in range(0, len(content), _STEP):
        lines = (rest + content[start : start + _STEP]).split(b"\n")
        rest = lines.pop()
        codes = Counter(lines[parity::2])
        many += sum(count for code, count in codes.items() if code.strip() == b"0")
        parity = (parity + len(lines)) % 2
        if many > MOST_ENTITIES:
            found = f"more than {MOST_ENTITIES:,} entities"
            expected = f"at most {MOST_ENTITIES:,}: save the roof's layers alone"
            raise refused(origin, found, expected)


def _odd_numbers(content: bytes) -> Iterator[Wrong]:
    """Each coordinate that is no finite number, by its line."""
    lower = content.lower()
    if b"nan" not in lower and b"inf" not in lower and _LARGE.search(lower) is None:
        return
    line, counted, told = 1, 0, 0
    for hit in _ODD_NUMBER.finditer(content):
        line += content.count(b"\n", counted, hit.start())
        counted = hit.start()
        before = (
            content[max(0, counted - 20) : counted].rstrip(b"\r\n").rpartition(b"\n")[2].strip()
        )
        is_value = line % 2 == 0
        text = hit[0].decode("ascii").strip()
        if not is_value or not before.isdigit() or not _holds_a_number(int(before)):
            continue
        if float(text) - float(text) == 0.0:  # large, yet a number
            continue
        yield Wrong(f"line {line}", f"the number {text}", "a finite number")
        told += 1
        if told > MOST_SHOWN:
            return


def _holds_a_number(code: int) -> bool:
    return any(code in one for one in _FLOATS)
