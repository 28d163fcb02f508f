"""How a drawing names kit: the tags of the things themselves first, then their type."""

from __future__ import annotations

from collections.abc import Iterable

from backspan.core.model.kit import Kit
from backspan.core.model.units import UnitKind
from backspan.core.words import ENGLISH, Language


def type_of(kit: Kit, kind: UnitKind, name: str | None) -> str | None:
    """The type of a thing named by its tag; the name itself where it is a type already."""
    unit = None if name is None else kit.unit(kind, name)
    return name if unit is None else unit.of


def tagged(kit: Kit, kind: UnitKind, names: Iterable[str], language: Language = ENGLISH) -> str:
    """Things of one type: "B-01 / B-02, type B18A"; the names alone where no tag is known."""
    each = tuple(dict.fromkeys(names))
    types = (kit.unit(kind, name) for name in each)
    known = tuple(dict.fromkeys(unit.of for unit in types if unit is not None))
    tags = " / ".join(each)
    return language.drawn("type", tags=tags, types=" / ".join(known)) if known else tags
