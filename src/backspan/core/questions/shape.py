"""The shape of a question and of its answer: data that every topic fills and others only read."""

from __future__ import annotations

import datetime
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from enum import StrEnum

from backspan.core.errors import BackspanError
from backspan.core.findings import ComparisonRow, Margin, Message, Need, Verdict
from backspan.core.model.basis import Confirmation
from backspan.core.model.evidence import Sign
from backspan.core.quantities import Amount, Dimension, Style
from backspan.core.rules.selected import RuleLibrary, SelectedValue
from backspan.core.worked.formula import Step

#: A value as the asker gave it: a number with its dimension, a count, a word.
Given = Amount | int | str


class QuestionError(BackspanError, ValueError):
    """A question that cannot be asked so: every problem, each with what would do instead."""

    def __init__(self, *problems: str) -> None:
        self.problems = problems
        super().__init__("\n".join(problems))


class Kind(StrEnum):
    """How the value of a parameter is read."""

    QUANTITY = "number with unit"
    COUNT = "whole number"
    WORD = "word"


@dataclass(frozen=True, slots=True)
class Parameter:
    """One value a topic takes; `dimension` is there for a number with unit only."""

    name: str
    help: str
    kind: Kind = Kind.QUANTITY
    dimension: Dimension | None = None
    needed: bool = True
    sign: Sign = Sign.POSITIVE

    @property
    def form(self) -> str:
        """A value in the form that is read, to show."""
        if self.dimension is not None:
            return self.dimension.forms[0]
        return "26" if self.kind is Kind.COUNT else "word"

    @property
    def typed(self) -> str:
        """Such a value as it is typed in a shell, without quotes and blanks."""
        if self.kind is Kind.WORD:
            return "SET"
        return "5ft6in" if '"' in self.form else self.form.replace(" ", "").replace(",", "")


@dataclass(frozen=True, slots=True)
class Asked:
    """The values of one question, read, with all that an answer rests on besides them."""

    values: Mapping[str, Given]
    library: RuleLibrary
    style: Style
    on: datetime.date
    confirmations: tuple[Confirmation, ...] = ()

    def number(self, name: str) -> float | None:
        """A quantity in SI; None where it was not given."""
        given = self.values.get(name)
        return given.value if isinstance(given, Amount) else None

    def needed(self, name: str) -> float:
        """A quantity in SI that the topic cannot do without; QuestionError where it is absent."""
        number = self.number(name)
        if number is None:
            raise QuestionError(f"{name} is not given; write for example {name}=...")
        return number

    def count(self, name: str) -> int | None:
        """A whole number; None where it was not given."""
        given = self.values.get(name)
        return given if isinstance(given, int) else None

    def word(self, name: str) -> str | None:
        """A word; None where it was not given."""
        given = self.values.get(name)
        return given if isinstance(given, str) else None


@dataclass(frozen=True, slots=True)
class Line:
    """One number of an answer, by the id of its label."""

    id: str
    value: Given


@dataclass(frozen=True, slots=True)
class Answer:
    """What a topic answers: one sentence, the numbers, and what they rest on.

    `verdict` is None where nothing was judged, only worked out. `rules` are the values the
    answer rests on, the governing one first.
    """

    message: Message
    verdict: Verdict | None = None
    lines: tuple[Line, ...] = ()
    margins: tuple[Margin, ...] = ()
    steps: tuple[Step, ...] = ()
    rules: tuple[SelectedValue, ...] = ()
    notes: tuple[Message, ...] = ()
    needs: tuple[Need, ...] = ()
    comparison: tuple[ComparisonRow, ...] = ()


@dataclass(frozen=True, slots=True)
class Topic:
    """One question of the roof: what it asks, what it takes, how it is answered."""

    id: str
    question: str
    parameters: tuple[Parameter, ...]
    example: str
    answer: Callable[[Asked], Answer]

    def parameter(self, name: str) -> Parameter | None:
        """The parameter of that name, if the topic takes it."""
        return next((one for one in self.parameters if one.name == name), None)
