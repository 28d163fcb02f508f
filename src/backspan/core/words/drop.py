"""The answer of a whole drop in words: never plain `pass` where a person judged part of it."""

from __future__ import annotations

from backspan.core.findings import Review, Verdict
from backspan.core.model.topics import Topic
from backspan.core.words.language import ENGLISH, Language


def counterweight(review: Review) -> Verdict:
    """The answer of the counterweight alone, which is one topic among the drop's."""
    found = [one.verdict for one in review.topics if one.topic is Topic.TIPPING]
    return found[0] if found else Verdict.MISSING


def settled(review: Review) -> frozenset[int]:
    """Places of the findings that nothing here judges and a person took over."""
    return frozenset(
        at
        for one in review.topics
        if one.taken_over is not None
        for at in one.findings
        if review.findings[at].not_judged
    )


def drop_answer(review: Review, *, language: Language = ENGLISH) -> str:
    """The drop's answer in words: what is refused, open or taken over is counted beside it."""
    verdicts = [one.verdict for one in review.topics]
    refused = verdicts.count(Verdict.FAIL)
    left = verdicts.count(Verdict.MISSING) + verdicts.count(Verdict.REFER)
    taken = len([one for one in review.topics if one.taken_over is not None])
    beside = [
        language.topics_counted[kind][count != 1].format(count=count)
        for kind, count in (("refused", refused), ("open", left), ("taken over", taken))
        if count and (kind != "taken over" or review.verdict is Verdict.PASS)
    ]
    return ", ".join([language.word(review.verdict), *beside])
