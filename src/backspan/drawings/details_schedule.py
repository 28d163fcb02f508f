"""The schedule of a drop's lines and hardware: what each is, where it ends, how that is known."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from types import MappingProxyType

from backspan.core.model.evidence import Evidence
from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop, SuspensionPoint
from backspan.core.words import Language
from backspan.drawings.canvas import TEXT
from backspan.drawings.details_lines import clips_text
from backspan.drawings.lettering import LEADING, wrapped
from backspan.drawings.scene import Layer, Point, Shape, Text
from backspan.drawings.tables import GAP, ROW, Cell, Column, row_facts, table
from backspan.drawings.things import Facts, Thing, ThingKind
from backspan.drawings.things_told import exact
from backspan.drawings.values import evidence_letter, length_text
from backspan.drawings.wording import tied_to

#: Which texts of drawings are the headings, and the share of the width each column takes.
COLUMNS = (
    ("line", 0.095),
    ("kind", 0.105),
    ("diameter", 0.125),
    ("construction", 0.18),
    ("termination", 0.19),
    ("clips_head", 0.09),
    ("length", 0.125),
    ("ends_at", 0.09),
)

#: What a column is called as data, where its own name already says what the row itself is.
DATA_NAMES = MappingProxyType({"kind": "line_kind"})

#: Where the model has no such value for a line.
NONE = "–"

Row = tuple[Cell, ...]


@dataclass(frozen=True, slots=True)
class Of:
    """What a row is of: its id, its place in the project, its lengths in metres."""

    id: str
    path: tuple[str, ...]
    exact: Facts


def details_rows(project: Project, drop: Drop, language: Language) -> list[Row]:
    """A row for each suspension line, tieback, lifeline and piece of connecting hardware."""
    return [row for row, _ in _rows(project, drop, language)]


def details_schedule(
    project: Project, drop: Drop, language: Language, *, at: Point, width: float, height: float
) -> tuple[Shape, ...]:
    """The table with its upper left corner at `at`, and what its letters stand for."""
    columns = [Column(language.drawn(name), share * width, wraps=True) for name, share in COLUMNS]
    rows = list(_rows(project, drop, language))
    room = height - TEXT * LEADING - 1.5
    more = language.drawn("see_report")
    shapes, used = table(
        columns,
        [row for row, _ in rows],
        left=at[0],
        top=at[1],
        room=room,
        more=more,
        language=language,
        things=[_thing(row, of) for row, of in rows],
    )
    kinds = ", ".join(f"{evidence_letter(one, language)} {language.word(one)}" for one in Evidence)
    key = language.drawn("letters", letters=kinds)
    base = at[1] - used - TEXT * LEADING - 0.5
    return (*shapes, Text(Layer.LABEL, (at[0], base), key, TEXT))


def _thing(row: Row, of: Of) -> Thing:
    """A row as data: its cells by their columns, and its lengths exactly."""
    names = [DATA_NAMES.get(name, name) for name, _ in COLUMNS]
    facts = row_facts(names, row, dict(of.exact))
    return Thing(ThingKind.SCHEDULE_ROW, of.id, of.path, facts)


def details_height(rows: list[Row], *, width: float, room: float) -> float:
    """The height the schedule takes with its key, within `room`."""
    lines = sum(_lines(row, width) for row in rows)
    return min(ROW * (lines + 1) + TEXT * LEADING + 4.0, room)


def _lines(row: Row, width: float) -> int:
    """Into how many lines the longest text of a row is broken."""
    return max(
        len(wrapped(str(cell), room=share * width - GAP, height=TEXT))
        for cell, (_, share) in zip(row, COLUMNS, strict=True)
    )


def _rows(project: Project, drop: Drop, language: Language) -> Iterator[tuple[Row, Of]]:
    if drop.rig is None:
        return
    points = sorted(drop.rig.suspension_points, key=lambda one: one.station)
    for point in points:
        of = _of(project, drop, point.rope, "suspension_points", point.id)
        if point.rope_length is not None:
            of = replace(of, exact=(*of.exact, ("length_m", exact(point.rope_length.value))))
        yield _suspension(project, point, language), of
    for point in points:
        for tie in point.tied:
            title = language.drawn("tieback_short", tieback=tie.id)
            rope = _rope(project, tie.rope, language)
            ending = _ending(project, tie.termination, language)
            of = _of(project, drop, tie.rope, "suspension_points", point.id, "tiebacks", tie.id)
            yield (title, *rope, ending, NONE, NONE, tied_to(tie, language)), of
    for line in drop.rig.lines:
        title = language.drawn("lifeline_short", line=line.id)
        rope = _rope(project, line.rope, language)
        ending = _ending(project, line.termination, language)
        to = language.drawn("to_anchor", anchor=line.anchor)
        of = _of(project, drop, line.rope, "lifelines", line.id)
        yield (title, *rope, ending, NONE, NONE, to), of
    for point in points:
        for at, row in enumerate(_hardware(project, point, language)):
            place = ("suspension_points", point.id, "connectors", str(at))
            yield row, _of(project, drop, None, *place)


def _of(project: Project, drop: Drop, rope: str | None, *place: str) -> Of:
    """Names and ids take turns in a place: of the ids is the id of the row."""
    kind = None if rope is None else project.kit.rope(rope)
    diameter = () if kind is None else (("diameter_m", exact(kind.diameter.value)),)
    return Of("/".join((drop.id, *place[1::2])), ("drops", drop.id, "rig", *place), diameter)


def _suspension(project: Project, point: SuspensionPoint, language: Language) -> Row:
    clips = NONE if point.clips is None else clips_text(project, point.clips, language)
    length = language.drawn("not_stated")
    if point.rope_length is not None:
        letter = evidence_letter(point.rope_length.evidence, language)
        length = f"{length_text(point.rope_length.value, project.units)} {letter}"
    return (
        language.drawn("line_short", point=point.id),
        *_rope(project, point.rope, language),
        _ending(project, point.termination, language),
        clips,
        length,
        language.drawn("point_short", point=point.id),
    )


def _rope(project: Project, name: str | None, language: Language) -> tuple[str, str, str]:
    """Its kind, its diameter, and its construction as its certificate names it."""
    blank = language.drawn("not_stated")
    rope = None if name is None else project.kit.rope(name)
    if rope is None:
        return (blank, blank, name or blank)
    letter = evidence_letter(rope.diameter.evidence, language)
    diameter = f"{length_text(rope.diameter.value, project.units)} {letter}"
    return (language.word(rope.kind), diameter, rope.name)


def _ending(project: Project, name: str | None, language: Language) -> str:
    kind = None if name is None else project.kit.termination(name)
    if kind is None:
        return name or language.drawn("not_stated")
    made = "" if kind.kind is None else language.word(kind.kind)
    return kind.name if made in kind.name else f"{kind.name} ({made})"


def _hardware(project: Project, point: SuspensionPoint, language: Language) -> Iterator[Row]:
    blank = language.drawn("not_stated")
    title = language.drawn("hardware_short", point=point.id)
    end = language.drawn("point_short", point=point.id)
    if point.connectors is None:
        yield (title, blank, blank, blank, NONE, NONE, NONE, end)
        return
    for fitted in point.connectors:
        kind = project.kit.connector(fitted.connector)
        size = None if kind is None else kind.size
        diameter = blank
        if size is not None:
            letter = evidence_letter(size.evidence, language)
            diameter = f"{length_text(size.value, project.units)} {letter}"
        pin = blank if fitted.pin is None else language.word(fitted.pin.value)
        yield (
            title,
            blank if kind is None else language.word(kind.kind),
            diameter,
            fitted.connector if kind is None else kind.name,
            pin,
            NONE,
            NONE,
            end,
        )
