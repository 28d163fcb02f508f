"""How a tieback is made fast, runs, and what it ends on: words against lists.

What no tieback may end on is refused by name whatever its strength. A structural member is no
anchor with papers: a qualified person says what it carries.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from backspan.core.findings import Decider, DoesNotApply, Finding, Message, Need
from backspan.core.model.rigs import Tieback, TiebackEnd
from backspan.core.model.topics import Topic
from backspan.core.rules.selected import SelectedValue
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.limits import needed_value
from backspan.core.sheet.presence import judge_presence
from backspan.core.sheet.subjects import in_force
from backspan.core.sheet.witness import EvidenceClass, words_of
from backspan.core.sheet.words_allowed import judge_words
from backspan.core.sheet.words_seen import AskedWord

END = "tieback-end"
REFUSED, REFUSED_BY_TRADE = "tieback.refused-ends", "tieback.refused-by-trade"


ROWS = (
    AskedWord("tieback-start", "attached", "tieback.accepted-starts"),
    AskedWord("tieback-taut", "taut", "tieback.accepted-tautness"),
    AskedWord("tieback-route", "route", "tieback.accepted-routes"),
)


def ties(case: Case, check: str) -> Iterator[tuple[str, Place, Tieback] | DoesNotApply]:
    """Each tieback of the drop with its name and place; or that no point names any."""
    for point in case.points:
        name, place = case.name_of(point), (*case.place_of(point), "tiebacks")
        if not point.tied:
            yield DoesNotApply(check, name, place, Message("na.no-tieback"))
        for tie in point.tied:
            yield f"{name}/{tie.id}", (*place, tie.id), tie
    if not case.points:
        yield DoesNotApply(check, case.subject, case.place, Message("na.no-suspension-point"))


def _check(row: AskedWord) -> Check:
    def judge(case: Case) -> Iterator[Answer]:
        accepted = needed_value(case.practice, row.key)
        for one in ties(case, row.check):
            if isinstance(one, DoesNotApply):
                yield one
                continue
            name, at, tie = one
            inputs, place = Inputs(case), (*at, row.field)
            said = getattr(tie, row.field)
            word = inputs.word(row.field, said, EvidenceClass.OBSERVATION, place)
            yield judge_words(
                check=row.check,
                subject=name,
                place=place,
                message="seen",
                words=None if word is None else (word,),
                rule=accepted,
                inputs=inputs,
            )

    return Check(row.check, Topic.TIEBACK, judge)


def judge_end(case: Case) -> Iterator[Answer]:
    """One finding a tieback: an anchor, what no tieback may end on, or what a person judges."""
    by_trade = needed_value(case.practice, REFUSED_BY_TRADE)
    rules = (*(value for _, value in in_force(case, REFUSED)), by_trade)
    for one in ties(case, END):
        yield one if isinstance(one, DoesNotApply) else _end(Inputs(case), rules, *one)


def _end(
    inputs: Inputs, rules: tuple[SelectedValue, ...], name: str, place: Place, tie: Tieback
) -> Finding:
    end, at = tie.ends_on, (*place, "ends_on")
    word: str | None = None
    if end is None and tie.anchor is not None:
        inputs.fact("anchor", tie.anchor, (*place, "anchor"))
    else:
        word = inputs.word("ends_on", end, EvidenceClass.OBSERVATION, at)
    refusing = tuple(value for value in rules if word is not None and word in words_of(value))
    ending, met, refer = "pass", True if word or tie.anchor else None, tuple[Need, ...]()
    if refusing:
        ending, met = "fail", False
    elif met is None:
        ending = "missing"
    elif word == TiebackEnd.STRUCTURE:
        ending = "refer"
        refer = (Need(Decider.QUALIFIED_PERSON, Message("need.tieback-end", (("tieback", name),))),)
    found = judge_presence(
        inputs,
        check=END,
        subject=name,
        place=at,
        message=Message(
            f"tieback-end.{ending}", (("found", word or ""), ("anchor", tie.anchor or ""))
        ),
        met=met,
        rules=(*refusing, *(one for one in rules if one not in refusing)),
        refer=refer,
    )
    return replace(found, not_judged=bool(refer))


CHECKS = (*(_check(row) for row in ROWS), Check(END, Topic.TIEBACK, judge_end))
