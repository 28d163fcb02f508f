"""The rule sets as shipped, for tests to walk."""

from __future__ import annotations

from collections.abc import Iterator

from backspan.core.rules.shape import Reading, RuleSet, RuleValue
from tools.write_sources import RULE_SETS, read_rule_sets

ALL = read_rule_sets(RULE_SETS)
BY_ID = {one.id: one for one in ALL}

OSHA = "us-osha-1926-subpart-l"


def all_values() -> Iterator[tuple[RuleSet, RuleValue]]:
    """Every value of every rule set."""
    return ((rule_set, value) for rule_set in ALL for value in rule_set.values)


def all_readings() -> Iterator[tuple[RuleSet, RuleValue, Reading]]:
    """Every reading of every value."""
    return (
        (rule_set, value, reading) for rule_set, value in all_values() for reading in value.readings
    )
