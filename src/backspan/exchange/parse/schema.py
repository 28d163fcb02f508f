"""The JSON Schema of a project file, for editors that check and complete while one types.

It says what the parser says, as far as a schema can: that a quantity has a unit and its sign, but
not which unit; how a date is written, but not the calendar. Ids that lead nowhere and places
outside an edge are only found by the program.
"""

from __future__ import annotations

import inspect
import typing
from typing import Any

from backspan.core.model.counts import at_least_one
from backspan.core.model.dated import (
    DATE,
    DATE_OR_TIME,
    DATE_PATTERN,
    TIME_PATTERN,
    is_date,
    is_time,
)
from backspan.core.model.evidence import ShortForm, Sign
from backspan.core.model.project import FORMAT, Project
from backspan.core.quantities import RATIO, Dimension
from backspan.core.wire.hints import bare, fields_of, marker, record_class, repeated
from backspan.exchange.parse.fields import ID_PATTERN, WHOLE_PATTERN, longest
from backspan.exchange.parse.filled import FILLED
from backspan.exchange.parse.shape import is_stated, is_word, keys_of, quantity, signed

_Schema = dict[str, Any]


def project_schema() -> _Schema:
    """JSON Schema (2020-12) of the project file, as plain data."""
    definitions: dict[str, _Schema] = {}
    top = _record(Project, definitions)
    top["properties"]["format"] = {
        "enum": [FORMAT, str(FORMAT)],
        "description": "The number of this file format.",
    }
    return {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "title": "backspan project file",
        **top,
        "$defs": dict(sorted(definitions.items())),
    }


def _schema(hint: Any, definitions: dict[str, _Schema], sign: Sign = Sign.ANY) -> _Schema:
    dimension = marker(hint, Dimension)
    inner = bare(hint)
    if dimension is not None:
        return _quantity(dimension, sign)
    if is_stated(inner):
        return _stated(hint, definitions)
    if record_class(inner) is not None:
        return _reference(inner, definitions)
    if typing.get_origin(inner) is tuple:
        return _list(inner, definitions)
    return {"enum": [str(word) for word in inner]} if is_word(inner) else _plain(inner, sign)


def _plain(hint: Any, sign: Sign) -> _Schema:
    # An editor reads 12 as a number and "12" as text; the parser takes both.
    if hint is int:
        bounds = {} if sign is Sign.ANY else {"minimum": 1 if sign is Sign.POSITIVE else 0}
        return {"type": ["integer", "string"], "pattern": _WHOLE[sign], **bounds}
    return {"type": ["string", "number"]}


#: Whole numbers as text, by the sign they may have.
_WHOLE = {
    Sign.ANY: WHOLE_PATTERN,
    Sign.NOT_NEGATIVE: "^([+]?[0-9]{1,9}|-0{1,9})$",
    Sign.POSITIVE: "^[+]?(?=0*[1-9])[0-9]{1,9}$",
}
#: A quantity has a unit, a letter or a sign for one; one that can not be negative has no minus.
_UNIT, _NO_MINUS = "[A-Za-z'\"°′″’”]", "^(?!\\s*[-−])"


def _reference(hint: Any, definitions: dict[str, _Schema]) -> _Schema:
    name: str = hint.__name__
    if name not in definitions:
        definitions[name] = _record(hint, definitions)
    return {"$ref": f"#/$defs/{name}"}


def _quantity(dimension: Dimension, sign: Sign) -> _Schema:
    pattern = ("" if sign is Sign.ANY else _NO_MINUS) + ("" if dimension == RATIO else f".*{_UNIT}")
    return {
        "type": ["string", "number"] if dimension == RATIO else "string",
        "description": quantity(dimension),
        **({"pattern": pattern} if pattern else {}),
        "examples": list(dimension.forms),
    }


def _stated(hint: Any, definitions: dict[str, _Schema]) -> _Schema:
    """A value alone, or a record of it with tolerance and evidence."""
    inner = bare(hint)
    short = marker(hint, ShortForm)
    sign = short.sign if short is not None else Sign.ANY
    alone = _schema(typing.get_args(inner)[0], definitions, sign)
    if sign is not Sign.ANY:
        alone["description"] = signed(alone.get("description", "a whole number"), sign)
    long = _record(inner, definitions)
    long["properties"] |= {"value": alone, "planned": alone}
    return {"anyOf": [alone, long]}


def _list(hint: Any, definitions: dict[str, _Schema]) -> _Schema:
    item = repeated(hint)
    if item is not None:
        return {"type": "array", "items": _schema(item, definitions)}
    items = typing.get_args(hint)
    return {
        "type": "array",
        "prefixItems": [_schema(item, definitions) for item in items],
        "items": False,
        "minItems": len(items),
    }


def _record(hint: Any, definitions: dict[str, _Schema]) -> _Schema:
    record = record_class(hint)
    keys = keys_of(hint)
    hints = {one.name: one.hint for one in fields_of(hint)}
    return {
        "type": "object",
        "description": _first_paragraph(record),
        "properties": {key: _field(record, key, hints[key], definitions) for key in keys},
        "required": [
            one.name for one in fields_of(hint) if one.required and (record, one.name) not in FILLED
        ],
        "additionalProperties": False,
    }


def _field(record: Any, name: str, hint: Any, definitions: dict[str, _Schema]) -> _Schema:
    if name == "id":
        return {"type": ["string", "integer"], "pattern": ID_PATTERN}
    if is_date(record, name):
        with_time = is_time(record, name)
        form = f"({DATE_PATTERN}|{TIME_PATTERN})" if with_time else DATE_PATTERN
        told = DATE_OR_TIME if with_time else DATE
        return {"type": "string", "description": told, "pattern": f"^{form}$"}
    sign = Sign.POSITIVE if at_least_one(record, name) else Sign.ANY
    found = _schema(hint, definitions, sign)
    return {**found, "maxLength": longest(name)} if bare(hint) is str else found


def _first_paragraph(record: Any) -> str:
    return " ".join((inspect.getdoc(record) or "").split("\n\n")[0].split())
