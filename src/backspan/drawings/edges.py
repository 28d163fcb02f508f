"""An edge of a roof as a line in plan: stations along it, distances in from the face."""

from __future__ import annotations

import math
from dataclasses import dataclass

from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop
from backspan.core.model.site import Edge, Roof
from backspan.drawings.geometry import direction, inside, left_of, moved
from backspan.drawings.scene import DrawingError, Point


@dataclass(frozen=True, slots=True)
class EdgeLine:
    """Where an edge runs; the building lies to the right of its direction."""

    edge: Edge
    along: Point

    @property
    def outward(self) -> Point:
        """The direction from the roof over the edge."""
        return left_of(self.along)

    @property
    def length(self) -> float:
        """Length of the edge in metres."""
        return math.dist(self.edge.start, self.edge.end)

    def at(self, *, station: float, inward: float = 0.0) -> Point:
        """The point at a station, `inward` metres in from the outer face."""
        on_face = moved(self.edge.start, along=self.along, by=station)
        return moved(on_face, along=self.outward, by=-inward)


def edge_line(edge: Edge) -> EdgeLine:
    """The line of an edge, from its left end to its right end seen from the roof."""
    return EdgeLine(edge, direction(edge.start, edge.end))


def roof_named(project: Project, roof_id: str) -> Roof:
    """The roof of that id; DrawingError names the roofs there are."""
    for roof in project.site.roofs:
        if roof.id == roof_id:
            return roof
    names = ", ".join(roof.id for roof in project.site.roofs) or "none"
    raise DrawingError(f"the site has no roof {roof_id!r}; its roofs: {names}")


def drop_named(project: Project, drop_id: str) -> Drop:
    """The drop of that id; DrawingError names the drops there are."""
    for drop in project.drops:
        if drop.id == drop_id:
            return drop
    names = ", ".join(drop.id for drop in project.drops) or "none"
    raise DrawingError(f"the project has no drop {drop_id!r}; its drops: {names}")


def edge_of(project: Project, drop: Drop) -> Edge:
    """The edge of a drop; DrawingError names the edges its roof has."""
    roof = roof_named(project, drop.roof)
    for edge in roof.edges:
        if edge.id == drop.edge:
            return edge
    names = ", ".join(edge.id for edge in roof.edges) or "none"
    raise DrawingError(f"roof {roof.id!r} has no edge {drop.edge!r}; its edges: {names}")


def backward_edges(roof: Roof) -> tuple[str, ...]:
    """Edges whose outward side lies on the roof by its outline: start and end look exchanged."""
    found = []
    for edge in roof.edges:
        line = edge_line(edge)
        if line.length == 0.0:
            continue
        probe = min(0.05, line.length / 4)
        middle = line.length / 2
        out = inside(roof.outline, line.at(station=middle, inward=-probe))
        within = inside(roof.outline, line.at(station=middle, inward=probe))
        if out and not within:
            found.append(edge.id)
    return tuple(found)
