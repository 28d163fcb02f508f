"""The things that stand on a roof before the rig comes, as a drawing hands them on."""

from __future__ import annotations

from backspan.core.model.site import Anchor, AnchorRating, Edge, Obstacle, Parapet, Roof
from backspan.core.quantities import Style
from backspan.drawings.things import Facts, Thing, ThingKind
from backspan.drawings.things_told import force, length, lies_at, listed, told


def roof_thing(roof: Roof, units: Style) -> Thing:
    """The outline of a roof level."""
    facts = (*told("name", roof.name), *length("level", roof.level.value, units))
    return Thing(ThingKind.ROOF, roof.id, ("site", "roofs", roof.id), facts)


def anchor_thing(roof: str, anchor: Anchor, units: Style) -> Thing:
    """An anchor with what its papers say."""
    facts = (
        *lies_at(anchor.at, units),
        *told("type", anchor.kind),
        *listed("uses", anchor.uses),
        *told("standing", anchor.standing),
        *force("rating", None if anchor.rating is None else anchor.rating.value, units),
        *(fact for one in anchor.ratings for fact in _rated(one, units)),
        *told("inspected", anchor.inspected),
        *told("certified", anchor.certified),
        *told("fixed_by", anchor.fixed_by),
    )
    path = ("site", "roofs", roof, "anchors", anchor.id)
    return Thing(ThingKind.ANCHOR, anchor.id, path, facts)


def edge_thing(roof: str, edge: Edge, units: Style) -> Thing:
    """A side of a roof with its wall."""
    facts = (*told("faces", edge.faces), *_wall("parapet_", edge.parapet, units))
    return Thing(ThingKind.EDGE, edge.id, ("site", "roofs", roof, "edges", edge.id), facts)


def parapet_thing(roof: str, edge: Edge, units: Style) -> Thing:
    """The wall at an edge, where it is drawn alone."""
    path = ("site", "roofs", roof, "edges", edge.id, "parapet")
    return Thing(ThingKind.PARAPET, edge.id, path, _wall("", edge.parapet, units))


def obstacle_thing(roof: str, obstacle: Obstacle, units: Style) -> Thing:
    """What rigging must pass."""
    height = None if obstacle.height is None else obstacle.height.value
    facts = (*told("name", obstacle.name), *length("height", height, units))
    path = ("site", "roofs", roof, "obstacles", obstacle.id)
    return Thing(ThingKind.OBSTACLE, obstacle.id, path, facts)


def _rated(one: AnchorRating, units: Style) -> Facts:
    name = f"rating_{one.use.replace(' ', '_')}"
    return force(name, None if one.load is None else one.load.value, units)


def _wall(before: str, wall: Parapet | None, units: Style) -> Facts:
    if wall is None:
        return ()
    return (
        *length(f"{before}height", wall.height.value, units),
        *length(f"{before}thickness", wall.thickness.value, units),
        *told(f"{before}material", wall.material),
    )
