"""Run every check on a drop and roll the findings up to one answer."""

from __future__ import annotations

import datetime
from collections.abc import Collection, Iterator, Sequence
from dataclasses import replace
from typing import Any

from backspan.core.checks import CHECKS
from backspan.core.findings import (
    DoesNotApply,
    Finding,
    FindingKey,
    Margin,
    Review,
    Verdict,
)
from backspan.core.model.basis import RuleChoice
from backspan.core.model.project import Project
from backspan.core.review.basis import PRACTICE, basis_lines, rules_of, selected_rules
from backspan.core.review.comparison import compare
from backspan.core.review.dates import plain_day, refuse_days_ahead
from backspan.core.review.envelope import envelopes
from backspan.core.review.reactions import reactions
from backspan.core.review.topics import topic_answers, worst
from backspan.core.rules.selected import RuleLibrary
from backspan.core.sheet.case import AbsentError, Case
from backspan.core.sheet.check import Answer
from backspan.core.sheet.kept import Kept
from backspan.core.version import PROGRAM
from backspan.core.wire import configuration_code
from backspan.core.words import settled

#: The format number of a review this program writes.
FORMAT = 1


def case_of(
    project: Project,
    drop: str,
    library: RuleLibrary,
    *,
    on: datetime.date,
    basis: Sequence[RuleChoice] | None = None,
    of_project: dict[Any, Any] | None = None,
    kept: Kept | None = None,
) -> Case:
    """The case of one drop; AbsentError names the drops there are, RuleError a bad basis.

    `kept` has answers of an earlier state of the site, or of the site with another value tried.
    """
    found = next((one for one in project.drops if one.id == drop), None)
    if found is None:
        names = ", ".join(one.id for one in project.drops) or "none"
        raise AbsentError(f"the project has no drop {drop!r}; drops: {names}")
    known, kept = {} if of_project is None else of_project, kept or Kept()
    practice = selected_rules(project, PRACTICE, library)
    rules = rules_of(project, found, library, basis)
    return Case(project, found, rules, practice, on, known, kept)


def answers_of(case: Case) -> tuple[Answer, ...]:
    """Every registered check's answers for a case, in the order of the register."""
    return tuple(answer for check in CHECKS for answer in check.judge(case))


def with_margins(case: Case, findings: Sequence[Finding]) -> tuple[Finding, ...]:
    """The findings with what is left of each, sought for the checks that gave them."""
    checks = {one.check for one in findings}
    left: dict[FindingKey, tuple[Margin, ...]] = {}
    for check in CHECKS:
        if check.margins is not None and check.id in checks:
            left |= check.margins(case)
    return tuple(replace(one, margins=left.get(one.key, ())) for one in findings)


def roll_up(findings: Sequence[Finding]) -> Verdict:
    """What some findings come to: the worst of them; no finding at all is `missing`."""
    return worst([finding.verdict for finding in findings])


def governing_of(findings: Sequence[Finding], but: Collection[int] = ()) -> int | None:
    """Index of the finding that governs: the worst answer, then the highest share of strength.

    Those at `but`, which a person took over, are none of them.
    """
    verdict = roll_up([one for index, one in enumerate(findings) if index not in but])
    candidates = [
        (-(finding.utilisation or 0.0) if finding.strength else 0.0, index)
        for index, finding in enumerate(findings)
        if finding.verdict is verdict and index not in but
    ]
    return min(candidates)[1] if candidates else None


def review_findings(case: Case) -> Review:
    """The findings of a drop and every topic's answer, without margins, comparison and envelope."""
    answers, code = answers_of(case), configuration_code(case.project, case.drop)
    findings = tuple(one for one in answers if isinstance(one, Finding))
    topics = topic_answers(case, findings, code)
    made = Review(
        format=FORMAT,
        program=PROGRAM,
        site=case.project.site.name,
        drop=case.drop.id,
        configuration=code,
        on=case.on,
        units=case.project.units,
        verdict=worst([one.verdict for one in topics]),
        basis=basis_lines(case),
        findings=findings,
        not_applicable=tuple(one for one in answers if isinstance(one, DoesNotApply)),
        governing=None,
        topics=topics,
        reactions=reactions(case),
    )
    return replace(made, governing=governing_of(findings, settled(made)))


def review(
    project: Project,
    drop: str,
    library: RuleLibrary,
    *,
    on: datetime.date,
    basis: Sequence[RuleChoice] | None = None,
    compared: bool = True,
    kept: Kept | None = None,
) -> Review:
    """The whole review of a drop: findings, margins and, if `compared`, other rules and envelopes.

    `basis` replaces the project's own rule sets, for a what-if; `kept` as in `case_of`. Raises
    AbsentError for a drop the project does not have, RuleError for a rule set that is not at hand,
    DatedAheadError for a statement of a later day, NoDayError where `on` is no day or a moment of
    one.
    """
    (only,) = reviews(project, (drop,), library, on=on, basis=basis, compared=compared, kept=kept)
    return only


def reviews(
    project: Project,
    drops: Sequence[str],
    library: RuleLibrary,
    *,
    on: datetime.date,
    basis: Sequence[RuleChoice] | None = None,
    compared: bool = True,
    in_short: bool = False,
    kept: Kept | None = None,
) -> Iterator[Review]:
    """The reviews of some drops, one at a time, as `review` gives each and with its errors.

    `in_short` leaves out the margins that a list of answers and reasons does not tell.
    """
    refuse_days_ahead(project, plain_day(on))
    known: dict[Any, Any] = {}
    for drop in drops:
        case = case_of(project, drop, library, on=on, basis=basis, of_project=known, kept=kept)
        yield _reviewed(case, library, compared=compared, in_short=in_short)


def _reviewed(case: Case, library: RuleLibrary, *, compared: bool, in_short: bool) -> Review:
    found = review_findings(case)
    # A refusal is told with what mends it, a pass with what is left; what is open with neither.
    if not in_short or found.verdict in {Verdict.PASS, Verdict.FAIL}:
        found = replace(found, findings=with_margins(case, found.findings))
    if not compared:
        return found
    return replace(found, comparison=compare(case, library), envelopes=envelopes(case))
