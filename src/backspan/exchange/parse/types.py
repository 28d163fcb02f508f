"""The types of the model applied to a tree: the instance, or every value that does not fit.

The checker is pydantic's core, told what to check straight from the type hints of the model: the
class-building half of pydantic would give the same checker and costs a fifth of a second a start.
"""

from __future__ import annotations

import functools
import typing
from collections.abc import Iterable
from typing import Annotated, Any

from pydantic_core import SchemaValidator, ValidationError, core_schema

from backspan.core.model.evidence import Sign
from backspan.core.model.identifiers import Path, did_you_mean
from backspan.core.wire.hints import FieldHint, bare, fields_of, optional, record_class, repeated
from backspan.exchange.parse.problems import shown
from backspan.exchange.parse.shape import hint_at, is_word, signed, wanted
from backspan.exchange.parse.tree import Flaw, Tree

_PLAIN = {str: core_schema.str_schema(), int: core_schema.int_schema()}


def checked_types(data: Any, cls: Any, tree: Tree) -> tuple[Any, list[Flaw]]:
    """The instance of `cls` made of `data`, and no flaws; or None and every flaw."""
    try:
        return _checker(cls).validate_python(data), []
    except ValidationError as error:
        return None, list(_flaws(error, cls, tree))


@functools.cache
def _checker(cls: Any) -> SchemaValidator:
    """The checker of one class, built once: it costs more than a file."""
    return SchemaValidator(_schema(cls))


@functools.cache
def _schema(hint: Any) -> core_schema.CoreSchema:
    """What the checker is to check of a value of type `hint`."""
    if typing.get_origin(hint) is Annotated:
        inner, mark, *_ = typing.get_args(hint)
        marked: core_schema.CoreSchema = mark.__get_pydantic_core_schema__(inner, _schema)
        return marked
    if optional(hint) is not None:
        return core_schema.nullable_schema(_schema(optional(hint)))
    if record_class(hint) is not None:
        return _record_schema(hint)
    if typing.get_origin(hint) is tuple:
        return _tuple_schema(hint)
    return core_schema.enum_schema(hint, list(hint)) if is_word(hint) else _PLAIN[hint]


def _tuple_schema(hint: Any) -> core_schema.CoreSchema:
    item = repeated(hint)
    if item is not None:
        return core_schema.tuple_schema([_schema(item)], variadic_item_index=0)
    return core_schema.tuple_schema([_schema(item) for item in typing.get_args(hint)])


def _record_schema(hint: Any) -> core_schema.CoreSchema:
    cls: Any = record_class(hint)
    fields = [
        core_schema.dataclass_field(one.name, _field_schema(one), kw_only=True)
        for one in fields_of(hint)
    ]
    names = [one.name for one in fields_of(hint)]
    arguments = core_schema.dataclass_args_schema(cls.__name__, fields)
    config = core_schema.CoreConfig(extra_fields_behavior="forbid")
    return core_schema.dataclass_schema(cls, arguments, names, slots=True, config=config)


def _field_schema(field: FieldHint) -> core_schema.CoreSchema:
    schema = _schema(field.hint)
    if field.required:
        return schema
    return core_schema.with_default_schema(schema, default_factory=field.default)


def _flaws(error: ValidationError, cls: type[Any], tree: Tree) -> Iterable[Flaw]:
    for one in error.errors(include_url=False, include_input=False):
        yield _flaw(one["type"], one["loc"], one.get("ctx", {}), cls, tree)


def _flaw(kind: str, path: Path, context: dict[str, Any], cls: type[Any], tree: Tree) -> Flaw:
    """One error of the checker in the words of this program."""
    hint = hint_at(cls, path)
    if kind == "missing" and isinstance(path[-1], str):
        return Flaw(path, f"no {path[-1]}", f"{path[-1]}: {wanted(hint)}")
    if kind == "sign":
        return _sign_flaw(path, context, cls, tree)
    if kind == "tolerance":
        place = tree.nearest((*path, "tolerance"))
        return Flaw(place, shown(tree.value(place)), "a tolerance smaller than the value itself")
    path = tree.nearest(path)
    found, expected = shown(tree.value(path)), wanted(hint_at(cls, path))
    if kind == "quantity":
        found = f"{found}: {_reason(context)}"
    elif kind == "enum":
        suggestion = did_you_mean(str(tree.value(path)), bare(hint))
        expected = f"{expected}; {suggestion}" if suggestion else expected
    return Flaw(path, found, expected)


def _sign_flaw(path: Path, context: dict[str, Any], cls: Any, tree: Tree) -> Flaw:
    # The checker judges signs on the whole stated value, and quotes the value but no tolerance.
    own = (*path, "value" if "found" in context else "tolerance")
    expected = signed(wanted(hint_at(cls, own)), Sign(context["expected"]))
    place = tree.nearest(own)
    return Flaw(place, shown(tree.value(place)), expected)


def _reason(context: dict[str, Any]) -> str:
    """Why a quantity was refused, without what was found and expected, which are told apart."""
    text: str = context["message"]
    head, tail = f"found {context['found']!r}: ", "; write for example "
    return text.removeprefix(head).removesuffix(tail + ", ".join(context["expected"]))
