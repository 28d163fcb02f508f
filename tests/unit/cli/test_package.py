from __future__ import annotations

import json
from pathlib import Path

import pytest

from backspan.cli.package import Files
from tests.unit.cli.conftest import DEMO, ON, Run


def content(folder: Path) -> dict[str, bytes]:
    """Every file of a folder."""
    return {path.name: path.read_bytes() for path in folder.iterdir()}


def test_a_folder_holds_the_package_the_drawings_and_the_data(run: Run, tmp_path: Path) -> None:
    out = tmp_path / "new" / "out"
    ran = run("review", DEMO, "--drop", "S1", "--drop", "T2", "--out", str(out), "--on", ON)
    assert ran.status == 11
    files = content(out)
    assert set(files) == {
        "package.pdf",
        "review.json",
        *(f"roof-{roof}.{kind}" for roof in ("MAIN", "TERRACE") for kind in ("svg", "dxf")),
        *(f"section-{drop}.{kind}" for drop in ("S1", "T2") for kind in ("svg", "dxf")),
        "envelope-S1-L.svg",
        "envelope-S1-R.svg",
    }
    assert files["package.pdf"].startswith(b"%PDF-")
    assert b"<svg" in files["roof-MAIN.svg"]
    data = json.loads(files["review.json"])
    assert [one["drop"] for one in data["reviews"]] == ["S1", "T2"]
    assert "package.pdf, review.json and 10 drawings" in " ".join(ran.out.split())


@pytest.mark.slow
def test_the_same_review_writes_the_same_bytes(run: Run, tmp_path: Path) -> None:
    first, again = tmp_path / "first", tmp_path / "again"
    for out in (first, again):
        run("review", DEMO, "--drop", "S4", "--out", str(out), "--on", ON)
    assert content(first) == content(again)


def test_the_data_in_the_folder_is_the_data_printed(run: Run, tmp_path: Path) -> None:
    arguments = ("review", DEMO, "--drop", "S1", "--on", ON, "--format", "json")
    ran = run(*arguments, "--out", str(tmp_path))
    assert (tmp_path / "review.json").read_text(encoding="utf-8") == ran.out


def test_a_folder_that_cannot_be_written_stops_before_the_work(run: Run, tmp_path: Path) -> None:
    taken = tmp_path / "taken"
    taken.write_text("a file", encoding="utf-8")
    ran = run("review", "nowhere.yaml", "--out", str(taken / "out"))
    assert ran.status == 2
    assert "expected a folder that can be written to" in ran.err
    assert "nowhere.yaml" not in ran.err


def test_what_an_earlier_review_left_is_told(run: Run, tmp_path: Path) -> None:
    (tmp_path / "section-S9.svg").write_text("of long ago", encoding="utf-8")
    ran = run("review", DEMO, "--drop", "T2", "--out", str(tmp_path), "--on", ON)
    assert "Not of this review, there from before: section-S9.svg" in ran.out
    assert (tmp_path / "section-S9.svg").read_text(encoding="utf-8") == "of long ago"


def test_nothing_is_written_where_the_project_cannot_be_read(run: Run, tmp_path: Path) -> None:
    out = tmp_path / "out"
    assert run("review", str(tmp_path / "no.yaml"), "--out", str(out)).status == 2
    assert content(out) == {}


def test_nothing_is_written_where_the_package_cannot_be_made(
    run: Run, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def refuse(*_: object, **__: object) -> bytes:
        raise ValueError("made up")

    monkeypatch.setattr("backspan.papers.package_pdf", refuse)
    out = tmp_path / "out"
    ran = run("review", DEMO, "--drop", "S1", "--out", str(out), "--on", ON)
    assert ran.status == 70
    assert content(out) == {}


def test_no_file_takes_the_name_of_another() -> None:
    files = Files()
    for stem in ("section-S1", "section-s1", "section-S1"):
        files.add(stem, "svg", stem.encode())
    assert list(files.contents) == ["section-S1.svg", "section-s1-2.svg", "section-S1-3.svg"]
