"""The table of a drop's states, a test a cell: what follows, or why nothing does."""

from __future__ import annotations

import pytest

from backspan.core.ledger.bodies import UsePermitted
from backspan.core.ledger.chain import Chains
from backspan.core.ledger.drop_states import FORWARD, TABLE, Event, Refusal, State
from backspan.core.ledger.standing import DropRecord, Permit
from tests.unit.core.ledger.writing import SITE, written

#: As people say it: planned, rigged, connected, accepted, in service, stopped, moving. A word in
#: brackets is why nothing follows, and the drop stays where it is.
WRITTEN = """
RIG_SET_UP   : rigged    rigged     rigged       rigged     rigged     rigged      rigged
CONNECTED    : (nothing) connected  connected    accepted   in-service stopped     (way)
DISCONNECTED : planned   rigged     rigged       stopped    stopped    stopped     moving
PERMITTED    : (nothing) (lines)    accepted     accepted   accepted   accepted    (way)
FIT          : (nothing) (permit)   (permit)     in-service in-service (permit)    (way)
UNFIT        : planned   stopped    stopped      stopped    stopped    stopped     moving
CHANGED      : planned   rigged     connected    stopped    stopped    stopped     moving
STOPPED      : planned   stopped    stopped      stopped    stopped    stopped     moving
HOLD_BEGUN   : planned   rigged     connected    accepted   accepted   stopped     moving
HOLD_ENDED   : planned   rigged     connected    accepted   accepted   stopped     moving
MOVED_OFF    : (nothing) planned    planned      planned    planned    planned     planned
MOVED_HERE   : moving    moving     moving       moving     moving     moving      moving
DAY_ENDS     : planned   rigged     connected    accepted   accepted   stopped     moving
"""
WORDS = {
    "(nothing)": Refusal.NOTHING_RIGGED,
    "(lines)": Refusal.NOT_CONNECTED,
    "(permit)": Refusal.NOT_ACCEPTED,
    "(way)": Refusal.ON_ITS_WAY,
}


def cells() -> list[tuple[State, Event, State | Refusal]]:
    """The table as it is written above."""
    found = []
    for row in WRITTEN.strip().splitlines():
        name, _, columns = row.partition(":")
        for state, word in zip(State, columns.split(), strict=True):
            following = WORDS.get(word) or State(word.replace("-", " "))
            found.append((state, Event[name.strip()], following))
    return found


@pytest.mark.parametrize(("state", "event", "following"), cells())
def test_each_cell(state: State, event: Event, following: State | Refusal) -> None:
    assert TABLE[(state, event)] is following
    record = DropRecord("D", state)
    entry = written(Chains(SITE), "pad")
    record.permit = Permit(entry, UsePermitted("D", "", "", "pass"))
    happened = record.happens(event, entry)
    assert happened is isinstance(following, State)
    assert record.state is (following if happened else state)
    assert [one.why for one in record.refused] == ([] if happened else [following])
    kept = not happened or following in {State.ACCEPTED, State.IN_SERVICE}
    assert (record.permit is not None) is kept
    assert bool(record.ended) is not kept
    assert bool(record.lowered) is (happened and event not in FORWARD)


def test_no_cell_is_missing() -> None:
    assert len(cells()) == len(TABLE) == len(State) * len(Event)


def test_nobody_comes_into_service_but_by_a_shift_check_of_an_accepted_drop() -> None:
    into = {
        (state, event)
        for (state, event), following in TABLE.items()
        if following is State.IN_SERVICE and state is not State.IN_SERVICE
    }
    assert into == {(State.ACCEPTED, Event.FIT)}
