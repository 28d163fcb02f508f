"""Acts on drops and what is rigged there: places, beams, lines."""

from __future__ import annotations

from dataclasses import dataclass, replace
from enum import StrEnum

from backspan.core.drafting.acting import (
    DraftError,
    Hand,
    drop_of,
    edge_of,
    new_id,
    one_of,
    point_of,
    rig_of,
    roof_of,
    with_drop,
    with_point,
    within_edge,
)
from backspan.core.model.beams import BeamFound
from backspan.core.model.in_place import Named, in_place
from backspan.core.model.project import Project
from backspan.core.model.rigs import (
    CounterweightedBeam,
    Drop,
    Fulcrum,
    FulcrumKind,
    Lifeline,
    Rig,
    SuspensionPoint,
    Tieback,
)
from backspan.core.quantities import LENGTH, Length, Style, display


class Measure(StrEnum):
    """What of a beam is drawn along it."""

    REACH = "reach"
    BACKSPAN = "backspan"
    SETBACK = "fulcrum behind the face"
    TIP = "beam beyond the line"
    REAR_STAND = "fulcrum to rear stand"


@dataclass(frozen=True, slots=True)
class PlaceDrop:
    """A drop over an edge: where it begins along it, and how wide it is."""

    drop: str
    roof: str
    edge: str
    start: Length
    width: Length

    def on(self, project: Project, hand: Hand) -> Project:
        """The site with one more drop."""
        new_id(project.drops, self.drop, "drop")
        _over(project, self.roof, self.edge, start=self.start, width=self.width, hand=hand)
        width = hand.stated(self.width)
        new = Drop(self.drop, self.roof, self.edge, self.start, width)
        return replace(project, drops=(*project.drops, new))

    def told(self, style: Style) -> str:
        """What it does."""
        start, width = (display(one, LENGTH, style) for one in (self.start, self.width))
        return f"drop {self.drop} placed at {start} along edge {self.edge}, {width} wide"


@dataclass(frozen=True, slots=True)
class MoveDrop:
    """A drop that begins elsewhere along its edge; what is rigged there stays where it stands."""

    drop: str
    start: Length

    def on(self, project: Project, hand: Hand) -> Project:
        """The site with it there."""
        drop = drop_of(project, self.drop)
        _over(project, drop.roof, drop.edge, start=self.start, width=drop.width.value, hand=hand)
        return with_drop(project, replace(drop, start=self.start))

    def told(self, style: Style) -> str:
        """What it does."""
        return f"drop {self.drop} moved to {display(self.start, LENGTH, style)} along its edge"


@dataclass(frozen=True, slots=True)
class PlacePoint:
    """A suspension point of a drop, with its hoist and its beam by their names in the kit."""

    drop: str
    point: str
    station: Length
    hoist: str
    beam: str

    def on(self, project: Project, hand: Hand) -> Project:
        """The site with it there; what nobody drew of its beam stays blank."""
        drop = drop_of(project, self.drop)
        rig = drop.rig or Rig()
        new_id(rig.suspension_points, self.point, "suspension point")
        hoists: tuple[Named, ...] = (*project.kit.hoists, *project.kit.units)
        beams: tuple[Named, ...] = (*project.kit.beams, *project.kit.units)
        one_of(hoists, self.hoist, "hoist")
        one_of(beams, self.beam, "beam")
        edge = edge_of(roof_of(project, drop.roof), drop.edge)
        within_edge(edge, self.station, f"point {self.point}", hand)
        beam = CounterweightedBeam(self.beam)
        new = SuspensionPoint(self.point, self.station, self.hoist, counterweighted_beam=beam)
        points = (*rig.suspension_points, new)
        return with_drop(project, replace(drop, rig=replace(rig, suspension_points=points)))

    def told(self, style: Style) -> str:
        """What it does."""
        return f"{self.drop}/{self.point} placed at {display(self.station, LENGTH, style)}"


