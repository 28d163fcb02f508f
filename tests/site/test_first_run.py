"""A site from nothing, page by page: what is refused, what the record then says."""

from __future__ import annotations

import pytest

from backspan.core.model.site import AnchorUse
from backspan.records.api import SiteRecord
from backspan.web.pages.rig_asked import anchors
from tests.site.bench import Browser
from tests.site.typist import ANCHOR, FIRST, OBLONG, ROOF, project_of, rigged
from tests.unit.core.rigs import PROJECT


def test_an_empty_record_leads_to_its_first_page(new: Browser) -> None:
    assert "/set-up/" in new.get("/").text
    page = new.get("/set-up/")
    assert page.status == 200
    assert 'value="Teal House"' in page.text
    assert "Construction" in page.plain
    assert 'value="us-osha-1926-subpart-l|1996" checked' in page.text


def test_the_engineer_signs_the_site_and_speaks_from_then_on(
    new: Browser, empty: SiteRecord
) -> None:
    page = new.post("/set-up/", **FIRST)
    assert page.status == 200, page.plain
    assert "R. Tern, owner's engineer speaks" in page.plain
    (entry,) = empty.entries()
    signer = entry.envelope.signer
    assert (signer.person, signer.role, signer.card) == ("TERN", "owner's engineer", "PE 1")
    project = project_of(empty)
    assert project.site.place == "12 Weir Lane, Port Callow"
    assert [one.rule_set for one in project.basis.tipping] == ["us-osha-1926-subpart-l"]


def test_all_that_is_wrong_is_told_at_once_and_nothing_is_written(
    new: Browser, empty: SiteRecord
) -> None:
    page = new.post("/set-up/", **{**FIRST, "place": "", "me.name": "", "basis": []})
    assert page.status == 400
    assert "Where it stands: found no place" in page.plain
    assert "Name: found no name" in page.plain
    assert "Held against: found no rule set" in page.plain
    assert 'value="PE 1"' in page.text
    assert empty.entries() == ()


def test_nobody_but_the_first_person_writes_before_somebody_speaks(
    new: Browser, empty: SiteRecord
) -> None:
    new.post("/set-up/", **FIRST)
    new.cookies.pop("backspan-speaker")
    page = new.post("/set-up/roofs", **ROOF)
    assert page.status == 400
    assert "Nobody said who speaks" in page.plain
    assert len(empty.entries()) == 1


def test_people_are_added_with_a_role_of_the_list_or_their_own(
    new: Browser, empty: SiteRecord
) -> None:
    new.post("/set-up/", **FIRST)
    new.post("/set-up/people", name="D. Quill", role="qualified person", employer="Callow Access")
    new.post("/set-up/people", **{"name": "B. Quill", "another-role": "painter"})
    assert {one.id: one.role for one in project_of(empty).people} == {
        "TERN": "owner's engineer",
        "QUILL": "qualified person",
        "QUILL-2": "painter",
    }
    page = new.post("/set-up/people", name="N. Body")
    assert page.status == 400
    assert "Role: found no role" in page.plain


def test_a_roof_is_drawn_from_its_walk_with_one_parapet(new: Browser, empty: SiteRecord) -> None:
    new.post("/set-up/", **FIRST)
    page = new.post("/set-up/roofs", **ROOF)
    assert page.status == 200, page.plain
    (roof,) = project_of(empty).site.roofs
    assert [one.id for one in roof.edges] == ["E", "N", "S", "W"]
    parapets = {one.parapet for one in roof.edges}
    assert len(parapets) == 1
    (wall,) = parapets
    assert wall is not None
    assert wall.height.value == pytest.approx(42 * 0.0254)
    assert (wall.height.evidence, wall.height.by) == ("drawing", "TERN")
    new.post(
        "/set-up/roofs/MAIN-ROOF/edges/N",
        **{"faces": "Mill Yard", "parapet.height": "0 in", "parapet.thickness": "0 in"},
    )
    (roof,) = project_of(empty).site.roofs
    north = next(one for one in roof.edges if one.id == "N")
    assert north.faces == "Mill Yard"
    assert north.parapet is not None
    assert north.parapet.height.value == 0.0


