"""The answer to a question as text for a terminal."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from backspan.cli.citing import cited, reference
from backspan.cli.comparing import comparison_text
from backspan.cli.screen import Screen
from backspan.core.ask import (
    CAUTIONS,
    TOPICS,
    Answer,
    Given,
    Topic,
    say_answer,
    say_label,
)
from backspan.core.findings import Message
from backspan.core.quantities import Style
from backspan.core.words import english, say_margins, shown
from backspan.core.worked.lines import worked_line
from backspan.core.worked.table import FormulaDescription

_INDENT, _HANGING = 2, 6


def topics_text() -> str:
    """All topics, each with its question and an example to copy."""
    lines = ["Ask one question of the roof, without a project file:", ""]
    for topic in TOPICS:
        lines.append(f"{topic.id}: {topic.question}")
        # In one piece however long, so that it can be copied.
        lines += [f"{' ' * _INDENT}backspan ask {topic.id} {topic.example}", ""]
    lines.append("The values of a topic: backspan ask TOPIC --help")
    return "\n".join(lines) + "\n"


def short_text(answer: Answer, screen: Screen, *, style: Style) -> str:
    """Three lines: the answer and what it still needs, what governs, the clause and the caution."""
    parts = [*_said(answer, screen, style, indent=0)]
    if answer.comparison:
        parts += ["", comparison_text(answer.comparison, screen, style), ""]
    governs = _governs(answer, style)
    if governs:
        parts.append(screen.paragraph(governs, hanging=_INDENT))
    clause = f"{reference(answer.rules[0])}. " if answer.rules else ""
    parts.append(screen.paragraph(f"{clause}{english.ONE_LINE_CAUTION}", hanging=_INDENT))
    return "\n".join(parts) + "\n"


def _governs(answer: Answer, style: Style) -> str:
    """The branch that governs and what it reaches; where none does, the numbers there are."""
    told = {line.id: shown(line.value, style) for line in answer.lines}
    if "governing" in told:
        reached = [f"{say_label(one)} {told[one]}" for one in told if one.startswith("factor-")]
        return "; ".join([f"Governs: {told['governing']}", *reached])
    return "; ".join(f"{say_label(one)} {text}" for one, text in told.items())


def answer_text(
    topic: Topic,
    values: Mapping[str, Given],
    answer: Answer,
    screen: Screen,
    *,
    style: Style,
    formulas: Mapping[str, FormulaDescription],
) -> str:
    """The sentence first, then its numbers, how they came about, and what to mind."""
    parts = [
        *_head(topic, values, answer, screen, style),
        *_numbers(answer, screen, style),
    ]
    if answer.comparison:
        parts += ["", comparison_text(answer.comparison, screen, style)]
    if answer.steps:
        parts += ["", "Worked"]
        for step in answer.steps:
            line = worked_line(step, formulas[step.formula], style).plain
            parts.append(screen.paragraph(line, indent=_INDENT, hanging=_HANGING))
    if answer.rules:
        parts += ["", "Rule"]
        parts += [
            screen.paragraph(cited(rule), indent=_INDENT, hanging=_HANGING) for rule in answer.rules
        ]
    parts += ["", "Notes and cautions"]
    parts += _listed(answer.notes, screen, style)
    parts += [screen.paragraph(text, indent=_INDENT, hanging=_HANGING) for text in CAUTIONS]
    return "\n".join(parts) + "\n"


def _head(
    topic: Topic, values: Mapping[str, Given], answer: Answer, screen: Screen, style: Style
) -> Iterator[str]:
    given = ", ".join(
        f"{one.name} {shown(values[one.name], style)}"
        for one in topic.parameters
        if one.name in values
    )
    yield screen.paragraph(f"{topic.question} {given}.")
    yield ""
    yield from _said(answer, screen, style, indent=_INDENT)


def _said(answer: Answer, screen: Screen, style: Style, *, indent: int) -> Iterator[str]:
    said = say_answer(answer.message, style)
    if answer.verdict is not None:
        said = f"{screen.verdict(answer.verdict)}: {said}"
    yield screen.paragraph(said, indent=indent, hanging=_INDENT)
    for need in answer.needs:
        what = say_answer(need.what, style)
        text = f"Needed from the {_bare(str(need.who))}: {what}"
        yield screen.paragraph(text, indent=indent, hanging=indent + _INDENT)


def _bare(who: str) -> str:
    return who.removeprefix("the ")


def _numbers(answer: Answer, screen: Screen, style: Style) -> Iterator[str]:
    if answer.lines:
        yield ""
    width = max((len(say_label(line.id)) for line in answer.lines), default=0)
    for line in answer.lines:
        label = say_label(line.id).ljust(width)
        yield f"{' ' * _INDENT}{label}  {shown(line.value, style)}"
    if answer.margins:
        yield ""
        told = say_margins(answer.margins, style)
        yield screen.paragraph(told, indent=_INDENT, hanging=_INDENT)


def _listed(messages: tuple[Message, ...], screen: Screen, style: Style) -> list[str]:
    return [
        screen.paragraph(say_answer(one, style), indent=_INDENT, hanging=_HANGING)
        for one in messages
    ]
