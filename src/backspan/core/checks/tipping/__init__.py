"""Does the counterweight hold, and what is left: question.py asks, margins.py searches."""

from backspan.core.checks.tipping.margins import margins, most_that_fit
from backspan.core.checks.tipping.question import ID, QUESTION, Held, asked, judge
from backspan.core.model.topics import Topic
from backspan.core.sheet.check import Check
from backspan.core.sheet.moments import TOPIC

CHECK = Check(ID, Topic.TIPPING, judge, margins=margins)

__all__ = ["CHECK", "QUESTION", "TOPIC", "Held", "asked", "most_that_fit"]
