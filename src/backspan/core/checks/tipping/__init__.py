"""Does the counterweight hold, and what is left: question.py asks, margins.py searches."""

from backspan.core.checks.tipping.margins import fewest_pieces, margins, most_that_fit
from backspan.core.checks.tipping.question import ID, QUESTION, Held, asked, judge
from backspan.core.sheet.check import Check

CHECK = Check(ID, judge, margins=margins)

__all__ = ["CHECK", "QUESTION", "Held", "asked", "fewest_pieces", "most_that_fit"]
