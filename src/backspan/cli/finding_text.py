"""The findings of one drop as text for a terminal."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

from backspan.cli.citing import cited
from backspan.cli.comparing import comparison_text
from backspan.cli.screen import Screen
from backspan.core.findings import (
    WORST_FIRST,
    ComparisonRow,
    Finding,
    InputUsed,
    Need,
    Review,
    Verdict,
)
from backspan.core.quantities import Style
from backspan.core.words import per_cent, say, say_check, say_input, say_margins, shown
from backspan.core.worked.lines import worked_line
from backspan.core.worked.table import FormulaDescription

_INDENT, _HANGING = 2, 4


@dataclass(frozen=True, slots=True)
class Said:
    """One finding, or several that say the same of several subjects."""

    finding: Finding
    subjects: tuple[str, ...]
    needs: tuple[Need, ...]


def open_text(review: Review, screen: Screen) -> str:
    """What does not pass on one drop, and what would settle it."""
    findings = [one for one in review.findings if one.verdict is not Verdict.PASS]
    lines = [_title(review, screen)]
    for said in _merged(findings):
        lines += _finding(said, review.units, screen, every=False)
    return "\n".join(lines)


def drop_text(review: Review, formulas: Mapping[str, FormulaDescription], screen: Screen) -> str:
    """Every finding of one drop with its inputs and arithmetic, and the rules compared."""
    lines = [_title(review, screen)]
    for said in _merged(review.findings):
        lines += _finding(said, review.units, screen, every=True)
        lines += _inputs(said.finding.inputs, review.units, screen)
        for step in said.finding.steps:
            line = worked_line(step, formulas[step.formula], review.units).plain
            lines.append(screen.paragraph(line, indent=_HANGING, hanging=_HANGING + _INDENT))
        lines += [
            screen.paragraph(say(note, review.units), indent=_HANGING)
            for note in said.finding.notes
        ]
        lines.append("")
    lines += ["Does not apply:", *_not_applicable(review, screen)]
    for subjects, rows in _comparisons(review):
        lines += ["", f"Counterweight under every rule at hand, {subjects}:"]
        lines.append(comparison_text(rows, screen, review.units))
    return "\n".join(lines)


def _title(review: Review, screen: Screen) -> str:
    return f"{review.drop}  {screen.verdict(review.verdict)}  {review.configuration}"


def _merged(findings: Iterable[Finding]) -> tuple[Said, ...]:
    """Findings, worst first; those that say the same of two subjects are told once."""
    merged: dict[object, list[Finding]] = {}
    for finding in sorted(findings, key=lambda one: WORST_FIRST.index(one.verdict)):
        key = (finding.check, finding.verdict, finding.message, finding.steps, finding.rules)
        values = tuple((one.name, one.stated, one.used) for one in finding.inputs)
        merged.setdefault((key, values, finding.margins, finding.notes), []).append(finding)
    return tuple(
        Said(
            same[0],
            tuple(dict.fromkeys(one.subject for one in same)),
            tuple(dict.fromkeys(need for one in same for need in one.needs)),
        )
        for same in merged.values()
    )


def _finding(said: Said, style: Style, screen: Screen, *, every: bool) -> Iterator[str]:
    finding = said.finding
    used = "" if finding.utilisation is None else f", {per_cent(finding.utilisation)} used"
    subjects = ", ".join(said.subjects)
    head = f"{say_check(finding.check)}, {subjects}: {screen.verdict(finding.verdict)}{used}"
    yield screen.paragraph(head, indent=_INDENT, hanging=_HANGING)
    yield screen.paragraph(say(finding.message, style), indent=_HANGING)
    # What is short says what to do; what is left beside another open question needs one number.
    shown_margins = finding.margins if every or finding.verdict is Verdict.FAIL else ()
    margins = say_margins(shown_margins or finding.margins[:1], style)
    if margins:
        yield screen.paragraph(margins, indent=_HANGING)
    for rule in finding.rules[:1]:
        yield screen.paragraph(cited(rule, style), indent=_HANGING, hanging=_HANGING + _INDENT)
    for need in said.needs:
        text = f"Needed from the {str(need.who).removeprefix('the ')}: {say(need.what, style)}"
        yield screen.paragraph(text, indent=_HANGING, hanging=_HANGING + _INDENT)


def _inputs(inputs: Sequence[InputUsed], style: Style, screen: Screen) -> Iterator[str]:
    if inputs:
        told = "; ".join(_input(one, style) for one in inputs)
        yield screen.paragraph(f"With {told}", indent=_HANGING, hanging=_HANGING + _INDENT)


def _input(one: InputUsed, style: Style) -> str:
    text = f"{say_input(one.name)} {shown(one.stated, style)}"
    if one.tolerance is not None:
        usual = " as usual" if one.usual else ""
        text += f" +- {shown(one.tolerance, style)}{usual}, used at {shown(one.used, style)}"
    known = [str(one.evidence)] if one.evidence is not None else []
    known += [f"by {one.by}"] if one.by is not None else []
    known += [f"on {one.at}"] if one.at is not None else []
    return f"{text} ({' '.join(known)})" if known else text


def _not_applicable(review: Review, screen: Screen) -> Iterator[str]:
    merged: dict[tuple[str, str], list[str]] = {}
    for one in review.not_applicable:
        key = (say_check(one.check), say(one.reason, review.units))
        merged.setdefault(key, []).append(one.subject)
    for (check, reason), subjects in merged.items():
        names = ", ".join(dict.fromkeys(subjects))
        text = f"{check}, {names}: {reason}"
        yield screen.paragraph(text, indent=_INDENT, hanging=_HANGING)


def _comparisons(review: Review) -> Iterator[tuple[str, list[ComparisonRow]]]:
    """The comparison of each support; those that are the same are shown once."""
    by_subject: dict[str, list[ComparisonRow]] = {}
    for row in review.comparison:
        by_subject.setdefault(row.subject, []).append(row)
    merged: dict[str, tuple[list[str], list[ComparisonRow]]] = {}
    for subject, rows in by_subject.items():
        key = repr([replace(row, subject="") for row in rows])
        merged.setdefault(key, ([], rows))[0].append(subject)
    for subjects, rows in merged.values():
        yield ", ".join(subjects), rows
