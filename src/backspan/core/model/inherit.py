"""Who stated a value that does not say so itself: the nearest record around it that does."""

from __future__ import annotations

from dataclasses import fields, replace
from functools import cache
from typing import Any, TypeVar, cast

from backspan.core.model.evidence import StatedValue, Statement
from backspan.core.model.project import Project

T = TypeVar("T")


@cache
def field_names(record: type) -> tuple[str, ...]:
    """The names of a record's fields, looked up once."""
    return tuple(field.name for field in fields(record))


def inherit(project: Project) -> Project:
    """`project` with evidence, person, date and document filled in from `values_from`.

    What a value or an inner statement does say stays; the paper goes with the evidence that it is
    named for. Where no record around it has `values_from`, it stays without evidence, and a check
    treats it as not stated.
    """
    return with_statements(project)


def with_statements(record: T, enclosing: Statement | None = None) -> T:
    """`record` with its values filled in; `enclosing` is what the records around it state."""
    return cast("T", _filled(record, enclosing))


def said_by(own: Statement | None, *around: Statement | None) -> Statement | None:
    """What a record states of its own values, filled in from the records around it, inner first."""
    found = own
    for outer in around:
        found = _within(found, outer)
    return found


def _filled(value: Any, statement: Statement | None) -> Any:
    if isinstance(value, str | float | int | Statement | None):
        return value
    if isinstance(value, StatedValue):
        return value if statement is None else _stated(value, statement)
    if isinstance(value, tuple):
        items = tuple(_filled(item, statement) for item in value)
        unchanged = all(new is old for new, old in zip(items, value, strict=True))
        return value if unchanged else items
    nearest = _within(getattr(value, "values_from", None), statement)
    old = {name: getattr(value, name) for name in field_names(value.__class__)}
    new = {name: _filled(content, nearest) for name, content in old.items()}
    changes = {name: content for name, content in new.items() if content is not old[name]}
    return replace(value, **changes) if changes else value


def _within(own: Statement | None, around: Statement | None) -> Statement | None:
    """A record's own statement, with person and day of the one around it where it has none."""
    if own is None or around is None:
        return own or around
    return replace(own, by=own.by or around.by, at=own.at or around.at)


def _stated(value: StatedValue[T], statement: Statement) -> StatedValue[T]:
    by, at, evidence, document = value.by, value.at, value.evidence, value.document
    if evidence is None:
        evidence, document = statement.evidence, document or statement.document
    filled = (evidence, by or statement.by, at or statement.at, document)
    if filled == (value.evidence, by, at, value.document):
        return value
    return replace(value, evidence=filled[0], by=filled[1], at=filled[2], document=filled[3])
