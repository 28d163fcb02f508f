"""What the calculation package says: cover, summary, one part for each drop, drawings. Pure."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from backspan.core.findings import Finding, Review, Verdict
from backspan.core.model.project import Project
from backspan.core.quantities import Style
from backspan.core.words import english, say, say_check, say_margin, say_verdict
from backspan.core.worked.table import FormulaDescription
from backspan.papers.comparison_part import comparison_part
from backspan.papers.finding_part import FindingWriter
from backspan.papers.wording import long_date, percent

ORDER = (Verdict.FAIL, Verdict.MISSING, Verdict.REFER, Verdict.PASS)


@dataclass(frozen=True, slots=True)
class Drawings:
    """Drawings as SVG text: the roof plans, each drop's section, its envelopes by subject."""

    plans: tuple[str, ...] = ()
    sections: Mapping[str, str] | None = None
    envelopes: Mapping[str, tuple[str, ...]] | None = None


@dataclass(frozen=True, slots=True)
class PackageContent:
    """Plain data for the template, and the drawings it shows by file name."""

    data: dict[str, Any]
    drawings: dict[str, str]


def package_content(
    project: Project,
    reviews: Sequence[Review],
    drawings: Drawings,
    *,
    formulas: Mapping[str, FormulaDescription],
) -> PackageContent:
    """The package of some drops of a project; every number in it stands in a review."""
    files: dict[str, str] = {}
    parts = [_drop_part(project, review, drawings, files, formulas) for review in reviews]
    plans = []
    for number, plan in enumerate(drawings.plans, 1):
        files[f"plan-{number}.svg"] = plan
        plans.append(f"plan-{number}.svg")
    data = {
        "paper": "a4" if project.units is Style.METRIC else "us-letter",
        "cover": _cover(project, reviews),
        "summary": [_summary_row(review) for review in reviews],
        "drops": parts,
        "plans": plans,
        "caution": english.ONE_LINE_CAUTION,
    }
    return PackageContent(data, files)


def _cover(project: Project, reviews: Sequence[Review]) -> dict[str, Any]:
    site = project.site
    people = {person.id: person for person in project.people}
    by = people.get(project.prepared_by or "")
    counts = [
        {"answer": say_verdict(verdict), "drops": ", ".join(of_verdict)}
        for verdict in ORDER
        if (of_verdict := [one.drop for one in reviews if one.verdict is verdict])
    ]
    return {
        "site": site.name,
        "place": site.place,
        "owner": site.owner or "",
        "number": project.number or "",
        "invented": site.invented or "",
        "prepared_by": "" if by is None else f"{by.name}, {by.role}",
        "employer": "" if by is None else by.employer or "",
        "date": long_date(reviews[0].on) if reviews else "",
        "program": reviews[0].program if reviews else "",
        "counts": counts,
        "basis": _basis(reviews),
        "checked": list(english.CHECKS.values()),
        "not_checked": list(english.NOT_CHECKED),
        "cautions": list(english.CAUTIONS),
        "answers": [
            {"answer": say_verdict(verdict), "means": english.VERDICTS[str(verdict)]}
            for verdict in (Verdict.PASS, Verdict.FAIL, Verdict.REFER, Verdict.MISSING)
        ],
        "marks": [{"mark": mark, "means": means} for mark, means in english.MARKS.items()],
    }


def _basis(reviews: Sequence[Review]) -> list[dict[str, str]]:
    rows: dict[tuple[str, str], dict[str, str]] = {}
    for review in reviews:
        for line in review.basis:
            row = rows.setdefault(
                (line.rule_set, line.edition),
                {
                    "topic": line.topic,
                    "rule_set": line.rule_set,
                    "edition": line.edition,
                    "title": line.title,
                    "readings": "; ".join(f"{key}: {name}" for key, name in line.readings),
                    "drops": "",
                },
            )
            if line.added_for_drop:
                row["drops"] = f"{row['drops']}, {review.drop}".lstrip(", ")
    return list(rows.values())


def _summary_row(review: Review) -> dict[str, str]:
    finding = _governing(review)
    return {
        "drop": review.drop,
        "answer": say_verdict(review.verdict),
        "finding": "" if finding is None else say(finding.message, review.units),
        "check": "" if finding is None else say_check(finding.check),
        "utilisation": "" if finding is None else percent(finding.utilisation),
        "margin": _margin(review, finding),
        "configuration": review.configuration,
    }


def _governing(review: Review) -> Finding | None:
    return None if review.governing is None else review.findings[review.governing]


def _margin(review: Review, finding: Finding | None) -> str:
    """The first margin of the governing finding, else the tightest counterweight's."""
    found = [finding] if finding is not None and finding.margins else []
    found += sorted(
        (one for one in review.findings if one.margins), key=lambda one: -(one.utilisation or 0.0)
    )
    return say_margin(found[0].margins[0], review.units) if found else ""


def _drop_part(
    project: Project,
    review: Review,
    drawings: Drawings,
    files: dict[str, str],
    formulas: Mapping[str, FormulaDescription],
) -> dict[str, Any]:
    writer = FindingWriter(project, review, formulas)
    name = next((one.name for one in project.drops if one.id == review.drop), None)
    section = (drawings.sections or {}).get(review.drop)
    if section is not None:
        files[f"section-{review.drop}.svg"] = section
    envelopes = []
    for number, picture in enumerate((drawings.envelopes or {}).get(review.drop, ()), 1):
        files[f"envelope-{review.drop}-{number}.svg"] = picture
        envelopes.append(f"envelope-{review.drop}-{number}.svg")
    return {
        **_summary_row(review),
        "name": name or "",
        "verdict": str(review.verdict),
        "points": writer.points(),
        "findings": writer.findings(),
        "not_applicable": writer.not_applicable(),
        "comparison": comparison_part(review),
        "section": "" if section is None else f"section-{review.drop}.svg",
        "envelopes": envelopes,
    }
