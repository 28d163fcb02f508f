"""Three hundred rigs with a fault planted in each do not pass; sound ones do. Deep: make soak."""

from __future__ import annotations

import random

import pytest

from backspan.core.findings import Verdict
from backspan.core.model.project import Project
from backspan.core.review.run import case_of, review_findings
from tests.planted_faults import FAULTS, coded, sound
from tests.unit.core import rigs

EACH = 12


def verdict_and_why(project: Project) -> tuple[Verdict, list[str]]:
    found = review_findings(case_of(project, "D", rigs.LIBRARY, on=rigs.ON))
    return found.verdict, [
        one.message.id for one in found.findings if one.verdict is not Verdict.PASS
    ]


@pytest.mark.parametrize("name", FAULTS)
def test_a_planted_fault_never_passes_and_is_named(name: str) -> None:
    draw = random.Random(name)  # noqa: S311 - examples, not secrets
    for _ in range(EACH):
        verdict, why = verdict_and_why(coded(FAULTS[name](draw, sound(draw))))
        assert verdict is not Verdict.PASS
        assert why


@pytest.mark.parametrize("number", range(20))
def test_a_sound_rig_is_not_stopped(number: int) -> None:
    draw = random.Random(number)  # noqa: S311 - as above
    assert verdict_and_why(sound(draw)) == (Verdict.PASS, [])


def test_there_are_three_hundred_of_them() -> None:
    assert EACH * len(FAULTS) >= 300
