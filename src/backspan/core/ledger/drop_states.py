"""The states of a drop and what changes them, as one table.

A drop goes from planned over rigged, connected and accepted into service, one step at a time; it
falls back at once. What is not a step forward from where it stands is refused with its reason, and
the drop stays as it was. Whether a step forward holds (its lines, its configuration, what stands
against it) is asked before the table is (core/ledger/fold.py).
"""

from __future__ import annotations

from collections.abc import Mapping
from enum import StrEnum
from types import MappingProxyType


class State(StrEnum):
    """Where a drop stands."""

    PLANNED = "planned"
    RIGGED = "rigged"
    CONNECTED = "connected"
    ACCEPTED = "accepted"
    IN_SERVICE = "in service"
    STOPPED = "stopped"
    MOVING = "moving"


class Event(StrEnum):
    """What happens to a drop."""

    RIG_SET_UP = "a rig is set up and looked at"
    CONNECTED = "all lines are connected"
    DISCONNECTED = "a line counts as connected no longer"
    PERMITTED = "use is permitted"
    FIT = "the shift check finds it fit"
    UNFIT = "the shift check finds it unfit"
    CHANGED = "the configuration changes, or something it leans on"
    STOPPED = "use is stopped"
    HOLD_BEGUN = "a hold begins"
    HOLD_ENDED = "a hold ends"
    MOVED_OFF = "its rig is moved to another drop"
    MOVED_HERE = "a rig is on its way here"
    DAY_ENDS = "the day ends"


class Refusal(StrEnum):
    """Why a step is none from where the drop stands."""

    NOTHING_RIGGED = "nothing is rigged there"
    NOT_CONNECTED = "its lines are not connected, seen by two people"
    NOT_ACCEPTED = "it is not accepted"
    ON_ITS_WAY = "the rig was moved and has not been looked at again"


_P, _R, _C, _A, _S, _X, _M = State
_NOTHING, _NO_LINES, _NO_PERMIT, _WAY = Refusal

#: A row an event; its columns are the states in their order: planned, rigged, connected, accepted,
#: in service, stopped, moving.
_ROWS: Mapping[Event, tuple[State | Refusal, ...]] = MappingProxyType(
    {
        Event.RIG_SET_UP: (_R, _R, _R, _R, _R, _R, _R),
        Event.CONNECTED: (_NOTHING, _C, _C, _A, _S, _X, _WAY),
        Event.DISCONNECTED: (_P, _R, _R, _X, _X, _X, _M),
        Event.PERMITTED: (_NOTHING, _NO_LINES, _A, _A, _A, _A, _WAY),
        Event.FIT: (_NOTHING, _NO_PERMIT, _NO_PERMIT, _S, _S, _NO_PERMIT, _WAY),
        Event.UNFIT: (_P, _X, _X, _X, _X, _X, _M),
        Event.CHANGED: (_P, _R, _C, _X, _X, _X, _M),
        Event.STOPPED: (_P, _X, _X, _X, _X, _X, _M),
        Event.HOLD_BEGUN: (_P, _R, _C, _A, _A, _X, _M),
        Event.HOLD_ENDED: (_P, _R, _C, _A, _A, _X, _M),
        Event.MOVED_OFF: (_NOTHING, _P, _P, _P, _P, _P, _P),
        Event.MOVED_HERE: (_M, _M, _M, _M, _M, _M, _M),
        Event.DAY_ENDS: (_P, _R, _C, _A, _A, _X, _M),
    }
)

#: State and event to the state that follows, or to why nothing follows.
TABLE: Mapping[tuple[State, Event], State | Refusal] = MappingProxyType(
    {
        (state, event): cell
        for event, cells in _ROWS.items()
        for state, cell in zip(State, cells, strict=True)
    }
)

#: Steps towards people on the stage. Each has to have seen every step away from it.
FORWARD = frozenset({Event.CONNECTED, Event.PERMITTED, Event.FIT, Event.HOLD_ENDED})
