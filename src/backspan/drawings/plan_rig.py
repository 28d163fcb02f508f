"""The rigs of a roof in plan: beams, stacks, tiebacks to their anchors, lifelines over the edge."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import partial

from backspan.core.findings import Finding, Review
from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop, Lifeline, SuspensionPoint
from backspan.core.model.site import Roof
from backspan.core.quantities import Style
from backspan.core.words import Language
from backspan.drawings.beams import BeamPicture, beam_picture
from backspan.drawings.canvas import TEXT, Canvas
from backspan.drawings.edges import EdgeLine, edge_line
from backspan.drawings.geometry import angle_of, direction, moved
from backspan.drawings.plan_tiebacks import Tie, along_line, clear_ties, draw_ties
from backspan.drawings.planned import planned_picture
from backspan.drawings.rig_things import (
    PointThings,
    lifeline_thing,
    point_things,
    tieback_thing,
)
from backspan.drawings.scene import Circle, Hatch, Layer, Line, Point, Polygon, Symbol, SymbolName
from backspan.drawings.spots import Spot, beside
from backspan.drawings.symbols import WHITE
from backspan.drawings.tie_starts import tie_start
from backspan.drawings.values import findings_on
from backspan.drawings.wording import count_text

STACK_WIDTH = 4.0
STAND_WIDTH = 5.6
STAND_DEPTH = 1.4
FULCRUM = 3.2
POINT = 2.4
STUB = 9.0
PLANNED_WIDTH = 2.4
SEEN = 0.8
"""The least distance, in millimetres on paper, at which two beams are seen to lie apart."""


@dataclass(frozen=True, slots=True)
class PlannedBeam:
    """A suspension point of a drop, where it lies in plan, and what was found about it."""

    drop: Drop
    point: SuspensionPoint
    line: EdgeLine
    picture: BeamPicture
    findings: tuple[Finding, ...]
    review: Review | None
    things: PointThings
    planned: BeamPicture | None = None
    """What the plan says, where that is not what was found."""

    def at(self, inward: float) -> Point:
        """The point of the beam's line that is `inward` metres in from the face."""
        return _inward(self.line, self.point, inward)


def planned_beams(
    project: Project, roof: Roof, drops: Sequence[Drop], reviews: Mapping[str, Review]
) -> tuple[PlannedBeam, ...]:
    """All suspension points of the drops of a roof."""
    edges = {edge.id: edge for edge in roof.edges}
    beams = []
    for drop in drops:
        edge = edges.get(drop.edge)
        if drop.rig is None or edge is None:
            continue
        for point in drop.rig.suspension_points:
            review = reviews.get(drop.id)
            found = findings_on(review, point.id)
            picture = beam_picture(project, edge, point, found)
            planned = planned_picture(project, edge, point, found)
            line = edge_line(edge)
            things = point_things(project, drop.id, point, picture, found)
            things = things.lying(partial(_inward, line, point), project.units)
            beams.append(PlannedBeam(drop, point, line, picture, found, review, things, planned))
    return tuple(beams)


def _inward(line: EdgeLine, point: SuspensionPoint, inward: float) -> Point:
    return line.at(station=point.station, inward=inward)


def draw_rigs(
    canvas: Canvas,
    roof: Roof,
    drops: Sequence[Drop],
    beams: Sequence[PlannedBeam],
    units: Style,
) -> None:
    """Beams, tiebacks and lifelines of all drops."""
    anchors = {anchor.id: anchor.at for anchor in roof.anchors}
    ties = tuple(tie for beam in beams for tie in _ties(beam, anchors))
    clear_ties(canvas, ties)
    for beam in beams:
        _draw_planned(canvas, beam)
    same = _drops_alike(beams, canvas.language)
    for beam in beams:
        _draw_beam(canvas, beam, named_only=beam.drop.id in same)
    draw_ties(canvas, ties)
    edges = {edge.id: edge_line(edge) for edge in roof.edges}
    for drop in drops:
        line = edges.get(drop.edge)
        if drop.rig is not None and line is not None:
            for lifeline in drop.rig.lines:
                with canvas.of(lifeline_thing(drop.id, lifeline, units)):
                    _draw_lifeline(canvas, line, lifeline, anchors)


