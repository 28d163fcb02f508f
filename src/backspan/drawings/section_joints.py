"""The joints between the sections of a beam: a mark across it, with what was seen of each."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from backspan.core.model.beams import BeamSplice, Joined
from backspan.core.model.project import Project
from backspan.core.model.rigs import CounterweightedBeam
from backspan.core.words import Language
from backspan.drawings.beams import Place
from backspan.drawings.canvas import Rank
from backspan.drawings.scene import Layer, Line, Point
from backspan.drawings.section_points import Section, View
from backspan.drawings.spots import Spot
from backspan.drawings.stated_by import seen_by
from backspan.drawings.values import Known, known, length_text

HALF = 2.6
"""How far a mark reaches above and below its beam, in millimetres."""

APART = 0.7
"""How far the two lines of a mark stand from the joint, in millimetres."""


@dataclass(frozen=True, slots=True)
class Joint:
    """A joint with its place along the beam, and its distance from the tail where stated."""

    splice: BeamSplice
    at: Place
    from_tail: Known | None


def most_joints(views: Sequence[View]) -> int:
    """How many joints the beam has that has most of them."""
    beams = [view.first.point.counterweighted_beam for view in views]
    return max((len(beam.joints) for beam in beams if beam is not None), default=0)


def joints_of(section: Section) -> tuple[Joint, ...]:
    """The joints that somebody stated, each at its distance from the tail.

    One without a distance, or that would lie off the beam, is shown somewhere on it, as not known.
    """
    support = section.view.first.point.counterweighted_beam
    return () if support is None else tuple(_placed(section, support))


def _placed(section: Section, support: CounterweightedBeam) -> Iterator[Joint]:
    picture = section.view.first.picture
    tip, tail = picture.tip.x, picture.tail.x
    for place, splice in enumerate(support.joints, 1):
        from_tail = known(splice.from_tail)
        somewhere = tail - (tail - tip) * place / (len(support.joints) + 1)
        at = Place(somewhere, known=False)
        if from_tail is not None and tip < tail - from_tail.value:
            at = Place(tail - from_tail.value, picture.tail.known)
        yield Joint(splice, at, from_tail)


def draw_joints(section: Section, support: CounterweightedBeam) -> None:
    """A mark for each joint and its name; of a beam of sections without any, that.

    What was seen of a joint stands beside the drawing: see `joint_notes`.
    """
    joints = joints_of(section)
    above = section.view.first.bearing.x
    for joint in joints:
        for side in (-1.0, 1.0):
            x = joint.at.x + side * section.real(APART)
            low, high = (
                section.at(inward=x, above=above + up * section.real(HALF)) for up in (-1.0, 1.0)
            )
            section.canvas.add(Line(Layer.JOINT if joint.at.known else Layer.NOT_KNOWN, low, high))
        _write(section, _name(section, joint), inward=joint.at.x)
    if not joints and _of_sections(support):
        picture = section.view.first.picture
        words = section.language.drawn("joints_not_stated")
        _write(section, words, inward=(picture.fulcrum.x + picture.tail.x) / 2)


def _of_sections(support: CounterweightedBeam) -> bool:
    return support.joined is not None and support.joined.value is Joined.SECTIONS


def _write(section: Section, words: str, *, inward: float) -> None:
    target = section.at(inward=inward, above=section.view.first.bearing.x)
    spots = _spots(section, target)
    section.canvas.later((words,), target, spots=spots, rank=Rank.PLACE)


def _name(section: Section, joint: Joint) -> str:
    name, language = joint.splice.id, section.language
    if joint.from_tail is not None:
        return language.drawn("joint", joint=name)
    from_tail = language.drawn("joint_from_tail", joint=name)
    return language.drawn("length_not_measured", name=from_tail)


def _spots(section: Section, target: Point) -> Iterator[Spot]:
    """Above or below the beam, close to the mark first."""
    x, y = section.canvas.frame.to_paper(target)
    for away in (HALF, HALF + 3.0, HALF + 7.0, HALF + 11.0):
        for up in (-1, 1):
            end = (x, y + up * HALF)
            for across, side in ((-1.0, -1), (1.0, 1), (0.0, 0), (-9.0, -1), (9.0, 1)):
                cost = (away - HALF) / 3 + abs(across) / 4 + (up > 0) / 2
                yield Spot((x + across, y + up * away), side, up, cost, points_at=end)


def joint_notes(project: Project, views: Sequence[View], language: Language) -> tuple[str, ...]:
    """What was seen of each joint and who saw it; joints of which the same is told share one."""
    told: dict[tuple[str, str], list[str]] = {}
    for view in views:
        for one in view.points:
            beam = one.point.counterweighted_beam
            for splice in () if beam is None else beam.joints:
                key = (splice.id, _seen(project, splice, language))
                told.setdefault(key, []).append(one.point.id)
    return tuple(
        f"{language.drawn('joint_of', joint=joint, points=', '.join(points))}: {words}"
        for (joint, words), points in told.items()
    )


def _seen(project: Project, splice: BeamSplice, language: Language) -> str:
    """Its distance, its pins, its marks and their order, and who saw them."""
    away = known(splice.from_tail)
    distance = (
        language.drawn("distance_not_measured")
        if away is None
        else language.drawn("from_tail", length=length_text(away.value, project.units))
    )
    seen = (splice.pins, splice.marks, splice.order)
    pins, marks, order = (
        language.drawn("not_stated") if one is None else language.word(one.value) for one in seen
    )
    words = (
        language.drawn("joint_pins", pins=pins),
        language.drawn("joint_marks", marks=marks),
        language.drawn("joint_order", order=order),
        seen_by(project, seen, language),
    )
    return "; ".join((distance, *words)) + "."
