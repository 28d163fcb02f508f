"""Values as a drawing prints them: in both unit systems, with what stands behind them."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise

from backspan.core.findings import Finding, Review, Verdict
from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.quantities import (
    FORCE,
    LENGTH,
    MASS,
    PRESSURE,
    Amount,
    Dimension,
    Style,
    display,
    display_round,
)
from backspan.core.words import ENGLISH, Language, drop_answer, settled

METRES_FROM = 10.0
INCH = 0.0254
SIXTEENTH = INCH / 16

WORST_FIRST = (Verdict.FAIL, Verdict.MISSING, Verdict.REFER, Verdict.PASS)


@dataclass(frozen=True, slots=True)
class Known:
    """A length as a drawing uses it: in SI, with what makes it believable.

    `worked_out` is True where a finding gave it and nobody measured it.
    """

    value: float
    evidence: Evidence | None = None
    tolerance: float | None = None
    worked_out: bool = False


def known(stated: StatedValue[float] | None) -> Known | None:
    """A stated length; None where it is not stated."""
    if stated is None:
        return None
    return Known(stated.value, stated.evidence, stated.tolerance)


def findings_on(review: Review | None, point: str) -> tuple[Finding, ...]:
    """The findings on one suspension point, whichever part of it they look at."""
    if review is None:
        return ()
    taken = settled(review)
    return tuple(
        finding
        for at, finding in enumerate(review.findings)
        if at not in taken and _on_point(finding.place, point)
    )


def _on_point(place: tuple[str | int, ...], point: str) -> bool:
    return ("suspension_points", point) in pairwise(place)


def worked_out(findings: tuple[Finding, ...], figure: str) -> Known | None:
    """A length that a finding worked out on the way to its answer; None where none did."""
    for finding in findings:
        for name, amount in finding.figures:
            if name == figure and amount.dimension == LENGTH:
                return Known(amount.value, worked_out=True)
    return None


def answer_of(findings: tuple[Finding, ...]) -> Verdict | None:
    """The worst answer of the findings; None where there is none."""
    found = {finding.verdict for finding in findings}
    return next((verdict for verdict in WORST_FIRST if verdict in found), None)


def no_answer(review: Review | None) -> str:
    """Why there is no answer: which text of drawings says it."""
    return "not_reviewed" if review is None else "no_finding"


def answer_text(review: Review | None, language: Language) -> str:
    """The answer of a drop in words, or that there is no review of it."""
    if review is None:
        return language.drawn("not_reviewed")
    return drop_answer(review, language=language)


def length_text(value: float, style: Style) -> str:
    """A length in both systems, the project's own first: `5'-6" [1,676 mm]`."""
    return f"{own_length(value, style)} [{_other_length(value, style)}]"


def known_length_text(value: Known, style: Style) -> str:
    """A known length in both systems; one that was worked out is rounded down to a tape's step."""
    if not value.worked_out:
        return length_text(value.value, style)
    own = display_round(Amount(value.value, LENGTH), style, direction="down")
    return f"{own} [{_other_length(value.value, style)}]"


def own_length(value: float, style: Style) -> str:
    """A length in the project's own system, not rounded more than the program rounds anywhere."""
    if style is Style.METRIC and abs(value) < METRES_FROM:
        return display(value, LENGTH, style, unit="mm")
    return display(value, LENGTH, style)


def _other_length(value: float, style: Style) -> str:
    # The second figure is for reading only, so it is rounded to what a tape shows.
    if style is Style.METRIC:
        return display(round(value / SIXTEENTH) * SIXTEENTH, LENGTH, Style.US)
    rounded = round(value, 3)
    if abs(value) < METRES_FROM:
        return display(rounded, LENGTH, Style.METRIC, unit="mm")
    return display(round(value, 2), LENGTH, Style.METRIC)


def force_text(value: float, style: Style) -> str:
    """What a plate rates, in both systems, the project's own first: metric plates are in kg."""
    if style is Style.METRIC:
        own = display(value, FORCE, style, unit="kg")
        return f"{own} [{display(value, FORCE, Style.US, digits=3)}]"
    return _both(value, FORCE, style)


def mass_text(value: float, style: Style) -> str:
    """A mass in both systems, the project's own first."""
    return _both(value, MASS, style)


def _both(value: float, dimension: Dimension, style: Style) -> str:
    other = Style.US if style is Style.METRIC else Style.METRIC
    return f"{display(value, dimension, style)} [{display(value, dimension, other, digits=3)}]"


def evidence_text(value: Known, style: Style, language: Language = ENGLISH) -> str:
    """What stands behind a value: "measured ± 1/4 in", "told", "worked out, not measured"."""
    if value.worked_out:
        return language.drawn("worked_out")
    if value.evidence is None:
        words = language.drawn("evidence_not_stated")
    else:
        words = language.word(value.evidence)
    if value.evidence in {Evidence.TOLD, Evidence.ASSUMED}:
        words = language.drawn("evidence_not_measured", evidence=words)
    if value.tolerance:
        words = f"{words} ±{own_length(value.tolerance, style)}"
    return words


def pressure_text(value: float, style: Style) -> str:
    """What a surface carries, in both systems, the project's own first."""
    return _both(value, PRESSURE, style)


def evidence_letter(evidence: Evidence | None, language: Language) -> str:
    """The first letter of how a value came to be known; a dash where nobody said how."""
    return "-" if evidence is None else language.word(evidence)[0].upper()
