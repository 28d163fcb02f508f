"""What may stand at a place of a file, told in words: from the types of the model alone."""

from __future__ import annotations

import typing
from enum import StrEnum
from typing import Any

from backspan.core.model.evidence import ShortForm, Sign, StatedValue
from backspan.core.model.identifiers import Path
from backspan.core.quantities import Dimension
from backspan.core.wire.hints import bare, fields_of, marker, record_class, repeated


def hint_at(hint: Any, path: Path) -> Any:
    """The type of what stands at `path` within something of type `hint`; None if nothing may."""
    for step in path:
        inner = bare(hint)
        if record_class(inner) is not None:
            hint = next((one.hint for one in fields_of(inner) if one.name == step), None)
        else:
            hint = item_hint(inner, step)
    return hint


def item_hint(hint: Any, step: str | int) -> Any:
    """The type of item `step` of a list of (bare) type `hint`; None if it has no such item."""
    item = repeated(hint)
    if item is not None:
        return item
    items = typing.get_args(hint) if typing.get_origin(hint) is tuple else ()
    return items[step] if isinstance(step, int) and step < len(items) else None


def keys_of(hint: Any) -> tuple[str, ...]:
    """The keys that a record of (bare) type `hint` may have in a file.

    A stated value's `text` is what its value was written as, so a file cannot say it another
    way; and a word has no tolerance.
    """
    hidden: tuple[str, ...] = ()
    if is_stated(hint):
        (value,) = typing.get_args(hint)
        hidden = ("text", "tolerance") if is_word(value) else ("text",)
    return tuple(one.name for one in fields_of(hint) if one.name not in hidden)


def is_word(hint: Any) -> bool:
    """Whether the (bare) type is a choice of words."""
    return isinstance(hint, type) and issubclass(hint, StrEnum)


def is_stated(hint: Any) -> bool:
    """Whether the (bare) type is that of a value with its evidence."""
    return record_class(hint) is StatedValue


def wanted(hint: Any) -> str:
    """What to write for a value of type `hint`: "a length with its unit, such as ..."."""
    dimension = marker(hint, Dimension)
    if dimension is not None:
        return quantity(dimension)
    inner = bare(hint)
    if is_stated(inner):
        short = marker(hint, ShortForm)
        return signed(wanted(typing.get_args(inner)[0]), short.sign if short else Sign.ANY)
    if record_class(inner) is not None:
        return _record(inner)
    if is_word(inner):
        return "one of: " + " | ".join(inner)
    if typing.get_origin(inner) is tuple:
        return _list(inner)
    return {str: "text", int: "a whole number"}.get(inner, "a value")


def signed(text: str, sign: Sign) -> str:
    """`text` with the condition on the value's sign, if there is one."""
    return text if sign is Sign.ANY else f"{text}; {sign}"


def quantity(dimension: Dimension) -> str:
    """What to write for a quantity."""
    return f"{dimension.wanted}, such as {', '.join(dimension.forms)}"


def _record(hint: Any) -> str:
    required = [one.name for one in fields_of(hint) if one.required]
    others = [name for name in keys_of(hint) if name not in required]
    parts = []
    if required:
        parts.append(f"with {', '.join(required)}")
    if others:
        parts.append(f"and, if wanted, {', '.join(others)}" if required else ", ".join(others))
    return f"a record (lines of `key: value`) {' '.join(parts)}"


def _list(hint: Any) -> str:
    if repeated(hint) is not None:
        return "a list (lines that start with `- `)"
    items = typing.get_args(hint)
    return f"a list of {len(items)}, each {wanted(items[0])}"
