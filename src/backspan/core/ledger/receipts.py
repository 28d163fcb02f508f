"""Where an entry stands in the ledger that holds it: its place, when it came, the head by then.

The ledger that receives entries keeps a chain of its own over all devices: each head is worked out
from the one before, the entry's hash and the time it came. Whoever kept a head, on paper or on a
phone, can show later that nothing before it was taken out, put in or changed.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from backspan.core.ledger.entry import hash_of, is_hash
from backspan.core.ledger.errors import ChainError, EntryError
from backspan.core.ledger.moments import is_moment
from backspan.core.wire import WireError, canonical, from_data, read_canonical, to_data

#: The head of a ledger that holds nothing.
NO_HEAD = "0" * 64


@dataclass(frozen=True, slots=True)
class Receipt:
    """The place of an entry, from 1; `received` is an ISO time with its offset."""

    place: int
    entry: str
    received: str
    head: str


@dataclass(frozen=True, slots=True)
class SignedHead:
    """A head that was signed: its key and signature are Ed25519, in hex digits."""

    site: str
    place: int
    head: str
    at: str
    key: str
    signature: str

    @property
    def signed_bytes(self) -> bytes:
        """What the signature is over."""
        return canonical(["backspan head", self.site, self.place, self.head, self.at])


def receipt_after(before: Receipt | None, *, entry: str, received: str) -> Receipt:
    """The receipt of the next entry of a ledger."""
    place = 1 if before is None else before.place + 1
    head = head_after(NO_HEAD if before is None else before.head, place, entry, received)
    return Receipt(place, entry, received, head)


def head_after(before: str, place: int, entry: str, received: str) -> str:
    """The head that follows, by the entry that came: SHA-256 of the four as canonical JSON."""
    return hash_of(canonical([before, place, entry, received]))


def write_receipt(receipt: Receipt) -> bytes:
    """A receipt as one line of canonical JSON."""
    return canonical(to_data(receipt))


def read_receipt(raw: bytes) -> Receipt:
    """The receipt that these bytes are. Raises EntryError for anything else."""
    try:
        found = from_data(Receipt, read_canonical(raw))
    except WireError as error:
        raise EntryError(f"receipt: {error}") from error
    if not (is_hash(found.entry) and is_hash(found.head)) or not is_moment(found.received):
        raise EntryError("receipt: expected two hashes and a time with its offset")
    return found


def following(receipts: Iterable[Receipt]) -> Iterator[Receipt]:
    """The same receipts, each proven to follow on the one before.

    Raises ChainError naming the place at which they do not.
    """
    before = None
    for number, one in enumerate(receipts, start=1):
        expected = receipt_after(before, entry=one.entry, received=one.received)
        if one.place != number:
            raise ChainError(f"place {number}: found the place {one.place}")
        if one != expected:
            raise ChainError(f"place {number}: its head does not follow on what stands before it")
        yield one
        before = one
