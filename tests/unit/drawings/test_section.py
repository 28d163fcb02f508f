from collections.abc import Sequence
from dataclasses import replace

import pytest

from backspan.core.findings import SHORTER_BACKSPAN, BasisLine, Message, Verdict
from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.model.rigs import (
    CounterweightedBeam,
    FulcrumKind,
    PieceGroup,
    Stack,
)
from backspan.core.quantities import LENGTH, Amount
from backspan.drawings import DrawingError, Scene, drop_section
from backspan.drawings.paper import frame_of
from backspan.drawings.scene import Hatch, Layer, Line, Polygon, SymbolName
from tests.unit.core.rigs import put, without_stall
from tests.unit.drawings.inspection import (
    dimensions_of,
    lines_on,
    overlapping,
    said_on,
    scene_named,
    symbols_of,
    words_of,
)
from tests.unit.drawings.sample import GROUP, beam_support, drop, metres, point, project
from tests.unit.drawings.sample_reviews import finding, review_of


def section_of(*supports: CounterweightedBeam) -> Scene:
    """The section of a drop with a suspension point on each support."""
    points = tuple(
        point(f"P{place}", f"{5 + place} ft", "A1", support)
        for place, support in enumerate(supports)
    )
    one = replace(project(), drops=(drop("D1", "N", "4 ft", points),))
    return drop_section(one, "D1", None)


def spread(lines: Sequence[Line]) -> float:
    """From the outermost to the innermost end of lines."""
    ends = [end[0] for line in lines for end in (line.start, line.end)]
    return max(ends) - min(ends)


def test_an_unknown_drop_is_refused_by_name() -> None:
    with pytest.raises(DrawingError, match=r"no drop 'X'; its drops: N-01, N-02"):
        drop_section(project(), "X", None)


def test_an_unknown_edge_is_refused_by_name() -> None:
    lost = replace(project(), drops=(drop("D1", "NE", "4 ft", ()),))
    with pytest.raises(DrawingError, match=r"no edge 'NE'; its edges: W, N"):
        drop_section(lost, "D1", None)


def test_points_that_are_alike_share_a_view() -> None:
    assert "Suspension points SP1 and SP2, alike" in words_of(scene_named("N-01"))
    assert {"Suspension point SP1", "Suspension point SP2"} <= words_of(scene_named("N-02"))


@pytest.mark.parametrize("tip", ["6 in", "9 in"])
def test_the_beam_is_drawn_to_scale_between_tip_and_tail(tip: str) -> None:
    scene = section_of(beam_support(tip=tip))
    assert scene.scale is not None
    assert scene.scale.text == '3/8" = 1\'-0"'
    assert spread(lines_on(scene, Layer.BEAM)) == pytest.approx(metres("18 ft"))


@pytest.mark.parametrize(
    ("name", "text", "size"),
    [
        ("N-01", "Reach 2'-0\" [610 mm]", "2 ft"),
        ("N-01", 'Backspan 10\'-0" [3,048 mm], measured ±1/2"', "10 ft"),
        ("N-01", "Beam B-1, type B: 18'-0\" [5,486 mm], measured", "18 ft"),
        ("N-01", 'Tip beyond line 6" [152 mm]', "6 in"),
        ("N-01", "Tail gap 3'-6\" [1,067 mm]", "3'-6\""),
        ("N-01", "Setback 1'-6\" [457 mm]", "18 in"),
        ("N-02", "Reach 3'-0\" [914 mm]", "3 ft"),
        ("N-02", "Backspan 10'-11 1/4\" [3,334 mm]", "10'-11 1/4\""),
        ("N-02", "Tail gap 1'-0 3/4\" [324 mm]", "1'-0 3/4\""),
    ],
)
def test_every_dimension_is_as_long_as_it_says(name: str, text: str, size: str) -> None:
    found = dimensions_of(scene_named(name))[text]
    assert abs(found.end[0] - found.start[0]) == pytest.approx(metres(size))


def test_tolerance_and_evidence_stand_beside_the_value() -> None:
    assert 'measured ±1/4"' in words_of(scene_named("N-01"))


