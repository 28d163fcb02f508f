"""Where a rule value stands and how far it was verified, in one line."""

from __future__ import annotations

from backspan.core.quantities import Style
from backspan.core.review.plain import content_text
from backspan.core.rules.selected import SelectedValue
from backspan.core.rules.shape import FactorOnLoad


def cited(rule: SelectedValue, style: Style = Style.US) -> str:
    """Text, edition, clause, mark and what is asked, such as a paper would cite it."""
    reading = f', read as "{rule.reading}"' if rule.of_readings > 1 else ""
    return f"{reference(rule)}{reading}: {_asked(rule, style)}"


def reference(rule: SelectedValue) -> str:
    """Text, edition, clause and mark."""
    return f"{rule.rule_set} {rule.edition}, {rule.provenance.clause} [{mark_of(rule)}]"


def _asked(rule: SelectedValue, style: Style) -> str:
    """Factor and load in figures; everything else in the value's own words."""
    if isinstance(rule.content, FactorOnLoad):
        return content_text(rule.content, style)
    return rule.description


def mark_of(rule: SelectedValue) -> str:
    """The mark, and who confirmed a value that was only remembered."""
    mark = str(rule.provenance.mark)
    if rule.confirmed is None:
        return mark
    return f"{mark}, confirmed by {rule.confirmed.by} on {rule.confirmed.at}"
