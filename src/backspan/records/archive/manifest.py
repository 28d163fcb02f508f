"""The list of all the other members, with a seal over itself.

The seal is the hash of the list without it, so that a changed byte of the list is told from a
changed byte of what it lists. It is no signature: whoever writes the list anew can seal it anew.
"""

from __future__ import annotations

from dataclasses import dataclass

from backspan.core.ledger.entry import hash_of, is_hash
from backspan.core.wire import WireError, canonical, from_data, read_canonical, to_data
from backspan.records.archive.layout import FORMAT, MANIFEST, MOST_SIZE, rank

#: How every manifest begins, as its keys are sorted.
BEGINS = b'{"entries":'


@dataclass(frozen=True, slots=True)
class Row:
    """One member in the list."""

    name: str
    size: int
    sha256: str


@dataclass(frozen=True, slots=True)
class Manifest:
    """What an archive holds. `head` is the last of the receipts, `program` what wrote it."""

    format: int
    site: str
    program: str
    entries: int
    head: str
    members: tuple[Row, ...]


class NoManifestError(ValueError):
    """Bytes that are no sealed manifest; says why. It never leaves this room."""


def write_manifest(manifest: Manifest) -> bytes:
    """The manifest with its seal, as canonical JSON."""
    data = to_data(manifest)
    return canonical({**data, "seal": hash_of(canonical(data))})


def read_manifest(raw: bytes) -> Manifest:
    """The manifest that these bytes are. Raises NoManifestError for anything else."""
    try:
        data = read_canonical(raw)
        if not isinstance(data, dict):
            raise NoManifestError("not an object")
        seal = data.pop("seal", None)
        if seal != hash_of(canonical(data)):
            raise NoManifestError("it was changed: its seal is not the hash of the rest of it")
        found = from_data(Manifest, data)
    except WireError as error:
        raise NoManifestError(f"cannot be read: {error}") from error
    _possible(found)
    return found


def _possible(found: Manifest) -> None:
    if found.format != FORMAT:
        raise NoManifestError(f"found format {found.format}, expected {FORMAT}")
    ranks = [rank(row.name) for row in found.members]
    known = [one for one in ranks if one is not None]
    if len(known) != len(ranks) or known != sorted(set(known)) or rank(MANIFEST) in known:
        raise NoManifestError("its rows are not the members of an archive in their order")
    if any(not 0 <= row.size <= MOST_SIZE or not is_hash(row.sha256) for row in found.members):
        raise NoManifestError("a row without a possible size and hash")
    if found.entries < 0 or not is_hash(found.head):
        raise NoManifestError("no number of entries, or no head")
