"""Joints between the sections of a beam, and softeners, as a section shows them."""

from __future__ import annotations

import io
from dataclasses import replace

import pytest
from ezdxf.filemanagement import read

from backspan.core.model.beams import BeamSplice, Joined, SpliceMarks, SplicePins
from backspan.core.model.evidence import StatedValue
from backspan.core.model.rigs import CounterweightedBeam, Found, Tieback
from backspan.core.model.seen import Route
from backspan.drawings import Scene, drop_section, section_figure, to_dxf
from backspan.drawings.scene import Layer, Polyline
from tests.unit.core.rigs import length, put
from tests.unit.drawings.inspection import (
    dimensions_of,
    lines_on,
    overlapping,
    said_on,
    through_texts,
)
from tests.unit.drawings.sample import beam_support, drop, lifeline, metres, point, project


def joint(name: str, from_tail: str | None = "9 ft", **seen: StatedValue[object]) -> BeamSplice:
    """A joint so far from the tail, of which nothing else is stated but what is given."""
    known = {"from_tail": None if from_tail is None else length(from_tail), **seen}
    return BeamSplice(name, **known)  # type: ignore[arg-type]


def seen(value: object, by: str | None = "J. Doe") -> StatedValue[object]:
    """What somebody saw, on a day."""
    return StatedValue(value, by=by, at="2026-11-20T09:00")


def joined(*joints: BeamSplice) -> CounterweightedBeam:
    """The rig's left beam with these joints."""
    return replace(beam_support(), splices=joints)


def section_of(support: CounterweightedBeam) -> Scene:
    """The section of a drop with one suspension point on this support."""
    one = drop("D1", "N", "4 ft", (point("P", "6 ft", "A1", support),))
    return drop_section(replace(project(), drops=(one,)), "D1", None)


def tail_of(scene: Scene) -> float:
    """Where the beam ends behind."""
    beams = lines_on(scene, Layer.BEAM) + lines_on(scene, Layer.NOT_KNOWN)
    level = [line for line in beams if line.start[1] == line.end[1]]
    return max(line.end[0] for line in level)


def test_a_joint_is_marked_across_the_beam_at_its_distance_with_its_dimension() -> None:
    scene = section_of(joined(joint("J1")))
    one, other = lines_on(scene, Layer.JOINT)
    assert one.start[0] == one.end[0]
    middle = (one.start[0] + other.start[0]) / 2
    assert tail_of(scene) - middle == pytest.approx(metres("9 ft"))
    (words,) = [
        text for text in dimensions_of(scene) if text.startswith("Joint J1 from tail 9'-0\"")
    ]
    drawn = dimensions_of(scene)[words]
    assert drawn.end[0] - drawn.start[0] == pytest.approx(metres("9 ft"))


def test_what_was_seen_of_a_joint_is_told_with_who_saw_it() -> None:
    pins, marks = seen(SplicePins.ONE_MISSING), seen(SpliceMarks.OTHER_SET)
    said = said_on(section_of(joined(joint("J1", pins=pins, marks=marks))))
    assert "Joint J1 of P: 9'-0\" [2,743 mm] from the tail; pins one missing" in said
    assert "marks: marks of another set; sections: not stated; seen by J. Doe, 2026-11-20." in said
    assert "who saw it: not stated" in said_on(section_of(joined(joint("J1"))))


def test_a_joint_whose_distance_nobody_measured_is_dashed_and_has_no_dimension() -> None:
    scene = section_of(joined(joint("J1", None)))
    assert lines_on(scene, Layer.JOINT) == []
    upright = [line for line in lines_on(scene, Layer.NOT_KNOWN) if line.start[0] == line.end[0]]
    assert len(upright) == 2
    assert not [text for text in dimensions_of(scene) if "Joint" in text]
    assert "Joint J1 from tail not measured" in said_on(scene)
    assert "distance from the tail not measured" in said_on(scene)


def test_a_joint_on_a_beam_of_unknown_length_is_dashed() -> None:
    support = replace(joined(joint("J1")), beam="BX")
    assert lines_on(section_of(support), Layer.JOINT) == []


