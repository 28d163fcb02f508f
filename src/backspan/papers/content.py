"""What the papers say: the package that stands before all drops, and each drop's own. Pure."""

from __future__ import annotations

import datetime
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from backspan.core.findings import Verdict
from backspan.core.model.project import Project
from backspan.core.quantities import Style
from backspan.core.review.front import cited
from backspan.core.review.plain import Data
from backspan.core.review.told import told
from backspan.core.words import SIGNS, english, say_verdict
from backspan.papers.cover_part import cover_part
from backspan.papers.pictures import Pictures
from backspan.papers.points_part import points_part
from backspan.papers.wording import NOT_STATED, long_date


@dataclass(frozen=True, slots=True)
class PaperContent:
    """Plain data for a template, and the drawings it shows by file name."""

    template: str
    data: dict[str, Any]
    drawings: dict[str, str]


def package_content(
    project: Project, fronts: Sequence[Data], plans: Sequence[str], papers: Mapping[str, str]
) -> PaperContent:
    """What stands before the papers of the drops: all answers, sources, and roof plans (SVG).

    `fronts` are the `front_data` of the reviews, `papers` the name of each drop's own paper.
    Raises PaperError for a drawing that does not state its size.
    """
    pictures = Pictures()
    data = {
        **_sheet(project),
        "cover": cover_part(project, fronts),
        "summary": [{**_summary_row(one), "paper": papers.get(one["drop"], "")} for one in fronts],
        "sources": [],
        "plans": [pictures.add(plan, title="Roof plan") for plan in plans],
    }
    return PaperContent("package.typ", data, pictures.files)


def drop_content(
    project: Project, review: Data, section: str | None = None, envelopes: Sequence[str] = ()
) -> PaperContent:
    """The paper of one drop, from the data of its review, its section and envelopes as SVG text.

    Raises PaperError for a drawing that does not state its size.
    """
    pictures = Pictures()
    part = _drop_part(project, review)
    part["envelopes"] = [
        pictures.add(one, title=f"Operating envelope, drop {review['drop']}") for one in envelopes
    ]
    part["sections"] = [
        pictures.add(one, title=f"Section of drop {review['drop']}")
        for one in (section,)
        if one is not None
    ]
    data = {
        **_sheet(project),
        "drop": part,
        "sources": cited(review["findings"]),
        "date": long_date(datetime.date.fromisoformat(review["on"])),
        "program": review["program"],
        "cautions": review["cautions"],
    }
    return PaperContent("drop_paper.typ", data, pictures.files)


def _sheet(project: Project) -> dict[str, Any]:
    """What every page says, and its size."""
    by = next((one for one in project.people if one.id == project.prepared_by), None)
    return {
        "paper": "a4" if project.units is Style.METRIC else "us-letter",
        "site": project.site.name,
        "invented": project.site.invented or "",
        "prepared_by": f"{by.name}, {by.role}" if by else project.prepared_by or NOT_STATED,
        "caution": english.ONE_LINE_CAUTION,
    }


def _summary_row(front: Data) -> Data:
    return {
        "drop": front["drop"],
        "answer": say_verdict(Verdict(front["verdict"])),
        "counted": front["answer"].removeprefix(front["verdict"]).removeprefix(", "),
        "counterweight": say_verdict(Verdict(front["counterweight"])),
        "why_open": front["why_open"],
        "governs": front["governs"],
        "strength": front["strength"],
        "margin": front["margin"],
        "configuration": front["configuration"],
    }


def _drop_part(project: Project, review: Data) -> dict[str, Any]:
    drop = review["drop"]
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
