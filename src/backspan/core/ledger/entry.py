"""One dated, signed statement, kept as the bytes that were sent.

An entry is one line of canonical JSON. Its hash is the SHA-256 of that line, as any tool works it
out. It names the hash of the entry before it on the same device, so that a device's entries are a
chain, and the last entry it has seen of every other device. `order` is one more than the highest
order of all those: entries sorted by it never stand before what they rest on, whatever any clock
says.
"""

from __future__ import annotations

import hashlib
from collections.abc import Mapping
from dataclasses import dataclass

from backspan.core.ledger.errors import EntryError
from backspan.core.ledger.kinds import Body, read_body
from backspan.core.ledger.moments import is_moment
from backspan.core.wire import WireError, canonical, from_data, read_canonical, to_data

#: The format number of the envelope.
FORMAT = 1
#: Larger than any entry of ours; a photograph is evidence and stands beside the entry.
MOST_BYTES = 4_000_000
_HASH_LENGTH = 64


@dataclass(frozen=True, slots=True)
class Seen:
    """The last entry of another device that was known when an entry was written."""

    device: str
    sequence: int


@dataclass(frozen=True, slots=True)
class Signer:
    """Who states it, in which role. No cryptographic signature: papers say so."""

    person: str
    name: str
    role: str
    employer: str | None = None
    card: str | None = None


@dataclass(frozen=True, slots=True)
class Envelope:
    """All of an entry but what it says. `before` is None for the first entry of a device."""

    format: int
    site: str
    device: str
    sequence: int
    order: int
    before: str | None
    seen: tuple[Seen, ...]
    at: str
    signer: Signer
    kind: str
    version: int
    evidence: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Entry:
    """An entry as it was read: its bytes, their hash, its envelope, what it says.

    `received` is when it reached the ledger that holds it; None where it was never sent on.
    """

    raw: bytes
    hash: str
    envelope: Envelope
    body: Body
    received: str | None = None

    @property
    def knows(self) -> Mapping[str, int]:
        """The last entry of each device that this one rests on, its own device among them."""
        own = {self.envelope.device: self.envelope.sequence - 1}
        return {one.device: one.sequence for one in self.envelope.seen} | own

    def has_seen(self, other: Entry) -> bool:
        """Whether the other was known where this one was written."""
        there = self.knows.get(other.envelope.device, 0)
        return other.envelope.sequence <= there

    @property
    def name(self) -> str:
        """How people find it again: its device and number."""
        return f"{self.envelope.device} {self.envelope.sequence}"


def write_entry(envelope: Envelope, body: Body) -> bytes:
    """The bytes of an entry. Raises EntryError where they would not be read again."""
    try:
        raw = canonical({**to_data(envelope), "body": to_data(body)})
    except WireError as error:
        raise EntryError(f"{envelope.kind}: {error}") from error
    read_entry(raw)
    return raw


def read_entry(raw: bytes, *, received: str | None = None) -> Entry:
    """The entry that these bytes are.

    Raises EntryError, saying what was found, for anything but one canonical line of a kind and a
    version that this program knows.
    """
    if len(raw) > MOST_BYTES:
        raise EntryError(f"an entry of {len(raw):,} bytes; expected at most {MOST_BYTES:,}")
    try:
        data = read_canonical(raw)
        if not isinstance(data, dict) or not isinstance(data.get("body"), dict):
            raise EntryError("no entry: expected an object with a body")
        said = data.pop("body")
        envelope = from_data(Envelope, data)
        _possible(envelope)
        body = read_body(envelope.kind, envelope.version, said)
    except WireError as error:
        raise EntryError(f"entry: {error}") from error
    return Entry(raw, hash_of(raw), envelope, body, received)


def hash_of(raw: bytes) -> str:
    """The hash by which an entry, or a file of evidence, is named: SHA-256 in hex digits."""
    return hashlib.sha256(raw).hexdigest()


def is_hash(text: str) -> bool:
    """Whether it has the form of a hash."""
    return len(text) == _HASH_LENGTH and all(one in "0123456789abcdef" for one in text)


def _possible(one: Envelope) -> None:
    problems = []
    if one.format != FORMAT:
        problems.append(f"format {one.format}, expected {FORMAT}: a newer program may read it")
    if not one.site or not one.device:
        problems.append("no site or no device, expected a name of each")
    if one.sequence < 1 or one.order < 1:
        problems.append("a sequence or order below 1")
    if (one.before is None) != (one.sequence == 1):
        problems.append("the hash of the one before belongs to every entry but a device's first")
    hashes = (*((one.before,) if one.before else ()), *one.evidence)
    problems += [f"{text[:12]!r}, expected a hash" for text in hashes if not is_hash(text)]
    devices = [seen.device for seen in one.seen]
    if devices != sorted(set(devices)) or one.device in devices:
        problems.append("what was seen of other devices, expected each once and in order")
    if any(seen.sequence < 1 for seen in one.seen):
        problems.append("an entry seen below 1")
    if not is_moment(one.at):
        problems.append(f"{one.at!r}, expected a day with a time and its offset")
    if not (one.signer.person and one.signer.name and one.signer.role):
        problems.append("nobody who states it, expected person, name and role")
    if problems:
        raise EntryError(f"entry of {one.device} {one.sequence}: found {'; '.join(problems)}")
