"""What was tried or taped before the rig stood as it does says nothing of it."""

from __future__ import annotations

from dataclasses import replace

import pytest

from backspan.core.findings import Verdict
from backspan.core.model.evidence import is_earlier
from backspan.core.model.project import Project
from tests.unit.core.rigs import ARM, PROJECT, RIG, STACK, findings, put

FOUND = (*RIG, "stages", 0, "found")


def asked(project: Project, check: str, question: str) -> Verdict:
    (one,) = (one for one in findings(project, check, "D/ST-1") if one.question == question)
    return one.verdict


@pytest.mark.parametrize(
    ("at", "other", "earlier"),
    [
        ("2026-11-24", "2026-11-25", True),
        ("2026-11-24 23:00", "2026-11-25", True),
        ("2026-11-25", "2026-11-25 15:00", False),
        ("2026-11-25 06:00", "2026-11-25", False),
        ("2026-11-25 06:00", "2026-11-25T15:00", True),
        ("2026-11-25T15:00", "2026-11-25 06:00", False),
        ("2026-11-25T06:00+01:00", "2026-11-25T06:00", False),
        ("2026-11-25T06:00+01:00", "2026-11-25T05:30+00:00", True),
    ],
)
def test_a_time_is_earlier_where_both_say_one(at: str, other: str, earlier: bool) -> None:
    assert is_earlier(at, other) is earlier


@pytest.mark.parametrize(
    "place",
    [
        (*ARM, "reach"),
        (*ARM, "backspan"),
        (*STACK, "groups", 0, "count"),
        (*FOUND, "joints"),
    ],
)
def test_a_first_lift_before_the_set_up_is_of_another(place: tuple[str | int, ...]) -> None:
    early = put(PROJECT, (*FOUND, "first_lift", "at"), "2026-11-25 06:00")
    assert asked(early, "stage-seen", "first-lift") is Verdict.PASS
    later = put(early, (*place, "at"), "2026-11-25 15:00")
    assert asked(later, "stage-seen", "first-lift") is Verdict.MISSING


@pytest.mark.parametrize(
    ("field", "says"), [("to_face", "to-face"), ("rail_height", "rail-height")]
)
def test_of_a_rig_that_was_moved_what_was_taped_before_says_nothing(field: str, says: str) -> None:
    before = put(PROJECT, (*FOUND, field, "at"), "2026-11-24")
    assert asked(before, "stage-measures", says) is Verdict.PASS
    other = replace(PROJECT.drops[0], id="E", rig=None)
    moved = put(replace(before, drops=(*before.drops, other)), (*RIG, "moved_from"), "E")
    assert asked(moved, "stage-measures", says) is Verdict.MISSING
