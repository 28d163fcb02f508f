"""Does each hoist lift its share, and stays each line taut, wherever people stand and things lie.

That two hoists lift all of it together says nothing: 1,500 lb on hoists of twice 1,000 lb put
1,085 lb on the one and 415 lb on the other where two people and two windows are near the first.
Without steps of the work all that is intended is taken to stand at one end. Where that is more than
a hoist lifts, somebody says who and what is where, step by step; each step is then judged.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from backspan.core.findings import Decider, DoesNotApply, Finding, Message, Need, Verdict
from backspan.core.model.stages import HungStage
from backspan.core.model.topics import Topic
from backspan.core.quantities import FORCE
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.limits import needed_value
from backspan.core.sheet.placed import PERSON, OnTwo, all_of_it, lifts, on_two, shares, steps_of
from backspan.core.sheet.presence import judge_presence
from backspan.core.sheet.question import Asked, Question
from backspan.core.sheet.sheet import Sheet
from backspan.core.sheet.subjects import in_order
from backspan.core.sheet.witness import where

ID = "hoist-share"
KEY = "load.each-hoist"


def each_hoist(sheet: Sheet, one: Asked[OnTwo]) -> Iterator[Compared]:
    """The share of each hoist against what it is rated for."""
    return shares(sheet, one.subject)


def each_line(sheet: Sheet, one: Asked[OnTwo]) -> Iterator[Compared]:
    """What is taken off each line against what holds it taut."""
    return lifts(sheet, one.subject)


ANYWHERE = Question(ID, "share-anywhere", FORCE, each_hoist, strength=False)
TAUT_ANYWHERE = Question(ID, "taut-anywhere", FORCE, each_line, strength=False)
IN_STEPS = Question(ID, "share-in-step", FORCE, each_hoist, strength=False)
TAUT_IN_STEPS = Question(ID, "taut-in-step", FORCE, each_line, strength=False)


def judge(case: Case) -> Iterator[Answer]:
    """Two findings a stage: the worst of all steps of the work, or of no steps at all."""
    hung = () if case.drop.rig is None else case.drop.rig.stages
    if not hung:
        yield DoesNotApply(ID, case.subject, case.place, Message("na.nothing-of-it"))
    for one in hung:
        name, place = f"{case.subject}/{one.stage}", (*case.place, "rig", "stages", one.stage)
        on = on_two(case, one)
        if on is None:
            yield _not_on_two(case, one, name, place)
        elif one.work is None:
            on = replace(on, steps=(all_of_it(case, one),))
            yield from _anywhere(case, on, name, place)
        else:
            on = replace(on, steps=steps_of(case, one, place))
            rules = tuple(needed_value(case.practice, key) for key in (KEY, PERSON))
            for question in (IN_STEPS, TAUT_IN_STEPS):
                yield question.judge(case, Asked(on, name, place, rules))


def _not_on_two(case: Case, hung: HungStage, name: str, place: Place) -> Finding:
    """With more lines than two any one can go slack: what each hoist carries a person says."""
    words = (("stage", hung.stage), ("points", in_order(hung.from_points)))
    need = Need(Decider.LICENSED_ENGINEER, Message("need.several-points", words))
    return judge_presence(
        Inputs(case),
        check=ID,
        subject=name,
        place=place,
        message=Message("share.not-on-two", words),
        met=True,
        refer=(need,),
    )


def _anywhere(case: Case, on: OnTwo, name: str, place: Place) -> Iterator[Finding]:
    """All of it at one end: enough for a pass; never a fail, since it need not stand there."""
    rule = needed_value(case.practice, KEY)
    for question in (ANYWHERE, TAUT_ANYWHERE):
        found = question.judge(case, Asked(on, name, place, (rule,)))
        if found.verdict is Verdict.FAIL:
            said = (("input", "work"), ("place", where((*place, "work"))))
            need = Need(Decider.COMPETENT_PERSON, Message("need.input", said))
            message = replace(found.message, id=f"{question.says}.unplaced")
            found = replace(found, verdict=Verdict.MISSING, message=message, needs=(need,))
        yield found


CHECK = Check(ID, Topic.PEOPLE, judge)
