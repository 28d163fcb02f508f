"""Questions heard on the roof, answered from a few values by the same checks that review a rig."""

from backspan.core.ask.choosing import chosen_rule_set, rule_choice, suggested
from backspan.core.ask.shape import Answer, Given, Parameter, QuestionError, Topic
from backspan.core.ask.topics import TOPICS, answer, topic_of
from backspan.core.ask.values import read_values
from backspan.core.ask.wording import CAUTIONS, say_answer, say_label

__all__ = [
    "CAUTIONS",
    "TOPICS",
    "Answer",
    "Given",
    "Parameter",
    "QuestionError",
    "Topic",
    "answer",
    "chosen_rule_set",
    "read_values",
    "rule_choice",
    "say_answer",
    "say_label",
    "suggested",
    "topic_of",
]
