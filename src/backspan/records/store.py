"""The ledger of a site as others see it: entries in, receipts out, nothing ever changed.

Entries are kept as the bytes that came, in the order they were taken, each with its receipt. What
they must follow on is known by the chains, which are kept in memory and caught up inside each
writing transaction, so that programs which share a ledger never take two entries for one place.
"""

from __future__ import annotations

import threading
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from types import TracebackType
from typing import Any, Self

from backspan.core.ledger.chain import Chains, in_order
from backspan.core.ledger.entry import Entry, Signer, hash_of, read_entry
from backspan.core.ledger.errors import ChainError, ForkError, LedgerError
from backspan.core.ledger.kinds import Body
from backspan.core.ledger.receipts import NO_HEAD, Receipt, SignedHead, receipt_after
from backspan.records.errors import StoreDamagedError, StoreError
from backspan.records.moments import not_before, refuse_no_moment
from backspan.records.port import Database
from backspan.records.signing import SigningKey

#: Rows read at a time: no reader holds a database for longer than these take.
_PAGE = 500
_COLUMNS = "place, entry, received, head"


@dataclass(frozen=True, slots=True)
class SetAside:
    """Bytes that were refused because another entry stands in their place, kept to be looked at."""

    raw: bytes
    reason: str
    received: str


@dataclass(frozen=True, slots=True)
class Statement:
    """What somebody states, and the hashes of the evidence it rests on."""

    body: Body
    signer: Signer
    evidence: tuple[str, ...] = ()


