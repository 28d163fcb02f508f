"""A page of a PDF under the plan: chosen, kept as a picture beside its PDF, laid as one."""

from __future__ import annotations

import hashlib
import re
from collections import OrderedDict

import pytest

from backspan.core.ledger import bodies
from backspan.core.ledger.entry import Entry
from backspan.core.model.underlay import laid_under
from backspan.exchange import pdf_page
from backspan.exchange.pdf_page import PageError, page_picture
from backspan.records.api import SiteRecord
from backspan.web.plan import under_page
from tests.site.bench import Answer, Browser
from tests.site.pdfs import CARRIES, OUTLINE, SCRIPT, pdf
from tests.site.underlays import AT, handed_in, picked

THREE = pdf(b"", b"1 0 0 rg 0 0 99 99 re f", OUTLINE)
#: The outline of a page in its dots, 300 to an inch of 72 points: 600 points are 60 ft.
_DOTS = 300 / 72
ON_PAGE = {
    "at1": "corner:1",
    "at2": "apart:",
    "apart": "60 ft",
    "taped": "40 ft",
    **{f"x{one}": f"{at * _DOTS:.1f}" for one, at in zip("1234", (50, 650, 650, 650), strict=True)},
    **{f"y{one}": f"{at * _DOTS:.1f}" for one, at in zip("1234", (450, 450, 450, 50), strict=True)},
}


@pytest.fixture(autouse=True)
def _nothing_known(monkeypatch: pytest.MonkeyPatch) -> None:
    """As after a start: no page was rendered yet."""
    monkeypatch.setattr(under_page, "_MADE", OrderedDict())


def chosen(pages: Browser, number: str, content: bytes = THREE) -> Answer:
    """A PDF handed in and a page of it chosen."""
    shown = handed_in(pages, "roof.pdf", content)
    return picked_page(pages, shown, number)


def picked_page(pages: Browser, shown: Answer, number: str, **said: str) -> Answer:
    """The form of the pages, filled and sent."""
    carried = dict(re.findall(r'name="(csrfmiddlewaretoken|pdf|name)" value="([^"]*)"', shown.text))
    return pages.send(AT, {**carried, "does": "page", "page": number, **said})


def hash_of(content: bytes) -> str:
    """The name of a file of evidence."""
    return hashlib.sha256(content).hexdigest()


def under_of(entry: Entry) -> bodies.UnderlayLaid:
    """What an entry lays."""
    assert isinstance(entry.body, bodies.UnderlayLaid)
    return entry.body


def test_a_chosen_page_is_laid_checked_signed_and_shown(pages: Browser, record: SiteRecord) -> None:
    before = len(record.entries())
    asked = handed_in(pages, "roof.pdf", THREE)
    assert asked.status == 200
    assert "It has 3 pages" in asked.plain
    assert record.evidence.all() == (hash_of(THREE),)
    shown = picked_page(pages, asked, "3")
    assert shown.status == 200
    made = page_picture(THREE, "roof.pdf", 3)
    picture = hash_of(made.png)
    assert set(record.evidence.all()) == {hash_of(THREE), picture}
    assert "Lay roof.pdf, page 3" in shown.plain
    assert "Page 3 of 3 of a PDF, as a picture of 2,917 by 2,084 dots" in shown.plain
    assert "any scale printed on it count for nothing" in shown.plain
    assert f'<image href="/evidence/{picture}"' in shown.text
    assert "The third length agrees" in picked(pages, shown, **ON_PAGE).plain
    assert len(record.entries()) == before
    done = picked(pages, shown, does="sign", **ON_PAGE)
    assert done.status == 200
    (entry,) = record.entries()[before:]
    under = under_of(entry).underlay
    assert entry.envelope.evidence == (picture, hash_of(THREE))
    assert (under.file, under.name, under.size) == (picture, "roof.pdf, page 3", made.size)
    corner = laid_under(under).on_roof((650 * _DOTS, 50 * _DOTS))
    assert corner == pytest.approx((18.288, 12.192), abs=0.01)
    plan = pages.get("/plan/ROOF/")
    assert "Under it: roof.pdf, page 3" in plan.plain
    assert f'<image href="/evidence/{picture}" width="2917" height="2084"' in plan.text


