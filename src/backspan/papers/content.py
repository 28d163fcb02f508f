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
from backspan.papers.cover_part import cover_part
from backspan.papers.finding_part import FindingWriter
from backspan.papers.pictures import Pictures
from backspan.papers.sources_part import sources_part
from backspan.papers.wording import percent


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
    """The package of some drops of a project; every number in it stands in a review.

    Raises PaperError for a drawing that does not state its size.
    """
    pictures = Pictures()
    data = {
        "paper": "a4" if project.units is Style.METRIC else "us-letter",
        "cover": cover_part(project, reviews),
        "summary": [_summary_row(review) for review in reviews],
        "drops": [_drop_part(project, one, drawings, pictures, formulas) for one in reviews],
        "sources": sources_part(reviews),
        "plans": [pictures.add(plan, title="Roof plan") for plan in drawings.plans],
        "caution": english.ONE_LINE_CAUTION,
    }
    return PackageContent(data, pictures.files)


def _summary_row(review: Review) -> dict[str, str]:
    finding = None if review.governing is None else review.findings[review.governing]
    return {
        "drop": review.drop,
        "answer": say_verdict(review.verdict),
        "finding": "No finding." if finding is None else say(finding.message, review.units),
        "check": "" if finding is None else say_check(finding.check),
        "subject": "" if finding is None else finding.subject,
        "utilisation": "" if finding is None else percent(finding.utilisation),
        "margin": _margin(review, finding),
        "configuration": review.configuration,
    }


def _margin(review: Review, finding: Finding | None) -> str:
    """The first margin of the governing finding; on a pass, else the tightest counterweight's."""
    found = [finding] if finding is not None and finding.margins else []
    if review.verdict is Verdict.PASS:
        found += sorted(
            (one for one in review.findings if one.margins),
            key=lambda one: -(one.utilisation or 0.0),
        )
    return say_margin(found[0].margins[0], review.units) if found else ""


def _drop_part(
    project: Project,
    review: Review,
    drawings: Drawings,
    pictures: Pictures,
    formulas: Mapping[str, FormulaDescription],
) -> dict[str, Any]:
    writer = FindingWriter(project, review, formulas)
    name = next((one.name for one in project.drops if one.id == review.drop), None)
    section = (drawings.sections or {}).get(review.drop)
    envelopes = (drawings.envelopes or {}).get(review.drop, ())
    return {
        **_summary_row(review),
        "name": name or "",
        "points": writer.points(),
        "findings": writer.findings(),
        "not_applicable": writer.not_applicable(),
        "comparison": comparison_part(review),
        "envelopes": [
            pictures.add(one, title=f"Operating envelope, drop {review.drop}") for one in envelopes
        ],
        "sections": []
        if section is None
        else [pictures.add(section, title=f"Section of drop {review.drop}")],
    }
