"""The history of a thing: its entries as lines, newest first, with the acceptances they ended."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Any

from backspan.core.ledger import bodies
from backspan.core.ledger.entry import Entry
from backspan.core.ledger.entry_lines import entry_line
from backspan.core.ledger.kinds import Body
from backspan.web.falling import ended_with
from backspan.web.hanging import rig_places
from backspan.web.workbench import DayState

#: So many entries stand on a page.
MOST = 60


def history_of(state: DayState, entries: list[Entry]) -> Iterator[dict[str, Any]]:
    """The last of some entries, newest first."""
    for entry in reversed(entries[-MOST:]):
        yield {**entry_told(entry), "ended": ended_with(state, entry)}


def entry_told(entry: Entry) -> dict[str, Any]:
    """One entry as a page tells it: when, by whom, what, its name and hash, its evidence."""
    return {
        "at": entry.envelope.at[:16].replace("T", " "),
        "by": f"{entry.envelope.signer.name}, {entry.envelope.signer.role}",
        "text": entry_line(entry),
        "entry": entry.name,
        "hash": entry.hash,
        "evidence": entry.envelope.evidence,
    }


def entries_about(state: DayState, about: Callable[[Body], bool]) -> list[Entry]:
    """The entries whose body is about something, in the order in which they came."""
    return [one for one in state.entries if about(one.body)]


def is_about_unit(state: DayState, tag: str) -> Callable[[Body], bool]:
    """Whether a body says something of the thing with that tag."""
    concerns = _concerns_about(state, tag)

    def about(body: Body) -> bool:
        match body:
            case bodies.UnitRegistered(unit=unit) | bodies.UnitLookedAt(unit=unit):
                return unit.id == tag
            case bodies.UnitExchanged():
                return tag in {body.taken_out, body.put_in}
            case bodies.NumberFound() | bodies.CountFound() | bodies.WordFound():
                return body.path[:3] == ("kit", "units", tag)
            case bodies.RigSetUp():
                return any(one.name == tag for one in rig_places(body.rig, body.drop))
            case bodies.ConcernNoted() | bodies.ConcernClosed():
                return body.id in concerns
            case _:
                return False

    return about


def is_about_anchor(state: DayState, roof: str, name: str) -> Callable[[Body], bool]:
    """Whether a body says something of an anchor."""
    concerns = _concerns_about(state, name)

    def about(body: Body) -> bool:
        match body:
            case bodies.AnchorRegistered():
                return (body.roof, body.anchor.id) == (roof, name)
            case bodies.AnchorInspected() | bodies.AnchorWithdrawn():
                return (body.roof, body.anchor) == (roof, name)
            case bodies.ConcernNoted() | bodies.ConcernClosed():
                return body.id in concerns
            case _:
                return False

    return about


def _concerns_about(state: DayState, about: str) -> set[str]:
    every = state.folded.matters.concerns.items()
    return {name for name, several in every if any(one.says.about == about for one in several)}
