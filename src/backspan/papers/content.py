"""What the calculation package says: cover, summary, one part for each drop, drawings. Pure."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from backspan.core.findings import Verdict
from backspan.core.model.project import Project
from backspan.core.quantities import Style
from backspan.core.review.plain import Data
from backspan.core.review.told import told
from backspan.core.words import SIGNS, english, say_verdict
from backspan.papers.cover_part import cover_part
from backspan.papers.pictures import Pictures
from backspan.papers.points_part import points_part
from backspan.papers.sources_part import sources_part
from backspan.papers.wording import NOT_STATED


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
    project: Project, reviews: Sequence[Data], drawings: Drawings
) -> PackageContent:
    """The package of some drops of a project, laid out from the data of their reviews.

    Raises PaperError for a drawing that does not state its size.
    """
    pictures = Pictures()
    data = {
        "paper": "a4" if project.units is Style.METRIC else "us-letter",
        "cover": cover_part(project, reviews),
        "summary": [_summary_row(review) for review in reviews],
        "drops": [_drop_part(project, review, drawings, pictures) for review in reviews],
        "sources": sources_part(reviews),
        "plans": [pictures.add(plan, title="Roof plan") for plan in drawings.plans],
        "caution": english.ONE_LINE_CAUTION,
    }
    return PackageContent(data, pictures.files)


def _summary_row(review: Data) -> Data:
    governing = review["governing"]
    return {
        "drop": review["drop"],
        "answer": say_verdict(Verdict(review["verdict"])),
        "counted": review["answer"].removeprefix(review["verdict"]).removeprefix(", "),
        "counterweight": say_verdict(Verdict(review["counterweight"])),
        "why_open": review["why_open"],
        "finding": None if governing is None else review["findings"][governing],
        "margin": review["margin"],
        "configuration": review["configuration"],
    }


def _drop_part(project: Project, review: Data, drawings: Drawings, pictures: Pictures) -> Data:
    drop = review["drop"]
    section = (drawings.sections or {}).get(drop)
    return {
        **_summary_row(review),
        "name": next((one.name for one in project.drops if one.id == drop), None) or "",
        "points": points_part(project, drop, Style(review["units"])),
        "findings": [
            _finding(project, finding, subjects, number)
            for number, (subjects, (finding,)) in enumerate(told(review, "findings"), 1)
        ],
        "topics": [_topic(one) for one in review["topics"]],
        "not_applicable": [
            {**one, "subject": subjects} for subjects, (one,) in told(review, "not_applicable")
        ],
        "comparison": [
            {"subjects": subjects, "rows": rows} for subjects, rows in told(review, "comparison")
        ],
        "envelopes": [
            pictures.add(one, title=f"Operating envelope, drop {drop}")
            for one in (drawings.envelopes or {}).get(drop, ())
        ],
        "sections": []
        if section is None
        else [pictures.add(section, title=f"Section of drop {drop}")],
    }


def _topic(one: Data) -> Data:
    """A topic with its answer, and why it is that."""
    told = [] if one["taken_over"] is None else [one["taken_over"]["text"]]
    told += [note["text"] for note in one["notes"]]
    if one["not_judged"]:
        told.append(f"Not judged by this version: {' or '.join(one['who'])}, in writing.")
    return {
        "topic": one["topic"],
        "answer": f"{SIGNS[Verdict.PASS]} taken over"
        if one["taken_over"]
        else say_verdict(Verdict(one["verdict"])),
        "told": " ".join(told),
    }


def _finding(project: Project, finding: Data, subjects: str, number: int) -> Data:
    """A finding with its number in the part, and people by their names."""
    names = {one.id: one.name for one in project.people}
    return {
        **finding,
        "number": str(number),
        "subject": subjects,
        "answer": f"{SIGNS[Verdict.PASS]} taken over"
        if finding["taken_over"]
        else say_verdict(Verdict(finding["verdict"])),
        "inputs": [
            {
                **one,
                "evidence": one["evidence"] or NOT_STATED,
                "by": names.get(one["by"], one["by"]),
                "checked_by": names.get(one["checked_by"], one["checked_by"]),
            }
            for one in finding["inputs"]
            if one["told"]
        ],
    }
