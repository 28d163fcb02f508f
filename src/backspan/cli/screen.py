"""What is printed where: width, colour, and characters the terminal can show."""

from __future__ import annotations

import contextlib
import errno
import os
import shutil
import sys
import textwrap
import unicodedata
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING, Any, TextIO

import click

from backspan.core.findings import Verdict
from backspan.core.words import ENGLISH, SIGNS, Language, say_verdict

if TYPE_CHECKING:
    from rich.console import RenderableType
    from rich.table import Table

NARROWEST, USUAL, WIDEST = 40, 80, 100
COLOURS = {
    Verdict.PASS: "green",
    Verdict.FAIL: "red",
    Verdict.REFER: "yellow",
    Verdict.MISSING: "yellow",
}
#: What a plain terminal shows for signs it does not have.
_PLAIN = str.maketrans(
    {"·": "*", "×": "x", "√": "sqrt", "─": "-", "—": "-", "–": "-", "’": "'", "²": "2", "±": "+-"}
)
#: The reader of a pipe has gone: told so on most systems, and so on Windows.
_READER_GONE = {errno.EPIPE, errno.EINVAL}


@dataclass(frozen=True, slots=True)
class Screen:
    """How wide a line may be, whether signs can be shown, whether colour may be used."""

    width: int = USUAL
    signs: bool = True
    colour: bool = False

    def verdict(self, verdict: Verdict, language: Language = ENGLISH) -> str:
        """Sign and word of an answer; the word alone where the sign cannot be shown."""
        return say_verdict(verdict, language=language) if self.signs else language.word(verdict)

    def coloured(self, said: str, verdict: Verdict) -> str:
        """What says an answer, in its colour where there is one."""
        return click.style(said, fg=COLOURS[verdict], bold=True) if self.colour else said

    def within(self, text: str, width: int) -> list[str]:
        """Text in lines of a width, at least one."""
        return textwrap.wrap(harmless(text), width=width, break_on_hyphens=False) or [""]

    def paragraph(self, text: str, *, indent: int = 0, hanging: int | None = None) -> str:
        """Text in lines of the screen's width, the first and the following ones indented."""
        return textwrap.fill(
            harmless(text),
            width=self.width,
            initial_indent=" " * indent,
            subsequent_indent=" " * (indent if hanging is None else hanging),
            break_on_hyphens=False,
        )

    def table(self, *headings: str) -> Table:
        """An empty table with these headings, ruled under the headings only."""
        from rich import box
        from rich.table import Table

        lines = box.SIMPLE_HEAD if self.signs else box.ASCII2
        table = Table(box=lines, pad_edge=False, padding=(0, 1, 0, 0), show_edge=False)
        for heading in headings:
            table.add_column(heading, overflow="fold")
        return table

    def drawn(self, thing: RenderableType) -> str:
        """A table as text, without blanks at the ends of lines."""
        from io import StringIO

        from rich.console import Console

        console = Console(
            file=StringIO(),
            width=self.width,
            force_terminal=self.colour,
            color_system="standard" if self.colour else None,
            markup=False,
            emoji=False,
            highlight=False,
            legacy_windows=False,
        )
        with console.capture() as capture:
            console.print(thing)
        return "\n".join(line.rstrip() for line in capture.get().splitlines())


def screen_of(stream: TextIO | None = None) -> Screen:
    """The screen behind a stream (else standard output)."""
    stream = sys.stdout if stream is None else stream
    is_terminal = stream.isatty()
    columns = shutil.get_terminal_size((USUAL, 24)).columns
    width = max(NARROWEST, min(columns, WIDEST))
    colour = is_terminal and "NO_COLOR" not in os.environ and os.environ.get("TERM") != "dumb"
    return Screen(width, _can_show("".join(SIGNS.values()) + "─", stream), colour)


def put(content: str | bytes) -> None:
    """Print to standard output; a reader that has gone (`| head`) is no error.

    Bytes go out as they are. Raises OSError where the output cannot take it, as on a full disk.
    """
    _put(content, sys.stdout)


def put_error(text: str) -> None:
    """Print a line to standard error; where that cannot take it, the exit status tells alone."""
    with contextlib.suppress(OSError):
        _put(harmless(text) + "\n", sys.stderr)


def harmless(text: str) -> str:
    """The text with every character that steers a terminal or turns its lines by its number.

    The name of a file or what was typed behind a command may hold any; line ends stay.
    """
    return "".join(
        one if one == "\n" or unicodedata.category(one)[0] != "C" else f"\\u{{{ord(one):x}}}"
        for one in text
    )


def open_closed_streams() -> None:
    """Send to nowhere what is printed to an output that was closed before the program began.

    Python has no stream then, and the next file that is opened would take its place.
    """
    if sys.stdout is None:
        sys.stdout = Path(os.devnull).open("w", encoding="utf-8")  # noqa: SIM115 - while it runs
    if sys.stderr is None:
        sys.stderr = Path(os.devnull).open("w", encoding="utf-8")  # noqa: SIM115 - while it runs


def _put(content: str | bytes, stream: TextIO) -> None:
    shown = _showable(content, stream) if isinstance(content, str) else content
    try:
        click.echo(shown, file=stream, nl=False)
        stream.flush()
    except OSError as error:
        if error.errno not in _READER_GONE:
            raise
        _to_nowhere(stream)


def _showable(text: str, stream: TextIO) -> str:
    if _can_show(text, stream):
        return text
    encoding = _encoding(stream)
    plain = text.translate(_PLAIN)
    return plain.encode(encoding, errors="replace").decode(encoding)


def _can_show(text: str, stream: TextIO) -> bool:
    try:
        text.encode(_encoding(stream))
    except UnicodeEncodeError:
        return False
    return True


def _encoding(stream: Any) -> str:
    return getattr(stream, "encoding", None) or "ascii"


def _to_nowhere(stream: TextIO) -> None:
    """Send the rest of a stream to nowhere, so that closing it at the end raises nothing."""
    nowhere = os.open(os.devnull, os.O_WRONLY)
    os.dup2(nowhere, stream.fileno())
    os.close(nowhere)
