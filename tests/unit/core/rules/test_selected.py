"""A rule set as a review uses it: readings chosen, confirmations beside the values."""

from __future__ import annotations

import re

import pytest

from backspan.core.rules.selected import Confirmed, RuleLibrary, SelectedRules
from backspan.core.rules.shape import (
    Mark,
    Provenance,
    Reading,
    Remark,
    RuleError,
    RuleSet,
    RuleValue,
)


def value(key: str, *names: str, mark: Mark = Mark.READ) -> RuleValue:
    """A value with one remark a reading; the first is the default."""
    readings = tuple(
        Reading(name, Remark(f"text of {name}"), Provenance(f"clause {name}", mark, "paper"), name)
        for name in names
    )
    return RuleValue(key, key.split(".", maxsplit=1)[0], "described", readings, names[0])


PLAIN = value("tipping.plain", "as written")
TWO = value("tipping.two", "strict", "lenient")
OLD = value("hoist.old", "as written", mark=Mark.MEMORY)
RULE_SET = RuleSet(
    id="made-up",
    edition="2001",
    title="A made-up text",
    publisher="Nobody",
    jurisdiction="Nowhere",
    scope="tests",
    values=(PLAIN, TWO, OLD),
)
CONFIRMED = Confirmed(by="A. Person", at="2001-02-03", copy_seen="own copy, 2nd printing")


def rules(
    readings: dict[str, str] | None = None, confirmed: dict[str, Confirmed] | None = None
) -> SelectedRules:
    """The rule set with some readings chosen and some values confirmed."""
    return SelectedRules(RULE_SET, readings or {}, confirmed or {})


def test_a_selected_value_carries_all_that_a_paper_prints() -> None:
    selected = rules(confirmed={"tipping.plain": CONFIRMED}).select(PLAIN)
    assert (selected.rule_set, selected.edition, selected.title) == (
        "made-up",
        "2001",
        "A made-up text",
    )
    assert (selected.key, selected.reading, selected.of_readings) == (
        "tipping.plain",
        "as written",
        1,
    )
    assert selected.description == "as written"
    assert selected.content == Remark("text of as written")
    assert selected.provenance == Provenance("clause as written", Mark.READ, "paper")
    assert selected.confirmed == CONFIRMED


def test_the_default_reading_applies_where_none_is_chosen() -> None:
    assert rules().select(TWO).reading == "strict"
    assert rules().select(TWO).of_readings == 2


def test_the_chosen_reading_applies_and_the_one_asked_for_goes_before_it() -> None:
    chosen = rules({"tipping.two": "lenient"})
    assert chosen.select(TWO).content == Remark("text of lenient")
    assert chosen.select(TWO, "strict").content == Remark("text of strict")
    assert chosen.select(PLAIN).reading == "as written"


@pytest.mark.parametrize("chosen", [rules({"tipping.two": "loose"}), rules()])
def test_a_reading_that_is_not_there_is_refused_with_those_that_are(chosen: SelectedRules) -> None:
    told = "made-up: tipping.two has no reading 'loose'; it has: strict, lenient"
    with pytest.raises(RuleError, match=re.escape(told)):
        chosen.select(TWO, None if chosen.readings else "loose")


def test_a_value_is_found_by_its_key_or_not_at_all() -> None:
    found = rules().find("tipping.two")
    assert found is not None
    assert found.key == "tipping.two"
    assert rules().find("tipping.none") is None


def test_a_topic_gives_its_values_in_the_order_of_the_file() -> None:
    assert [one.key for one in rules().topic("tipping")] == ["tipping.plain", "tipping.two"]
    assert [one.key for one in rules().topic("hoist")] == ["hoist.old"]
    assert rules().topic("geometry") == ()


def test_a_value_is_only_remembered_until_an_office_confirms_it() -> None:
    assert rules().select(OLD).only_remembered
    assert not rules(confirmed={"hoist.old": CONFIRMED}).select(OLD).only_remembered
    assert rules(confirmed={"tipping.plain": CONFIRMED}).select(OLD).only_remembered
    assert not rules().select(PLAIN).only_remembered


def edition(name: str) -> RuleSet:
    """The rule set in another edition."""
    return RuleSet("made-up", name, "A made-up text", "Nobody", "Nowhere", "tests", (PLAIN,))


LIBRARY = RuleLibrary((RULE_SET, edition("1990"), RuleSet("other", "1", "O", "N", "N", "t", ())))


def test_a_library_gives_the_edition_asked_for() -> None:
    assert LIBRARY.get("made-up", "2001") is RULE_SET
    assert LIBRARY.get("made-up", "1990").edition == "1990"
    assert [one.edition for one in LIBRARY.editions("made-up")] == ["2001", "1990"]
    assert list(LIBRARY.editions("none")) == []


@pytest.mark.parametrize(
    ("rule_set", "asked", "told"),
    [
        ("made-up", "1999", "rule set 'made-up' has no edition '1999'; editions: 2001, 1990"),
        ("mode-up", "2001", "there is no rule set 'mode-up'; rule sets: made-up, other"),
    ],
)
def test_what_a_library_does_not_have_is_refused_with_what_it_has(
    rule_set: str, asked: str, told: str
) -> None:
    with pytest.raises(RuleError, match=re.escape(told)):
        LIBRARY.get(rule_set, asked)
