"""What the papers say: the front of the package, each drop's two pages, the appendix. Pure."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

from backspan.core.model.project import Project
from backspan.core.review.asked import Asked
from backspan.core.review.front import cited
from backspan.core.review.plain import Data
from backspan.core.review.told import told, wanted_rows
from backspan.core.words import ENGLISH, Language
from backspan.papers.drop_part import drop_part, findings_of
from backspan.papers.facts_part import facts_part, sheet_part
from backspan.papers.front_part import front_part
from backspan.papers.pictures import Pictures
from backspan.papers.reactions_part import reactions_part
from backspan.papers.stamp_part import Stamp, stamp_part


@dataclass(frozen=True, slots=True)
class PaperContent:
    """Plain data for a template, and the drawings and photographs it shows by file name."""

    template: str
    data: dict[str, Any]
    drawings: dict[str, str]
    photographs: dict[str, bytes] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class DropDrawings:
    """The drawings of a drop as SVG texts; the sheets are shown in the appendix."""

    section: str | None = None
    plan: str | None = None
    sheet: str | None = None
    envelopes: tuple[str, ...] = ()
    details: str | None = None


_NOTHING_MORE = Asked()


def package_content(
    project: Project,
    fronts: Sequence[Data],
    plans: Sequence[str],
    papers: Mapping[str, str],
    language: Language = ENGLISH,
) -> PaperContent:
    """What stands before the papers of the drops: every answer with its reason, and roof plans.

    `fronts` are the `front_data` of the reviews in that language, `papers` the name of each drop's
    own paper, `plans` SVG texts. Raises PaperError for a drawing that does not state its size.
    """
    pictures = Pictures()
    data = {
        **sheet_part(project, language),
        "front": front_part(project, fronts, papers, language),
        "plans": [pictures.add(plan, title=language.paper["roof_plan"]) for plan in plans],
    }
    return PaperContent("package.typ", data, pictures.files)


def reactions_content(
    project: Project,
    drops: Sequence[Data],
    language: Language = ENGLISH,
    *,
    plans: Sequence[str] = (),
) -> PaperContent:
    """The sheet for the structural engineer: what every beam reviewed presses on the roof.

    `drops` hold of each review's data its head and its reactions; `plans` are SVG texts, a page of
    its own each. Raises PaperError for a drawing that does not state its size.
    """
    pictures = Pictures()
    data = {
        **sheet_part(project, language),
        "facts": facts_part(project, drops[0] if drops else None, language),
        "reactions": reactions_part(project, drops, language),
        "plans": [pictures.add(plan, title=language.paper["roof_plan"]) for plan in plans],
    }
    return PaperContent("reactions.typ", data, pictures.files)


def drop_content(
    project: Project,
    review: Data,
    drawings: DropDrawings,
    asked: Asked = _NOTHING_MORE,
    language: Language = ENGLISH,
    *,
    stamp: Stamp | None = None,
) -> PaperContent:
    """The paper of one drop from the data of its review in that language.

    Beside its two pages stands in an appendix what is `asked` for. With a `stamp` it says where
    the record stood that it was made of.

    Raises PaperError for a drawing that does not state its size.
    """
    pictures = Pictures()

    def shown(svg: str | None, title: str) -> list[dict[str, Any]]:
        name = f"{language.paper[title]} {review['drop']}"
        return [] if svg is None else [pictures.add(svg, title=name)]

    part = drop_part(project, review, language)
    part["section"] = shown(drawings.section, "section")
    part["plan"] = shown(drawings.plan, "plan")
    more = _appendix(project, review, asked, language)
    if asked.worked:
        more["sheets"] = [*shown(drawings.sheet, "section"), *shown(drawings.details, "details")]
    if asked.envelope:
        more["envelopes"] = [one for svg in drawings.envelopes for one in shown(svg, "envelope")]
    data = {**sheet_part(project, language), "drop": part, "appendix": more}
    if stamp is not None:
        data["stamp"] = stamp_part(stamp, language)
    return PaperContent("drop.typ", data, pictures.files)


def _appendix(project: Project, review: Data, asked: Asked, language: Language) -> dict[str, Any]:
    found: dict[str, Any] = {
        "findings": [],
        "not_applicable": [],
        "comparison": [],
        "sources": [],
        "envelopes": [],
        "sheets": [],
    }
    if asked.worked:
        found["findings"] = findings_of(project, review, language)
        found["not_applicable"] = [
            {**one, "subject": subjects} for subjects, (one,) in told(review, "not_applicable")
        ]
        found["sources"] = cited(review["findings"])
    if asked.compared:
        found["comparison"] = [
            {
                "subjects": subjects,
                "rows": [
                    {**row, "load": language.word(row["rule"]["content"].get("load", ""))}
                    for row in wanted_rows(rows, asked.against)
                ],
            }
            for subjects, rows in told(review, "comparison")
        ]
    return found
