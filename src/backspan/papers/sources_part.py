"""Every rule value the findings of a package rest on, once, with where it was seen."""

from __future__ import annotations

from collections.abc import Sequence

from backspan.core.review.plain import Data


def sources_part(reviews: Sequence[Data]) -> list[Data]:
    """The rule values by rule set, edition, key and reading; equal ones stand once."""
    rules = (rule for one in reviews for finding in one["findings"] for rule in finding["rules"])
    cited = {
        tuple(rule[name] for name in ("rule_set", "edition", "value", "reading")): rule
        for rule in rules
    }
    return [cited[key] for key in sorted(cited)]
