"""Is there a plan of the rig: whose, by whom, on which drawing, for days that are not over."""

from __future__ import annotations

from collections.abc import Iterator

from backspan.core.findings import Decider, Finding, Message
from backspan.core.model.evidence import is_before
from backspan.core.model.topics import Topic
from backspan.core.rules.selected import SelectedValue
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.presence import judge_presence
from backspan.core.sheet.subjects import in_force_or_practice
from backspan.core.sheet.witness import EvidenceClass
from backspan.core.sheet.words_allowed import judge_words

ID = "design"
KEY = "design.designer"
#: What a plan states, with the names of these inputs.
_STATED = {
    "contractor": "plan_contractor",
    "drawing": "plan_drawing",
    "revision": "plan_revision",
    "begins": "plan_begins",
    "ends": "plan_ends",
}
_WHO = Decider.CONTRACTOR


def judge(case: Case) -> Iterator[Answer]:
    """What the plan states, whether its days are over, and who designed it under each rule set."""
    place = (*case.place, "plan") if case.drop.plan is not None else ("plan",)
    yield _plan(case, place)
    for value in in_force_or_practice(case, KEY):
        yield _designer(case, place, value)


def _plan(case: Case, place: Place) -> Finding:
    inputs, plan = Inputs(case), case.plan
    for name, told in _STATED.items():
        stated = None if plan is None else getattr(plan, name)
        if stated:
            inputs.fact(told, stated, (*place, name))
        else:
            inputs.want(told, EvidenceClass.OBSERVATION, (*place, name), _WHO)
    today = case.on.isoformat()
    ending, words = "missing", (("day", today),)
    if plan is not None and plan.ends and is_before(plan.ends, _latest(today, plan.begins)):
        ending = "over"
    elif not inputs.not_stated:
        ending = "pass"
    return judge_presence(
        inputs,
        check=ID,
        subject=case.subject,
        place=place,
        message=Message(f"plan.{ending}", words if ending == "over" else ()),
        met={"over": False, "pass": True}.get(ending),
        question="plan",
    )


def _latest(day: str, begins: str | None) -> str:
    return begins if begins and is_before(day, begins) else day


def _designer(case: Case, place: Place, rule: SelectedValue) -> Finding:
    inputs, named = Inputs(case), None if case.plan is None else case.plan.designer
    person = None if named is None else case.person(named)
    if person is None:
        inputs.want("plan_designer", EvidenceClass.OBSERVATION, (*place, "designer"), _WHO)
    else:
        inputs.fact("plan_designer", f"{person.name}, {person.role}", (*place, "designer"))
    return judge_words(
        check=ID,
        subject=case.subject,
        place=place,
        message="designer",
        words=None if person is None else (person.role,),
        rule=rule,
        inputs=inputs,
    )


CHECK = Check(ID, Topic.DESIGN, judge)
