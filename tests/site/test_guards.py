"""What comes from another site, under another name, or too large is refused."""

from __future__ import annotations

import re
from pathlib import Path
from urllib.parse import quote

import pytest

from backspan.core.ledger import bodies
from backspan.core.ledger.drop_states import State
from backspan.core.ledger.fold import fold
from backspan.records.api import SiteRecord
from backspan.records.errors import StoreFullError
from backspan.web import uploads
from tests.postgres_server import running_server
from tests.site.bench import Browser, browser, made

HERE, AT = "http://127.0.0.1:8765", "/drops/D/"
JPEG = b"\xff\xd8\xff\xe0" + b"a picture" * 40
PATHS = ("/", AT, f"{AT}shift", "/record/", "/speaker", f"{AT}section.svg")


@pytest.mark.parametrize("path", PATHS)
def test_every_page_forbids_script_of_others_and_frames(pages: Browser, path: str) -> None:
    answer = pages.get(path)
    assert answer.status == 200
    policy = answer.headers["Content-Security-Policy"]
    assert "script-src 'self'" in policy
    assert "unsafe" not in policy
    assert "frame-ancestors 'none'" in policy
    assert answer.headers["X-Content-Type-Options"] == "nosniff"
    assert "<script>" not in answer.text
    assert "onclick" not in answer.text
    assert " style=" not in answer.text or path.endswith(".svg")


@pytest.mark.parametrize("host", ["example.org", "192.168.0.9:8765", "127.0.0.1.example.org"])
def test_another_name_than_this_machine_is_refused(pages: Browser, host: str) -> None:
    pages.host = host
    assert pages.get("/").status == 400


def test_a_post_from_another_site_is_refused(pages: Browser, record: SiteRecord) -> None:
    before = len(record.entries())
    answer = pages.send(f"{AT}stop", {"why": "x"}, HTTP_ORIGIN="https://example.org")
    assert answer.status == 403
    assert "Nothing was written" in answer.plain
    token = pages.cookies["csrftoken"]
    fields = {"why": "x", "csrfmiddlewaretoken": token}
    assert pages.send(f"{AT}stop", fields, HTTP_ORIGIN="https://example.org").status == 403
    assert len(record.entries()) == before


def test_a_refusal_gives_back_what_was_written_but_not_what_another_site_sent(
    silent: Browser,
) -> None:
    words = "a <b>noise</b> at the left hoist"
    answer = silent.post(f"{AT}stop", AT, why=words)
    assert answer.status == 400
    assert "What you wrote, to take along" in answer.plain
    assert words in answer.text
    assert "<b>noise" not in answer.body.decode()
    answer = silent.send(f"{AT}stop", {"why": words}, HTTP_ORIGIN="https://example.org")
    assert answer.status == 403
    assert "noise" not in answer.text


def test_a_refusal_leads_back_to_the_page_of_the_form_and_to_no_other_address(
    silent: Browser,
) -> None:
    token = re.search(r'name="csrfmiddlewaretoken" value="([^"]+)"', silent.get("/drops/D/").text)
    assert token is not None
    assert '<a href="/drops/D/">Back' in silent.get("/drops/X/", HTTP_REFERER=HERE + AT).text
    said, at = {"csrfmiddlewaretoken": token[1], "path": "x"}, HERE + AT
    for came, back in (
        (f"{at}values", "/drops/D/values"),
        (f"{at}?open=beam", "/drops/D/?open=beam"),
        ("http://example.org/drops/D/", "/"),
        (f"{HERE}//example.org", "/"),
    ):
        answer = silent.send("/drops/D/state", said, HTTP_REFERER=came)
        assert answer.status == 400
        assert f'<a href="{back}">Back to the page</a>' in answer.text
        assert f'href="/speaker?back={quote(back)}"' in answer.text


def test_a_page_says_which_one_it_is_and_who_speaks_comes_back_to_it(pages: Browser) -> None:
    for path in ("/kit/", "/anchors/", "/record/"):
        assert f'<a href="{path}" aria-current="page">' in pages.get(path).text
    assert 'href="/speaker?back=/drops/D/values"' in pages.get("/drops/D/values").text


def test_a_way_back_never_leads_to_another_address(pages: Browser) -> None:
    for back in ("https://example.org/", "//example.org/", "/\\example.org", "/a\nb"):
        answer = pages.post("/speaker", person="MT", back=back)
        assert answer.status == 200
        assert "Today" in answer.plain


def raised(pages: Browser, files: dict[str, bytes]) -> object:
    """A deficiency with files."""
    return pages.upload(f"{AT}deficiency", AT, files, about="stirrup", says="crack")