def test_a_roof_that_does_not_close_is_refused_with_its_gap(
    new: Browser, empty: SiteRecord
) -> None:
    new.post("/set-up/", **FIRST)
    walk = OBLONG.replace("right 90, 60 ft", "right 90, 65 ft")
    page = new.post("/set-up/roofs", **{**ROOF, "walk": walk, "level": "high"})
    assert page.status == 400
    assert "does not close: found its end 5'-0\"" in page.plain
    assert "Its height above the ground: found 'high'" in page.plain
    assert walk in page.text
    assert project_of(empty).site.roofs == ()


def test_a_second_roof_stands_where_it_is_said(new: Browser, empty: SiteRecord) -> None:
    new.post("/set-up/", **FIRST)
    new.post("/set-up/roofs", **ROOF)
    new.post("/set-up/roofs", **ROOF, east="60 ft", north="0 ft")
    second = project_of(empty).site.roofs[1]
    assert second.id == "MAIN-ROOF-2"
    assert min(x for x, _ in second.outline) == pytest.approx(60 * 0.3048)


def test_an_anchor_stands_along_and_back_and_another_keeps_its_papers(
    new: Browser, empty: SiteRecord
) -> None:
    new.post("/set-up/", **FIRST)
    new.post("/set-up/roofs", **ROOF)
    page = new.post("/set-up/anchors", **ANCHOR, does="like")
    assert page.status == 200, page.plain
    assert "9'-0\" along edge E, 8'-0\" back; 52'-0\" along edge N, 9'-0\" back" in page.plain
    assert "Another like A1" in page.plain
    assert 'value="10,000 lb"' in page.text
    assert 'id="along" name="along" value=""' in page.text
    (first,) = project_of(empty).site.roofs[0].anchors
    assert first.at == pytest.approx((52 * 0.3048, 21 * 0.3048))
    (rating,) = first.ratings
    assert rating.load is not None
    assert (rating.load.evidence, rating.load.by) == ("certificate", "TERN")


@pytest.mark.parametrize(
    ("change", "told"),
    [
        ({"along": "61 ft"}, "found a place outside main roof"),
        ({"back": "31 ft"}, "found a place outside main roof"),
        ({"along": "8"}, "bare number"),
        ({"edge": ""}, "Seen from edge: found none"),
        ({"inspected": "3 March"}, "Inspected on: found '3 March'"),
        ({"id": "A1 left"}, "1 to 24 letters"),
    ],
)
def test_an_anchor_that_cannot_stand_there_is_refused(
    new: Browser, empty: SiteRecord, change: dict[str, str], told: str
) -> None:
    new.post("/set-up/", **FIRST)
    new.post("/set-up/roofs", **ROOF)
    page = new.post("/set-up/anchors", **{**ANCHOR, **change})
    assert page.status == 400
    assert told in page.plain
    assert project_of(empty).site.roofs[0].anchors == ()


def test_anchors_for_the_use_and_near_the_drop_stand_first() -> None:
    drop = PROJECT.drops[0]
    lines = [name for name, _ in anchors(PROJECT, drop, AnchorUse.FALL_ARREST)]
    ties = [name for name, _ in anchors(PROJECT, drop, AnchorUse.TIEBACK)]
    there = {one.id: one for roof in PROJECT.site.roofs for one in roof.anchors}
    assert set(lines) == set(ties) == set(there)
    for found, use in ((lines, AnchorUse.FALL_ARREST), (ties, AnchorUse.TIEBACK)):
        meant = [use in there[name].uses for name in found]
        assert meant == sorted(meant, reverse=True)
        assert meant[0]


def test_two_pages_open_at_once_lose_nobody(new: Browser, empty: SiteRecord) -> None:
    rigged(new)
    place = len(empty.entries())
    person = {"name": "A. One", "employer": "Callow", "role": "competent person"}
    new.post("/set-up/people", **person)
    late = new.post("/set-up/people", **{**person, "name": "B. Two"}, ledger_place=place)
    assert late.status == 400
    assert "Since you opened this page somebody stated" in late.plain
    new.post("/set-up/people", **{**person, "name": "B. Two"})
    assert {"A. One", "B. Two"} <= {one.name for one in project_of(empty).people}
