"""The building in section: face, parapet, roof surface; thin and grey."""

from __future__ import annotations

from backspan.core.model.site import Parapet
from backspan.drawings.geometry import left_of, moved
from backspan.drawings.plan_building import halved, parapet_words
from backspan.drawings.scene import Hatch, Layer, Line, Point, Polygon, Polyline
from backspan.drawings.section_points import Section
from backspan.drawings.site_things import parapet_thing
from backspan.drawings.spots import Spot
from backspan.drawings.symbols import WHITE

SURFACE = 2.2


def draw_building(section: Section) -> None:
    """Face, parapet and roof surface, with the height and thickness of the parapet."""
    wall = section.view.first.edge.parapet
    thick = 0.0 if wall is None else wall.thickness.value
    cut = section.real(section.layout.cut)
    right = section.view.left + section.view.width + section.real(6.0)
    section.canvas.add(
        Line(Layer.EXISTING, section.at(inward=0.0, above=0.0), section.at(inward=0.0, above=-cut)),
        Line(
            Layer.EXISTING, section.at(inward=thick, above=0.0), section.at(inward=right, above=0.0)
        ),
        Hatch(Layer.EXISTING, _band(section, right), 1.6),
        break_mark(section, inward=0.0, above=-section.real(section.layout.cut - 3.0)),
    )
    if wall is None:
        target = section.at(inward=0.0, above=0.0)
        words = section.language.drawn("parapet_not_stated").capitalize()
        section.canvas.later((words,), target, spots=_inside(section, target))
        return
    thing = parapet_thing(section.drop.roof, section.view.first.edge, section.project.units)
    with section.canvas.of(thing):
        _parapet(section, wall)


def _parapet(section: Section, wall: Parapet) -> None:
    box = (
        section.at(inward=0.0, above=0.0),
        section.at(inward=wall.thickness.value, above=0.0),
        section.at(inward=wall.thickness.value, above=wall.height.value),
        section.at(inward=0.0, above=wall.height.value),
    )
    section.canvas.add(Polygon(Layer.PARAPET, box, WHITE), Hatch(Layer.PARAPET, box, 1.6))
    first, *others = parapet_words(wall, section.project.units, section.language)
    lines = section.beside_line((first.capitalize(), *others))
    target = section.at(inward=wall.thickness.value / 2, above=wall.height.value / 3)
    spots = (*_outside(section, target), *_behind(section, wall, target))
    # In the tightest place one unit does, a size a line.
    short = [part for line in lines for part in halved(line.partition(" [")[0])]
    section.canvas.later(lines, target, spots=spots, others=[short])


def break_mark(section: Section, *, inward: float, above: float) -> Polyline:
    """The zigzag where an upright line is cut."""
    return break_across(section, section.at(inward=inward, above=above), along=(0.0, -1.0))


def break_across(section: Section, at: Point, *, along: Point) -> Polyline:
    """The zigzag across a line that runs along a direction, where that is cut."""
    half, step = section.real(2.2), section.real(1.1)
    across = left_of(along)
    points = (
        (-half, 0.0),
        (-step / 2, 0.0),
        (-step / 4, step),
        (step / 4, -step),
        (step / 2, 0.0),
        (half, 0.0),
    )
    placed = (
        moved(moved(at, along=across, by=aside), along=along, by=-ahead) for aside, ahead in points
    )
    return Polyline(Layer.EXISTING, tuple(placed))


def _band(section: Section, right: float) -> tuple[Point, ...]:
    depth = section.real(SURFACE)
    return (
        section.at(inward=0.0, above=-depth),
        section.at(inward=right, above=-depth),
        section.at(inward=right, above=0.0),
        section.at(inward=0.0, above=0.0),
    )


def _outside(section: Section, target: Point) -> tuple[Spot, ...]:
    """Left of everything that hangs, at several heights; right of the wall in a narrow layout."""
    x, y = section.canvas.frame.to_paper(target)
    left = section.canvas.frame.to_paper(section.at(inward=section.view.left, above=0.0))[0] - 4.0
    heights: tuple[float, ...] = (0.0, -6.0, 6.0, -12.0, 12.0, -18.0, 18.0)
    if section.layout.narrow:
        heights = tuple(float(up) for up in range(-18, 20, 2))
    spots = [
        Spot((min(left, x - 4.0), y + up), -1, 0, abs(up) / 3, points_at=(x, y)) for up in heights
    ]
    if section.layout.narrow:
        spots += [
            Spot((x + aside, y + up), 1, 0, 6.0 + abs(up) / 3)
            for aside in (6.0, 9.0)
            for up in (1.0, 0.0, -2.0, 2.0, 4.0)
        ]
    return tuple(spots)


def _behind(section: Section, wall: Parapet, target: Point) -> tuple[Spot, ...]:
    """On the roof side of the parapet, between the roof and the beam; else below the roof."""
    x, y = section.canvas.frame.to_paper(target)
    face = x + section.canvas.frame.drawn(wall.thickness.value) / 2
    beside = tuple(
        Spot((face + 4.0 + step, y + up), 1, 0, 4.0 + step / 2 + abs(up) / 3)
        for step in (0.0, 5.0)
        for up in (0.0, 5.0, -3.0, 10.0)
    )
    below = tuple(
        Spot((face + 4.0 + step, y - down), 1, 0, 12.0 + step / 2 + down / 3)
        for step in (0.0, 5.0, 10.0)
        for down in range(16, 32, 3)
    )
    return (*beside, *below)


def _inside(section: Section, target: Point) -> tuple[Spot, ...]:
    x, y = section.canvas.frame.to_paper(target)
    return tuple(Spot((x + 4.0 + step, y + 3.0), 1, 1, step) for step in (0.0, 6.0, 12.0))
