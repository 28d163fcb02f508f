"""What a beam bears on, front and rear, as a detail sheet draws it: which points are alike."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.model.evidence import StatedValue
from backspan.core.model.project import Project
from backspan.core.model.rigs import CounterweightedBeam, Drop, FulcrumKind, Pad
from backspan.core.words import Language
from backspan.drawings.section_points import SectionPoint, section_points
from backspan.drawings.values import Known, known

State = StatedValue[float] | None


@dataclass(frozen=True, slots=True)
class Bearing:
    """One place where a beam bears: what is stated of the plate, the pad and the surface."""

    title: str
    kind: str
    """What bears the beam, in the words of the drawing; empty where nobody said."""
    drawn_as: FulcrumKind | None
    height: Known | None
    asks_height: bool
    """Whether its height is its own, or follows from the front."""
    plate: tuple[Known | None, Known | None]
    pad: tuple[Known | None, Known | None, Known | None] | None
    strength: State
    surface: str
    beam: str
    depth: Known | None
    stated: bool = True

    @property
    def alike(self) -> tuple[object, ...]:
        """What makes two bearings look the same."""
        strength = None if self.strength is None else self.strength.value
        return (self.title, self.kind, self.height, self.plate, self.pad, strength, self.surface)

    @property
    def widest(self) -> float:
        """The longest side of plate and pad, in metres; 0 where none is stated."""
        sides = (*self.plate, *(() if self.pad is None else self.pad[:2]))
        return max((side.value for side in sides if side is not None), default=0.0)


@dataclass(frozen=True, slots=True)
class BearingRow:
    """The bearings of the suspension points whose bearings are alike."""

    names: tuple[str, ...]
    bearings: tuple[Bearing, ...]


def bearing_rows(project: Project, drop: Drop, language: Language) -> tuple[BearingRow, ...]:
    """The bearings of the beams of a drop; points of which the same is stated share a row."""
    rows: dict[tuple[object, ...], tuple[list[str], tuple[Bearing, ...]]] = {}
    for point in section_points(project, drop, None):
        bearings = tuple(_bearings(project, point, language))
        key = tuple(one.alike for one in bearings)
        if bearings:
            rows.setdefault(key, ([], bearings))[0].append(point.point.id)
    return tuple(BearingRow(tuple(names), bearings) for names, bearings in rows.values())


def _bearings(project: Project, point: SectionPoint, language: Language) -> Iterator[Bearing]:
    support = point.point.counterweighted_beam
    if support is None:
        return
    yield _front(project, point, support, language)
    if support.rear_stand is not None or support.rear is not None:
        yield _rear(project, support, language)


def _front(
    project: Project, point: SectionPoint, support: CounterweightedBeam, language: Language
) -> Bearing:
    fulcrum, wall = support.fulcrum, point.edge.parapet
    surface = language.drawn("roof_surface")
    if fulcrum is None:
        surface = language.drawn("surface_not_stated")
    elif point.foot > 0.0 and wall is not None:
        surface = language.drawn("top_of_parapet")
    kind = None if fulcrum is None else fulcrum.kind
    return Bearing(
        language.drawn("bearing_front"),
        language.drawn("fulcrum_not_stated") if kind is None else language.word(kind).capitalize(),
        kind,
        known(None if fulcrum is None else fulcrum.height),
        kind is not FulcrumKind.PARAPET,
        (None, None)
        if fulcrum is None
        else (known(fulcrum.plate_length), known(fulcrum.plate_width)),
        None if fulcrum is None else _pad(fulcrum.pad),
        None if fulcrum is None else fulcrum.surface_strength,
        surface,
        support.beam,
        _depth(project, support),
        stated=fulcrum is not None,
    )


def _rear(project: Project, support: CounterweightedBeam, language: Language) -> Bearing:
    rear = support.rear
    return Bearing(
        language.drawn("bearing_rear"),
        language.drawn("stand_behind"),
        FulcrumKind.STAND,
        None,
        asks_height=False,
        plate=(None, None) if rear is None else (known(rear.plate_length), known(rear.plate_width)),
        pad=None if rear is None else _pad(rear.pad),
        strength=None if rear is None else rear.surface_strength,
        surface=language.drawn("roof_surface"),
        beam=support.beam,
        depth=_depth(project, support),
        stated=support.rear_stand is not None,
    )


def _pad(pad: Pad | None) -> tuple[Known | None, Known | None, Known | None] | None:
    return None if pad is None else (known(pad.length), known(pad.width), known(pad.thickness))


def _depth(project: Project, support: CounterweightedBeam) -> Known | None:
    beam = project.kit.beam(support.beam)
    section = None if beam is None else beam.section
    return known(None if section is None else section.section_depth)
