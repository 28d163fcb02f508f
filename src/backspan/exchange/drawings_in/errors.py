"""What is wrong with a drawing: where, what was found there, what was expected."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from backspan.core.errors import BackspanError

#: So many problems are told.
MOST_SHOWN = 1_000


@dataclass(frozen=True, slots=True)
class DrawingProblem:
    """One thing that is wrong: where it stands, what was found there, what was expected."""

    where: str
    found: str
    expected: str

    def __str__(self) -> str:
        return f"{self.where}: found {self.found}; expected {self.expected}"


class DrawingError(BackspanError, ValueError):
    """A drawing that cannot be taken; `problems` holds all that is wrong with it."""

    def __init__(self, problems: Iterable[DrawingProblem]) -> None:
        self.problems = tuple(problems)
        lines = [str(one) for one in self.problems[:MOST_SHOWN]]
        more = len(self.problems) - len(lines)
        if more:
            lines.append(f"and {more:,} more")
        super().__init__("\n".join(lines))


def refused(where: str, found: str, expected: str) -> DrawingError:
    """The error of one thing that is wrong."""
    return DrawingError([DrawingProblem(where, found, expected)])
