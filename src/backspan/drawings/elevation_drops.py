"""The drops on an elevation: a strip each, with its answer, its standing and what hangs there."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace

from backspan.core.findings import Review
from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop, SuspensionPoint
from backspan.core.model.stages import HungStage
from backspan.core.quantities import Style
from backspan.drawings.canvas import TEXT, Canvas
from backspan.drawings.elevation_face import Face
from backspan.drawings.elevation_narrow import along_strip
from backspan.drawings.elevation_words import Row, beside_strip, in_strip
from backspan.drawings.geometry import text_quad
from backspan.drawings.lettering import DESCENT, plain, text_width
from backspan.drawings.placing import Label
from backspan.drawings.plan_drops import Strip, spans, width_text
from backspan.drawings.rig_things import drop_thing, hung_thing
from backspan.drawings.scene import (
    Align,
    Layer,
    Line,
    Point,
    Polygon,
    Polyline,
    Symbol,
    SymbolName,
    Text,
)
from backspan.drawings.symbols import answer_layer
from backspan.drawings.things import Thing
from backspan.drawings.things_told import told
from backspan.drawings.values import length_text, own_length

CHAIN = 6.0
"""From one line of dimensions above the facade to the next, in millimetres on paper."""

INSET = 3.2
"""How far within a strip its height is dimensioned, on paper."""

POINT = 2.2
STAGE_BELOW, STAGE_HIGH = 4.0, 4.2
"""How far below the roof a stage is drawn, and how high, on paper: both say nothing."""

WORDS_BELOW = 11.0
"""How far below the roof the words of a strip begin, on paper."""


@dataclass(frozen=True, slots=True)
class Shown:
    """What an elevation is made of besides the facade."""

    project: Project
    reviews: Mapping[str, Review]
    standings: Mapping[str, str]

    @property
    def units(self) -> Style:
        """The units of the project."""
        return self.project.units


def tiers_of(face: Face) -> int:
    """How many lines of dimensions the drops of a facade need."""
    return max((one.tier + 1 for one in face.strips), default=1)


def draw_strips(canvas: Canvas, face: Face, shown: Shown) -> None:
    """All strips with what hangs from their points, without words."""
    for one in face.strips:
        with canvas.of(_thing(one, shown)):
            _outline(canvas, face, one)
        for point in _points(one.drop):
            at = (face.across(point.station), face.level)
            thing = hung_thing(shown.project, one.drop.id, point)
            canvas.add(Symbol(Layer.SUSPENSION, SymbolName.SUSPENSION_POINT, at, POINT, of=thing))
        for stage in () if one.drop.rig is None else one.drop.rig.stages:
            _draw_stage(canvas, face, one.drop, stage, shown.project)


def measure_widths(canvas: Canvas, face: Face, units: Style) -> None:
    """The widths of the strips along the top, in a chain; strips that overlap have one more."""
    for tier in range(tiers_of(face)):
        _chain(canvas, face, tier, units)


def measure_heights(canvas: Canvas, face: Face, units: Style) -> None:
    """The height of each strip, within it, and what is clear below."""
    for one in face.strips:
        _heights(canvas, face, one.drop, units)


def name_strips(canvas: Canvas, face: Face, shown: Shown) -> None:
    """The words of every strip, within it where they have room."""
    for one in face.strips:
        rows = _rows(canvas, one, shown)
        right, left = face.across(one.drop.start), face.across(_end(one.drop))
        edges = (canvas.frame.to_paper((left, 0.0))[0], canvas.frame.to_paper((right, 0.0))[0])
        roof = canvas.frame.to_paper((0.0, face.level))[1]
        deep = WORDS_BELOW + one.tier * 45.0
        with canvas.of(_thing(one, shown)):
            inner, top = (edges[0], edges[1] - INSET), roof - deep
            written = in_strip(canvas, one, rows, edges=inner, top=top)
            if not (written or along_strip(canvas, one, rows, edges=inner, top=top)):
                beside_strip(canvas, one, rows, ((left + right) / 2, face.level))


def name_points(canvas: Canvas, face: Face, shown: Shown) -> None:
    """The ids of the suspension points, above their signs."""
    for one in face.strips:
        for point in _points(one.drop):
            with canvas.of(hung_thing(shown.project, one.drop.id, point)):
                _name_point(canvas, point.id, (face.across(point.station), face.level))


def _name_point(canvas: Canvas, name: str, at: Point) -> None:
    """The id of a point above its sign, below it where another stands there."""
    x, y = canvas.frame.to_paper(at)
    beside, below = POINT / 2 + 0.5, POINT / 2 + TEXT
    for place, align in (
        ((x, y + beside + TEXT * DESCENT), Align.MIDDLE),
        ((x - beside, y - below), Align.END),
        ((x + beside, y - below), Align.START),
    ):
        text = Text(Layer.LABEL, place, plain(name), TEXT, align, bold=True, masked=True)
        if canvas.placer.free(text_quad(text)):
            canvas.write((text,))
            return
    canvas.placer.unplaced.append(Label((plain(name),), TEXT))


def _thing(one: Strip, shown: Shown) -> Thing:
    middle = one.line.at(station=one.drop.start + one.drop.width.value / 2)
    review = shown.reviews.get(one.drop.id)
    thing = drop_thing(one.drop, review, shown.units, at=middle)
    more = told("standing", shown.standings.get(one.drop.id))
    return replace(thing, facts=(*thing.facts, *more))


def _points(drop: Drop) -> tuple[SuspensionPoint, ...]:
    return () if drop.rig is None else drop.rig.suspension_points


def _end(drop: Drop) -> float:
    return drop.start + drop.width.value


def _outline(canvas: Canvas, face: Face, one: Strip) -> None:
    """The strip; what nobody stated of it is dashed. Its top has the colour of its answer."""
    right, left = face.across(one.drop.start), face.across(_end(one.drop))
    bottom, top = face.bottom(one.drop), face.level
    if bottom is None:
        low = top - face.unknown_depth
        canvas.add(Line(Layer.DROP, (right, top), (left, top)))
        around = ((right, top), (right, low), (left, low), (left, top))
        canvas.add(Polyline(Layer.NOT_KNOWN, around))
    else:
        outline = ((right, top), (left, top), (left, bottom), (right, bottom))
        canvas.add(Polygon(Layer.DROP, outline))
    if one.verdict is not None:
        canvas.add(Line(answer_layer(one.verdict), (right, top), (left, top)))


def _draw_stage(canvas: Canvas, face: Face, drop: Drop, stage: HungStage, project: Project) -> None:
    """A stage dashed below its points: nobody stated how high it hangs."""
    hung = [one for one in _points(drop) if one.id in stage.from_points]
    if not hung:
        return
    stations = [one.station for one in hung]
    kind = project.kit.stage(stage.stage)
    wide = max(stations) - min(stations) if kind is None else kind.length.value
    middle = face.across((max(stations) + min(stations)) / 2)
    high = face.level - canvas.frame.real(STAGE_BELOW)
    low = high - canvas.frame.real(STAGE_HIGH)
    left, right = middle - wide / 2, middle + wide / 2
    for station in stations:
        x = face.across(station)
        canvas.add(Line(Layer.NOT_KNOWN, (x, face.level), (x, high)))
    around: tuple[Point, ...] = ((left, high), (right, high), (right, low), (left, low))
    canvas.add(Polygon(Layer.NOT_KNOWN, around))
    name = plain(stage.stage)
    if text_width(name, height=TEXT) + 2.0 <= canvas.frame.drawn(wide):
        x, y = canvas.frame.to_paper((middle, low))
        canvas.write((Text(Layer.LABEL, (x, y + 0.9), name, TEXT, Align.MIDDLE),))


def _chain(canvas: Canvas, face: Face, tier: int, units: Style) -> None:
    """The widths of the drops of a tier, those of the first with the gaps between them."""
    of_tier = [replace(one, tier=0) for one in face.strips if one.tier == tier]
    up = canvas.frame.real(CHAIN * (tier + 1))
    measured = list(spans(of_tier, gaps=tier == 0))
    last = max((end for _, end in measured), default=face.length)
    if tier == 0 and face.length - last > 0.02:  # noqa: PLR2004 - as the gaps of a plan
        measured.append((last, face.length))
    # The longer first: a short one whose text stands aside must not take a long one's place.
    for first, end in sorted(measured, key=lambda span: span[0] - span[1]):
        left, right = face.across(end), face.across(first)
        canvas.dimension(
            (left, face.top),
            (right, face.top),
            line_through=(left, face.top + up),
            angle=0.0,
            lines=(width_text(canvas, end - first, units),),
        )


def _heights(canvas: Canvas, face: Face, drop: Drop, units: Style) -> None:
    """Within the right side of a strip: its height, and what is clear below it."""
    bottom = face.bottom(drop)
    if bottom is None or drop.height is None:
        return
    x = face.across(drop.start)
    through = (x - canvas.frame.real(INSET), face.level)
    words = (length_text(drop.height.value, units),)
    up = (x, bottom), (x, face.level)
    canvas.dimension(*up, line_through=through, angle=90.0, lines=words)
    if drop.clear_below is not None:
        clear = drop.clear_below.value
        told_so = canvas.language.drawn("clear_below_of", length=own_length(clear, units))
        room = canvas.frame.drawn(clear)
        short = own_length(clear, units)
        words = (told_so if text_width(told_so, height=TEXT) + 2.0 <= room else short,)
        down = (x, bottom - clear), (x, bottom)
        canvas.dimension(*down, line_through=through, angle=90.0, lines=words)


def _rows(canvas: Canvas, one: Strip, shown: Shown) -> tuple[Row, ...]:
    return tuple(_said(canvas, one, shown))


def _said(canvas: Canvas, one: Strip, shown: Shown) -> Iterator[Row]:
    """What a strip says below its answer."""
    language, drop = canvas.language, one.drop
    standing = shown.standings.get(drop.id)
    if standing is not None:
        yield Row(standing, framed=True)
    if drop.height is None:
        yield Row(language.drawn("drop_height_not_stated"))
    if drop.clear_below is None:
        yield Row(language.drawn("clear_below_not_stated"))
    for stage in () if drop.rig is None else drop.rig.stages:
        along = stage.found.along
        if along is None:
            yield Row(language.drawn("way_down_not_stated"))
        else:
            yield Row(language.drawn("way_down", found=language.word(along.value)))
