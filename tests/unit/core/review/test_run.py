"""Findings rolled up to one answer; a review is the same whoever asks and in whatever order."""

from __future__ import annotations

import datetime
import itertools
from dataclasses import replace

import pytest

from backspan.core.checks import CHECKS
from backspan.core.findings import Finding, Message, Verdict
from backspan.core.model.basis import RuleChoice
from backspan.core.model.project import Ages, Project
from backspan.core.review import review
from backspan.core.review.run import governing_of, roll_up
from backspan.core.rules.shape import RuleError
from backspan.core.sheet.case import AbsentError
from tests.unit.core.rigs import (
    ARM,
    EN,
    LIBRARY,
    NEW_ZEALAND,
    ON,
    OSHA,
    PROJECT,
    RIG,
    STACK,
    count,
    on_basis,
    put,
    without_stall,
)

ORDER = [Verdict.FAIL, Verdict.MISSING, Verdict.REFER, Verdict.PASS]


def found(verdict: Verdict, utilisation: float | None = None) -> Finding:
    return Finding("x", "D", (), verdict, Message("x"), utilisation=utilisation, strength=True)


def verdict_of(project: Project) -> Verdict:
    return review(project, "D", LIBRARY, on=ON).verdict


@pytest.mark.parametrize(
    "verdicts", [some for n in (1, 2, 3, 4) for some in itertools.permutations(ORDER, n)]
)
def test_the_worst_answer_is_the_answer(verdicts: tuple[Verdict, ...]) -> None:
    assert roll_up([found(one) for one in verdicts]) is min(verdicts, key=ORDER.index)


def test_nothing_found_is_missing() -> None:
    assert roll_up(()) is Verdict.MISSING
    assert governing_of(()) is None


def test_the_highest_utilisation_of_the_worst_answer_governs() -> None:
    assert (
        governing_of([found(Verdict.PASS, 9.0), found(Verdict.FAIL), found(Verdict.FAIL, 1.1)]) == 2
    )
    assert (
        governing_of([found(Verdict.PASS, 0.5), found(Verdict.PASS, 0.9), found(Verdict.PASS)]) == 1
    )
    assert governing_of([found(Verdict.REFER), found(Verdict.REFER)]) == 0


def test_a_cap_is_never_ranked_with_strength() -> None:
    cap = replace(found(Verdict.PASS, 1.0), strength=False)
    assert governing_of([cap, found(Verdict.PASS, 0.8)]) == 1


def test_the_four_answers_of_a_drop() -> None:
    assert verdict_of(PROJECT) is Verdict.PASS
    assert verdict_of(put(PROJECT, (*STACK, "groups", "LOT", "count"), count(14))) is Verdict.FAIL
    assert verdict_of(put(PROJECT, (*ARM, "backspan"), None)) is Verdict.MISSING
    assert verdict_of(on_basis(PROJECT, OSHA, EN)) is Verdict.REFER


def test_a_drop_without_a_rig_is_missing() -> None:
    assert verdict_of(put(PROJECT, RIG, None)) is Verdict.MISSING


def test_every_check_is_heard() -> None:
    made = review(PROJECT, "D", LIBRARY, on=ON)
    heard = {one.check for one in made.findings} | {one.check for one in made.not_applicable}
    assert heard == {check.id for check in CHECKS}


def test_a_review_tells_what_it_was_made_of() -> None:
    made = review(PROJECT, "D", LIBRARY, on=ON)
    assert (made.site, made.drop, made.on) == ("A rig for cases", "D", ON)
    assert made.governing is not None
    assert made.findings[made.governing].verdict is made.verdict
    assert made.program


def test_the_same_question_gets_the_same_review() -> None:
    assert review(PROJECT, "D", LIBRARY, on=ON) == review(PROJECT, "D", LIBRARY, on=ON)


def test_a_later_day_of_a_rig_with_nothing_dated_changes_nothing_but_the_date() -> None:
    later = datetime.date(2027, 2, 1)
    lasting = Ages(observation=99, count=99, rig_geometry=99, geometry=99)
    endless = replace(PROJECT.plan, ends="2027-12-31") if PROJECT.plan else None
    undated = replace(PROJECT, taken_over=(), ages=lasting, plan=endless)
    made = review(undated, "D", LIBRARY, on=ON)
    assert replace(review(undated, "D", LIBRARY, on=later), on=ON) == made


def test_a_basis_that_is_given_replaces_the_project_s() -> None:
    what_if = review(PROJECT, "D", LIBRARY, on=ON, basis=(NEW_ZEALAND,))
    assert [
        line.rule_set for line in what_if.basis if line.topic == "every topic it speaks of"
    ] == [NEW_ZEALAND.rule_set]
    assert what_if.configuration == review(PROJECT, "D", LIBRARY, on=ON).configuration


def test_results_are_no_part_of_the_configuration() -> None:
    short = without_stall(PROJECT)
    codes = {review(one, "D", LIBRARY, on=ON).configuration for one in (PROJECT, short)}
    assert len(codes) == 2
    confirmed_or_not = {
        review(one, "D", LIBRARY, on=ON).configuration
        for one in (PROJECT, on_basis(PROJECT, OSHA, EN))
    }
    assert len(confirmed_or_not) == 1


def test_a_drop_that_is_not_there_is_named_with_those_that_are() -> None:
    with pytest.raises(AbsentError, match="the project has no drop 'Z'; drops: D"):
        review(PROJECT, "Z", LIBRARY, on=ON)
    with pytest.raises(AbsentError, match="drops: none"):
        review(replace(PROJECT, drops=()), "D", LIBRARY, on=ON)


def test_a_rule_set_that_is_not_there_is_named_with_those_that_are() -> None:
    with pytest.raises(RuleError, match="there is no rule set 'xx'; rule sets: au-as-nzs"):
        review(on_basis(PROJECT, RuleChoice("xx", "1")), "D", LIBRARY, on=ON)
    with pytest.raises(RuleError, match="has no edition '1970'; editions: 1996"):
        review(on_basis(PROJECT, replace(OSHA, edition="1970")), "D", LIBRARY, on=ON)
