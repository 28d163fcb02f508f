"""Acts on the building: roofs, corners, edges, parapets, obstacles, anchors."""

from __future__ import annotations

from dataclasses import dataclass, replace
from itertools import pairwise

from backspan.core.drafting.acting import (
    MILLIMETRE,
    DraftError,
    Hand,
    edge_of,
    in_place,
    new_id,
    on_the_roof,
    one_of,
    roof_of,
    touches,
    with_roof,
)
from backspan.core.model.crossing import crossings
from backspan.core.model.project import Project
from backspan.core.model.references import place_problems
from backspan.core.model.site import Anchor, Edge, Obstacle, Parapet, Point, Roof
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
        edges = tuple(
            replace(
                one,
                start=self.to if _same(one.start, before) else one.start,
                end=self.to if _same(one.end, before) else one.end,
            )
            for one in roof.edges
        )
        after = with_roof(project, _sound(replace(roof, outline=outline, edges=edges)))
        stood = place_problems(project)
        for one in place_problems(after):
            if one not in stood:
                where = " ".join(str(step) for step in one.path if not isinstance(step, int))
                raise DraftError(f"{where}: found {one.found}, expected {one.expected}")
        return after

    def told(self, style: Style) -> str:
        """What it does."""
        return f"corner {self.corner + 1} of roof {self.roof} moved to {_at(self.to, style)}"


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


@dataclass(frozen=True, slots=True)
class PlaceObstacle:
    """Something on the roof that rigging must pass, by the corners of its outline."""

    roof: str
    obstacle: str
    name: str
    corners: tuple[Point, ...]

    def on(self, project: Project, hand: Hand) -> Project:
        """The site with one more obstacle."""
        roof = roof_of(project, self.roof)
        new_id(roof.obstacles, self.obstacle, "obstacle")
        _closed(self.corners)
        for at in self.corners:
            on_the_roof(roof, at, self.name or "an obstacle", hand)
        new = Obstacle(self.obstacle, self.name.strip() or self.obstacle, self.corners)
        return with_roof(project, replace(roof, obstacles=(*roof.obstacles, new)))

    def told(self, _style: Style) -> str:
        """What it does."""
        return f"{self.name or 'obstacle'} ({self.obstacle}) placed"


@dataclass(frozen=True, slots=True)
class MoveObstacle:
    """An obstacle moved as a whole, so far across and up the plan."""

    roof: str
    obstacle: str
    by: Point

    def on(self, project: Project, hand: Hand) -> Project:
        """The site with it elsewhere."""
        roof = roof_of(project, self.roof)
        one = one_of(roof.obstacles, self.obstacle, "obstacle")
        outline = tuple((x + self.by[0], y + self.by[1]) for x, y in one.outline)
        for at in outline:
            on_the_roof(roof, at, one.name, hand)
        obstacles = in_place(roof.obstacles, replace(one, outline=outline))
        return with_roof(project, replace(roof, obstacles=obstacles))

    def told(self, style: Style) -> str:
        """What it does."""
        return f"obstacle {self.obstacle} moved by {_at(self.by, style)}"


@dataclass(frozen=True, slots=True)
class TakeObstacle:
    """An obstacle that is not there."""

    roof: str
    obstacle: str

    def on(self, project: Project, _hand: Hand) -> Project:
        """The site without it."""
        roof = roof_of(project, self.roof)
        one = one_of(roof.obstacles, self.obstacle, "obstacle")
        kept = tuple(other for other in roof.obstacles if other is not one)
        return with_roof(project, replace(roof, obstacles=kept))

    def told(self, _style: Style) -> str:
        """What it does."""
        return f"obstacle {self.obstacle} taken away"


@dataclass(frozen=True, slots=True)
class PlaceAnchor:
    """An anchor where it was drawn; what its papers say is entered on its own page."""

    roof: str
    anchor: str
    at: Point
    kind: str

    def on(self, project: Project, hand: Hand) -> Project:
        """The site with one more anchor."""
        roof = roof_of(project, self.roof)
        new_id((one for of in project.site.roofs for one in of.anchors), self.anchor, "anchor")
        at = on_the_roof(roof, self.at, f"anchor {self.anchor}", hand)
        new = Anchor(self.anchor, at, self.kind.strip() or "not stated", values_from=hand.says)
        return with_roof(project, replace(roof, anchors=(*roof.anchors, new)))

    def told(self, style: Style) -> str:
        """What it does."""
        return f"anchor {self.anchor} placed at {_at(self.at, style)}"


@dataclass(frozen=True, slots=True)
class MoveAnchor:
    """An anchor that stands elsewhere than was said."""

    roof: str
    anchor: str
    to: Point

    def on(self, project: Project, hand: Hand) -> Project:
        """The site with it there."""
        roof = roof_of(project, self.roof)
        one = one_of(roof.anchors, self.anchor, "anchor")
        at = on_the_roof(roof, self.to, f"anchor {one.id}", hand)
        return with_roof(
            project, replace(roof, anchors=in_place(roof.anchors, replace(one, at=at)))
        )

    def told(self, style: Style) -> str:
        """What it does."""
        return f"anchor {self.anchor} moved to {_at(self.to, style)}"


def _outline(corners: tuple[Point, ...]) -> tuple[tuple[Point, ...], tuple[Edge, ...]]:
    try:
        return outlined(corners)
    except WalkError as error:
        raise DraftError(str(error)) from error


def _closed(corners: tuple[Point, ...]) -> None:
    """Raise DraftError where corners make no outline."""
    if len(corners) < _FEWEST:
        raise DraftError(f"found {len(corners)} corners, expected {_FEWEST} at least")
    if next(crossings((*corners, corners[0])), None) is not None:
        raise DraftError("found an outline that crosses itself, expected one that does not")


def _sound(roof: Roof) -> Roof:
    """A roof whose outline is one, with all that stands on it. Raises DraftError otherwise."""
    _closed(roof.outline)
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


def _at(at: Point, style: Style) -> str:
    return ", ".join(display(one, LENGTH, style) for one in at)


_FEWEST = 3
