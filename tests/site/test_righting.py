"""What was set up wrongly is put right; what nobody touched stays as it was stated."""

from __future__ import annotations

from typing import Any

import pytest

from backspan.core.ledger.drop_states import State
from backspan.core.model.rigs import OtherSupportKind
from backspan.core.wire import to_data
from backspan.records.api import SiteRecord
from tests.site.bench import Browser
from tests.site.test_drop import in_service, state
from tests.site.typist import ANCHOR, ARM, FIRST, ROOF, fields_of, project_of, rigged

OBSTACLE = {
    "name": "stair head",
    "edge": "MAIN-ROOF/S",
    "along": "2 ft",
    "along-end": "10 ft",
    "back": "12 ft",
    "back-end": "18 ft",
    "height": "9 ft",
}


def again(pages: Browser, path: str, **changed: Any) -> None:
    """Send a page's form as it is shown, with what is changed in it."""
    answer = pages.post(path, None, **{**fields_of(pages.get(path)), **changed})
    assert answer.status == 200, answer.plain


@pytest.fixture
def drawn(new: Browser) -> Browser:
    """A site with a roof and an anchor."""
    new.post("/set-up/", **FIRST)
    new.post("/set-up/roofs", **ROOF)
    new.post("/set-up/anchors", **ANCHOR)
    return new


FORMS = (
    "/set-up/people?of=QUILL",
    "/set-up/kit/hoist?of=HM-1000",
    "/set-up/kit/beam?of=18-FT-BEAM",
    "/set-up/units?of=H-1",
    "/set-up/units?of=LOT-1",
    "/set-up/anchors?of=A1",
    "/set-up/anchors?of=A3",
    "/set-up/drops?of=S1",
    "/set-up/drops/S1/point?of=L",
    "/set-up/drops/S1/point?of=R",
    "/set-up/roofs/MAIN-ROOF/",
    "/set-up/roofs/MAIN-ROOF/edges/S",
)


def test_a_form_sent_back_as_it_was_shown_changes_nothing(new: Browser, empty: SiteRecord) -> None:
    rigged(new)
    before = to_data(project_of(empty))
    for path in FORMS:
        again(new, path)
        assert to_data(project_of(empty)) == before, path


@pytest.mark.parametrize("path", ["/set-up/people?of=X", "/set-up/roofs/X/", "/set-up/units?of="])
def test_what_is_not_there_is_not_put_right(new: Browser, empty: SiteRecord, path: str) -> None:
    rigged(new)
    assert new.get(path).status == 400
    assert project_of(empty).people


def test_only_what_was_changed_is_stated_anew(new: Browser, empty: SiteRecord) -> None:
    rigged(new)
    new.post("/set-up/people", name="L. Enders", role="licensed engineer")
    new.post("/speaker", person="ENDERS")
    again(new, "/set-up/kit/hoist?of=HM-1000", mass="110 lb")
    (hoist,) = project_of(empty).kit.hoists
    assert hoist.mass is not None
    assert hoist.rated_load is not None
    assert (hoist.mass.text, hoist.mass.by) == ("110 lb", "ENDERS")
    assert hoist.rated_load.by == "TERN"
    again(new, "/set-up/kit/hoist?of=HM-1000", mass="")
    assert project_of(empty).kit.hoists[0].mass is None


def test_a_word_of_a_plate_is_from_who_read_it(new: Browser, empty: SiteRecord) -> None:
    rigged(new)
    (made,) = project_of(empty).kit.hoists
    assert made.values_from is not None
    assert (made.values_from.by, made.values_from.evidence) == ("TERN", "label")
    new.post("/set-up/people", name="L. Enders", role="licensed engineer")
    new.post("/speaker", person="ENDERS")
    again(new, "/set-up/kit/hoist?of=HM-1000", secondary_brake="no second brake")
    (hoist,) = project_of(empty).kit.hoists
    assert hoist.values_from is not None
    assert hoist.values_from.by == "ENDERS"
    assert hoist.rated_load.by == "TERN"


def test_a_role_put_right_stays_with_the_person(new: Browser, empty: SiteRecord) -> None:
    rigged(new)
    again(new, "/set-up/people?of=QUILL", card="QP 4", role="competent person")
    person = next(one for one in project_of(empty).people if one.id == "QUILL")
    assert (person.role, person.card, person.employer) == ("competent person", "QP 4", "Callow")


