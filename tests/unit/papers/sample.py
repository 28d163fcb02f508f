"""The demo site, reviewed, with a stand-in for its drawings: what the papers are tested on."""

from __future__ import annotations

import datetime
from collections.abc import Sequence
from functools import cache
from pathlib import Path
from typing import Any

from backspan.core.findings import Review
from backspan.core.model.project import Project
from backspan.core.review import review
from backspan.core.review.asked import Asked
from backspan.core.review.front import front_data
from backspan.core.review.plain import Data
from backspan.core.review.report import formula_descriptions, review_data
from backspan.core.words import language_of
from backspan.exchange.files import load, load_rule_library
from backspan.papers import DropDrawings, PaperContent, drop_content, package_content

ROOT = Path(__file__).resolve().parents[3]
_FORMULAS = formula_descriptions()
ON = datetime.date(2026, 11, 25)
PICTURE = (
    '<svg xmlns="http://www.w3.org/2000/svg" width="420mm" height="297mm" viewBox="0 0 420 297">'
    '<rect width="420" height="297" fill="none" stroke="black"/></svg>'
)
SMALL = PICTURE.replace("420", "80").replace("297", "60")
NOTHING_MORE, EVERYTHING = Asked(), Asked(worked=True, compare=True, envelope=True)


@cache
def demo() -> Project:
    """The demo site."""
    return load(ROOT / "examples" / "demo" / "site.yaml")


def reviews(project: Project, drops: Sequence[str]) -> list[Review]:
    """The reviews of some drops."""
    library = load_rule_library()
    return [review(project, drop, library, on=ON) for drop in drops]


def documents(project: Project, drops: Sequence[str], code: str = "en") -> list[Data]:
    """The same as data in a language."""
    made = reviews(project, drops)
    return [review_data(one, formulas=_FORMULAS, language=language_of(code)) for one in made]


def package(project: Project, drops: Sequence[str], code: str = "en") -> PaperContent:
    """What stands before some drops, with a picture in place of its plan."""
    language = language_of(code)
    fronts = [front_data(one, language) for one in reviews(project, drops)]
    papers = {one: f"drop-{one}.pdf" for one in drops}
    return package_content(project, fronts, [PICTURE], papers, language)


def paper(
    project: Project, drop: str, asked: Asked = NOTHING_MORE, code: str = "en"
) -> PaperContent:
    """The paper of one drop, with a picture in place of each of its drawings."""
    (document,) = documents(project, [drop], code)
    drawings = DropDrawings(SMALL, SMALL, PICTURE, (PICTURE,), PICTURE)
    return drop_content(project, document, drawings, asked, language_of(code))


def part(project: Project, drop: str) -> dict[str, Any]:
    """What the two pages of one drop say."""
    found: dict[str, Any] = paper(project, drop).data["drop"]
    return found


def worked(project: Project, drop: str) -> dict[str, Any]:
    """What the appendix of one drop says where all is asked for."""
    found: dict[str, Any] = paper(project, drop, EVERYTHING).data["appendix"]
    return found
