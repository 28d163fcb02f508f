"""Papers of the workbench: made on asking, kept when issued; a filled sheet entered like taps."""

from __future__ import annotations

import hashlib
import io
import re
from collections.abc import Mapping

import pypdfium2
import pytest
from PIL import Image

from backspan.core.ledger import bodies
from backspan.core.ledger.fold import fold
from backspan.core.model.rigs import Rig
from backspan.core.wire import configuration_code
from backspan.records.api import SiteRecord
from backspan.records.store import Statement
from tests.site.bench import IMPORTER, NOON, Answer, Browser, browser
from tests.site.test_drop import AT, DROP, RIG, in_service
from tests.unit.core.rigs import PROJECT

PAPERS, SHEET = f"{AT}papers/", f"{AT}sheet"
HEAD_OF_SHEET = {"by": "QP", "day": "2026-11-25", "time": "11:30"}


def text_of(answer: Answer) -> str:
    """The text of a PDF, white space folded."""
    assert answer.status == 200, answer.plain
    assert answer.headers["Content-Type"] == "application/pdf"
    document = pypdfium2.PdfDocument(answer.body)
    told = " ".join(page.get_textpage().get_text_range() for page in document)
    return re.sub(r"\s+", " ", told)


def numbers(pages: Browser) -> Mapping[str, str]:
    """The field of each value of the sheet, by what its line says."""
    shown = pages.get(SHEET).text
    found = re.findall(r'<label class="sheet-value">(.*?)name="(value-[0-9.]+)"', shown, re.DOTALL)
    return {" ".join(re.sub(r"<[^>]+>", " ", told).split()): name for told, name in found}


def field_of(pages: Browser, told: str) -> str:
    """The field of the value whose line holds a text."""
    (name,) = (name for line, name in numbers(pages).items() if told in line)
    return name


def code_of(pages: Browser) -> str:
    """The code of the sheet as its page shows it."""
    found = re.search(r'class="sheet-code">([0-9A-F]+)<', pages.get(SHEET).text)
    assert found is not None
    return found[1]


def photograph() -> bytes:
    """A small photograph."""
    out = io.BytesIO()
    Image.new("RGB", (30, 20), "gray").save(out, "JPEG")
    return out.getvalue()


def test_a_drop_without_a_permit_has_no_tag_and_is_told_why(
    pages: Browser, record: SiteRecord
) -> None:
    answer = pages.get(f"{PAPERS}tag.pdf")
    assert answer.status == 400
    assert "A tag needs a permit in force" in answer.plain
    assert "drop D is rigged" in answer.plain
    assert "A tag needs a permit in force" in pages.get(PAPERS).plain
    before = len(record.entries())
    assert pages.post(f"{PAPERS}tag/issue", PAPERS).status == 400
    assert len(record.entries()) == before


def test_a_tag_tells_the_permit_and_where_the_record_stands(
    pages: Browser, record: SiteRecord
) -> None:
    in_service(pages, record)
    before = len(record.entries())
    told = text_of(pages.get(f"{PAPERS}tag.pdf"))
    last = record.ledger.last()
    assert last is not None
    for one in (
        "PERMITTED",
        configuration_code(PROJECT, PROJECT.drops[0]),
        "M. Tape, competent person, Owner's watch, card C-1",
        f"entry {last.place} of the record, head {last.head[:12]}",
        last.head,
    ):
        assert one in told
    assert len(record.entries()) == before
    assert record.evidence.all() == ()


def test_a_restriction_or_a_hold_changes_what_the_tag_says(
    pages: Browser, record: SiteRecord
) -> None:
    in_service(pages, record)
    pages.post(f"{AT}restrict", AT, says="one rider only")
    told = text_of(pages.get(f"{PAPERS}tag.pdf"))
    assert "RESTRICTED" in told
    assert "one rider only (M. Tape)" in told
    pages.post(f"{AT}hold", AT, why="gusts")
    told = text_of(pages.get(f"{PAPERS}tag.pdf"))
    assert "NOBODY ON" in told
    assert "gusts" in told
    pages.post(f"{AT}stop", AT, why="a noise")
    assert pages.get(f"{PAPERS}tag.pdf").status == 400


def test_a_tag_is_printed_between_the_permit_and_the_shift_check(
    pages: Browser, record: SiteRecord
) -> None:
    in_service(pages, record)
    pages.post(f"{AT}hold", AT, why="gusts")
    pages.post(f"{AT}hold", AT, why="calm", ends="1")
    told = text_of(pages.get(f"{PAPERS}tag.pdf"))
    assert "PERMITTED" in told
    assert "only after the shift check of the day" in told


