"""The operating envelope of a suspension point as a picture: reach held against backspan."""

from __future__ import annotations

from backspan.core.findings import Envelope
from backspan.core.quantities import RATIO, Style, display
from backspan.core.rules.selected import SelectedValue
from backspan.core.rules.shape import FactorOnLoad
from backspan.core.words import english
from backspan.drawings.axes import Axis, axis_for, axis_title, tick_text
from backspan.drawings.beams import count_text
from backspan.drawings.canvas import TEXT, Canvas
from backspan.drawings.flow import Flow
from backspan.drawings.geometry import corners
from backspan.drawings.paper import MILLIMETRES, Frame
from backspan.drawings.scene import (
    Align,
    Hatch,
    Layer,
    Line,
    Point,
    Polygon,
    Polyline,
    Scale,
    Scene,
    Symbol,
    SymbolName,
    Text,
)
from backspan.drawings.spots import Spot, around
from backspan.drawings.values import length_text, mass_text, own_length
from backspan.drawings.wording import (
    ENVELOPE_CAUTION,
    ENVELOPE_HEAD,
    HELD,
    NO_ENVELOPE,
    NOT_HELD,
)

WIDTH = 124.0
HEIGHT = 136.0
PLOT = (24.0, 66.0, 116.0, 122.0)
AS_BUILT = 4.5


def envelope_picture(envelope: Envelope, style: Style) -> Scene:
    """Which reach the pieces that are there hold at which backspan, and where the rig stands.

    The line is the review's own points; the picture works nothing out.
    """
    canvas = Canvas(
        Frame(Scale(MILLIMETRES, ""), (0.0, 0.0)), (2.0, PLOT[1] - 14.0, WIDTH - 2.0, HEIGHT - 2.0)
    )
    axes = _axes(envelope, style)
    if len(envelope.points) > 1:
        _region(canvas, envelope, axes)
    _frame(canvas, axes, style)
    x, y = _mark_as_built(canvas, envelope, axes)
    if len(envelope.points) > 1:
        _say_regions(canvas, envelope, axes)
    lines = (
        "As built",
        f"backspan {own_length(envelope.backspan_now.value, style)}",
        f"reach {own_length(envelope.reach_now.value, style)}",
    )
    canvas.label(lines, (x, y), spots=around((x, y), away=3.0), bold=True)
    caption = _caption(envelope, style)
    title = f"{ENVELOPE_HEAD} {envelope.subject}"
    return Scene(
        title=title,
        description=f"{title}, {count_text(envelope.pieces)}; as built: {_now(envelope, style)}.",
        width=WIDTH,
        height=HEIGHT,
        units=style,
        sheet=(*canvas.shapes, *caption.shapes),
    )


def _axes(envelope: Envelope, style: Style) -> tuple[Axis, Axis]:
    along = [point.backspan.value for point in envelope.points] + [envelope.backspan_now.value]
    up = [point.most_reach.value for point in envelope.points] + [envelope.reach_now.value]
    left, bottom, right, top = PLOT
    return (
        axis_for(max(along), style, low=left, high=right),
        axis_for(max(up), style, low=bottom, high=top),
    )


def _region(canvas: Canvas, envelope: Envelope, axes: tuple[Axis, Axis]) -> None:
    points = sorted(envelope.points, key=lambda point: point.backspan.value)
    line = tuple(
        (axes[0].at(point.backspan.value), axes[1].at(point.most_reach.value)) for point in points
    )
    floor = axes[1].at(0.0)
    under: tuple[Point, ...] = ((line[0][0], floor), *line, (line[-1][0], floor))
    canvas.shapes.append(Hatch(Layer.ENVELOPE, under, 3.0))
    canvas.add(Polyline(Layer.ENVELOPE, line))