class Ledger:
    """A ledger that is open; threads may share it. Made by `open_ledger` and its like.

    Every method raises StoreError where the database cannot do it.
    """

    def __init__(self, database: Database, *, site: str) -> None:
        self._database = database
        self._lock = threading.RLock()
        self._chains = Chains(site)
        self._last: Receipt | None = None
        self._catch_up()

    def __enter__(self) -> Self:
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        self.close()

    @property
    def site(self) -> str:
        """The site whose entries it holds."""
        return self._chains.site

    @property
    def chains(self) -> Chains:
        """A copy of the chains of all that is here by now."""
        with self._lock:
            self._catch_up()
            links = {name: list(there) for name, there in self._chains.links.items()}
            return Chains(self.site, links)

    def append(self, raws: Sequence[bytes], *, received: str) -> tuple[Receipt, ...]:
        """Keep entries, all of them or none; their receipts, in the order they were given.

        They may come in any order and any number of times: one that is here already gives the
        receipt it got then. `received` is when they came; where that is before the last receipt,
        the last one's time is taken, since clocks step back and receipts do not.

        Raises EntryError for bytes that are no entry, GapError or ChainError for entries that
        follow on nothing here, MomentError for a time that is none. ForkError for a second entry
        in a place that is taken: that one is set aside before it is raised.
        """
        refuse_no_moment(received)
        given = [read_entry(raw) for raw in raws]
        with self._lock:
            try:
                receipts = self._append((one, received) for one in in_order(given))
            except _Forked as fork:
                self._set_aside(fork.entry, fork.error, received)
                raise fork.error from None
        return tuple(receipts[one.hash] for one in given)

    def say(self, statements: Iterable[Statement], *, device: str, at: str) -> tuple[Entry, ...]:
        """Write the next entries of a device that lives beside this ledger, all of them or none.

        They have seen all that is here, and nobody comes between: programs that share a ledger may
        write as one device. `at` is their time and, but for clocks that step back, when they came.
        Raises EntryError for what could not be read again, MomentError for a time that is none.
        """
        refuse_no_moment(at)
        written: list[Entry] = []

        def following() -> Iterator[Entry]:
            for one in statements:
                raw = self._chains.following(
                    device, one.body, at=at, signer=one.signer, evidence=one.evidence
                )
                written.append(read_entry(raw, received=at))
                yield written[-1]

        with self._lock:
            receipts = self._append((one, at) for one in following())
        return tuple(replace(one, received=receipts[one.hash].received) for one in written)

    def refill(self, kept: Iterable[tuple[Receipt, bytes]], heads: Iterable[SignedHead]) -> None:
        """Fill a ledger that holds nothing with what another one held: all of it, or nothing.

        Places, times and heads are the ones that were given out then. Raises StoreError where
        something is here already, ChainError where entries and receipts do not belong together.
        """

        def followed() -> Iterator[tuple[Entry, str]]:
            if self._last is not None:
                raise StoreError(
                    self._database.where,
                    found=f"{self._last.place} entries",
                    expected="a ledger that holds nothing",
                )
            for receipt, raw in kept:
                yield read_entry(raw), receipt.received
                if self._last != receipt:
                    raise ChainError(f"place {receipt.place}: its receipt is not of this entry")

        with self._lock:
            self._append(followed(), heads)

    def entries(self, after: int = 0) -> Iterator[tuple[Receipt, bytes]]:
        """Entries behind a place, each with its receipt, in the order of places."""
        while True:
            page = self._page(after)
            if not page:
                return
            yield from page
            after = page[-1][0].place

    def last(self) -> Receipt | None:
        """The receipt of the last entry; None where there is none."""
        with self._lock:
            rows = self._database.run(
                f"SELECT {_COLUMNS} FROM entries ORDER BY place DESC LIMIT 1"  # noqa: S608 - own words
            )
        return Receipt(*rows[0]) if rows else None

    def set_aside(self) -> tuple[SetAside, ...]:
        """What was refused as a fork, in the order it came; each once however often it came."""
        with self._lock:
            rows = self._database.run("SELECT raw, reason, received FROM set_aside ORDER BY number")
        return tuple(SetAside(bytes(raw), reason, received) for raw, reason, received in rows)

    def sign_head(self, key: SigningKey, *, at: str) -> SignedHead:
        """Sign the head as it is now, and keep what was signed.

        Raises MomentError for a time that is none.
        """
        refuse_no_moment(at)
        with self._lock, self._database.writing():
            last = self.last()
            place, head = (0, NO_HEAD) if last is None else (last.place, last.head)
            signed = key.sign(site=self.site, place=place, head=head, at=at)
            self._keep_head(signed)
        return signed

    def signed_heads(self) -> tuple[SignedHead, ...]:
        """The heads that were signed here, in the order of signing."""
        with self._lock:
            rows = self._database.run(
                "SELECT site, place, head, at, key, signature FROM heads ORDER BY number"
            )
        return tuple(SignedHead(*row) for row in rows)

    def close(self) -> None:
        """Let go of the database. May be called twice."""
        with self._lock:
            self._database.close()

    def _append(
        self, entries: Iterable[tuple[Entry, str]], heads: Iterable[SignedHead] = ()
    ) -> dict[str, Receipt]:
        """The receipts by hash; where anything fails, the chains are as they were."""
        before: tuple[dict[str, int], Receipt | None] | None = None
        receipts: dict[str, Receipt] = {}
        try:
            with self._database.writing():
                self._catch_up()
                before = {name: len(own) for name, own in self._chains.links.items()}, self._last
                for entry, received in entries:
                    receipts[entry.hash] = self._take(entry, received)
                for one in heads:
                    self._keep_head(one)
        except BaseException:
            if before is not None:
                lengths, self._last = before
                links = self._chains.links
                self._chains.links = {name: links[name][:many] for name, many in lengths.items()}
            raise
        return receipts

    def _take(self, entry: Entry, received: str) -> Receipt:
        try:
            new = self._chains.take(entry)
        except ForkError as error:
            raise _Forked(entry, error) from error
        if not new:
            return self._receipt_of(entry)
        time = received if self._last is None else not_before(received, self._last.received)
        receipt = receipt_after(self._last, entry=entry.hash, received=time)
        self._database.run(
            "INSERT INTO entries (place, entry, received, head, raw)"
            " VALUES (:place, :entry, :received, :head, :raw)",
            place=receipt.place,
            entry=receipt.entry,
            received=receipt.received,
            head=receipt.head,
            raw=entry.raw,
        )
        self._last = receipt
        return receipt

    def _receipt_of(self, entry: Entry) -> Receipt:
        rows = self._database.run(
            f"SELECT {_COLUMNS} FROM entries WHERE entry = :entry",  # noqa: S608 - own words
            entry=entry.hash,
        )
        if not rows:
            raise self._damaged(f"no receipt of {entry.name}", "one of each entry")
        return Receipt(*rows[0])

    def _keep_head(self, signed: SignedHead) -> None:
        self._database.run(
            "INSERT INTO heads (number, site, place, head, at, key, signature)"
            " VALUES (:number, :site, :place, :head, :at, :key, :signature)",
            number=self._next("heads"),
            site=signed.site,
            place=signed.place,
            head=signed.head,
            at=signed.at,
            key=signed.key,
            signature=signed.signature,
        )

    def _set_aside(self, entry: Entry, error: ForkError, received: str) -> None:
        # A name may hold signs that a database's text cannot.
        reason = str(error).replace("\0", "\N{REPLACEMENT CHARACTER}")
        with self._database.writing():
            there = "SELECT 1 FROM set_aside WHERE entry = :entry"
            if self._database.run(there, entry=entry.hash):
                return
            self._database.run(
                "INSERT INTO set_aside (number, entry, received, reason, raw)"
                " VALUES (:number, :entry, :received, :reason, :raw)",
                number=self._next("set_aside"),
                entry=entry.hash,
                received=received,
                reason=reason,
                raw=entry.raw,
            )

    def _next(self, table: str) -> int:
        rows = self._database.run(f"SELECT COALESCE(MAX(number), 0) + 1 FROM {table}")  # noqa: S608 - own names
        return int(rows[0][0])

    def _page(self, after: int) -> list[tuple[Receipt, bytes]]:
        with self._lock:
            rows: list[tuple[Any, ...]] = self._database.run(
                f"SELECT {_COLUMNS}, raw FROM entries WHERE place > :after"  # noqa: S608 - own words
                f" ORDER BY place LIMIT {_PAGE}",
                after=after,
            )
        return [(Receipt(*receipt), bytes(raw)) for *receipt, raw in rows]

    def _catch_up(self) -> None:
        """Take up what others appended, proving that each follows on the one before."""
        for receipt, raw in self.entries(0 if self._last is None else self._last.place):
            if receipt != receipt_after(self._last, entry=hash_of(raw), received=receipt.received):
                raise self._damaged(
                    f"at place {receipt.place} what does not follow on the places before it",
                    "the bytes and the head that were written",
                )
            try:
                self._chains.take(read_entry(raw))
            except LedgerError as error:
                raise self._damaged(
                    f"at place {receipt.place}: {error}", "an entry this program can take"
                ) from error
            self._last = receipt

    def _damaged(self, found: str, expected: str) -> StoreDamagedError:
        return StoreDamagedError(self._database.where, found=found, expected=expected)


class _Forked(Exception):  # noqa: N818 - never leaves this file
    """Which entry of several was the fork."""

    def __init__(self, entry: Entry, error: ForkError) -> None:
        super().__init__(str(error))
        self.entry = entry
        self.error = error
