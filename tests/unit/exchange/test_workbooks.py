"""Tables in workbooks: what a cell shows is what is read; nothing damaged or huge is opened."""

from __future__ import annotations

import datetime
import io
import random
import struct
import zipfile
from collections.abc import Sequence
from typing import Any

import pytest
from openpyxl import Workbook

from backspan.core.model.site import Anchor
from backspan.exchange.tables import TableError, Told, What, read_table, stated
from tests.unit.core.rigs import ON, PROJECT

TOLD = Told("MT", "2026-11-25T12:00", "told")
HEAD = ("id", "x", "y", "kind", "inspected")
ROW = ("B1", "10 ft", "12 ft", "post", datetime.datetime(2026, 3, 3))  # noqa: DTZ001 - a day


def book(*rows: Sequence[Any], title: str = "Anchors") -> Workbook:
    """A workbook with these rows under the headings."""
    made = Workbook()
    sheet = made.active
    sheet.title = title
    for row in (HEAD, *rows):
        sheet.append(row)
    return made


def saved(made: Workbook) -> bytes:
    """A workbook as a file."""
    out = io.BytesIO()
    made.save(out)
    return out.getvalue()


def anchors(content: bytes) -> tuple[Any, ...]:
    """What it states."""
    table = read_table(content, "roof.xlsx", "anchors")
    return stated(table, What.ANCHORS, PROJECT, "ROOF", TOLD, today=ON.isoformat())


def outcome(content: bytes) -> str:
    """The mark that it states, or all that is wrong with it."""
    try:
        return " ".join(one.id for one in anchors(content))
    except TableError as error:
        return str(error)


def told(content: bytes) -> str:
    """All that is wrong with it."""
    with pytest.raises(TableError, match="found") as caught:
        anchors(content)
    return str(caught.value)


def rezipped(content: bytes, **members: bytes) -> bytes:
    """A workbook with other members, each by its name with `__` for a slash."""
    out = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(content)) as old, zipfile.ZipFile(out, "w", 8) as new:
        other = {name.replace("__", "/"): one for name, one in members.items()}
        for name in old.namelist():
            new.writestr(name, other.pop(name, old.read(name)))
        for name, one in other.items():
            new.writestr(name, one)
    return out.getvalue()


def test_a_row_of_a_workbook_is_an_anchor_and_a_date_cell_a_day() -> None:
    (one,) = anchors(saved(book(ROW)))
    assert isinstance(one, Anchor)
    assert (one.id, one.kind, one.inspected) == ("B1", "post", "2026-03-03")


def test_the_sheet_that_is_named_is_read_and_no_other_is_guessed() -> None:
    made = book(ROW)
    made.create_sheet("Notes").append(["call the owner"])
    assert len(anchors(saved(made))) == 1
    made["Anchors"].title = "Sheet1"
    assert "'Sheet1', 'Notes'; expected one sheet, or one that is called anchors" in told(
        saved(made)
    )


@pytest.mark.parametrize(
    ("cell", "value", "said"),
    [
        ("A2", None, "Anchors!A2 (id): found an empty cell"),
        ("A2", datetime.datetime(2026, 4, 3), "Anchors!A2 (id): found a day, '2026-04-03'"),  # noqa: DTZ001
        ("B2", 10, "Anchors!B2 (x): found '10': "),
        ("C2", "=6+6", "Anchors!C2: found a formula that was never worked out"),
        ("D2", "#REF!", "Anchors!D2: found the error '#REF!'"),
        ("D2", True, "Anchors!D2 (kind): found a yes or no, 'TRUE'"),
        ("E2", datetime.datetime(2026, 3, 3, 8, 5), "Anchors!E2 (inspected): found a time"),  # noqa: DTZ001
        ("E2", datetime.datetime(2027, 3, 3), "(inspected): found 2027-03-03; expected a day that"),  # noqa: DTZ001
        ("G2", "more", "Anchors!G2: found 'more' under no heading"),
        ("BI1", "id", "Anchors!BI1: found 'id' in column 61; expected at most 60 columns"),
    ],
)
def test_each_cell_that_is_wrong_is_told_by_its_address(cell: str, value: Any, said: str) -> None:
    made = book(ROW)
    made["Anchors"][cell] = value
    assert said in told(saved(made))


def test_a_number_that_is_shown_otherwise_is_no_text() -> None:
    made = book(ROW)
    made["Anchors"]["A2"] = 7
    made["Anchors"]["A2"].number_format = "000"
    assert "Anchors!A2 (id): found a number that is shown as 000, '7'" in told(saved(made))


