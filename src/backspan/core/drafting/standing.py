"""Acts on what stands on a roof: obstacles and anchors."""

from __future__ import annotations

from dataclasses import dataclass, replace

from backspan.core.drafting.acting import (
    Hand,
    at_text,
    closed,
    new_id,
    on_the_roof,
    one_of,
    roof_of,
    with_roof,
)
from backspan.core.model.in_place import in_place
from backspan.core.model.project import Project
from backspan.core.model.site import Anchor, Obstacle, Point
from backspan.core.quantities import Style


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
        closed(self.corners)
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
        return f"obstacle {self.obstacle} moved by {at_text(self.by, style)}"


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
        return f"anchor {self.anchor} placed at {at_text(self.at, style)}"


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
        return f"anchor {self.anchor} moved to {at_text(self.to, style)}"
