"""The sheet a check is worked on, in two modes of the same work.

*Recorded*: every read is an input of the finding and every formula a step of it; what is printed.
*Bare*: numbers only, at one corner of what is doubtful; what searches ask thousands of times.

Unknown flows: a value that is not stated is NaN and goes through every formula, so that a check is
written once, for the case in which all is known. A step that came out NaN is not recorded.

A check asked at every corner works the same parts out again and again: what a plate presses does
not hang on where the plate stands. A part of a work may say so (`part`). It is then known again by
the values that it read: work that reads the same values goes the same way and comes to the same.
What several questions ask of one thing - what a beam presses on its two stands - is known to all.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Hashable
from dataclasses import dataclass, field, replace
from typing import Any, Protocol, TypeVar

from backspan.core.numbers import surely_above
from backspan.core.quantities import Dimension
from backspan.core.sheet.case import Corner, Place
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.reads import UNKNOWN, Read
from backspan.core.sheet.witness import EvidenceClass
from backspan.core.worked.formula import AnyFormula, Step

T = TypeVar("T")
_Values = tuple[float, ...]


@dataclass(slots=True)
class KnownPart:
    """What a part of a work came to, by the values of all that it read there."""

    reads: dict[Place, Read]
    beside: dict[Place, Read]
    found: dict[_Values, tuple[Any, list[str]]] = field(default_factory=dict)
    stated: list[float] = field(init=False)
    """What is stated at each place that it reads."""
    at: dict[Place, list[int]] = field(init=False)
    """Which of them stand at a place."""
    told_to: dict[Place, Read] | None = None
    """The reads of a sheet that have all of `reads` already, and lose none."""

    def __post_init__(self) -> None:
        every = [*self.reads.items(), *self.beside.items()]
        self.stated = [one.as_stated for _, one in every]
        self.at = {}
        for index, (place, _) in enumerate(every):
            self.at.setdefault(place, []).append(index)

    def values(self, corner: Corner) -> _Values:
        """What it would read at a corner, which differs from what is stated at few places."""
        values, at = self.stated.copy(), self.at
        for place, value in corner.items():
            for index in at.get(place, ()):
                values[index] = value
        return tuple(values)


#: Parts that hang on nothing but the things they are of, with those: they keep their identity.
CommonParts = dict[tuple[Hashable, ...], tuple[tuple[object, ...], list[KnownPart]]]


@dataclass(frozen=True, slots=True)
class Parts:
    """What is known of one question on one subject, by name; and what all questions share."""

    own: dict[Hashable, list[KnownPart]] = field(default_factory=dict)
    common: CommonParts = field(default_factory=dict)

    def known(self, name: Hashable, of: tuple[object, ...]) -> list[KnownPart]:
        """What is known under a name: of the very things in `of`, or of the question itself."""
        if not of:
            return self.own.setdefault(name, [])
        return self.common.setdefault((name, *map(id, of)), (of, []))[1]


class Sheet(Protocol):
    """What a check's work may do."""

    @property
    def corner(self) -> Corner:
        """The values taken in place of the stated ones."""

    def without_doubt(self) -> Sheet:
        """The sheet for what is read at the corner looked at, and adds no corner of its own."""

    def aside(self) -> Sheet:
        """A sheet at the corner looked at of which nothing is noted: for what only chooses."""

    def part(self, name: Hashable, work: Callable[[Sheet], T], *, of: tuple[object, ...] = ()) -> T:
        """What a part of the work comes to; nobody may change what it gives.

        It hangs on nothing but what it reads of the sheet, and on `name` within one question on
        one subject. With `of` it hangs on the name and those very things alone, whoever asks.
        """

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

    def aside(self) -> BareSheet:
        """As `Sheet.aside`."""
        return BareSheet(self.corner, {})

    def part(
        self,
        name: Hashable,  # noqa: ARG002 - all is noted
        work: Callable[[Sheet], T],
        *,
        of: tuple[object, ...] = (),  # noqa: ARG002 - likewise
    ) -> T:
        """As `Sheet.part`, worked out and noted each time."""
        return work(self)

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
    parts: Parts = field(default_factory=Parts)
    beside: dict[Place, Read] = field(default_factory=dict)
    """What was read without doubt of its own: it decides too, and brings no corner."""

    def without_doubt(self) -> BareSheet:
        """As `Sheet.without_doubt`."""
        return BareSheet(self.corner, self.beside, self.outside, self.parts, self.beside)

    def aside(self) -> BareSheet:
        """As `Sheet.aside`."""
        return BareSheet(self.corner, self.beside, [], self.parts, self.beside)

    def part(self, name: Hashable, work: Callable[[Sheet], T], *, of: tuple[object, ...] = ()) -> T:
        """As `Sheet.part`; what was read there before is not worked out again."""
        known = self.parts.known(name, of)
        for one in known:
            there = one.found.get(one.values(self.corner))
            if there is not None:
                before: tuple[T, list[str]] = there
                return self._taken(one, *before)
        sheet = BareSheet(self.corner, {}, [], self.parts)
        found = work(sheet)
        same = (
            one
            for one in known
            if one.reads.keys() == sheet.reads.keys() and one.beside.keys() == sheet.beside.keys()
        )
        new = next(same, None)
        if new is None:
            known.append(new := KnownPart(sheet.reads, sheet.beside))
        new.found[new.values(self.corner)] = found, sheet.outside
        return self._taken(new, found, sheet.outside)

    def _taken(self, part: KnownPart, found: T, outside: list[str]) -> T:
        if part.told_to is not self.reads:
            self.reads.update(part.reads)
            part.told_to = self.reads
        if part.beside:
            self.beside.update(part.beside)
        if outside:
            self.outside.extend(outside)
        return found

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