def test_merged_cells_are_told() -> None:
    made = book(ROW, ("B2", "14 ft", "12 ft", "post"))
    made["Anchors"].merge_cells("D2:D3")
    assert "Anchors!D2:D3: found cells that are merged" in told(saved(made))


def test_a_cell_far_away_costs_nothing() -> None:
    made = book(ROW)
    made["Anchors"]["XFD1048576"] = "far"
    assert "Anchors!XFD1048576: found 'far' in column 16384" in told(saved(made))


def test_too_many_rows_are_told() -> None:
    made = book(*[("B", "1 ft", "1 ft", "post")] * 5001)
    assert "found 5,001 rows below the headings" in told(saved(made))


def test_what_stands_for_far_more_than_it_is_is_not_opened() -> None:
    bomb = rezipped(saved(book(ROW)), xl__media__nothing=b"\0" * 61_000_000)
    assert len(bomb) < 100_000
    assert "unpacks to" in told(bomb)
    many = b"<x>" + b"<c/>" * 400_000 + b"</x>"
    assert "more cells than a table has" in told(rezipped(saved(book(ROW)), **{"a.xml": many}))


@pytest.mark.parametrize(
    ("name", "content", "said"),
    [
        ("xl__vbaProject.bin", b"x", "a workbook with macros"),
        ("xl__externalLinks__externalLink1.xml", b"<x/>", "links to other files"),
        ("a.xml", b'<!DOCTYPE x [<!ENTITY e "e">]><x>&e;</x>', "a kind of document of its own"),
        ("a.xml", b"<x>", "a workbook that is damaged"),
        ("xl__workbook.xml", b"<x/>", "the sheets none; expected one sheet"),
    ],
)
def test_what_no_table_needs_is_refused(name: str, content: bytes, said: str) -> None:
    assert said in told(rezipped(saved(book(ROW)), **{name: content}))


def test_a_password_and_another_file_are_told() -> None:
    assert "with a password" in told(b"\xd0\xcf\x11\xe0" + b"\0" * 600)
    raw = bytearray(saved(book(ROW)))
    at = raw.index(b"PK\x01\x02")
    raw[at + 8 : at + 10] = struct.pack("<H", 1)
    assert "with a password" in told(bytes(raw))
    assert "no archive, though its name ends in .xlsx" in told(b"id,x,y\n")
    with pytest.raises(TableError, match=r"an archive, though its name ends in \.csv"):
        read_table(saved(book(ROW)), "roof.csv", "anchors")
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as other:
        other.writestr("a.txt", "a")
    assert "an archive that is no workbook" in told(out.getvalue())


def test_a_large_file_is_refused_by_its_size() -> None:
    assert "more than 5,000,000 bytes" in told(b"PK" + b"\0" * 5_000_000)


def test_a_damaged_file_gives_a_clear_error_or_what_it_said() -> None:
    """200 files, cut off or with bytes changed; half of them stored, so that XML is hit too."""
    chance = random.Random(20261125)  # noqa: S311 - the same damage every time
    whole = saved(book(ROW))
    plain = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(whole)) as old, zipfile.ZipFile(plain, "w") as new:
        for name in old.namelist():
            new.writestr(name, old.read(name))
    for number in range(200):
        raw = bytearray(plain.getvalue() if number % 2 else whole)
        if number % 4 < 2:
            del raw[chance.randrange(2, len(raw)) :]
        else:
            for _ in range(chance.randrange(1, 9)):
                raw[chance.randrange(2, len(raw))] ^= 1 << chance.randrange(8)
        said = outcome(bytes(raw))
        assert said == "B1" or ("found" in said and "expected" in said)


def test_damaged_xml_in_a_whole_archive_gives_a_clear_error() -> None:
    """What the sums of the archive do not find: parts that say something else."""
    chance = random.Random(3)  # noqa: S311 - the same damage every time
    whole = saved(book(ROW))
    with zipfile.ZipFile(io.BytesIO(whole)) as archive:
        parts = {name: archive.read(name) for name in archive.namelist()}
    for _ in range(100):
        name = chance.choice(sorted(parts))
        raw = bytearray(parts[name])
        for _ in range(chance.randrange(1, 4)):
            raw[chance.randrange(len(raw))] = chance.randrange(32, 127)
        said = outcome(rezipped(whole, **{name: bytes(raw)}))
        assert len(said.split()) == 1 or ("found" in said and "expected" in said)