@dataclass(frozen=True, slots=True)
class MovePoint:
    """A suspension point that stands elsewhere along the edge.

    What was looked at where it stood - bearings, softeners, the way of its tiebacks - is not known
    of its new place, and stays blank until somebody looks there.
    """

    drop: str
    point: str
    station: Length

    def on(self, project: Project, hand: Hand) -> Project:
        """The site with it there."""
        drop, rig = rig_of(project, self.drop)
        point = point_of(rig, self.point)
        edge = edge_of(roof_of(project, drop.roof), drop.edge)
        within_edge(edge, self.station, f"{drop.id}/{point.id}", hand)
        moved = replace(_unseen(point), station=self.station)
        return with_point(project, drop, rig, moved)

    def told(self, style: Style) -> str:
        """What it does."""
        station = display(self.station, LENGTH, style)
        return f"{self.drop}/{self.point} moved to {station} along the edge"


@dataclass(frozen=True, slots=True)
class MoveBeam:
    """A length of a beam: its reach, its backspan, where its fulcrum stands."""

    drop: str
    point: str
    measure: Measure
    length: Length

    def on(self, project: Project, hand: Hand) -> Project:
        """The site with that length."""
        drop, rig = rig_of(project, self.drop)
        point = point_of(rig, self.point)
        beam = point.counterweighted_beam
        if beam is None:
            raise DraftError(
                f"found {drop.id}/{point.id} without a counterweighted beam, expected one on it"
            )
        if not (self.length > 0.0 or (self.length == 0.0 and self.measure in _MAY_BE_NONE)):
            raise DraftError(
                f"found a {self.measure} of {hand.shown(self.length)}, expected more than 0"
            )
        moved = _with(beam, self.measure, self.length, hand)
        return with_point(project, drop, rig, replace(point, counterweighted_beam=moved))

    def told(self, style: Style) -> str:
        """What it does."""
        return f"{self.drop}/{self.point} {self.measure} {display(self.length, LENGTH, style)}"


@dataclass(frozen=True, slots=True)
class LeadTieback:
    """A tieback led to an anchor; one that is not there yet is there then.

    What was seen of it on its way to another anchor is nothing of this one.
    """

    drop: str
    point: str
    tieback: str
    anchor: str

    def on(self, project: Project, _hand: Hand) -> Project:
        """The site with it led there."""
        drop, rig = rig_of(project, self.drop)
        point = point_of(rig, self.point)
        _anchor_on(project, drop, self.anchor)
        known = any(one.id == self.tieback for one in point.tied)
        if known:
            was = one_of(point.tied, self.tieback, "tieback")
            ties = in_place(point.tied, replace(_bare(was), anchor=self.anchor, ends_on=None))
        else:
            of_rig = (one for each in rig.suspension_points for one in each.tied)
            name = new_id(of_rig, self.tieback, "tieback")
            ties = (*point.tied, Tieback(name, self.anchor))
        return with_point(project, drop, rig, replace(point, tiebacks=ties))

    def told(self, _style: Style) -> str:
        """What it does."""
        return f"tieback {self.tieback} of {self.drop}/{self.point} led to {self.anchor}"


@dataclass(frozen=True, slots=True)
class LeadLifeline:
    """A lifeline led from an anchor over the edge at a place along it; a new one is there then.

    What was seen of it on another way is nothing of this one.
    """

    drop: str
    lifeline: str
    anchor: str
    station: Length

    def on(self, project: Project, hand: Hand) -> Project:
        """The site with it led there."""
        drop, rig = rig_of(project, self.drop)
        _anchor_on(project, drop, self.anchor)
        edge = edge_of(roof_of(project, drop.roof), drop.edge)
        within_edge(edge, self.station, f"lifeline {self.lifeline}", hand)
        if any(one.id == self.lifeline for one in rig.lines):
            was = one_of(rig.lines, self.lifeline, "lifeline")
            led = replace(_loose(was), anchor=self.anchor, station=self.station)
            lines = in_place(rig.lines, led)
        else:
            name = new_id(rig.lines, self.lifeline, "lifeline")
            lines = (*rig.lines, Lifeline(name, self.anchor, station=self.station))
        return with_drop(project, replace(drop, rig=replace(rig, lifelines=lines)))

    def told(self, style: Style) -> str:
        """What it does."""
        station = display(self.station, LENGTH, style)
        return f"lifeline {self.lifeline} of {self.drop} led from {self.anchor} over {station}"


