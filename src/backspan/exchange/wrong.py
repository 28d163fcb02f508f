"""What is wrong with a file that is taken in: where, what was found there, what was expected."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from backspan.core.errors import BackspanError

#: So many problems are told.
MOST_SHOWN = 1_000


@dataclass(frozen=True, slots=True)
class Wrong:
    """One thing that is wrong: where it stands, what was found there, what was expected."""

    where: str
    found: str
    expected: str

    def __str__(self) -> str:
        return f"{self.where}: found {self.found}; expected {self.expected}"


class WrongError(BackspanError, ValueError):
    """A file that cannot be taken; `problems` holds all that is wrong with it."""

    def __init__(self, problems: Iterable[Wrong]) -> None:
        self.problems = tuple(problems)
        lines = [str(one) for one in self.problems[:MOST_SHOWN]]
        more = len(self.problems) - len(lines)
        if more:
            lines.append(f"and {more:,} more")
        super().__init__("\n".join(lines))
