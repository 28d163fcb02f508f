"""A check that compares numbers: asked bare at every corner, recorded at the worst of them.

What is doubtful is the union of what all corners read. The worst corner is a known fail before
what cannot be worked out before a pass, and among equals the one with most demand over capacity;
there the work is done once more, recorded, and every value that any corner read is an input of
the finding: a value of weak evidence that only another corner reads must not be lost.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Generic, TypeVar

from backspan.core.findings import DoesNotApply, Finding, FindingKey, Message
from backspan.core.mechanics.share import utilisation
from backspan.core.numbers import surely_above
from backspan.core.quantities import Amount, Dimension
from backspan.core.rules.selected import SelectedValue
from backspan.core.sheet.case import Case, Corner, Place
from backspan.core.sheet.check import Answer
from backspan.core.sheet.compared import C, Compared, Weighed, weigh
from backspan.core.sheet.corners import corners_of, too_doubtful, values_of, without_idle
from backspan.core.sheet.decide import ENDINGS, decide
from backspan.core.sheet.inputs import Inputs, tolerance_of
from backspan.core.sheet.kept import Ground
from backspan.core.sheet.reads import Read
from backspan.core.sheet.sheet import BareSheet, Parts, RecordedSheet, Sheet

S = TypeVar("S")


@dataclass(frozen=True, slots=True)
class Asked(Generic[S]):
    """One subject a question is asked of, and the rule values it is held against, if any."""

    subject: S
    name: str
    place: Place
    values: tuple[SelectedValue, ...] = ()


@dataclass(frozen=True, slots=True)
class Told:
    """What a check says of an answer beside its numbers."""

    message: Message
    notes: tuple[Message, ...] = ()
    figures: tuple[tuple[str, Amount], ...] = ()


@dataclass(frozen=True, slots=True)
class Judged(Generic[S, C]):
    """An answer at its worst corner, as a check tells it."""

    ground: Ground
    asked: Asked[S]
    weighed: Weighed[C]
    inputs: Inputs
    passed: bool


@dataclass(frozen=True, slots=True)
class Worst(Generic[C]):
    """The worst corner, what was found there and as stated, and all that any corner read."""

    corner: Corner
    found: Weighed[C]
    stated: Weighed[C]
    reads: Mapping[Place, Read]
    parts: Parts

    @property
    def offsets(self) -> dict[Place, tuple[float, float]]:
        """Each value of the corner, and how far it is from the stated one."""
        return {
            place: (value, value - self.reads[place].as_stated)
            for place, value in self.corner.items()
        }


@dataclass(frozen=True, slots=True)
class Question(Generic[S, C]):
    """One comparison a check makes; `says` begins the ids of its sentences.

    `tells` may say more than which of the four answers it is; `also` works out what is printed of
    the branch that governs, and decides nothing.
    """

    check: str
    says: str
    dimension: Dimension
    work: Callable[[Sheet, Asked[S]], Iterable[C]]
    tells: Callable[[Judged[S, C]], Told] | None = None
    also: Callable[[Sheet, C], None] | None = None
    strength: bool = True
    """Whether demand over capacity is a share of strength; else it is never ranked with those."""
    share: bool = True
    """Whether demand over capacity is told at all: what has to be equal is always all of it."""
    apart: tuple[Callable[[Sheet, Asked[S]], Iterable[C]], ...] = ()
    """The branches of `work` one by one, where each reads its own: it is asked at the corners of
    what it reads, and not at those of what only another one reads."""

    def judge(self, case: Case, one: Asked[S]) -> Finding:
        """The finding at the worst corner of what is doubtful; what was kept of it (kept.py)."""
        of = (case.ground, self, one)
        return case.kept.same(self.key_of(one), of, lambda: self._judge(case, one))

    def _judge(self, case: Case, one: Asked[S]) -> Finding:
        worst = self.worst(case, one)
        if worst is None:
            reads: dict[Place, Read] = {}
            self.bare({}, one, reads)
            return too_doubtful(self._recorded(case, {}, one, reads.values()))
        # What governs is written first, and its steps before those of the other branches.
        one = replace(one, values=_governing_first(one.values, worst.found.governing))
        rank = worst.found.rank
        corner = without_idle(
            worst.corner,
            same=lambda other: self.bare(other, one, {}, worst.parts).rank == rank,
        )
        found = self._recorded(case, corner, one, worst.reads.values())
        if worst.stated.met is not worst.found.met:
            found = replace(found, notes=(*found.notes, Message("note.within-tolerance")))
        return found

    def key_of(self, one: Asked[S]) -> FindingKey:
        """The key of the finding that `judge` gives."""
        under = one.values[0] if one.values else None
        rule_set = "" if under is None else f"{under.rule_set}@{under.edition}"
        return FindingKey(self.check, one.name, rule_set, self.says)

    def worst(
        self, case: Case, one: Asked[S], moved: Mapping[Place, float] | None = None
    ) -> Worst[C] | None:
        """The worst corner where the values in `moved` are stated instead; None if too many."""
        moved, parts = moved or {}, _parts_of(case)
        if not self.apart:
            return self._worst(case, one, moved, parts)
        reads: dict[Place, Read] = {}
        stated = self.bare(moved, one, reads, parts)
        each = [replace(self, work=work, apart=()).worst(case, one, moved) for work in self.apart]
        if any(found is None for found in each):
            return None
        # A branch that is not asked of this subject has no corner, and no answer that could count.
        asked = [found for found in each if found and (found.found.branches or found.found.outside)]
        if not asked:
            return Worst(moved, stated, stated, reads, parts)
        worst = min(asked, key=lambda found: found.found.rank)
        for found in asked:
            reads.update(found.reads)
        return Worst(worst.corner, self.bare(worst.corner, one, reads, parts), stated, reads, parts)

    def _worst(
        self, case: Case, one: Asked[S], moved: Mapping[Place, float], parts: Parts
    ) -> Worst[C] | None:
        reads: dict[Place, Read] = {}
        stated = self.bare(moved, one, reads, parts)
        while True:
            known, doubts = len(reads), _doubts(case, reads, moved)
            corners = corners_of(doubts)
            if corners is None:
                return None
            corner, found, rank = moved, stated, stated.rank
            for ends in corners:
                there = {**moved, **ends}
                at = self.bare(there, one, reads, parts)
                if at.rank < rank:
                    corner, found, rank = there, at, at.rank
            if len(reads) == known or len(_doubts(case, reads, moved)) == len(doubts):
                return Worst(corner, found, stated, reads, parts)

    def everywhere(
        self,
        case: Case,
        one: Asked[S],
        moved: Mapping[Place, float],
        accepts: Callable[[Weighed[C]], bool],
    ) -> bool:
        """Whether every corner is accepted where the values in `moved` are stated instead."""
        reads: dict[Place, Read] = {}
        parts = _parts_of(case)
        if not accepts(self.bare(moved, one, reads, parts)):
            return False
        while True:
            known, doubts = len(reads), _doubts(case, reads, moved)
            corners = corners_of(doubts)
            if corners is None:
                return False
            found = (self.bare({**moved, **ends}, one, reads, parts) for ends in corners)
            if not all(accepts(at) for at in found):
                return False
            if len(reads) == known or len(_doubts(case, reads, moved)) == len(doubts):
                return True

    def bare(
        self,
        values: Corner,
        one: Asked[S],
        reads: dict[Place, Read],
        parts: Parts | None = None,
    ) -> Weighed[C]:
        """Numbers alone, with `values` in place of the stated ones; `reads` grows by all read.

        `parts` keeps what is known of one question on one subject from corner to corner.
        """
        sheet = BareSheet(values, reads, parts=Parts() if parts is None else parts)
        branches = tuple(self.work(sheet, one))
        return weigh(branches, sheet.outside)

    def _recorded(
        self, case: Case, corner: Corner, one: Asked[S], reads: Iterable[Read]
    ) -> Finding:
        inputs = Inputs(case, corner)
        sheet = RecordedSheet(inputs)
        branches = tuple(self.work(sheet, one))
        weighed = weigh(branches, sheet.outside)
        governing = weighed.governing
        if governing is not None and self.also is not None:
            self.also(sheet, governing)
        for read in reads:
            sheet.read(read)
        met = weighed.met
        values = _governing_first(one.values, governing)
        verdict, needs = decide(met=met, inputs=inputs, rules=values)
        shown = weighed.shown
        demand = math.nan if shown is None else shown.demand
        capacity = math.nan if shown is None else shown.capacity
        if governing is not None and surely_above(governing.capacity, limit=0.0):
            step = utilisation(demand=governing.demand, capacity=governing.capacity)
            sheet.steps.append(replace(step, of=self.dimension))
        told = self._told(Judged(case.ground, one, weighed, inputs, met is True and not needs))
        return Finding(
            check=self.check,
            subject=one.name,
            place=one.place,
            verdict=verdict,
            message=told.message,
            demand=self._amount(demand),
            capacity=self._amount(capacity),
            utilisation=_share(governing) if self.share else None,
            governing=values[0].key if values and shown is not None else None,
            question=self.says,
            rules=values,
            inputs=tuple(inputs.used),
            steps=tuple(dict.fromkeys(sheet.steps)),
            notes=told.notes,
            needs=needs,
            figures=told.figures,
            strength=self.strength,
        )

    def _told(self, judged: Judged[S, C]) -> Told:
        if judged.weighed.outside:
            return Told(Message(f"outside.{judged.weighed.outside[0]}"))
        if self.tells is not None:
            return self.tells(judged)
        ending, shown = ENDINGS[judged.weighed.met], judged.weighed.shown
        words = () if shown is None else tuple(shown.told())
        return Told(Message(f"{self.says}.{ending}", words))

    def _amount(self, value: float) -> Amount | None:
        return None if math.isnan(value) else Amount(value, self.dimension)


def _share(governing: Compared | None) -> float | None:
    if governing is None or governing.capacity <= 0.0:
        return None
    return governing.ratio


def _governing_first(
    values: Sequence[SelectedValue], governing: Compared | None
) -> tuple[SelectedValue, ...]:
    first = None if governing is None else governing.value
    if first is None:
        return tuple(values)
    return (first, *(value for value in values if value is not first))


def _parts_of(case: Case) -> Parts:
    """Nothing known of a question yet; with what all questions of the case share."""
    return Parts(common=case.once("common-parts", dict))


def _doubts(
    case: Case, reads: Mapping[Place, Read], moved: Mapping[Place, float]
) -> dict[Place, tuple[float, ...]]:
    doubts = {}
    for place, one in reads.items():
        if one.stated is not None:
            tolerance = tolerance_of(case, one)
            if tolerance:
                stated = moved.get(place, one.stated.value)
                doubts[place] = values_of(stated=stated, tolerance=tolerance)
    return doubts


def asked_each(
    question: Question[S, C], case: Case, asked: Iterable[Asked[S] | DoesNotApply]
) -> Iterator[Answer]:
    """The question's finding for each subject, or the reason there is none."""
    for one in asked:
        yield one if isinstance(one, DoesNotApply) else question.judge(case, one)
