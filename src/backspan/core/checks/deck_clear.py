"""Does a stage have its strip of the face for itself.

Two decks that share a part of one edge hang one above the other or run into each other: what falls
off the upper one falls on riders whose fall arrest was judged with nothing overhead, and its lines
hang where the other passes. It is asked of the roof as it stands, and of two stages of one rig.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.findings import DoesNotApply, Message
from backspan.core.model.topics import Topic
from backspan.core.numbers import surely_above
from backspan.core.quantities import LENGTH
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.decks import Deck, decks_of, ends_of
from backspan.core.sheet.limits import needed_value
from backspan.core.sheet.question import Asked, Question
from backspan.core.sheet.sheet import Sheet

ID, KEY = "deck-clear", "stage.own-strip"


@dataclass(frozen=True, slots=True)
class Beside:
    """A deck, and all others along its edge."""

    deck: Deck
    others: tuple[Deck, ...]


def work(sheet: Sheet, one: Asked[Beside]) -> Iterator[Compared]:
    """Where the left of two decks ends, against where the right one begins."""
    mine = one.subject.deck
    for other in one.subject.others:
        left_first = surely_above(other.middle, limit=mine.middle)
        left, right = (mine, other) if left_first else (other, mine)
        _, end = ends_of(sheet, left)
        begin, _ = ends_of(sheet, right)
        numbers = (("end", end, LENGTH), ("begin", begin, LENGTH))
        yield Compared(end, begin, words=(("other", other.name),), numbers=numbers)


QUESTION = Question(ID, ID, LENGTH, work, strength=False, share=False)


def judge(case: Case) -> Iterator[Answer]:
    """One finding a stage beside which another hangs from the same edge."""
    rig, none = case.drop.rig, True
    if rig is not None and not case.project.moved_to(case.drop.id):
        mine, theirs = tuple(decks_of(case, rig, case.drop.id)), _others(case)
        rule = needed_value(case.practice, KEY)
        for number, deck in enumerate(mine):
            others = (*mine[:number], *mine[number + 1 :], *theirs)
            if others:
                none = False
                place = (*case.place, "rig", "stages", number)
                yield QUESTION.judge(case, Asked(Beside(deck, others), deck.name, place, (rule,)))
    if none:
        yield DoesNotApply(ID, case.subject, case.place, Message("na.alone-at-edge"))


def _others(case: Case) -> tuple[Deck, ...]:
    """The decks of all other rigs that stand at the same edge."""
    drops = {one.id: one for one in case.project.drops}
    return tuple(
        deck
        for drop, rig in case.project.standing_rigs
        if drop != case.drop.id
        and (drops[drop].roof, drops[drop].edge) == (case.drop.roof, case.drop.edge)
        for deck in decks_of(case, rig, drop)
    )


CHECK = Check(ID, Topic.STAGE, judge)
