"""The roof plan to work on, as forms: look, draw, undo; nothing is recorded until it is signed."""

from __future__ import annotations

import json
import re
from html import unescape
from typing import Any

import pytest

from backspan.core.ledger import bodies
from backspan.core.ledger.fold import fold
from backspan.core.model.evidence import Evidence
from backspan.core.wire import to_data
from backspan.records.api import SiteRecord
from tests.site.bench import TOKEN, Answer, Browser
from tests.site.typist import FIRST
from tests.unit.core.rigs import ON

AT = "/plan/ROOF/"
DRAFT = re.compile(r'name="draft" value="([^"]*)"')
POINT = "drops/D/rig/suspension_points/L"
PLACE_ANCHOR = {"verb": "place anchor", "edge": "S", "along": "10 ft", "back": "12 ft"}


def draft_of(page: Answer) -> list[dict[str, Any]]:
    """The acts that a page carries."""
    found = DRAFT.search(page.body.decode("utf-8"))
    assert found is not None
    acts: list[dict[str, Any]] = json.loads(unescape(found[1]))
    return acts


def sent(pages: Browser, path: str = AT, draft: Any = (), **fields: str) -> Answer:
    """A form of the plan, with what was drawn before."""
    return pages.send(path, {**carried(pages, draft), **fields})


def carried(pages: Browser, draft: Any) -> dict[str, str]:
    """What each form of the plan carries; by itself it only looks."""
    page = pages.get(AT).text
    token = TOKEN.search(page)
    place = re.search(r'name="ledger_place" value="([0-9]+)"', page)
    assert token is not None
    assert place is not None
    text = draft if isinstance(draft, str) else json.dumps(list(draft))
    return {"csrfmiddlewaretoken": token[1], "draft": text, "ledger_place": place[1]}


def test_the_plan_shows_every_thing_and_leads_to_it(pages: Browser) -> None:
    page = pages.get("/plan/")
    for thing in ("anchor A1", "edge S", "corner 4", "obstacle VENT", "drop D", "D/L", "tieback"):
        assert thing in page.text
    assert 'data-path="site/roofs/ROOF/anchors/A1"' in page.text
    looked = pages.get(f"{AT}?of=site/roofs/ROOF/anchors/A1")
    assert "30'-0\" back" in looked.plain
    assert 'href="/anchors/ROOF/A1/"' in looked.text


def test_what_is_drawn_is_not_recorded_until_somebody_signs_it(
    pages: Browser, record: SiteRecord
) -> None:
    before = len(record.entries())
    page = sent(pages, **PLACE_ANCHOR)
    assert "Nothing of this is recorded yet" in page.plain
    assert "placed at" in page.plain
    acts = draft_of(page)
    assert len(acts) == 1
    assert len(record.entries()) == before
    gone = sent(pages, draft=acts, does="undo")
    assert draft_of(gone) == []
    signed = sent(pages, draft=acts, does="sign", known="measured")
    assert "Signed: it stands in the record now" in signed.plain
    new = record.entries()[before:]
    assert [type(one.body) for one in new] == [bodies.AnchorRegistered]
    said = to_data(new[0].body)["anchor"]["values_from"]
    assert (said["evidence"], said["by"]) == (Evidence.MEASURED, "MT")


def test_a_beam_that_is_moved_says_what_it_would_answer_and_what_falls(
    pages: Browser, record: SiteRecord
) -> None:
    page = sent(pages, verb="move", of=POINT, reach="6 ft")
    assert "It would answer" in page.plain
    assert "as recorded" in page.plain
    acts = draft_of(page)
    before = len(record.entries())
    sent(pages, draft=acts, does="sign", known="drawing", document="SK-4 rev B")
    (entry,) = record.entries()[before:]
    assert isinstance(entry.body, bodies.NumberFound)
    assert entry.body.path[-1] == "reach"
    assert (entry.body.found.evidence, entry.body.found.document) == ("drawing", "SK-4 rev B")


def test_it_is_not_signed_without_how_it_is_known_or_who_says_it(
    pages: Browser, silent: Browser, record: SiteRecord
) -> None:
    acts = draft_of(sent(pages, **PLACE_ANCHOR))
    before = len(record.entries())
    for fields, told in (
        ({}, "expected measured, drawing or told"),
        ({"known": "drawing"}, "expected its number and revision"),
        ({"known": "assumed"}, "expected measured, drawing or told"),
    ):
        page = sent(pages, draft=acts, does="sign", **fields)
        assert page.status == 400
        assert told in page.plain
        assert draft_of(page) == acts
    silent.cookies.pop("backspan-speaker")
    page = sent(silent, draft=acts, does="sign", known="told")
    assert "Nobody said who speaks" in page.plain
    assert len(record.entries()) == before


