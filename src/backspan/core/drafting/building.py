"""Acts on the building: roofs, corners, edges, parapets, obstacles, anchors."""

from __future__ import annotations

from dataclasses import dataclass, replace
from itertools import pairwise

from backspan.core.drafting.acting import (
    MILLIMETRE,
    DraftError,
    Hand,
    at_text,
    closed,
    edge_of,
    new_id,
    roof_of,
    touches,
    with_roof,
)
from backspan.core.model.in_place import in_place
from backspan.core.model.project import Project
from backspan.core.model.references import place_problems
from backspan.core.model.site import Edge, Parapet, Point, Roof
from backspan.core.model.walked import (
    WalkError,
    edge_length,
    is_within,
    on_plan,
    outlined,
)
from backspan.core.quantities import LENGTH, Length, Style, display


@dataclass(frozen=True, slots=True)
class DrawRoof:
    """A roof drawn corner by corner; the first corner need not be said again at the end."""

    roof: str
    name: str
    level: Length
    corners: tuple[Point, ...]

    def on(self, project: Project, hand: Hand) -> Project:
        """The site with one more roof."""
        name = new_id(project.site.roofs, self.roof, "roof")
        outline, edges = _outline(self.corners)
        roof = Roof(name, self.name.strip() or name, hand.stated(self.level), outline, edges)
        roofs = (*project.site.roofs, roof)
        return replace(project, site=replace(project.site, roofs=roofs))

    def told(self, _style: Style) -> str:
        """What it does."""
        return f"roof {self.roof} drawn, {len(self.corners)} corners"


@dataclass(frozen=True, slots=True)
class MoveCorner:
    """A corner of a roof's outline, by its number from 0, moved with the edges that end there."""

    roof: str
    corner: int
    to: Point

    def on(self, project: Project, _hand: Hand) -> Project:
        """The site with that corner elsewhere."""
        roof = roof_of(project, self.roof)
        if not 0 <= self.corner < len(roof.outline):
            raise DraftError(
                f"found corner {self.corner} of roof {roof.id}, expected 0 to"
                f" {len(roof.outline) - 1}"
            )
        before = roof.outline[self.corner]
        outline = tuple(
            self.to if number == self.corner else one for number, one in enumerate(roof.outline)
        )
        edges = tuple(_ends_at(one, before, self.to) for one in roof.edges)
        return _placed(
            project, with_roof(project, _sound(replace(roof, outline=outline, edges=edges)))
        )

    def told(self, style: Style) -> str:
        """What it does."""
        to = at_text(self.to, style)
        return f"corner {self.corner + 1} of {self.roof} moved to {to}, with what its edges place"


@dataclass(frozen=True, slots=True)
class MoveEdge:
    """An edge moved square to itself, outward or (below 0) inward, with the corners at its ends."""

    roof: str
    edge: str
    out: Length

    def on(self, project: Project, _hand: Hand) -> Project:
        """The site with that edge elsewhere."""
        roof = roof_of(project, self.roof)
        edge = edge_of(roof, self.edge)
        for end, along in ((edge.start, 0.0), (edge.end, edge_length(edge))):
            to = on_plan(edge, along=along, back=-self.out)
            numbers = [number for number, one in enumerate(roof.outline) if _same(one, end)]
            if not numbers:
                raise DraftError(f"found edge {edge.id} off the outline, expected a corner there")
            outline = tuple(to if _same(one, end) else one for one in roof.outline)
            edges = tuple(_ends_at(one, end, to) for one in roof.edges)
            roof = replace(roof, outline=outline, edges=edges)
        return _placed(project, with_roof(project, _sound(roof)))

    def told(self, style: Style) -> str:
        """What it does."""
        way = "out" if self.out > 0.0 else "in"
        return f"edge {self.edge} moved {way} by {display(abs(self.out), LENGTH, style)}"