def test_an_issued_paper_is_kept_byte_for_byte_and_the_history_links_to_it(
    pages: Browser, record: SiteRecord
) -> None:
    in_service(pages, record)
    shown = pages.get(f"{PAPERS}tag.pdf").body
    pages.post(f"{PAPERS}tag/issue", PAPERS)
    entry = record.entries()[-1]
    assert entry.body == bodies.PaperIssued("acceptance tag D", (DROP,))
    (kept,) = entry.envelope.evidence
    assert kept == hashlib.sha256(shown).hexdigest()
    assert pages.get(f"/evidence/{kept}").body == shown
    for page in (AT, PAPERS):
        assert f'href="/evidence/{kept}"' in pages.get(page).text
    # That it was issued changes nothing that a paper tells.
    assert pages.get(f"{PAPERS}tag.pdf").body == shown
    assert fold(record.entries()).record(DROP).permit is not None


def test_a_paper_that_would_tell_something_else_by_now_is_not_issued(
    pages: Browser, record: SiteRecord
) -> None:
    in_service(pages, record)
    place = len(record.entries())
    browser_of_another = browser(record)
    browser_of_another.post("/speaker", person="QP")
    browser_of_another.post(f"{AT}restrict", AT, says="one rider only")
    answer = pages.post(f"{PAPERS}tag/issue", PAPERS, place=place)
    assert answer.status == 400
    assert "one rider only" in answer.plain
    assert record.evidence.all() == ()


def test_nobody_who_speaks_issues_nothing(silent: Browser, record: SiteRecord) -> None:
    before = len(record.entries())
    answer = silent.post(f"{PAPERS}sheet/issue", PAPERS)
    assert answer.status == 400
    assert "Nobody said who speaks" in answer.plain
    assert (len(record.entries()), record.evidence.all()) == (before, ())


@pytest.mark.parametrize("paper", ["tag", "stop", "sheet", "review", "none"])
def test_a_paper_or_a_drop_that_is_not_there(pages: Browser, paper: str) -> None:
    assert pages.get(f"/drops/X/papers/{paper}.pdf").status == 400
    assert "found the paper 'none'" in pages.get(f"{PAPERS}none.pdf").plain


def test_a_stop_has_its_notice_in_both_languages(pages: Browser) -> None:
    assert "Found is no stop" in pages.get(f"{PAPERS}stop.pdf").plain
    pages.post(f"{AT}stop", AT, why="cracked stirrup")
    told = text_of(pages.get(f"{PAPERS}stop.pdf"))
    for one in ("STOP · ALTO", "NOBODY ON", "NADIE SUBE", "cracked stirrup", "M. Tape", "drop D"):
        assert one in told


def test_a_stop_of_the_whole_site_has_a_notice_of_the_whole_site(
    pages: Browser, record: SiteRecord
) -> None:
    pages.post(f"{AT}stop", AT, why="storm", everywhere="1")
    told = text_of(pages.get(f"{PAPERS}stop.pdf"))
    assert "Whole site / Toda la obra" in told
    assert "configuration" not in told
    pages.post(f"{PAPERS}stop/issue", PAPERS)
    assert record.entries()[-1].body == bodies.PaperIssued("stop notice of the whole site", ())
    assert "stop notice of the whole site" in pages.get(PAPERS).plain


def test_a_hold_and_a_deficiency_have_a_notice_that_says_who_lifts_them(pages: Browser) -> None:
    pages.post(f"{AT}hold", AT, why="gusts")
    told = text_of(pages.get(f"{PAPERS}stop.pdf"))
    assert "gusts" in told
    assert "Whoever ends the hold in the record." in told
    pages.upload(f"{AT}deficiency", AT, {}, about="stirrup", says="crack")
    told = text_of(pages.get(f"{PAPERS}stop.pdf"))
    assert "Whoever looks again, finds it mended" in told


def test_what_also_ended_the_permit_is_told_once(pages: Browser, record: SiteRecord) -> None:
    in_service(pages, record)
    pages.upload(f"{AT}deficiency", AT, {}, about="stirrup", says="crack at the weld")
    told = text_of(pages.get(f"{PAPERS}stop.pdf"))
    assert told.count("crack at the weld") == 1
    assert "permit that. Mend it, look again, and close it." in told
    for lifted in ("states a new permit in the record", "finds it mended, and closes"):
        assert lifted in told


