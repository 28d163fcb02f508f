"""The basis of a review: rule sets of the project and of the drop, readings, confirmations."""

from __future__ import annotations

from dataclasses import replace

import pytest

from backspan.core.model.basis import Basis, ReadingChoice
from backspan.core.model.rigs import Drop
from backspan.core.review import review
from backspan.core.review.basis import confirmations, rules_of, selected_rules
from backspan.core.rules.shape import RuleError
from tests.unit.core.rigs import EN, LIBRARY, ON, OSHA, PROJECT, QUEBEC, confirmed, put

FACTOR = "tipping.working-load-limit"
ALSO = put(PROJECT, ("drops", "D", "also_meets"), (EN,))


def test_what_a_drop_must_also_meet_is_added_and_marked() -> None:
    lines = review(ALSO, "D", LIBRARY, on=ON).basis
    assert [(line.rule_set, line.added_for_drop) for line in lines] == [
        (OSHA.rule_set, False),
        (EN.rule_set, True),
        ("trade-practice", False),
    ]
    assert lines[0].edition == "1996"


def test_the_reading_used_is_told_where_there_are_several() -> None:
    (_, added, _) = review(ALSO, "D", LIBRARY, on=ON).basis
    assert added.readings == ((FACTOR, "beam not credited"),)
    chosen = replace(EN, readings=(ReadingChoice(FACTOR, "beam credited"),))
    other = put(ALSO, ("drops", "D", "also_meets"), (chosen,))
    assert review(other, "D", LIBRARY, on=ON).basis[1].readings == ((FACTOR, "beam credited"),)


def test_a_given_basis_leaves_out_what_the_drop_adds() -> None:
    rules = rules_of(ALSO, ALSO.drops[0], LIBRARY, (QUEBEC,))
    assert {one.rule_set.id for of_topic in rules.values() for one in of_topic} == {QUEBEC.rule_set}


def test_a_topic_may_name_its_own_rule_sets() -> None:
    """Quebec's ratio of arms beside the federal moment: the stall cap then is nobody's."""
    project = replace(PROJECT, basis=Basis((OSHA,), hoist=(EN,), geometry=(QUEBEC,)))
    made = review(project, "D", LIBRARY, on=ON)
    assert [(line.topic, line.rule_set) for line in made.basis[:-1]] == [
        (
            "tipping, counterweight, bearing, line, tieback, design, anchor, stage, fall, beam",
            OSHA.rule_set,
        ),
        ("hoist", EN.rule_set),
        ("geometry", QUEBEC.rule_set),
    ]
    found = {one.check: one for one in made.findings}
    assert found["tipping"].rules[0].rule_set == OSHA.rule_set
    assert found["beam-proportion"].rules[0].rule_set == QUEBEC.rule_set
    assert "stall-cap" not in found
    reasons = {one.check: one.reason for one in made.not_applicable}
    assert dict(reasons["stall-cap"].values)["rule_sets"] == (EN.rule_set,)
    # The cap on the stall load goes with the hoists, not with the moment.
    assert "most-stall-load-allowed" not in {one.id for one in found["tipping"].margins}


def test_what_a_drop_must_also_meet_holds_for_every_topic() -> None:
    project = replace(ALSO, basis=Basis((OSHA,), geometry=(QUEBEC,)))
    rules = rules_of(project, project.drops[0], LIBRARY)
    assert [[one.rule_set.id for one in rules[topic]] for topic in ("tipping", "geometry")] == [
        [OSHA.rule_set, EN.rule_set],
        [QUEBEC.rule_set, EN.rule_set],
    ]


@pytest.mark.parametrize(
    ("choice", "message"),
    [
        (ReadingChoice("tipping.nothing", "x"), "has no value 'tipping.nothing'"),
        (
            ReadingChoice(FACTOR, "lenient"),
            f"{FACTOR} has no reading 'lenient'; it has: beam not credited, beam credited",
        ),
    ],
)
def test_a_reading_that_is_not_there_is_refused(choice: ReadingChoice, message: str) -> None:
    with pytest.raises(RuleError, match=message):
        selected_rules(PROJECT, replace(EN, readings=(choice,)), LIBRARY)


def test_a_confirmation_tells_who_in_which_role_when_and_from_what() -> None:
    project = confirmed(PROJECT, EN, FACTOR)
    (value,) = selected_rules(project, EN, LIBRARY).topic("tipping")
    assert value.confirmed is not None
    assert value.confirmed.by == "P. Ennis, owner's engineer"
    assert (value.confirmed.at, value.confirmed.copy_seen) == ("2026-11-18", "office copy")
    assert not value.only_remembered


def test_somebody_the_project_does_not_know_is_named_as_written() -> None:
    project = confirmed(replace(PROJECT, people=()), EN, FACTOR)
    assert confirmations(project, EN.rule_set, EN.edition)[FACTOR].by == "PE"


def test_a_confirmation_holds_for_its_text_and_edition_alone() -> None:
    project = confirmed(PROJECT, EN, FACTOR)
    assert confirmations(project, EN.rule_set, "2024") == {}
    assert confirmations(project, "cn-gb-t-19155", EN.edition) == {}


@pytest.mark.parametrize("drop", [PROJECT.drops[0], ALSO.drops[0]], ids=["alone", "also meets"])
def test_a_basis_without_a_rule_set_is_refused_and_never_a_pass(drop: Drop) -> None:
    empty = replace(PROJECT, basis=Basis(()), drops=(drop,))
    with pytest.raises(RuleError, match="the basis names no rule set for tipping"):
        review(empty, "D", LIBRARY, on=ON)
    with pytest.raises(RuleError, match="the basis names no rule set for tipping"):
        review(PROJECT, "D", LIBRARY, on=ON, basis=())
