"""The kit: what each form states of a thing, what it refuses, and which drops fall with it."""

from __future__ import annotations

import datetime
from dataclasses import replace
from pathlib import Path

import pytest

from backspan.core.ledger import bodies
from backspan.core.ledger.drop_states import State
from backspan.core.ledger.fold import fold
from backspan.core.ledger.kinds import Body
from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.model.kit import RopeKind
from backspan.core.model.units import (
    Condition,
    LabelState,
    RopeDamage,
    Test,
    TestFound,
    TestOf,
    Unit,
    UnitKind,
)
from backspan.records.api import SiteRecord
from tests.site.bench import NOON, Answer, Browser, browser, made
from tests.site.test_drop import in_service, last, state
from tests.unit.core.rigs import PROJECT, put

HOIST, ROPE, LOT = "/kit/H-1/", "/kit/W-1/", "/kit/LOT/"


def unit(record: SiteRecord, tag: str) -> Unit:
    """A thing as it stands."""
    return next(one for one in fold(record.entries()).project.kit.units if one.id == tag)


def written(record: SiteRecord, before: int) -> list[Body]:
    """What was stated since."""
    return [one.body for one in record.entries()[before:]]


def refused(answer: Answer, record: SiteRecord, before: int) -> str:
    """What was told of a form that wrote nothing."""
    assert answer.status == 400
    assert len(record.entries()) == before
    return answer.plain


def spare(pages: Browser, tag: str = "H-9") -> None:
    """A hoist that hangs nowhere."""
    pages.post(
        "/kit/new?kind=hoist", kind="hoist", tag=tag, of="H", serial="12 (invented)", condition=""
    )


def test_all_things_are_told_by_kind_with_their_place(pages: Browser) -> None:
    shown = pages.get("/kit/")
    assert shown.status == 200
    for tag in ("B-1", "H-1", "LOT", "ST-1", "W-2"):
        assert f'href="/kit/{tag}/"' in shown.text
    assert "brake trip test: until 2027-09-30, 309 days" in shown.plain
    assert "D , point L" in shown.plain
    assert "Something stands against these" not in shown.plain
    assert 'href="/kit/"' in pages.get("/").text


def test_a_thing_is_found_by_its_tag(pages: Browser) -> None:
    some = pages.get("/kit/?tag=w-").text
    assert "/kit/W-1/" in some
    assert "/kit/W-2/" in some
    assert "/kit/H-1/" not in some
    assert "Maker's plate" in pages.get("/kit/?tag=W-1").plain
    assert "did you mean W-1" in pages.get("/kit/?tag=W-11").plain


def test_the_plate_the_tests_and_the_place_of_a_thing(pages: Browser) -> None:
    shown = pages.get(HOIST).plain
    assert "rated load" in shown
    assert "1,000 lb" in shown
    assert "brake trip test" in shown
    assert "point L" in shown
    assert "not looked at" in shown  # its label, of which nobody said anything


@pytest.mark.parametrize("page", [HOIST, ROPE, LOT, "/kit/B-1/", "/kit/ST-1/"])
def test_every_kind_has_a_page(pages: Browser, page: str) -> None:
    answer = pages.get(page)
    assert answer.status == 200
    assert "History, newest first" in answer.plain
    assert "registered" in answer.plain


def test_a_look_states_one_observation_and_leaves_the_rest(
    pages: Browser, record: SiteRecord
) -> None:
    before, was = len(record.entries()), unit(record, "H-1")
    answer = pages.post(HOIST, does="look", path="kit/units/H-1/label", value="readable")
    assert answer.status == 200
    now = StatedValue(
        LabelState.READABLE,
        evidence=Evidence.MEASURED,
        by="MT",
        at="2026-11-25T12:00",
        text="readable",
    )
    assert written(record, before) == [bodies.UnitLookedAt(replace(was, label=now))]


def test_of_a_rope_its_wear_is_seen_one_by_one(pages: Browser, record: SiteRecord) -> None:
    at = "kit/units/W-1/wear"
    pages.post(ROPE, does="look", path=f"{at}/broken_in_lay", value="3")
    pages.post(ROPE, does="look", path=f"{at}/wire_worn", value="10 %")
    pages.post(ROPE, does="look", path=f"{at}/damage", value="kink")
    wear = unit(record, "W-1").wear
    assert wear is not None
    assert wear.broken_in_lay is not None
    assert wear.wire_worn is not None
    assert wear.damage is not None
    assert (wear.broken_in_lay.value, wear.damage.value) == (3, RopeDamage.KINK)
    assert wear.wire_worn.value == pytest.approx(0.1, rel=1e-12)
    shown = pages.get(ROPE).plain
    assert "10 %" in shown
    assert "D: Damage of the rope: kink" in shown


