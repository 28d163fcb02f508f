"""The ids a project gives to its things: where each stands, and looking one up by name."""

from __future__ import annotations

import difflib
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from typing import Any

from backspan.core.errors import quoted

Path = tuple[str | int, ...]

_MOST_SHOWN = 12


@dataclass(frozen=True, slots=True)
class ReferenceProblem:
    """One name or position that does not fit the rest of the project.

    `looked_in` are the lists in which a name was looked up; `first` is the earlier use of an id
    that is used twice.
    """

    path: Path
    found: str
    expected: str
    looked_in: tuple[Path, ...] = ()
    first: Path | None = None


@dataclass(frozen=True, slots=True)
class Identifiers:
    """The ids of one kind of thing: the lists they stand in, and each id with its path."""

    kind: str
    plural: str
    lists: tuple[Path, ...]
    ids: tuple[tuple[str, Path], ...]

    def doubled(self) -> Iterator[ReferenceProblem]:
        """A problem for each id that stands a second time."""
        seen: dict[str, Path] = {}
        for name, path in self.ids:
            if name in seen:
                yield ReferenceProblem(
                    (*path, "id"),
                    f"the id {quoted(name)} a second time",
                    f"each {self.kind} with an id of its own",
                    first=seen[name],
                )
            seen.setdefault(name, path)

    def lookup(self, name: str | None, path: Path) -> Iterator[ReferenceProblem]:
        """A problem if `name`, which stands at `path`, is given and is none of the ids."""
        known = [identifier for identifier, _ in self.ids]
        if name is not None and name not in known:
            yield ReferenceProblem(
                path,
                f"the {self.kind} {quoted(name)}, which is not there",
                near(name, known, what=self.plural),
                looked_in=self.lists,
            )


def identifiers(kind: str, plural: str, lists: Iterable[tuple[Path, Iterable[Any]]]) -> Identifiers:
    """The ids of all records in `lists`, each list with its path.

    A record whose id could not be read has none and is left out.
    """
    with_paths = tuple(lists)
    return Identifiers(
        kind,
        plural,
        tuple(path for path, _ in with_paths),
        tuple(
            (item.id, (*path, index))
            for path, items in with_paths
            for index, item in enumerate(items)
            if isinstance(item.id, str)
        ),
    )


def near(wanted: str, choices: Iterable[str], *, what: str) -> str:
    """What to write instead of `wanted`: the choices that look like it, else all there are."""
    names = sorted(set(choices))
    if not names:
        return f"one of the {what}, of which there are none"
    suggestion = did_you_mean(wanted, names)
    if suggestion:
        return f"one of the {what}; {suggestion}"
    more = ", ..." if len(names) > _MOST_SHOWN else ""
    return f"one of the {what}: {', '.join(names[:_MOST_SHOWN])}{more}"


def did_you_mean(wanted: str, choices: Iterable[str]) -> str:
    """A question that names the choices most like `wanted`; empty where none is like it."""
    by_small_letters = {name.casefold(): name for name in choices}
    close = difflib.get_close_matches(wanted.casefold(), sorted(by_small_letters), n=3, cutoff=0.6)
    names = " or ".join(by_small_letters[name] for name in close)
    return f"did you mean {names}?" if close else ""
