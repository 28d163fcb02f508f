"""The rigs of a roof in plan: beams, stacks, tiebacks to their anchors, lifelines over the edge."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from backspan.core.findings import Finding, Review
from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop, Lifeline, SuspensionPoint
from backspan.core.model.site import Roof
from backspan.drawings.beams import BeamPicture, beam_picture, count_text
from backspan.drawings.canvas import Canvas
from backspan.drawings.edges import EdgeLine, edge_line
from backspan.drawings.geometry import angle_of, direction, moved
from backspan.drawings.scene import Circle, Hatch, Layer, Line, Point, Polygon, Symbol, SymbolName
from backspan.drawings.spots import Spot, around, beside
from backspan.drawings.symbols import WHITE
from backspan.drawings.values import findings_on
from backspan.drawings.wording import NOT_STATED

STACK_WIDTH = 4.0
FULCRUM = 3.2
POINT = 2.4
STUB = 9.0
NEAR_LINE = 6.0
STRAIGHT = 5
"""A tieback that turns off by less, in degrees, is drawn without a figure."""


@dataclass(frozen=True, slots=True)
class PlannedBeam:
    """A suspension point of a drop, where it lies in plan, and what was found about it."""

    drop: Drop
    point: SuspensionPoint
    line: EdgeLine
    picture: BeamPicture
    findings: tuple[Finding, ...]
    review: Review | None

    def at(self, inward: float) -> Point:
        """The point of the beam's line that is `inward` metres in from the face."""
        return self.line.at(station=self.point.station, inward=inward)


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
            beams.append(PlannedBeam(drop, point, edge_line(edge), picture, found, review))
    return tuple(beams)


def draw_rigs(
    canvas: Canvas, roof: Roof, drops: Sequence[Drop], beams: Sequence[PlannedBeam]
) -> None:
    """Beams, tiebacks and lifelines of all drops."""
    anchors = {anchor.id: anchor.at for anchor in roof.anchors}
    for beam in beams:
        _draw_tiebacks(canvas, beam, anchors)
    for beam in beams:
        _draw_beam(canvas, beam)
    edges = {edge.id: edge_line(edge) for edge in roof.edges}
    for drop in drops:
        line = edges.get(drop.edge)
        if drop.rig is not None and line is not None:
            for lifeline in drop.rig.lines:
                _draw_lifeline(canvas, line, lifeline, anchors)


def _draw_beam(canvas: Canvas, beam: PlannedBeam) -> None:
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
        canvas.add(tail)
        _draw_stack(canvas, beam, sure=placed and picture.stack_known)
        # Beside the beam, its tip on the line: along the beam it would read as an arrow.
        turn = angle_of(beam.line.along) + 90.0
        at = beam.at(picture.fulcrum.x)
        canvas.add(Symbol(Layer.FULCRUM, SymbolName.FULCRUM, at, FULCRUM, turn))
    hung = beam.at(picture.line.x)
    if placed and picture.line.known:
        canvas.add(Symbol(Layer.SUSPENSION, SymbolName.SUSPENSION_POINT, hung, POINT))
    else:
        canvas.add(Circle(Layer.NOT_KNOWN, hung, canvas.frame.real(POINT / 2), WHITE))
    canvas.later(
        _beam_words(beam), beam.at(picture.right), spots=_beside_beam(canvas, beam), bold=True
    )


def _beside_beam(canvas: Canvas, beam: PlannedBeam) -> Iterator[Spot]:
    """On either side of the beam, from its inner end outwards; then behind it."""
    picture, along = beam.picture, beam.line.along
    away = STACK_WIDTH / 2 + 1.0
    length = picture.right - picture.line.x
    for step in range(6):
        place = canvas.frame.to_paper(beam.at(picture.right - length * (0.08 + 0.14 * step)))
        for side in (1.0, -1.0):
            at = moved(place, along=along, by=side * away)
            across, up = round(side * along[0]), round(side * along[1])
            yield Spot(at, across, up, step * 1.0, points_at=place)
    out = beam.line.outward
    end = canvas.frame.to_paper(beam.at(picture.right))
    for spot in beside(end, side=(-out[0], -out[1])):
        yield Spot(spot.at, spot.across, spot.up, spot.cost + 3.0)


def _beam_words(beam: PlannedBeam) -> tuple[str, ...]:
    name = f"{beam.drop.id}/{beam.point.id}"
    if beam.point.counterweighted_beam is None:
        other = beam.point.other_support
        return (name, NOT_STATED if other is None else str(other.kind))
    counts = [group.count.value for group in beam.point.counterweighted_beam.stack.groups]
    if len(counts) > 1:
        return (name, " + ".join(str(count) for count in counts) + " pieces")
    return (name, count_text(counts[0]) if counts else "no pieces")


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
        canvas.add(Polygon(layer, box, WHITE))
        if sure:
            canvas.add(Hatch(Layer.COUNTERWEIGHT, box, 1.2))


def _draw_tiebacks(canvas: Canvas, beam: PlannedBeam, anchors: Mapping[str, Point]) -> None:
    """From the tail end of the beam, or from the fulcrum where the tail is not known."""
    picture = beam.picture
    sure = picture.tail.known and picture.fulcrum.known
    start = beam.at(picture.tail.x if sure else picture.fulcrum.x)
    for tieback in beam.point.tied:
        anchor = anchors.get(tieback.anchor)
        if anchor is None:
            continue
        canvas.add(Line(Layer.TIEBACK, start, anchor))
        middle = ((start[0] + anchor[0]) / 2, (start[1] + anchor[1]) / 2)
        angle = _angle(beam, start, anchor)
        spots = _along_line(canvas, start, anchor)
        if not sure:
            words = f"{tieback.id}: angle not known"
            canvas.later((words,), middle, spots=spots, near=True)
        elif angle >= STRAIGHT:
            canvas.later((f"{tieback.id} {angle}°",), middle, spots=spots, near=True)


def _along_line(canvas: Canvas, start: Point, end: Point) -> Iterator[Spot]:
    """On both sides of a line, near its middle first."""
    first, last = canvas.frame.to_paper(start), canvas.frame.to_paper(end)
    for share in (0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8):
        place = (
            first[0] + (last[0] - first[0]) * share,
            first[1] + (last[1] - first[1]) * share,
        )
        for spot in around(place):
            if spot.cost < NEAR_LINE:
                cost = spot.cost + abs(share - 0.5) * 8.0
                yield Spot(spot.at, spot.across, spot.up, cost, points_at=place)


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
        canvas.later((lifeline.id, f"station {NOT_STATED}"), end)
        return
    over = line.at(station=lifeline.station, inward=-canvas.frame.real(1.5))
    canvas.arrow(Layer.LIFELINE, anchor, over)
    middle = ((over[0] + anchor[0]) / 2, (over[1] + anchor[1]) / 2)
    canvas.later((lifeline.id,), middle)


def _sure(known: bool) -> Layer:  # noqa: FBT001 - one yes or no
    return Layer.BEAM if known else Layer.NOT_KNOWN
