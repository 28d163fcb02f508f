"""The demo site, reviewed, with a stand-in for its drawings: what the papers are tested on."""

from __future__ import annotations

import datetime
from collections.abc import Sequence
from functools import cache
from pathlib import Path

from backspan.core.findings import Review
from backspan.core.model.project import Project
from backspan.core.review import review
from backspan.core.review.plain import Data
from backspan.core.review.report import formula_descriptions, review_data
from backspan.exchange.files import load, load_rule_library
from backspan.papers import Drawings, PackageContent, package_content

ROOT = Path(__file__).resolve().parents[3]
_FORMULAS = formula_descriptions()
ON = datetime.date(2026, 11, 25)
PICTURE = (
    '<svg xmlns="http://www.w3.org/2000/svg" width="420mm" height="297mm" viewBox="0 0 420 297">'
    '<rect width="420" height="297" fill="none" stroke="black"/></svg>'
)


@cache
def demo() -> Project:
    """The demo site."""
    return load(ROOT / "examples" / "demo" / "site.yaml")


def reviews(project: Project, drops: Sequence[str]) -> list[Review]:
    """The reviews of some drops."""
    library = load_rule_library()
    return [review(project, drop, library, on=ON) for drop in drops]


def documents(project: Project, drops: Sequence[str]) -> list[Data]:
    """The same as data."""
    return [review_data(one, formulas=_FORMULAS) for one in reviews(project, drops)]


def content(project: Project, drops: Sequence[str]) -> PackageContent:
    """The package of some drops, each with a picture in place of its drawings."""
    drawings = Drawings(
        plans=(PICTURE,),
        sections=dict.fromkeys(drops, PICTURE),
        envelopes=dict.fromkeys(drops, (PICTURE,)),
    )
    return package_content(project, documents(project, drops), drawings)
