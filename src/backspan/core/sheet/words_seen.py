"""One word of a suspension line against the list of a rule, or of the trade where none has one."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.findings import DoesNotApply, Finding, Message
from backspan.core.model.rigs import SuspensionPoint
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.subjects import in_force_or_practice
from backspan.core.sheet.words_allowed import judge_words


@dataclass(frozen=True, slots=True)
class Point:
    """A suspension point as findings name it."""

    point: SuspensionPoint
    name: str
    place: Place


def each_point(case: Case, check: str) -> Iterator[Point | DoesNotApply]:
    """Every suspension point, or that there is none."""
    if not case.points:
        yield DoesNotApply(check, case.subject, case.place, Message("na.no-suspension-point"))
    for point in case.points:
        yield Point(point, case.name_of(point), case.place_of(point))


@dataclass(frozen=True, slots=True)
class AskedWord:
    """A question answered with a word: its check, the field, the list of accepted words."""

    check: str
    field: str
    key: str


@dataclass(frozen=True, slots=True)
class WordSeen:
    """A word with what it was read from; None where nobody stated it."""

    check: str
    name: str
    place: Place
    inputs: Inputs
    word: str | None

    def against(self, key: str, message: str, *, refused: bool = False) -> Iterator[Finding]:
        """One finding for each rule set that lists such words, else one by the trade's list."""
        for rule in in_force_or_practice(self.inputs.case, key):
            yield judge_words(
                check=self.check,
                subject=self.name,
                place=self.place,
                message=message,
                words=None if self.word is None else (self.word,),
                rule=rule,
                inputs=self.inputs,
                refused=refused,
            )
