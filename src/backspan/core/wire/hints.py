"""What the type hints of a record say: its fields, with type variables filled in."""

from __future__ import annotations

import builtins
import dataclasses
import functools
import types
import typing
from collections.abc import Callable
from dataclasses import dataclass
from typing import Annotated, Any, TypeVar, Union


@dataclass(frozen=True, slots=True)
class FieldHint:
    """One field of a record: its name, its full type, whether it must be given, its default."""

    name: str
    hint: Any
    required: bool
    default: Callable[[], Any]


@functools.cache
def bare(hint: Any) -> Any:
    """`hint` without `Annotated` and without `| None`: what a present value must be."""
    while True:
        if typing.get_origin(hint) is Annotated:
            hint = typing.get_args(hint)[0]
            continue
        inner = optional(hint)
        if inner is None:
            return hint
        hint = inner


def marker(hint: Any, kind: type) -> Any:
    """The first mark of class `kind` in the `Annotated` parts of `hint`, or None."""
    while True:
        if typing.get_origin(hint) is Annotated:
            inner, *marks = typing.get_args(hint)
            found = next((mark for mark in marks if isinstance(mark, kind)), None)
            if found is not None:
                return found
            hint = inner
            continue
        inner = optional(hint)
        if inner is None:
            return None
        hint = inner


@functools.cache
def optional(hint: Any) -> Any:
    """X of `X | None`; None where `hint` is something else."""
    if typing.get_origin(hint) not in (Union, types.UnionType):
        return None
    match [arm for arm in typing.get_args(hint) if arm is not type(None)]:
        case [only]:
            return only
        case _:
            return None


@functools.cache
def repeated(hint: Any) -> Any:
    """X of `tuple[X, ...]`; None where `hint` is something else."""
    match typing.get_origin(hint), typing.get_args(hint):
        case builtins.tuple, (item, types.EllipsisType()):
            return item
        case _:
            return None


@functools.cache
def record_class(hint: Any) -> type[Any] | None:
    """The dataclass a (bare) hint names, or None: `Hoist` and `StatedValue[Length]` both do."""
    origin = typing.get_origin(hint) or hint
    return origin if isinstance(origin, type) and dataclasses.is_dataclass(origin) else None


@functools.cache
def fields_of(hint: Any) -> tuple[FieldHint, ...]:
    """The fields of the record that `hint` names, in the order they are declared."""
    record = record_class(hint)
    if record is None:
        raise TypeError(f"{hint!r} is not a record")
    variables: tuple[TypeVar, ...] = getattr(record, "__parameters__", ())
    filling = dict(zip(variables, typing.get_args(hint), strict=False))
    hints = typing.get_type_hints(record, include_extras=True)
    return tuple(
        FieldHint(
            name=field.name,
            hint=_filled(hints[field.name], filling),
            required=default_of(field) is dataclasses.MISSING,
            default=functools.partial(default_of, field),
        )
        for field in dataclasses.fields(record)
    )


def default_of(field: dataclasses.Field[Any]) -> Any:
    """The default of a dataclass field; `dataclasses.MISSING` where it has none."""
    if field.default_factory is not dataclasses.MISSING:
        return field.default_factory()
    return field.default


def _filled(hint: Any, filling: dict[TypeVar, Any]) -> Any:
    """`hint` with its type variables replaced."""
    if isinstance(hint, TypeVar):
        return filling.get(hint, hint)
    open_variables = getattr(hint, "__parameters__", ())
    if not open_variables or not filling:
        return hint
    return hint[tuple(filling.get(variable, variable) for variable in open_variables)]
