"""Anchors: until when their papers count, what is stated of them, which drops fall with them."""

from __future__ import annotations

import datetime

import pytest

from backspan.core.ledger import bodies
from backspan.core.ledger.drop_states import State
from backspan.core.ledger.fold import fold
from backspan.core.model.site import Anchor, AnchorStanding
from backspan.records.api import SiteRecord
from tests.site.bench import NOON, Browser, browser
from tests.site.test_drop import in_service, last, state
from tests.site.test_kit import refused

AT = "/anchors/ROOF/A1/"
INSPECTED = {"does": "inspected", "day": "2026-11-24", "standing": "in service"}


def anchor(record: SiteRecord, name: str) -> Anchor:
    """An anchor as it stands."""
    (roof,) = fold(record.entries()).project.site.roofs
    return next(one for one in roof.anchors if one.id == name)


def test_the_register_tells_papers_and_lines(pages: Browser) -> None:
    shown = pages.get("/anchors/")
    assert shown.status == 200
    assert "day of its inspection: 2026-03-03, counts until 2027-03-02, 97 days" in shown.plain
    assert "tieback: 5,000 lb" in shown.plain
    assert "no line goes to it" in shown.plain  # AE
    assert "six weeks" not in shown.plain
    assert 'href="/anchors/"' in pages.get("/").text


def test_anchors_whose_days_pass_within_six_weeks_stand_first(record: SiteRecord) -> None:
    day = datetime.datetime(2027, 1, 20, 12, tzinfo=datetime.UTC)
    late = browser(record, day)
    shown = late.get("/anchors/").plain
    assert "Days passed or passing within six weeks" in shown
    assert "counts until 2027-03-02, 41 days" in shown
    out = late.get("/").plain
    assert "2027-03-02 41 days" in out
    assert "anchors A1, A2, A3, A4 on ROOF, by the day of its inspection D" in out
    assert "anchors AE, AF, AG, AH on ROOF, by the day of its inspection none in use" in out


def test_an_anchor_has_the_sentences_of_the_review(pages: Browser) -> None:
    shown = pages.get(AT).plain
    assert "counts until 2027-03-02" in shown
    assert "What the reviews of today say of it" in shown
    assert "Anchor A1, day of its inspection: counts until 2027-03-02." in shown


def test_an_inspection_is_one_entry_and_its_drop_is_named(
    pages: Browser, record: SiteRecord
) -> None:
    in_service(pages, record)
    assert "Ends the acceptance of D" in pages.get(AT).plain
    before = len(record.entries())
    answer = pages.post(AT, **INSPECTED, certified="2026-11-20", says="tight")
    said = bodies.AnchorInspected(
        "ROOF", "A1", "2026-11-24", AnchorStanding.IN_SERVICE, "2026-11-20", "tight"
    )
    assert [one.body for one in record.entries()[before:]] == [said]
    assert anchor(record, "A1").certified == "2026-11-20"
    assert "Drop D is accepted no longer" in answer.plain
    assert state(record) is State.STOPPED


def test_without_a_certificate_the_old_one_stays(pages: Browser, record: SiteRecord) -> None:
    pages.post(AT, **INSPECTED)
    said = anchor(record, "A1")
    assert (said.inspected, said.certified) == ("2026-11-24", "2022-06-01")


@pytest.mark.parametrize(
    ("wrong", "telling"),
    [
        ({"day": ""}, "Day of the inspection: found ''"),
        ({"day": "yesterday"}, "not written as year-month-day"),
        ({"day": "2026-11-26"}, "not after 2026-11-25"),
        ({"standing": "fine"}, "expected one of: in service"),
        ({"standing": ""}, "expected one of: in service"),
        ({"certified": "2026-13-01"}, "Day of the certificate"),
        ({"says": "x" * 501}, "at most 500"),
        ({"does": "burn"}, "expected an inspection"),
    ],
)
def test_an_inspection_that_cannot_be_is_refused(
    pages: Browser, record: SiteRecord, wrong: dict[str, str], telling: str
) -> None:
    before = len(record.entries())
    answer = pages.post(AT, **{**INSPECTED, **wrong})
    assert telling in refused(answer, record, before)


def test_an_inspection_on_a_page_that_is_old_is_refused(pages: Browser, record: SiteRecord) -> None:
    place = len(record.entries())
    pages.post(AT, does="withdraw", why="cracked")
    before = len(record.entries())
    answer = pages.post(AT, **INSPECTED, place=place)
    assert "cracked" in refused(answer, record, before)
    assert anchor(record, "A1").standing is AnchorStanding.OUT_OF_SERVICE


def test_a_withdrawn_anchor_ends_the_acceptance_of_its_drop_and_today_says_so(
    pages: Browser, record: SiteRecord
) -> None:
    in_service(pages, record)
    assert "1 of 1 drops in service" in pages.get("/").plain
    assert "Withdraw it Ends the acceptance of D." in pages.get(AT).plain
    answer = pages.post(AT, does="withdraw", why="cracked weld")
    assert last(record) == bodies.AnchorWithdrawn("ROOF", "A1", "cracked weld")
    assert "Drop D is accepted no longer" in answer.plain
    assert "withdraw A1" not in answer.plain
    assert state(record) is State.STOPPED
    today = pages.get("/").plain
    assert "0 of 1 drops in service" in today
    assert "cracked weld" in today
    assert "Out of service" in pages.get("/anchors/").plain


def test_an_anchor_that_no_line_needs_falls_alone(pages: Browser, record: SiteRecord) -> None:
    in_service(pages, record)
    page = "/anchors/ROOF/AE/"
    assert "Ends the acceptance" not in pages.get(page).plain
    pages.post(page, does="withdraw", why="cracked weld")
    assert state(record) is State.IN_SERVICE


def test_a_withdrawal_needs_a_reason_and_happens_once(pages: Browser, record: SiteRecord) -> None:
    before = len(record.entries())
    answer = pages.post(AT, does="withdraw", why=" ")
    assert "Why: found nothing" in refused(answer, record, before)
    pages.post(AT, does="withdraw", why="cracked")
    before = len(record.entries())
    answer = pages.post(AT, does="withdraw", why="again")
    assert "out of service already" in refused(answer, record, before)


def test_a_concern_about_an_anchor_stops_the_drops_that_use_it(
    pages: Browser, record: SiteRecord
) -> None:
    in_service(pages, record)
    answer = pages.post(AT, does="concern", says="rust at the base")
    noted = last(record)
    assert isinstance(noted, bodies.ConcernNoted)
    assert noted.about == "A1"
    assert state(record) is State.STOPPED
    assert "anchor A1" in answer.plain
    assert "rust at the base" in pages.get("/anchors/").plain


def test_an_anchor_that_is_not_there(pages: Browser, record: SiteRecord) -> None:
    before = len(record.entries())
    assert "found no anchor 'A9'" in refused(pages.get("/anchors/ROOF/A9/"), record, before)
    assert "found no anchor 'A1'" in refused(pages.get("/anchors/X/A1/"), record, before)


def test_the_day_after_its_last_an_anchor_is_over(record: SiteRecord) -> None:
    day = datetime.datetime(2027, 3, 3, 12, tzinfo=NOON.tzinfo)
    assert "counts until 2027-03-02, over" in browser(record, day).get("/anchors/").plain


def test_nobody_who_speaks_states_nothing_of_an_anchor(silent: Browser, record: SiteRecord) -> None:
    before = len(record.entries())
    answer = silent.post(AT, does="withdraw", why="cracked")
    assert "Nobody said who speaks" in refused(answer, record, before)
