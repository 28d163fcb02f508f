"""The register of topics, and the one way in: a topic, its values, an answer."""

from __future__ import annotations

import datetime
from collections.abc import Mapping, Sequence

from backspan.core.model.basis import Confirmation
from backspan.core.quantities import Style
from backspan.core.questions import (
    backspan,
    compare,
    counterweight,
    hoist,
    moment,
    reach,
    shift,
    stack,
    stall,
)
from backspan.core.questions.shape import Answer, Asked, Given, QuestionError, Topic
from backspan.core.questions.suggesting import suggested
from backspan.core.rules.selected import RuleLibrary

#: Every topic, in the order they are listed.
TOPICS: tuple[Topic, ...] = (
    counterweight.TOPIC,
    reach.TOPIC,
    backspan.TOPIC,
    shift.TOPIC,
    hoist.TOPIC,
    stack.TOPIC,
    stall.TOPIC,
    moment.TOPIC,
    compare.TOPIC,
)


def topic_of(name: str) -> Topic:
    """The topic of that name; QuestionError with what was meant."""
    found = next((topic for topic in TOPICS if topic.id == name), None)
    if found is None:
        names = [topic.id for topic in TOPICS]
        raise QuestionError(f"there is no topic {name!r}; {suggested(name, names, what='topics')}")
    return found


def answer(
    topic: Topic,
    values: Mapping[str, Given],
    library: RuleLibrary,
    *,
    style: Style,
    on: datetime.date,
    confirmations: Sequence[Confirmation] = (),
) -> Answer:
    """What a topic answers for values read by `read_values`, told in one style of units.

    Raises QuestionError for values that make no question, such as a fulcrum moved past the line.
    """
    return topic.answer(Asked(values, library, style, on, tuple(confirmations)))