def test_what_is_kept_is_handed_out_by_its_kind(pages: Browser, record: SiteRecord) -> None:
    content = pdf(OUTLINE, catalog=f"{SCRIPT} {CARRIES}")
    handed_in(pages, "roof.pdf", content)
    (picture,) = set(record.evidence.all()) - {hash_of(content)}
    image, file = (pages.get(f"/evidence/{one}") for one in (picture, hash_of(content)))
    assert image.headers["Content-Type"] == "image/png"
    assert file.headers["Content-Type"] == "application/octet-stream"
    assert file.headers["Content-Disposition"].startswith("attachment")
    assert file.body == content


def test_the_only_page_is_taken_at_once(pages: Browser, record: SiteRecord) -> None:
    shown = handed_in(pages, "roof.pdf", pdf(OUTLINE))
    assert "Lay roof.pdf, page 1" in shown.plain
    assert "another page" not in shown.plain
    assert picked(pages, shown, does="sign", **ON_PAGE).status == 200
    assert under_of(record.entries()[-1]).underlay.name == "roof.pdf, page 1"


def test_what_the_page_says_of_its_size_lays_nothing(pages: Browser) -> None:
    """Printed to half its size it lies as it did: by its points. A wrong length is refused."""
    half = b"0.5 0 0 0.5 0 0 cm " + OUTLINE
    shown = handed_in(pages, "roof.pdf", pdf(half, size=(350, 250)))
    said = {
        name: f"{float(value) / 2:.1f}" if name[0] in "xy" else value
        for name, value in ON_PAGE.items()
    }
    assert picked(pages, shown, **said).status == 200
    page = picked(pages, shown, **{**said, "taped": "80 ft"})
    assert page.status == 400
    assert "on what was laid and 80'-0\" by the tape" in page.plain
    assert "(12192 mm) shorter on it" in page.plain


@pytest.mark.parametrize("number", ["0", "9", "201", "", "x", "1.5", "-1", "²", "9" * 99])
def test_a_page_that_is_not_there_is_refused_and_asked_for_again(
    pages: Browser, record: SiteRecord, number: str
) -> None:
    page = chosen(pages, number)
    assert page.status == 400
    assert re.search("found .*expected (a page from 1 to 3|its number in the file)", page.plain)
    assert "Choose a page of roof.pdf" in page.plain
    assert record.evidence.all() == (hash_of(THREE),)
    assert picked_page(pages, page, "3").status == 200


@pytest.mark.parametrize(
    ("name", "content", "told"),
    [
        ("roof.pdf", pdf(OUTLINE, encrypted=True), "found an encrypted PDF"),
        ("roof.pdf", THREE[:-40], "it was cut short"),
        ("roof.pdf", pdf(), "found a PDF without a page"),
        ("roof.pdf", pdf(b"", size=(14_500, 100)), "found a page of 201.4 by 1.389 inches"),
        ("roof.pdf", b"PK\x03\x04 what an archive has", "or a PDF"),
        (f"{'x' * 70}.pdf", THREE, "expected one line of 1 to 80 signs"),
    ],
)
def test_a_bad_file_is_refused_and_nothing_of_it_is_kept(
    pages: Browser, record: SiteRecord, name: str, content: bytes, told: str
) -> None:
    page = handed_in(pages, name, content)
    assert page.status == 400
    assert told in page.plain
    assert record.evidence.all() == ()


def test_what_is_too_large_is_refused(pages: Browser, record: SiteRecord) -> None:
    page = handed_in(pages, "roof.pdf", THREE[:-6] + b"%" * 41_000_000 + b"\n%%EOF")
    assert page.status == 400
    assert "expected at most 40 MB" in page.plain
    assert record.evidence.all() == ()


