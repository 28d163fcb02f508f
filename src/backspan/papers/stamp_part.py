"""What a paper of the record says at its foot: site, drops, codes, place in the ledger."""

from __future__ import annotations

import datetime
from dataclasses import dataclass
from typing import Any

from backspan.core.model.project import Project
from backspan.core.words import Language
from backspan.papers.facts_part import sheet_part
from backspan.papers.wording import long_date

#: Digits of a head that are enough to find it; the whole of it stands once on each paper.
HEAD_DIGITS = 12
#: Drops whose codes have room at the foot of a page.
MOST_AT_FOOT = 2


@dataclass(frozen=True, slots=True)
class Codes:
    """A drop with its configuration code and the code of its basis; texts are empty for none."""

    drop: str
    configuration: str
    basis: str


@dataclass(frozen=True, slots=True)
class Stamp:
    """Where the record stood when a paper was made of it, and the drops that it speaks of.

    No drop is the whole site.
    """

    place: int
    head: str
    on: datetime.date
    codes: tuple[Codes, ...] = ()


def stamped(project: Project, stamp: Stamp, language: Language) -> dict[str, Any]:
    """What every page of a paper of the record says, as plain data."""
    return {**sheet_part(project, language), "stamp": stamp_part(stamp, language)}


def stamp_part(stamp: Stamp, language: Language) -> dict[str, Any]:
    """The foot's own texts, and what stands once on the paper."""
    words = language.paper
    codes = [_codes(one, language) for one in stamp.codes]
    about = "; ".join(codes) or words["whole_site"]
    if len(codes) > MOST_AT_FOOT:
        about = words["several_drops"].format(count=len(codes))
    entry = words["entry_number"].format(place=stamp.place)
    head = words["head_begins"].format(head=stamp.head[:HEAD_DIGITS])
    return {
        "about": about,
        "codes": codes if len(codes) > MOST_AT_FOOT else [],
        "ledger": f"{entry}, {head}",
        "whole": words["whole_head"].format(place=stamp.place),
        "head": stamp.head,
        "day": long_date(stamp.on, language),
        "told": words["stated_not_sealed"],
    }


def when_part(moment: str, language: Language) -> str:
    """A moment of an entry as a letter writes it: the day, and the time as it was stated."""
    day, _, time = moment.partition("T")
    said = long_date(datetime.date.fromisoformat(day), language)
    return f"{said}, {time[:5]}" if time else said


def _codes(one: Codes, language: Language) -> str:
    words = language.paper
    said = [words["one_drop"].format(drop=one.drop)]
    if one.configuration:
        said.append(f"{words['configuration_is']} {one.configuration}")
    if one.basis:
        said.append(f"{words['basis_code']} {one.basis}")
    return ", ".join(said)