def test_an_anchor_is_moved_and_a_use_added_with_its_own_load(
    drawn: Browser, empty: SiteRecord
) -> None:
    path = "/set-up/anchors?of=A1"
    shown = fields_of(drawn.get(path))
    assert (shown["edge"], shown["along"]) == ("MAIN-ROOF/E", "9'-0\"")
    again(
        drawn,
        path,
        along="10 ft",
        uses=["tieback", "fall arrest"],
        **{"rated.fall arrest": "5000 lb"},
    )
    (anchor,) = project_of(empty).site.roofs[0].anchors
    assert anchor.at == pytest.approx((52 * 0.3048, 20 * 0.3048))
    loads = {str(one.use): one.load.text for one in anchor.ratings if one.load is not None}
    assert loads == {"tieback": "10,000 lb", "fall arrest": "5000 lb"}
    turns = {str(one.use): one.within is not None for one in anchor.ratings}
    # Of the use that was added nobody said in which direction.
    assert turns == {"tieback": True, "fall arrest": False}
    answer = drawn.post(path, None, **{**fields_of(drawn.get(path)), "back": "90 ft"})
    assert answer.status == 400
    assert "found a place outside main roof" in answer.plain


def test_a_roof_is_walked_anew_around_what_stands_on_it(drawn: Browser, empty: SiteRecord) -> None:
    drawn.post("/set-up/roofs/MAIN-ROOF/obstacles", None, **OBSTACLE)
    walk = "60 ft, right 90, 40 ft, right 90, 60 ft, right 90, 40 ft"
    again(drawn, "/set-up/roofs/MAIN-ROOF/", walk=walk, name="upper roof")
    (roof,) = project_of(empty).site.roofs
    assert roof.name == "upper roof"
    assert max(y for _, y in roof.outline) == pytest.approx(40 * 0.3048)
    assert all(one.parapet is not None for one in roof.edges)
    assert [one.id for one in roof.anchors] == ["A1"]
    small = "20 ft, right 90, 20 ft, right 90, 20 ft, right 90, 20 ft"
    path = "/set-up/roofs/MAIN-ROOF/"
    answer = drawn.post(path, None, **{**fields_of(drawn.get(path)), "walk": small})
    assert answer.status == 400
    assert "anchor A1 outside of it" in answer.plain
    assert "found stair head (STAIR-HEAD) beyond it" in answer.plain


def test_a_walk_that_takes_an_edge_from_a_drop_is_refused(new: Browser, empty: SiteRecord) -> None:
    rigged(new)
    path, before = "/set-up/roofs/MAIN-ROOF/", len(empty.entries())
    walk = "30 ft, right 90, 60 ft, right 90, 30 ft, right 90, 60 ft"
    answer = new.post(path, None, **{**fields_of(new.get(path)), "walk": walk})
    assert answer.status == 400
    assert len(empty.entries()) == before


def test_an_obstacle_is_placed_put_right_and_taken_away(drawn: Browser, empty: SiteRecord) -> None:
    path = "/set-up/roofs/MAIN-ROOF/obstacles"
    page = drawn.post(path, None, **OBSTACLE)
    assert "9'-0\" high, 12'-0\" to 18'-0\" along edge E, 2'-0\" to 10'-0\" back" in page.plain
    (one,) = project_of(empty).site.roofs[0].obstacles
    # The left end of the south edge, as one looks out, is its east end at 60 ft.
    assert sorted({round(x / 0.3048) for x, _ in one.outline}) == [50, 58]
    assert sorted({round(y / 0.3048) for _, y in one.outline}) == [12, 18]
    again(drawn, f"{path}?of=STAIR-HEAD")
    assert project_of(empty).site.roofs[0].obstacles == (one,)
    again(drawn, f"{path}?of=STAIR-HEAD", height="10 ft")
    (higher,) = project_of(empty).site.roofs[0].obstacles
    assert higher.height is not None
    assert (higher.height.text, higher.outline) == ("10 ft", one.outline)
    again(drawn, f"{path}?of=STAIR-HEAD", does="take away")
    assert project_of(empty).site.roofs[0].obstacles == ()


@pytest.mark.parametrize(
    ("change", "told"),
    [
        ({"along-end": "1 ft"}, "found an end that is not beyond its beginning"),
        ({"back-end": "40 ft"}, "found a place beyond main roof"),
        ({"back": "twelve"}, "Its near side, back from the face of the edge"),
        ({"edge": ""}, "Seen from edge: found none"),
        ({"height": "0 ft"}, "How high above the roof: found '0 ft'"),
        ({"name": ""}, "What it is: found no name"),
    ],
)
def test_an_obstacle_that_stands_nowhere_is_refused(
    drawn: Browser, empty: SiteRecord, change: dict[str, str], told: str
) -> None:
    before = len(empty.entries())
    page = drawn.post("/set-up/roofs/MAIN-ROOF/obstacles", None, **{**OBSTACLE, **change})
    assert page.status == 400
    assert told in page.plain
    assert len(empty.entries()) == before


