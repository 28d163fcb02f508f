"""One table of a rule file: hands out its fields by type and notes everything wrong with them."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from enum import StrEnum
from typing import TypeVar

Word = TypeVar("Word", bound=StrEnum)


class Problems:
    """Everything wrong with one file, each problem once, in the order found."""

    def __init__(self) -> None:
        self._found: dict[str, None] = {}

    def add(self, place: str, problem: str) -> None:
        """Note a problem at a place; a problem already noted there is not noted twice."""
        self._found[f"{place}: {problem}" if place else problem] = None

    def listed(self) -> tuple[str, ...]:
        """The problems, each with its place."""
        return tuple(self._found)


class Table:
    """One table of a rule file; what it does not give itself, it takes from the table behind it.

    Every reader returns None where it noted a problem, so that the rest is still looked at.
    """

    def __init__(
        self,
        content: Mapping[str, object],
        *,
        place: str,
        problems: Problems,
        behind: Table | None = None,
    ) -> None:
        self.content = content
        self.place = place
        self.problems = problems
        self.behind = behind

    def refuse_keys_but(self, allowed: Iterable[str], *, of: str) -> None:
        """Note every key that is not one of the allowed ones; `of` names what the table is."""
        accepted = tuple(allowed)
        for key in self.content:
            if key not in accepted:
                names = ", ".join(accepted)
                self.problems.add(self.place, f"unknown key {key!r}; a {of} has: {names}")

    def text(self, key: str) -> str | None:
        """A text that must be given: one line, no space around it."""
        expected = "text on one line, with single spaces"
        given = self._given(key, expected)
        if isinstance(given, str) and given and given == " ".join(given.split()):
            return given
        self._unexpected(key, given, expected)
        return None

    def text_if_given(self, key: str) -> str | None:
        """A text that may be left out."""
        return None if self._holder(key) is None else self.text(key)

    def number(self, key: str, *, most: int) -> float | None:
        """A plain number that must be given, above 0 and at most `most`."""
        expected = f"a number above 0 and at most {most}"
        given = self._given(key, expected)
        if isinstance(given, int | float) and not isinstance(given, bool) and 0 < given <= most:
            return float(given)
        self._unexpected(key, given, expected)
        return None

    def word(self, key: str, among: type[Word]) -> Word | None:
        """One of the words of a fixed list, that must be given."""
        expected = "one of: " + ", ".join(repr(str(one)) for one in among)
        given = self._given(key, expected)
        for one in among:
            if given == str(one):
                return one
        self._unexpected(key, given, expected)
        return None

    def words(self, key: str) -> tuple[str, ...] | None:
        """A list of different words that must be given and not be empty."""
        expected = "a list of different words, not empty"
        given = self._given(key, expected)
        if isinstance(given, list) and given:
            words = tuple(
                one for one in given if isinstance(one, str) and one and one == one.strip()
            )
            if len(words) == len(given) == len(set(words)):
                return words
        self._unexpected(key, given, expected)
        return None

    def refuse(self, key: str, problem: str) -> None:
        """Note a problem of a field at the table that gives it."""
        holder = self._holder(key) or self
        self.problems.add(holder.place, f"{key!r}: {problem}")

    def _holder(self, key: str) -> Table | None:
        table: Table | None = self
        while table is not None and key not in table.content:
            table = table.behind
        return table

    def _given(self, key: str, expected: str) -> object | None:
        holder = self._holder(key)
        if holder is None:
            self.problems.add(self.place, f"{key!r} is missing; expected {expected}")
            return None
        return holder.content[key]

    def _unexpected(self, key: str, given: object | None, expected: str) -> None:
        # What is missing was noted when it was looked up; TOML itself has no None.
        if given is not None:
            self.refuse(key, f"found {given!r}, expected {expected}")
