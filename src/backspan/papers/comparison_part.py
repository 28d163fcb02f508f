"""The table of the same support under every counterweight rule, for one drop."""

from __future__ import annotations

from typing import Any

from backspan.core.findings import ComparisonRow, Review
from backspan.core.rules.shape import FactorOnLoad
from backspan.core.words import say, shown
from backspan.papers.wording import mark_of


def comparison_part(review: Review) -> list[dict[str, Any]]:
    """One table for each group of suspension points whose rows say the same."""
    tables: dict[str, tuple[list[str], list[dict[str, str]]]] = {}
    subjects = dict.fromkeys(row.subject for row in review.comparison)
    for subject in subjects:
        rows = [_row(row, review) for row in review.comparison if row.subject == subject]
        key = repr(rows)
        tables.setdefault(key, ([], rows))[0].append(subject)
    return [{"subjects": ", ".join(names), "rows": rows} for names, rows in tables.values()]


def _row(row: ComparisonRow, review: Review) -> dict[str, str]:
    content = row.rule.content
    factor = load = ""
    if isinstance(content, FactorOnLoad):
        factor, load = f"{content.factor:g}", str(content.load)
    enough = "" if row.enough is None else "enough" if row.enough else "short"
    required = "" if row.required is None else shown(row.required, review.units)
    reason = "" if row.reason is None else say(row.reason, review.units)
    return {
        "rule_set": row.rule.rule_set,
        "edition": row.rule.edition,
        "clause": row.rule.provenance.clause,
        "reading": row.rule.reading if row.rule.of_readings > 1 else "",
        "factor": factor,
        "load": load,
        "required": required,
        "reason": reason,
        "pieces": "" if row.pieces is None else str(row.pieces),
        "enough": enough,
        "mark": mark_of(row.rule),
        "in_basis": "basis" if row.in_basis else "",
    }