def test_the_notice_of_a_deficiency_shows_its_photographs_and_names_broken_ones(
    pages: Browser, record: SiteRecord
) -> None:
    files = {"a.jpg": photograph(), "b.jpg": b"\xff\xd8\xff cut short", "c.pdf": b"%PDF-1.7 x"}
    pages.upload(f"{AT}deficiency", AT, files, about="stirrup", says="crack")
    entry = record.entries()[-1]
    assert isinstance(entry.body, bodies.DeficiencyRaised)
    page = f"/deficiencies/{entry.body.id}/"
    answer = pages.get(f"{page}notice.pdf")
    told = text_of(answer).replace(" ", "")
    for name in entry.envelope.evidence:
        assert name in told
    kind = pypdfium2.raw.FPDF_PAGEOBJ_IMAGE
    document = pypdfium2.PdfDocument(answer.body)
    assert sum(len(list(one.get_objects(filter=[kind]))) for one in document) == 1
    assert "USEFORBIDDENuntilitisclosed" in told
    pages.post(f"{page}notice/issue", page)
    issued = record.entries()[-1]
    assert issued.body == bodies.PaperIssued(f"deficiency notice {entry.body.id}", (DROP,))
    assert issued.envelope.evidence == (hashlib.sha256(answer.body).hexdigest(),)


def test_a_deficiency_that_is_not_there_has_no_notice(pages: Browser) -> None:
    answer = pages.get("/deficiencies/x-1/notice.pdf")
    assert answer.status == 400
    assert "found no deficiency 'x-1'" in answer.plain


def test_the_review_of_a_drop_is_a_paper_with_the_place_in_the_record(
    pages: Browser, record: SiteRecord
) -> None:
    told = text_of(pages.get(f"{PAPERS}review.pdf"))
    last = record.ledger.last()
    assert last is not None
    assert "Calculation that governs" in told
    assert f"entry {last.place} of the record, head {last.head[:12]}" in told
    assert told.count(last.head) == 1
    assert pages.get(f"{PAPERS}review.pdf").body == pages.get(f"{PAPERS}review.pdf").body


def test_sheet_and_page_have_the_same_numbers_and_code(pages: Browser) -> None:
    told = text_of(pages.get(f"{PAPERS}sheet.pdf"))
    assert f"Sheet {code_of(pages)}" in told
    listed = numbers(pages)
    assert len(listed) > 10
    for line in listed:
        number, _, rest = line.partition(" ")
        name = rest.partition(" planned ")[0].partition(" found ")[0]
        assert f"{number} {name}" in told


def test_a_sheet_gives_the_entries_that_taps_give_by_who_found_them_then(
    pages: Browser, record: SiteRecord
) -> None:
    filled = {
        field_of(pages, "R reach"): "2 ft 0 1/2 in",
        field_of(pages, "L, no. 1 pieces"): "15",
        field_of(pages, "power supply"): "defective",
    }
    before = len(record.entries())
    said = {**HEAD_OF_SHEET, **filled}
    assert pages.post(SHEET, code=code_of(pages).lower(), **said).status == 200
    entered = record.entries()[before:]
    assert {one.envelope.signer.person for one in entered} == {"MT"}
    other = browser(record)
    other.post("/speaker", person="QP")
    right = RIG.replace("/L/", "/R/")
    taps = {f"{RIG}/stack/groups/0/count": "15", f"{right}/reach": "2 ft 0 1/2 in"}
    for path, value in {**taps, "drops/D/rig/power": "defective"}.items():
        other.post(f"{AT}state", AT, path=path, value=value)
    tapped = record.entries()[before + len(entered) :]
    assert len(entered) == len(tapped) == 3
    for one, tap in zip(entered, tapped, strict=True):
        assert isinstance(one.body, bodies.NumberFound | bodies.CountFound | bodies.WordFound)
        assert type(one.body) is type(tap.body)
        assert (one.body.found.by, one.body.found.at) == ("QP", "2026-11-25T11:30")
        ours, theirs = one.body.found, getattr(tap.body, "found", None)
        assert one.body.path == getattr(tap.body, "path", None)
        for name in ("value", "text", "evidence"):
            assert getattr(ours, name) == getattr(theirs, name)


