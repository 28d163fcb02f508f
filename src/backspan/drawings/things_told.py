"""How the values of a thing are told: as the drawing prints them, and a number also exactly."""

from __future__ import annotations

from collections.abc import Iterable
from functools import lru_cache

from backspan.core.quantities import Style
from backspan.drawings.things import Facts
from backspan.drawings.values import Known, force_text, known_length_text, length_text, own_length

PLACE, NOT_KNOWN = "place", "not known"
"""What a thing says whose place nobody stated: where it is drawn says nothing then."""

# Many things of a site are alike.
_length_text = lru_cache(512)(length_text)
_known_length_text = lru_cache(512)(known_length_text)
_force_text = lru_cache(512)(force_text)


def exact(value: float) -> str:
    """A number from which the same number is read again."""
    return repr(float(value))


def told(name: str, value: object | None) -> Facts:
    """A word or a count; nothing where there is none."""
    return () if value is None or value == "" else ((name, str(value)),)


def listed(name: str, values: Iterable[object]) -> Facts:
    """Words in their order; nothing where there is none."""
    return told(name, ", ".join(map(str, values)))


def length(name: str, value: float | None, units: Style) -> Facts:
    """A length as printed, and in metres."""
    if value is None:
        return ()
    return ((name, _length_text(value, units)), (f"{name}_m", exact(value)))


def known_length(name: str, value: Known | None, units: Style) -> Facts:
    """A length as printed, in metres, and what stands behind it."""
    if value is None:
        return ()
    how = "worked out" if value.worked_out else value.evidence
    words = _known_length_text(value, units)
    return ((name, words), (f"{name}_m", exact(value.value)), *told(f"{name}_evidence", how))


def force(name: str, value: float | None, units: Style) -> Facts:
    """A force as printed, and in newtons."""
    if value is None:
        return ()
    return ((name, _force_text(value, units)), (f"{name}_n", exact(value)))


def lies_at(point: tuple[float, float] | None, units: Style) -> Facts:
    """Where a thing lies in plan, x and y from the datum of the site; nothing if not known."""
    if point is None:
        return ()
    x, y = point
    return (
        ("x", own_length(x, units)),
        ("y", own_length(y, units)),
        ("x_m", exact(x)),
        ("y_m", exact(y)),
    )


def placed(*, known: bool) -> Facts:
    """That the place is not known, where it is not."""
    return () if known else ((PLACE, NOT_KNOWN),)
