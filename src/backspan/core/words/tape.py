"""Lengths that were worked out, as a tape shows them: in sentences only.

A row says which way a value of a message is rounded, to the side of caution: what is asked for
never less, what is there never more. Steps are those of a tape, 1/16 in or 1 mm. Numbers of a
message that would then compare otherwise than they do stay as they are; worked lines and data keep
the exact ones.
"""

from __future__ import annotations

from collections.abc import Mapping
from itertools import combinations
from typing import Literal

from backspan.core.findings import MessageValue
from backspan.core.quantities import LENGTH, Amount, Style, display_round, parse

#: Which way each value of a message is rounded; a value that somebody stated has no row.
ROUNDED: Mapping[str, Literal["up", "down"]] = {
    "needed": "up",
    "lowest": "up",
    "taken": "up",
    "free": "up",
    "tip_down": "up",
    "bow_up": "up",
    "inboard": "down",
    "computed": "down",
}


#: Told beside each other and held against nothing.
ALONE = frozenset({"tip_down", "bow_up"})


def on_a_tape(values: Mapping[str, MessageValue], style: Style) -> dict[str, MessageValue]:
    """The values of a message, worked-out lengths in steps of a tape where that tells the same."""
    exact = {
        name: value
        for name, value in values.items()
        if isinstance(value, Amount) and value.dimension == LENGTH
    }
    told = {name: _stepped(name, value, style) for name, value in exact.items()}
    same = all(
        _order(exact[one], exact[other]) == _order(told[one], told[other])
        for one, other in combinations(exact, 2)
        if not {one, other} <= ALONE
    )
    return {**values, **told} if same else dict(values)


def _stepped(name: str, value: Amount, style: Style) -> Amount:
    way = ROUNDED.get(name)
    if way is None:
        return value
    return Amount(parse(display_round(value, style, direction=way), LENGTH), LENGTH)


def _order(one: Amount, other: Amount) -> int:
    return (one.value > other.value) - (one.value < other.value)
