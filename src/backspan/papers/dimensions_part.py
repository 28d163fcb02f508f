"""The key dimensions of a drop's rig, as planned and as built, with who stated each."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from string import ascii_lowercase
from typing import Any

from backspan.core.model.evidence import StatedValue
from backspan.core.model.project import Project
from backspan.core.model.rigs import BackspanFrom, CounterweightedBeam, PieceGroup, SuspensionPoint
from backspan.core.quantities import LENGTH, MASS, Amount, Style, display
from backspan.core.words import Language
from backspan.core.words.plates import as_written

Row = dict[str, str]


def dimensions_part(project: Project, drop: str, language: Language) -> dict[str, Any]:
    """The points of a drop, a row for each dimension, and who stated them.

    Where points differ there is a row for each of them.
    """
    rig = next((one.rig for one in project.drops if one.id == drop), None)
    points = () if rig is None else rig.suspension_points
    by_point = {point.id: list(_rows(project, point, language)) for point in points}
    names = dict.fromkeys(row["name"] for rows in by_point.values() for row in rows)
    rows = [row for name in names for row in _of_name(name, by_point)]
    # Most values share a statement: each is told once, by a letter.
    said = list(dict.fromkeys(row["by"] for row in rows if row["by"]))
    marks = dict(zip(said, ascii_lowercase, strict=False))
    return {
        "points": ", ".join(by_point),
        "rows": [{**row, "by": marks.get(row["by"], row["by"])} for row in rows],
        "statements": [{"mark": mark, "text": text} for text, mark in marks.items()],
    }


def _of_name(name: str, by_point: Mapping[str, Sequence[Row]]) -> Iterator[Row]:
    found = {
        point: [row for row in rows if row["name"] == name] for point, rows in by_point.items()
    }
    first, *others = found.values()
    if all(one == first for one in others):
        yield from first
        return
    for point, rows in found.items():
        for row in rows:
            yield {**row, "name": f"{name}, {point}"}


def _rows(project: Project, point: SuspensionPoint, language: Language) -> Iterator[Row]:
    beam, unstated = point.counterweighted_beam, language.paper["not_stated"]
    if beam is None:
        other = point.other_support
        yield _row(
            language.paper["support"],
            found=unstated if other is None else language.word(other.kind),
        )
        return
    for name, stated in _lengths(project, beam):
        if name == "backspan" and beam.backspan_from is BackspanFrom.STACK:
            yield _row(language.dimensions[name], found=language.paper["from_stack"])
        else:
            yield _length_row(project, name, stated, language)
    for group in beam.stack.groups:
        yield _pieces_row(project, group, language)


def _lengths(
    project: Project, beam: CounterweightedBeam
) -> Iterator[tuple[str, StatedValue[float] | None]]:
    for name in ("reach", "backspan", "tip_beyond_line", "rear_stand"):
        yield name, getattr(beam, name)
    for name in ("setback", "height"):
        yield name, None if beam.fulcrum is None else getattr(beam.fulcrum, name)
    yield "tail_gap", beam.stack.tail_gap
    kit = project.kit.beam(beam.beam)
    yield "length", None if kit is None else kit.length


def _length_row(
    project: Project, name: str, stated: StatedValue[float] | None, language: Language
) -> Row:
    if stated is None:
        return _row(language.dimensions[name], found=language.paper["not_stated"])
    found = _taped(stated.value, project.units)
    if stated.tolerance:
        found += f" ± {_taped(stated.tolerance, project.units)}"
    planned = "" if stated.planned is None else _taped(stated.planned, project.units)
    by = _said(project, stated, language)
    return _row(language.dimensions[name], planned=planned, found=found, by=by)


def _taped(metres: float, units: Style) -> str:
    """A length as a tape shows it: feet and inches, or millimetres."""
    return display(metres, LENGTH, units, unit="mm" if units is Style.METRIC else None)


def _pieces_row(project: Project, group: PieceGroup, language: Language) -> Row:
    piece = project.kit.piece(group.piece)
    mass = language.paper["not_stated"]
    if piece is not None and piece.mass is not None:
        mass = as_written(piece.mass.text, Amount(piece.mass.value, MASS), project.units)
    return _row(
        language.dimensions["pieces"],
        planned="" if group.count.planned is None else str(group.count.planned),
        found=language.paper["piece_each"].format(count=group.count.value, mass=mass),
        by=_said(project, group.count, language),
    )


def _said(project: Project, stated: StatedValue[Any], language: Language) -> str:
    names = {one.id: one.name for one in project.people}
    by = None if stated.by is None else names.get(stated.by, stated.by)
    evidence = None if stated.evidence is None else language.word(stated.evidence)
    return ", ".join(one for one in (evidence, by, stated.at) if one)


def _row(name: str, *, planned: str = "", found: str, by: str = "") -> Row:
    return {"name": name, "planned": planned, "found": found, "by": by}
