"""What stands before all drops: whose rig, what is refused and open, summary, basis, cautions."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence
from typing import Any

from backspan.core.findings import Verdict
from backspan.core.model.project import Project
from backspan.core.review.plain import Data
from backspan.core.words import Language, say_verdict
from backspan.papers.facts_part import facts_part
from backspan.papers.reasons_part import reasons_part


def front_part(
    project: Project, fronts: Sequence[Data], papers: Mapping[str, str], language: Language
) -> dict[str, Any]:
    """The front as plain data; `papers` names each drop's own paper."""
    site = project.site
    return {
        "site": site.name,
        "place": site.place,
        "number": project.number or "",
        "facts": facts_part(project, fronts[0] if fronts else None, language),
        "reasons": reasons_part(fronts, language),
        "configurations": [
            {name: one[name] for name in ("drop", "configuration")} for one in fronts
        ],
        "basis": _basis(fronts),
        "summary": [_summary_row(one, papers, language) for one in fronts]
        if len(fronts) > 1
        else [],
        "answers": [
            {
                "answer": say_verdict(verdict, language=language),
                "means": language.verdict_meanings[str(verdict)],
            }
            for verdict in (Verdict.PASS, Verdict.FAIL, Verdict.REFER, Verdict.MISSING)
        ],
        "marks": [{"mark": mark, "means": means} for mark, means in language.marks.items()],
        "cautions": list(language.cautions),
    }


def _summary_row(front: Data, papers: Mapping[str, str], language: Language) -> dict[str, str]:
    return {
        "drop": front["drop"],
        "answer": say_verdict(Verdict(front["verdict"]), language=language),
        "governs": front["why_open"] or front["governs"] or language.paper["nothing"],
        "strength": _used(front["strength"], language),
        "limit": _used(front["limit"], language),
        "presence": _presence(front, language),
        "paper": papers.get(front["drop"], ""),
    }


def _used(one: Data | None, language: Language) -> str:
    return (
        language.paper["nothing"] if one is None else f"{one['utilisation']['text']} {one['title']}"
    )


def _presence(front: Data, language: Language) -> str:
    """How many findings without a number are as they have to be, open or refused."""
    counted: Counter[str] = Counter(front["presence"])
    there, refused = counted[Verdict.PASS], counted[Verdict.FAIL]
    told = counted.total() - there - refused
    return language.paper["presence_told"].format(there=there, open=told, refused=refused)


def _basis(fronts: Sequence[Data]) -> list[dict[str, str]]:
    rows: dict[tuple[str, str, str], dict[str, str]] = {}
    for front in fronts:
        for line in front["basis"]:
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
                row["drops"] = f"{row['drops']}, {front['drop']}".lstrip(", ")
    return list(rows.values())