@pytest.mark.parametrize(("pieces", "per_row"), [(16, 1), (32, 2)])
def test_the_stack_stands_from_the_tail_gap_inwards_with_its_centroid_marked(
    pieces: int, per_row: int
) -> None:
    scene = section_of(put(beam_support(pieces=pieces), (*GROUP, "per_row"), per_row))
    (stack,) = [
        one
        for one in scene.drawing
        if isinstance(one, Polygon) and one.layer is Layer.COUNTERWEIGHT
    ]
    tail = max(end for line in lines_on(scene, Layer.BEAM) for end in (line.start[0], line.end[0]))
    xs = [x for x, _ in stack.points]
    assert tail - max(xs) == pytest.approx(metres("3'-6\""))
    assert max(xs) - min(xs) == pytest.approx(16 * metres("3 in"))
    (centroid,) = symbols_of(scene, SymbolName.CENTROID)
    assert centroid.at[0] == pytest.approx((max(xs) + min(xs)) / 2)
    assert f"{pieces} pieces of 55 lb [24.9 kg], plate" in words_of(scene)


def test_the_parapet_is_as_high_and_thick_as_stated() -> None:
    (wall,) = [
        one
        for one in scene_named("N-01").drawing
        if isinstance(one, Polygon) and one.layer is Layer.PARAPET
    ]
    (left, bottom), (right, _), (_, top), _ = wall.points
    assert right - left == pytest.approx(metres("5 in"))
    assert top - bottom == pytest.approx(metres("42 in"))


@pytest.mark.parametrize(("reach", "outside"), [("2 ft", "6 in"), ("3 ft", "18 in")])
def test_the_line_hangs_outside_with_hoist_and_rated_load(reach: str, outside: str) -> None:
    scene = section_of(beam_support(reach=reach))
    face = min(one.start[0] for one in lines_on(scene, Layer.EXISTING))
    hung = lines_on(scene, Layer.SUSPENSION)
    assert face - hung[0].start[0] == pytest.approx(metres(outside))
    assert {"rated load 1,000 lb [4.45 kN]", "stall load 2,500 lb [11.1 kN]"} <= words_of(scene)


def test_a_stall_load_that_is_not_stated_is_said() -> None:
    words = words_of(drop_section(without_stall(project()), "N-01", None))
    assert {"rated load 1,000 lb [4.45 kN]", "stall load not stated"} <= words


def test_what_nobody_measured_is_dashed_said_and_not_dimensioned() -> None:
    scene = scene_named("N-03")
    words = words_of(scene)
    assert {
        "Reach not measured",
        "Beam BX: length not measured",
        "length of the stack not measured",
        "held: not stated",
    } <= words
    assert "Setback not measured: place on the roof not known" in words
    assert not [
        text for text in dimensions_of(scene) if text.startswith(("Reach", "Beam", "Setback"))
    ]
    assert lines_on(scene, Layer.BEAM) == []
    assert not [
        one for one in scene.drawing if isinstance(one, Hatch) and one.layer is Layer.COUNTERWEIGHT
    ]
    assert "its place here means nothing" in said_on(scene)


def test_a_backspan_worked_out_is_taken_from_the_finding_and_says_so() -> None:
    assert "worked out, not measured" in said_on(scene_named("N-02"))
    without = drop_section(project(), "N-02", None)
    assert "Backspan not measured" in words_of(without)


def test_another_kind_of_support_is_named_and_not_judged() -> None:
    words = words_of(scene_named("N-03"))
    assert {
        "Parapet clamp",
        "not judged by this program",
        "reach 1'-2\" [356 mm]",
        "paper: not stated",
    } <= words


def test_no_support_and_no_rig_are_said() -> None:
    nothing = replace(
        point("P", "6 ft", None), hoist="H9", rope=None, counterweighted_beam=None, tiebacks=None
    )
    bare = replace(project(), drops=(drop("D1", "N", "4 ft", (nothing,)),))
    assert "Support not stated" in words_of(drop_section(bare, "D1", None))
    assert "hoist not stated" in words_of(drop_section(bare, "D1", None))
    assert "No rig is stated for this drop." in words_of(scene_named("E-01"))


