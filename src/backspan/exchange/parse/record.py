"""A tree to one record of the model, or one error that holds everything wrong with it."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import TypeVar, cast

from backspan.core.model.identifiers import Path, ReferenceProblem
from backspan.exchange.parse.fields import prepared
from backspan.exchange.parse.outline import outline
from backspan.exchange.parse.problems import ProjectError
from backspan.exchange.parse.tree import Flaw, Tree
from backspan.exchange.parse.types import checked_types

T = TypeVar("T")
_Search = Callable[[T], Iterable[ReferenceProblem]]


def read_record(tree: Tree, cls: type[T], *, names: _Search[T], places: _Search[T]) -> T:
    """The instance of `cls` that `tree` holds.

    `names` finds names that lead nowhere, also in a record whose values are not all sound;
    `places` finds contradictions of values, in a sound one. Raises ProjectError with all problems.
    """
    flaws = list(tree.flaws)
    ready = prepared(tree.data, cls, (), flaws)
    told = {tree.nearest(flaw.path) for flaw in flaws}
    record, wrong = checked_types(ready, cls, tree)
    flaws += [flaw for flaw in wrong if _as_written(flaw.path, tree) not in told]
    if record is not None:
        references = [*names(record), *places(record)]
    else:
        references = list(names(cast("T", outline(ready, cls))))
    flaws += [
        _flaw(one, tree)
        for one in references
        if one.path not in told and not _explained(one, flaws, tree)
    ]
    if flaws:
        problems = dict.fromkeys(tree.problem(flaw) for flaw in flaws)
        raise ProjectError(sorted(problems, key=lambda one: (one.line, one.column, one.path)))
    return cast("T", record)


def _as_written(path: Path, tree: Tree) -> Path:
    """The path of a value where it stands in the text: a short form has no key `value`."""
    return path[:-1] if path and path[-1] == "value" and path not in tree.places else path


def _flaw(problem: ReferenceProblem, tree: Tree) -> Flaw:
    expected = problem.expected
    if problem.first is not None:
        line = tree.places[tree.nearest(problem.first)].line
        expected += f"; the first stands in line {line}"
    return Flaw(problem.path, problem.found, expected)


def _explained(problem: ReferenceProblem, flaws: list[Flaw], tree: Tree) -> bool:
    """Whether the name may be absent only because the list it belongs to could not be read."""
    return any(_hides(flaw, names, tree) for names in problem.looked_in for flaw in flaws)


def _hides(flaw: Flaw, names: Path, tree: Tree) -> bool:
    """Whether `flaw` may keep an id out of the list at path `names`."""
    around = flaw.path == names[: len(flaw.path)]
    # A key that is not known may be the list's own, or one on the way to it, misspelt.
    misspelt = flaw.at_key and names not in tree.places and flaw.path[:-1] == tree.nearest(names)
    within = flaw.path[: len(names)] == names
    item = within and (len(flaw.path) == len(names) + 1 or flaw.path[len(names) + 1 :] == ("id",))
    return around or misspelt or item