def _draw_planned(canvas: Canvas, beam: PlannedBeam) -> None:
    """A thin outline where the plan has the beam, unless this scale shows no difference."""
    found, planned = beam.picture, beam.planned
    if planned is None:
        return
    off = max(abs(planned.tip.x - found.tip.x), abs(planned.tail.x - found.tail.x))
    if canvas.frame.drawn(off) < SEEN:
        return
    half = canvas.frame.real(PLANNED_WIDTH / 2)
    station, tip, tail = beam.point.station, planned.tip.x, planned.tail.x
    corners = ((-half, tip), (half, tip), (half, tail), (-half, tail))
    outline = tuple(beam.line.at(station=station + side, inward=inward) for side, inward in corners)
    canvas.add(Polygon(Layer.PLANNED, outline))
    canvas.later((canvas.language.drawn("planned"),), beam.at(tail), near=True)


def _drops_alike(beams: Sequence[PlannedBeam], language: Language) -> frozenset[str]:
    """The drops whose points would all be labelled alike: there the table says it once."""
    said: dict[str, set[tuple[str, ...]]] = {}
    for beam in beams:
        said.setdefault(beam.drop.id, set()).add(_beam_words(beam, language)[1:])
    return frozenset(drop for drop, words in said.items() if len(words) == 1)


def _draw_beam(canvas: Canvas, beam: PlannedBeam, *, named_only: bool) -> None:
    with canvas.of(beam.things.beam):
        _draw_support(canvas, beam)
    words = _beam_words(beam, canvas.language)
    with canvas.of(beam.things.point):
        _draw_point(canvas, beam)
        canvas.later(
            words[:1] if named_only else words,
            _named_at(beam),
            spots=_beside_beam(canvas, beam),
            bold=True,
            others=() if named_only else (words[:1],),
        )


def _draw_point(canvas: Canvas, beam: PlannedBeam) -> None:
    """Where the line hangs; an open circle where that is not known."""
    picture = beam.picture
    hung = beam.at(picture.line.x)
    if picture.fulcrum.known and picture.line.known:
        canvas.add(Symbol(Layer.SUSPENSION, SymbolName.SUSPENSION_POINT, hung, POINT))
    else:
        canvas.add(Circle(Layer.NOT_KNOWN, hung, canvas.frame.real(POINT / 2), WHITE))


def _draw_support(canvas: Canvas, beam: PlannedBeam) -> None:
    """The beam with its stack and its fulcrum."""
    picture = beam.picture
    placed = picture.fulcrum.known
    canvas.add(
        Line(_sure(placed and picture.tip.known), beam.at(picture.tip.x), beam.at(picture.line.x)),
        Line(
            _sure(placed and picture.line.known),
            beam.at(picture.line.x),
            beam.at(picture.fulcrum.x),
        ),
    )
    if beam.point.counterweighted_beam is not None:
        tail = Line(
            _sure(placed and picture.tail.known),
            beam.at(picture.fulcrum.x),
            beam.at(picture.tail.x),
        )
        canvas.add(*_rear_stand(canvas, beam), tail)
        _draw_stack(canvas, beam, sure=placed and picture.stack_known)
        # Beside the beam, its tip on the line: along the beam it would read as an arrow.
        turn = angle_of(beam.line.along) + 90.0
        at = beam.at(picture.fulcrum.x)
        sign = SymbolName.FULCRUM
        canvas.add(Symbol(Layer.FULCRUM, sign, at, FULCRUM, turn, of=beam.things.fulcrum))


def _rear_stand(canvas: Canvas, beam: PlannedBeam) -> tuple[Polygon, ...]:
    """Its foot across the beam, wider than a stack over it; how wide is not to scale."""
    at = beam.picture.rear_at
    if at is None:
        return ()
    wide, deep = canvas.frame.real(STAND_WIDTH / 2), canvas.frame.real(STAND_DEPTH / 2)
    box = ((-wide, -deep), (wide, -deep), (wide, deep), (-wide, deep))
    layer = Layer.PLATE if at.known else Layer.NOT_KNOWN
    corners = tuple(
        beam.line.at(station=beam.point.station + aside, inward=at.x + behind)
        for aside, behind in box
    )
    return (Polygon(layer, corners, WHITE, of=beam.things.rear),)


def _named_at(beam: PlannedBeam) -> Point:
    """Where nothing but the beam lies: half-way from its fulcrum to its stack, or its tail."""
    picture = beam.picture
    behind = min((group.inner for group in picture.groups), default=picture.right)
    return beam.at((picture.fulcrum.x + behind) / 2)