def test_the_answer_stands_in_the_title_block_and_beside_each_view() -> None:
    scene = scene_named("N-02")
    words = words_of(scene)
    assert {"FAIL", "at least one check is not met", "fail", "pass"} <= words
    assert "7K3M-9QXT-B" in words
    assert "2026-11-25" in words
    assert "Counterweight against tipping" in words


def test_without_a_review_the_sheet_says_so() -> None:
    assert "not reviewed" in words_of(drop_section(project(), "N-01", None))


def test_a_point_without_a_finding_is_not_called_unreviewed() -> None:
    assert "no finding" in words_of(scene_named("N-03"))
    assert "not reviewed" in words_of(drop_section(project(), "N-03", None))


def test_a_point_has_the_worst_answer_of_any_check_on_it() -> None:
    """A drawing knows no check by name: what fails there is told, whatever it is about."""
    held = finding("N-01", "SP1", Verdict.PASS)
    other = replace(held, check="stall-cap", verdict=Verdict.FAIL)
    scene = drop_section(project(), "N-01", review_of("N-01", Verdict.FAIL, (held, other)))
    assert len(symbols_of(scene, SymbolName.FAIL)) == 1


def test_the_worst_answer_over_several_rule_sets_is_shown() -> None:
    found = tuple(finding("N-01", "SP1", verdict) for verdict in (Verdict.PASS, Verdict.FAIL))
    scene = drop_section(project(), "N-01", review_of("N-01", Verdict.FAIL, found))
    assert len(symbols_of(scene, SymbolName.FAIL)) == 1


@pytest.mark.parametrize(
    "support",
    [
        beam_support(
            reach="12'-0\"", backspan="3'-10 1/2\"", setback="10'-0\"", pieces=15, gap='6"'
        ),
        beam_support(reach='3"', backspan="16'-0\"", setback='1"', tip=None, gap=None),
        beam_support(height='2"', setback="3'-0\""),
        beam_support(kind=FulcrumKind.STAND),
        beam_support(kind=FulcrumKind.PARAPET, height=None, setback='6"'),
        beam_support(kind=FulcrumKind.TOWER, height="20'-0\""),
        beam_support(height="0 in"),
        beam_support(pieces=0),
        beam_support(reach=None, backspan=None, setback=None, height=None, tip=None, gap=None),
        CounterweightedBeam(beam="gone", stack=Stack((PieceGroup("gone", StatedValue(1)),))),
    ],
)
def test_any_rig_fits_its_sheet_without_overlap(support: CounterweightedBeam) -> None:
    scene = section_of(support)
    assert overlapping(scene) == []


@pytest.mark.parametrize("count", [3, 4, 6, 9])
def test_many_points_share_the_sheet(count: int) -> None:
    scene = section_of(*(beam_support(pieces=10 + place) for place in range(count)))
    assert overlapping(scene) == []
    titles = [words for words in words_of(scene) if words.startswith("Suspension point P")]
    assert len(titles) == min(count, 4)
    assert ("Not drawn" in said_on(scene)) == (count > 4)


def test_a_fulcrum_within_the_parapet_stands_on_it() -> None:
    scene = section_of(beam_support(setback='3"', height='6"'))
    (fulcrum,) = symbols_of(scene, SymbolName.FULCRUM)
    walls = [
        one for one in scene.drawing if isinstance(one, Polygon) and one.layer is Layer.PARAPET
    ]
    top = max(y for _, y in walls[0].points)
    assert fulcrum.at[1] - top == pytest.approx(metres("6 in"))


def test_which_of_two_backspans_is_judged_is_told_by_the_finding_alone() -> None:
    lengths = (("taped", Amount(3.0, LENGTH)), ("computed", Amount(2.8, LENGTH)))
    noted = replace(
        finding("N-01", "SP1", Verdict.PASS), notes=(Message(SHORTER_BACKSPAN, lengths),)
    )
    scene = drop_section(project(), "N-01", review_of("N-01", Verdict.PASS, (noted,)))
    assert said_on(scene).count("the shorter is judged") == 1
    contradicted = section_of(beam_support(backspan="8'-0\""))
    assert "judged" not in said_on(contradicted).replace("not judged", "")


