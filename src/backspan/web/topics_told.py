"""The findings of a drop's review by the topic they answer."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from backspan.core.findings import WORST_FIRST, Verdict
from backspan.core.review.plain import Data
from backspan.core.review.told import told

#: A finding with the subjects it is told of.
Told = tuple[str, Data]


@dataclass(frozen=True, slots=True)
class TopicTold:
    """A topic with its own answer and the findings that it rests on, worst first."""

    slug: str
    answer: Data
    findings: tuple[Told, ...]

    @property
    def passed(self) -> int:
        """How many of its findings pass."""
        return len(self.findings) - len(not_passed(self.findings))


def slug_of(topic: str) -> str:
    """A topic as addresses and forms name it."""
    return topic.replace(" ", "-")


def findings_told(document: Data) -> list[Told]:
    """The findings of a review, worst first; those that say the same of two subjects are one."""
    return [(subjects, one) for subjects, (one,) in told(document, "findings")]


def not_passed(findings: Iterable[Told]) -> list[Told]:
    """Those of the findings that do not pass."""
    return [one for one in findings if one[1]["verdict"] != Verdict.PASS]


def topics_told(document: Data) -> Iterator[TopicTold]:
    """Every topic of a review, in their order."""
    of = {at: one["topic"] for one in document["topics"] for at in one["findings"]}
    by_topic: dict[str, list[Told]] = {one["topic"]: [] for one in document["topics"]}
    groups = document["told"]["findings"]
    for group, one in zip(groups, findings_told(document), strict=True):
        by_topic[of[group["at"][0]]].append(one)
    for answer in document["topics"]:
        name = answer["topic"]
        yield TopicTold(slug_of(name), answer, tuple(by_topic[name]))


def lines_of_topics(document: Data) -> list[TopicTold]:
    """The topics that have findings, worst first."""
    there = (one for one in topics_told(document) if one.findings)
    return sorted(there, key=lambda one: WORST_FIRST.index(one.answer["verdict"]))
