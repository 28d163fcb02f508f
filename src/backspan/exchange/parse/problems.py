"""What is wrong with a file, where, and what was expected there."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from backspan.core.errors import BackspanError, quoted

_MOST_SHOWN = 12


@dataclass(frozen=True, slots=True, order=True)
class Place:
    """A place in a text, counted from one as editors do."""

    line: int
    column: int


@dataclass(frozen=True, slots=True)
class Problem:
    """One thing that is wrong; `path` is the way to it in the file, `origin` the file's name."""

    origin: str
    line: int
    column: int
    path: str
    found: str
    expected: str

    def __str__(self) -> str:
        where = f"{self.origin}:{self.line}:{self.column}"
        head = f"{where}  {self.path}" if self.path else where
        return f"{head}\n    found {self.found}\n    expected {self.expected}"


class ProjectError(BackspanError, ValueError):
    """A file that cannot be read as what it should be; `problems` holds all that is wrong."""

    def __init__(self, problems: Iterable[Problem]) -> None:
        self.problems = tuple(problems)
        blocks = [str(problem) for problem in self.problems[:_MOST_SHOWN]]
        more = len(self.problems) - len(blocks)
        if more:
            blocks.append(f"and {more} more")
        super().__init__("\n".join(blocks))


def shown(value: object) -> str:
    """What stands in the file, fit for one line of a message."""
    if isinstance(value, dict):
        return "a record (lines of `key: value`)"
    if isinstance(value, list):
        return "a list"
    return quoted(value)
