"""Write the reviews of projects as bytes; the same program on the server and in the browser.

It knows the core alone, so that it runs wherever the core does.
"""

from __future__ import annotations

import datetime
import json
from collections.abc import Mapping
from dataclasses import fields, is_dataclass
from pathlib import Path
from typing import Any

from backspan.core.findings import Review
from backspan.core.mechanics import FORMULAS
from backspan.core.model.project import Project
from backspan.core.quantities import Dimension
from backspan.core.review import review
from backspan.core.review.report import formula_descriptions, report_text, review_data
from backspan.core.rules.loader import load
from backspan.core.rules.selected import RuleLibrary
from backspan.core.wire import canonical, from_data, to_data
from backspan.core.worked.expression import SourceMissingError, from_source

ON = datetime.date(2026, 11, 25)


def read_library(folder: Path) -> RuleLibrary:
    """The rule sets in a folder, as they come with the program."""
    files = sorted(folder.glob("*/*.toml"), key=lambda file: (file.parent.name, file.name))
    return RuleLibrary(
        tuple(
            load(file.read_text(encoding="utf-8"), f"{file.parent.name}/{file.name}")
            for file in files
        )
    )


def read_projects(folder: Path) -> dict[str, Project]:
    """The projects in a folder, as they travel to a phone, by the names of their files."""
    return {
        file.stem: from_data(Project, json.loads(file.read_bytes()))
        for file in sorted(folder.glob("*.json"))
    }


def write_reviews(projects: Mapping[str, Project], library: RuleLibrary, answers: Path) -> None:
    """Write each project, and for each drop its report and every number of its review exactly."""
    formulas = formula_descriptions()
    for name, project in projects.items():
        folder = answers / name
        folder.mkdir(parents=True)
        (folder / "project.json").write_bytes(canonical(to_data(project)))
        for drop in project.drops:
            made = review(project, drop.id, library, on=ON)
            report = report_text(review_data(made, formulas=formulas))
            (folder / f"{drop.id}.report.json").write_bytes(report.encode())
            (folder / f"{drop.id}.exact.json").write_bytes(canonical(exact(made)))


def exact(record: Review) -> Any:
    """A review as plain data with every number in full, where a report rounds it."""
    return _plain(record)


def sources_at_hand() -> int:
    """How many formulas can be printed from their own source."""
    return sum(_has_source(name) for name in FORMULAS)


def _has_source(name: str) -> bool:
    try:
        from_source(FORMULAS[name].__wrapped__)
    except SourceMissingError:
        return False
    return True


def _plain(value: Any) -> Any:
    if isinstance(value, datetime.date):
        return value.isoformat()
    if isinstance(value, Dimension):
        return value.name
    if isinstance(value, tuple):
        return [_plain(item) for item in value]
    if isinstance(value, Mapping):
        return {name: _plain(item) for name, item in value.items()}
    if is_dataclass(value):
        return {field.name: _plain(getattr(value, field.name)) for field in fields(value)}
    return value
