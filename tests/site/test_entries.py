"""Papers by which topics are taken over, single entries, corrections, the project file."""

from __future__ import annotations

import json
from dataclasses import replace
from pathlib import Path

import pytest

from backspan.cli import main
from backspan.core.findings import Verdict
from backspan.core.ledger import bodies
from backspan.core.ledger.drop_states import State
from backspan.core.ledger.fold import fold
from backspan.core.review import review
from backspan.exchange.parse import parse_project
from backspan.records.api import SiteRecord
from tests.site.bench import Browser, browser, made
from tests.unit.core.rigs import LIBRARY, ON, PROJECT

AT = "/drops/D/take-over"
PAPER = {"by": "PE", "document": "LETTER 9", "at": "2026-11-25", "until": "2026-12-20"}
TOPICS = [topic for one in PROJECT.taken_over for topic in one.topics if one.by == "PE"]


@pytest.fixture
def bare(tmp_path: Path) -> tuple[Browser, SiteRecord]:
    """A site without the papers of the owner's engineer."""
    kept = tuple(one for one in PROJECT.taken_over if one.by != "PE")
    record = made(tmp_path / "bare", replace(PROJECT, taken_over=kept))
    pages = browser(record)
    pages.post("/speaker", person="PE")
    return pages, record


def test_topics_taken_over_in_writing_settle_what_nobody_judged(
    bare: tuple[Browser, SiteRecord],
) -> None:
    pages, record = bare
    assert "may be judged by" in pages.get(AT).plain
    pages.post(AT, **PAPER, topics=[str(one) for one in TOPICS])
    said = record.entries()[-1].body
    assert isinstance(said, bodies.TopicTakenOver)
    assert said.taken.topics == tuple(one for one in type(TOPICS[0]) if one in TOPICS)
    project = fold(record.entries()).project
    assert review(project, "D", LIBRARY, on=ON, compared=False).verdict is Verdict.PASS
    assert "LETTER 9" in pages.get("/drops/D/").plain


@pytest.mark.parametrize(
    ("change", "telling"),
    [
        ({"by": "NOBODY"}, "expected who judged it"),
        ({"topics": []}, "found no topic"),
        ({"document": " "}, "Document: found nothing"),
        ({"at": "2026-11-26"}, "expected a day that came"),
        ({"until": "2026-11-24"}, "expected a day that came"),
        ({"until": "soon"}, "expected a day as 2026-11-25"),
    ],
)
def test_a_paper_that_says_too_little_is_refused(
    bare: tuple[Browser, SiteRecord], change: dict[str, object], telling: str
) -> None:
    pages, record = bare
    before = len(record.entries())
    answer = pages.post(AT, **{**PAPER, "topics": ["wind"], **change})
    assert answer.status == 400
    assert telling in answer.plain
    assert len(record.entries()) == before


def test_an_entry_is_shown_as_it_is_kept_and_corrected_once(
    pages: Browser, record: SiteRecord
) -> None:
    pages.post("/drops/D/state", "/drops/D/", path="drops/D/rig/power", value="defective")
    entry = record.entries()[-1]
    page = f"/entries/{entry.hash}/"
    assert entry.hash in pages.get(page).plain
    assert pages.post(page, why=" ").status == 400
    pages.post(page, why="the wrong drop")
    assert record.entries()[-1].body == bodies.Corrected(entry.hash, "the wrong drop")
    power = fold(record.entries()).project.drops[0].rig
    assert power is not None
    assert power.power is not None
    assert power.power.value == "there and sound"
    assert "Corrected" in pages.get(page).plain
    assert "action" not in pages.get(page).text.split("<main")[1].split("As it is kept")[0]


def test_a_stop_is_not_undone_by_a_correction(pages: Browser, record: SiteRecord) -> None:
    pages.post("/drops/D/stop", "/drops/D/", why="a noise")
    page = f"/entries/{record.entries()[-1].hash}/"
    assert "correct: it is not so" not in pages.get(page).plain
    fields = {"csrfmiddlewaretoken": pages.cookies["csrftoken"], "why": "no noise"}
    assert pages.send(page, fields).status == 400
    assert fold(record.entries()).record("D").state is State.STOPPED


def test_an_entry_that_is_not_there(pages: Browser) -> None:
    assert "found no entry" in pages.get(f"/entries/{'0' * 64}/").plain


def test_the_project_file_is_reviewed_as_the_page_is(pages: Browser) -> None:
    answer = pages.get("/record/project.json")
    assert json.loads(answer.body)["site"]["name"] == PROJECT.site.name
    assert parse_project(answer.body.decode(), "page", LIBRARY) == PROJECT


def test_the_pages_say_every_sentence_and_number_of_the_review_of_the_exported_site(
    pages: Browser, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "project.json"
    path.write_bytes(pages.get("/record/project.json").body)
    assert main(["review", str(path), "--on", ON.isoformat(), "--format", "json"]) == 0
    (found,) = json.loads(capsys.readouterr().out)["reviews"]
    shown = pages.get("/drops/D/").plain + pages.get("/drops/D/findings/").plain
    texts = [found["answer"], found["configuration"]]
    for one in found["findings"]:
        texts += [one["title"], one["message"]["text"], one["margins_text"]]
        texts += [note["text"] for note in one["notes"]]
        texts += [each["clause"] for each in one["rules"]]
    texts += [reason["text"] for reason in found["reasons"]]
    assert len(texts) > 200
    assert [one for one in texts if " ".join(one.split()) not in shown] == []
