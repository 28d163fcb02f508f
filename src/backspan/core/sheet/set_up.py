"""What was seen of a stage since it was set up: what is older says nothing of it as it hangs.

When a rig was set up nobody states. It was not before what was taped and counted of its supports
and seen of its joints: what was tried before the last of that was tried of another set-up.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from backspan.core.model.evidence import StatedValue, is_earlier
from backspan.core.sheet.case import Case
from backspan.core.sheet.hung import Hung

Stated = StatedValue[Any] | None


def since_set_up(case: Case, one: Hung, stated: Stated) -> Stated:
    """A value of a stage as it hangs; None where the rig was taped or counted after it."""
    if stated is None or stated.at is None:
        return stated
    later = any(is_earlier(stated.at, at) for at in _days(case, one))
    return None if later else stated


def _days(case: Case, one: Hung) -> Iterator[str]:
    """The days, or the moments, of what was taped, counted and seen of its set-up."""
    for value in _of_set_up(case, one):
        if value is not None and value.at is not None:
            yield value.at


def _of_set_up(case: Case, one: Hung) -> Iterator[Stated]:
    yield one.hung.found.joints
    for point in case.points:
        if point.id not in one.hung.from_points:
            continue
        beam, other = point.counterweighted_beam, point.other_support
        yield None if other is None else other.reach
        if beam is not None:
            yield from (beam.reach, beam.backspan)
            yield from (group.count for group in beam.stack.groups)
