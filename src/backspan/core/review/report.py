"""A review as plain JSON data, the same bytes wherever it is written; docs/json-review.md."""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from functools import cache
from types import MappingProxyType
from typing import Any

from backspan.core.findings import (
    ComparisonRow,
    DoesNotApply,
    Envelope,
    Finding,
    InputUsed,
    Margin,
    MessageValue,
    Pressed,
    Reactions,
    Review,
    TopicAnswer,
    Verdict,
)
from backspan.core.mechanics import FORMULAS
from backspan.core.mechanics.formula_table import FORMULA_TABLE
from backspan.core.quantities import Amount
from backspan.core.review.front import FORMAT, front_data
from backspan.core.review.plain import Data, Writer
from backspan.core.review.told import (
    groups,
    is_told,
    tables,
)
from backspan.core.review.topics import worst
from backspan.core.version import PROGRAM
from backspan.core.words import (
    ENGLISH,
    Language,
    say_check,
    say_input,
    say_margin,
    say_margins,
    say_stated,
    settled,
)
from backspan.core.words.plates import PLATED, as_written
from backspan.core.worked.table import FormulaDescription, describe_all


@cache
def formula_descriptions() -> Mapping[str, FormulaDescription]:
    """Every formula as it is printed, by name: what the functions below want as `formulas`."""
    return MappingProxyType(dict(describe_all(FORMULAS, FORMULA_TABLE)))


def reviews_data(
    reviews: Sequence[Review], *, formulas: Mapping[str, FormulaDescription]
) -> dict[str, Any]:
    """Several drops in one document: the worst answer first, then each review."""
    return {
        "format": FORMAT,
        "program": PROGRAM,
        "verdict": str(worst([review.verdict for review in reviews])),
        "reviews": [review_data(review, formulas=formulas) for review in reviews],
    }


def review_data(
    review: Review,
    *,
    formulas: Mapping[str, FormulaDescription],
    language: Language = ENGLISH,
    front: Data | None = None,
) -> dict[str, Any]:
    """One review; every number is in SI beside its text in the review's own style of units.

    `front` is its `front_data` in that language, where it was made already.
    """
    writer = Writer(review.units, formulas, language)
    taken = settled(review)
    findings = [
        _finding(writer, finding, taken_over=at in taken)
        for at, finding in enumerate(review.findings)
    ]
    not_applicable = [_not_applicable(writer, one) for one in review.not_applicable]
    comparison = [comparison_data(writer, row) for row in review.comparison]
    return {
        **(front_data(review, language) if front is None else front),
        "topics": [_topic(writer, one) for one in review.topics],
        "findings": findings,
        "not_applicable": not_applicable,
        "comparison": comparison,
        "told": {
            "findings": groups(findings),
            "not_applicable": groups(not_applicable),
            "comparison": tables(comparison),
        },
        "envelopes": [_envelope(writer, envelope) for envelope in review.envelopes],
        "reactions": [_reactions(writer, one) for one in review.reactions],
    }


def report_text(data: Mapping[str, Any]) -> str:
    """`data` as indented JSON with its keys in the order they are documented.

    Raises ValueError for a number that is not finite.
    """
    return json.dumps(data, indent=1, ensure_ascii=False, allow_nan=False) + "\n"


def reviews_text(verdict: Verdict, reviews: Sequence[str]) -> str:
    """The text of `reviews_data`, from the `report_text` of each review, made one at a time."""
    head = report_text({"format": FORMAT, "program": PROGRAM, "verdict": str(verdict)})
    each = ",\n".join("  " + one.rstrip("\n").replace("\n", "\n  ") for one in reviews)
    body = f"[\n{each}\n ]" if reviews else "[]"
    return f'{head.removesuffix(chr(10) + "}" + chr(10))},\n "reviews": {body}\n}}\n'


def comparison_data(writer: Writer, row: ComparisonRow) -> Data:
    """One rule applied to a suspension point as it stands."""
    return {
        "subject": row.subject,
        "rule": writer.rule(row.rule),
        "in_basis": row.in_basis,
        "load": writer.amount(row.load),
        "required": writer.amount(row.required),
        "pieces": writer.count(row.pieces),
        "enough": row.enough,
        "reason": None if row.reason is None else writer.message(row.reason),
    }


def margin_data(writer: Writer, margin: Margin) -> Data:
    """What is left, or, where `beyond` is true, what is short."""
    return {
        "id": margin.id,
        "value": writer.value(margin.value),
        "beyond": margin.beyond,
        "text": say_margin(margin, writer.style, language=writer.language),
    }


