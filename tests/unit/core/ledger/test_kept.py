"""Entries that were kept by an earlier version of the program are read, and mean what they meant.

A file here is never written anew: what a change of the program would make of it is no proof. A
further kind or version of entries gets a file of its own.
"""

from __future__ import annotations

import hashlib
from pathlib import Path

from backspan.core.ledger.chain import Chains, take_all
from backspan.core.ledger.drop_states import State
from backspan.core.ledger.entry import Entry, read_entry
from backspan.core.ledger.fold import fold
from backspan.core.ledger.kinds import KINDS
from backspan.core.ledger.service import standing_on
from tests.unit.core.ledger.writing import SITE
from tests.unit.core.rigs import LIBRARY, ON

KEPT = Path(__file__).parent / "kept"
#: Each file with its SHA-256, of 29 November 2026.
FILES = {
    "every-kind-1.jsonl": "fbb604b23df5eb39a68fe5c9cdc1b510f9f136face699421d640033dc3823890",
    "work-planned-1.jsonl": "07ce14b7c98c1a9817038921e94e94353bdefc605a5371aef63fa2e20a377ed4",
    "underlay-laid-1.jsonl": "0f15b6af758da468dae4b31d6a9034a9d9427026eb0ea338862219f12c8fbb84",
    "in-service-1.jsonl": "66afaaefe46325e63580691cdc98ce688851df445362f27497fccc8c543b0614",
}


def kept(name: str) -> list[Entry]:
    """The entries of a file that nobody changed."""
    content = (KEPT / name).read_bytes()
    assert hashlib.sha256(content).hexdigest() == FILES[name]
    return [read_entry(line) for line in content.splitlines()]


def test_every_kind_and_version_of_the_registry_is_kept_and_read() -> None:
    read = {(one.envelope.kind, one.envelope.version) for name in FILES for one in kept(name)}
    assert read == set(KINDS)


def test_what_was_kept_still_follows() -> None:
    for name in FILES:
        entries = kept(name)
        assert list(take_all(Chains(SITE), entries)) == entries


def test_a_drop_that_was_in_service_is_so_by_what_was_kept() -> None:
    """Its permit names the codes of that day: this version works out the same ones."""
    site = fold(kept("in-service-1.jsonl"), on=ON)
    standing = standing_on(site, "D", LIBRARY, on=ON)
    assert (standing.state, standing.reasons) == (State.IN_SERVICE, ())
