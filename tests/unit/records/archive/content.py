"""Made-up archives for the tests: 200 entries of four devices, three files, two signed heads."""

from __future__ import annotations

import hashlib
import io
from dataclasses import replace
from pathlib import Path
from typing import BinaryIO

from backspan.core.ledger.chain import Chains
from backspan.core.ledger.entry import read_entry
from backspan.core.ledger.receipts import Receipt, SignedHead, receipt_after, write_receipt
from backspan.core.wire import canonical, to_data
from backspan.records.archive import Content, layout
from backspan.records.archive.manifest import Manifest, Row, read_manifest, write_manifest
from tests.unit.core.ledger.writing import AT, ENGINEER, SITE, STOP

KEY, OTHER_KEY = "a1" * 32, "b2" * 32
DEVICES = ("pad", "phone", "office", "tablet")
FILES = tuple(f"photograph {n}".encode() * (1 + 300 * n) for n in range(3))
EVIDENCE = {hashlib.sha256(one).hexdigest(): one for one in FILES}
PROJECT = canonical({"folded": "a made-up project"})


def signature(one: SignedHead) -> str:
    """What stands in for a signature in these tests."""
    return hashlib.sha512(one.key.encode() + one.signed_bytes).hexdigest()


def holds(one: SignedHead) -> bool:
    """Whether it is the stand-in by that key."""
    return one.key in {KEY, OTHER_KEY} and one.signature == signature(one)


def signed(receipt: Receipt, key: str = KEY) -> SignedHead:
    """The head of a receipt, signed."""
    one = SignedHead(SITE, receipt.place, receipt.head, AT, key, "")
    return replace(one, signature=signature(one))


def opened(name: str) -> BinaryIO | None:
    """A file of evidence, if there is one of that hash."""
    content = EVIDENCE.get(name)
    return None if content is None else io.BytesIO(content)


def entries_of(count: int) -> list[bytes]:
    """So many entries; some name evidence."""
    chains, names, found = Chains(SITE), sorted(EVIDENCE), []
    for number in range(count):
        evidence = names[number // 20 : number // 20 + 1] if number % 20 == 7 else []
        device = DEVICES[number * 7 // 3 % len(DEVICES)]
        raw = chains.following(device, STOP, at=AT, signer=ENGINEER, evidence=evidence)
        chains.take(read_entry(raw))
        found.append(raw)
    return found


def receipts_of(entries: list[bytes]) -> list[Receipt]:
    """Their receipts."""
    found: list[Receipt] = []
    for raw in entries:
        entry = hashlib.sha256(raw).hexdigest()
        found.append(receipt_after(found[-1] if found else None, entry=entry, received=AT))
    return found


def content_of(count: int = 200) -> Content:
    """A whole content: heads are signed in the middle and at the end."""
    entries = entries_of(count)
    receipts = receipts_of(entries)
    heads = [signed(receipts[count // 2 - 1]), signed(receipts[-1])]
    return Content(SITE, entries, receipts, heads, opened, PROJECT)


def members_of(raw: bytes) -> dict[str, bytes]:
    """The contents of an archive by name, found by its headers."""
    found, at = {}, 0
    while (named := layout.read_header(raw[at : at + layout.BLOCK])) is not None:
        one = layout.Member(named[0], at, named[1])
        found[one.name] = raw[one.content : one.end]
        at = one.after
    return found


def tar_of(members: dict[str, bytes]) -> bytes:
    """A container in the one form around these contents, whatever they are."""
    pieces = [
        layout.header(name, len(content)) + content + bytes(layout.padding(len(content)))
        for name, content in members.items()
    ]
    return b"".join(pieces) + layout.END_BLOCKS


def listed_anew(members: dict[str, bytes], head: str | None = None) -> dict[str, bytes]:
    """The same members with a manifest that fits them, as a forger would write it."""
    old = read_manifest(members[layout.MANIFEST])
    rest = {name: content for name, content in members.items() if name != layout.MANIFEST}
    rows = tuple(
        Row(name, len(content), hashlib.sha256(content).hexdigest())
        for name, content in rest.items()
    )
    receipts = [line for line in rest[layout.RECEIPTS].splitlines() if line]
    head = head or receipts[-1].rsplit(b'"head":"', 1)[1][:64].decode()
    entries = rest[layout.ENTRIES].count(b"\n")
    new = Manifest(old.format, old.site, old.program, entries, head, rows)
    return rest | {layout.MANIFEST: write_manifest(new)}


def in_lines(pieces: list[bytes]) -> bytes:
    """Pieces as lines."""
    return b"".join(one + b"\n" for one in pieces)


def receipt_lines(receipts: list[Receipt]) -> bytes:
    """Receipts as lines."""
    return in_lines([write_receipt(one) for one in receipts])


def head_bytes(heads: list[SignedHead]) -> bytes:
    """Signed heads as the archive holds them."""
    return canonical([to_data(one) for one in heads])


def kept(folder: Path, raw: bytes) -> Path:
    """A file of these bytes."""
    path = folder / "kept.tar"
    path.write_bytes(raw)
    return path
