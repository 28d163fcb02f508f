"""A drop on the workbench: stated, connected, permitted, checked, stopped; one tap, one entry."""

from __future__ import annotations

import datetime
import html
import re
from dataclasses import replace
from pathlib import Path

import pytest

from backspan.core.ledger import bodies
from backspan.core.ledger.drop_states import State
from backspan.core.ledger.fold import fold
from backspan.core.ledger.happenings import lines_of
from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.review import review
from backspan.core.review.front import front_data
from backspan.records.api import SiteRecord
from backspan.records.store import Statement
from tests.site.bench import IMPORTER, NOON, Browser, browser, made
from tests.unit.core.rigs import LIBRARY, ON, PROJECT

DROP, AT = "D", "/drops/D/"
AGO = NOON.isoformat()
RIG = "drops/D/rig/suspension_points/L/counterweighted_beam"
REACH = f"{RIG}/reach"


def state(record: SiteRecord) -> State:
    """Where the drop stands by the record."""
    return fold(record.entries()).record(DROP).state


def last(record: SiteRecord) -> object:
    """What was said last."""
    return record.entries()[-1].body


def connect_all(pages: Browser, record: SiteRecord) -> None:
    """Each line, seen by two."""
    for line in lines_of(fold(record.entries()).rig(DROP)):
        answer = pages.post(f"{AT}connect", AT, line=line, second="QP")
        assert answer.status == 200


def in_service(pages: Browser, record: SiteRecord) -> None:
    """From rigged into service by the forms."""
    connect_all(pages, record)
    pages.post(f"{AT}permit", AT)
    shown = pages.get(f"{AT}shift").text
    seen = dict.fromkeys(re.findall(r'name="(seen-[0-9]+)"', shown), "1")
    pages.post(f"{AT}shift", **seen)


def test_a_drop_goes_into_service_by_the_forms_and_is_told_so_today(
    pages: Browser, record: SiteRecord
) -> None:
    in_service(pages, record)
    assert state(record) is State.IN_SERVICE
    shown = pages.get("/")
    assert "1 of 1 drops in service" in shown.plain
    assert "in service" in pages.get(AT).plain


def test_the_page_gives_the_answer_that_the_review_gives(pages: Browser) -> None:
    front = front_data(review(PROJECT, DROP, LIBRARY, on=ON, compared=False))
    shown = pages.get(AT).plain
    assert front["answer"] in shown
    assert front["configuration"] in shown


def test_a_number_is_stated_as_typed_by_who_speaks_now(pages: Browser, record: SiteRecord) -> None:
    answer = pages.post(f"{AT}state", AT, path=REACH, value="2 ft 0 1/2 in")
    assert answer.status == 200
    said = last(record)
    assert isinstance(said, bodies.NumberFound)
    assert said.path == tuple(REACH.split("/"))
    assert said.found.value == pytest.approx(24.5 * 0.0254, rel=1e-12)
    assert (said.found.text, said.found.by) == ("2 ft 0 1/2 in", "MT")
    assert said.found.evidence is Evidence.MEASURED
    assert said.found.at == "2026-11-25T12:00"
    assert "2'-0 1/2\"" in pages.get(AT).text


def test_what_is_still_so_is_stated_anew_to_the_last_digit_and_ends_nothing(
    record: SiteRecord,
) -> None:
    third = StatedValue(1 / 3, None, Evidence.MEASURED, "MT", "2026-11-25")
    record.say([Statement(bodies.NumberFound(tuple(REACH.split("/")), third), IMPORTER)], at=AGO)
    later = browser(record, NOON + datetime.timedelta(days=40))
    later.post("/speaker", person="MT")
    before = fold(record.entries()).codes(DROP)
    assert "still 13.1234 in" in later.get(AT).text
    later.post(f"{AT}state", AT, path=REACH, again="1")
    said = last(record)
    assert isinstance(said, bodies.NumberFound)
    assert (said.found.value, said.found.at) == (1 / 3, "2027-01-04T12:00")
    assert fold(record.entries()).codes(DROP) == before