def test_a_count_of_a_lot(pages: Browser, record: SiteRecord) -> None:
    pages.post(LOT, does="look", path="kit/units/LOT/count", value="20")
    count = unit(record, "LOT").count
    assert count is not None
    assert count.value == 20
    assert "Of lot LOT there are 20 pieces; rigs name 32" in pages.get("/kit/").plain


@pytest.mark.parametrize(
    ("path", "value", "telling"),
    [
        ("H-1/condition", "fine", "expected one of: sound"),
        ("H-1/condition", "", "expected one of: sound"),
        ("H-2/condition", "sound", "expected something that is seen of it"),
        ("", "sound", "expected something that is seen of it"),
        ("H-1/count", "3", "expected something that is seen of it"),
        ("LOT/count", "many", "expected a whole number"),
        ("LOT/count", "0", "more than zero"),
        ("W-1/wear/wire_worn", "-5 %", "zero or more"),
        ("W-1/wear/wire_worn", "much", "wanted"),
        ("W-1/wear/wire_worn", "10", "expected a share of it, such as 5 %"),
    ],
)
def test_what_cannot_be_seen_of_a_thing_is_refused(
    pages: Browser, record: SiteRecord, path: str, value: str, telling: str
) -> None:
    before = len(record.entries())
    page = {"L": LOT, "W": ROPE}.get(path[:1], HOIST)
    answer = pages.post(page, does="look", path=f"kit/units/{path}", value=value)
    assert telling in refused(answer, record, before)


def test_a_look_on_a_page_that_is_old_is_refused(pages: Browser, record: SiteRecord) -> None:
    place = len(record.entries())
    look = {"does": "look", "path": "kit/units/H-1/condition"}
    pages.post(HOIST, **look, value="defective")
    before = len(record.entries())
    answer = pages.post(HOIST, **look, value="sound", place=place)
    assert "Since you opened this page" in refused(answer, record, before)


def test_a_test_joins_the_others(pages: Browser, record: SiteRecord) -> None:
    before, was = len(record.entries()), unit(record, "H-1")
    said = {"what": "load test", "by": "Q. Pole", "day": "2026-11-24", "until": "2027-11-23"}
    tried = TestOf.LOADED
    pages.post(HOIST, does="test", **said, of=tried, found="did not hold", document="sheet 7")
    days = ("2026-11-24", "2027-11-23")
    test = Test("load test", "Q. Pole", *days, "sheet 7", tried, TestFound.NOT_HELD)
    assert written(record, before) == [bodies.UnitLookedAt(replace(was, tests=(*was.tests, test)))]
    assert "did not hold" in pages.get(HOIST).plain


@pytest.mark.parametrize(
    ("wrong", "telling"),
    [
        ({"what": " "}, "What was tested: found nothing"),
        ({"by": ""}, "Who tested it: found nothing"),
        ({"day": "24.11.2026"}, "not written as year-month-day"),
        ({"day": "2026-02-30"}, "no day or time of the calendar"),
        ({"day": "2026-11-26"}, "not after 2026-11-25"),
        ({"until": "2026-11-01"}, "not before 2026-11-24"),
        ({"until": ""}, "Counts until"),
        ({"of": ""}, "What it tried: found"),
        ({"of": "the paint"}, "expected one of: secondary brake"),
        ({"found": ""}, "How it ended: found"),
        ({"found": "well"}, "expected one of: held, did not hold"),
    ],
)
def test_a_test_without_its_days_or_names_is_refused(
    pages: Browser, record: SiteRecord, wrong: dict[str, str], telling: str
) -> None:
    before = len(record.entries())
    said = {"what": "load test", "by": "QP", "day": "2026-11-24", "until": "2027-11-23"}
    said |= {"of": TestOf.LOADED, "found": TestFound.HELD}
    answer = pages.post(HOIST, does="test", **{**said, **wrong})
    assert telling in refused(answer, record, before)