def test_several_joints_have_a_row_each() -> None:
    scene = section_of(joined(joint("J1", "5 ft"), joint("J2", "10 ft")))
    rows = {
        one.line_through[1] for text, one in dimensions_of(scene).items() if "from tail" in text
    }
    assert len(lines_on(scene, Layer.JOINT)) == 4
    assert len(rows) == 2
    assert overlapping(scene) == []
    assert through_texts(scene) == []


def test_a_beam_of_sections_without_a_joint_says_so_and_one_piece_does_not() -> None:
    of_sections = replace(joined(), joined=StatedValue(Joined.SECTIONS))
    whole = replace(joined(), joined=StatedValue(Joined.ONE_PIECE))
    assert "joints not stated" in said_on(section_of(of_sections))
    assert "Join" not in said_on(section_of(whole))


def test_a_figure_marks_and_names_the_joint() -> None:
    one = drop("D1", "N", "4 ft", (point("P", "6 ft", "A1", joined(joint("J1"))),))
    scene = section_figure(replace(project(), drops=(one,)), "D1", None)
    assert len(lines_on(scene, Layer.JOINT)) == 2
    assert "Joint J1" in said_on(scene)


def test_a_joint_in_a_drawing_file_lies_where_it_was_stated() -> None:
    scene = section_of(joined(joint("J1")))
    marks = (
        read(io.StringIO(to_dxf(scene).decode()))
        .modelspace()
        .query(f'LINE[layer=="{Layer.JOINT}"]')
    )
    middle = sum(mark.dxf.start.x for mark in marks) / 2
    inches = metres("1 in")
    assert tail_of(scene) / inches - middle == pytest.approx(108.0)


def sleeves(scene: Scene, layer: Layer) -> list[Polyline]:
    """The softeners of a scene."""
    return [one for one in scene.drawing if isinstance(one, Polyline) and one.layer is layer]


def with_softener(found: Found | None) -> Scene:
    """A drop with one lifeline over its edge."""
    state = None if found is None else StatedValue(found)
    line = replace(lifeline("LL1", "A1", "11 ft"), softener=state)
    one = drop("D1", "N", "4 ft", (point("P", "6 ft", "A1", joined()),), (line,))
    return drop_section(replace(project(), drops=(one,)), "D1", None)


@pytest.mark.parametrize(
    ("found", "layer", "words"),
    [
        (Found.SOUND, Layer.SOFTENER, "there and sound"),
        (Found.DEFECTIVE, Layer.SOFTENER, "defective"),
        (None, Layer.NOT_KNOWN, "not stated"),
    ],
)
def test_a_softener_is_a_sleeve_at_the_edge_dashed_when_nobody_saw_it(
    found: Found | None, layer: Layer, words: str
) -> None:
    scene = with_softener(found)
    three = [one for one in sleeves(scene, layer) if len(one.points) == 3]
    assert len(three) == 1
    assert f"Softener of LL1: {words}." in said_on(scene)


@pytest.mark.parametrize("found", [Found.ABSENT, Found.NONE_NEEDED])
def test_a_softener_that_is_not_there_is_told_and_not_drawn(found: Found) -> None:
    scene = with_softener(found)
    assert sleeves(scene, Layer.SOFTENER) == []
    assert f"Softener of LL1: {found}." in said_on(scene)


def test_a_tieback_has_a_softener_only_where_somebody_says_it_passes_an_edge() -> None:
    for route, drawn in ((Route.OVER_AN_EDGE, 1), (Route.STRAIGHT, 0)):
        tie = Tieback("TB", anchor="A1", route=StatedValue(route))
        one = replace(point("P", "6 ft", "A1", joined()), tiebacks=(tie,))
        only = drop("D1", "N", "4 ft", (one,))
        scene = drop_section(replace(project(), drops=(only,)), "D1", None)
        flat = [one for one in sleeves(scene, Layer.NOT_KNOWN) if len(one.points) == 2]
        assert len(flat) == drawn


def test_the_rear_dimension_of_the_beam_stands_above_that_of_its_joint() -> None:
    found = dimensions_of(section_of(put(joined(joint("J1")), ("rear_stand",), None)))
    beam = next(one for text, one in found.items() if text.startswith("Beam"))
    of_joint = next(one for text, one in found.items() if "from tail" in text)
    assert beam.line_through[1] > of_joint.line_through[1]
