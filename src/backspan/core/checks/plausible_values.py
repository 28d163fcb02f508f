"""Values that are possible but unlikely: kept, and questioned until a second person has looked."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.findings import Decider, DoesNotApply, Finding, Message, Need
from backspan.core.model.evidence import StatedValue
from backspan.core.model.topics import Topic
from backspan.core.numbers import meets
from backspan.core.quantities import RATIO, Amount, Dimension
from backspan.core.rules.selected import SelectedValue
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.limits import limit_of, needed_value
from backspan.core.sheet.plausible_reads import plausible_reads
from backspan.core.sheet.presence import judge_presence
from backspan.core.sheet.reads import Read
from backspan.core.sheet.witness import where

ID = "plausible-values"


@dataclass(frozen=True, slots=True)
class Questioned:
    """A value outside the band the trade knows, or too far from another value."""

    read: Read
    stated: StatedValue[float] | StatedValue[int]
    rule: SelectedValue
    least: bool


def judge(case: Case) -> Iterator[Answer]:
    """One finding a questioned value; one reason for the drop when nothing is questioned."""
    questioned = list(_questions(case))
    if not questioned:
        yield DoesNotApply(ID, case.subject, case.place, Message("na.nothing-questioned"))
    for one in questioned:
        again = one.stated.checked_by
        if again is not None and one.stated.by not in {None, again}:
            words = (("input", one.read.quantity.name), ("by", again))
            reason = Message("na.looked-again", words)
            yield DoesNotApply(ID, case.subject, one.read.place, reason)
        else:
            yield _finding(case, one)


def _finding(case: Case, one: Questioned) -> Finding:
    inputs = Inputs(case)
    name, place = one.read.quantity.name, one.read.place
    dimension = _dimension(one.read)
    value = Amount(one.stated.value, dimension)
    inputs.fact(name, value, place)
    bound = Amount(limit_of(one.rule, dimension), dimension)
    words = (("input", name), ("value", value), ("bound", bound))
    need = Need(Decider.COMPETENT_PERSON, Message("need.look-again", words))
    return judge_presence(
        inputs,
        check=ID,
        subject=case.subject,
        place=place,
        message=Message("unlikely.small" if one.least else "unlikely.large", words),
        met=True,
        rules=(one.rule,),
        refer=(need,),
        question=f"{name} {where(place)} {one.rule.key}",
    )


def _questions(case: Case) -> Iterator[Questioned]:
    seen: set[Place] = set()
    for read in plausible_reads(case):
        for one in _outside(case, read):
            if read.place not in seen:
                seen.add(read.place)
                yield one


def _outside(case: Case, read: Read) -> Iterator[Questioned]:
    stated, quantity = read.stated, read.quantity
    if stated is None:
        return
    for side, bound in (("least", quantity.least), ("most", quantity.most)):
        if not bound:
            continue
        rule = needed_value(case.practice, f"plausible.{side}-{bound}")
        limit = limit_of(rule, _dimension(read))
        low, high = (limit, stated.value) if side == "least" else (stated.value, limit)
        if not meets(demand=low, capacity=high):
            yield Questioned(read, stated, rule, least=side == "least")


def _dimension(read: Read) -> Dimension:
    return read.quantity.dimension or RATIO


CHECK = Check(ID, Topic.TIPPING, judge)
