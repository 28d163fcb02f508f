"""The sheet a check is worked on, in two modes of the same work.

*Recorded*: every read is an input of the finding and every formula a step of it; what is printed.
*Bare*: numbers only, at one corner of what is doubtful; what searches ask thousands of times.

Unknown flows: a value that is not stated is NaN and goes through every formula, so that a check is
written once, for the case in which all is known. A step that came out NaN is not recorded.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, field, replace
from typing import Protocol

from backspan.core.numbers import surely_above
from backspan.core.quantities import Dimension
from backspan.core.sheet.case import Corner, Place
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.reads import UNKNOWN, Read
from backspan.core.sheet.witness import EvidenceClass
from backspan.core.worked.formula import AnyFormula, Step


class Sheet(Protocol):
    """What a check's work may do."""

    @property
    def corner(self) -> Corner:
        """The values taken in place of the stated ones."""

    def without_doubt(self) -> Sheet:
        """The sheet for what is read at the corner looked at, and adds no corner of its own."""

    def read(self, one: Read) -> float:
        """The number in SI at the corner looked at; NaN where nobody stated it."""

    def want(self, name: str, place: Place) -> None:
        """Note that something is not there that somebody has to look for."""

    def do(self, formula: AnyFormula, *, of: Dimension | None = None, **arguments: float) -> float:
        """A formula's result; NaN where an argument is.

        `of` is the kind of quantity that a formula for any is used on: without it the step cannot
        be printed.
        """

    def positive(self, name: str, value: float) -> float:
        """The value if it is above zero; else NaN, and the answer is a fail that names it.

        What a formula means ends there: behind its domain no sum may come out as a pass.
        """


@dataclass(slots=True)
class RecordedSheet:
    """Keeps what was read and what was worked out."""

    inputs: Inputs
    steps: list[Step] = field(default_factory=list)
    outside: list[str] = field(default_factory=list)

    @property
    def corner(self) -> Corner:
        """As `Sheet.corner`."""
        return self.inputs.corner

    def without_doubt(self) -> RecordedSheet:
        """As `Sheet.without_doubt`: what is read is noted like any input."""
        return self

    def read(self, one: Read) -> float:
        """As `Sheet.read`; notes the input, its evidence, or that it is not stated."""
        return self.inputs.number(one)

    def want(self, name: str, place: Place) -> None:
        """As `Sheet.want`."""
        self.inputs.want(name, EvidenceClass.OBSERVATION, place)

    def do(self, formula: AnyFormula, *, of: Dimension | None = None, **arguments: float) -> float:
        """As `Sheet.do`; notes the step."""
        step: Step = formula(**arguments)
        if of is not None:
            step = replace(step, of=of)
        if not math.isnan(step.value):
            self.steps.append(step)
        return step.value

    def positive(self, name: str, value: float) -> float:
        """As `Sheet.positive`."""
        return _positive(self.outside, name, value)


@dataclass(slots=True)
class BareSheet:
    """Keeps nothing but which values were read, and what lay outside its domain.

    `corner` holds the values to take in place of the stated ones, or of none stated.
    """

    corner: Corner
    reads: dict[Place, Read]
    outside: list[str] = field(default_factory=list)

    def without_doubt(self) -> BareSheet:
        """As `Sheet.without_doubt`."""
        return BareSheet(self.corner, {}, self.outside)

    def read(self, one: Read) -> float:
        """As `Sheet.read`."""
        place = one.place
        self.reads[place] = one
        return self.corner.get(place, one.as_stated)

    def want(self, name: str, place: Place) -> None:
        """As `Sheet.want`: what is not there is unknown, and nothing else follows."""

    def do(
        self,
        formula: AnyFormula,
        *,
        of: Dimension | None = None,  # noqa: ARG002 - nothing is printed
        **arguments: float,
    ) -> float:
        """As `Sheet.do`."""
        value: float = formula.__wrapped__(**arguments)
        return value

    def positive(self, name: str, value: float) -> float:
        """As `Sheet.positive`."""
        return _positive(self.outside, name, value)


def _positive(outside: list[str], name: str, value: float) -> float:
    if math.isnan(value) or surely_above(value, limit=0.0):
        return value
    outside.append(name)
    return UNKNOWN
