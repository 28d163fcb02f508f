"""Runs the command line in this process, as a script would call it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import pytest

from backspan.cli import main
from tests.architecture.source import ROOT

DEMO = str(ROOT / "examples" / "demo" / "site.yaml")
ON = "2026-11-25"


@dataclass(frozen=True)
class Ran:
    """What a command ended with and printed."""

    status: int
    out: str
    err: str


Run = Callable[..., Ran]


@pytest.fixture
def run(capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch) -> Run:
    """Runs a command on an 80-column terminal without colour."""
    monkeypatch.setenv("COLUMNS", "80")
    monkeypatch.setenv("NO_COLOR", "1")
    monkeypatch.delenv("BACKSPAN_TRACEBACK", raising=False)

    def run_command(*arguments: str) -> Ran:
        status = main(list(arguments))
        printed = capsys.readouterr()
        return Ran(status, printed.out, printed.err)

    return run_command
