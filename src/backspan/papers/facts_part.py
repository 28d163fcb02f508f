"""Whose rig it is, who reviewed it for whom, and what every page says."""

from __future__ import annotations

import datetime
from typing import Any

from backspan.core.model.people import Person
from backspan.core.model.project import Project
from backspan.core.quantities import Style
from backspan.core.review.plain import Data
from backspan.core.words import Language
from backspan.papers.wording import long_date


def sheet_part(project: Project, language: Language) -> dict[str, Any]:
    """What every page says, its size, and the fixed words."""
    by = _person(project, project.prepared_by)
    return {
        "paper": "a4" if project.units is Style.METRIC else "us-letter",
        "site": project.site.name,
        "invented": project.site.invented or "",
        "prepared_by": _named(by, project.prepared_by, language),
        "caution": language.one_line_caution,
        "words": dict(language.paper),
        "language": language.code,
        "note": language.note,
    }


def facts_part(project: Project, front: Data | None, language: Language) -> list[dict[str, str]]:
    """The facts at the head of a paper, each with its name; what nobody stated is said so."""
    plan, site = project.plan, project.site
    by = _person(project, project.prepared_by)
    designer = None if plan is None else _person(project, plan.designer)
    unstated = language.paper["not_stated"]
    drawing, days = unstated, unstated
    if plan is not None and plan.drawing:
        revision = plan.revision or unstated
        drawing = f"{plan.drawing}, {language.paper['revision']} {revision}"
    if plan is not None and plan.begins and plan.ends:
        days = f"{plan.begins} {language.paper['to']} {plan.ends}"
    rows = [
        ("contractor", unstated if plan is None else plan.contractor),
        (
            "designer",
            unstated if plan is None else _named(designer, plan.designer, language),
        ),
        ("drawing", drawing),
        ("days", days),
        ("reviewed_by", _reviewer(by, project.prepared_by, language)),
        ("reviewed_for", site.owner or unstated),
    ]
    if front is not None:
        day = long_date(datetime.date.fromisoformat(front["on"]), language)
        rows.append(("reviewed_on", f"{day}; {front['program']}"))
    return [{"name": language.paper[name], "text": text} for name, text in rows]


def _person(project: Project, name: str | None) -> Person | None:
    return next((one for one in project.people if one.id == name), None)


def _named(person: Person | None, name: str | None, language: Language) -> str:
    return (
        f"{person.name}, {language.word(person.role)}"
        if person
        else name or language.paper["not_stated"]
    )


def _reviewer(person: Person | None, name: str | None, language: Language) -> str:
    """The reviewer with office and card: who signs."""
    said = [_named(person, name, language)]
    if person is not None and person.employer:
        said.append(person.employer)
    if person is not None and person.card:
        said.append(f"{language.paper['card']} {person.card}")
    return ", ".join(said)
