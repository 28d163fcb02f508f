"""An answer as plain JSON data, the same bytes wherever it is written; docs/json-review.md."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from backspan.core.ask.shape import Answer, Given, Topic
from backspan.core.quantities import Style
from backspan.core.review.plain import Writer
from backspan.core.review.report import comparison_data, margin_data
from backspan.core.version import PROGRAM
from backspan.core.words import say_label
from backspan.core.words.roof_questions import CAUTIONS
from backspan.core.worked.table import FormulaDescription

#: The format number of the data written here.
FORMAT = 1


def answer_data(
    topic: Topic,
    values: Mapping[str, Given],
    answer: Answer,
    *,
    style: Style,
    formulas: Mapping[str, FormulaDescription],
) -> dict[str, Any]:
    """One question with its answer; every number is in SI beside its text in `style`."""
    writer = Writer(style, formulas)
    return {
        "format": FORMAT,
        "program": PROGRAM,
        "topic": topic.id,
        "question": topic.question,
        "units": str(style),
        "given": [
            {"name": one.name, "title": one.help, "value": writer.value(values[one.name])}
            for one in topic.parameters
            if one.name in values
        ],
        "verdict": None if answer.verdict is None else str(answer.verdict),
        "message": writer.message(answer.message),
        "lines": [
            {"id": line.id, "title": say_label(line.id), "value": writer.value(line.value)}
            for line in answer.lines
        ],
        "margins": [margin_data(writer, margin) for margin in answer.margins],
        "steps": [writer.step(step) for step in answer.steps],
        "rules": [writer.rule(rule) for rule in answer.rules],
        "notes": [writer.message(note) for note in answer.notes],
        "needs": [writer.need(need) for need in answer.needs],
        "comparison": [comparison_data(writer, row) for row in answer.comparison],
        "cautions": list(CAUTIONS),
    }
