"""The number of a limit, with its dimension checked."""

from __future__ import annotations

from backspan.core.quantities import Dimension
from backspan.core.rules.selected import SelectedRules, SelectedValue
from backspan.core.rules.shape import Limit, RuleError


def limit_of(value: SelectedValue, dimension: Dimension) -> float:
    """The limit in SI; RuleError when the value is not a limit of that dimension."""
    if not isinstance(value.content, Limit) or value.content.amount.dimension != dimension:
        raise RuleError(f"{value.rule_set}: {value.key} is not a limit on a {dimension.name}")
    return value.content.amount.value


def needed_value(rules: SelectedRules, key: str) -> SelectedValue:
    """A value the program cannot do without; RuleError when the rule set lacks it."""
    value = rules.find(key)
    if value is None:
        raise RuleError(f"{rules.rule_set.id} {rules.rule_set.edition} has no value {key!r}")
    return value
