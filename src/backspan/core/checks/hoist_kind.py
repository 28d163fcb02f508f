"""The hoists of a stage: tested, with a brake for overspeed, alike, and tested as they are wired.

A rope thinner or thicker than a hoist is made for slips in it, or its brake does not grip.
Two hoists of two kinds need not run level, which a qualified person judges. Two on one control
are another arrangement than the one that was tested.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from backspan.core.findings import Decider, DoesNotApply, Message, Need
from backspan.core.model.topics import Topic
from backspan.core.quantities import LENGTH
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.hung import Hung, each_hung
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.limits import needed_value
from backspan.core.sheet.presence import judge_presence
from backspan.core.sheet.question import Asked, Question
from backspan.core.sheet.reads import read_of
from backspan.core.sheet.rope_end import EndOnRope, fits
from backspan.core.sheet.rope_of import diameter_of
from backspan.core.sheet.subjects import in_order
from backspan.core.sheet.witness import EvidenceClass
from backspan.core.sheet.words_seen import WordSeen, each_point

ID = "hoist-kind"
ALIKE, ROPE = "stage.hoists-alike", "stage.hoist-rope"
#: The rope of a point in its hoist.
FITS = Question(ID, "hoist-rope", LENGTH, fits, strength=False, share=False)

#: Of each kind of hoist: the field, the sentence, the list of accepted words.
OF_A_KIND = (
    ("tested_by", "hoist-tested", "stage.hoist-tested"),
    ("secondary_brake", "second-brake", "stage.second-brake"),
)


def judge(case: Case) -> Iterator[Answer]:
    """Of each point what its kind of hoist is; of each stage how its hoists go together."""
    for one in each_point(case, ID):
        if isinstance(one, DoesNotApply):
            yield one
            continue
        hoist = case.hoist(one.point.hoist)
        place: Place = ("kit", "hoists", hoist.id)
        for field, says, key in OF_A_KIND:
            inputs, at = Inputs(case), (*place, field)
            word = inputs.plain(field, getattr(hoist, field), hoist, at)
            yield from WordSeen(ID, one.name, at, inputs, word).against(key, says)
        made_for = read_of("hoist_rope", hoist, place)
        both = EndOnRope(made_for, diameter_of(case, one.point, one.place))
        rule = needed_value(case.practice, ROPE)
        yield FITS.judge(case, Asked(both, one.name, one.place, (rule,)))
    for hung in each_hung(case, ID):
        if isinstance(hung, DoesNotApply):
            yield hung
            continue
        yield _alike(case, hung)
        inputs, at = Inputs(case), (*hung.place, "control")
        word = inputs.word("control", hung.hung.control, EvidenceClass.OBSERVATION, at)
        yield from WordSeen(ID, hung.name, at, inputs, word).against("stage.control", "control")


def _alike(case: Case, hung: Hung) -> Answer:
    inputs, named = Inputs(case), set(hung.hung.from_points)
    points = [one for one in case.points if one.id in named]
    for point in points:
        inputs.fact("hoist", case.hoist(point.hoist).id, (*case.place_of(point), "hoist"))
    if not points:
        # A stage that hangs from nothing is stopped by the check on hanging.
        return DoesNotApply(ID, hung.name, hung.place, Message("na.no-suspension-point"))
    kinds = in_order(case.hoist(point.hoist).id for point in points)
    words = (("hoists", kinds), ("stage", hung.hung.stage))
    alike = len(kinds) == 1
    need = Need(Decider.QUALIFIED_PERSON, Message("need.hoists-alike", words))
    found = judge_presence(
        inputs,
        check=ID,
        subject=hung.name,
        place=hung.place,
        message=Message(f"hoists-alike.{'pass' if alike else 'two'}", words),
        met=True,
        rules=(needed_value(case.practice, ALIKE),),
        refer=() if alike else (need,),
        question="hoists-alike",
    )
    return replace(found, not_judged=not alike)


CHECK = Check(ID, Topic.STAGE, judge)
