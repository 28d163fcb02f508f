"""Which thing of the site a shape shows: its kind, its place in the project, its values as text.

A writer hands this on: an SVG as attributes that a page can ask for, a DXF as attributes that a
CAD program can list. A value of a thing is what the drawing prints of it; a number also stands
there exactly, in the SI unit that the end of its name says: `reach` and `reach_m`.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from urllib.parse import quote, unquote

Facts = tuple[tuple[str, str], ...]
"""Names and values of what is known of a thing, in the order in which they are told."""

_SIGNS = frozenset("%/")
_ERRORS = "surrogatepass"


class ThingKind(StrEnum):
    """What a thing on a drawing is."""

    ANCHOR = "anchor"
    BEAM = "beam"
    CORNER = "corner"
    DROP = "drop"
    EDGE = "edge"
    FULCRUM = "fulcrum"
    LIFELINE = "lifeline"
    OBSTACLE = "obstacle"
    PARAPET = "parapet"
    REAR_STAND = "rear-stand"
    ROOF = "roof"
    SCHEDULE_ROW = "schedule-row"
    STACK = "stack"
    SUSPENSION_POINT = "suspension-point"
    TIEBACK = "tieback"


@dataclass(frozen=True, slots=True)
class Thing:
    """One thing of the site: `path` leads to it in the project, by names and ids.

    Its `id` is what a drawing calls it: `A08`, or `S1/L` for a point of a drop.
    """

    kind: ThingKind
    id: str
    path: tuple[str, ...]
    facts: Facts = ()

    @property
    def where(self) -> str:
        """Its path in one line; a slash within a name is `%2F`, as in an address on the web."""
        return path_text(self.path)


def path_text(path: tuple[str, ...]) -> str:
    """A path in one line, from which `path_in` makes the same path again."""
    return "/".join(map(_escaped, path))


def path_in(text: str) -> tuple[str, ...]:
    """The path that `path_text` wrote."""
    return tuple(unquote(part, errors=_ERRORS) for part in text.split("/")) if text else ()


def _escaped(part: str) -> str:
    if part.isprintable() and not _SIGNS & set(part):
        return part
    return "".join(
        sign if sign.isprintable() and sign not in _SIGNS else quote(sign, safe="", errors=_ERRORS)
        for sign in part
    )