def test_a_stack_longer_than_its_beam_lies_on_the_sheet() -> None:
    scene = section_of(beam_support(pieces=160))
    frame = frame_of(scene)
    stacks = [
        one
        for one in scene.drawing
        if isinstance(one, Polygon) and one.layer is Layer.COUNTERWEIGHT
    ]
    assert stacks
    for x, _ in (frame.to_paper(corner) for one in stacks for corner in one.points):
        assert 0.0 < x < scene.width


def test_what_is_refused_is_told_in_the_words_of_the_finding() -> None:
    setback = (("setback", Amount(metres("2 ft"), LENGTH)), ("reach", Amount(0.3, LENGTH)))
    through = (("bearing", Amount(0.3, LENGTH)), ("wall", Amount(metres("18 in"), LENGTH)))
    failed = tuple(
        replace(finding("N-01", "SP1", Verdict.FAIL), message=message)
        for message in (
            Message("outside.line", setback),
            Message("beam-clear.fail", through),
            Message("beam-clear.fail", through),
        )
    )
    scene = drop_section(project(), "N-01", review_of("N-01", Verdict.FAIL, failed))
    assert "at the face of the building or inside it" in said_on(scene)
    assert said_on(scene).count("would pass through the parapet") == 1
    assert "the parapet" not in said_on(drop_section(project(), "N-01", None))


def test_evidence_weaker_than_measured_is_never_shown_as_measured() -> None:
    told = put(beam_support(), ("reach", "evidence"), Evidence.TOLD)
    assert "told, not measured" in said_on(section_of(told))
    unsaid = put(beam_support(), ("reach", "evidence"), None)
    assert "evidence not stated" in said_on(section_of(unsaid))


def test_an_edge_without_a_parapet_says_that_none_is_stated() -> None:
    one = replace(project(), drops=(drop("D1", "S2", "1 ft", (point("P", "3 ft", None),)),))
    words = words_of(drop_section(one, "D1", None))
    assert {"Parapet: not stated", "No tieback stated"} <= words


def test_ropes_stages_and_people_are_named_where_they_are_known() -> None:
    one = project()
    hung = replace(point("P", "5 ft", "A1"), rope="R8")
    lost = put(drop("D1", "N", "4 ft", (hung,)), ("rig", "stages", 0, "stage"), "unknown")
    named = replace(one, drops=(replace(lost, name="test drop", height=None),), prepared_by="MT")
    words = words_of(drop_section(named, "D1", review_of("D1", Verdict.MISSING)))
    assert {"Suspension line,", "rope R8", "Stage not stated", "M. Tape, competent person"} <= words
    assert "Section: drop D1, test drop" in words


def test_readings_and_many_rule_sets_are_listed_as_far_as_the_column_goes() -> None:
    lines = tuple(
        BasisLine("tipping", f"text-{place}", "2020", f"Text {place}", (("value", "strict"),))
        for place in range(8)
    )
    review = replace(review_of("N-01", Verdict.PASS), basis=lines)
    words = words_of(drop_section(project(), "N-01", review))
    assert {"value: strict", "and 3 more, see the report of each drop"} <= words


def test_a_site_that_says_it_is_invented_is_quoted_once() -> None:
    one = project()
    said = replace(one, site=replace(one.site, invented="Invented for tests.", owner=None))
    words = words_of(drop_section(said, "E-01", None))
    assert "Invented for tests." in words


def test_where_a_finding_was_made_is_never_cut() -> None:
    found = finding("N-01", "SP1", Verdict.FAIL)
    places = ("SP1", "SP2", "S-01", "A01", "A02")
    made = tuple(replace(found, subject=f"N-01/{place}") for place in places)
    said = said_on(drop_section(project(), "N-01", review_of("N-01", Verdict.FAIL, made)))
    assert all(place in said for place in places)
    assert "SP1, SP2,..." not in said
