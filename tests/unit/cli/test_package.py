from __future__ import annotations

import hashlib
import json
import re
from pathlib import Path

import pypdfium2
import pytest

from backspan.core.words import english
from backspan.exchange.output_set import set_in_force
from tests.unit.cli.conftest import DEMO, ON, Run


def current(folder: Path) -> Path:
    """The set in force."""
    name = set_in_force(folder)
    assert name is not None
    return folder / name


def content(folder: Path) -> dict[str, bytes]:
    """Every file of the set in force."""
    return {path.name: path.read_bytes() for path in current(folder).iterdir()}


def test_a_set_holds_the_papers_the_drawings_and_the_data(run: Run, tmp_path: Path) -> None:
    out = tmp_path / "new" / "out"
    ran = run("review", DEMO, "--drop", "S1", "--drop", "T2", "--out", str(out), "--on", ON)
    assert ran.status == 11
    files = content(out)
    assert set(files) == {
        "package.pdf",
        "drop-S1.pdf",
        "drop-T2.pdf",
        "reactions.pdf",
        "review.json",
        *(f"roof-{roof}.{kind}" for roof in ("MAIN", "TERRACE") for kind in ("svg", "dxf")),
        *(f"elevation-{at}.{kind}" for at in ("MAIN-S", "TERRACE-TE") for kind in ("svg", "dxf")),
        *(f"section-{drop}.{kind}" for drop in ("S1", "T2") for kind in ("svg", "dxf")),
        *(f"details-{drop}.{kind}" for drop in ("S1", "T2") for kind in ("svg", "dxf")),
        "envelope-S1-L.svg",
        "envelope-S1-R.svg",
    }
    for name in ("package.pdf", "drop-S1.pdf", "drop-T2.pdf", "reactions.pdf"):
        assert files[name].startswith(b"%PDF-")
    assert b"<svg" in files["roof-MAIN.svg"]
    data = json.loads(files["review.json"])
    assert [one["drop"] for one in data["reviews"]] == ["S1", "T2"]
    told = " ".join(ran.out.split())
    assert "package.pdf, a paper for each drop, drawings and data, 23 files." in told


def test_the_index_tells_the_answers_and_the_sum_of_every_file(run: Run, tmp_path: Path) -> None:
    run("review", DEMO, "--drop", "S1", "--drop", "W1", "--out", str(tmp_path), "--on", ON)
    first, *lines = (tmp_path / "current.txt").read_text(encoding="utf-8").splitlines()
    assert first == f"The set in force: {ON}-1"
    assert "Invented for this demonstration." in lines[3]
    told = "\n".join(lines)
    for answer in ("S1: pass, 9 topics taken over", "W1: fail, 2 topics refused"):
        paper = rf"drop-{answer[:2]}\.pdf"
        assert re.search(rf"^{answer}; configuration \S+; {paper}$", told, re.MULTILINE)
    assert all(caution in told for caution in english.CAUTIONS)
    for name, bytes_of in content(tmp_path).items():
        assert f"{hashlib.sha256(bytes_of).hexdigest()}  {name}" in lines


def pages_of(pdf: bytes) -> int:
    """How many pages a PDF has."""
    return len(pypdfium2.PdfDocument(pdf))


@pytest.mark.long
@pytest.mark.slow
def test_a_drop_has_two_pages_and_the_demo_no_more_than_twenty_nine(
    run: Run, tmp_path: Path
) -> None:
    """A third where the strength of a steel section governs: its calculation fills the second."""
    run("review", DEMO, "--out", str(tmp_path), "--on", ON)
    counts = {
        name: pages_of(data) for name, data in content(tmp_path).items() if name.endswith(".pdf")
    }
    assert counts.pop("reactions.pdf") == 5  # three of tables, a plan of either roof
    assert {name: count for name, count in counts.items() if name != "package.pdf"} == {
        name: 3 if name == "drop-W2.pdf" else 2 for name in counts if name.startswith("drop-")
    }
    assert len(counts) == 13
    assert sum(counts.values()) <= 29


def test_the_papers_of_one_drop_are_three_pages_and_more_where_it_is_asked_for(
    run: Run, tmp_path: Path
) -> None:
    arguments = ("review", DEMO, "--drop", "S4", "--out", str(tmp_path), "--on", ON)
    run(*arguments)
    files = content(tmp_path)
    assert pages_of(files["package.pdf"]) + pages_of(files["drop-S4.pdf"]) == 3
    run(*arguments, "--worked", "--compare", "--envelope")
    assert pages_of(content(tmp_path)["drop-S4.pdf"]) > 6


@pytest.mark.slow
def test_the_same_review_writes_the_same_bytes(run: Run, tmp_path: Path) -> None:
    first, again = tmp_path / "first", tmp_path / "again"
    for out in (first, again):
        run("review", DEMO, "--drop", "S4", "--out", str(out), "--on", ON)
    assert content(first) == content(again)


def test_the_data_in_the_folder_is_the_data_printed(run: Run, tmp_path: Path) -> None:
    arguments = ("review", DEMO, "--drop", "S1", "--on", ON, "--format", "json")
    ran = run(*arguments, "--out", str(tmp_path))
    assert content(tmp_path)["review.json"].decode("utf-8") == ran.out


def test_a_folder_that_cannot_be_written_stops_before_the_work(run: Run, tmp_path: Path) -> None:
    taken = tmp_path / "taken"
    taken.write_text("a file", encoding="utf-8")
    ran = run("review", "nowhere.yaml", "--out", str(taken / "out"))
    assert ran.status == 2
    assert "expected a folder that can be written to" in ran.err
    assert "nowhere.yaml" not in ran.err


def test_an_earlier_set_stays_whole_beside_the_new_one(run: Run, tmp_path: Path) -> None:
    for drop in ("T2", "S1"):
        run("review", DEMO, "--drop", drop, "--out", str(tmp_path), "--on", ON)
    assert current(tmp_path).name == f"{ON}-2"
    assert "drop-S1.pdf" in content(tmp_path)
    assert (tmp_path / f"{ON}-1" / "drop-T2.pdf").is_file()


@pytest.mark.parametrize(
    "arguments",
    [("no.yaml",), (DEMO, "--drop", "S9"), (DEMO, "--rules", "x"), (DEMO, "--on", "2025-01-01")],
)
def test_refused_input_leaves_nothing(run: Run, tmp_path: Path, arguments: tuple[str, ...]) -> None:
    out = tmp_path / "new" / "out"
    ran = run(
        "review", *arguments, "--out", str(out), *(() if "--on" in arguments else ("--on", ON))
    )
    assert ran.status == 2
    assert not (tmp_path / "new").exists()


def test_nothing_is_written_where_the_package_cannot_be_made(
    run: Run, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def refuse(*_: object, **__: object) -> bytes:
        raise ValueError("made up")

    monkeypatch.setattr("backspan.papers.paper_pdf", refuse)
    out = tmp_path / "out"
    ran = run("review", DEMO, "--drop", "S1", "--out", str(out), "--on", ON)
    assert ran.status == 70
    assert not out.exists()
