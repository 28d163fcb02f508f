"""The suspension points of a drop as a section shows them, and which of them look alike."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from backspan.core.findings import Review, Verdict
from backspan.core.model.project import Project
from backspan.core.model.rigs import (
    CounterweightedBeam,
    Drop,
    FulcrumKind,
    Stack,
    SuspensionPoint,
    Tieback,
    TiebackStart,
)
from backspan.core.model.site import Edge
from backspan.core.model.units import UnitKind
from backspan.core.words import Language
from backspan.drawings.beams import BeamPicture, Place, beam_picture
from backspan.drawings.canvas import Canvas
from backspan.drawings.edges import edge_of
from backspan.drawings.geometry import Box
from backspan.drawings.lettering import text_width, wrapped
from backspan.drawings.planned import planned_picture
from backspan.drawings.rig_things import PointThings, point_things
from backspan.drawings.scene import Point
from backspan.drawings.section_layout import SectionLayout
from backspan.drawings.tags import type_of
from backspan.drawings.values import answer_of, findings_on, no_answer

HEIGHT = 0.3
"""How far above roof or parapet a beam is drawn where its height is not stated, in metres."""

CLEAR_OF_LINE = 6.0
"""Paper between a text and what hangs right of it, in millimetres."""


@dataclass(frozen=True, slots=True)
class SectionPoint:
    """A suspension point as a section draws it: positions along the beam and its height."""

    point: SuspensionPoint
    edge: Edge
    picture: BeamPicture
    bearing: Place
    """Height of the beam above the roof surface."""
    foot: float
    """Height of what the fulcrum stands on: the roof, or the parapet when it is on that."""
    kind: FulcrumKind | None
    answer: Verdict | None
    no_answer: str
    """Which text of drawings says why there is no answer on tipping, where there is none."""
    types: tuple[str | None, ...]
    """Of hoist, rope, beam and stage: which things they are makes no difference to a picture."""
    stage: str | None
    """The stage that hangs from the point, by its tag or its type."""
    things: PointThings
    planned: BeamPicture | None = None
    """What the plan says, where that is not what was found."""

    @property
    def alike(self) -> tuple[object, ...]:
        """What makes two points look the same in section."""
        beam = self.point.counterweighted_beam
        stack = Stack() if beam is None else beam.stack
        fastening = None if stack.fastening is None else stack.fastening.value
        return (
            self.picture,
            self.bearing,
            self.kind,
            self.answer,
            self.types,
            self.planned,
            self.point.other_support,
            fastening,
            _joints(beam),
            tuple(_attached(one) for one in self.point.tied),
        )


@dataclass(frozen=True, slots=True)
class View:
    """The points that share one picture; lengths in metres from the face of the building."""

    points: tuple[SectionPoint, ...]

    @property
    def first(self) -> SectionPoint:
        """The point whose picture it is."""
        return self.points[0]

    @property
    def names(self) -> tuple[str, ...]:
        """The ids of its points."""
        return tuple(one.point.id for one in self.points)

    @property
    def things(self) -> PointThings:
        """What it shows: its first point and the parts of that, told to stand for the others."""
        return self.first.things.alike(self.names)

    @property
    def left(self) -> float:
        """The outermost thing drawn to scale."""
        return min(picture.left for picture in self._pictures)

    @property
    def width(self) -> float:
        """What is drawn to scale, from left to right."""
        wall = self.first.edge.parapet
        thick = 0.0 if wall is None else wall.thickness.value
        right = max(picture.right for picture in self._pictures)
        return max(right, thick + HEIGHT) - self.left

    @property
    def _pictures(self) -> tuple[BeamPicture, ...]:
        """The beam as it was found, and as it is planned where that differs."""
        planned = self.first.planned
        return (self.first.picture,) if planned is None else (self.first.picture, planned)

    @property
    def height(self) -> float:
        """What is drawn to scale above the roof surface."""
        wall = self.first.edge.parapet
        return max(self.first.bearing.x, 0.0 if wall is None else wall.height.value)


def _attached(tieback: Tieback) -> TiebackStart | None:
    return None if tieback.attached is None else tieback.attached.value


def _joints(beam: CounterweightedBeam | None) -> tuple[object, ...]:
    """What was stated of the joints of a beam, without who stated it."""
    if beam is None:
        return ()
    return tuple(
        tuple(
            None if stated is None else stated.value
            for stated in (one.from_tail, one.pins, one.order, one.marks)
        )
        for one in beam.joints
    )


def section_points(project: Project, drop: Drop, review: Review | None) -> tuple[SectionPoint, ...]:
    """The suspension points of a drop, in order along the edge."""
    edge = edge_of(project, drop)
    points = () if drop.rig is None else drop.rig.suspension_points
    return tuple(
        _section_point(project, drop, edge, point, review)
        for point in sorted(points, key=lambda point: point.station)
    )


def _section_point(
    project: Project, drop: Drop, edge: Edge, point: SuspensionPoint, review: Review | None
) -> SectionPoint:
    found = findings_on(review, point.id)
    beam = point.counterweighted_beam
    fulcrum = None if beam is None else beam.fulcrum
    stage = _stage(drop, point)
    picture = beam_picture(project, edge, point, found)
    named = (
        (UnitKind.HOIST, point.hoist),
        (UnitKind.ROPE, point.rope),
        (UnitKind.BEAM, None if beam is None else beam.beam),
        (UnitKind.STAGE, stage),
    )
    return SectionPoint(
        point,
        edge,
        picture,
        _bearing(edge, point),
        _foot(edge, point),
        None if fulcrum is None else fulcrum.kind,
        answer_of(found),
        no_answer(review),
        tuple(type_of(project.kit, kind, name) for kind, name in named),
        stage,
        point_things(project, drop.id, point, picture, found),
        planned_picture(project, edge, point, found),
    )


def _stage(drop: Drop, point: SuspensionPoint) -> str | None:
    hung = () if drop.rig is None else drop.rig.stages
    return next((one.stage for one in hung if point.id in one.from_points), None)


def _foot(edge: Edge, point: SuspensionPoint) -> float:
    beam = point.counterweighted_beam
    fulcrum = None if beam is None else beam.fulcrum
    if fulcrum is None or edge.parapet is None:
        return 0.0
    setback = None if fulcrum.setback is None else fulcrum.setback.value
    within = setback is not None and 0.0 <= setback <= edge.parapet.thickness.value
    on_parapet = within or fulcrum.kind is FulcrumKind.PARAPET
    return edge.parapet.height.value if on_parapet else 0.0


def _bearing(edge: Edge, point: SuspensionPoint) -> Place:
    """The height of a fulcrum is its own, from what it stands on to the beam."""
    beam = point.counterweighted_beam
    fulcrum = None if beam is None else beam.fulcrum
    foot = _foot(edge, point)
    if fulcrum is not None and fulcrum.height is not None:
        return Place(foot + fulcrum.height.value, known=True)
    if fulcrum is not None and fulcrum.kind is FulcrumKind.PARAPET and edge.parapet is not None:
        return Place(foot, known=True)
    wall = 0.0 if edge.parapet is None else edge.parapet.height.value
    return Place(wall + HEIGHT, known=False)


def views_of(points: Sequence[SectionPoint]) -> tuple[View, ...]:
    """Points that look alike share a view; the others have one each."""
    groups: list[list[SectionPoint]] = []
    for point in points:
        same = next((group for group in groups if group[0].alike == point.alike), None)
        if same is None:
            groups.append([point])
        else:
            same.append(point)
    return tuple(View(tuple(group)) for group in groups)


@dataclass(frozen=True, slots=True)
class Section:
    """A view on its canvas: lengths from the face and above the roof become drawing points."""

    canvas: Canvas
    project: Project
    drop: Drop
    view: View
    corner: Point
    cell: Box
    layout: SectionLayout

    def at(self, *, inward: float, above: float) -> Point:
        """The drawing point that is `inward` from the face and `above` the roof surface."""
        x, y = self.canvas.frame.to_drawing(self.corner)
        return (x + inward, y + above)

    @property
    def language(self) -> Language:
        """The language of its words."""
        return self.canvas.language

    def real(self, on_paper: float) -> float:
        """Metres that are `on_paper` millimetres long."""
        return self.canvas.frame.real(on_paper)

    @property
    def left_room(self) -> float:
        """Paper in millimetres for texts left of everything that is drawn to scale."""
        outermost = self.at(inward=self.view.left, above=0.0)
        return self.canvas.frame.to_paper(outermost)[0] - self.cell[0] - CLEAR_OF_LINE

    def beside_line(self, lines: Sequence[str]) -> tuple[str, ...]:
        """Texts that stand left of the line, broken where a narrow layout has no more room.

        A second figure in brackets is not torn apart.
        """
        if not self.layout.narrow:
            return tuple(lines)
        room = self.left_room
        broken: list[str] = []
        for words in lines:
            whole = text_width(words, height=self.canvas.text) <= room
            first, bracket, rest = words.partition(" [")
            for part in (words,) if whole or not bracket else (first, f"[{rest}"):
                broken += wrapped(part, room=room, height=self.canvas.text)
        return tuple(broken)