def _frame(canvas: Canvas, axes: tuple[Axis, Axis], style: Style) -> None:
    left, bottom, right, top = PLOT
    canvas.add(Polygon(Layer.SHEET, corners(PLOT)))
    texts = []
    for tick in axes[0].ticks:
        x = axes[0].at(tick)
        canvas.shapes.append(Line(Layer.SHEET, (x, bottom), (x, bottom - 1.5)))
        words = tick_text(tick, style)
        texts.append(Text(Layer.LABEL, (x, bottom - 5.5), words, TEXT, Align.MIDDLE))
    for tick in axes[1].ticks:
        y = axes[1].at(tick)
        canvas.shapes.append(Line(Layer.SHEET, (left, y), (left - 1.5, y)))
        words = tick_text(tick, style)
        texts.append(Text(Layer.LABEL, (left - 3.0, y - TEXT / 2), words, TEXT, Align.END))
    middle = ((left + right) / 2, (bottom + top) / 2)
    texts += [
        Text(
            Layer.LABEL,
            (middle[0], bottom - 10.5),
            axis_title("Backspan", style),
            TEXT,
            Align.MIDDLE,
            bold=True,
        ),
        Text(
            Layer.LABEL,
            (6.0, middle[1]),
            axis_title("Reach", style),
            TEXT,
            Align.MIDDLE,
            90.0,
            bold=True,
        ),
    ]
    for text in texts:
        canvas.write([text])


def _mark_as_built(canvas: Canvas, envelope: Envelope, axes: tuple[Axis, Axis]) -> Point:
    x, y = axes[0].at(envelope.backspan_now.value), axes[1].at(envelope.reach_now.value)
    canvas.add(
        Line(Layer.NOT_KNOWN, (x, PLOT[1]), (x, y)),
        Line(Layer.NOT_KNOWN, (PLOT[0], y), (x, y)),
        Symbol(Layer.ENVELOPE, SymbolName.POINT_AS_BUILT, (x, y), AS_BUILT),
    )
    return (x, y)


def _say_regions(canvas: Canvas, envelope: Envelope, axes: tuple[Axis, Axis]) -> None:
    """What lies below the line and what lies above it, in words."""
    widest = max(envelope.points, key=lambda point: point.backspan.value)
    x, y = axes[0].at(widest.backspan.value), axes[1].at(widest.most_reach.value)
    left, bottom, _, top = PLOT
    below = (left + (x - left) * 0.72, bottom + (y - bottom) * 0.16)
    above = (left + (x - left) * 0.28, bottom + (top - bottom) * 0.86)
    for words, target in ((HELD, below), (NOT_HELD, above)):
        canvas.label((words,), target, spots=(Spot(target, 0, 0), *around(target)), leader=False)


def _caption(envelope: Envelope, style: Style) -> Flow:
    flow = Flow(left=5.0, right=WIDTH - 5.0, top=HEIGHT - 2.0)
    flow.paragraph(f"{ENVELOPE_HEAD} {envelope.subject}", height=3.0, bold=True, most=1)
    flow.y = PLOT[1] - 15.0
    rule = envelope.rule
    held = (
        f"{count_text(envelope.pieces)}, {mass_text(envelope.counterweight.value, style)} together"
    )
    flow.paragraph(f"As built: {_now(envelope, style)}.", most=2)
    flow.paragraph(f"Counterweight on the beam: {held}.", most=2)
    clause = f"{rule.rule_set}, edition {rule.edition}, {rule.provenance.clause}"
    flow.paragraph(f"Rule: {clause}{_factor(rule)}.", most=3)
    flow.paragraph(f"Source of the rule: {_mark(rule)}.", most=2)
    if not envelope.points:
        flow.paragraph(NO_ENVELOPE, bold=True)
    flow.paragraph(ENVELOPE_CAUTION, most=6)
    return flow


def _now(envelope: Envelope, style: Style) -> str:
    return (
        f"backspan {length_text(envelope.backspan_now.value, style)}, "
        f"reach {length_text(envelope.reach_now.value, style)}"
    )


def _factor(rule: SelectedValue) -> str:
    content = rule.content
    if not isinstance(content, FactorOnLoad):
        return ""
    return (
        f", {display(content.factor, RATIO, Style.METRIC)} times the moment of the {content.load}"
    )


def _mark(rule: SelectedValue) -> str:
    words = english.MARKS[str(rule.provenance.mark)]
    if rule.confirmed is not None:
        return f"{words}, confirmed by {rule.confirmed.by} on {rule.confirmed.at}"
    return words
