"""Every value of a thing that somebody may state, with its path: from the types of the model alone.

What is a choice of words, what a count and what a number with a unit is told by the types, so that
whoever asks for a value (a page, a phone) offers what may stand there and nothing else.
"""

from __future__ import annotations

import re
import typing
from collections.abc import Iterator
from dataclasses import dataclass
from enum import StrEnum
from typing import Any

from backspan.core.ledger.document import Path, PlaceError
from backspan.core.model.evidence import StatedValue
from backspan.core.model.project import Project
from backspan.core.model.rigs import Rig
from backspan.core.model.units import Unit
from backspan.core.quantities import Dimension
from backspan.core.quantities.named import QUANTITIES
from backspan.core.quantities.quantity import RATING
from backspan.core.sheet.leans_on import NAMES_OF_WORDS
from backspan.core.wire.hints import bare, fields_of, marker, record_class, repeated


@dataclass(frozen=True, slots=True)
class Stateable:
    """A value that may be stated: where, of which record and field, and what is stated of it now.

    `words` are the words it may be, none for a number; `dimension` is None for a count.
    """

    path: Path
    record: str
    field: str
    words: tuple[str, ...]
    dimension: Dimension | None
    stated: StatedValue[Any] | None

    @property
    def name(self) -> str:
        """The input's name in the trade's words (core/words)."""
        named = NAMES_OF_WORDS.get((self.record, self.field))
        if named is not None:
            return named
        rows = (one for one in QUANTITIES.values() if one.field == self.field)
        return next((one.name for one in rows if one.record == self.record), self.field)

    @property
    def is_rated(self) -> bool:
        """Whether a plate or a paper says it: what somebody measured does not settle it."""
        quantity = QUANTITIES.get(self.name)
        return quantity is not None and quantity.evidence == RATING

    @property
    def is_count(self) -> bool:
        """Whether it is a whole number of things."""
        return not self.words and self.dimension is None


def rig_fields(project: Project, drop: str) -> tuple[Stateable, ...]:
    """Every value that may be stated of a drop's rig, in the model's order; none without a rig.

    Raises PlaceError where the project has no such drop.
    """
    found = next((one for one in project.drops if one.id == drop), None)
    if found is None:
        raise PlaceError(f"drops/{drop}: there is no such drop")
    if found.rig is None:
        return ()
    return tuple(_fields(found.rig, Rig, ("drops", drop, "rig")))


def unit_fields(unit: Unit) -> tuple[Stateable, ...]:
    """Every value that may be stated of a thing with its tag."""
    return tuple(_fields(unit, Unit, ("kit", "units", unit.id)))


def type_fields(of: Any, *, kinds: str) -> tuple[Stateable, ...]:
    """Every value that a maker's plate states of a type of the kit, of the list `kinds`."""
    return tuple(_fields(of, type(of), ("kit", kinds, of.id)))


def field_at(project: Project, path: Path) -> Stateable:
    """The value at a path of a drop's rig or of a unit.

    Raises PlaceError where nothing may be stated there.
    """
    match path:
        case ("drops", drop, *_):
            there = rig_fields(project, drop)
        case ("kit", "units", tag, *_):
            units = (one for one in project.kit.units if one.id == tag)
            there = tuple(field for unit in units for field in unit_fields(unit))
        case _:
            there = ()
    for one in there:
        if one.path == path:
            return one
    raise PlaceError(f"{'/'.join(path)}: nothing is stated there")


def _fields(record: Any, hint: Any, path: Path) -> Iterator[Stateable]:
    cls = record_class(hint)
    of = "" if cls is None else snake_case(cls.__name__)
    for field in fields_of(hint):
        value, inner = getattr(record, field.name), bare(field.hint)
        own = (*path, field.name)
        if record_class(inner) is StatedValue:
            yield _stateable(of, field.name, inner, own, value)
        elif repeated(inner) is not None and record_class(bare(repeated(inner))) is not None:
            for number, one in enumerate(value or ()):
                step = getattr(one, "id", str(number))
                yield from _fields(one, bare(repeated(inner)), (*own, step))
        elif record_class(inner) is not None and value is not None:
            yield from _fields(value, inner, own)


def snake_case(name: str) -> str:
    """The name of a record as the table of quantities writes it: "piece_group" of PieceGroup."""
    return re.sub(r"(?<!^)(?=[A-Z])", "_", name).lower()


def _stateable(
    record: str, name: str, hint: Any, path: Path, stated: StatedValue[Any] | None
) -> Stateable:
    (of,) = typing.get_args(hint)
    inner = bare(of)
    words = isinstance(inner, type) and issubclass(inner, StrEnum)
    choices = tuple(str(one) for one in inner) if words else ()
    return Stateable(path, record, name, choices, marker(of, Dimension), stated)
