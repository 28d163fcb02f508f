"""A question is one comparison: unknown flows through it, doubt is asked at every corner."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace

import pytest

from backspan.core.checks import stall_cap
from backspan.core.findings import Finding, Verdict
from backspan.core.mechanics.loads import stall_cap as cap_formula
from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.quantities import FORCE, LENGTH
from backspan.core.quantities.named import QUANTITIES
from backspan.core.rules.selected import SelectedValue
from backspan.core.sheet.case import Place
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.question import Asked, Question
from backspan.core.sheet.reads import Read, hoist_reads
from backspan.core.sheet.sheet import BareSheet, RecordedSheet, Sheet
from tests.unit.core.rigs import PROJECT, case, count, finding, length, needs, notes

PLACE: Place = ("kit", "beams", "B")


def value() -> SelectedValue:
    (rules,) = case().rules
    found = rules.find(stall_cap.KEY)
    assert found is not None
    return found


def read(name: str, number: float | None, tolerance: float = 0.0) -> Read:
    stated = None if number is None else replace(length("1 m"), value=number, tolerance=tolerance)
    return Read(QUANTITIES[name], stated, (*PLACE, name))


def counted(name: str, number: int, tolerance: int) -> Read:
    stated = count(number, tolerance=tolerance)
    return Read(QUANTITIES[name], stated, (*PLACE, name))


def asked(*reads: Read) -> Asked[tuple[Read, ...]]:
    return Asked(reads, "D/L", PLACE, (value(),))


def difference(sheet: Sheet, one: Asked[tuple[Read, ...]]) -> Iterator[Compared]:
    """A sum that is larger the more the first and the less the second."""
    first, second = (sheet.read(each) for each in one.subject)
    yield Compared(first, second, numbers=(("stall", first, LENGTH), ("cap", second, LENGTH)))


QUESTION = Question("stall-cap", "stall-cap", LENGTH, difference)


def judged(*reads: Read) -> Finding:
    return QUESTION.judge(case(), asked(*reads))


@pytest.mark.parametrize(
    ("first", "second", "verdict"),
    [
        (1.0, 2.0, Verdict.PASS),
        (2.0, 2.0, Verdict.PASS),
        (2.001, 2.0, Verdict.FAIL),
        (None, 2.0, Verdict.MISSING),
        (1.0, None, Verdict.MISSING),
        (1.0, 0.0, Verdict.FAIL),
    ],
)
def test_a_comparison(first: float | None, second: float | None, verdict: Verdict) -> None:
    found = judged(read("reach", first), read("backspan", second))
    assert found.verdict is verdict
    assert (found.demand is None) is (first is None)
    assert (found.capacity is None) is (second is None)


def test_everything_that_is_unknown_is_named_and_not_told() -> None:
    found = judged(read("reach", None), read("backspan", None))
    assert needs(found) == (("need.input", "reach"), ("need.input", "backspan"))
    assert found.message.values == ()
    assert found.utilisation is None


def test_the_worst_corner_is_found_whichever_way_an_input_does_harm() -> None:
    found = judged(read("reach", 1.0, 0.3), read("backspan", 1.5, 0.3))
    assert found.demand is not None
    assert found.capacity is not None
    assert (found.demand.value, found.capacity.value) == pytest.approx((1.3, 1.2))
    assert found.verdict is Verdict.FAIL
    assert "note.within-tolerance" in notes(found)


def test_a_count_is_asked_between_its_ends_too() -> None:
    """Worst in the middle, where neither end is."""

    def hump(sheet: Sheet, one: Asked[tuple[Read, ...]]) -> Iterator[Compared]:
        number = sheet.read(one.subject[0])
        yield Compared(number * (10 - number), 24.5)

    found = Question("stall-cap", "stall-cap", LENGTH, hump).judge(
        case(), asked(counted("pieces", 5, 3))
    )
    assert found.demand is not None
    assert found.demand.value == 25


def test_what_only_one_corner_reads_is_an_input_with_its_evidence() -> None:
    """The second value is read beyond a metre only; nobody vouches for it, so it is open."""

    def sometimes(sheet: Sheet, one: Asked[tuple[Read, ...]]) -> Iterator[Compared]:
        first, second = one.subject
        reached = sheet.read(first)
        yield Compared(0.1 * sheet.read(second) if reached > 1.0 else reached, 2.0)

    told = replace(read("backspan", 0.5), stated=StatedValue(0.5, None, Evidence.TOLD))
    found = Question("stall-cap", "stall-cap", LENGTH, sometimes).judge(
        case(), asked(read("reach", 1.0, 0.1), told)
    )
    assert found.verdict is Verdict.MISSING
    assert needs(found) == (("need.evidence", "backspan"),)
    assert {one.name for one in found.inputs} == {"reach", "backspan"}


def test_more_doubt_than_can_be_tried_is_for_a_person() -> None:
    found = judged(counted("pieces", 5000, 4000), read("backspan", 9999.0))
    assert found.verdict is Verdict.REFER
    assert [one for one, _ in needs(found)] == ["need.too-much-doubt"]


def test_bare_and_recorded_give_the_same_numbers() -> None:
    one = finding(PROJECT, "stall-cap")
    (asking,) = (
        each for each in stall_cap.asked(case()) if isinstance(each, Asked) and each.name == "D/L"
    )
    (bare,) = stall_cap.work(BareSheet({}, {}), asking)
    (recorded,) = stall_cap.work(RecordedSheet(Inputs(case())), asking)
    assert bare == recorded
    assert one.demand is not None
    assert one.capacity is not None
    assert (bare.demand, bare.capacity) == (one.demand.value, one.capacity.value)


def test_unknown_goes_through_a_formula_and_leaves_no_step() -> None:
    sheet = RecordedSheet(Inputs(case()))
    assert math.isnan(sheet.do(cap_formula, cap_factor=3.0, rated_load=math.nan))
    assert sheet.steps == []
    assert sheet.do(cap_formula, cap_factor=3.0, rated_load=2.0) == 6.0
    assert [step.formula for step in sheet.steps] == ["stall_cap"]


def test_a_read_says_its_dimension() -> None:
    rated = hoist_reads(case(), case().points[0])[0]
    assert rated.quantity.dimension is FORCE
