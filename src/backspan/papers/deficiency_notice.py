"""The notice of a deficiency: what is wrong where, with photographs, and lines for the answers."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from backspan.core.findings import Verdict
from backspan.core.model.project import Project
from backspan.core.words import ENGLISH, SIGNS, Language
from backspan.papers.content import PaperContent
from backspan.papers.stamp_part import Stamp, stamped, when_part

#: Photographs on one notice, and bytes of one: what is more is named by its hash.
MOST_PHOTOGRAPHS = 6
MOST_PHOTOGRAPH_BYTES = 15_000_000
#: How a file begins that the typesetter places, and the end of its name.
_PLACED = ((b"\xff\xd8\xff", "jpg"), (b"\x89PNG\r\n\x1a\n", "png"))


@dataclass(frozen=True, slots=True, kw_only=True)
class DeficiencyNotice:
    """A deficiency as it was raised; `since` are lines of what was said of it after."""

    number: str
    drops: tuple[str, ...]
    about: str
    says: str
    by: str
    at: str
    forbids: bool
    closed: bool
    until: str
    since: tuple[tuple[str, str, str], ...] = ()
    """Moment, person and line of each."""


def deficiency_content(
    project: Project,
    notice: DeficiencyNotice,
    evidence: Mapping[str, bytes | None],
    stamp: Stamp,
    language: Language = ENGLISH,
) -> PaperContent:
    """What the notice says; `evidence` is by hash, None for a file that is not to be placed."""
    words = language.paper
    photographs: dict[str, bytes] = {}
    placed, named = [], []
    for name, content in evidence.items():
        kind = kind_of_photograph(content)
        if kind is None or content is None or len(photographs) == MOST_PHOTOGRAPHS:
            named.append(name)
            continue
        file = f"photograph-{len(photographs) + 1}.{kind}"
        photographs[file] = content
        title = words["photograph"].format(number=len(photographs))
        placed.append({"file": file, "title": title, "hash": name})
    if notice.closed:
        use = words["is_closed"]
    else:
        use = words["use_forbidden"] if notice.forbids else words["use_not_forbidden"]
    data: dict[str, Any] = {
        **stamped(project, stamp, language),
        "deficiency": {
            "number": notice.number,
            "where": [", ".join(notice.drops) or words["whole_site"], notice.about],
            "says": notice.says,
            "by": f"{notice.by}; {when_part(notice.at, language)}",
            "until": notice.until,
            "use": use,
            "sign": SIGNS[Verdict.PASS if notice.closed else Verdict.FAIL],
            "forbids": notice.forbids and not notice.closed,
            "photographs": placed,
            "named": named,
            "since": [
                {"at": when_part(at, language), "by": by, "text": text}
                for at, by, text in notice.since
            ],
        },
    }
    return PaperContent("deficiency.typ", data, {}, photographs)


def kind_of_photograph(content: bytes | None) -> str | None:
    """The end of a placed photograph's file name; None for what is not placed."""
    if content is None or len(content) > MOST_PHOTOGRAPH_BYTES:
        return None
    return next((kind for start, kind in _PLACED if content.startswith(start)), None)
