"""Reading inputs: corner, evidence, what is not stated; nothing read is left unlisted."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.model.kit import LabTested
from backspan.core.model.rigs import Fastening
from backspan.core.quantities import LENGTH, Amount
from backspan.core.quantities.named import QUANTITIES
from backspan.core.rules.shape import RuleError
from backspan.core.sheet.case import Corner, Place
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.reads import Read
from backspan.core.sheet.witness import EvidenceClass, accepted_evidence, words_of
from tests.unit.core.rigs import PROJECT, case, finding, stated

TAPED = stated("2 ft", LENGTH, tolerance="1/2 in")
PLACE = ("drops", "D", "reach")
COUNTED = StatedValue(10, 1, Evidence.MEASURED)


def reach(value: StatedValue[float] | None = TAPED, place: Place = PLACE) -> Read:
    return Read(QUANTITIES["reach"], value, place)


def pieces(value: StatedValue[int] | None = COUNTED) -> Read:
    return Read(QUANTITIES["pieces"], value, PLACE)


def reader(corner: Corner | None = None) -> Inputs:
    return Inputs(case(), corner or {})


def test_a_measure_is_used_at_the_corner_of_the_case() -> None:
    inputs = reader({PLACE: 0.62})
    assert inputs.number(reach()) == 0.62
    (used,) = inputs.used
    assert used.stated == Amount(TAPED.value, LENGTH)
    assert used.used == Amount(0.62, LENGTH)
    assert used.tolerance == Amount(0.0127, LENGTH)


def test_a_word_of_a_plate_for_which_nobody_answers_is_weak() -> None:
    inputs, hoist = reader(), replace(PROJECT.kit.hoists[0], values_from=None)
    nobody = replace(PROJECT, kit=replace(PROJECT.kit, values_from=None), values_from=None)
    inputs.case = replace(inputs.case, project=nobody)
    assert inputs.plain("tested_by", LabTested.TESTED, hoist, PLACE) == LabTested.TESTED
    (need,) = inputs.weak
    assert need.what.id == "need.evidence"


def test_a_count_is_used_at_the_corner_of_the_case() -> None:
    inputs = reader({PLACE: 9})
    assert inputs.number(pieces()) == 9
    (used,) = inputs.used
    assert (used.stated, used.used, used.tolerance) == (10, 9, 1)


def test_elsewhere_than_at_the_corner_nothing_moves() -> None:
    inputs = reader({("drops", "E", "reach"): 0.62})
    assert inputs.number(reach()) == TAPED.value
    assert inputs.number(pieces()) == 10
    assert [one.used for one in inputs.used] == [one.stated for one in inputs.used]


def test_what_is_not_stated_is_asked_for_once() -> None:
    inputs = reader()
    for _ in range(2):
        assert math.isnan(inputs.number(reach(None)))
        assert math.isnan(inputs.number(pieces(None)))
        assert inputs.word("fastening", None, EvidenceClass.OBSERVATION, PLACE) is None
    asked = [dict(need.what.values)["input"] for need in inputs.not_stated]
    assert asked == ["reach", "pieces", "fastening"]
    assert dict(inputs.not_stated[0].what.values)["place"] == "drops/D/reach"
    assert inputs.used == []


@pytest.mark.parametrize("evidence", [None, *Evidence])
@pytest.mark.parametrize("asks", list(EvidenceClass))
def test_only_accepted_evidence_is_good_enough(
    evidence: Evidence | None, asks: EvidenceClass
) -> None:
    inputs = reader()
    read = Read(
        replace(QUANTITIES["reach"], evidence=str(asks)), stated("2 ft", LENGTH, evidence), PLACE
    )
    inputs.number(read)
    accepted = words_of(accepted_evidence(case(), asks))
    assert accepted
    assert (inputs.weak == []) is (evidence is not None and str(evidence) in accepted)


def test_a_value_read_twice_is_listed_once() -> None:
    inputs = reader()
    for _ in range(2):
        inputs.number(reach(stated("2 ft", LENGTH, Evidence.TOLD)))
    assert len(inputs.used) == len(inputs.weak) == 1


def test_one_name_at_two_places_is_listed_twice() -> None:
    inputs = reader()
    for place in (PLACE, ("drops", "D", "other")):
        inputs.number(reach(stated("2 ft", LENGTH, Evidence.TOLD), place))
    assert len(inputs.used) == len(inputs.weak) == 2


def test_a_word_keeps_who_said_so() -> None:
    inputs = reader()
    held = StatedValue(Fastening.BOLTED, None, Evidence.MEASURED, "MT", "2026-11-24", "log", "PE")
    word = inputs.word("fastening", held, EvidenceClass.OBSERVATION, PLACE)
    (used,) = inputs.used
    assert word == used.stated == used.used == "bolted, tool needed"
    assert (used.by, used.at, used.document, used.checked_by) == ("MT", "2026-11-24", "log", "PE")
    assert used.place == PLACE


def test_the_policies_of_evidence_are_noted() -> None:
    inputs = reader()
    inputs.number(reach())
    assert [policy.key for policy in inputs.policies] == ["evidence.geometry"]


def test_a_value_that_is_no_word_list_is_refused() -> None:
    cap = finding(PROJECT, "stall-cap").rules[0]
    with pytest.raises(RuleError, match=r"hoist\.stall-cap is not a word list"):
        words_of(cap)