def test_what_was_stated_since_is_not_written_over(pages: Browser, record: SiteRecord) -> None:
    moved = {"verb": "move", "of": "site/roofs/ROOF/anchors/A1", "edge": "S", "back": "20 ft"}
    acts = draft_of(sent(pages, along="2 ft", **moved))
    old = re.search(r'name="ledger_place" value="([0-9]+)"', pages.get(AT).text)
    assert old is not None
    other = draft_of(sent(pages, along="3 ft", **moved))
    sent(pages, draft=other, does="sign", known="told")
    before = len(record.entries())
    page = sent(pages, draft=acts, does="sign", known="told", ledger_place=old[1])
    assert "Since you opened this page somebody stated" in page.plain
    assert len(record.entries()) == before


def test_a_length_that_was_found_since_is_not_written_over(
    pages: Browser, record: SiteRecord
) -> None:
    acts = draft_of(sent(pages, verb="move", of=POINT, reach="2 ft"))
    old = carried(pages, acts)
    other = draft_of(sent(pages, verb="move", of=POINT, reach="1 ft 7 in"))
    sent(pages, draft=other, does="sign", known="measured")
    before = len(record.entries())
    page = pages.send(AT, {**old, "does": "sign", "known": "measured"})
    assert "Since you opened this page somebody stated" in page.plain
    assert len(record.entries()) == before


@pytest.mark.parametrize(
    ("fields", "told"),
    [
        ({"verb": "fly"}, "expected one of: draw roof"),
        ({"verb": "place anchor", "edge": "Q", "along": "1 ft", "back": "1 ft"}, "no edge on roof"),
        ({"verb": "place anchor", "edge": "S", "along": "9", "back": "1 ft"}, "Along it"),
        ({"verb": "place anchor", "x": "nan", "y": "2"}, "expected one on the site"),
        ({"verb": "place anchor", "x": "1e9", "y": "2"}, "expected one on the site"),
        ({"verb": "place anchor", "x": "left", "y": "2"}, "expected a place in metres"),
        ({"verb": "place anchor", "x": "-9", "y": "2"}, "outside"),
        ({"verb": "place drop", "edge": "S", "along": "50 ft"}, "the end of a drop"),
        ({"verb": "move", "of": "kit/hoists/H"}, "found nothing that can be moved"),
        ({"verb": "move", "of": POINT, "reach": "-2 ft"}, "expected more than 0"),
        ({"verb": "connect", "of": POINT, "anchor": "A0"}, "found no anchor"),
        ({"verb": "raise parapet", "height": "3 ft", "thickness": "1 ft"}, "found no edge"),
        ({"verb": "add corner", "of": "site/roofs/ROOF/edges/S", "along": "9 ft"}, "under D"),
        ({"verb": "take away", "of": "site/roofs/ROOF/obstacles/TANK"}, "found no obstacle"),
        ({"does": "approve"}, "expected act, undo, look, measure or sign"),
        ({"does": "sign", "known": "told"}, "found nothing drawn"),
    ],
)
def test_what_cannot_be_done_is_told_and_nothing_is_lost(
    pages: Browser, fields: dict[str, str], told: str
) -> None:
    acts = [] if fields.get("does") == "sign" else draft_of(sent(pages, **PLACE_ANCHOR))
    page = sent(pages, draft=acts, **fields)
    assert page.status == 400
    assert told in page.plain
    assert draft_of(page) == acts


@pytest.mark.parametrize(
    "draft", ["{", "7", '["fly"]', '[{"act": "move drop"}]', "[" * 40_000, '[{"act": 1}]']
)
def test_a_draft_that_is_none_is_refused(pages: Browser, draft: str) -> None:
    page = sent(pages, draft=draft, does="look")
    assert page.status == 400
    assert "Not done" in page.plain
    assert "expected" in page.plain


def test_markup_in_names_stays_text(pages: Browser) -> None:
    page = sent(
        pages,
        verb="place obstacle",
        name="<script>alert(1)</script>",
        edge="S",
        along="30 ft",
        **{"along-end": "33 ft", "back": "20 ft", "back-end": "23 ft"},
    )
    assert b"<script>alert" not in page.body
    assert "&lt;script&gt;alert(1)" in page.body.decode("utf-8")