def test_nobody_hands_in_or_chooses_before_somebody_speaks(
    silent: Browser, record: SiteRecord
) -> None:
    assert "Nobody said who speaks" in handed_in(silent, "roof.pdf", THREE).plain
    assert record.evidence.all() == ()
    with record.evidence.folder.parent.joinpath("given.pdf").open("w+b") as file:
        file.write(THREE)
        file.seek(0)
        kept = record.evidence.keep(file)
    page = silent.get(f"{AT}?pdf={kept}&name=roof.pdf")
    assert page.status == 200
    assert "Nobody said who speaks" in picked_page(silent, page, "3").plain
    assert record.evidence.all() == (kept,)


def test_a_form_cannot_put_a_picture_beside_a_pdf_it_is_not_of(
    pages: Browser, record: SiteRecord
) -> None:
    shown = chosen(pages, "3")
    before = len(record.entries())
    other = picked(pages, shown, does="sign", **{**ON_PAGE, "page": "2"})
    assert other.status == 400
    assert "found no picture of it kept, expected it chosen first" in other.plain
    assert len(record.entries()) == before
    assert len(record.evidence.all()) == 2


def test_a_page_is_known_again_and_rendered_anew_after_a_start(
    pages: Browser, record: SiteRecord, monkeypatch: pytest.MonkeyPatch
) -> None:
    shown = chosen(pages, "3")
    monkeypatch.setattr(under_page, "_MADE", OrderedDict())
    assert picked(pages, shown, **ON_PAGE).status == 200

    def stopped(*_: object) -> None:
        raise PageError("rendered again")

    monkeypatch.setattr(under_page, "page_picture", stopped)
    assert picked(pages, shown, does="sign", **ON_PAGE).status == 200
    assert isinstance(record.entries()[-1].body, bodies.UnderlayLaid)


@pytest.mark.parametrize("which", ["pdf", "picture"])
def test_what_was_damaged_since_is_not_signed(
    pages: Browser, record: SiteRecord, which: str
) -> None:
    shown = chosen(pages, "3")
    before = len(record.entries())
    (picture,) = set(record.evidence.all()) - {hash_of(THREE)}
    damaged = hash_of(THREE) if which == "pdf" else picture
    record.evidence.folder.joinpath(damaged).write_bytes(b"other")
    page = picked(pages, shown, does="sign", **ON_PAGE)
    assert page.status >= 400
    assert "found content with the hash" in page.plain
    assert len(record.entries()) == before


def test_a_page_that_stops_its_process_is_told_and_the_workbench_goes_on(
    pages: Browser, record: SiteRecord, monkeypatch: pytest.MonkeyPatch
) -> None:
    with monkeypatch.context() as stopping:
        stopping.setattr(pdf_page, "_MODULE", "backspan.exchange.no_such_module")
        page = handed_in(pages, "roof.pdf", THREE)
        assert page.status == 400
        assert "found something that stopped the reading" in page.plain
        assert record.evidence.all() == ()
    assert handed_in(pages, "roof.pdf", THREE).status == 200


def test_requests_for_no_page_are_refused(pages: Browser, record: SiteRecord) -> None:
    shown = chosen(pages, "3")
    (picture,) = set(record.evidence.all()) - {hash_of(THREE)}
    for query in (
        f"pdf={'ab' * 32}&name=a",
        "pdf=x&name=a",
        f"pdf={picture}&name=a",
        f"pdf={hash_of(THREE)}&name=",
        f"pdf={hash_of(THREE)}&name=a&page=9",
        f"pdf={hash_of(THREE)}&name=a&page=1",
        f"file={hash_of(THREE)}&name=a.pdf",
    ):
        assert pages.get(f"{AT}?{query}").status == 400
    page = picked(pages, shown, **{**ON_PAGE, "page": ""})
    assert page.status == 400
    assert "expected upload, page of a PDF, or check or sign with its file" in page.plain
