"""The notice of a stop, in English and Spanish: nobody on, why, by whom, since when, until what."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum
from typing import Any

from backspan.core.findings import Verdict
from backspan.core.model.project import Project
from backspan.core.words import ENGLISH, SIGNS, Language, language_of
from backspan.papers.content import PaperContent
from backspan.papers.stamp_part import Stamp, stamped, when_part

#: Reasons that have room on the page; more are counted.
MOST_REASONS = 2


class Lift(StrEnum):
    """What kind of step lifts a stop."""

    PERMIT = "lift_permit"
    HOLD = "lift_hold"
    DEFICIENCY = "lift_deficiency"
    CONCERN = "lift_concern"


@dataclass(frozen=True, slots=True, kw_only=True)
class StopReason:
    """One thing that stops use; `said` is as somebody wrote it, `settles` by language code."""

    said: str
    by: str
    at: str
    settles: dict[str, str]
    lifts: tuple[Lift, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class StopNotice:
    """What is stopped, and by what; no drop is the whole site.

    `who` permits use there; empty where the site names nobody.
    """

    drop: str
    name: str
    who: str
    reasons: tuple[StopReason, ...]


def stop_content(project: Project, notice: StopNotice, stamp: Stamp) -> PaperContent:
    """What the notice says in both languages, the worst reason first."""
    spanish = language_of("es")
    shown = notice.reasons[:MOST_REASONS]
    data = {
        **stamped(project, stamp, ENGLISH),
        "caution": f"{ENGLISH.one_line_caution} {spanish.one_line_caution}",
        "note": spanish.note,
        "other": dict(spanish.paper),
        "stop": {
            "drop": notice.drop,
            "name": notice.name,
            "sign": SIGNS[Verdict.FAIL],
            "reasons": [_reason(one, (ENGLISH, spanish)) for one in shown],
            "more": [
                _more(len(notice.reasons) - len(shown), one)
                for one in (ENGLISH, spanish)
                if len(notice.reasons) > len(shown)
            ],
            "lifts": [_lifts(notice.reasons, notice.who, one) for one in (ENGLISH, spanish)],
        },
    }
    return PaperContent("stop.typ", data, {})


def _reason(one: StopReason, languages: Sequence[Language]) -> dict[str, Any]:
    return {
        "said": one.said,
        "by": one.by,
        "at": [when_part(one.at, each) if one.at else "" for each in languages],
        "settles": [one.settles[each.code] for each in languages],
    }


def _more(count: int, language: Language) -> str:
    return language.paper["more_reasons"].format(count=count)


def _lifts(reasons: Sequence[StopReason], who: str, language: Language) -> list[str]:
    """Who may lift each kind of stop, also one not shown; nobody does by word of mouth."""
    kinds = dict.fromkeys(lift for one in reasons for lift in one.lifts)
    named = who or language.paper["who_permits"]
    said = [language.paper[kind].format(who=named) for kind in kinds]
    return [*said, language.paper["no_word_of_mouth"]]