def _topic(writer: Writer, one: TopicAnswer) -> Data:
    told = None if one.taken_over is None else writer.message(one.taken_over)
    return {
        "topic": str(one.topic),
        "name": writer.language.word(one.topic),
        "verdict": str(one.verdict),
        "who": list(one.who),
        "findings": list(one.findings),
        "not_judged": one.not_judged,
        "taken_over": told,
        "notes": [writer.message(note) for note in one.notes],
    }


def _finding(writer: Writer, finding: Finding, *, taken_over: bool) -> Data:
    # What is short says what to do; what is left beside an open question needs one number.
    in_short = finding.margins if finding.verdict is Verdict.FAIL else finding.margins[:1]
    return {
        "check": finding.check,
        "title": say_check(finding.check, language=writer.language),
        "subject": finding.subject,
        "question": finding.question,
        "place": list(finding.place),
        "verdict": str(finding.verdict),
        "taken_over": taken_over,
        "message": writer.message(finding.message),
        "demand": writer.amount(finding.demand, finding.capacity),
        "capacity": writer.amount(finding.capacity, finding.demand),
        "utilisation": writer.share(finding.utilisation),
        "governing": finding.governing,
        "rules": [writer.rule(rule) for rule in finding.rules],
        "inputs": [_input(writer, one, finding) for one in finding.inputs],
        "steps": [writer.step(step) for step in finding.steps],
        "margins": [margin_data(writer, margin) for margin in finding.margins],
        "margins_text": say_margins(finding.margins, writer.style, language=writer.language),
        "margins_in_short": say_margins(in_short, writer.style, language=writer.language),
        "notes": [writer.message(note) for note in finding.notes],
        "needs": [writer.need(need) for need in finding.needs],
    }


def _input(writer: Writer, one: InputUsed, finding: Finding) -> Data:
    def said(value: MessageValue) -> str:
        return say_stated(one.name, value, writer.style, language=writer.language)

    text, used = said(one.stated), said(one.used)
    used_text = "" if used == text else used
    if isinstance(one.stated, Amount) and one.stated.dimension in PLATED:
        text = as_written(one.written, one.stated, writer.style)
    if one.tolerance is not None:
        phrase = "with-usual-tolerance" if one.usual else "with-tolerance"
        text = writer.language.phrase(phrase, value=text, tolerance=said(one.tolerance))
    return {
        "name": one.name,
        "title": say_input(one.name, language=writer.language),
        "stated": writer.value(one.stated),
        "used": writer.value(one.used),
        "tolerance": None if one.tolerance is None else writer.value(one.tolerance),
        "usual_tolerance": one.usual,
        "text": text,
        "used_text": used_text,
        "evidence": None if one.evidence is None else writer.language.word(one.evidence),
        "by": one.by,
        "at": one.at,
        "document": one.document,
        "checked_by": one.checked_by,
        "place": list(one.place),
        "told": is_told(one, finding),
    }


def _not_applicable(writer: Writer, one: DoesNotApply) -> Data:
    return {
        "check": one.check,
        "title": say_check(one.check, language=writer.language),
        "subject": one.subject,
        "place": list(one.place),
        "reason": writer.message(one.reason),
    }


def _reactions(writer: Writer, one: Reactions) -> Data:
    """What a beam presses on the roof; all its forces in one unit."""
    return {
        "subject": one.subject,
        "kind": one.kind,
        "kind_text": None if one.kind is None else writer.language.word(one.kind),
        "rated_load": writer.amount(one.rated_load),
        "front": _pressed(writer, one.front),
        "rear": _pressed(writer, one.rear),
    }


def _pressed(writer: Writer, one: Pressed) -> Data:
    plate = (one.plate_length, one.plate_width)
    return {
        "at": None if one.at is None else [writer.amount(each, *one.at) for each in one.at],
        "idle": writer.amount(one.idle),
        "rated": writer.amount(one.rated),
        "imposed": [
            {"rule": writer.rule(each.rule), "load": writer.amount(each.load)}
            for each in one.imposed
        ],
        "most": writer.amount(one.most),
        "plate_length": writer.amount(one.plate_length, *plate),
        "plate_width": writer.amount(one.plate_width, *plate),
        "surface_strength": writer.amount(one.surface_strength),
        "pad": None if one.pad is None else [writer.amount(each, *one.pad) for each in one.pad],
    }


def _envelope(writer: Writer, envelope: Envelope) -> Data:
    return {
        "subject": envelope.subject,
        "rule": writer.rule(envelope.rule),
        "pieces": writer.count(envelope.pieces),
        "counterweight": writer.amount(envelope.counterweight),
        "points": [
            {
                "backspan": writer.amount(point.backspan),
                "most_reach": writer.amount(point.most_reach),
            }
            for point in envelope.points
        ],
        "backspan_now": writer.amount(envelope.backspan_now),
        "reach_now": writer.amount(envelope.reach_now),
    }
