"""The rigging schedule under a roof plan: what was measured at every suspension point."""

from __future__ import annotations

from collections.abc import Sequence

from backspan.core.model.project import Project
from backspan.core.quantities import Style
from backspan.core.words import Language
from backspan.drawings.beams import piece_named
from backspan.drawings.plan_rig import PlannedBeam
from backspan.drawings.scene import Point, Shape
from backspan.drawings.tables import ROW, Cell, Column, row_facts, table
from backspan.drawings.things import Thing, ThingKind
from backspan.drawings.values import (
    Known,
    answer_of,
    force_text,
    known_length_text,
    mass_text,
    no_answer,
)
from backspan.drawings.wording import count_text

SHARE = 0.34
"""The most of the drawing area's height that the schedule takes."""

#: Which texts of drawings are the headings, and the share of the width each column takes.
COLUMNS = (
    ("point", 0.09),
    ("reach", 0.2),
    ("backspan", 0.22),
    ("counterweight", 0.225),
    ("hoist_rated_load", 0.155),
    ("answer", 0.11),
)

EXACT = frozenset({"reach_m", "backspan_m", "rated_load_n", "pieces"})
"""What a row also says exactly, as data; of points that share it, each value once."""


def schedule_height(
    project: Project, beams: Sequence[PlannedBeam], language: Language, *, room: float
) -> float:
    """Height the schedule takes under a drawing that is `room` high; nothing without a rig."""
    if not beams:
        return 0.0
    return min(ROW * (len(schedule_rows(project, beams, language)) + 1), room * SHARE) + 3.0


def schedule_rows(
    project: Project, beams: Sequence[PlannedBeam], language: Language
) -> list[tuple[Cell, ...]]:
    """One row for each suspension point; the points of a drop that are alike share one."""
    return [cells for cells, _ in _grouped(project, beams, language)]


def _grouped(
    project: Project, beams: Sequence[PlannedBeam], language: Language
) -> list[tuple[tuple[Cell, ...], list[PlannedBeam]]]:
    found: dict[tuple[str, tuple[Cell, ...]], list[PlannedBeam]] = {}
    for beam in beams:
        found.setdefault((beam.drop.id, _row(project, beam, language)), []).append(beam)
    return [((_name(alike), *cells), alike) for (_, cells), alike in found.items()]


def _name(alike: Sequence[PlannedBeam]) -> str:
    return f"{alike[0].drop.id}/{', '.join(beam.point.id for beam in alike)}"


def _thing(cells: Sequence[Cell], alike: Sequence[PlannedBeam]) -> Thing:
    """A row as data: its cells by their columns, and the exact values of its points."""
    columns = [heading for heading, _ in COLUMNS]
    said = dict(fact for beam in alike for fact in beam.things.point.facts if fact[0] in EXACT)
    for name in said:
        each = (dict(beam.things.point.facts).get(name, "") for beam in alike)
        said[name] = ", ".join(dict.fromkeys(each))
    path = alike[0].things.point.path
    return Thing(ThingKind.SCHEDULE_ROW, _name(alike), path, row_facts(columns, cells, said))


def schedule(
    project: Project,
    beams: Sequence[PlannedBeam],
    language: Language,
    *,
    at: Point,
    width: float,
    height: float,
) -> tuple[Shape, ...]:
    """The table with its upper left corner at `at`."""
    grouped = _grouped(project, beams, language)
    columns = [Column(language.drawn(heading), share * width) for heading, share in COLUMNS]
    more = language.drawn("see_sections")
    shapes, _ = table(
        columns,
        [cells for cells, _ in grouped],
        left=at[0],
        top=at[1],
        room=height,
        more=more,
        language=language,
        things=[_thing(cells, alike) for cells, alike in grouped],
    )
    return shapes


def _row(project: Project, beam: PlannedBeam, language: Language) -> tuple[Cell, ...]:
    units = project.units
    return (
        _length(beam.picture.reach, units, language),
        _length(beam.picture.backspan, units, language),
        _counterweight(project, beam, language),
        _rated(project, beam, language),
        answer_of(beam.findings) or language.drawn(no_answer(beam.review)),
    )


def _length(value: Known | None, units: Style, language: Language) -> str:
    if value is None:
        return language.drawn("not_measured")
    words = known_length_text(value, units)
    if value.worked_out:
        return language.drawn("length_worked_out", length=words)
    if value.evidence is None:
        return words
    return f"{words} {language.word(value.evidence)}"


def _counterweight(project: Project, beam: PlannedBeam, language: Language) -> str:
    support = beam.point.counterweighted_beam
    if support is None:
        other = beam.point.other_support
        return language.drawn("not_stated") if other is None else language.word(other.kind)
    parts = []
    for group in support.stack.groups:
        piece = piece_named(project, group.piece)
        words = count_text(group.count.value, language)
        if piece is not None:
            mass = mass_text(piece.mass.value, project.units)
            words = language.drawn("pieces_of", pieces=words, mass=mass)
        parts.append(words)
    return " + ".join(parts) or language.drawn("no_pieces")


def _rated(project: Project, beam: PlannedBeam, language: Language) -> str:
    hoist = project.kit.hoist(beam.point.hoist)
    if hoist is None:
        return language.drawn("not_stated")
    return force_text(hoist.rated_load.value, project.units)