def test_a_word_and_a_count_are_one_entry_each(pages: Browser, record: SiteRecord) -> None:
    before = len(record.entries())
    pages.post(f"{AT}state", AT, path="drops/D/rig/power", value="defective")
    pages.post(f"{AT}state", AT, path=f"{RIG}/stack/groups/0/count", value="15")
    word, count = (one.body for one in record.entries()[before:])
    assert isinstance(word, bodies.WordFound)
    assert isinstance(count, bodies.CountFound)
    assert (word.found.value, count.found.value) == ("defective", 15)
    assert "fail" in pages.get(AT).plain


@pytest.mark.parametrize(
    ("path", "value", "telling"),
    [
        (REACH, "24", "a length is wanted"),
        (REACH, "two feet", "a length is wanted"),
        (REACH, "-2 ft", "more than zero"),
        (f"{RIG}/stack/groups/0/count", "many", "expected a whole number"),
        ("drops/D/rig/power", "fine", "expected one of: there and sound"),
        ("drops/D/rig/nothing", "1 ft", "nothing is stated there"),
        ("drops/E/rig/power", "defective", "expected one of D"),
        ("site/name", "x", "nothing is stated there"),
        ("", "", "nothing is stated there"),
    ],
)
def test_what_cannot_stand_there_is_refused_and_nothing_is_written(
    pages: Browser, record: SiteRecord, path: str, value: str, telling: str
) -> None:
    before = len(record.entries())
    answer = pages.post(f"{AT}state", AT, path=path, value=value)
    assert answer.status == 400
    assert telling in answer.plain
    assert len(record.entries()) == before


def test_what_only_a_paper_says_is_not_found_by_a_tap_or_without_the_paper(
    pages: Browser, record: SiteRecord
) -> None:
    path, before = f"{RIG}/fulcrum/surface_strength", len(record.entries())
    wrongs: tuple[dict[str, str], ...] = ({}, {"evidence": "measured"}, {"evidence": "certificate"})
    for wrong in wrongs:
        assert pages.post(f"{AT}state", AT, path=path, value="40 psi", **wrong).status == 400
    assert len(record.entries()) == before
    pages.post(f"{AT}state", AT, path=path, value="41 psi", evidence="certificate", document="L 7")
    said = last(record)
    assert isinstance(said, bodies.NumberFound)
    assert (said.found.evidence, said.found.document) == (Evidence.CERTIFICATE, "L 7")


def test_two_persons_on_one_value_the_later_one_sees_the_first(
    pages: Browser, record: SiteRecord
) -> None:
    shown = pages.get(AT).text
    other = browser(record)
    other.post("/speaker", person="QP")
    other.post(f"{AT}state", AT, path=REACH, value="2 ft")
    place = re.search(r'name="place" value="([0-9]+)"', shown)
    assert place is not None
    answer = pages.post(f"{AT}state", AT, path=REACH, value="3 ft", place=place[1])
    assert answer.status == 400
    assert "stated something else there" in answer.plain
    assert fold(record.entries()).disputes.unsettled == []


def test_a_permit_on_a_page_that_is_old_is_refused(pages: Browser, record: SiteRecord) -> None:
    connect_all(pages, record)
    place = len(record.entries())
    pages.post(f"{AT}stop", AT, why="a noise")
    answer = pages.post(f"{AT}permit", AT, place=place)
    assert answer.status == 400
    assert "a noise" in answer.plain
    assert state(record) is State.STOPPED


def test_what_the_review_does_not_pass_cannot_be_permitted(
    pages: Browser, record: SiteRecord
) -> None:
    connect_all(pages, record)
    pages.post(f"{AT}state", AT, path="drops/D/rig/power", value="not there")
    assert 'action="/drops/D/permit"' not in pages.get(AT).text
    answer = pages.send(
        f"{AT}permit",
        {"csrfmiddlewaretoken": pages.cookies["csrftoken"], "place": len(record.entries())},
    )
    assert answer.status == 400
    assert "The review of today answers: fail" in answer.plain