def test_all_that_is_wrong_with_a_sheet_is_told_at_once_and_nothing_is_written(
    pages: Browser, record: SiteRecord
) -> None:
    reach, pieces = field_of(pages, "R reach"), field_of(pages, "L, no. 1 pieces")
    power = field_of(pages, "power supply")
    before = len(record.entries())
    bad = {reach: "24", pieces: "many", power: "there and sound"}
    said = {"by": "NOBODY", "day": "2026-11-25", "time": "12:01", **bad}
    answer = pages.post(SHEET, code="00000", **said)
    assert answer.status == 400
    for told in (
        "Nothing was written.",
        f"Sheet: found '00000', expected {code_of(pages)}",
        "Found by: found 'NOBODY', expected a person of the site",
        "12:01, which is still to come",
        f"{reach.removeprefix('value-')} reach",
        "a length is wanted",
        f"{pieces.removeprefix('value-')} pieces on the beam",
        "expected a whole number",
    ):
        assert told in answer.plain
    # What was typed is still there.
    for typed in ('value="24"', 'value="many"', 'value="12:01"'):
        assert typed in answer.text
    assert len(record.entries()) == before


@pytest.mark.parametrize(("day", "time"), [("", ""), ("2026-11-25", ""), ("25.11.2026", "09:30")])
def test_a_sheet_needs_its_day_and_time(
    pages: Browser, record: SiteRecord, day: str, time: str
) -> None:
    before = len(record.entries())
    answer = pages.post(SHEET, code=code_of(pages), by="QP", day=day, time=time)
    assert answer.status == 400
    assert "Day and time: found" in answer.plain
    assert "Values: found none" in answer.plain
    assert len(record.entries()) == before


def test_an_older_sheet_does_not_write_over_what_was_found_later(
    pages: Browser, record: SiteRecord
) -> None:
    pages.post(f"{AT}state", AT, path=f"{RIG}/reach", value="2 ft")
    before = len(record.entries())
    said = {**HEAD_OF_SHEET, field_of(pages, "L reach"): "3 ft"}
    answer = pages.post(SHEET, code=code_of(pages), **said)
    assert answer.status == 400
    assert "found later than the sheet, 2026-11-25 12:00" in answer.plain
    assert len(record.entries()) == before


def test_a_value_that_somebody_stated_since_the_page_was_opened_is_told(
    pages: Browser, record: SiteRecord
) -> None:
    place = len(record.entries())
    other = browser(record)
    other.post("/speaker", person="QP")
    other.post(f"{AT}state", AT, path="drops/D/rig/power", value="defective")
    said = {**HEAD_OF_SHEET, "time": "12:00", field_of(pages, "power supply"): "there and sound"}
    answer = pages.post(SHEET, code=code_of(pages), place=place, **said)
    assert answer.status == 400
    assert "stated something there since you opened this page" in answer.plain


def test_a_sheet_that_was_printed_before_the_rig_was_set_up_anew_is_not_entered(
    pages: Browser, record: SiteRecord
) -> None:
    code, power = code_of(pages), field_of(pages, "power supply")
    said = Statement(
        bodies.RigSetUp(DROP, fold(record.entries()).project.drops[0].rig or Rig()), IMPORTER
    )
    record.say([said], at=NOON.isoformat())
    assert code_of(pages) != code
    before = len(record.entries())
    answer = pages.post(SHEET, code=code, **HEAD_OF_SHEET, **{power: "defective"})
    assert answer.status == 400
    assert "before this one was set up" in answer.plain
    assert len(record.entries()) == before


def test_a_scan_of_the_sheet_is_kept_with_every_value(pages: Browser, record: SiteRecord) -> None:
    before = len(record.entries())
    place = str(before)
    said = {**HEAD_OF_SHEET, "code": code_of(pages), "place": place}
    said[field_of(pages, "power supply")] = "defective"
    said[field_of(pages, "means of rescue")] = "defective"
    answer = pages.upload(SHEET, SHEET, {"a.svg": b"<svg>"}, **said)
    assert answer.status == 400
    assert "Photograph of the sheet: found 'a.svg'" in answer.plain
    assert len(record.entries()) == before
    pages.upload(SHEET, SHEET, {"a.jpg": photograph()}, **said)
    entered = record.entries()[before:]
    assert len(entered) == 2
    name = hashlib.sha256(photograph()).hexdigest()
    assert all(one.envelope.evidence == (name,) for one in entered)
