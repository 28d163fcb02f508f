"""Answers kept from one state of a site to the next, so that only what changed is asked anew.

After one statement most of a drop is as it was. What a question comes to hangs on four things, and
its work is given no others: the question, what it is asked of, the rule values it is held against,
and the ground on which evidence is weighed. All four are values that nobody changes, compared as
values; where all are equal to those of before the answer is that of before. Nothing is declared
and nothing tracked: what is not handed to the work cannot have changed it.

Of each question on each subject the last answer is kept and no other, so that a store never grows
beyond one site. Two who ask at once may both work it out, and come to the same.
"""

from __future__ import annotations

import datetime
from collections.abc import Callable, Hashable
from dataclasses import dataclass, field
from typing import Any, TypeVar

from backspan.core.model.people import Person
from backspan.core.model.project import Ages
from backspan.core.quantities import Style
from backspan.core.rules.selected import SelectedRules

T = TypeVar("T")


@dataclass(frozen=True, slots=True)
class Ground:
    """What weighs evidence, whichever question asks: the trade's bands, the day, who may state."""

    practice: SelectedRules
    on: datetime.date
    people: tuple[Person, ...]
    ages: Ages | None
    units: Style
    """The units that people read on this site."""


@dataclass(frozen=True, slots=True)
class Kept:
    """The last answers, each with all that it hangs on."""

    _found: dict[Hashable, tuple[tuple[object, ...], Any]] = field(default_factory=dict)

    def same(self, key: Hashable, of: tuple[object, ...], make: Callable[[], T]) -> T:
        """What `make` gives, or gave the last time under that key, where it hung on the same.

        `make` hangs on `of` alone: values that nobody changes, equal where they mean the same.
        """
        before = self._found.get(key)
        if before is not None and before[0] == of:
            there: T = before[1]
            return there
        found = make()
        self._found[key] = of, found
        return found
