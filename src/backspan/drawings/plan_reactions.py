"""A roof level in plan with what every stand presses on it, as the table of reactions tells it."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from typing import Any

from backspan.core.findings import Review
from backspan.core.model.project import Project
from backspan.core.model.site import Roof
from backspan.core.words import ENGLISH, Language
from backspan.drawings.canvas import Canvas, Rank
from backspan.drawings.edges import edge_line, roof_named
from backspan.drawings.geometry import bounds, grown
from backspan.drawings.language_note import language_note
from backspan.drawings.legend import legend_rows
from backspan.drawings.paper import centred, fitting_scale, ratio_to_fit
from backspan.drawings.plan_building import draw_building, name_building
from backspan.drawings.plan_rig import PlannedBeam, planned_beams
from backspan.drawings.scalebar import north_arrow, scale_bar
from backspan.drawings.scene import Layer, Line, Point, Scene, Symbol, SymbolName
from backspan.drawings.sheet import SheetContent, basis_of, sheet, sheet_size
from backspan.drawings.spots import around, beside

FOOT = 14.0
BESIDE, BORDER = 8.0, 24.0
"""Paper left beside the roof, and above and below it, for words, in millimetres."""

LARGEST = 24.0
STAND = 2.6

Data = dict[str, Any]


def reactions_plan(
    project: Project,
    reviews: Mapping[str, Review],
    reactions: Sequence[Data],
    roof_id: str,
    *,
    language: Language = ENGLISH,
) -> Scene:
    """The beams of one roof, and at each stand its reaction in the words of `reactions`.

    `reactions` are those of the reviews' data. Raises DrawingError when there is no such roof.
    """
    roof = roof_named(project, roof_id)
    drops = tuple(one for one in project.drops if one.roof == roof.id and one.id in reviews)
    beams = planned_beams(project, roof, drops, reviews)
    size = sheet_size(project.units)
    left, bottom, right, top = size.drawing_area
    whole = (left, bottom + FOOT, right, top)
    canvas = _canvas(project, roof, beams, whole, language)
    _draw(canvas, project, roof, beams, {one["subject"]: one for one in reactions})
    scale = canvas.frame.scale
    # A number is never lost for want of room beside its stand: then it stands in the column.
    unplaced = tuple(", ".join(label.lines) + "." for label in canvas.placer.unplaced)
    made = tuple(reviews[drop.id] for drop in drops)
    content = SheetContent(
        name=language.drawn("reactions_name", roof=roof.name),
        number=language.drawn("reactions_sheet", roof=roof.id),
        scale=scale,
        pairs=(),
        legend=legend_rows(canvas.shapes),
        basis=basis_of(project, made),
        notes=(
            language.drawn("reactions_read"),
            *unplaced,
        ),
        language=language,
    )
    around_it, parts = sheet(project, content, size)
    bar = scale_bar(scale, project.units, (left + 6.0, bottom + 4.0), language=language)
    turn = math.degrees(project.site.north)
    north = north_arrow((left + 11.0, top - 14.0), clockwise=turn)
    note = language_note(language, right=right - 3.0, bottom=bottom + 1.0)
    return Scene(
        title=language.drawn("reactions_title", site=project.site.name, roof=roof.name),
        description=language.drawn("reactions_told", site=project.site.name, roof=roof.name),
        width=size.width,
        height=size.height,
        units=project.units,
        sheet=(*around_it, *bar, *north, *note),
        drawing=tuple(canvas.shapes),
        scale=scale,
        origin=canvas.frame.origin,
        dated=max((review.on for review in made), default=None),
        parts=parts,
    )


def _canvas(
    project: Project,
    roof: Roof,
    beams: Sequence[PlannedBeam],
    whole: tuple[float, float, float, float],
    language: Language,
) -> Canvas:
    """A canvas at the largest standard scale at which the roof fits with words around it."""
    content = bounds(_extent(roof, beams)) or (0.0, 0.0, 1.0, 1.0)
    left, bottom, right, top = whole
    area = (left + BESIDE, bottom + BORDER, right - BESIDE, top - BORDER)
    needed = ratio_to_fit(content, area)
    scale = fitting_scale(project.units, least_ratio=needed, most_detail=LARGEST)
    frame = centred(scale, content=content, area=area)
    return Canvas(frame, grown(whole, -2.0), language=language)


def _extent(roof: Roof, beams: Sequence[PlannedBeam]) -> Iterator[Point]:
    yield from roof.outline
    for beam in beams:
        yield from (beam.at(beam.picture.left), beam.at(beam.picture.right))


def _draw(
    canvas: Canvas,
    project: Project,
    roof: Roof,
    beams: Sequence[PlannedBeam],
    reactions: Mapping[str, Data],
) -> None:
    draw_building(canvas, roof, project.units)
    for beam in beams:
        if beam.point.counterweighted_beam is not None:
            picture = beam.picture
            known = picture.fulcrum.known and picture.tip.known and picture.tail.known
            layer = Layer.BEAM if known else Layer.NOT_KNOWN
            ends = (beam.at(picture.tip.x), beam.at(picture.tail.x))
            canvas.add(Line(layer, *ends, of=beam.things.beam))
    for beam in beams:
        name = f"{beam.drop.id}/{beam.point.id}"
        if name in reactions:
            _stands(canvas, beam, name, reactions[name])
    # Of an edge its name is enough here; the roof plan has the rest.
    name_building(canvas, replace(roof, edges=()), project.units)
    for edge in roof.edges:
        line = edge_line(edge)
        middle = line.at(station=line.length / 2)
        spots = tuple(beside(canvas.frame.to_paper(middle), side=line.outward, away=3.0))
        name = canvas.language.drawn("edge", edge=edge.id)
        canvas.later((name,), middle, spots=spots, rank=Rank.PLACE, led=False)
    canvas.write_labels()


def _stands(canvas: Canvas, beam: PlannedBeam, name: str, one: Data) -> None:
    """A mark for each stand that is stated, with what it presses."""
    rear = beam.picture.rear_at
    places = [("front", beam.picture.fulcrum.x), *([("rear", rear.x)] if rear else [])]
    for stand, inward in places:
        at = beam.at(inward)
        words = tuple(_words(canvas.language, stand, name, one[stand]))
        spots = tuple(around(canvas.frame.to_paper(at), away=1.5))
        with canvas.of(beam.things.fulcrum if stand == "front" else beam.things.rear):
            canvas.add(Symbol(Layer.FULCRUM, SymbolName.FULCRUM, at, STAND))
            canvas.later(words, at, spots=spots, rank=Rank.POINT)


def _words(language: Language, stand: str, name: str, pressed: Data) -> Iterator[str]:
    """The point and its stand, the most in service, and each load with the factor of its rule."""
    most = pressed["most"]
    text = language.drawn("not_stated") if most is None else str(most["text"])
    title = "reaction_front" if stand == "front" else "reaction_rear"
    yield language.drawn(title, point=name)
    yield language.drawn("reaction_most", load=text)
    for each in pressed["imposed"]:
        load, factor = each["load"], each["rule"]["content"]["factor"]["text"]
        if load is not None:
            yield language.drawn("reaction_factored", factor=str(factor), load=str(load["text"]))