def test_only_what_changed_comes_back_to_a_script(pages: Browser) -> None:
    token = TOKEN.search(pages.get(AT).text)
    assert token is not None
    fields = {
        "csrfmiddlewaretoken": token[1],
        "draft": "[]",
        "verb": "move",
        "of": POINT,
        "reach": "2 ft",
    }
    page = pages.send(AT, fields, HTTP_X_PART="plan")
    assert re.findall(r'data-part="([^"]+)"', page.text) == ["strip-D", "rig-D"]
    assert "<header" not in page.text
    assert 'id="look-at"' not in page.text
    fields |= {"verb": "place anchor", "x": "9", "y": "6"}
    assert "anchor A4" in pages.send(AT, fields, HTTP_X_PART="plan").plain
    ends = {"draft": json.dumps(draft_of(sent(pages, **PLACE_ANCHOR))), "does": "undo"}
    undone = pages.send(AT, {**fields, **ends}, HTTP_X_PART="plan")
    assert 'id="look-at"' in undone.text


def test_a_strip_never_keeps_an_answer_that_no_longer_holds(pages: Browser) -> None:
    """The drop as recorded and the drop as drawn answer otherwise; its strip says the latter."""
    acts = draft_of(sent(pages, verb="move", of=POINT, reach="7 ft"))
    look = {**carried(pages, acts), "does": "look", "all": "1"}
    whole = pages.send(AT, look, HTTP_X_PART="plan").text
    strip = whole[whole.index('data-part="strip-D"') : whole.index('data-part="rig-D"')]
    assert ">fail</text>" in strip
    untouched = pages.get(f"{AT}?part=answers").text
    assert ">not reviewed</text>" not in untouched
    assert ">not reviewed</text>" in pages.get(AT).text


def test_a_pointer_snaps_and_measures(pages: Browser) -> None:
    page = sent(pages, verb="place anchor", x="10.004", y="5.003", near="0.1")
    (act,) = draft_of(page)
    along = 18.288 - act["at"][0]
    assert along / 0.0127 == pytest.approx(round(along / 0.0127), abs=1e-6)
    page = sent(pages, does="measure", x="0.05", y="0.05", x2="18.2", y2="0.02", near="0.2")
    assert "60'-0\" from" in page.plain


def test_a_roof_is_drawn_where_there_is_none(new: Browser, empty: SiteRecord) -> None:
    new.post("/set-up/", **FIRST)
    page = new.get("/plan/")
    token = TOKEN.search(page.text)
    assert token is not None
    whole = {
        "csrfmiddlewaretoken": token[1],
        "draft": "[]",
        "ledger_place": "1",
        "verb": "draw roof",
        "name": "main roof",
        "level": "120 ft",
        "corners": "0.02,0 18.27,0.05 18.3,9.1 0,9.15 0.05,0.02",
        "near": "0.15",
    }
    page = new.send("/plan/R1/", whole)
    (act,) = draft_of(page)
    assert len(act["corners"]) == 4
    said = {"draft": json.dumps([act]), "does": "sign", "known": "told"}
    signed = new.send("/plan/R1/", {**whole, **said})
    assert "Signed" in signed.plain
    roof = fold(empty.entries(), on=ON).project.site.roofs[0]
    assert sorted(one.id for one in roof.edges) == ["E", "N", "S", "W"]


def test_a_rig_is_carried_to_the_next_strip(pages: Browser, record: SiteRecord) -> None:
    """Placed once, carried on: its equipment comes along, all of the roof stays blank."""
    page = sent(pages, verb="place drop", edge="S", along="32 ft", width="20 ft", mark="D2")
    page = sent(pages, draft=draft_of(page), verb="carry", of="drops/D2", source="D")
    assert page.status == 200, page.plain
    acts = draft_of(page)
    assert [one["act"] for one in acts] == ["place drop", "carry rig"]
    before = len(record.entries())
    signed = sent(pages, draft=acts, does="sign", known="drawing", document="SK-1 rev A")
    assert "Signed" in signed.plain, signed.plain
    new = [type(one.body) for one in record.entries()[before:]]
    assert new == [bodies.DropDescribed, bodies.RigMoved, bodies.RigSetUp]
    drops = {one.id: one for one in fold(record.entries(), on=ON).project.drops}
    rig = drops["D2"].rig
    assert drops["D"].rig is None
    assert rig is not None
    assert rig.moved_from == "D"
    for point in rig.suspension_points:
        beam = point.counterweighted_beam
        assert beam is not None
        assert (beam.reach, beam.backspan, point.softener) == (None, None, None)
        assert [one.anchor for one in point.tied] == [None]


def test_lines_are_connected_and_a_beam_placed_by_taps(pages: Browser) -> None:
    page = sent(pages, verb="connect", of=POINT, anchor="A2")
    page = sent(pages, draft=draft_of(page), verb="connect", of="drops/D", anchor="A1")
    page = sent(
        pages,
        draft=draft_of(page),
        verb="place point",
        of="drops/D",
        x="15.02",
        y="0.4",
        near="0.05",
        mark="M",
        hoist="H",
        beam="B",
    )
    assert page.status == 200, page.plain
    first, second, third = draft_of(page)
    assert (first["act"], first["anchor"]) == ("lead tieback", "A2")
    assert (second["act"], second["anchor"]) == ("lead lifeline", "A1")
    assert third["station"] == pytest.approx(18.288 - 15.02, abs=0.0064)