def test_a_thing_is_registered_with_five_fields(pages: Browser, record: SiteRecord) -> None:
    before = len(record.entries())
    answer = pages.post(
        "/kit/new?kind=rope", kind="rope", tag="W-9", of="W", serial="77", condition="sound"
    )
    assert answer.status == 200
    seen = StatedValue(
        Condition.SOUND, evidence=Evidence.MEASURED, by="MT", at="2026-11-25T12:00", text="sound"
    )
    new = Unit("W-9", UnitKind.ROPE, "W", serial="77", condition=seen)
    assert written(record, before) == [bodies.UnitRegistered(new)]
    assert "It hangs nowhere today" in answer.plain


def test_a_condition_that_nobody_saw_stays_blank(pages: Browser, record: SiteRecord) -> None:
    spare(pages)
    assert unit(record, "H-9").condition is None


@pytest.mark.parametrize(
    ("wrong", "telling"),
    [
        ({"tag": "H-1"}, "H-1 is taken: it is a hoist of type H"),
        ({"tag": "W-1"}, "W-1 is taken: it is a rope of type W"),
        ({"tag": "H"}, "H is the name of a type"),
        ({"tag": ""}, "Tag: found nothing"),
        ({"tag": "a/b"}, "no stroke"),
        ({"tag": "x" * 41}, "at most 40"),
        ({"of": "W"}, "expected a type of hoist: H, WEAK"),
        ({"kind": "crane"}, "expected one of: hoist"),
        ({"condition": "fine"}, "expected one of: sound"),
    ],
)
def test_a_thing_that_cannot_be_registered_is_refused(
    pages: Browser, record: SiteRecord, wrong: dict[str, str], telling: str
) -> None:
    before = len(record.entries())
    said = {"kind": "hoist", "tag": "H-9", "of": "H", "serial": "", "condition": ""}
    answer = pages.post("/kit/new?kind=hoist", **{**said, **wrong})
    assert telling in refused(answer, record, before)


def test_an_exchange_is_told_before_and_after_with_the_drop_that_falls(
    pages: Browser, record: SiteRecord
) -> None:
    spare(pages)
    assert "Ends the acceptance" not in pages.get(HOIST).plain
    in_service(pages, record)
    assert "Ends the acceptance of D." in pages.get(HOIST).plain
    path = "suspension_points/L/hoist"
    answer = pages.post(HOIST, does="exchange", drop="D", path=path, put_in="H-9")
    said = bodies.UnitExchanged("D", ("suspension_points", "L", "hoist"), "H-1", "H-9")
    assert last(record) == said
    assert "Drop D is accepted no longer" in answer.plain
    assert "Ended the acceptance of D." in answer.plain
    assert state(record) is State.STOPPED
    assert "point L" in pages.get("/kit/H-9/").plain
    assert "hangs nowhere" in pages.get(HOIST).plain


def test_a_stage_and_a_lot_are_exchanged_where_they_have_no_id(
    pages: Browser, record: SiteRecord
) -> None:
    pages.post("/kit/new?kind=stage", kind="stage", tag="ST-9", of="ST", serial="", condition="")
    pages.post("/kit/ST-1/", does="exchange", drop="D", path="stages/0/stage", put_in="ST-9")
    assert last(record) == bodies.UnitExchanged("D", ("stages", "0", "stage"), "ST-1", "ST-9")
    pages.post("/kit/new?kind=piece", kind="piece", tag="LOT-9", of="P", serial="", condition="")
    path = "suspension_points/L/counterweighted_beam/stack/groups/0/piece"
    pages.post(LOT, does="exchange", drop="D", path=path, put_in="LOT-9")
    assert last(record) == bodies.UnitExchanged("D", tuple(path.split("/")), "LOT", "LOT-9")


@pytest.mark.parametrize(
    ("wrong", "telling"),
    [
        ({"put_in": "H-2"}, "H-2 hangs at D, point R; take it out there first"),
        ({"put_in": "W-1"}, "found the rope W-1, expected another hoist"),
        ({"put_in": "H-1"}, "expected another hoist"),
        ({"put_in": "H-8"}, "found no thing with the tag 'H-8'"),
        ({"path": "suspension_points/R/hoist"}, "where it does not hang"),
        ({"drop": "E"}, "where it does not hang"),
    ],
)
def test_an_exchange_that_cannot_be_is_refused(
    pages: Browser, record: SiteRecord, wrong: dict[str, str], telling: str
) -> None:
    spare(pages)
    before = len(record.entries())
    said = {"drop": "D", "path": "suspension_points/L/hoist", "put_in": "H-9"}
    answer = pages.post(HOIST, does="exchange", **{**said, **wrong})
    assert telling in refused(answer, record, before)


