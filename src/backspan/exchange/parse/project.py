"""The text of a project file to a `Project`, or one error that holds all that is wrong."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, ClassVar

from backspan.core.model.basis import Confirmation
from backspan.core.model.evidence import STRICT
from backspan.core.model.identifiers import ReferenceProblem, identifiers
from backspan.core.model.inherit import inherit
from backspan.core.model.order import ordered
from backspan.core.model.people import Person
from backspan.core.model.project import FORMAT, Project
from backspan.core.model.references import name_problems, place_problems
from backspan.core.model.rule_names import rule_problems
from backspan.core.rules.selected import RuleLibrary
from backspan.exchange.parse.filled import filled
from backspan.exchange.parse.problems import ProjectError, shown
from backspan.exchange.parse.record import read_record
from backspan.exchange.parse.tree import Flaw, Tree, read_tree


def parse_project(text: str, origin: str, library: RuleLibrary | None = None) -> Project:
    """The project written in `text`; `origin` is the file's name, for errors.

    The lists of the project are in the order of their ids, and every stated value has the
    evidence of the nearest record around it that states one. Raises ProjectError with every
    problem: its line, column and path, what was found and what was expected. With a `library`, a
    rule set, edition, reading or value that it does not hold is a problem too.
    """
    tree = read_tree(text, origin)
    _check_format(tree)
    tree.data = filled(tree.data)

    def places(project: Project) -> tuple[ReferenceProblem, ...]:
        of_rules = () if library is None else rule_problems(project, library)
        return (*place_problems(project), *of_rules)

    project = read_record(tree, Project, names=name_problems, places=places)
    return ordered(inherit(project))


def parse_confirmations(text: str, origin: str) -> tuple[Confirmation, ...]:
    """The confirmations written in `text`: a file with `confirmations` and perhaps `people`.

    Where it names people, every confirmation must be by one of them. Raises ProjectError as
    `parse_project` does.
    """
    tree = read_tree(text, origin)
    return read_record(
        tree, ConfirmationFile, names=_absent_people, places=lambda _: ()
    ).confirmations


@dataclass(frozen=True, slots=True)
class ConfirmationFile:
    """What an office keeps beside its projects: the values it found in its own copies."""

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    confirmations: tuple[Confirmation, ...]
    people: tuple[Person, ...] = ()


def _absent_people(file: ConfirmationFile) -> list[ReferenceProblem]:
    people = identifiers("person", "people", [(("people",), file.people)])
    found = list(people.doubled())
    if file.people:
        for index, confirmation in enumerate(file.confirmations):
            found.extend(people.lookup(confirmation.by, ("confirmations", index, "by")))
    return found


def _check_format(tree: Tree) -> None:
    """A file of another format is not judged further: its keys may mean something else."""
    found = tree.data.get("format")
    if found is not None and found != str(FORMAT):
        expected = f"format: {FORMAT}, the only one that this version of the program reads"
        raise ProjectError([tree.problem(Flaw(("format",), shown(found), expected))])
