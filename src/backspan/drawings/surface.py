"""The roof plan to work on: the same drawing as on paper, in parts that can be drawn anew alone.

What moves is drawn again and put in the place of what stood there, so each part - the building,
the strip of one drop, the widths along one edge, the rig of one drop, the anchors - is a group of
its own. Labels stand at the first place of their choice: nothing else may jump while a hand moves
one thing.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Container, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import partial

from backspan.core.findings import Review
from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop
from backspan.core.model.site import Edge, Roof
from backspan.core.quantities import Style
from backspan.core.words import ENGLISH, Language
from backspan.drawings.canvas import Canvas
from backspan.drawings.edges import roof_named
from backspan.drawings.geometry import Box, bounds
from backspan.drawings.loose import LooseCanvas
from backspan.drawings.paper import MILLIMETRES, Frame
from backspan.drawings.plan_building import draw_anchors, draw_building, name_building
from backspan.drawings.plan_drops import (
    Strip,
    draw_strip,
    draw_widths,
    strips_depth,
    strips_over,
)
from backspan.drawings.plan_rig import draw_rigs, planned_beams
from backspan.drawings.scalebar import north_arrow, scale_bar
from backspan.drawings.scene import Circle, Layer, Scale
from backspan.drawings.svg import svg_group
from backspan.drawings.symbols import WHITE
from backspan.drawings.things import Thing, ThingKind

#: A metre is so many millimetres of the drawing: its texts read well beside a beam.
_SCALE = Scale(100.0, "1:100")
#: What takes hold of a corner: its radius in millimetres of the drawing.
_CORNER = 1.6
#: Around the roof, in millimetres of the drawing: strips, their dimensions, reach of a beam.
_AROUND = 90.0
#: What is shown where nothing is drawn yet, in metres.
_NOTHING: Box = (0.0, 0.0, 40.0, 25.0)


@dataclass(frozen=True, slots=True)
class Surface:
    """Where a roof lies on the drawing, as long as it is worked on: what is drawn keeps its place.

    A point of the site lies at `origin` plus its metres times `per_metre`, y counted down from
    `height`; all in units of the drawing, which is `width` wide.
    """

    frame: Frame
    width: float
    height: float

    @property
    def per_metre(self) -> float:
        """Units of the drawing in a metre."""
        return self.frame.drawn(1.0)


@dataclass(frozen=True, slots=True)
class _Drawn:
    """A roof as it is drawn, and as it was drawn before, if it was."""

    was: Project | None
    before: Roof | None
    project: Project
    roof: Roof

    @property
    def drops(self) -> tuple[Drop, ...]:
        """The drops over its edges."""
        return tuple(one for one in self.project.drops if one.roof == self.roof.id)


def surface_of(project: Project, roof_id: str) -> Surface:
    """The surface on which a roof of the site as recorded is worked on.

    A roof that is not recorded yet is drawn on a surface of a usual size.
    """
    roof = next((one for one in project.site.roofs if one.id == roof_id), None)
    left, bottom, right, top = (roof and bounds(roof.outline)) or _NOTHING
    drawn = Frame(_SCALE, (0.0, 0.0))
    origin = (_AROUND - drawn.drawn(left), _AROUND - drawn.drawn(bottom))
    width, height = drawn.drawn(right - left), drawn.drawn(top - bottom)
    return Surface(Frame(_SCALE, origin), width + 2 * _AROUND, height + 2 * _AROUND)


def groups(
    surface: Surface,
    project: Project,
    reviews: Mapping[str, Review],
    roof_id: str,
    *,
    was: Project | None = None,
    asked: Container[str] = (),
    language: Language = ENGLISH,
) -> Iterator[tuple[str, str]]:
    """Every part of the plan by its name, as an SVG group; with `was` those that differ from it.

    `asked` names the drops whose reviews are others than were drawn.
    """
    roof = roof_named(project, roof_id)
    stood = () if was is None else was.site.roofs
    before = next((one for one in stood if one.id == roof_id), None)

    def group(name: str, draw: Callable[[Canvas], None]) -> tuple[str, str]:
        canvas = LooseCanvas(surface.frame, language=language)
        draw(canvas)
        canvas.write_labels()
        return name, svg_group(name, canvas.shapes, surface.frame, height=surface.height)

    if before is None or _built(was, before) != _built(project, roof):
        yield group("building", partial(_building, project, roof))
    drawn = _Drawn(was, before, project, roof)
    for name, draw in (*_strips_to_draw(drawn, reviews, asked), *_gone(drawn)):
        yield group(name, draw)
    for drop in _rigs_to_draw(drawn):
        yield group(f"rig-{drop.id}", partial(_rig, project, roof, drop, reviews))
    if before is None or before.anchors != roof.anchors:
        yield group("anchors", partial(draw_anchors, roof=roof, units=project.units))
    if before is None or before.outline != roof.outline:
        yield group("corners", partial(_corners, roof))
    if before is None:
        bar = scale_bar(surface.frame.scale, project.units, (_AROUND, 4.0), language=language)
        # Without the words of its scale: it is another on every screen.
        north = north_arrow((12.0, 12.0), clockwise=math.degrees(project.site.north))
        on_sheet = Frame(Scale(MILLIMETRES, ""), (0.0, 0.0))
        yield "foot", svg_group("foot", (*bar[:-1], *north), on_sheet, height=surface.height)


def _building(project: Project, roof: Roof, canvas: Canvas) -> None:
    drops = tuple(one for one in project.drops if one.roof == roof.id)
    draw_building(canvas, roof, project.units)
    name_building(canvas, roof, project.units, taken=strips_depth(roof, drops))


def _widths(units: Style, strips: Sequence[Strip], canvas: Canvas) -> None:
    draw_widths(canvas, strips, units)


def _strip(units: Style, strip: Strip, reviews: Mapping[str, Review], canvas: Canvas) -> None:
    draw_strip(canvas, strip, reviews.get(strip.drop.id), units)


def _nothing(_: Canvas) -> None:
    """In the place of what is no longer there."""


def _corners(roof: Roof, canvas: Canvas) -> None:
    """What takes hold of a corner of the outline."""
    for number, at in enumerate(roof.outline):
        path = ("site", "roofs", roof.id, "outline", str(number))
        thing = Thing(ThingKind.CORNER, str(number + 1), path)
        canvas.add(Circle(Layer.EXISTING, at, canvas.frame.real(_CORNER), WHITE, of=thing))


def _rig(
    project: Project, roof: Roof, drop: Drop, reviews: Mapping[str, Review], canvas: Canvas
) -> None:
    beams = planned_beams(project, roof, (drop,), reviews)
    draw_rigs(canvas, roof, (drop,), beams, project.units)


def _strips_to_draw(
    drawn: _Drawn, reviews: Mapping[str, Review], asked: Container[str]
) -> Iterator[tuple[str, Callable[[Canvas], None]]]:
    """The chain of widths along each edge, and the strips, that do not look as before."""
    site, roof = drawn.project, drawn.roof
    for edge in roof.edges:
        strips = strips_over(edge, drawn.drops, reviews)
        as_before = _strips(drawn.was, drawn.before, edge) == _strips(site, roof, edge)
        if not as_before:
            yield f"widths-{edge.id}", partial(_widths, site.units, strips)
        for strip in strips:
            if not as_before or strip.drop.id in asked:
                yield f"strip-{strip.drop.id}", partial(_strip, site.units, strip, reviews)


def _gone(drawn: _Drawn) -> Iterator[tuple[str, Callable[[Canvas], None]]]:
    """The parts of drops and edges that were on the roof and are no longer: nothing in each."""
    if drawn.was is None or drawn.before is None:
        return
    there, edges = {one.id for one in drawn.drops}, {one.id for one in drawn.roof.edges}
    for drop in drawn.was.drops:
        if drop.roof == drawn.roof.id and drop.id not in there:
            yield f"strip-{drop.id}", _nothing
            yield f"rig-{drop.id}", _nothing
    for edge in drawn.before.edges:
        if edge.id not in edges:
            yield f"widths-{edge.id}", _nothing


def _rigs_to_draw(drawn: _Drawn) -> Iterator[Drop]:
    """The drops of a roof whose rigs do not look as before."""
    before, stood = drawn.before, {one.id: one for one in drawn.was.drops} if drawn.was else {}
    moved = set() if before is None else _moved(before, drawn.roof)
    for drop in drawn.drops:
        same = before is not None and stood.get(drop.id) == drop
        ends_on = frozenset[str]() if drop.rig is None else drop.rig.anchors
        if not (same and moved.isdisjoint(ends_on)):
            yield drop


def _built(project: Project | None, roof: Roof) -> tuple[object, ...]:
    """What the building is drawn from; names of edges stand outside the strips of their drops."""
    strips = tuple(_strips(project, roof, edge) for edge in roof.edges)
    return roof.outline, roof.edges, roof.obstacles, strips


def _strips(project: Project | None, roof: Roof | None, edge: Edge) -> tuple[object, ...] | None:
    """What the strips over an edge are drawn from; None where it is not there."""
    if project is None or roof is None or all(one.id != edge.id for one in roof.edges):
        return None
    drops = (one for one in project.drops if (one.roof, one.edge) == (roof.id, edge.id))
    stood = next(one for one in roof.edges if one.id == edge.id)
    return (
        (stood.start, stood.end),
        *((one.id, one.start, one.width.value) for one in drops),
    )


def _moved(before: Roof, roof: Roof) -> set[str]:
    """The anchors that lie elsewhere, and all where an edge does: stations are along edges."""
    if before.edges != roof.edges:
        return {one.id for one in roof.anchors}
    stood = {one.id: one.at for one in before.anchors}
    return {one.id for one in roof.anchors if stood.get(one.id) != one.at}
