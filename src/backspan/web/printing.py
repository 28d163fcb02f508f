"""Papers as PDF, set in a process of their own: what a typesetter keeps in memory ends with it."""

from __future__ import annotations

import datetime
from collections.abc import Callable, Mapping

from backspan.papers import PaperContent, PaperError, Typesetter
from backspan.papers.deficiency_notice import MOST_PHOTOGRAPH_BYTES
from backspan.records.errors import EvidenceError
from backspan.records.evidence import EvidenceFolder

Evidence = Mapping[str, bytes | None]


def printed(content: PaperContent, *, issued: datetime.date) -> bytes:
    """The PDF of a paper: the same content and day give the same bytes. Raises PaperError."""
    setter = Typesetter()
    try:
        setter.begin(content, issued=issued)
        return setter.take()
    finally:
        setter.close()


def printed_with(
    make: Callable[[Evidence], PaperContent], evidence: Evidence, *, issued: datetime.date
) -> bytes:
    """The PDF of a paper with photographs; one that cannot be shown is named by its hash alone.

    A photograph that was cut short on its way never keeps a notice from being printed.
    """
    try:
        return printed(make(evidence), issued=issued)
    except PaperError:
        sound = {
            name: one if _shows(make, name, one, issued) else None for name, one in evidence.items()
        }
        return printed(make(sound), issued=issued)


def evidence_bytes(folder: EvidenceFolder, names: tuple[str, ...]) -> dict[str, bytes | None]:
    """Files of evidence by hash; None for one too large to place, missing or damaged."""
    return {name: _bytes(folder, name) for name in names}


def _shows(
    make: Callable[[Evidence], PaperContent], name: str, one: bytes | None, issued: datetime.date
) -> bool:
    if one is None:
        return False
    try:
        printed(make({name: one}), issued=issued)
    except PaperError:
        return False
    return True


def _bytes(folder: EvidenceFolder, name: str) -> bytes | None:
    try:
        folder.check(name)
        with folder.open(name) as stream:
            found = stream.read(MOST_PHOTOGRAPH_BYTES + 1)
    except EvidenceError:
        return None
    return None if len(found) > MOST_PHOTOGRAPH_BYTES else found
