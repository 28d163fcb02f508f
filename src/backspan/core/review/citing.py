"""Where a rule value stands, how far it was verified and what it asks, in words."""

from __future__ import annotations

from backspan.core.quantities import RATIO, Style, display
from backspan.core.rules.selected import SelectedValue
from backspan.core.rules.shape import Content, FactorOnLoad, Limit, WordList
from backspan.core.words import shown


def content_text(content: Content, style: Style) -> str:
    """What a rule value asks for, in one line."""
    if isinstance(content, FactorOnLoad):
        factor = display(content.factor, RATIO, style)
        return f"{factor} x {content.load}, beam's own weight: {content.beam_weight}"
    if isinstance(content, Limit):
        return shown(content.amount, style)
    if isinstance(content, WordList):
        return ", ".join(content.words)
    return content.text


def cited(rule: SelectedValue, style: Style) -> str:
    """Text, edition, clause, mark and what is asked, such as a paper would cite it."""
    reading = reading_text(rule)
    read_as = f', read as "{reading}"' if reading else ""
    is_factor = isinstance(rule.content, FactorOnLoad)
    asked = content_text(rule.content, style) if is_factor else rule.description
    return f"{reference(rule)}{read_as}: {asked}"


def reference(rule: SelectedValue) -> str:
    """Text, edition, clause and mark, with who confirmed a value that was only remembered."""
    mark, confirmed = mark_text(rule), rule.confirmed
    if confirmed is not None:
        mark += f" by {confirmed.by} on {confirmed.at}"
    return f"{rule.rule_set} {rule.edition}, {rule.provenance.clause} [{mark}]"


def mark_text(rule: SelectedValue) -> str:
    """The mark, and whether somebody confirmed a value that was only remembered."""
    mark = str(rule.provenance.mark)
    return mark if rule.confirmed is None else f"{mark}, confirmed"


def reading_text(rule: SelectedValue) -> str:
    """The reading of a value that has several; empty else."""
    return rule.reading if rule.of_readings > 1 else ""
