"""The operating envelope of a suspension point as a picture: reach held against backspan."""

from __future__ import annotations

from backspan.core.findings import Envelope
from backspan.core.quantities import RATIO, Style, display
from backspan.core.rules.selected import SelectedValue
from backspan.core.rules.shape import FactorOnLoad
from backspan.core.words import ENGLISH, Language
from backspan.drawings.axes import Axis, axis_for, axis_title, tick_text
from backspan.drawings.canvas import TEXT, Canvas
from backspan.drawings.flow import Flow
from backspan.drawings.geometry import corners, text_quad
from backspan.drawings.lettering import LEADING, wrapped
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
from backspan.drawings.wording import count_text

WIDTH = 124.0
HEIGHT = 136.0
PLOT = (24.0, 66.0, 116.0, 122.0)
AS_BUILT = 4.5


def envelope_picture(envelope: Envelope, style: Style, *, language: Language = ENGLISH) -> Scene:
    """Which reach the pieces that are there hold at which backspan, and where the rig stands.

    The line is the review's own points; the picture works nothing out.
    """
    canvas = Canvas(
        Frame(Scale(MILLIMETRES, ""), (0.0, 0.0)),
        (2.0, PLOT[1] - 14.0, WIDTH - 2.0, HEIGHT - 2.0),
        language=language,
    )
    caption = _caption(envelope, style, language)
    for shape in caption.shapes:
        if isinstance(shape, Text):
            canvas.placer.block(text_quad(shape))
    axes = _axes(envelope, style)
    if len(envelope.points) > 1:
        _region(canvas, envelope, axes)
    _frame(canvas, axes, style)
    x, y = _mark_as_built(canvas, envelope, axes)
    if len(envelope.points) > 1:
        _say_regions(canvas, envelope, axes)
    lines = (
        language.drawn("as_built"),
        language.drawn("backspan_of", length=own_length(envelope.backspan_now.value, style)),
        language.drawn("reach_of", length=own_length(envelope.reach_now.value, style)),
    )
    canvas.label(lines, (x, y), spots=around((x, y), away=3.0), bold=True)
    note = _note(language)
    title = language.drawn("envelope_head", point=envelope.subject)
    return Scene(
        title=title,
        description=language.drawn(
            "envelope_told",
            title=title,
            pieces=count_text(envelope.pieces, language),
            as_built=_now(envelope, style, language),
        ),
        width=WIDTH,
        height=HEIGHT + len(note) * TEXT * LEADING,
        units=style,
        sheet=(*canvas.shapes, *caption.shapes, *note),
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
            axis_title(canvas.language.drawn("backspan"), style),
            TEXT,
            Align.MIDDLE,
            bold=True,
        ),
        Text(
            Layer.LABEL,
            (6.0, middle[1]),
            axis_title(canvas.language.drawn("reach"), style),
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
    for text, target in (("held_here", below), ("not_held_here", above)):
        words = canvas.language.drawn(text)
        canvas.label((words,), target, spots=(Spot(target, 0, 0), *around(target)), leader=False)


def _caption(envelope: Envelope, style: Style, language: Language) -> Flow:
    flow = Flow(left=5.0, right=WIDTH - 5.0, top=HEIGHT - 2.0)
    head = language.drawn("envelope_head", point=envelope.subject)
    flow.paragraph(head, height=3.0, bold=True, most=1)
    flow.y = PLOT[1] - 15.0
    pieces, mass = count_text(envelope.pieces, language), envelope.counterweight.value
    held = language.drawn("together", pieces=pieces, mass=mass_text(mass, style))
    flow.paragraph(language.drawn("now", as_built=_now(envelope, style, language)), most=2)
    flow.paragraph(language.drawn("counterweight_on_beam", held=held), most=2)
    flow.paragraph(language.drawn("rule", rule=_rule(envelope.rule, language)), most=3)
    flow.paragraph(language.drawn("rule_source", mark=_mark(envelope.rule, language)), most=2)
    if not envelope.points:
        flow.paragraph(language.drawn("no_envelope"), bold=True)
    flow.paragraph(language.drawn("envelope_caution"), most=6)
    return flow


def _note(language: Language) -> tuple[Text, ...]:
    """What the language says of itself, a line each, above the picture."""
    lines = wrapped(language.note, room=WIDTH - 10.0, height=TEXT)
    top = HEIGHT + (len(lines) - 1) * TEXT * LEADING
    return tuple(
        Text(Layer.LABEL, (5.0, top - place * TEXT * LEADING), words, TEXT)
        for place, words in enumerate(lines)
    )


def _now(envelope: Envelope, style: Style, language: Language) -> str:
    backspan = length_text(envelope.backspan_now.value, style)
    reach = length_text(envelope.reach_now.value, style)
    return ", ".join(
        (
            language.drawn("backspan_of", length=backspan),
            language.drawn("reach_of", length=reach),
        )
    )


def _rule(rule: SelectedValue, language: Language) -> str:
    edition = language.drawn("edition", rule_set=rule.rule_set, edition=rule.edition)
    clause, content = f"{edition}, {rule.provenance.clause}", rule.content
    if not isinstance(content, FactorOnLoad):
        return clause
    factor = display(content.factor, RATIO, Style.METRIC)
    load = language.word(content.load)
    return language.drawn("rule_factor", rule=clause, factor=factor, load=load)


def _mark(rule: SelectedValue, language: Language) -> str:
    words = language.marks[str(rule.provenance.mark)]
    if rule.confirmed is None:
        return words
    by, at = rule.confirmed.by, str(rule.confirmed.at)
    return language.drawn("confirmed", mark=words, by=by, at=at)