def test_a_parapet_is_stated_and_an_edge_moved_from_what_is_tapped(pages: Browser) -> None:
    """A tap on the wall means its edge."""
    wall = {"of": "site/roofs/ROOF/edges/S/parapet"}
    page = sent(pages, verb="raise parapet", height="4 ft", thickness="1 ft", **wall)
    page = sent(pages, draft=draft_of(page), verb="move", x="9", y="-0.3", x0="9", y0="0", **wall)
    stated, moved = draft_of(page)
    assert (stated["edge"], stated["height"]) == ("S", pytest.approx(1.2192))
    assert (moved["act"], moved["out"]) == ("move edge", pytest.approx(0.3, abs=0.0064))


def test_what_is_pointed_at_tells_its_last_statement(pages: Browser) -> None:
    told = pages.get(f"{AT}?part=last&of=site/roofs/ROOF/anchors/A1")
    assert told.headers["Content-Type"].startswith("text/plain")
    assert "A1" in told.text
    assert "M. Taper" in told.text
    assert pages.get(f"{AT}?part=last&of=site/roofs/ROOF/anchors/A0").text == ""
    assert pages.get(f"{AT}?part=last&of=kit/hoists/H").text == ""


def strip_of(pages: Browser, acts: list[dict[str, Any]], drop: str = "D") -> str:
    """The strip of a drop as a script gets it, with all that was drawn."""
    look = {**carried(pages, acts), "does": "look", "all": "1"}
    whole = pages.send(AT, look, HTTP_X_PART="plan").text
    start = whole.index(f'data-part="strip-{drop}"')
    return whole[start : whole.index("data-part=", start + 9)]


def test_the_drop_that_a_rig_left_keeps_no_answer(pages: Browser) -> None:
    """What hung there answered; nothing does now."""
    page = sent(pages, verb="place drop", edge="S", along="32 ft", width="20 ft", mark="D2")
    page = sent(pages, draft=draft_of(page), verb="carry", of="drops/D2", source="D")
    recorded = pages.get(f"{AT}?part=answers").text
    assert ">pass</text>" in recorded
    assert ">pass</text>" not in strip_of(pages, draft_of(page))
    assert re.search(r"\bD\b.*\bD2\b", page.plain[page.plain.index("It would answer") :])


def test_a_drop_that_shares_a_thing_with_one_that_changed_is_asked_too(pages: Browser) -> None:
    """A beam with a tag is in one place: taken into another drop, it is in two."""
    page = sent(pages, verb="place drop", edge="S", along="32 ft", width="20 ft", mark="D2")
    page = sent(
        pages,
        draft=draft_of(page),
        verb="place point",
        of="drops/D2",
        station="34 ft",
        mark="L",
        hoist="H",
        beam="B-1",
    )
    assert page.status == 200, page.plain
    told = page.plain[page.plain.index("It would answer") : page.plain.index("Sign it")]
    assert re.search(r"\bD [^ ]+ fail\b", told), told
    assert ">pass</text>" not in strip_of(pages, draft_of(page))


def test_what_a_hand_moved_is_answered_before_the_others_it_touched(pages: Browser) -> None:
    """The first answer is of the drop that was acted on; another names it, and has them all."""
    placed = draft_of(sent(pages, verb="place drop", edge="S", along="32 ft", width="20 ft"))
    beam = {"verb": "place point", "of": f"drops/{placed[0]['drop']}", "station": "34 ft"}
    act = {**carried(pages, placed), **beam, "mark": "L", "hoist": "H", "beam": "B-1"}
    first = pages.send(AT, act, HTTP_X_PART="plan")
    told = re.findall(r"<b>(\w+)</b> (?:changes too; its|<span)", first.text)
    assert first.text.count("its review was not asked here") == 1
    assert len(told) == 2
    waiting = re.search(r'data-waiting="(\w+)"', first.text)
    assert waiting is not None
    assert told[0] == waiting[1]
    rest = {**act, "draft": json.dumps(draft_of(first)), "does": "look", "others": waiting[1]}
    both = pages.send(AT, rest, HTTP_X_PART="plan")
    assert "its review was not asked here" not in both.text
    assert "data-waiting" not in both.text
    assert "strip-D" in re.findall(r'data-part="([^"]+)"', both.text)
    alone = draft_of(sent(pages, verb="move", of=POINT, reach="2 ft"))
    look = {**carried(pages, alone), "does": "look"}
    assert "data-waiting" not in pages.send(AT, look, HTTP_X_PART="plan").text