def _beside_beam(canvas: Canvas, beam: PlannedBeam) -> Iterator[Spot]:
    """On either side of the beam, from its inner end outwards; just behind it; further away."""
    picture, along = beam.picture, beam.line.along
    stacks = [(group.inner, group.outer) for group in picture.groups]
    length = picture.right - picture.line.x
    tail = canvas.frame.to_paper(beam.at(picture.right))
    for behind in (1.0, 0.0, 2.0, 3.0, 4.0):
        place = canvas.frame.to_paper(beam.at(picture.right + canvas.frame.real(behind)))
        for side in (1.0, -1.0):
            at = moved(place, along=along, by=side * 1.4)
            across, up = round(side * along[0]), round(side * along[1])
            yield Spot(at, across, up, 0.2 + behind * 0.2, points_at=tail)
    for further in (0.0, 6.0, 11.0):
        for step in range(10):
            inward = picture.right - length * (0.05 + 0.1 * step)
            place = canvas.frame.to_paper(beam.at(inward))
            edge = canvas.frame.real(TEXT)
            wide = any(inner - edge < inward < outer + edge for inner, outer in stacks)
            away = (STACK_WIDTH / 2 if wide else 0.5) + 0.9 + further
            for side in (1.0, -1.0):
                at = moved(place, along=along, by=side * away)
                across, up = round(side * along[0]), round(side * along[1])
                yield Spot(at, across, up, step * 0.4 + further, points_at=place)
    out = beam.line.outward
    for spot in beside(tail, side=(-out[0], -out[1])):
        yield Spot(spot.at, spot.across, spot.up, spot.cost + 3.0)


def _beam_words(beam: PlannedBeam, language: Language) -> tuple[str, ...]:
    name = f"{beam.drop.id}/{beam.point.id}"
    if beam.point.counterweighted_beam is None:
        other = beam.point.other_support
        kind = language.drawn("not_stated") if other is None else language.word(other.kind)
        return (name, kind)
    counts = [group.count.value for group in beam.point.counterweighted_beam.stack.groups]
    if len(counts) > 1:
        several = " + ".join(str(count) for count in counts)
        return (name, language.drawn("pieces", count=several))
    return (name, count_text(counts[0], language) if counts else language.drawn("no_pieces"))


def _draw_stack(canvas: Canvas, beam: PlannedBeam, *, sure: bool) -> None:
    half = canvas.frame.real(STACK_WIDTH / 2)
    station = beam.point.station
    for group in beam.picture.groups:
        box = tuple(
            beam.line.at(station=station + side, inward=inward)
            for side, inward in (
                (-half, group.inner),
                (half, group.inner),
                (half, group.outer),
                (-half, group.outer),
            )
        )
        layer = Layer.COUNTERWEIGHT if sure else Layer.NOT_KNOWN
        with canvas.of(beam.things.stack):
            canvas.add(Polygon(layer, box, WHITE))
            if sure:
                canvas.add(Hatch(Layer.COUNTERWEIGHT, box, 1.2))


def _ties(beam: PlannedBeam, anchors: Mapping[str, Point]) -> Iterator[Tie]:
    """The tiebacks of a beam, each from where it is made fast, or the fulcrum if all is unknown."""
    picture = beam.picture
    for tieback in beam.point.tied:
        anchor = anchors.get(tieback.anchor or "")
        if anchor is None:
            continue
        place = tie_start(picture, tieback)
        sure = place.known and picture.fulcrum.known
        start = beam.at(place.x if sure or picture.tail.known else picture.fulcrum.x)
        angle = _angle(beam, start, anchor) if sure else None
        thing = tieback_thing(beam.drop.id, beam.point.id, tieback)
        yield Tie(tieback.id, start, anchor, angle, thing)


def _angle(beam: PlannedBeam, start: Point, anchor: Point) -> int:
    out = beam.line.outward
    straight = angle_of((-out[0], -out[1]))
    turn = (angle_of(direction(start, anchor)) - straight + 180.0) % 360.0 - 180.0
    return abs(round(turn))


def _draw_lifeline(
    canvas: Canvas, line: EdgeLine, lifeline: Lifeline, anchors: Mapping[str, Point]
) -> None:
    anchor = anchors.get(lifeline.anchor)
    if anchor is None:
        return
    if lifeline.station is None:
        out = line.outward
        by = canvas.frame.real(STUB)
        end = (anchor[0] + out[0] * by, anchor[1] + out[1] * by)
        canvas.add(Line(Layer.NOT_KNOWN, anchor, end))
        canvas.later((lifeline.id, canvas.language.drawn("station_not_stated")), end)
        return
    over = line.at(station=lifeline.station, inward=-canvas.frame.real(1.5))
    canvas.arrow(Layer.LIFELINE, anchor, over)
    middle = ((over[0] + anchor[0]) / 2, (over[1] + anchor[1]) / 2)
    canvas.later((lifeline.id,), middle, spots=along_line(canvas, anchor, over))


def _sure(known: bool) -> Layer:  # noqa: FBT001 - one yes or no
    return Layer.BEAM if known else Layer.NOT_KNOWN
