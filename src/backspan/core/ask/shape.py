"""The shape of a question of the roof: a topic, the values it takes, the answer it gives."""

from __future__ import annotations

import datetime
from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from enum import StrEnum

from backspan.core.errors import BackspanError
from backspan.core.findings import ComparisonRow, Margin, Message, Need, Verdict
from backspan.core.model.basis import Confirmation
from backspan.core.model.evidence import Sign
from backspan.core.quantities import Amount, Dimension, Style
from backspan.core.quantities.named import QUANTITIES
from backspan.core.rules.selected import RuleLibrary, SelectedValue
from backspan.core.worked.formula import Step

#: A value as it was given: a quantity, a count, or a word.
Given = Amount | int | str


_MOST_SHOWN = 8


class QuestionError(BackspanError, ValueError):
    """A question that cannot be asked; holds every problem, a line each."""

    def __init__(self, *problems: str) -> None:
        """Keep the problems in the order they were found."""
        more = len(problems) - _MOST_SHOWN
        said = problems if more <= 0 else (*problems[:_MOST_SHOWN], f"and {more} more")
        super().__init__("\n".join(said))
        self.problems = problems


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


def parameter_of(name: str, *, needed: bool) -> Parameter:
    """The parameter by which a question takes a quantity, as its row says."""
    one = QUANTITIES[name]
    return Parameter(
        one.asked,
        f"{one.words}, {one.hint}" if one.hint else one.words,
        Kind.COUNT if one.dimension is None else Kind.QUANTITY,
        dimension=one.dimension,
        needed=needed,
        sign=Sign.NOT_NEGATIVE if one.zero else Sign.SHARE if one.share else Sign.POSITIVE,
    )


@dataclass(frozen=True, slots=True)
class Asked:
    """The values of one question, read, with all that an answer rests on besides them."""

    values: Mapping[str, Given]
    library: RuleLibrary
    style: Style
    on: datetime.date
    confirmations: tuple[Confirmation, ...] = ()

    def number(self, name: str) -> float | None:
        """A number in SI, or a count; None where it was not given."""
        given = self.values.get(name)
        if isinstance(given, Amount):
            return given.value
        return given if isinstance(given, int) else None

    def word(self, name: str) -> str | None:
        """A word; None where it was not given."""
        given = self.values.get(name)
        return given if isinstance(given, str) else None

    def having(self, name: str, value: Given) -> Asked:
        """The same question with one value given."""
        return replace(self, values={**self.values, name: value})


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
