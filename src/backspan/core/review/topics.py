"""The answer of every topic a drop must be judged on, and of the drop that they make together.

A topic that this version does not judge whole is `refer` even where all its findings pass: what was
not looked at never passes. Only such a `refer` can be taken over, by a person whose role may, who
is not of the contractor's people, in writing, until a day, for one configuration. A take-over that
does not hold is told with its reason: silence would read as if it held.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from backspan.core.checks import CHECKS
from backspan.core.findings import WORST_FIRST, Finding, Message, TopicAnswer, Verdict
from backspan.core.model.topics import Topic
from backspan.core.review.take_over import as_told, given_for, why_not
from backspan.core.sheet.beam_section import by_its_section
from backspan.core.sheet.case import Case
from backspan.core.sheet.limits import needed_value
from backspan.core.sheet.subjects import in_force
from backspan.core.sheet.witness import words_of

#: The topics whose every question a check of this version asks.
JUDGED_WHOLE = frozenset(
    (
        *(Topic.TIPPING, Topic.BEAM, Topic.STANDS_ON, Topic.LINE, Topic.TIEBACK),
        *(Topic.ANCHORS, Topic.STAGE, Topic.PEOPLE, Topic.FALL_ARREST, Topic.EDGES),
    )
)
_OF_SUPPORTS = {Topic.STANDS_ON, Topic.BEAM}
#: What a rule set in force has to say for the topic to be judged at all: where all of them are
#: silent on one of these, custom may refuse, and does not pass.
_NEEDS_RULE: Mapping[Topic, tuple[str, ...]] = {
    Topic.LINE: ("line.rated-load",),
    Topic.TIEBACK: ("tieback.strength",),
    Topic.ANCHORS: ("anchor.lifeline-load",),
    Topic.STAGE: ("hoist.stall-cap", "stage.guardrail"),
    Topic.PEOPLE: ("stage.most-load",),
    Topic.FALL_ARREST: ("fall.most-free-fall", "fall.most-force"),
    Topic.EDGES: ("geometry.least-parapet",),
}

_TOPIC_OF = {check.id: check.topic for check in CHECKS}


def worst(verdicts: Sequence[Verdict]) -> Verdict:
    """The worst of several answers; none at all is `missing`."""
    return next((one for one in WORST_FIRST if one in verdicts), Verdict.MISSING)


def topic_answers(
    case: Case, findings: Sequence[Finding], configuration: str
) -> tuple[TopicAnswer, ...]:
    """Every topic's answer from a drop's findings and what is taken over of it."""
    of: dict[Topic, list[int]] = {topic: [] for topic in Topic}
    for at, one in enumerate(findings):
        of[_TOPIC_OF[one.check]].append(at)
    return tuple(_answer(case, topic, findings, tuple(of[topic]), configuration) for topic in Topic)


def who_may(case: Case, topic: Topic) -> tuple[str, ...]:
    """The roles that may judge a topic instead of the program. RuleError where no data says so."""
    key = f"take-over.{str(topic).replace(' ', '-')}"
    return words_of(needed_value(case.practice, key))


def _judged_whole(case: Case, topic: Topic) -> bool:
    """Not a support of another kind, a beam that no label rates, nor what every text leaves out.

    Of a beam that is reckoned by its section nobody asks the web where its line hangs.
    """
    other = topic in _OF_SUPPORTS and any(one.other_support for one in case.points)
    plain = topic is Topic.BEAM and any(
        by_its_section(case.beam(one.counterweighted_beam.beam))
        for one in case.points
        if one.counterweighted_beam is not None
    )
    silent = any(not in_force(case, key) for key in _NEEDS_RULE.get(topic, ()))
    return topic in JUDGED_WHOLE and not other and not plain and not silent


def _answer(
    case: Case,
    topic: Topic,
    findings: Sequence[Finding],
    own: tuple[int, ...],
    configuration: str,
) -> TopicAnswer:
    found = [findings[at] for at in own]
    verdict = worst([one.verdict for one in found]) if found else Verdict.REFER
    whole = _judged_whole(case, topic) and found and not any(one.not_judged for one in found)
    open_to_all = all(one.not_judged for one in found if one.verdict is Verdict.REFER)
    stays = verdict in {Verdict.FAIL, Verdict.MISSING} or not open_to_all
    if verdict is Verdict.PASS and not whole:
        verdict = Verdict.REFER
    given, who = given_for(case, topic), who_may(case, topic)
    if stays or verdict is Verdict.PASS:
        words = (("verdict", str(verdict)),)
        notes = tuple(
            Message("take-over.answered", (("document", one.document), *words)) for one in given
        )
        return TopicAnswer(topic, verdict, who, own, notes=notes if stays else ())
    reasons: list[Message] = []
    for one in given:
        why = why_not(case, one, who=who, configuration=configuration)
        if why is None:
            return TopicAnswer(topic, Verdict.PASS, who, own, taken_over=as_told(case, one, topic))
        reasons.append(why)
    open_here = all(one.verdict is Verdict.PASS or one.not_judged for one in found)
    return TopicAnswer(topic, verdict, who, own, not_judged=open_here, notes=tuple(reasons))
