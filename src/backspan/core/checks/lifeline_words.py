"""What was seen of each lifeline in use: its grab, its length, what its rider is tied to.

That both its ends were seen is asked by `lifeline`. A lanyard tied to the stage may do where lines
of their own hold the stage and lock by themselves: a qualified person says so, no word does. What
was taken over before somebody saw that covers it in no case.
"""

from __future__ import annotations

from collections.abc import Iterator

from backspan.core.findings import Decider, DoesNotApply, Finding, Message, Need
from backspan.core.model.topics import Topic
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.lifelines import Life, each_lifeline
from backspan.core.sheet.presence import judge_presence
from backspan.core.sheet.subjects import in_force_or_practice
from backspan.core.sheet.witness import EvidenceClass, words_of
from backspan.core.sheet.words_seen import AskedWord, WordSeen

TIED = "lifeline-tied"
ACCEPTED, BY_A_PERSON = "fall.tied-to", "fall.tied-by-person"


ROWS = (
    AskedWord("lifeline-grab", "grab", "fall.grab"),
    AskedWord("grab-height", "grab_height", "fall.grab-height"),
    AskedWord("lifeline-splices", "splices", "fall.splices"),
    AskedWord("lifeline-swing", "swing", "fall.swing"),
    AskedWord("rider-harness", "harness", "fall.harness"),
)


def _check(row: AskedWord) -> Check:
    def judge(case: Case) -> Iterator[Answer]:
        for one in each_lifeline(case, row.check):
            if isinstance(one, DoesNotApply):
                yield one
                continue
            inputs, word = _word(case, one, row.field)
            seen = WordSeen(row.check, one.name, (*one.place, row.field), inputs, word)
            yield from seen.against(row.key, row.check)

    return Check(row.check, Topic.FALL_ARREST, judge)


def _word(case: Case, one: Life, field: str) -> tuple[Inputs, str | None]:
    inputs, said = Inputs(case), getattr(one.line, field)
    return inputs, inputs.word(field, said, EvidenceClass.OBSERVATION, (*one.place, field))


def judge_tied(case: Case) -> Iterator[Answer]:
    """One finding a lifeline: its rider's lanyard goes to it, or to what never holds a life."""
    for one in each_lifeline(case, TIED):
        yield one if isinstance(one, DoesNotApply) else _tied(case, one)


def _tied(case: Case, one: Life) -> Finding:
    inputs, word = _word(case, one, "tied_to")
    accepted, left = (in_force_or_practice(case, key) for key in (ACCEPTED, BY_A_PERSON))
    rules, refer = accepted, tuple[Need, ...]()
    ending, met = "missing", None if word is None else False
    if word is not None:
        ending = "fail"
        if all(word in words_of(value) for value in accepted):
            ending, met = "pass", True
        elif all(word in words_of(value) for value in left):
            ending, met, rules = "refer", True, left
            need = Message("need.tied-to-stage", (("line", one.name),))
            refer = (Need(Decider.QUALIFIED_PERSON, need),)
    return judge_presence(
        inputs,
        check=TIED,
        subject=one.name,
        place=(*one.place, "tied_to"),
        message=Message(f"{TIED}.{ending}", (("found", word or ""),)),
        met=met,
        rules=rules,
        refer=refer,
        question=TIED,
    )


CHECKS = (*(_check(row) for row in ROWS), Check(TIED, Topic.FALL_ARREST, judge_tied))
