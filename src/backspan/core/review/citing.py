"""Where a rule value stands, how far it was verified and what it asks, in words."""

from __future__ import annotations

from backspan.core.quantities import RATIO, Style, display
from backspan.core.rules.selected import SelectedValue
from backspan.core.rules.shape import BeamWeight, Content, FactorOnLoad, Limit, Section, WordList
from backspan.core.words import ENGLISH, Language, shown


def content_text(content: Content, style: Style, *, language: Language = ENGLISH) -> str:
    """What a rule value asks for, in one line; a remark stays as its rule set has it."""
    if isinstance(content, FactorOnLoad):
        alone = content.beam_weight is BeamWeight.NO_PART
        return language.phrase(
            "factor-on-load-alone" if alone else "factor-on-load",
            factor=display(content.factor, RATIO, style),
            load=language.word(content.load),
            beam_weight=language.word(content.beam_weight),
        )
    if isinstance(content, Limit):
        return shown(content.amount, style)
    if isinstance(content, WordList):
        return ", ".join(language.word(one) for one in content.words)
    return content.shape if isinstance(content, Section) else content.text


def cited(rule: SelectedValue, style: Style, *, language: Language = ENGLISH) -> str:
    """Text, edition, clause, mark and what is asked, such as a paper would cite it."""
    reading, at = reading_text(rule), reference(rule, language=language)
    asked = rule.description
    if isinstance(rule.content, FactorOnLoad):
        asked = content_text(rule.content, style, language=language)
    if not reading:
        return language.phrase("cited", reference=at, asked=asked)
    return language.phrase("cited-as-read", reference=at, reading=reading, asked=asked)


def reference(rule: SelectedValue, *, language: Language = ENGLISH) -> str:
    """Text, edition, clause and mark, with who confirmed a value that was only remembered."""
    mark, confirmed = mark_text(rule, language=language), rule.confirmed
    if confirmed is not None:
        mark = language.phrase("mark-by", mark=mark, by=confirmed.by, at=confirmed.at)
    return f"{rule.rule_set} {rule.edition}, {rule.provenance.clause} [{mark}]"


def mark_text(rule: SelectedValue, *, language: Language = ENGLISH) -> str:
    """The mark, and whether somebody confirmed a value that was only remembered."""
    mark = language.word(rule.provenance.mark)
    return mark if rule.confirmed is None else language.phrase("mark-confirmed", mark=mark)


def reading_text(rule: SelectedValue) -> str:
    """The reading of a value that has several; empty else."""
    return rule.reading if rule.of_readings > 1 else ""
