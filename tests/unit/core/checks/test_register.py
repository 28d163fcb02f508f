"""What holds of every registered check."""

from __future__ import annotations

from dataclasses import replace

import pytest

from backspan.core.checks import CHECKS
from backspan.core.findings import DoesNotApply, Finding, Verdict
from backspan.core.model.project import Project
from backspan.core.model.rigs import OtherSupport, OtherSupportKind, Rig
from backspan.core.quantities import Style
from backspan.core.rules.selected import RuleLibrary
from backspan.core.rules.shape import Mark, RuleSet
from backspan.core.sheet.check import Check
from backspan.core.words import say, say_check, say_input, say_margin
from tests.unit.core.rigs import (
    ARM,
    BEAM,
    EN,
    LEFT,
    LIBRARY,
    OSHA,
    PROJECT,
    QUEBEC,
    RIG,
    STACK,
    STACKED,
    answers,
    findings,
    length,
    on_basis,
    put,
    without_stall,
)

CLAMPED = put(
    put(PROJECT, ARM, None), (*LEFT, "other_support"), OtherSupport(OtherSupportKind.DAVIT)
)
RIGS = {
    "as it should be": PROJECT,
    "worked out from the stack": STACKED,
    "under several texts": on_basis(PROJECT, OSHA, EN, QUEBEC),
    "no rig": put(PROJECT, RIG, None),
    "no points": put(PROJECT, RIG, Rig()),
    "a stage on no points": put(PROJECT, (*RIG, "suspension_points"), ()),
    "no lines": put(put(PROJECT, (*RIG, "lifelines"), None), (*LEFT, "tiebacks"), None),
    "one clamp": CLAMPED,
    "no support": put(PROJECT, ARM, None),
    "no pieces": put(PROJECT, (*STACK, "groups"), ()),
    "no stage": put(PROJECT, (*RIG, "stages"), ()),
    "no label": put(PROJECT, (*BEAM, "label"), None),
    "no stall load": without_stall(PROJECT),
    "no reach": put(PROJECT, (*ARM, "reach"), None),
    "far too long": put(PROJECT, (*ARM, "reach"), length("16 ft")),
    "fulcrum beyond the tail": put(STACKED, (*ARM, "reach"), length("19 ft")),
}


@pytest.fixture(params=RIGS.values(), ids=list(RIGS))
def rig(request: pytest.FixtureRequest) -> Project:
    project: Project = request.param
    return project


@pytest.fixture(params=CHECKS, ids=lambda check: check.id)
def check(request: pytest.FixtureRequest) -> Check:
    one: Check = request.param
    return one


def test_ids_are_unique_and_have_titles() -> None:
    ids = [check.id for check in CHECKS]
    assert len(set(ids)) == len(ids)
    assert all(say_check(name) for name in ids)


def test_a_check_answers_for_every_drop(check: Check, rig: Project) -> None:
    given = answers(rig, check.id)
    assert given
    assert {one.check for one in given} == {check.id}


def test_everything_an_answer_says_has_words(check: Check, rig: Project) -> None:
    for style in Style:
        for one in answers(rig, check.id):
            if isinstance(one, DoesNotApply):
                assert say(one.reason, style)
                continue
            told = [one.message, *one.notes, *(need.what for need in one.needs)]
            assert all(say(message, style) for message in told)
            assert all(say_margin(margin, style) for margin in one.margins)
            assert all(say_input(used.name) for used in one.inputs)


def test_what_is_open_says_what_would_settle_it_and_what_passes_is_not_open(
    check: Check, rig: Project
) -> None:
    for one in answers(rig, check.id):
        if isinstance(one, Finding):
            if one.verdict in {Verdict.MISSING, Verdict.REFER}:
                assert one.needs
            if one.verdict is Verdict.PASS:
                assert one.needs == ()


def test_demand_and_capacity_share_a_dimension(check: Check, rig: Project) -> None:
    for one in answers(rig, check.id):
        if isinstance(one, Finding) and one.demand is not None and one.capacity is not None:
            assert one.demand.dimension == one.capacity.dimension


def test_no_two_findings_of_a_drop_have_one_key(rig: Project) -> None:
    keys = [
        one.key for check in CHECKS for one in answers(rig, check.id) if isinstance(one, Finding)
    ]
    assert len(set(keys)) == len(keys)


@pytest.mark.parametrize("name", [check.id for check in CHECKS if check.id != "plausible-values"])
def test_a_pass_on_a_text_nobody_has_seen_is_referred(name: str) -> None:
    unseen = RuleLibrary(tuple(forgotten(one) for one in LIBRARY.rule_sets))
    seen = findings(on_basis(PROJECT, OSHA, QUEBEC), name)
    passed = [one for one in seen if one.verdict is Verdict.PASS and one.rules]
    after = findings(on_basis(PROJECT, OSHA, QUEBEC), name, library=unseen)
    referred = [one for one in after if one.verdict is Verdict.REFER]
    assert len(referred) >= len(passed)
    assert not [one for one in after if one.verdict is Verdict.PASS and one.rules]


def forgotten(rule_set: RuleSet) -> RuleSet:
    """The rule set as if every value of it were only remembered."""
    return replace(
        rule_set,
        values=tuple(
            replace(
                value,
                readings=tuple(
                    put(reading, ("provenance", "mark"), Mark.MEMORY) for reading in value.readings
                ),
            )
            for value in rule_set.values
        ),
    )
