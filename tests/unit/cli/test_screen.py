from __future__ import annotations

import io
from pathlib import Path

import pytest

from backspan.cli.progress import Progress
from backspan.cli.screen import Screen, harmless, put, screen_of
from backspan.cli.status import Status, status_of
from backspan.core.findings import Verdict
from tests.unit.cli.conftest import DEMO, ON, Run


class Terminal(io.TextIOWrapper):
    """A stream that says it is a terminal."""

    def isatty(self) -> bool:
        """It is one."""
        return True


def terminal(encoding: str = "utf-8") -> Terminal:
    """A terminal with that encoding."""
    return Terminal(io.BytesIO(), encoding=encoding)


def test_the_width_is_the_terminals_within_reason(monkeypatch: pytest.MonkeyPatch) -> None:
    for columns, width in (("80", 80), ("20", 40), ("300", 100)):
        monkeypatch.setenv("COLUMNS", columns)
        assert screen_of(terminal()).width == width


def test_colour_is_for_terminals_that_want_it(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.delenv("NO_COLOR", raising=False)
    monkeypatch.setenv("TERM", "xterm")
    assert screen_of(terminal()).colour
    assert not screen_of(io.StringIO()).colour
    monkeypatch.setenv("TERM", "dumb")
    assert not screen_of(terminal()).colour
    monkeypatch.setenv("TERM", "xterm")
    monkeypatch.setenv("NO_COLOR", "1")
    assert not screen_of(terminal()).colour


@pytest.mark.parametrize(("encoding", "text"), [("utf-8", "✓ pass"), ("cp1252", "pass")])
def test_the_word_stands_alone_where_there_is_no_sign(encoding: str, text: str) -> None:
    assert screen_of(terminal(encoding)).verdict(Verdict.PASS) == text


def test_an_answer_is_never_told_by_colour_alone() -> None:
    plain, coloured = Screen(colour=False), Screen(colour=True)
    for verdict in Verdict:
        assert str(verdict) in plain.coloured(plain.verdict(verdict), verdict)
        assert "\x1b[" not in plain.coloured(plain.verdict(verdict), verdict)
        drawn = coloured.coloured(coloured.verdict(verdict), verdict)
        assert str(verdict) in drawn
        assert "\x1b[" in drawn


@pytest.mark.parametrize("signs", [True, False])
def test_a_table_keeps_to_the_width_and_to_its_characters(signs: bool) -> None:
    screen = Screen(width=40, signs=signs)
    table = screen.table("drop", "finding")
    table.add_row("S1", "[not markup] " + "word " * 30)
    drawn = screen.drawn(table)
    assert max(len(line) for line in drawn.splitlines()) <= 40
    assert "[not markup]" in drawn
    assert drawn.isascii() is not signs


def test_a_tolerance_is_told_where_its_sign_is_not_at_hand(monkeypatch: pytest.MonkeyPatch) -> None:
    plain = terminal("ascii")
    monkeypatch.setattr("sys.stdout", plain)
    put("4 ft ± 1 in")
    assert isinstance(plain.buffer, io.BytesIO)
    assert plain.buffer.getvalue() == b"4 ft +- 1 in"


def test_the_status_of_an_answer() -> None:
    assert status_of(None) is Status.PASS
    assert [status_of(one) for one in Verdict] == [0, 10, 11, 11]


def test_progress_is_silent_for_a_second(capsys: pytest.CaptureFixture[str]) -> None:
    progress = Progress()
    progress.doing("drawing")
    assert capsys.readouterr().err == ""
    progress.silent_since -= 5.0
    progress.doing("drawing")
    progress.doing("writing")
    assert capsys.readouterr().err == "drawing ...\n"


def test_what_steers_a_terminal_is_told_by_its_number(run: Run, tmp_path: Path) -> None:
    name = "a\x1b[2J\u202eb"
    assert harmless(f"{name}\n") == "a\\u{1b}[2J\\u{202e}b\n"
    refused = run("review", f"{tmp_path}/{name}.yaml").err
    written = run("review", DEMO, "--drop", "T2", "--on", ON, "--out", f"{tmp_path}/{name}").out
    for told in (refused, written):
        assert "\\u{1b}[2J\\u{202e}" in told.replace("\n", "")
        assert "\x1b" not in told
        assert "\u202e" not in told
