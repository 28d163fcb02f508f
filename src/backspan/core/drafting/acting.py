"""What every act on the roof plan has, and how it finds and changes what it is about."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace
from typing import Protocol, TypeVar

from backspan.core.errors import BackspanError, quoted
from backspan.core.model.crossing import crossings
from backspan.core.model.evidence import Evidence, StatedValue, Statement
from backspan.core.model.identifiers import did_you_mean
from backspan.core.model.in_place import Named, in_place
from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop, Rig, SuspensionPoint
from backspan.core.model.site import Edge, Point, Roof
from backspan.core.model.walked import along_and_back, edge_length, is_within
from backspan.core.quantities import LENGTH, Length, Style, display


class DraftError(BackspanError, ValueError):
    """An act that cannot be done; says what was found and what was expected."""


T = TypeVar("T", bound=Named)


@dataclass(frozen=True, slots=True)
class Hand:
    """Whose hand draws: how what is drawn is known, who says so and when.

    Without `says` a value that is drawn anew keeps the evidence of the one it replaces, and is told
    where there was none. `carried` gives the rig of one drop as it comes along to another.
    """

    style: Style = Style.US
    says: Statement | None = None
    carried: Callable[[Project, str, str], Rig] | None = None

    def stated(
        self, value: Length, before: StatedValue[Length] | None = None
    ) -> StatedValue[Length]:
        """A length as this hand states it, in the place of one that stood there."""
        text = display(value, LENGTH, self.style)
        if self.says is None:
            if before is not None:
                return replace(before, value=value, text=text, tolerance=None, checked_by=None)
            return StatedValue(value, evidence=Evidence.TOLD, text=text)
        says = self.says
        return StatedValue(
            value,
            evidence=says.evidence,
            by=says.by,
            at=says.at,
            document=says.document,
            text=text,
            planned=None if before is None else before.planned,
        )

    def shown(self, length: Length) -> str:
        """A length in the units of the site."""
        return display(length, LENGTH, self.style)


class Act(Protocol):
    """One thing that was done on the plan."""

    def on(self, project: Project, hand: Hand, /) -> Project:
        """The site with it done. Raises DraftError where it cannot be."""

    def told(self, style: Style, /) -> str:
        """What it does, as the list of what is not signed says it."""


def one_of(there: Iterable[T], name: str, kind: str) -> T:
    """The thing of that id. Raises DraftError where there is none."""
    known = {one.id: one for one in there}
    if name not in known:
        meant = did_you_mean(name, tuple(known)) or f"there are: {', '.join(known) or 'none'}"
        raise DraftError(f"found no {kind} {quoted(name)}; {meant}")
    return known[name]


def new_id(there: Iterable[Named], name: str, kind: str) -> str:
    """A mark that nothing else has. Raises DraftError where it is blank or taken."""
    if not name.strip() or not name.isprintable():
        raise DraftError(f"found no mark for the {kind}, expected one such as {kind[0].upper()}1")
    if any(one.id == name for one in there):
        raise DraftError(f"found {kind} {quoted(name)} a second time, expected a mark of its own")
    return name


def roof_of(project: Project, name: str) -> Roof:
    """The roof of that id. Raises DraftError where there is none."""
    return one_of(project.site.roofs, name, "roof")


def edge_of(roof: Roof, name: str) -> Edge:
    """The edge of that id. Raises DraftError where there is none."""
    return one_of(roof.edges, name, f"edge on roof {roof.id}")


def drop_of(project: Project, name: str) -> Drop:
    """The drop of that id. Raises DraftError where there is none."""
    return one_of(project.drops, name, "drop")


def rig_of(project: Project, name: str) -> tuple[Drop, Rig]:
    """A drop with its rig. Raises DraftError where it has none."""
    drop = drop_of(project, name)
    if drop.rig is None:
        raise DraftError(f"found drop {name} without a rig, expected one with a rig")
    return drop, drop.rig


def point_of(rig: Rig, name: str) -> SuspensionPoint:
    """The suspension point of that id. Raises DraftError where there is none."""
    return one_of(rig.suspension_points, name, "suspension point")


def with_roof(project: Project, roof: Roof) -> Project:
    """The site with that roof in the place of the one of its id."""
    roofs = in_place(project.site.roofs, roof)
    return replace(project, site=replace(project.site, roofs=roofs))


def with_drop(project: Project, drop: Drop) -> Project:
    """The site with that drop in the place of the one of its id."""
    return replace(project, drops=in_place(project.drops, drop))


def with_point(project: Project, drop: Drop, rig: Rig, point: SuspensionPoint) -> Project:
    """The site with that suspension point in the place of the one of its id."""
    points = in_place(rig.suspension_points, point)
    return with_drop(project, replace(drop, rig=replace(rig, suspension_points=points)))


def on_the_roof(roof: Roof, at: Point, what: str, hand: Hand) -> Point:
    """A place that lies on a roof or on its edge. Raises DraftError for any other."""
    if not (is_within(roof.outline, at) or touches(roof.outline, at)):
        x, y = (hand.shown(one) for one in at)
        raise DraftError(f"found {what} at {x}, {y}, outside {roof.name}; expected it on the roof")
    return at


def touches(outline: tuple[Point, ...], at: Point) -> bool:
    """Whether a point lies on an outline, within a millimetre."""
    return any(
        0.0 <= along <= long and abs(back) <= MILLIMETRE
        for along, back, long in _beside(outline, at)
    )


def within_edge(edge: Edge, at: Length, what: str, hand: Hand) -> Length:
    """A place along an edge. Raises DraftError where it lies beyond an end of it."""
    long = edge_length(edge)
    if not -MILLIMETRE <= at <= long + MILLIMETRE:
        raise DraftError(
            f"found {what} at {hand.shown(at)} along edge {edge.id}, expected 0 to"
            f" {hand.shown(long)}"
        )
    return at


#: What a drawing's numbers may be off without a contradiction.
MILLIMETRE: Length = 0.001


def _beside(outline: tuple[Point, ...], at: Point) -> Iterable[tuple[Length, Length, Length]]:
    for start, end in zip(outline, (*outline[1:], *outline[:1]), strict=True):
        side = Edge("", start, end)
        long = edge_length(side)
        if long > 0.0:
            yield (*along_and_back(side, at), long)


def closed(corners: tuple[Point, ...]) -> None:
    """Raise DraftError where corners make no outline."""
    if len(corners) < _FEWEST:
        raise DraftError(f"found {len(corners)} corners, expected {_FEWEST} at least")
    if next(crossings((*corners, corners[0])), None) is not None:
        raise DraftError("found an outline that crosses itself, expected one that does not")


def at_text(at: Point, style: Style) -> str:
    """A place on the plan, across and up."""
    return ", ".join(display(one, LENGTH, style) for one in at)


_FEWEST = 3