def test_a_defective_thing_stands_first_and_stops_its_drop(
    pages: Browser, record: SiteRecord
) -> None:
    in_service(pages, record)
    pages.post(HOIST, does="look", path="kit/units/H-1/condition", value="defective")
    shown = pages.get("/kit/").plain
    assert "Something stands against these H-1 hoist" in shown
    assert "D: Condition: defective" in shown
    assert state(record) is State.STOPPED
    assert "still accepted" not in pages.get(HOIST).plain


def test_a_thing_in_two_places_is_refused(tmp_path: Path) -> None:
    twice = put(PROJECT, ("drops", "D", "rig", "suspension_points", "R", "hoist"), "H-1")
    with made(tmp_path / "twice", twice) as record:
        shown = browser(record).get("/kit/").plain
    assert "H-1 is also named at D/R: it can hang in one place only" in shown


def test_a_concern_stops_its_drops_until_a_named_test_settles_it(
    pages: Browser, record: SiteRecord
) -> None:
    in_service(pages, record)
    shown = pages.get(HOIST).plain
    assert "It stops D." in shown
    assert "Ends the acceptance of D." in shown
    answer = pages.post(HOIST, does="concern", says="a grinding noise")
    noted = last(record)
    assert isinstance(noted, bodies.ConcernNoted)
    assert (noted.about, noted.says) == ("H-1", "a grinding noise")
    assert state(record) is State.STOPPED
    assert "Nobody rides while it is open: D" in answer.plain
    assert "Drop D is accepted no longer" in answer.plain
    assert "open concern" in pages.get("/kit/").plain
    page = f"/concerns/{noted.id}/"
    before = len(record.entries())
    assert "found nothing" in refused(pages.post(page, test=" ", says="x"), record, before)
    assert "found nothing" in refused(pages.post(page, test="load test"), record, before)
    pages.post(page, test="load test of 25 November", says="holds")
    closed = bodies.ConcernClosed(noted.id, "load test of 25 November", "holds")
    assert last(record) == closed
    assert "closed" in pages.get(page).plain
    assert "grinding" not in pages.get("/kit/").plain
    assert "grinding" in pages.get(HOIST).plain  # it stays in its history
    assert state(record) is State.STOPPED  # a closed concern permits nothing


def test_a_closed_concern_is_not_closed_again(pages: Browser, record: SiteRecord) -> None:
    pages.post(HOIST, does="concern", says="noise")
    noted = last(record)
    assert isinstance(noted, bodies.ConcernNoted)
    page = f"/concerns/{noted.id}/"
    place = len(record.entries())
    pages.post(page, test="load test", says="holds")
    before = len(record.entries())
    token = pages.cookies["csrftoken"]
    said = {"csrfmiddlewaretoken": token, "place": place, "test": "another", "says": "x"}
    assert "closed already" in refused(pages.send(page, said), record, before)


def test_wear_is_of_a_wire_rope_alone(tmp_path: Path) -> None:
    cord = put(PROJECT, ("kit", "ropes", "W", "kind"), RopeKind.SYNTHETIC)
    with made(tmp_path / "cord", cord) as record:
        shown = browser(record).get(ROPE).plain
    assert "broken wires" not in shown
    assert "condition sound" in shown


def test_what_is_not_there_is_told(pages: Browser, record: SiteRecord) -> None:
    before = len(record.entries())
    told = refused(pages.get("/kit/H-11/"), record, before)
    assert "found no thing with the tag 'H-11'; did you mean H-1" in told
    assert "found no concern 'x'" in refused(pages.get("/concerns/x/"), record, before)
    assert "expected a look" in refused(pages.post(HOIST, does="burn"), record, before)


def test_nobody_who_speaks_states_nothing_of_a_thing(silent: Browser, record: SiteRecord) -> None:
    before = len(record.entries())
    look = {"does": "look", "path": "kit/units/H-1/condition", "value": "sound"}
    for page, said in ((HOIST, look), (HOIST, {"does": "concern", "says": "noise"})):
        assert "Nobody said who speaks" in refused(silent.post(page, **said), record, before)
    answer = silent.post("/kit/new?kind=hoist", kind="hoist", tag="H-9", of="H")
    assert "Nobody said who speaks" in refused(answer, record, before)


def test_a_test_that_is_over_is_told_on_its_day(record: SiteRecord) -> None:
    late = browser(record, NOON.replace(year=2027) + datetime.timedelta(days=1))
    assert "brake trip test: until 2027-09-30, over" in late.get("/kit/").plain
