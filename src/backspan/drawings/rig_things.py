"""The things of a drop and its rig, as a drawing hands them on."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace

from backspan.core.findings import Finding, Review
from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop, Lifeline, SuspensionPoint, Tieback
from backspan.core.quantities import Style
from backspan.drawings.beams import BeamPicture, Place
from backspan.drawings.scene import Point
from backspan.drawings.things import Facts, Thing, ThingKind
from backspan.drawings.things_told import (
    NOT_KNOWN,
    force,
    known_length,
    length,
    lies_at,
    placed,
    told,
)
from backspan.drawings.values import answer_of

Path = tuple[str, ...]


@dataclass(frozen=True, slots=True)
class PointThings:
    """A suspension point and the parts of what it hangs from, as `picture` has them."""

    picture: BeamPicture
    point: Thing
    beam: Thing
    fulcrum: Thing
    rear: Thing
    stack: Thing

    def lying(self, at: Callable[[float], Point], units: Style) -> PointThings:
        """The same with their places in plan, where those are known.

        `at` is the point of the beam's line that is so far in from the face.
        """
        picture = self.picture
        stands = picture.fulcrum.known
        return replace(
            self,
            point=_lying(self.point, picture.line, at, units, stands=stands),
            fulcrum=_lying(self.fulcrum, picture.fulcrum, at, units, stands=stands),
            rear=_lying(self.rear, picture.rear_at, at, units, stands=stands),
            stack=_lying(self.stack, picture.centroid, at, units, stands=stands),
        )

    def alike(self, names: tuple[str, ...]) -> PointThings:
        """The same where one picture stands for several points."""
        if names == (names[0],):
            return self
        fact = ("alike", ", ".join(names))
        each = (self.point, self.beam, self.fulcrum, self.rear, self.stack)
        return PointThings(self.picture, *(_with(one, (fact,)) for one in each))


def drop_thing(drop: Drop, review: Review | None, units: Style, *, at: Point) -> Thing:
    """A drop with its answer; `at` is the middle of its stretch of the edge, in plan."""
    below = drop.clear_below
    facts: Facts = (
        *lies_at(at, units),
        *told("name", drop.name),
        *told("edge", drop.edge),
        *length("start", drop.start, units),
        *length("width", drop.width.value, units),
        *length("height", None if drop.height is None else drop.height.value, units),
        *length("clear_below", None if below is None else below.value, units),
    )
    if review is not None:
        facts += (
            *told("answer", review.verdict),
            *told("configuration", review.configuration),
            *told("reviewed", review.on.isoformat()),
        )
    return Thing(ThingKind.DROP, drop.id, ("drops", drop.id), facts)


def hung_thing(project: Project, drop: str, point: SuspensionPoint) -> Thing:
    """A suspension point alone, without what it hangs from."""
    path = _point_path(drop, point.id)
    facts = _hung(project, point)
    return Thing(ThingKind.SUSPENSION_POINT, f"{drop}/{point.id}", path, facts)


def point_things(
    project: Project,
    drop: str,
    point: SuspensionPoint,
    picture: BeamPicture,
    findings: tuple[Finding, ...],
) -> PointThings:
    """A suspension point of a drop, and the parts of its support as they are drawn."""
    name, path = f"{drop}/{point.id}", _point_path(drop, point.id)
    support, units = (*path, "counterweighted_beam"), project.units
    at = placed(known=picture.fulcrum.known)
    pieces = _pieces(point)
    hung = (
        *placed(known=picture.fulcrum.known and picture.line.known),
        *_hung(project, point),
        *known_length("reach", picture.reach, units),
        *known_length("backspan", picture.backspan, units),
        *pieces,
        *told("answer", answer_of(findings)),
    )
    lies = (
        *placed(known=picture.fulcrum.known and picture.tip.known and picture.tail.known),
        *told("beam", _beam_of(point)),
        *known_length("length", picture.length, units),
        *known_length("tip_beyond_line", picture.tip_beyond_line, units),
    )
    stands = (*at, *_kind_of_fulcrum(point), *known_length("setback", picture.setback, units))
    behind = (*at, *known_length("rear_stand", picture.rear, units))
    centroid = picture.centroid if picture.fulcrum.known and picture.centroid.known else None
    stack = (
        *placed(known=centroid is not None),
        *told("extent", None if picture.stack_known else NOT_KNOWN),
        *pieces,
        *length("centroid", None if centroid is None else centroid.x, units),
        *known_length("backspan", picture.backspan, units),
        *known_length("tail_gap", picture.tail_gap, units),
    )
    return PointThings(
        picture,
        Thing(ThingKind.SUSPENSION_POINT, name, path, hung),
        Thing(ThingKind.BEAM, name, support, lies),
        Thing(ThingKind.FULCRUM, name, (*support, "fulcrum"), stands),
        Thing(ThingKind.REAR_STAND, name, (*support, "rear"), behind),
        Thing(ThingKind.STACK, name, (*support, "stack"), stack),
    )


def tieback_thing(drop: str, point: str, tieback: Tieback) -> Thing:
    """A tieback of a suspension point."""
    facts = (
        *told("anchor", tieback.anchor),
        *told("ends_on", tieback.goes_to),
        *told("rope", tieback.rope),
    )
    path = (*_point_path(drop, point), "tiebacks", tieback.id)
    return Thing(ThingKind.TIEBACK, f"{drop}/{point}/{tieback.id}", path, facts)


def lifeline_thing(drop: str, line: Lifeline, units: Style) -> Thing:
    """A lifeline of a drop."""
    facts = (
        *placed(known=line.station is not None),
        *told("anchor", line.anchor),
        *told("rope", line.rope),
        *length("station", line.station, units),
    )
    path = ("drops", drop, "rig", "lifelines", line.id)
    return Thing(ThingKind.LIFELINE, f"{drop}/{line.id}", path, facts)


def _with(thing: Thing, more: Facts) -> Thing:
    return replace(thing, facts=(*thing.facts, *more))


def _lying(
    thing: Thing, place: Place | None, at: Callable[[float], Point], units: Style, *, stands: bool
) -> Thing:
    """The thing with its place, unless that, or where the beam stands, is not known."""
    if place is None or not (stands and place.known):
        return thing
    return replace(thing, facts=(*lies_at(at(place.x), units), *thing.facts))


def _point_path(drop: str, point: str) -> Path:
    return ("drops", drop, "rig", "suspension_points", point)


def _hung(project: Project, point: SuspensionPoint) -> Facts:
    hoist = project.kit.hoist(point.hoist)
    rated = None if hoist is None else hoist.rated_load.value
    other = None if point.other_support is None else point.other_support.kind
    return (
        *length("station", point.station, project.units),
        *told("hoist", point.hoist),
        *force("rated_load", rated, project.units),
        *told("rope", point.rope),
        *told("support", other),
    )


def _beam_of(point: SuspensionPoint) -> str | None:
    return None if point.counterweighted_beam is None else point.counterweighted_beam.beam


def _kind_of_fulcrum(point: SuspensionPoint) -> Facts:
    beam = point.counterweighted_beam
    return () if beam is None or beam.fulcrum is None else told("type", beam.fulcrum.kind)


def _pieces(point: SuspensionPoint) -> Facts:
    """How many pieces hold the tail down, group by group, and of which kind."""
    if point.counterweighted_beam is None:
        return ()
    groups = point.counterweighted_beam.stack.groups
    return (
        *told("pieces", " + ".join(str(group.count.value) for group in groups)),
        *told("piece", " + ".join(group.piece for group in groups)),
    )
