"""What an elevation says around the facade: how it is seen, title block, notes, its description."""

from __future__ import annotations

from collections.abc import Mapping

from backspan.core.findings import Review
from backspan.core.model.project import Project
from backspan.core.words import Language
from backspan.drawings.canvas import TEXT, Canvas
from backspan.drawings.edges import backward_edges
from backspan.drawings.elevation_drops import Shown
from backspan.drawings.elevation_face import Face
from backspan.drawings.lettering import LEADING, wrapped
from backspan.drawings.plan import reviewed_on
from backspan.drawings.scalebar import scale_bar
from backspan.drawings.scene import Layer, Scale, Shape, Text
from backspan.drawings.values import answer_text, length_text
from backspan.drawings.wording import backward_note, no_room_note


def foot_of(
    canvas: Canvas,
    face: Face,
    project: Project,
    *,
    at: tuple[float, float],
    right: float,
    below: tuple[str, ...] = (),
) -> tuple[Shape, ...]:
    """How it is seen, lines of notes and the scale; no north: the sheet stands upright."""
    language, (x, y) = canvas.language, at
    faces = face.edge.faces
    looks = (
        language.drawn("edge_looks_to", faces=faces)
        if faces
        else language.drawn("edge_looks_unstated")
    )
    said = f"{language.drawn('seen_from_outside')} {looks}"
    lines = wrapped(said, room=right - x - 4.0, height=TEXT, bold=True)
    first = y + 16.0 + TEXT * LEADING * (len(lines) + len(below) - 1)
    seen = (
        Text(Layer.LABEL, (x, first - row * TEXT * LEADING), line, TEXT, bold=row < len(lines))
        for row, line in enumerate((*lines, *below))
    )
    scale: Scale = canvas.frame.scale
    bar = scale_bar(scale, project.units, (x, y + 3.0), segments=2, language=language)
    return (*seen, *bar)


def title_of(project: Project, face: Face, language: Language) -> str:
    """The title of an elevation."""
    return language.drawn(
        "elevation_title", site=project.site.name, edge=face.edge.id, roof=face.roof.name
    )


def pairs_of(
    project: Project, face: Face, made: tuple[Review, ...], language: Language
) -> tuple[tuple[str, str], ...]:
    """What the title block of an elevation says: its day, its edge, its level."""
    edge = face.edge
    told = language.drawn("edge_faces", edge=edge.id, faces=edge.faces) if edge.faces else edge.id
    return (
        (language.drawn("reviewed"), reviewed_on(made, language)),
        (language.drawn("configuration"), language.drawn("by_drop")),
        (language.drawn("edge_pair"), told),
        (language.drawn("roof_level"), length_text(face.level, project.units)),
    )


def notes_of(canvas: Canvas, face: Face, shown: Shown) -> tuple[str, ...]:
    """What an elevation says of itself: what is dashed, what does not agree, what had no room."""
    language = canvas.language
    notes = [language.drawn("standing_framed" if shown.standings else "standing_left_out")]
    if any(one.drop.rig is not None and one.drop.rig.stages for one in face.strips):
        notes.append(language.drawn("stage_drawn"))
    beneath = tuple(face.beneath_datum())
    if beneath:
        notes.append(language.drawn("below_datum", drops=", ".join(beneath)))
    if not face.grounded:
        notes.append(language.drawn("no_ground"))
    if face.edge.id in backward_edges(face.roof):
        notes.append(backward_note((face.edge.id,), language))
    if canvas.placer.unplaced:
        notes.append(no_room_note(len(canvas.placer.unplaced), language))
    return tuple(notes)


def description_of(
    project: Project,
    face: Face,
    reviews: Mapping[str, Review],
    standings: Mapping[str, str],
    language: Language,
) -> str:
    """What is seen, as words: the drops from left to right, as the eye finds them."""
    told = []
    for one in sorted(face.strips, key=lambda strip: -strip.drop.start):
        drop = one.drop.id
        said = (answer_text(reviews.get(drop), language), standings.get(drop, ""))
        told.append(f"{drop} {', '.join(filter(None, said))}")
    return language.drawn(
        "elevation_told",
        edge=face.edge.id,
        roof=face.roof.name,
        site=project.site.name,
        answers="; ".join(told) or language.drawn("no_drops"),
    )
