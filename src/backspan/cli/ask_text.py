"""The answer to a question as text for a terminal."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from backspan.cli.comparing import comparison_table
from backspan.cli.screen import Screen
from backspan.core.ask import TOPICS
from backspan.core.findings import Verdict
from backspan.core.review.plain import Data
from backspan.core.words import english

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


def short_text(answer: Data, screen: Screen) -> str:
    """Three lines: the answer and what it still needs, what governs, the clause and the caution."""
    parts = [*_said(answer, screen, indent=0)]
    if answer["comparison"]:
        parts += ["", comparison_table(answer["comparison"], screen), ""]
    governs = _governs(answer["lines"])
    if governs:
        parts.append(screen.paragraph(governs, hanging=_INDENT))
    clause = f"{answer['rules'][0]['reference']}. " if answer["rules"] else ""
    parts.append(screen.paragraph(f"{clause}{english.ONE_LINE_CAUTION}", hanging=_INDENT))
    return "\n".join(parts) + "\n"


def _governs(lines: Sequence[Data]) -> str:
    """The branch that governs and what it reaches; where none does, the numbers there are."""
    governing = [_told(line["value"]) for line in lines if line["id"] == "governing"]
    reached = [line for line in lines if not governing or line["id"].startswith("factor-")]
    told = [f"{line['title']} {_told(line['value'])}" for line in reached]
    return "; ".join([*(f"Governs: {one}" for one in governing), *told])


def answer_text(answer: Data, margins: str, screen: Screen) -> str:
    """The sentence first, then its numbers, how they came about, and what to mind.

    `margins` are those of the answer in one sentence.
    """
    parts = [*_head(answer, screen), *_numbers(answer, margins, screen)]
    if answer["comparison"]:
        parts += ["", comparison_table(answer["comparison"], screen)]
    if answer["steps"]:
        parts += ["", "Worked", *_listed((one["line"] for one in answer["steps"]), screen)]
    if answer["rules"]:
        parts += ["", "Rule", *_listed((one["citation"] for one in answer["rules"]), screen)]
    parts += ["", "Notes and cautions", *_listed((one["text"] for one in answer["notes"]), screen)]
    return "\n".join([*parts, *_listed(answer["cautions"], screen)]) + "\n"


def _head(answer: Data, screen: Screen) -> Iterator[str]:
    given = ", ".join(f"{one['name']} {_told(one['value'])}" for one in answer["given"])
    yield screen.paragraph(f"{answer['question']} {given}.")
    yield ""
    yield from _said(answer, screen, indent=_INDENT)


def _said(answer: Data, screen: Screen, *, indent: int) -> Iterator[str]:
    said, verdict = answer["message"]["text"], answer["verdict"]
    if verdict is not None:
        said = f"{screen.verdict(Verdict(verdict))}: {said}"
    yield screen.paragraph(said, indent=indent, hanging=_INDENT)
    for need in answer["needs"]:
        who = need["who"].removeprefix("the ")
        text = f"Needed from the {who}: {need['what']['text']}"
        yield screen.paragraph(text, indent=indent, hanging=indent + _INDENT)


def _numbers(answer: Data, margins: str, screen: Screen) -> Iterator[str]:
    if answer["lines"]:
        yield ""
    width = max((len(line["title"]) for line in answer["lines"]), default=0)
    for line in answer["lines"]:
        yield f"{' ' * _INDENT}{line['title'].ljust(width)}  {_told(line['value'])}"
    if margins:
        yield ""
        yield screen.paragraph(margins, indent=_INDENT, hanging=_INDENT)


def _told(value: Data | str) -> str:
    return value if isinstance(value, str) else str(value["text"])


def _listed(texts: Iterable[str], screen: Screen) -> list[str]:
    return [screen.paragraph(text, indent=_INDENT, hanging=_HANGING) for text in texts]
