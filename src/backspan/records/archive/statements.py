"""Proves the entries of an archive against their receipts and their devices' chains.

A line that was taken out, put in or changed must not put the blame on all lines after it. So lines
and receipts are laid side by side first, by their hashes.
"""

from __future__ import annotations

import hashlib
import json
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, field

from backspan.core.ledger.chain import Chains
from backspan.core.ledger.entry import MOST_BYTES, Entry, read_entry
from backspan.core.ledger.errors import EntryError
from backspan.core.ledger.receipts import Receipt
from backspan.records.archive.followed import Devices, Receipts
from backspan.records.archive.layout import ENTRIES
from backspan.records.archive.report import Damages


@dataclass(slots=True)
class Statements:
    """What the entries were found to be: how many lines, the site, the evidence they name."""

    lines: int = 0
    site: str | None = None
    #: Evidence by hash, with the entry that names it first.
    named: dict[str, str] = field(default_factory=dict)
    #: Whether a line could not be trusted, so that what it named is not known.
    unread: bool = False


def prove_entries(
    reading: Callable[[], Iterable[bytes]], receipts: Receipts, site: str | None, damages: Damages
) -> Statements:
    """Tell of every line that is not what its receipt says, or does not follow on its device.

    `reading` starts the lines from the first again; `site` is the manifest's, if there is one.
    """
    hashes = [hashlib.sha256(line.removesuffix(b"\n")).hexdigest() for line in reading()]
    problems = _against_receipts(hashes, receipts, damages)
    known = {one.entry for one in receipts.found if one is not None}
    found = Statements(lines=len(hashes), site=site)
    devices: Devices | None = None
    for number, line in enumerate(reading(), start=1):
        entry, problem = _read(line)
        trusted = problem is None and (hashes[number - 1] in known or number not in problems)
        if devices is None and entry is not None and (trusted or found.site is not None):
            found.site = found.site or entry.envelope.site
            devices = Devices(Chains(found.site), spare=len(hashes))
        if number in problems:
            expected, says = problems[number]
            _lose(devices, line, expected if hashes[number - 1] not in known else "")
            damages.tell(ENTRIES, f"{says}{_named(line)}", number=number)
        if problem is not None and number not in problems:
            damages.tell(ENTRIES, f"{problem}{_named(line)}", number=number)
        if not trusted or entry is None or devices is None:
            found.unread = True
            continue
        broken = devices.take(entry)
        if broken is not None:
            damages.tell(ENTRIES, f"does not follow: {broken}", number=number)
        for one in entry.envelope.evidence:
            found.named.setdefault(one, f"{entry.name} (line {number})")
    return found


def _read(line: bytes) -> tuple[Entry | None, str | None]:
    if not line.endswith(b"\n"):
        if len(line) > MOST_BYTES:
            return None, f"a line of more than {MOST_BYTES:,} bytes"
        return None, "no line feed at its end"
    try:
        return read_entry(line[:-1]), None
    except EntryError as error:
        return None, f"cannot be read: {error}"


def _against_receipts(
    hashes: list[str], receipts: Receipts, damages: Damages
) -> dict[int, tuple[str, str]]:
    """By line number: the hash that was expected there and what is wrong with the line."""
    problems: dict[int, tuple[str, str]] = {}
    lines = {one: number for number, one in enumerate(hashes, start=1)}
    places = {one.entry: n for n, one in enumerate(receipts.found, start=1) if one is not None}
    for line, place, at in side_by_side(hashes, receipts.found):
        receipt = None if place is None else receipts.found[place]
        if line is None:
            if receipt is not None:
                where = lines.get(receipt.entry)
                elsewhere = "not here" if where is None else f"in line {where}"
                says = f"the entry of place {place_of(place)} is {elsewhere}, expected here"
                damages.tell(ENTRIES, f"{says}: {receipt.entry}", number=at + 1)
        elif place is None:
            where = places.get(hashes[line])
            receipted = "has no receipt" if where is None else f"has its receipt in line {where}"
            problems[line + 1] = ("", f"this entry {receipted}: {hashes[line]}")
        elif receipt is not None and receipt.entry != hashes[line]:
            if receipts.meant(place, hashes[line]):
                continue  # the receipt was changed, not the entry, and was told of
            says = f"found the hash {hashes[line]}, expected {receipt.entry} by its receipt"
            problems[line + 1] = (receipt.entry, says)
    return problems


def place_of(index: int | None) -> int:
    """The place that an index stands for."""
    return 0 if index is None else index + 1


def side_by_side(
    hashes: list[str], receipts: list[Receipt | None]
) -> Iterator[tuple[int | None, int | None, int]]:
    """Which line belongs to which receipt, by index; None where there is no partner.

    The third number is the line that was reached by then.
    """
    lines = {one: index for index, one in enumerate(hashes)}
    places = {one.entry: index for index, one in enumerate(receipts) if one is not None}
    line = place = 0
    while line < len(hashes) or place < len(receipts):
        if place == len(receipts):
            yield line, None, line
            line += 1
            continue
        if line == len(hashes):
            yield None, place, line
            place += 1
            continue
        receipt, content = receipts[place], hashes[line]
        fits = receipt is not None and receipt.entry == content
        line_comes = receipt is not None and lines.get(receipt.entry, -1) > line
        place_comes = places.get(content, -1) > place
        if not fits and line_comes:
            yield line, None, line
            line += 1
        elif not fits and place_comes:
            yield None, place, line
            place += 1
        else:
            yield line, place, line
            line, place = line + 1, place + 1


def _device_and_sequence(line: bytes) -> tuple[str, int] | None:
    """Device and number of a line, as far as they can still be read."""
    try:
        data = json.loads(line[:MOST_BYTES])
    except (ValueError, RecursionError):
        return None
    if not isinstance(data, dict):
        return None
    device, sequence = data.get("device"), data.get("sequence")
    if not isinstance(device, str) or type(sequence) is not int:
        return None
    return device, sequence


def _named(line: bytes) -> str:
    found = _device_and_sequence(line)
    if found is None:
        return ""
    # A damaged line may hold what is no Unicode, and a report has to be printed.
    device = found[0][:80].encode("utf-8", errors="backslashreplace").decode("utf-8")
    return f" ({device} {found[1]})"


def _lose(devices: Devices | None, line: bytes, expected: str) -> None:
    found = _device_and_sequence(line)
    if devices is not None and found is not None and expected:
        devices.lose(*found, expected)
