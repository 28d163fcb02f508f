"""Console blocks of the pages: what they say to type, and what they say comes back.

A block is fenced as `console`. A line that starts with `$ ` is typed (a backslash at its end
continues it); the lines after it are what is printed, standard error included. A line `...` stands
for any lines, none too. A last line `[exit 10]` gives the exit status; without it the status is 0.
A command that shows nothing after it may print what it likes.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import groupby

FENCE = re.compile(
    r"^(?P<indent> *)```console *\n(?P<body>.*?)^(?P=indent)``` *$", re.MULTILINE | re.DOTALL
)
EXIT = re.compile(r"^\[exit (\d+)\]$")
ANYTHING = "..."


@dataclass(frozen=True)
class Command:
    """One typed line of a page, and what the page says comes back."""

    line: int
    typed: str
    shown: tuple[str, ...]
    status: int


def blocks(page: str) -> Iterator[tuple[int, list[str]]]:
    """Each console block's lines without its indent, with the number of its first line."""
    for block in FENCE.finditer(page):
        indent = len(block["indent"])
        first = page.count("\n", 0, block.start("body")) + 1
        yield first, [line[indent:] for line in block["body"].splitlines()]


def commands(page: str) -> Iterator[Command]:
    """The commands of a page's console blocks, in order."""
    for first, lines in blocks(page):
        starts = [at for at, line in enumerate(lines) if line.startswith("$ ")]
        for start, end in zip(starts, [*starts[1:], len(lines)], strict=True):
            yield _command(lines[start:end], line=first + start)


def _command(lines: list[str], *, line: int) -> Command:
    typed, *shown = lines
    while typed.endswith("\\") and shown:
        typed = typed[:-1] + shown.pop(0)
    status = 0
    ended = EXIT.match(shown[-1]) if shown else None
    if ended:
        status = int(ended[1])
        shown.pop()
    return Command(line, typed.removeprefix("$ "), tuple(one.rstrip() for one in shown), status)


def matches(shown: tuple[str, ...], printed: str) -> bool:
    """Whether what was printed is what the page shows; blank lines at the end do not count."""
    wanted = _without_blank_end(list(shown))
    lines = _without_blank_end([line.rstrip() for line in printed.splitlines()])
    runs = [
        list(run)
        for is_gap, run in groupby(wanted, key=lambda line: line == ANYTHING)
        if not is_gap
    ]
    return _in_order(
        runs,
        lines,
        from_start=not wanted or wanted[0] != ANYTHING,
        to_end=not wanted or wanted[-1] != ANYTHING,
    )


def _without_blank_end(lines: list[str]) -> list[str]:
    while lines and not lines[-1]:
        lines = lines[:-1]
    return lines


def _in_order(runs: list[list[str]], lines: list[str], *, from_start: bool, to_end: bool) -> bool:
    """Whether the runs of lines stand in `lines` one after another, at the ends where asked."""
    if not runs:
        return not lines or not (from_start and to_end)
    at = 0
    for number, run in enumerate(runs):
        if number == 0 and from_start:
            place = 0 if lines[: len(run)] == run else None
        elif number == len(runs) - 1 and to_end:
            place = len(lines) - len(run) if lines[-len(run) :] == run else None
        else:
            place = next((i for i in range(at, len(lines)) if lines[i : i + len(run)] == run), None)
        if place is None or place < at:
            return False
        at = place + len(run)
    return not to_end or at == len(lines)
