"""Where the parts of a counterweighted beam lie along its own line, and which of that is known.

Positions run inwards from the outer face of the edge. What is not stated gets a place on the
paper all the same, so that the sheet shows the rig; it is marked as not known and drawn dashed.
"""

from __future__ import annotations

from dataclasses import dataclass

from backspan.core.findings import Finding
from backspan.core.model.kit import Beam, Piece
from backspan.core.model.project import Project
from backspan.core.model.rigs import BackspanFrom, CounterweightedBeam, PieceGroup, SuspensionPoint
from backspan.core.model.site import Edge
from backspan.drawings.values import Known, known, worked_out

# Nominal lengths for the dashed picture of what nobody stated; no answer uses them.
SETBACK = 0.6
OUTSIDE = 0.45
REACH = 0.6
TIP = 0.15
BEHIND = 0.6
BACKSPAN = 3.0
STACK = 0.5


@dataclass(frozen=True, slots=True)
class Place:
    """A position along the beam's line, and whether it is known."""

    x: float
    known: bool


@dataclass(frozen=True, slots=True)
class StackedGroup:
    """One group of pieces on the beam, from its inner to its outer end."""

    inner: float
    outer: float
    count: int
    piece: Piece | None


@dataclass(frozen=True, slots=True)
class BeamPicture:
    """All positions of one support, with the lengths that lead to them."""

    line: Place
    fulcrum: Place
    tip: Place
    tail: Place
    centroid: Place
    groups: tuple[StackedGroup, ...]
    stack_known: bool
    setback: Known | None
    reach: Known | None
    backspan: Known | None
    length: Known | None
    tip_beyond_line: Known | None
    tail_gap: Known | None
    rear: Known | None = None

    @property
    def rear_at(self) -> Place | None:
        """Where what carries the beam behind stands; None where nobody stated it."""
        if self.rear is None:
            return None
        return Place(self.fulcrum.x + self.rear.value, self.fulcrum.known)

    @property
    def left(self) -> float:
        """The outermost position."""
        ends = [group.inner for group in self.groups]
        return min(self.tip.x, self.line.x, 0.0, *ends)

    @property
    def right(self) -> float:
        """The innermost position."""
        ends = [group.outer for group in self.groups]
        if self.rear_at is not None:
            ends.append(self.rear_at.x)
        return max(self.tail.x, self.centroid.x, self.fulcrum.x, *ends)


def beam_picture(
    project: Project, edge: Edge, point: SuspensionPoint, findings: tuple[Finding, ...]
) -> BeamPicture:
    """Where the parts of the support of a suspension point lie."""
    support = point.counterweighted_beam or CounterweightedBeam(beam="")
    beam = beam_named(project, support.beam)
    setback = known(None if support.fulcrum is None else support.fulcrum.setback)
    other = None if point.other_support is None else point.other_support.reach
    reach = known(support.reach or other)
    tip_gap = known(support.tip_beyond_line)
    length = known(None if beam is None else beam.length)
    backspan = _backspan(support, findings)
    fulcrum = _fulcrum(edge, point, setback, reach)
    line = Place(fulcrum.x - (reach.value if reach else REACH), reach is not None)
    tip = Place(line.x - (tip_gap.value if tip_gap else TIP), line.known and tip_gap is not None)
    centroid = Place(fulcrum.x + (backspan.value if backspan else BACKSPAN), backspan is not None)
    tail = Place(centroid.x + BEHIND, known=False)
    if length is not None:
        tail = Place(tip.x + length.value, tip.known)
        if backspan is None:
            centroid = Place(max(tail.x - BEHIND, fulcrum.x), known=False)
    if point.counterweighted_beam is None:
        centroid = tail = Place(fulcrum.x, known=False)
    tail_gap = known(support.stack.tail_gap)
    groups, sure = _groups(project, support, tail, centroid)
    return BeamPicture(
        line,
        fulcrum,
        tip,
        tail,
        centroid,
        groups,
        sure,
        setback=setback,
        reach=reach,
        backspan=backspan,
        length=length,
        tip_beyond_line=tip_gap,
        tail_gap=tail_gap,
        rear=known(support.rear_stand),
    )


def _fulcrum(
    edge: Edge, point: SuspensionPoint, setback: Known | None, reach: Known | None
) -> Place:
    """The stated setback; else a place that lets the line hang outside the face."""
    if setback is not None:
        return Place(setback.value, known=True)
    if point.counterweighted_beam is None:
        return Place(0.0, known=False)
    wall = 0.0 if edge.parapet is None else edge.parapet.thickness.value
    outside = wall + SETBACK if reach is None else reach.value - OUTSIDE
    return Place(max(min(wall + SETBACK, outside), 0.0), known=False)


def _backspan(support: CounterweightedBeam, findings: tuple[Finding, ...]) -> Known | None:
    if support.backspan_from is BackspanFrom.STACK:
        return worked_out(findings, "backspan")
    return known(support.backspan) or worked_out(findings, "backspan")


def _groups(
    project: Project, support: CounterweightedBeam, tail: Place, centroid: Place
) -> tuple[tuple[StackedGroup, ...], bool]:
    """The groups from the tail inwards, and whether their ends are known."""
    stated = [group for group in support.stack.groups if group.count.value > 0]
    lengths = [group_length(project, group) for group in stated]
    gap = support.stack.tail_gap
    sure = tail.known and gap is not None and all(length is not None for length in lengths)
    drawn = [STACK if length is None else length for length in lengths]
    outer = centroid.x + sum(drawn) / 2
    if gap is not None and tail.known:
        outer = tail.x - gap.value
    groups = []
    for group, length in zip(stated, drawn, strict=True):
        piece = piece_named(project, group.piece)
        groups.append(StackedGroup(outer - length, outer, group.count.value, piece))
        outer -= length
    return tuple(groups), sure


def group_length(project: Project, group: PieceGroup) -> float | None:
    """Length of beam a group stands on: its rows, the last of them full or not."""
    piece = piece_named(project, group.piece)
    if piece is None or piece.length_on_beam is None:
        return None
    rows = -(-group.count.value // max(group.per_row, 1))
    return rows * piece.length_on_beam.value


def beam_named(project: Project, name: str) -> Beam | None:
    """The beam of that id; None where there is none."""
    return project.kit.beam(name)


def piece_named(project: Project, name: str) -> Piece | None:
    """The piece of that id; None where there is none."""
    return project.kit.piece(name)
