"""A project put together from whatever can be read, to look up names in while values are wrong."""

from __future__ import annotations

import typing
from typing import Any

from backspan.core.wire.hints import bare, fields_of, record_class


def outline(data: Any, hint: Any) -> Any:
    """An instance of `hint` that holds the names of `data` and nothing else that can be trusted.

    What is missing or of another kind is None, or an empty list where a list belongs. Its numbers
    are the text they were written as: only names may be read from it.
    """
    inner = bare(hint)
    record = record_class(inner)
    if record is not None:
        given = data if isinstance(data, dict) else {}
        if inner is not hint and not given:
            return None
        return record(
            **{one.name: outline(given.get(one.name), one.hint) for one in fields_of(inner)}
        )
    if typing.get_origin(inner) is tuple:
        item = typing.get_args(inner)[0]
        return tuple(outline(one, item) for one in data) if isinstance(data, list) else ()
    return data if isinstance(data, str) else None
