"""Writes entries of made-up devices for the tests of the ledger."""

from __future__ import annotations

from backspan.core.ledger.bodies import UseStopped
from backspan.core.ledger.chain import Chains
from backspan.core.ledger.entry import Entry, Signer, read_entry
from backspan.core.ledger.kinds import Body

SITE = "invented site"
ENGINEER = Signer("ana", "Ana Example", "owner's engineer", "Example Engineers", "PE 1")
FOREMAN = Signer("bo", "Bo Example", "competent person")
AT = "2026-11-28T10:00:00+00:00"
STOP = UseStopped(("S1",), "the wind is up")


def written(
    chains: Chains, device: str, body: Body = STOP, *, at: str = AT, signer: Signer = ENGINEER
) -> Entry:
    """The next entry of a device, added to its chains."""
    entry = read_entry(chains.following(device, body, at=at, signer=signer))
    assert chains.take(entry)
    return entry


def copied(chains: Chains) -> Chains:
    """The same chains, to go on from apart."""
    return Chains(chains.site, {name: list(links) for name, links in chains.links.items()})
