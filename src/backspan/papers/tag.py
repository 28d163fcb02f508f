"""The tag at a drop's access: what the record says of it, who permitted it, what ends it."""

from __future__ import annotations

from dataclasses import dataclass

from backspan.core.findings import Verdict
from backspan.core.model.project import Project
from backspan.core.words import ENGLISH, SIGNS, Language
from backspan.papers.content import PaperContent
from backspan.papers.qr import qr_svg, qr_text
from backspan.papers.stamp_part import Stamp, stamped, when_part

QR_FILE = "code.svg"


@dataclass(frozen=True, slots=True, kw_only=True)
class Tag:
    """A permit in force and what stands beside it; `against` is why nobody is on all the same."""

    drop: str
    name: str
    permitted_at: str
    permitted_by: str
    role: str
    employer: str
    card: str
    answer: str
    riders: str
    restrictions: tuple[str, ...] = ()
    against: tuple[str, ...] = ()


def tag_content(
    project: Project, tag: Tag, stamp: Stamp, language: Language = ENGLISH
) -> PaperContent:
    """What a tag says; `stamp` has the codes of its drop alone."""
    words = language.paper
    says = words["restricted"] if tag.restrictions else words["permitted"]
    card = f"{words['card']} {tag.card}" if tag.card else ""
    by = ", ".join(one for one in (tag.permitted_by, tag.role, tag.employer, card) if one)
    text = qr_text(project.site.name, stamp)
    (codes,) = stamp.codes
    data = {
        **stamped(project, stamp, language),
        "tag": {
            "drop": tag.drop,
            "name": tag.name,
            "says": words["nobody_on"] if tag.against else says,
            "sign": SIGNS[Verdict.FAIL if tag.against else Verdict.PASS],
            "nobody": bool(tag.against),
            "told": words["nobody_told"] if tag.against else words["permitted_told"],
            "against": list(tag.against),
            "configuration": codes.configuration,
            "facts": [
                {"name": words["permitted_on"], "text": when_part(tag.permitted_at, language)},
                {"name": words["permitted_by"], "text": by},
                {"name": words["review_answered"], "text": tag.answer},
                {"name": words["most_riders"], "text": tag.riders or words["not_stated"]},
            ],
            "restrictions": list(tag.restrictions) or [words["no_restriction"]],
            "code": QR_FILE,
            "code_text": text,
        },
    }
    return PaperContent("tag.typ", data, {QR_FILE: qr_svg(text)})
