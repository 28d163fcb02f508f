"""The workbench from the command line: the record that is there, or a new one by name."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
import waitress.server

from backspan.records.api import open_record
from tests.unit.cli.conftest import Run


class NotRun:
    """A server that ends at once."""

    def run(self) -> None:
        """Serve nothing."""


@pytest.fixture(autouse=True)
def served(monkeypatch: pytest.MonkeyPatch) -> None:
    def create(*_: Any, **__: Any) -> NotRun:
        return NotRun()

    monkeypatch.delenv("DATABASE_URL", raising=False)
    monkeypatch.setattr(waitress.server, "create_server", create)


def test_a_record_is_served_only_where_there_is_one(run: Run, tmp_path: Path) -> None:
    ran = run("serve", str(tmp_path / "none"), "--port", "0")
    assert ran.status == 2
    assert not (tmp_path / "none").exists()


def test_a_new_site_is_made_by_its_name_and_served_again(run: Run, tmp_path: Path) -> None:
    folder = str(tmp_path / "new")
    for _ in range(2):
        ran = run("serve", folder, "--new", "Teal House", "--port", "0")
        assert (ran.status, ran.err) == (0, "")
        assert ran.out.startswith("Teal House: http://127.0.0.1:")
    assert run("serve", folder, "--port", "0").status == 0
    with open_record(Path(folder)) as record:
        assert record.entries() == ()


def test_another_site_is_not_made_where_one_is(run: Run, tmp_path: Path) -> None:
    folder = str(tmp_path / "new")
    run("serve", folder, "--new", "Teal House", "--port", "0")
    ran = run("serve", folder, "--new", "Heron House", "--port", "0")
    assert ran.status == 2
    assert "Teal House" in ran.err
