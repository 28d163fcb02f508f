"""A check with one comparison: asked bare at every corner, recorded at the worst of them.

What is doubtful is the union of what all corners read. The worst corner is a known fail before
what cannot be worked out before a pass, and among equals the one with most demand over capacity;
there the work is done once more, recorded, and every value that any corner read is an input of
the finding: a value of weak evidence that only another corner reads must not be lost.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass, replace
from typing import Generic, TypeVar

from backspan.core.findings import DoesNotApply, Finding, Message, MessageValue
from backspan.core.judgement.case import Case, Corner, Place
from backspan.core.judgement.check import Answer
from backspan.core.judgement.corners import corners_of, too_doubtful, values_of, without_idle
from backspan.core.judgement.decide import decide
from backspan.core.judgement.inputs import Inputs, tolerance_of
from backspan.core.numbers import meets
from backspan.core.quantities import Amount, Dimension
from backspan.core.rules.selected import SelectedValue
from backspan.core.sheet.reads import Read
from backspan.core.sheet.sheet import BareSheet, RecordedSheet, Sheet

S = TypeVar("S")

_ENDINGS = {True: "pass", False: "fail", None: "missing"}


@dataclass(frozen=True, slots=True)
class Compared:
    """A demand and a capacity in SI, NaN where unknown, and what the sentence says of them."""

    demand: float
    capacity: float
    words: tuple[tuple[str, MessageValue], ...] = ()
    numbers: tuple[tuple[str, float, Dimension], ...] = ()
    """Numbers of the sentence in SI; those that are NaN are not told."""
    counts: tuple[tuple[str, float], ...] = ()
    """Whole numbers of the sentence, likewise."""

    def told(self) -> Iterator[tuple[str, MessageValue]]:
        """What the sentence says: its words, then what is known of its numbers."""
        yield from self.words
        for name, count in self.counts:
            if not math.isnan(count):
                yield name, int(count)
        for name, value, dimension in self.numbers:
            if not math.isnan(value):
                yield name, Amount(value, dimension)

    @property
    def met(self) -> bool | None:
        """Whether the capacity is enough; None where either is unknown."""
        if math.isnan(self.demand) or math.isnan(self.capacity):
            return None
        return meets(demand=self.demand, capacity=self.capacity)

    @property
    def ratio(self) -> float:
        """Demand over capacity; without limit where nothing resists, none where it is unknown."""
        if self.met is None:
            return 0.0
        if self.capacity <= 0.0:
            return math.inf if self.demand > 0.0 else 0.0
        return self.demand / self.capacity


@dataclass(frozen=True, slots=True)
class Asked(Generic[S]):
    """One subject a question is asked of, under the rule value it is held against."""

    subject: S
    name: str
    place: Place
    value: SelectedValue


@dataclass(frozen=True, slots=True)
class Question(Generic[S]):
    """One comparison a check makes; `says` begins the ids of its sentences."""

    check: str
    says: str
    dimension: Dimension
    work: Callable[[Sheet, Asked[S]], Compared]

    def judge(self, case: Case, one: Asked[S]) -> Finding:
        """The finding at the worst corner of what is doubtful."""
        reads: dict[Place, Read] = {}
        corners = self._corners(case, one, reads)
        if corners is None:
            return too_doubtful(self._recorded(case, one, reads.values()))
        worst = min(corners, key=lambda corner: self._rank(corner, one))
        rank = self._rank(worst, one)
        worst = without_idle(worst, same=lambda corner: self._rank(corner, one) == rank)
        found = self._recorded(replace(case, corner=worst), one, reads.values())
        if self._bare({}, one, {}).met is not self._bare(worst, one, {}).met:
            found = replace(found, notes=(*found.notes, Message("note.within-tolerance")))
        return found

    def _corners(
        self, case: Case, one: Asked[S], reads: dict[Place, Read]
    ) -> tuple[Corner, ...] | None:
        """As stated, then every corner; `reads` becomes all that any of them read."""
        self._bare({}, one, reads)
        while True:
            doubts = _doubts(case, reads)
            corners = corners_of(doubts)
            if corners is None:
                return None
            every: tuple[Corner, ...] = ({}, *corners)
            for corner in every:
                self._bare(corner, one, reads)
            if _doubts(case, reads).keys() == doubts.keys():
                return every

    def _bare(self, corner: Corner, one: Asked[S], reads: dict[Place, Read]) -> Compared:
        return self.work(BareSheet(corner, reads), one)

    def _rank(self, corner: Corner, one: Asked[S]) -> tuple[int, float]:
        compared = self._bare(corner, one, {})
        return (False, None, True).index(compared.met), -compared.ratio

    def _recorded(self, case: Case, one: Asked[S], reads: Iterable[Read]) -> Finding:
        inputs = Inputs(case)
        sheet = RecordedSheet(inputs)
        compared = self.work(sheet, one)
        for read in reads:
            sheet.read(read)
        met = compared.met
        verdict, needs = decide(met=met, inputs=inputs, rules=(one.value,))
        used = compared.ratio if met is not None and compared.capacity > 0.0 else None
        return Finding(
            check=self.check,
            subject=one.name,
            place=one.place,
            verdict=verdict,
            message=Message(f"{self.says}.{_ENDINGS[met]}", tuple(compared.told())),
            demand=self._amount(compared.demand),
            capacity=self._amount(compared.capacity),
            utilisation=used,
            governing=one.value.key,
            question=self.says,
            rules=(one.value,),
            inputs=tuple(inputs.used),
            steps=tuple(dict.fromkeys(sheet.steps)),
            needs=needs,
        )

    def _amount(self, value: float) -> Amount | None:
        return None if math.isnan(value) else Amount(value, self.dimension)


def _doubts(case: Case, reads: Mapping[Place, Read]) -> dict[Place, tuple[float, ...]]:
    doubts = {}
    for place, one in reads.items():
        if one.stated is not None:
            tolerance = tolerance_of(case, one.name, one.stated, one.asks, one.dimension)
            if tolerance:
                doubts[place] = values_of(stated=one.stated.value, tolerance=tolerance)
    return doubts


def asked_each(
    question: Question[S], case: Case, asked: Iterable[Asked[S] | DoesNotApply]
) -> Iterator[Answer]:
    """The question's finding for each subject, or the reason there is none."""
    for one in asked:
        yield one if isinstance(one, DoesNotApply) else question.judge(case, one)