def test_a_stop_is_one_form_from_any_state_and_needs_a_reason(
    pages: Browser, record: SiteRecord
) -> None:
    in_service(pages, record)
    assert pages.post(f"{AT}stop", AT, why=" ").status == 400
    pages.post(f"{AT}stop", AT, why="cracked stirrup", place="0")
    assert state(record) is State.STOPPED
    assert "cracked stirrup" in pages.get("/").plain


def test_a_stop_of_the_whole_site_names_no_drop(pages: Browser, record: SiteRecord) -> None:
    pages.post(f"{AT}stop", AT, why="storm", everywhere="1")
    assert last(record) == bodies.UseStopped((), "storm")


def test_a_shift_check_with_a_line_not_seen_is_none(pages: Browser, record: SiteRecord) -> None:
    connect_all(pages, record)
    pages.post(f"{AT}permit", AT)
    answer = pages.post(f"{AT}shift", **{"seen-0": "1"})
    assert answer.status == 400
    assert "Not looked at yet" in answer.plain
    assert state(record) is State.ACCEPTED
    assert pages.post(f"{AT}shift", unfit="1").status == 400
    pages.post(f"{AT}shift", unfit="1", says="ice on the deck")
    assert state(record) is State.STOPPED


def test_a_restriction_a_hold_and_its_end(pages: Browser, record: SiteRecord) -> None:
    assert pages.post(f"{AT}stop", AT, why="first").status == 200
    assert (
        "no permit in force"
        in pages.send(
            f"{AT}restrict",
            {"csrfmiddlewaretoken": pages.cookies["csrftoken"], "says": "one rider"},
        ).plain
    )
    in_service(pages, record)
    pages.post(f"{AT}restrict", AT, says="one rider only")
    assert "one rider only" in pages.get("/").plain
    pages.post(f"{AT}hold", AT, why="gusts")
    assert state(record) is State.ACCEPTED
    pages.post(f"{AT}hold", AT, why="calm", ends="1")
    assert "No shift check of the day" in pages.get("/").plain


def test_a_second_person_is_another_one(pages: Browser, record: SiteRecord) -> None:
    for second in ("MT", "", "NOBODY"):
        answer = pages.post(f"{AT}connect", AT, line="L", second=second)
        assert answer.status == 400
        assert "second person" in answer.plain
    assert pages.post(f"{AT}connect", AT, line="X", second="QP").status == 400
    assert fold(record.entries()).record(DROP).connected == {}


def test_a_drop_that_is_not_there(pages: Browser) -> None:
    answer = pages.get("/drops/X/")
    assert answer.status == 400
    assert "found no drop 'X'" in answer.plain


def test_nobody_who_speaks_writes_nothing(silent: Browser, record: SiteRecord) -> None:
    before = len(record.entries())
    answer = silent.post(f"{AT}stop", AT, why="a noise")
    assert answer.status == 400
    assert "Nobody said who speaks" in answer.plain
    assert len(record.entries()) == before


def test_what_people_write_is_shown_and_never_run(pages: Browser) -> None:
    bad = "<script>alert(1)</script>"
    pages.post(f"{AT}stop", AT, why=bad)
    for path in (AT, "/", "/record/"):
        body = pages.get(path).body.decode()
        assert bad not in body
        assert html.escape(bad) in body


def test_the_next_day_the_review_is_of_that_day(pages: Browser, record: SiteRecord) -> None:
    in_service(pages, record)
    later = browser(record, NOON + datetime.timedelta(days=1))
    shown = later.get("/").plain
    assert "0 of 1 drops in service" in shown
    assert "has run out" in shown


def test_a_drop_without_a_rig_offers_to_plan_one_or_to_bring_one(tmp_path: Path) -> None:
    further = replace(PROJECT.drops[0], id="E", rig=None)
    with made(tmp_path / "two", replace(PROJECT, drops=(*PROJECT.drops, further))) as record:
        shown = browser(record).get("/drops/E/")
    assert 'href="/set-up/drops/E/rig-of/D"' in shown.text
    assert "14 of 15 open" in shown.plain