def test_a_point_is_put_right_until_somebody_looks_at_it(new: Browser, empty: SiteRecord) -> None:
    rigged(new)
    path = "/set-up/drops/S1/point?of=L"
    again(new, path, **{f"{ARM}.reach": "2 ft 2 in", "connectors": []})
    rig = project_of(empty).drops[0].rig
    assert rig is not None
    left, right = rig.suspension_points
    assert left.counterweighted_beam is not None
    assert left.counterweighted_beam.reach is not None
    assert left.counterweighted_beam.reach.text == "2 ft 2 in"
    assert not left.connectors
    assert [one.anchor for one in left.tied] == ["A1"]
    assert right.connectors
    reach = f"drops/S1/rig/suspension_points/L/{ARM}/reach"
    new.post("/drops/S1/state", "/drops/S1/", path=reach, value="2 ft 1 in")
    page = new.get(path)
    assert "Somebody looked at point L already" in page.plain
    answer = new.post(path, None, **{**fields_of(page), "station": "22 ft"})
    assert answer.status == 400
    assert "which somebody looked at already" in answer.plain


def test_a_point_is_taken_off_and_another_support_stands_in_its_place(
    new: Browser, empty: SiteRecord
) -> None:
    rigged(new)
    again(new, "/set-up/drops/S1/point?of=R", does="take off")
    rig = project_of(empty).drops[0].rig
    assert rig is not None
    assert rig.stages[0].from_points == ("L",)
    said = {"id": "R", "station": "39 ft", "hoist": "H-2", "other_support.kind": "parapet clamp"}
    page = new.post("/set-up/drops/S1/point", **said, **{"other_support.document": "PC-7"})
    assert "hoist H-2, rope not said, parapet clamp" in page.plain
    rig = project_of(empty).drops[0].rig
    assert rig is not None
    other = rig.suspension_points[1].other_support
    assert other is not None
    assert (other.kind, other.document) == (OtherSupportKind.PARAPET_CLAMP, "PC-7")
    assert new.get("/drops/S1/").status == 200


def test_a_drop_has_a_plan_of_its_own(new: Browser, empty: SiteRecord) -> None:
    rigged(new)
    path = "/set-up/drops/S1/plan"
    assert "The fields show that of the whole work" in new.get(path).plain
    again(new, path, drawing="SW-09")
    project = project_of(empty)
    assert project.plan is not None
    assert project.drops[0].plan is not None
    assert (project.plan.drawing, project.drops[0].plan.drawing) == ("SW-04", "SW-09")
    assert "its own plan, SW-09" in new.get("/set-up/drops/S1/rig").plain


def test_limits_are_signed_for_a_drop(new: Browser, empty: SiteRecord) -> None:
    rigged(new)
    said: dict[str, Any] = {"by": "TERN", "document": "S-201", "at": "2026-11-01"}
    until = {"until": "2026-12-31", "drops": ["S1"], "most_reach": "2 ft 6 in", "beams": ["B-1"]}
    page = new.post("/set-up/limits", **said, **until)
    assert "S-201 , R. Tern, for S1, until 2026-12-31 : reach at most 2'-6\"" in page.plain
    (paper,) = project_of(empty).signed_limits
    assert paper.most_reach == pytest.approx(2.5 * 0.3048)
    assert paper.beams == ("B-1",)
    assert "S-201" in new.get("/drops/S1/").plain
    before = len(empty.entries())
    page = new.post("/set-up/limits", **said, until="2026-12-31", most_reach="0 ft")
    assert page.status == 400
    assert "For the drops" in page.plain
    assert len(empty.entries()) == before


def test_an_acceptance_that_falls_with_what_is_put_right_is_told(
    pages: Browser, record: SiteRecord
) -> None:
    in_service(pages, record)
    path = "/set-up/kit/hoist?of=H"
    assert "accepted no longer once it is another thing" in pages.get(path).plain
    again(pages, path, mass="130 lb")
    assert "Drop D is accepted no longer" in pages.get("/set-up/kit").plain
    assert state(record) is State.STOPPED
