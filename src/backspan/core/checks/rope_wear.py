"""What was counted and seen along a wire rope, against what has it taken out of use.

A rope of which only the type is named was looked at by nobody. A worn wire is refused at the limit
itself: the clause says more than a third, two reprints of it a third, and the smaller is taken.
"""

from __future__ import annotations

import math
from collections.abc import Iterator

from backspan.core.findings import DoesNotApply, Message
from backspan.core.model.kit import RopeKind
from backspan.core.model.topics import Topic
from backspan.core.numbers import meets
from backspan.core.quantities import RATIO
from backspan.core.rules.selected import SelectedValue
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.limits import limit_of
from backspan.core.sheet.question import Asked, Question
from backspan.core.sheet.reads import Read, read_of
from backspan.core.sheet.rope_of import rope_of, rope_unit
from backspan.core.sheet.sheet import Sheet
from backspan.core.sheet.subjects import in_force_or_practice
from backspan.core.sheet.witness import EvidenceClass
from backspan.core.sheet.words_seen import Point, WordSeen, each_point

ID = "rope-wear"


class Below(Compared):
    """A number that has to stay below its limit: at the limit it is refused."""

    @property
    def met(self) -> bool | None:
        """Whether it is surely below; None where either is unknown."""
        if math.isnan(self.demand) or math.isnan(self.capacity):
            return None
        return not meets(demand=self.capacity, capacity=self.demand)


def work(sheet: Sheet, one: Asked[Read]) -> Iterator[Compared]:
    """What was found against the number at which the rope is refused."""
    found, limit = sheet.read(one.subject), limit_of(one.values[0], RATIO)
    if one.subject.quantity.dimension is None:
        # Whole wires: the most that may be broken is one less than what has the rope replaced.
        yield Compared(found, limit - 1, counts=(("count", found), ("limit", limit)))
    else:
        yield Below(found, limit, numbers=(("share", found, RATIO), ("limit", limit, RATIO)))


#: Each number: its quantity, its question, the rule value at which the rope is refused.
MEASURES = tuple(
    (name, Question(ID, says, RATIO, work, strength=False), key)
    for name, says, key in (
        ("broken_in_lay", "broken-in-lay", "line.broken-in-lay"),
        ("broken_in_strand", "broken-in-strand", "line.broken-in-strand"),
        ("wire_worn", "wire-worn", "line.wire-worn"),
    )
)


def judge(case: Case) -> Iterator[Answer]:
    """Each wire rope by its tag: broken and worn wires, and any other damage."""
    for one in each_point(case, ID):
        if isinstance(one, DoesNotApply):
            yield one
            continue
        rope = rope_of(case, one.point)
        if rope is not None and rope.kind is not RopeKind.WIRE:
            yield DoesNotApply(ID, one.name, one.place, Message("na.no-wire-rope"))
            continue
        yield from _wear(case, one)


def _wear(case: Case, one: Point) -> Iterator[Answer]:
    unit = rope_unit(case, one.point)
    wear = None if unit is None else unit.wear
    place = (*one.place, "rope") if unit is None else ("kit", "units", unit.id)
    at = (*place, "wear")
    for name, question, key in MEASURES:
        values: tuple[SelectedValue, ...] = in_force_or_practice(case, key)
        for value in values:
            asked = Asked(read_of(name, wear, at), one.name, one.place, (value,))
            yield question.judge(case, asked)
    inputs = Inputs(case)
    stated = None if wear is None else wear.damage
    word = inputs.word("damage", stated, EvidenceClass.OBSERVATION, (*at, "damage"))
    yield from WordSeen(ID, one.name, one.place, inputs, word).against("line.damage", "rope-damage")


CHECK = Check(ID, Topic.LINE, judge)
