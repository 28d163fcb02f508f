"""Parts of a report as plain data: every number in SI beside the text people read."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

from backspan.core.findings import Message, MessageValue, Need
from backspan.core.quantities import RATIO, Amount, Style, display, shared_unit
from backspan.core.review.citing import cited, content_text, mark_text, reading_text, reference
from backspan.core.rules.selected import SelectedValue
from backspan.core.rules.shape import Content, FactorOnLoad, Limit, Section, WordList
from backspan.core.wire import report_number
from backspan.core.words import ENGLISH, Language, per_cent, say, say_decider, shown
from backspan.core.worked.formula import Step
from backspan.core.worked.lines import WorkedLine, worked_line
from backspan.core.worked.table import FormulaDescription, dimensions_of
from backspan.core.worked.typeset import typst_line

Data = dict[str, Any]


@dataclass(frozen=True, slots=True)
class Writer:
    """Writes the parts of one report in one style of units; `formulas` describe the steps."""

    style: Style
    formulas: Mapping[str, FormulaDescription]
    language: Language = ENGLISH
    lines: dict[Step, WorkedLine] = field(default_factory=dict)
    """Lines already written: one step stands in several findings, and a line costs."""

    def amount(self, amount: Amount | None, *beside: Amount | None) -> Data | None:
        """A number with its SI unit and its text, in one unit with those beside it."""
        if amount is None:
            return None
        together = [one for one in (amount, *beside) if one is not None]
        unit = shared_unit(together, self.style).get(amount.dimension)
        text = shown(amount, self.style)
        if unit is not None:
            text = display(amount.value, amount.dimension, self.style, unit=unit)
        return {"value": report_number(amount.value), "unit": amount.dimension.si, "text": text}

    def count(self, count: int | None) -> Data | None:
        """A whole number in the same form; None stays None."""
        return None if count is None else {"value": count, "unit": "", "text": str(count)}

    def share(self, share: float | None) -> Data | None:
        """A share of a capacity, told in per cent; None stays None."""
        if share is None:
            return None
        return {"value": report_number(share), "unit": "", "text": per_cent(share)}

    def value(self, value: MessageValue) -> Any:
        """A typed value: a number as above, text as it is, several names as a list."""
        if isinstance(value, Amount):
            return self.amount(value)
        if isinstance(value, int):
            return self.count(value)
        return list(value) if isinstance(value, tuple) else value

    def text(self, message: Message, *, places: bool = True) -> str:
        """The sentence of a message; without `places`, not where in the file a value belongs."""
        return say(message, self.style, places=places, language=self.language)

    def message(self, message: Message, text: str | None = None) -> Data:
        """A sentence: its id, its values, its text."""
        return {
            "id": message.id,
            "values": {name: self.value(value) for name, value in message.values},
            "text": self.text(message) if text is None else text,
        }

    def need(self, need: Need) -> Data:
        """Who must supply what."""
        asked = say_decider(need.who, language=self.language)
        who = self.language.word(need.who)
        return {"who": who, "asked": asked, "what": self.message(need.what)}

    def rule(self, rule: SelectedValue) -> Data:
        """A rule value with where it stands, its mark, and who confirmed it."""
        confirmed = rule.confirmed
        return {
            "rule_set": rule.rule_set,
            "edition": rule.edition,
            "title": rule.title,
            "value": rule.key,
            "reading": rule.reading,
            "of_readings": rule.of_readings,
            "reading_text": reading_text(rule),
            "description": rule.description,
            "content": self.content(rule.content),
            "clause": rule.provenance.clause,
            "mark": str(rule.provenance.mark),
            "mark_text": mark_text(rule, language=self.language),
            "source": rule.provenance.source,
            "confirmed": None
            if confirmed is None
            else {
                "by": confirmed.by,
                "at": confirmed.at,
                "copy_seen": confirmed.copy_seen,
                "text": self.language.phrase(
                    "confirmed-in-copy",
                    by=confirmed.by,
                    at=confirmed.at,
                    copy_seen=confirmed.copy_seen,
                ),
            },
            "reference": reference(rule, language=self.language),
            "citation": cited(rule, self.style, language=self.language),
        }

    def content(self, content: Content) -> Data:
        """What the rule value asks for, by its kind."""
        text = content_text(content, self.style, language=self.language)
        if isinstance(content, FactorOnLoad):
            return {
                "kind": "factor on load",
                "factor": self.amount(Amount(content.factor, RATIO)),
                "load": str(content.load),
                "beam_weight": str(content.beam_weight),
                "text": text,
            }
        if isinstance(content, Limit):
            return {"kind": "limit", "limit": self.amount(content.amount), "text": text}
        if isinstance(content, WordList):
            return {"kind": "word list", "words": list(content.words), "text": text}
        if isinstance(content, Section):
            sizes = {name: self.amount(one) for name, one in content.sizes.items()}
            return {"kind": "section", "form": str(content.form), "sizes": sizes, "text": text}
        return {"kind": "remark", "text": text}

    def line(self, step: Step) -> WorkedLine:
        """The worked line of a step, made once."""
        found = self.lines.get(step)
        if found is None:
            found = worked_line(step, self.formulas[step.formula], self.style)
            self.lines[step] = found
        return found

    def step(self, step: Step) -> Data:
        """A computed step: formula, arguments and result in SI, and the line that is printed."""
        line = self.line(step)
        description = self.formulas[step.formula]
        dimensions = dimensions_of(step, description)
        printed = {number.name: number for number in line.numbers}
        return {
            "formula": step.formula,
            "title": self.language.formulas.get(step.formula, line.title),
            "source": line.source,
            "symbol": description.symbol,
            "arguments": [
                {
                    "name": name,
                    "symbol": printed[name].symbol,
                    "dimension": dimensions[name].name,
                    "value": report_number(value),
                    "unit": dimensions[name].si,
                    "text": printed[name].text,
                }
                for name, value in step.arguments
            ],
            "result": {
                "dimension": description.result.name,
                "value": report_number(step.value),
                "unit": description.result.si,
                "text": line.result.text,
            },
            "line": line.plain,
            "math": typst_line(line),
        }
