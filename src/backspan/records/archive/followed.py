"""Follows the chains of receipts and of devices, and goes on after what is broken.

One broken link shall be told once, and the next broken one as well. So what follows is held against
what was stated as well as against what should have been, and what rests on an entry that is lost is
taken as it is: that it is lost was told already.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field

from backspan.core.ledger.chain import Chains, Link
from backspan.core.ledger.entry import Entry, is_hash
from backspan.core.ledger.errors import ChainError, EntryError
from backspan.core.ledger.receipts import NO_HEAD, Receipt, head_after, read_receipt, receipt_after
from backspan.records.archive.layout import RECEIPTS
from backspan.records.archive.report import Damages

MOST_RECEIPT_BYTES = 4_000


@dataclass(slots=True)
class Receipts:
    """The receipts by their lines, None where a line is none; heads before those that break."""

    found: list[Receipt | None] = field(default_factory=list)
    heads_before: dict[int, str] = field(default_factory=dict)

    def meant(self, index: int, entry: str) -> bool:
        """Whether a receipt that does not follow would do so with that entry: it was changed."""
        one, before = self.found[index], self.heads_before.get(index)
        if one is None or before is None:
            return False
        return head_after(before, index + 1, entry, one.received) == one.head


def follow_receipts(lines: Iterable[bytes], damages: Damages) -> Receipts:
    """All receipts; tells of each that cannot be read or does not follow."""
    all_of_them = Receipts()
    befores: list[Receipt | None] | None = [None]
    for number, line in enumerate(lines, start=1):
        try:
            one = read_receipt(_whole_line(line))
        except EntryError as error:
            damages.tell(RECEIPTS, f"cannot be read: {error}", number=number)
            all_of_them.found.append(None)
            befores = None
            continue
        all_of_them.found.append(one)
        expected = [
            receipt_after(before, entry=one.entry, received=one.received)
            for before in befores or ()
        ]
        if one in expected or (befores is None and one.place == number):
            befores = [one]
            continue
        if befores:
            before = befores[0]
            all_of_them.heads_before[number - 1] = NO_HEAD if before is None else before.head
        what = (
            "its head does not follow on what stands before it"
            if any(one.place == other.place for other in expected)
            else f"found the place {one.place}, expected {_places(expected) or number}"
        )
        damages.tell(RECEIPTS, what, number=number)
        befores = [one, *expected[:1]]
    return all_of_them


def _places(expected: Iterable[Receipt]) -> str:
    return " or ".join(str(place) for place in sorted({one.place for one in expected}))


def _whole_line(line: bytes) -> bytes:
    if not line.endswith(b"\n"):
        raise EntryError("receipt: too long, or no line feed at its end")
    return line[:-1]


@dataclass(slots=True)
class Devices:
    """The chains of all devices, with places whose entry is lost. `spare` bounds how many."""

    chains: Chains
    spare: int
    lost: set[tuple[str, int]] = field(default_factory=set)

    def take(self, entry: Entry) -> str | None:
        """Add an entry; answers why it does not follow, None if it does."""
        one = entry.envelope
        own = self.chains.links.get(one.device, [])
        if (one.device, one.sequence) in self.lost:
            return self._found_again(entry, own)
        resting = {(seen.device, seen.sequence) for seen in one.seen}
        resting.add((one.device, one.sequence - 1))
        if resting & self.lost and one.sequence == len(own) + 1 and one.site == self.chains.site:
            before = own[-1].hash if own else None
            self._adopt(entry)
            if before is None or not is_hash(before) or before == one.before:
                return None
            return f"{entry.name} follows on another {one.device} {len(own) - 1} than is here"
        try:
            self.chains.take(entry)
        except ChainError as error:
            self._adopt(entry)
            return str(error)
        return None

    def lose(self, device: str, sequence: int, content: str) -> None:
        """An entry that was changed: the next one of its device follows on what it was."""
        own = self.chains.links.setdefault(device, [])
        if sequence == len(own) + 1:
            own.append(Link(content, 0, ()))
            self.lost.add((device, sequence))

    def _found_again(self, entry: Entry, own: list[Link]) -> str | None:
        one = entry.envelope
        there = own[one.sequence - 1].hash
        if is_hash(there) and there != entry.hash:
            return f"{entry.name} is not the one that the receipts tell of"
        own[one.sequence - 1] = Link(entry.hash, one.order, one.seen)
        self.lost.discard((one.device, one.sequence))
        return None

    def _adopt(self, entry: Entry) -> None:
        """Take an entry as it is, with places for all that it rests on."""
        one = entry.envelope
        for seen in one.seen:
            self._pad(seen.device, seen.sequence)
        self._pad(one.device, one.sequence - 1)
        own = self.chains.links.setdefault(one.device, [])
        if one.sequence == len(own) + 1:
            own.append(Link(entry.hash, one.order, one.seen))

    def _pad(self, device: str, length: int) -> None:
        own = self.chains.links.setdefault(device, [])
        missing = length - len(own)
        if not 0 < missing <= self.spare:
            return
        self.spare -= missing
        for sequence in range(len(own) + 1, length + 1):
            own.append(Link("", 0, ()))
            self.lost.add((device, sequence))
