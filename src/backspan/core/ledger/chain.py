"""The chains of all devices of a site: what follows on what, and what is refused.

Each device numbers its entries from 1 and names the hash of the one before. What is here is always
a whole chain from its first entry, and never rests on anything that is not here: so a missing entry
shows by itself, and the order of entries never depends on the way they came.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field

from backspan.core.ledger.entry import FORMAT, Entry, Envelope, Seen, Signer, write_entry
from backspan.core.ledger.errors import ChainError, ForkError, GapError
from backspan.core.ledger.kinds import Body, kind_of


@dataclass(frozen=True, slots=True)
class Link:
    """What the next entry needs to know of one: its hash, its order, what it had seen."""

    hash: str
    order: int
    seen: tuple[Seen, ...]


@dataclass(slots=True)
class Chains:
    """The entries of a site that are here, as links by device."""

    site: str
    links: dict[str, list[Link]] = field(default_factory=dict)

    def known(self, entry: Entry) -> bool:
        """Whether this very entry is here. Raises ForkError where another stands in its place."""
        one = entry.envelope
        there = self.links.get(one.device, ())
        if one.sequence > len(there):
            return False
        if there[one.sequence - 1].hash != entry.hash:
            raise ForkError(
                f"{entry.name} is here already with other content (hash"
                f" {there[one.sequence - 1].hash[:12]}, found {entry.hash[:12]}): one of them was"
                " changed, or two devices use one name"
            )
        return True

    def take(self, entry: Entry) -> bool:
        """Add an entry that follows; False where it is here already.

        Raises GapError where something it rests on is not here yet, ForkError where another
        entry stands in its place or before it, ChainError for one that follows on nothing.
        """
        if entry.envelope.site != self.site:
            raise ChainError(
                f"{entry.name} belongs to the site {entry.envelope.site!r}, expected {self.site!r}"
            )
        if self.known(entry):
            return False
        one = entry.envelope
        link = Link(entry.hash, one.order, one.seen)
        self._follows(entry)
        self.links.setdefault(one.device, []).append(link)
        return True

    def _follows(self, entry: Entry) -> None:
        one, own = entry.envelope, self.links.get(entry.envelope.device, [])
        if one.sequence > len(own) + 1:
            raise GapError(
                f"{entry.name} came without {one.device} {len(own) + 1}: send that one first"
            )
        last = own[-1] if own else None
        if one.before != (None if last is None else last.hash):
            raise ForkError(f"{entry.name} follows on another {one.device} {len(own)} than is here")
        for seen in one.seen:
            there = len(self.links.get(seen.device, ()))
            if seen.sequence > there:
                raise GapError(
                    f"{entry.name} rests on {seen.device} {seen.sequence}, and {seen.device} is"
                    f" here to {there} only: send those first"
                )
        knew = {seen.device: seen.sequence for seen in (() if last is None else last.seen)}
        knows = {seen.device: seen.sequence for seen in one.seen}
        if any(knows.get(device, 0) < sequence for device, sequence in knew.items()):
            raise ChainError(f"{entry.name} has seen less than the entry before it")
        expected = self._order(last, one.seen)
        if one.order != expected:
            raise ChainError(f"{entry.name} has the order {one.order}, expected {expected}")

    def _order(self, last: Link | None, seen: Iterable[Seen]) -> int:
        before = [self.links[one.device][one.sequence - 1].order for one in seen]
        return 1 + max([0 if last is None else last.order, *before])

    def following(
        self, device: str, body: Body, *, at: str, signer: Signer, evidence: Iterable[str] = ()
    ) -> bytes:
        """The bytes of the next entry of a device, which has seen all that is here.

        Raises EntryError for what could not be read again, such as a time without its offset.
        """
        own = self.links.get(device, [])
        seen = tuple(
            Seen(name, len(links)) for name, links in sorted(self.links.items()) if name != device
        )
        last = own[-1] if own else None
        kind, version = kind_of(body)
        envelope = Envelope(
            FORMAT,
            self.site,
            device,
            len(own) + 1,
            self._order(last, seen),
            None if last is None else last.hash,
            seen,
            at,
            signer,
            kind,
            version,
            tuple(evidence),
        )
        return write_entry(envelope, body)


def in_order(entries: Iterable[Entry]) -> list[Entry]:
    """Entries so that none stands before what it rests on; the same however they came."""

    def place(one: Entry) -> tuple[int, str, int]:
        return one.envelope.order, one.envelope.device, one.envelope.sequence

    return sorted(entries, key=place)


def take_all(chains: Chains, entries: Iterable[Entry]) -> Iterator[Entry]:
    """Add entries that came in any order; yields those that are new. Raises as `take` does."""
    for entry in in_order(entries):
        if chains.take(entry):
            yield entry
