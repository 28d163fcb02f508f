"""Rule sets as text for a terminal."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator

from backspan.cli.screen import Screen
from backspan.core.quantities import Style
from backspan.core.review.citing import content_text
from backspan.core.rules.selected import RuleLibrary
from backspan.core.rules.shape import Mark, Reading, RuleSet, RuleValue

_INDENT, _INNER, _HANGING = 2, 4, 6


def library_text(library: RuleLibrary, screen: Screen) -> str:
    """All rule sets with their editions and the marks of their values."""
    lines: list[str] = []
    for one in library.rule_sets:
        told = f"{one.title}; {one.jurisdiction}. Values: {_marks(one)}."
        lines += [f"{one.id}@{one.edition}", screen.paragraph(told, indent=_INDENT), ""]
    return "\n".join([*lines, "What one of them holds: backspan rules SET[@EDITION]"]) + "\n"


def rule_set_text(rule_set: RuleSet, screen: Screen) -> str:
    """One rule set: every value with its readings, clause, mark and source."""
    lines = [
        screen.paragraph(f"{rule_set.title}, edition {rule_set.edition}"),
        screen.paragraph(f"{rule_set.publisher}; {rule_set.jurisdiction}; {rule_set.scope}"),
    ]
    if rule_set.note is not None:
        lines.append(screen.paragraph(rule_set.note))
    for value in rule_set.values:
        lines += ["", *_value(value, screen)]
    return "\n".join(lines) + "\n"


def _value(value: RuleValue, screen: Screen) -> Iterator[str]:
    yield value.key
    for reading in value.readings:
        yield from _reading(value, reading, screen)
    if value.note is not None:
        yield screen.paragraph(f"Note: {value.note}", indent=_INDENT, hanging=_INNER)


def _reading(value: RuleValue, reading: Reading, screen: Screen) -> Iterator[str]:
    several = len(value.readings) > 1
    indent, hanging = (_INNER, _HANGING) if several else (_INDENT, _INNER)
    if several:
        default = " (used unless another is chosen)" if reading.name == value.default else ""
        yield screen.paragraph(f'read as "{reading.name}"{default}', indent=_INDENT)
    stands = reading.provenance
    for text in (
        content_text(reading.content, Style.US),
        reading.description,
        f"{stands.clause} [{stands.mark}]: {stands.source}",
    ):
        yield screen.paragraph(text, indent=indent, hanging=hanging)


def _marks(rule_set: RuleSet) -> str:
    counts = Counter(
        reading.provenance.mark for value in rule_set.values for reading in value.readings
    )
    return ", ".join(f"{counts[mark]} {mark}" for mark in Mark if counts[mark])
