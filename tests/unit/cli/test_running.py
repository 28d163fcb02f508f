"""However a run ends: no traceback, one screen, a status that says what happened."""

from __future__ import annotations

import os
import subprocess
import sys

import pytest

from backspan.core.words import WordsError
from tests.architecture.source import ROOT
from tests.unit.cli.conftest import DEMO, ON, Run

HEAVY = ("pydantic", "yaml", "typst", "ezdxf", "rich")


def break_with(monkeypatch: pytest.MonkeyPatch, error: BaseException) -> None:
    """Let the review raise `error`."""

    def broken(*_: object, **__: object) -> None:
        raise error

    monkeypatch.setattr("backspan.cli.review_command.reviews_of", broken)


def test_an_error_of_the_program_is_an_apology(run: Run, monkeypatch: pytest.MonkeyPatch) -> None:
    break_with(monkeypatch, ZeroDivisionError("made up"))
    ran = run("review", DEMO)
    assert ran.status == 70
    assert ran.out == ""
    assert "ZeroDivisionError: made up" in ran.err
    assert "No answer was given" in ran.err
    assert "Traceback" not in ran.err
    assert len(ran.err.splitlines()) <= 24


def test_the_traceback_is_there_for_who_asks(run: Run, monkeypatch: pytest.MonkeyPatch) -> None:
    break_with(monkeypatch, ZeroDivisionError("made up"))
    monkeypatch.setenv("BACKSPAN_TRACEBACK", "1")
    ran = run("review", DEMO)
    assert ran.status == 70
    assert "Traceback" in ran.err


def test_a_missing_sentence_is_the_programs_fault(
    run: Run, monkeypatch: pytest.MonkeyPatch
) -> None:
    break_with(monkeypatch, WordsError("message 'x' has no sentence"))
    assert run("review", DEMO).status == 70


def test_a_disk_that_refuses_is_not(run: Run, monkeypatch: pytest.MonkeyPatch) -> None:
    break_with(monkeypatch, OSError(28, "No space left on device"))
    ran = run("review", DEMO)
    assert ran.status == 2
    assert "no space left" in ran.err


def test_who_stops_it_is_told_so(run: Run, monkeypatch: pytest.MonkeyPatch) -> None:
    break_with(monkeypatch, KeyboardInterrupt())
    ran = run("review", DEMO)
    assert ran.status == 130
    assert ran.err.strip().endswith("stopped")


def python(*arguments: str, **environment: str) -> subprocess.CompletedProcess[bytes]:
    """Run this Python as another process."""
    return subprocess.run(
        [sys.executable, *arguments],
        cwd=ROOT,
        env={**os.environ, **environment},
        capture_output=True,
        timeout=60,
        check=False,
    )


@pytest.mark.parametrize("module", ["backspan", "backspan.cli"])
def test_it_runs_as_a_module(module: str) -> None:
    ran = python("-m", module, "ask", "moment", "load=2000lb", "reach=8ft")
    assert ran.returncode == 0
    assert b"16,000 lb ft" in ran.stdout


def test_help_loads_nothing_heavy() -> None:
    script = (
        "import sys; from backspan.cli import main; main(['--help']);"
        f"print([name for name in {HEAVY!r} if name in sys.modules])"
    )
    ran = python("-c", script)
    assert ran.stdout.splitlines()[-1] == b"[]"


@pytest.mark.parametrize("encoding", ["ascii", "cp1252", "utf-8"])
@pytest.mark.slow
def test_a_terminal_without_signs_shows_words(encoding: str) -> None:
    ran = python(
        *("-m", "backspan.cli", "review", DEMO, "--drop", "W2", "--worked", "--on", ON),
        PYTHONIOENCODING=encoding,
        PYTHONUTF8="0",
        NO_COLOR="1",
    )
    assert ran.returncode == 10
    text = ran.stdout.decode(encoding)
    assert "fail" in text
    assert ("✗" in text) is (encoding == "utf-8")
    assert "W = m · g" in text.replace("*", "·")


@pytest.mark.slow
def test_a_reader_that_leaves_changes_no_answer() -> None:
    process = subprocess.Popen(
        [sys.executable, "-m", "backspan.cli", "review", DEMO, "--format", "json", "--on", ON],
        cwd=ROOT,
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
    )
    assert process.stdout is not None
    assert process.stderr is not None
    process.stdout.close()
    said = process.stderr.read()
    process.stderr.close()
    assert process.wait(timeout=60) == 10
    assert said == b""


def in_a_shell(line: str) -> subprocess.CompletedProcess[bytes]:
    """Run the command line as a shell would, which is what closes outputs."""
    shell = ["sh", "-c", f"{sys.executable} -m backspan.cli {line}"]
    return subprocess.run(shell, cwd=ROOT, capture_output=True, timeout=60, check=False)


@pytest.mark.parametrize("closed", [">&-", "2>&-", ">&- 2>&-", "2>/dev/full"])
@pytest.mark.parametrize(
    ("command", "status"),
    [
        (f"review {DEMO} --drop W2 --on {ON}", 10),
        ("review nowhere.yaml", 2),
        ("rules", 0),
        ("schema", 0),
        ("nosuch", 2),
        ("--help", 0),
    ],
)
def test_an_output_that_is_closed_or_full_of_errors_changes_no_status(
    command: str, status: int, closed: str
) -> None:
    ran = in_a_shell(f"{command} {closed}")
    assert ran.returncode == status
    assert b"Traceback" not in ran.stderr


def test_an_output_that_can_take_nothing_is_told() -> None:
    full = in_a_shell("rules >/dev/full")
    assert full.returncode == 2
    assert b"no space left on device" in full.stderr


@pytest.mark.slow
def test_data_is_the_same_bytes_in_any_terminal() -> None:
    arguments = ("-m", "backspan.cli", "review", DEMO, "--drop", "S1", "--on", ON)
    first = python(*arguments, "--format", "json", PYTHONIOENCODING="ascii", PYTHONUTF8="0")
    again = python(*arguments, "--format", "json", PYTHONUTF8="1", LC_ALL="C")
    assert first.stdout == again.stdout
    assert b"\r" not in first.stdout