@dataclass(frozen=True, slots=True)
class AddCorner:
    """One more corner in an edge, so far along it: its further part is an edge of its own."""

    roof: str
    edge: str
    along: Length
    new: str

    def on(self, project: Project, hand: Hand) -> Project:
        """The site with that edge in two."""
        roof = roof_of(project, self.roof)
        edge = edge_of(roof, self.edge)
        new_id(roof.edges, self.new, "edge")
        long = edge_length(edge)
        if not MILLIMETRE < self.along < long - MILLIMETRE:
            raise DraftError(
                f"found a corner at {hand.shown(self.along)} along edge {edge.id}, expected one"
                f" between its ends, 0 to {hand.shown(long)}"
            )
        over = [one.id for one in project.drops if (one.roof, one.edge) == (roof.id, edge.id)]
        if over:
            raise DraftError(
                f"found edge {edge.id} under {', '.join(over)}, expected an edge that no drop is"
                " placed along: its places are counted from its left end"
            )
        at = on_plan(edge, along=self.along, back=0.0)
        edges = (
            *(replace(one, end=at) if one is edge else one for one in roof.edges),
            replace(edge, id=self.new, start=at),
        )
        return with_roof(project, replace(roof, outline=_between(roof, edge, at), edges=edges))

    def told(self, style: Style) -> str:
        """What it does."""
        along = display(self.along, LENGTH, style)
        return f"edge {self.edge} in two at {along}: {self.edge} and {self.new}"


@dataclass(frozen=True, slots=True)
class RaiseParapet:
    """The parapet of an edge: how high above the roof, and how thick."""

    roof: str
    edge: str
    height: Length
    thickness: Length

    def on(self, project: Project, hand: Hand) -> Project:
        """The site with that parapet."""
        roof = roof_of(project, self.roof)
        edge = edge_of(roof, self.edge)
        for value, told in ((self.height, "height"), (self.thickness, "thickness")):
            if value < 0.0:
                raise DraftError(
                    f"found a parapet's {told} of {hand.shown(value)}, expected 0 or more"
                )
        was = edge.parapet
        wall = Parapet(
            hand.stated(self.height, None if was is None else was.height),
            hand.stated(self.thickness, None if was is None else was.thickness),
            None if was is None else was.material,
        )
        edges = in_place(roof.edges, replace(edge, parapet=wall))
        return with_roof(project, replace(roof, edges=edges))

    def told(self, style: Style) -> str:
        """What it does."""
        height, thick = (display(one, LENGTH, style) for one in (self.height, self.thickness))
        return f"parapet of edge {self.edge}: {height} high, {thick} thick"


def _ends_at(edge: Edge, before: Point, after: Point) -> Edge:
    """An edge whose ends at one place are at another."""
    return replace(
        edge,
        start=after if _same(edge.start, before) else edge.start,
        end=after if _same(edge.end, before) else edge.end,
    )


def _placed(before: Project, after: Project) -> Project:
    """The site with edges moved. Raises DraftError where something lies beyond its edge then."""
    stood = place_problems(before)
    for one in place_problems(after):
        if one not in stood:
            where = " ".join(str(step) for step in one.path if not isinstance(step, int))
            raise DraftError(f"{where}: found {one.found}, expected {one.expected}")
    return after


def _outline(corners: tuple[Point, ...]) -> tuple[tuple[Point, ...], tuple[Edge, ...]]:
    try:
        return outlined(corners)
    except WalkError as error:
        raise DraftError(str(error)) from error


def _sound(roof: Roof) -> Roof:
    """A roof whose outline is one, with all that stands on it. Raises DraftError otherwise."""
    closed(roof.outline)
    off = [one.id for one in roof.anchors if not _stands(roof, one.at)]
    off += [one.id for one in roof.obstacles if not all(_stands(roof, at) for at in one.outline)]
    if off:
        raise DraftError(f"found {', '.join(off)} outside the roof then, expected them on it")
    return roof


def _stands(roof: Roof, at: Point) -> bool:
    return is_within(roof.outline, at) or touches(roof.outline, at)


def _between(roof: Roof, edge: Edge, at: Point) -> tuple[Point, ...]:
    """The outline with one more corner between those where an edge begins and ends."""
    found: list[Point] = []
    for one, other in pairwise((*roof.outline, roof.outline[0])):
        found.append(one)
        ends = (one, other)
        if any(_same(edge.start, end) for end in ends) and any(
            _same(edge.end, end) for end in ends
        ):
            found.append(at)
    return tuple(found)


def _same(one: Point, other: Point) -> bool:
    return abs(one[0] - other[0]) <= MILLIMETRE and abs(one[1] - other[1]) <= MILLIMETRE