def test_a_deficiency_with_a_photograph_is_raised_answered_looked_at_and_closed(
    pages: Browser, record: SiteRecord
) -> None:
    shown = pages.upload(f"{AT}deficiency", AT, {"a.jpg": JPEG}, about="stirrup", says="crack")
    entry = record.entries()[-1]
    assert isinstance(entry.body, bodies.DeficiencyRaised)
    (photo,) = entry.envelope.evidence
    picture = pages.get(f"/evidence/{photo}")
    assert picture.body == JPEG
    assert picture.headers["Content-Type"] == "image/jpeg"
    assert "use forbidden" in shown.plain
    page = f"/deficiencies/{entry.body.id}/"
    assert "close" not in pages.get(page).text.split("</form>")[0].split("not-mended")[1]
    pages.post(page, does="answer", says="changed it")
    pages.post(page, does="close")
    assert fold(record.entries()).matters.forbidding("D", ("D",)) is not None
    pages.post(page, does="mended", says="looked")
    pages.post(page, does="close")
    assert fold(record.entries()).matters.forbidding("D", ("D",)) is None
    assert "closed" in pages.get(page).plain


@pytest.mark.parametrize(
    "content",
    [b"<svg onload=alert(1)>", b"<html><script>", b"PK\x03\x04 a zip", b"", b"%!PS"],
)
def test_what_may_carry_a_program_is_refused(
    pages: Browser, record: SiteRecord, content: bytes
) -> None:
    before = len(record.entries())
    answer = pages.upload(f"{AT}deficiency", AT, {"a.jpg": content}, about="a", says="b")
    assert answer.status == 400
    assert "expected a photograph" in answer.plain
    assert len(record.entries()) == before
    assert record.evidence.all() == ()


def test_a_pdf_is_handed_out_and_never_shown(pages: Browser, record: SiteRecord) -> None:
    pages.upload(f"{AT}deficiency", AT, {"a.pdf": b"%PDF-1.7 /JS"}, about="a", says="b")
    (name,) = record.evidence.all()
    answer = pages.get(f"/evidence/{name}")
    assert answer.headers["Content-Type"] == "application/octet-stream"
    assert "attachment" in answer.headers["Content-Disposition"]
    assert "sandbox" in answer.headers["Content-Security-Policy"]


def test_a_file_that_is_too_large_is_refused_before_it_is_kept(
    pages: Browser, record: SiteRecord, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(uploads, "MOST_BYTES", 1000)
    answer = pages.upload(f"{AT}deficiency", AT, {"a.jpg": JPEG * 9}, about="a", says="b")
    assert answer.status == 400
    assert "expected at most" in answer.plain
    assert record.evidence.all() == ()


def test_a_photograph_of_200_megabytes_is_refused_by_its_stated_length(
    pages: Browser, record: SiteRecord
) -> None:
    pages.get(AT)
    kind = {"CONTENT_TYPE": "multipart/form-data; boundary=edge", "CONTENT_LENGTH": "200000000"}
    answer = pages.send(f"{AT}deficiency", {}, **kind)
    assert answer.status == 400
    assert "found 200 MB and more, expected at most 40 MB" in answer.plain
    assert record.evidence.all() == ()


def test_a_full_disk_is_told_and_nothing_is_half_written(
    pages: Browser, record: SiteRecord, monkeypatch: pytest.MonkeyPatch
) -> None:
    def full(*_: object, **__: object) -> None:
        raise StoreFullError("here", found="no room", expected="room")

    before = len(record.entries())
    monkeypatch.setattr(type(record.ledger), "say", full)
    answer = pages.post(f"{AT}stop", AT, why="a noise")
    assert answer.status == 507
    assert "Nothing was kept" in answer.plain
    assert len(record.entries()) == before


def test_an_error_of_the_program_is_told_without_its_inside(
    pages: Browser, monkeypatch: pytest.MonkeyPatch
) -> None:
    def broken(*_: object, **__: object) -> None:
        raise RuntimeError("secret inside")

    monkeypatch.setattr("backspan.web.pages.record.filled", broken)
    answer = pages.get("/record/")
    assert answer.status == 500
    assert "secret" not in answer.plain
    assert "Something is wrong with this program" in answer.plain


def test_evidence_that_is_not_there_and_a_path_that_climbs(pages: Browser) -> None:
    assert pages.get("/evidence/" + "0" * 64).status == 400
    assert pages.get("/evidence/..%2Fkey.pem").status in {400, 404}
    assert pages.get("/static/../key.pem").status == 404


def test_the_whole_record_is_one_file_that_proves_itself(
    pages: Browser, record: SiteRecord
) -> None:
    answer = pages.get("/record/archive.tar")
    assert answer.status == 200
    assert record.ledger.signed_heads()[-1].head.encode() in answer.body


def test_the_same_pages_over_a_record_in_a_database(tmp_path: Path) -> None:
    with running_server() as server, made(tmp_path / "site", database=server.database()) as record:
        pages = browser(record)
        pages.post("/speaker", person="MT")
        pages.post(f"{AT}stop", AT, why="a noise")
        for path in PATHS:
            assert pages.get(path).status == 200
        assert fold(record.entries()).record("D").state is State.STOPPED
        assert not (tmp_path / "site" / "ledger.sqlite").exists()
