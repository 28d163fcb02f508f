"""Whatever a rig states, its drawings are well-formed, complete and free of overlapping text."""

from __future__ import annotations

from dataclasses import replace
from xml.etree import ElementTree

from hypothesis import given
from hypothesis import strategies as st

from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.model.project import Project
from backspan.core.model.rigs import CounterweightedBeam, Fulcrum, FulcrumKind, PieceGroup, Stack
from backspan.core.quantities import Style
from backspan.drawings import drop_section, plan_figure, roof_plan, section_figure, to_svg
from backspan.drawings.geometry import hatch_lines, inside, overlap, text_quad
from backspan.drawings.lettering import text_width, wrapped
from backspan.drawings.scene import Layer, Text
from tests.unit.drawings.ink import ink_beyond
from tests.unit.drawings.inspection import overlapping, words_of
from tests.unit.drawings.sample import drop, point, project


def lengths(least: float, most: float) -> st.SearchStrategy[StatedValue[float] | None]:
    """A measured length, told or measured, or nothing stated."""
    values = st.builds(
        StatedValue,
        st.floats(least, most),
        st.none() | st.floats(0.0, 0.05),
        st.sampled_from([Evidence.MEASURED, Evidence.TOLD, None]),
        planned=st.none() | st.floats(least, most),
    )
    return st.none() | values


SUPPORTS = st.builds(
    CounterweightedBeam,
    beam=st.sampled_from(["B-1", "BX", "none"]),
    fulcrum=st.none()
    | st.builds(Fulcrum, st.sampled_from(list(FulcrumKind)), lengths(0.0, 4.0), lengths(0.0, 5.0)),
    reach=lengths(0.05, 5.0),
    backspan=lengths(0.1, 9.0),
    tip_beyond_line=lengths(0.0, 1.0),
    rear_stand=lengths(0.0, 9.0),
    stack=st.builds(
        Stack,
        st.lists(
            st.builds(
                PieceGroup,
                st.sampled_from(["LOT", "SAND", "none"]),
                st.builds(StatedValue, st.integers(0, 60)),
                st.integers(1, 4),
            ),
            max_size=3,
        ).map(tuple),
        lengths(0.0, 2.0),
    ),
)


def project_with(supports: list[CounterweightedBeam], units: Style) -> Project:
    """The invented project with one drop on these supports."""
    points = tuple(
        point(f"P{place}", f"{5 + 14 * place} ft", "A1", support)
        for place, support in enumerate(supports)
    )
    return replace(project(units), drops=(drop("D1", "N", "4 ft", points),))


@given(st.lists(SUPPORTS, min_size=1, max_size=2), st.sampled_from(list(Style)))
def test_any_stated_rig_can_be_drawn(supports: list[CounterweightedBeam], units: Style) -> None:
    one = project_with(supports, units)
    for scene in (drop_section(one, "D1", None), roof_plan(one, {}, "ROOF")):
        assert overlapping(scene) == []
        ElementTree.fromstring(to_svg(scene))  # noqa: S314 - written by the test itself


@given(st.lists(SUPPORTS, min_size=1, max_size=2), st.sampled_from(list(Style)))
def test_any_stated_rig_fits_its_figures(supports: list[CounterweightedBeam], units: Style) -> None:
    one = project_with(supports, units)
    for scene in (section_figure(one, "D1", None), plan_figure(one, "D1", None)):
        assert overlapping(scene) == []
        assert ink_beyond(scene) == []
        ElementTree.fromstring(to_svg(scene))  # noqa: S314 - written by the test itself


@given(SUPPORTS)
def test_a_value_that_is_not_stated_is_never_dimensioned(support: CounterweightedBeam) -> None:
    words = words_of(drop_section(project_with([support], Style.US), "D1", None))
    for name, stated in (("Reach", support.reach), ("Backspan", support.backspan)):
        said = any(one.startswith(f"{name} not measured") for one in words)
        assert said == (stated is None)


@given(st.text(max_size=80))
def test_any_name_makes_a_well_formed_drawing(name: str) -> None:
    one = project()
    named = replace(one, site=replace(one.site, name=name, owner=name, place=name), drops=())
    scene = roof_plan(named, {}, "ROOF")
    assert overlapping(scene) == []
    ElementTree.fromstring(to_svg(scene))  # noqa: S314 - written by the test itself


@given(st.text(max_size=120), st.floats(15.0, 120.0), st.booleans())
def test_wrapped_lines_fit_their_room(text: str, room: float, bold: bool) -> None:
    for line in wrapped(text, room=room, height=2.5, bold=bold):
        assert text_width(line, height=2.5, bold=bold) <= room + 1e-9


COORDINATE = st.floats(-50.0, 50.0)
TEXTS = st.builds(
    Text,
    st.just(Layer.LABEL),
    st.tuples(COORDINATE, COORDINATE),
    st.sampled_from(["A1", "Reach 4'-0\"", "not measured"]),
    st.floats(2.5, 5.0),
    angle=st.floats(-90.0, 90.0),
)


@given(TEXTS, TEXTS)
def test_overlap_does_not_depend_on_the_order(one: Text, other: Text) -> None:
    assert overlap(text_quad(one), text_quad(other)) == overlap(text_quad(other), text_quad(one))


@given(st.floats(1.0, 30.0), st.floats(1.0, 30.0), st.floats(0.5, 5.0), st.floats(0.0, 180.0))
def test_hatching_stays_inside_its_outline(
    width: float, height: float, spacing: float, angle: float
) -> None:
    outline = ((0.0, 0.0), (width, 0.0), (width, height), (0.0, height))
    for start, end in hatch_lines(outline, spacing=spacing, angle=angle):
        middle = ((start[0] + end[0]) / 2, (start[1] + end[1]) / 2)
        near = min(abs(end[0] - start[0]), abs(end[1] - start[1])) < 1e-6
        assert near or inside(outline, middle)
