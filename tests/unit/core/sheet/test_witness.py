"""Who saw a value, when, in which role: what does not count, and what a project may change."""

from __future__ import annotations

import datetime
from dataclasses import replace
from typing import Any

import pytest

from backspan.core.findings import Finding, Verdict
from backspan.core.model.evidence import Evidence
from backspan.core.model.project import Ages, Project
from backspan.core.review.run import case_of
from tests.unit.core.rigs import (
    ARM,
    BEAM,
    BEAM_UNIT,
    LIBRARY,
    PIECE,
    PROJECT,
    STACK,
    check_named,
    finding,
    findings,
    needs,
    put,
)

REACH = (*ARM, "reach")


def on(project: Project, day: str, check: str = "tipping") -> Finding:
    """One check's finding of the left point on another day."""
    case = case_of(project, "D", LIBRARY, on=datetime.date.fromisoformat(day))
    found = [one for one in check_named(check).judge(case) if isinstance(one, Finding)]
    return next(one for one in found if one.subject == "D/L")


@pytest.mark.parametrize("without", ["by", "at"])
@pytest.mark.parametrize("evidence", [Evidence.MEASURED, Evidence.LABEL, Evidence.CERTIFICATE])
def test_what_nobody_saw_on_no_day_counts_as_told(without: str, evidence: Evidence) -> None:
    accepted = put(PROJECT, (*PIECE, "mass", "evidence"), evidence)
    assert finding(accepted, "tipping").verdict is Verdict.PASS
    found = finding(put(accepted, (*PIECE, "mass", without), None), "tipping")
    assert found.verdict is Verdict.MISSING
    assert needs(found) == (("need.witness", "piece_mass"),)


def test_what_was_told_is_named_by_its_evidence_first() -> None:
    told = put(put(PROJECT, (*REACH, "evidence"), Evidence.TOLD), (*REACH, "by"), None)
    assert needs(finding(told, "tipping")) == (("need.evidence", "reach"),)


@pytest.mark.parametrize(
    ("role", "counts"),
    [
        ("competent person", True),
        ("qualified person", True),
        ("licensed engineer", True),
        ("owner's engineer", True),
        ("painter", False),
        ("Competent Person", False),
        ("", False),
    ],
)
def test_a_role_that_may_state_it(role: str, counts: bool) -> None:
    found = finding(put(PROJECT, ("people", "MT", "role"), role), "tipping")
    assert found.verdict is (Verdict.PASS if counts else Verdict.MISSING)
    assert ("need.role", "reach") in needs(found) or counts


def test_somebody_the_project_does_not_name_states_nothing() -> None:
    found = finding(put(PROJECT, (*REACH, "by"), "X"), "tipping")
    assert needs(found) == (("need.role", "reach"),)


@pytest.mark.parametrize(
    ("place", "check", "name", "last"),
    [
        ((*STACK, "groups", 0, "count"), "tipping", "pieces", "2026-11-25"),
        ((*STACK, "fastening"), "counterweight-fastening", "fastening", "2026-11-25"),
        ((*BEAM_UNIT, "label"), "beam-label", "label_state", "2026-11-25"),
        (REACH, "tipping", "reach", "2026-11-19"),
        ((*BEAM, "length"), "beam-length", "beam_length", "2025-11-26"),
    ],
)
def test_what_was_seen_counts_for_so_many_days(
    place: tuple[str | int, ...], check: str, name: str, last: str
) -> None:
    assert findings(put(PROJECT, (*place, "at"), last), check)[0].verdict is Verdict.PASS
    day_before = datetime.date.fromisoformat(last) - datetime.timedelta(days=1)
    found = findings(put(PROJECT, (*place, "at"), f"{day_before} 17:30"), check)[0]
    assert found.verdict is Verdict.MISSING
    assert needs(found) == (("need.age", name),)


def test_a_plate_says_the_same_for_years() -> None:
    assert finding(put(PROJECT, (*PIECE, "mass", "at"), "2019-05-02"), "tipping").verdict is (
        Verdict.PASS
    )


@pytest.mark.parametrize(
    ("ages", "name"),
    [
        ({"count": 2}, "reach"),
        ({"rig_geometry": 10}, "pieces"),
        ({"count": 10, "rig_geometry": 10}, None),
    ],
)
def test_a_project_may_say_how_long(ages: dict[str, Any], name: str | None) -> None:
    found = on(replace(PROJECT, ages=Ages(**ages)), "2026-12-04")
    wanting = {one for _, one in needs(found)}
    assert found.verdict is (Verdict.PASS if name is None else Verdict.MISSING)
    assert name is None or name in wanting


def test_a_fail_stays_a_fail_whoever_saw_it() -> None:
    short = put(put(PROJECT, (*REACH, "value"), 3.0), (*REACH, "by"), None)
    assert finding(short, "tipping").verdict is Verdict.FAIL
