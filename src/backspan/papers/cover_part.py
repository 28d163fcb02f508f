"""The cover of the package: site, answers, configurations, basis, what was checked and what not."""

from __future__ import annotations

import datetime
from collections.abc import Sequence
from typing import Any

from backspan.core.findings import WORST_FIRST, Verdict
from backspan.core.model.project import Project
from backspan.core.review.plain import Data
from backspan.core.words import english, say_verdict
from backspan.papers.wording import NOT_STATED, long_date


def cover_part(project: Project, reviews: Sequence[Data]) -> dict[str, Any]:
    """The cover as plain data."""
    site = project.site
    by = next((one for one in project.people if one.id == project.prepared_by), None)
    return {
        "site": site.name,
        "place": site.place,
        "owner": site.owner or NOT_STATED,
        "number": project.number or "",
        "invented": site.invented or "",
        "prepared_by": f"{by.name}, {by.role}" if by else project.prepared_by or NOT_STATED,
        "employer": (by.employer or "") if by else "",
        "date": long_date(datetime.date.fromisoformat(reviews[0]["on"])) if reviews else "",
        "program": reviews[0]["program"] if reviews else "",
        "counts": _counts(reviews),
        "roofs": _roofs(project, reviews),
        "basis": _basis(reviews),
        "checked": list(english.CHECKS.values()),
        "not_judged": _not_judged(reviews),
        "cautions": list(english.CAUTIONS),
        "answers": [
            {"answer": say_verdict(verdict), "means": english.VERDICTS[str(verdict)]}
            for verdict in (Verdict.PASS, Verdict.FAIL, Verdict.REFER, Verdict.MISSING)
        ],
        "marks": [{"mark": mark, "means": means} for mark, means in english.MARKS.items()],
    }


def _not_judged(reviews: Sequence[Data]) -> list[dict[str, str]]:
    """Topics that this version does not judge, on which drops, and who may."""
    left: dict[str, dict[str, Any]] = {}
    for review in reviews:
        for one in review["topics"]:
            if one["not_judged"]:
                row = left.setdefault(one["topic"], {"who": " or ".join(one["who"]), "drops": []})
                row["drops"].append(review["drop"])
    every = len(reviews)
    return [
        {
            "topic": topic,
            "who": row["who"],
            "drops": "" if len(row["drops"]) == every else ", ".join(row["drops"]),
        }
        for topic, row in left.items()
    ]


def _counts(reviews: Sequence[Data]) -> list[dict[str, str]]:
    """The drops under each answer, the worst first; topics taken over are said beside a pass."""
    rows: dict[str, list[str]] = {}
    for verdict in WORST_FIRST:
        for one in reviews:
            if one["verdict"] == verdict:
                beside = one["answer"].removeprefix(verdict) if verdict is Verdict.PASS else ""
                rows.setdefault(f"{say_verdict(verdict)}{beside}", []).append(one["drop"])
    return [{"answer": answer, "drops": ", ".join(drops)} for answer, drops in rows.items()]


def _roofs(project: Project, reviews: Sequence[Data]) -> list[dict[str, Any]]:
    """The drops covered, by roof, each with the code of its configuration."""
    roof_of = {drop.id: drop.roof for drop in project.drops}
    names = {roof.id: roof.name for roof in project.site.roofs}
    found: dict[str, list[dict[str, str]]] = {}
    for review in reviews:
        drops = found.setdefault(roof_of.get(review["drop"], ""), [])
        drops.append({name: review[name] for name in ("drop", "configuration")})
    return [{"roof": names.get(roof, roof), "drops": drops} for roof, drops in found.items()]


def _basis(reviews: Sequence[Data]) -> list[dict[str, str]]:
    rows: dict[tuple[str, str, str], dict[str, str]] = {}
    for review in reviews:
        for line in review["basis"]:
            readings = "; ".join(f"{one['value']}: {one['reading']}" for one in line["readings"])
            row = rows.setdefault(
                (line["rule_set"], line["edition"], readings),
                {
                    **{name: line[name] for name in ("topic", "rule_set", "edition", "title")},
                    "readings": readings,
                    "drops": "",
                },
            )
            if line["added_for_drop"]:
                row["drops"] = f"{row['drops']}, {review['drop']}".lstrip(", ")
    return list(rows.values())
