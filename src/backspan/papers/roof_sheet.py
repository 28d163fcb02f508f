"""The sheet to take up without a phone: what is planned in thin type, blanks for what is found."""

from __future__ import annotations

import hashlib
from collections.abc import Iterable
from dataclasses import dataclass

from backspan.core.model.project import Project
from backspan.core.words import ENGLISH, Language
from backspan.papers.content import PaperContent
from backspan.papers.stamp_part import Stamp, stamped

_CODE_LENGTH = 5


@dataclass(frozen=True, slots=True, kw_only=True)
class SheetValue:
    """One blank: its number, what is asked where, and what is planned or was found before."""

    number: str
    name: str
    where: str
    words: tuple[str, ...]
    count: bool
    like: str
    planned: str
    found: str
    by: str


@dataclass(frozen=True, slots=True)
class SheetItem:
    """An item of the stop list with its blanks; `of_papers` where papers tell it, not the roof."""

    number: int
    title: str
    values: tuple[SheetValue, ...]
    of_papers: bool = False


def sheet_code(keys: Iterable[str]) -> str:
    """A short code of which blank has which number: another code, other numbers."""
    digest = hashlib.sha256("\n".join(keys).encode("utf-8")).hexdigest()
    return digest[:_CODE_LENGTH].upper()


def sheet_content(
    project: Project,
    drop: tuple[str, str],
    items: Iterable[SheetItem],
    *,
    code: str,
    stamp: Stamp,
    language: Language = ENGLISH,
) -> PaperContent:
    """What the sheet of a drop (its id and name) says."""
    data = {
        **stamped(project, stamp, language),
        "sheet": {
            "drop": drop[0],
            "name": drop[1],
            "code": code,
            "items": [
                {
                    "number": str(item.number),
                    "title": item.title,
                    "nothing": _nothing(item, language),
                    "values": [_value(one, language) for one in item.values],
                }
                for item in items
            ],
        },
    }
    return PaperContent("sheet.typ", data, {})


def _nothing(item: SheetItem, language: Language) -> str:
    """Why an item has no blank; empty where it has one."""
    if item.values:
        return ""
    words = language.paper
    return words["from_papers"] if item.of_papers else words["none_stated"]


def _value(one: SheetValue, language: Language) -> dict[str, str | list[str]]:
    words = language.paper
    before = words["found_before"].format(value=one.found, by=one.by) if one.found else ""
    planned = words["planned_value"].format(value=one.planned) if one.planned else ""
    like = words["how_many"] if one.count else words["unit_like"].format(like=one.like)
    return {
        "number": one.number,
        "name": one.name,
        "where": one.where,
        "choices": list(one.words),
        "like": "" if one.words else like,
        "thin": "; ".join(text for text in (planned, before) if text),
    }
