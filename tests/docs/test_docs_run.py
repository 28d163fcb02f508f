"""What the pages say to type is typed, in a folder that looks like the repository, and answers so.

Only `backspan` is run. Blocks that start with another command are examples to read.
"""

from __future__ import annotations

import os
import shlex
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.architecture.source import ROOT
from tests.docs.console import Command, commands, matches

PROGRAM = "backspan"
LONGEST = 60  # seconds

#: A terminal that is the same everywhere: no colour, a hundred columns.
TERMINAL = {"NO_COLOR": "1", "TERM": "dumb", "COLUMNS": "100", "PYTHONUTF8": "1"}


def pages() -> list[Path]:
    """The pages a reader opens: the front page and the documentation."""
    return [*ROOT.glob("README.md"), *sorted((ROOT / "docs").rglob("*.md"))]


def typed_on_pages() -> Iterator[tuple[str, Command]]:
    """Every `backspan` command of the pages, with the place where it is written."""
    for page in pages():
        for command in commands(page.read_text(encoding="utf-8")):
            if shlex.split(command.typed)[:1] == [PROGRAM]:
                yield f"{page.relative_to(ROOT).as_posix()}:{command.line}", command


def folder_for(page: str, under: Path) -> Path:
    """Where the commands of a page are typed in turn; what they write is thrown away."""
    folder = under / page.replace("/", "-")
    if not folder.exists():
        (folder / "backups").mkdir(parents=True)
        for name in ("examples", "tests"):
            (folder / name).symlink_to(ROOT / name)
    return folder


def run(command: Command, folder: Path) -> subprocess.CompletedProcess[str]:
    """Type the command as a reader would, with the program beside this Python."""
    _, *arguments = shlex.split(command.typed)
    return subprocess.run(
        [Path(sys.executable).parent / PROGRAM, *arguments],
        cwd=folder,
        env={**os.environ, **TERMINAL, "DATABASE_URL": ""},
        stdin=subprocess.DEVNULL,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        timeout=LONGEST,
        encoding="utf-8",
        check=False,
    )


def disagreement(command: Command, folder: Path) -> str | None:
    """What the program answered if it is not what the page shows, or None."""
    result = run(command, folder)
    if result.returncode != command.status:
        return f"exit {result.returncode}, not {command.status}; printed:\n{result.stdout}"
    if command.shown and not matches(command.shown, result.stdout):
        shown = "\n".join(command.shown)
        return f"the page shows:\n{shown}\nthe program printed:\n{result.stdout}"
    return None


def test_the_front_page_shows_the_program_at_work() -> None:
    assert any(place.startswith("README.md") for place, _ in typed_on_pages())


@pytest.mark.long
def test_the_pages_show_what_is_printed(tmp_path: Path) -> None:
    answers = (
        (place, disagreement(command, folder_for(place.partition(":")[0], tmp_path)))
        for place, command in typed_on_pages()
    )
    wrong = [f"{place}: {answer}" for place, answer in answers if answer]
    assert not wrong, "\n\n".join(wrong)
