from __future__ import annotations

import dataclasses

import pytest

from backspan.core.model.basis import RuleChoice
from backspan.core.review.naming import rule_choice
from backspan.core.rules.selected import RuleLibrary
from backspan.core.rules.shape import RuleError
from tests.unit.core.ask.asking import LIBRARY


def test_a_name_alone_takes_the_only_edition() -> None:
    assert rule_choice("uk-bs-5974", LIBRARY) == RuleChoice("uk-bs-5974", "undated")


def test_an_edition_may_be_named() -> None:
    choice = rule_choice("us-wa-wac-296-874@2007", LIBRARY)
    assert choice == RuleChoice("us-wa-wac-296-874", "2007")


@pytest.mark.parametrize(
    ("text", "what"),
    [
        ("uk-bs-5947", r"no rule set 'uk-bs-5947'; did you mean uk-bs-5974\?"),
        ("osha", r"no rule set 'osha'; did you mean us-osha-1926-subpart-l\?"),
        ("zzz", "no rule set 'zzz'; rule sets: au-as-nzs-1576-4, "),
        ("", "no rule set ''; rule sets: "),
        ("uk-bs-5974@1990", "'uk-bs-5974' has no edition '1990'; editions: undated"),
        ("eu-en-1808@2051", r"has no edition '2051'; did you mean 2015\?"),
    ],
)
def test_a_rule_set_that_is_not_there(text: str, what: str) -> None:
    with pytest.raises(RuleError, match=what):
        rule_choice(text, LIBRARY)


def test_several_editions_are_never_chosen_from_by_the_program() -> None:
    one = LIBRARY.get("uk-bs-5974", "undated")
    library = RuleLibrary((one, dataclasses.replace(one, edition="1990")))
    with pytest.raises(RuleError, match="name one: uk-bs-5974@1990 or uk-bs-5974@undated"):
        rule_choice("uk-bs-5974", library)
    assert rule_choice("uk-bs-5974@1990", library).edition == "1990"
