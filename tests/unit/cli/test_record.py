"""The commands of the record, one after the other as somebody uses them."""

from __future__ import annotations

import json
import os
import shutil
import tarfile
from pathlib import Path

import pytest

from backspan.core.ledger import bodies
from backspan.core.ledger.answers import answer_of, papers_of
from backspan.core.ledger.fold import fold
from backspan.core.review import review
from backspan.exchange.files import load, load_rule_library
from backspan.records.api import KEY, open_record
from backspan.records.store import Statement
from tests.architecture.source import ROOT
from tests.postgres_server import running_server
from tests.unit.cli.conftest import Ran, Run
from tests.unit.core.ledger.histories import lines
from tests.unit.core.ledger.writing import ENGINEER
from tests.unit.core.rigs import ON

RIG = str(ROOT / "tests" / "cases" / "rig.yaml")
DROP, BY, DAY = "D", "MT", ON.isoformat()
NOON = f"{DAY}T12:00:00+00:00"


@pytest.fixture
def record(run: Run, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> str:
    """A record made of the project file of the cases, on the day that file is of."""
    monkeypatch.delenv("DATABASE_URL", raising=False)
    monkeypatch.setattr("backspan.cli.import_command.now", lambda: NOON)
    folder = str(tmp_path / "record")
    ran = run("import", RIG, "--into", folder, "--by", BY)
    assert (ran.status, ran.err) == (0, "")
    return folder


@pytest.fixture
def accepted(record: str) -> str:
    """The same with its drop accepted on the answer of its review."""
    with open_record(Path(record)) as site:
        found = review(fold(site.entries()).project, DROP, load_rule_library(), on=ON)
        said = [bodies.LineConnected(DROP, line, "bo") for line in lines()]
        site.say([Statement(one, ENGINEER) for one in said], at=NOON)
        codes = fold(site.entries()).codes(DROP)
        assert codes is not None
        permit = bodies.UsePermitted(DROP, *codes, answer_of(found), papers_of(found))
        site.say([Statement(permit, ENGINEER)], at=NOON)
        assert fold(site.entries()).record(DROP).permit is not None
    return record


def archived(run: Run, record: str) -> str:
    """Its archive."""
    path = f"{record}.tar"
    ran = run("export", record, "--to", path)
    assert (ran.status, ran.err) == (0, "")
    return path


def flipped(path: str, near: bytes) -> None:
    """Change one bit of a file near some bytes of it."""
    raw = bytearray(Path(path).read_bytes())
    raw[raw.index(near)] ^= 1
    Path(path).write_bytes(raw)


def test_a_project_file_folds_to_the_project_that_it_was(record: str) -> None:
    with open_record(Path(record)) as site:
        assert fold(site.entries()).project == load(RIG, load_rule_library())


def test_what_would_be_taken_is_shown_and_not_taken(run: Run, tmp_path: Path) -> None:
    folder = tmp_path / "record"
    ran = run("import", RIG, "--into", str(folder), "--by", BY, "--show")
    assert ran.status == 0
    assert "entries would be written" in ran.out
    assert not folder.exists()


def test_a_file_taken_twice_writes_nothing_the_second_time(run: Run, record: str) -> None:
    ran = run("import", RIG, "--into", record, "--by", BY)
    assert "nothing new" in ran.out


def test_a_changed_file_ends_the_acceptance_and_says_so(
    run: Run, accepted: str, tmp_path: Path
) -> None:
    changed = tmp_path / "changed.yaml"
    text = Path(RIG).read_text("utf-8")
    assert "count: 16" in text
    changed.write_text(text.replace("count: 16", "count: 17", 1), "utf-8")
    ran = run("import", str(changed), "--into", accepted, "--by", BY)
    assert ran.status == 0
    assert f"The acceptance of drop {DROP} ended: rig set up." in ran.out


def test_what_a_file_no_longer_names_stays(run: Run, record: str, tmp_path: Path) -> None:
    shorter = json.loads(tar_member(archived(run, record), "project.json"))
    gone = shorter["kit"]["units"].pop()
    path = tmp_path / "shorter.yaml"
    path.write_text(json.dumps(shorter), "utf-8")
    ran = run("import", str(path), "--into", record, "--by", BY)
    if ran.status:
        assert gone["id"] in ran.err
    else:
        assert f"still in the record: unit {gone['id']}" in " ".join(ran.out.split())


def tar_member(path: str, name: str) -> str:
    """A member of an archive, read by another program than ours."""
    with tarfile.open(path) as tar:
        found = tar.extractfile(name)
        assert found is not None
        return found.read().decode("utf-8")


@pytest.mark.parametrize(
    ("arguments", "telling"),
    [
        ((RIG,), "add --by with one of its people"),
        ((RIG, "--by", "MX"), "no person 'MX'"),
        (("absent.yaml", "--by", BY), "no such file"),
        (("absent.tar",), "absent.tar"),
    ],
)
def test_what_cannot_be_imported_makes_no_record(
    run: Run, tmp_path: Path, arguments: tuple[str, ...], telling: str
) -> None:
    ran = run("import", *arguments, "--into", str(tmp_path / "record"))
    assert (ran.status, ran.out) == (2, "")
    assert telling in ran.err
    assert list(tmp_path.iterdir()) == []


def test_a_file_of_another_site_is_refused(run: Run, record: str) -> None:
    demo = str(ROOT / "examples" / "demo" / "site.yaml")
    ran = run("import", demo, "--into", record, "--by", "MARLOW")
    assert ran.status == 2
    assert "found a ledger of" in ran.err


def test_an_archive_takes_no_person(run: Run, record: str) -> None:
    ran = run("import", archived(run, record), "--into", record, "--by", BY)
    assert ran.status == 2
    assert "are for project files" in ran.err


def same_answer(run: Run, one: str, other: str) -> None:
    """Both are reviewed to the same bytes."""
    first, second = (run("review", at, "--on", DAY, "--format", "json") for at in (one, other))
    assert first.out == second.out
    assert first.status == second.status
    assert json.loads(first.out)["format"] == 1


def test_record_archive_and_the_project_file_in_it_are_reviewed_as_the_file_was(
    run: Run, record: str, tmp_path: Path
) -> None:
    path = archived(run, record)
    inside = tmp_path / "project.json"
    inside.write_text(tar_member(path, "project.json"), "utf-8")
    for at in (record, path, str(inside)):
        same_answer(run, RIG, at)


def test_before_the_first_entry_there_is_no_site(run: Run, record: str) -> None:
    ran = run("review", record, "--on", "2026-11-24")
    assert ran.status == 2
    assert "no site that was described by the end of 2026-11-24" in ran.err


def drilled(run: Run, record: str, backups: Path) -> str:
    """A backup that was brought back to a new folder."""
    backups.mkdir()
    ran = run("backup", record, "--to", str(backups))
    assert ran.status == 0
    assert ": whole" in ran.out
    (backup,) = backups.iterdir()
    again = f"{record}-again"
    ran = run("restore", str(backup), "--into", again)
    assert (ran.status, ran.err) == (0, "")
    return again


def test_the_drill_brings_back_what_was_there(run: Run, accepted: str, tmp_path: Path) -> None:
    shutil.copytree(accepted, f"{accepted}-kept")
    again = drilled(run, accepted, tmp_path / "backups")
    shutil.rmtree(accepted)
    with open_record(Path(f"{accepted}-kept")) as old, open_record(Path(again)) as new:
        assert new.entries() == old.entries()
        assert fold(new.entries()).record(DROP) == fold(old.entries()).record(DROP)
    same_answer(run, RIG, again)
    assert run("ledger", "verify", again).status == 0
    assert run("recheck", again).status == 0


def test_a_backup_goes_into_a_folder_that_is_there(run: Run, record: str, tmp_path: Path) -> None:
    ran = run("backup", record, "--to", str(tmp_path / "absent"))
    assert ran.status == 2
    assert "expected the folder that the backups are in" in ran.err


def test_nothing_is_brought_back_over_a_record(run: Run, record: str) -> None:
    ran = run("restore", archived(run, record), "--into", record)
    assert ran.status == 2
    assert "expected a new or empty folder" in ran.err


def head_and_key(ran: Ran) -> tuple[str, str]:
    """What is to be kept on paper."""
    told = dict(line.split(maxsplit=1) for line in ran.out.splitlines() if " " in line)
    return told["head"], told["key"]


def test_an_archive_is_proven_against_what_was_kept(run: Run, record: str) -> None:
    path = f"{record}.tar"
    head, key = head_and_key(run("export", record, "--to", path))
    alone = run("ledger", "verify", path)
    assert alone.status == 0
    assert "not that nothing was cut off" in " ".join(alone.out.split())
    for at in (path, record):
        assert run("ledger", "verify", at, "--head", head, "--key", key).status == 0
        assert run("ledger", "verify", at, "--head", "1" * 64).status == 10
        other = run("ledger", "verify", at, "--key", "1" * 64)
        assert other.status == 10
        assert "DAMAGED" in other.out
    assert run("ledger", "verify", path, "--head", "short").status == 2


def test_a_changed_byte_is_named_by_its_entry(run: Run, record: str) -> None:
    path = archived(run, record)
    flipped(path, b'"drop described"')
    ran = run("ledger", "verify", path)
    assert ran.status == 10
    with open_record(Path(record)) as site:
        at, entry = next(
            (number, one)
            for number, one in enumerate(site.entries(), start=1)
            if one.envelope.kind == "drop described"
        )
        assert f"entries.jsonl line {at}" in ran.out
        assert entry.name in ran.out
    assert run("restore", path, "--into", f"{record}-again").status == 2
    assert not Path(f"{record}-again").exists()


def test_a_record_that_was_changed_behind_its_back_is_damaged(run: Run, record: str) -> None:
    flipped(f"{record}/ledger.sqlite", b'"drop described"')
    ran = run("ledger", "verify", record)
    assert ran.status == 10
    assert "DAMAGED" in ran.out
    assert "at place" in ran.out


def test_recheck_of_the_same_program_needs_nobody(run: Run, accepted: str) -> None:
    for at in (accepted, archived(run, accepted)):
        ran = run("recheck", at)
        assert ran.status == 0
        assert "1 of 1 accepted drops" in ran.out


def test_recheck_names_the_drop_that_is_answered_differently(run: Run, record: str) -> None:
    with open_record(Path(record)) as site:
        said = [Statement(bodies.LineConnected(DROP, line, "bo"), ENGINEER) for line in lines()]
        site.say(said, at=NOON)
        codes = fold(site.entries()).codes(DROP)
        assert codes is not None
        site.say([Statement(bodies.UsePermitted(DROP, *codes, "pass"), ENGINEER)], at=NOON)
    ran = run("recheck", record)
    assert ran.status == 11
    assert f'drop {DROP}: accepted {DAY} by Ana Example on "pass"; now "pass, ' in ran.out
    assert "A person has to decide" in ran.out


def test_a_record_in_a_database(run: Run, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    folder = tmp_path / "record"
    with running_server() as server:
        monkeypatch.setenv("DATABASE_URL", server.database())
        assert run("import", RIG, "--into", str(folder), "--by", BY).status == 0
        assert not (folder / "ledger.sqlite").exists()
        path = archived(run, str(folder))
        monkeypatch.delenv("DATABASE_URL")
        again = run("restore", path, "--into", str(tmp_path / "again"))
        assert again.status == 0


@pytest.mark.skipif(os.name != "posix", reason="modes of files")
def test_a_key_that_others_can_read_signs_nothing(run: Run, record: str) -> None:
    archived(run, record)
    (Path(record) / KEY).chmod(0o644)
    ran = run("export", record, "--to", f"{record}-2.tar")
    assert ran.status == 2
    assert "expected the mode 600" in ran.err
    assert not Path(f"{record}-2.tar").exists()


def test_where_drops_stand_is_told_with_the_reason_and_is_no_pass(run: Run, record: str) -> None:
    ran = run("standing", record, "--on", DAY)
    assert ran.status == 11
    assert "0 of 1 drops in service by the record" in ran.out
    assert "nobody rides" in " ".join(ran.out.split())
    assert "local codes come first" in " ".join(ran.out.split())


def test_a_drop_in_service_is_status_0_that_day_alone(run: Run, accepted: str) -> None:
    with open_record(Path(accepted)) as site:
        site.say([Statement(bodies.ShiftChecked(DROP, DAY, fit=True), ENGINEER)], at=NOON)
    ran = run("standing", accepted, "--on", DAY, "--format", "json")
    assert ran.status == 0
    assert json.loads(ran.out)["in_service"] == 1
    assert run("standing", accepted, "--on", DAY, "--drop", DROP).status == 0
    assert run("standing", accepted, "--on", "2026-11-26").status == 11
    assert "en servicio" in run("standing", accepted, "--on", DAY, "--language", "es").out


def test_a_drop_that_the_record_has_not(run: Run, record: str) -> None:
    ran = run("standing", record, "--on", DAY, "--drop", "X9")
    assert (ran.status, ran.out) == (2, "")
    assert "no drop 'X9'" in ran.err
    assert run("standing", record, "--on", "2026-11-24").status == 2
