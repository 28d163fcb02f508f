"""Every rule value the findings of a package rest on, once, with where it was seen."""

from __future__ import annotations

from collections.abc import Sequence

from backspan.core.findings import Review
from backspan.papers.wording import citation


def sources_part(reviews: Sequence[Review]) -> list[dict[str, str]]:
    """Citations by rule set, edition and clause; equal ones stand once."""
    rules = (rule for review in reviews for finding in review.findings for rule in finding.rules)
    cited = {(rule.rule_set, rule.edition, rule.key, rule.reading): rule for rule in rules}
    order = sorted(cited.items(), key=lambda item: item[0])
    return [citation(rule) for _, rule in order]
