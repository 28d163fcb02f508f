"""Questions heard on the roof, answered from a few values by the same checks that review a rig."""

from backspan.core.ask.shape import Answer, Given, Parameter, QuestionError, Topic
from backspan.core.ask.topics import TOPICS, answer, topic_of
from backspan.core.ask.values import read_values

__all__ = [
    "TOPICS",
    "Answer",
    "Given",
    "Parameter",
    "QuestionError",
    "Topic",
    "answer",
    "read_values",
    "topic_of",
]
