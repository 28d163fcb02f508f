"""The dimensions of a section: what was measured, on the line it was measured along."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from backspan.core.model.units import UnitKind
from backspan.drawings.lettering import text_width
from backspan.drawings.scene import Point
from backspan.drawings.section_joints import joints_of
from backspan.drawings.section_planned import STACK_HEIGHT
from backspan.drawings.section_points import Section
from backspan.drawings.spots import Spot
from backspan.drawings.tags import tagged
from backspan.drawings.values import Known, evidence_text, known_length_text

TO_SCALE = 1e-6
"""What is drawn closer than this to its stated length is dimensioned, in metres."""


@dataclass(frozen=True, slots=True)
class Span:
    """A length along the beam, with its row above the beam and what is known of it."""

    tier: int
    start: float
    end: float
    name: str
    value: Known | None
    not_known: str
    """What is said where there is no value."""


def draw_dimensions(section: Section) -> None:
    """Setback, ends, reach and backspan, length of the beam; what is not known is said."""
    picture = section.view.first.picture
    _setback(section)
    outer = picture.groups[0].outer if picture.groups else picture.tail.x
    beams = [one.point.counterweighted_beam for one in section.view.points]
    names = (beam.beam for beam in beams if beam is not None)
    tags = tagged(section.project.kit, UnitKind.BEAM, names, section.language)
    name = section.language.drawn("beam", tags=tags)
    no_length = section.language.drawn("beam_not_measured", tags=tags)
    tip, line, fulcrum, tail = picture.tip.x, picture.line.x, picture.fulcrum.x, picture.tail.x
    spans = (
        _span(section, 0, (tip, line), "tip_beyond_line", picture.tip_beyond_line),
        _span(section, 0, (outer, tail), "tail_gap", picture.tail_gap),
        _span(section, 1, (line, fulcrum), "reach", picture.reach),
        _span(section, 1, (fulcrum, picture.centroid.x), "backspan", picture.backspan),
        *_joints(section),
        Span(2 + section.layout.joints, tip, tail, name, picture.length, no_length),
    )
    # No text may stand along another's line: it would be read as that one's.
    for span in filter(_to_scale, spans):
        start, end = _ends(section, span)
        section.canvas.reserve(start, end, line_through=_row(section, span), angle=0.0)
    # The longer first: their text stands on the line, the others' finds its place around it.
    for span in sorted(spans, key=lambda span: span.start - span.end):
        _draw_span(section, span)


def _span(
    section: Section, tier: int, ends: tuple[float, float], text: str, value: Known | None
) -> Span:
    name = section.language.drawn(text)
    return Span(tier, *ends, name, value, section.language.drawn("length_not_measured", name=name))


def _joints(section: Section) -> Iterator[Span]:
    """From each joint that has a row to the tail of the beam."""
    tail = section.view.first.picture.tail.x
    for row, joint in enumerate(joints_of(section)[: section.layout.joints]):
        name = section.language.drawn("joint_from_tail", joint=joint.splice.id)
        not_known = section.language.drawn("length_not_measured", name=name)
        yield Span(2 + row, joint.at.x, tail, name, joint.from_tail, not_known)


def _to_scale(span: Span) -> bool:
    """Whether a length is known and drawn as long as it is stated."""
    drawn = abs(span.end - span.start)
    return span.value is not None and abs(drawn - span.value.value) <= TO_SCALE


def _ends(section: Section, span: Span) -> tuple[Point, Point]:
    above = section.view.first.bearing.x
    return section.at(inward=span.start, above=above), section.at(inward=span.end, above=above)


def _row(section: Section, span: Span) -> Point:
    """A point on the dimension line of a span."""
    rows = section.layout.first_tier + span.tier * section.layout.tier
    above = section.view.first.bearing.x + section.real(rows)
    return section.at(inward=span.start, above=above)


def _draw_span(section: Section, span: Span) -> None:
    """A dimension above the beam; in words only where it is not drawn to its stated length."""
    words = _span_words(section, span)
    if not _to_scale(span):
        above = section.view.first.bearing.x
        middle = section.at(inward=(span.start + span.end) / 2, above=above)
        section.canvas.later(words, middle, spots=_near_beam(section, middle))
        return
    start, end = _ends(section, span)
    section.canvas.dimension(
        start,
        end,
        line_through=_row(section, span),
        angle=0.0,
        lines=words,
        others=() if span.value is None else _parted(section, span.name, span.value),
    )


def _parted(section: Section, name: str, value: Known) -> tuple[tuple[str, ...], ...]:
    """In a small figure: name and length in lines of their own."""
    if not section.layout.narrow:
        return ()
    length = known_length_text(value, section.project.units)
    return ((name, length, _evidence(section, value)),)


def _span_words(section: Section, span: Span) -> tuple[str, ...]:
    name, value = span.name, span.value
    if value is None:
        return (span.not_known,)
    units = section.project.units
    length, evidence = known_length_text(value, units), _evidence(section, value)
    whole = f"{name} {length}"
    # Between tip and line nothing ever fits, and a narrow layout has little room beside it.
    beside = section.layout.narrow and span.end == section.view.first.picture.line.x
    if beside and text_width(whole, height=section.canvas.text) > section.left_room:
        return (name, length, evidence)
    drawn = section.canvas.frame.drawn(span.end - span.start)
    if name.endswith(":") and text_width(whole, height=section.canvas.text) > drawn:
        return (name, f"{length}, {evidence}")
    return (whole, evidence)


def _near_beam(section: Section, target: Point) -> tuple[Spot, ...]:
    """Close above or below the beam; what stands here is not dimensioned."""
    x, y = section.canvas.frame.to_paper(target)
    return tuple(
        Spot((x + across, y + up), 0, 1 if up > 0.0 else -1, abs(up) / 2 + abs(across) / 4)
        for up in (3.0, -3.0, 6.0, -6.0, 10.0, -10.0, STACK_HEIGHT + 2.0)
        for across in (0.0, 10.0, -10.0, 15.0, -15.0, 20.0, -20.0)
    )


def _setback(section: Section) -> None:
    picture = section.view.first.picture
    at = section.at(inward=picture.fulcrum.x, above=0.0)
    if picture.setback is None:
        words = (section.language.drawn("setback_not_measured"),)
        section.canvas.later(words, at, spots=_below(section, at))
        return
    section.canvas.dimension(
        section.at(inward=0.0, above=0.0),
        at,
        line_through=section.at(inward=0.0, above=-section.real(section.layout.setback)),
        angle=0.0,
        lines=_setback_words(section, picture.setback),
        others=_parted(section, section.language.drawn("setback"), picture.setback),
    )


def _setback_words(section: Section, setback: Known) -> Sequence[str]:
    length = known_length_text(setback, section.project.units)
    return (f"{section.language.drawn('setback')} {length}", _evidence(section, setback))


def _evidence(section: Section, value: Known) -> str:
    return evidence_text(value, section.project.units, section.language)


def _below(section: Section, target: Point) -> tuple[Spot, ...]:
    x, y = section.canvas.frame.to_paper(target)
    return tuple(Spot((x + step, y - 6.0), 1, -1, step) for step in (0.0, 6.0, 12.0))