@dataclass(frozen=True, slots=True)
class CarryRig:
    """The rig of a drop set up at another: equipment comes along, all of the roof stays blank."""

    drop: str
    source: str

    def on(self, project: Project, hand: Hand) -> Project:
        """The site with the rig at its new drop, and none where it hung."""
        drop = drop_of(project, self.drop)
        source, _ = rig_of(project, self.source)
        if drop.rig is not None:
            raise DraftError(f"found drop {drop.id} with a rig, expected none there yet")
        if hand.carried is None:
            raise DraftError("found nobody to carry a rig, expected a workbench that can")
        rig = hand.carried(project, drop.id, source.id)
        return with_drop(with_drop(project, replace(drop, rig=rig)), replace(source, rig=None))

    def told(self, _style: Style) -> str:
        """What it does."""
        return f"rig of {self.source} carried to {self.drop}"


_MAY_BE_NONE = frozenset({Measure.SETBACK, Measure.TIP})


def _unseen(point: SuspensionPoint) -> SuspensionPoint:
    """A point without what was seen of the place where it stood; its equipment stays."""
    beam = point.counterweighted_beam
    if beam is not None:
        fulcrum, rear = beam.fulcrum, beam.rear
        beam = replace(
            beam,
            fulcrum=None if fulcrum is None else replace(fulcrum, surface_strength=None),
            rear=None if rear is None else replace(rear, surface_strength=None),
            found=BeamFound(),
        )
    ties = None if point.tiebacks is None else tuple(map(_bare, point.tiebacks))
    return replace(point, counterweighted_beam=beam, softener=None, tiebacks=ties)


def _bare(tie: Tieback) -> Tieback:
    """A tieback without what was seen of its way and its end."""
    return replace(tie, taut=None, route=None, angle=None, found=None, softener=None)


def _loose(line: Lifeline) -> Lifeline:
    """A lifeline without what was seen of its way and its ends; what its rider wears stays."""
    return replace(line, found=None, softener=None, tied_to=None, swing=None)


def _with(
    beam: CounterweightedBeam, measure: Measure, length: Length, hand: Hand
) -> CounterweightedBeam:
    """The beam with one of its lengths drawn."""
    match measure:
        case Measure.REACH:
            return replace(beam, reach=hand.stated(length, beam.reach))
        case Measure.BACKSPAN:
            return replace(beam, backspan=hand.stated(length, beam.backspan))
        case Measure.TIP:
            return replace(beam, tip_beyond_line=hand.stated(length, beam.tip_beyond_line))
        case Measure.REAR_STAND:
            return replace(beam, rear_stand=hand.stated(length, beam.rear_stand))
        case Measure.SETBACK:
            bearing = beam.fulcrum or Fulcrum(FulcrumKind.STAND)
            setback = hand.stated(length, bearing.setback)
            return replace(beam, fulcrum=replace(bearing, setback=setback))


def _over(
    project: Project, roof: str, edge: str, *, start: Length, width: Length, hand: Hand
) -> None:
    """Raise DraftError where a drop does not lie over its edge."""
    if not width > 0.0:
        raise DraftError(f"found a drop {hand.shown(width)} wide, expected more than 0")
    of = edge_of(roof_of(project, roof), edge)
    within_edge(of, start, "the beginning of a drop", hand)
    within_edge(of, start + width, "the end of a drop", hand)


def _anchor_on(project: Project, drop: Drop, name: str) -> None:
    """Raise DraftError where no roof has that anchor."""
    roofs = sorted(project.site.roofs, key=lambda one: one.id != drop.roof)
    one_of((one for roof in roofs for one in roof.anchors), name, "anchor")
