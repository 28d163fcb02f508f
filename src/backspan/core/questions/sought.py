"""A beam of which one number is sought, and the sums at each trial of it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from backspan.core.questions.choosing import rule_choice
from backspan.core.questions.imagined import Rigged, case_for, with_rig
from backspan.core.questions.judging import Worked, worked_of
from backspan.core.questions.parameters import DEFAULT_RULES
from backspan.core.questions.shape import Asked
from backspan.core.sheet.case import Case
from backspan.core.sheet.moments import Branch


@dataclass(frozen=True, slots=True)
class Trial:
    """A beam of which one number is sought: `rig` makes it for a trial of that number."""

    asked: Asked
    case: Case
    rig: Callable[[float], Rigged]

    def at(self, number: float) -> Worked:
        """The sums with that number."""
        return worked_of(with_rig(self.case, self.asked, self.rig(number)))

    def holds(self, number: float) -> bool:
        """Whether every branch that is known is held with that number."""
        return self.at(number).held


def trial_of(asked: Asked, rig: Callable[[float], Rigged], *, first: float) -> Trial:
    """The trial of a question under its rule set, begun with a first number."""
    choice = rule_choice(asked.word("rules") or DEFAULT_RULES, asked.library)
    return Trial(asked, case_for(asked, rig(first), (choice,)), rig)


def plain(branch: Branch) -> bool:
    """Whether the beam's own weight plays no part, so that one line of statics gives the number."""
    return branch.own_moment == 0.0
