"""A table on the command line: shown first, stated with a flag, all of it or nothing."""

from __future__ import annotations

from pathlib import Path

import pytest

from backspan.core.ledger.fold import fold
from backspan.core.model.evidence import Evidence
from backspan.records.api import open_record
from tests.architecture.source import ROOT
from tests.unit.cli.conftest import DEMO, ON, Ran, Run

TABLES = ROOT / "examples" / "tables"


@pytest.fixture
def record(run: Run, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> str:
    """A record of the demo building on its own day."""
    monkeypatch.delenv("DATABASE_URL", raising=False)
    monkeypatch.setattr("backspan.cli.import_command.now", lambda: f"{ON}T12:00:00+00:00")
    folder = str(tmp_path / "record")
    assert run("import", DEMO, "--into", folder, "--by", "MARLOW").status == 0
    return folder


def many(record: str) -> int:
    with open_record(Path(record)) as site:
        return len(site.entries())


def table(run: Run, record: str, file: Path, what: str, *more: str) -> Ran:
    rest = ("--what", what, "--roof", "MAIN", "--into", record, "--by", "MARLOW", *more)
    return run("import", str(file), *rest)


def test_rows_are_shown_and_nothing_is_written(run: Run, record: str) -> None:
    before = many(record)
    ran = table(run, record, TABLES / "anchors.csv", "anchors")
    assert (ran.status, ran.err) == (0, "")
    assert "3 anchors would be stated by J. Marlow" in ran.out
    assert "Nothing was written; add --state" in " ".join(ran.out.split())
    assert all(one in ran.out for one in ("A90", "A91", "A92", "(told)"))
    assert "--show" not in ran.err
    assert table(run, record, TABLES / "anchors.csv", "anchors", "--state", "--show").status == 0
    assert many(record) == before


def test_with_the_flag_each_row_is_an_entry_of_the_person(run: Run, record: str) -> None:
    before = many(record)
    paper = ("--evidence", "drawing", "--document", "R-2")
    ran = table(run, record, TABLES / "anchors.csv", "anchors", "--state", *paper)
    assert (ran.status, ran.err) == (0, "")
    assert "3 anchors stated by J. Marlow" in ran.out
    assert "Nobody may ride by this" in ran.out
    assert table(run, record, TABLES / "drops.csv", "drops", "--state").status == 0
    with open_record(Path(record)) as site:
        entries = site.entries()
        project = fold(entries).project
    assert len(entries) == before + 5
    assert {one.envelope.signer.person for one in entries[before:]} == {"MARLOW"}
    new = next(one for roof in project.site.roofs for one in roof.anchors if one.id == "A90")
    assert new.rating is not None
    assert (new.rating.evidence, new.rating.document) == (Evidence.DRAWING, "R-2")
    assert {"E1", "E2"} <= {one.id for one in project.drops}


def test_every_wrong_cell_is_told_and_nothing_is_written(
    run: Run, record: str, tmp_path: Path
) -> None:
    before = many(record)
    file = tmp_path / "a.csv"
    file.write_text("id,edge,along,back,kind\nA01,S,8,30 ft,post\nA93,Q,8 ft,30 ft,\n", "utf-8")
    ran = table(run, record, file, "anchors", "--state")
    assert (ran.status, ran.out) == (2, "")
    for told in ("column 1 (id)", "column 3 (along)", "column 2 (edge)", "column 5 (kind)"):
        assert told in ran.err
    assert many(record) == before


@pytest.mark.parametrize(
    ("arguments", "told"),
    [
        (("t.csv", "--by", "MARLOW"), "add --what anchors or --what drops, and --roof"),
        (("t.csv", "--what", "drops", "--roof", "MAIN"), "add --by with one of its people"),
        (("t.csv", "--what", "drops", "--roof", "MAIN", "--by", "NO"), "has no person 'NO'"),
        (("t.csv", "--what", "drops", "--roof", "X", "--by", "MARLOW"), "no such file"),
        (("t.yaml", "--what", "drops", "--roof", "X", "--by", "MARLOW"), "expected .csv or .xlsx"),
        (("t.yaml", "--state"), "are for tables"),
    ],
)
def test_what_is_not_said_is_asked_for(
    run: Run, record: str, arguments: tuple[str, ...], told: str
) -> None:
    ran = run("import", *arguments, "--into", record)
    assert ran.status == 2
    assert told in ran.err


def test_a_roof_that_is_not_there_is_told(run: Run, record: str) -> None:
    file = str(TABLES / "drops.csv")
    ran = run(
        *("import", file, "--what", "drops", "--roof", "X", "--by", "MARLOW", "--into", record)
    )
    assert ran.status == 2
    assert "found no roof 'X'; expected one of its roofs: MAIN" in ran.err


def test_a_table_needs_a_record_of_a_site(run: Run, tmp_path: Path) -> None:
    ran = table(run, str(tmp_path / "none"), TABLES / "drops.csv", "drops")
    assert ran.status == 2
    assert "found no record of a site" in ran.err
    assert not (tmp_path / "none").exists()
