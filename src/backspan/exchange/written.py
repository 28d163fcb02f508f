"""A project as the text of a project file: what `load` reads again as the same project.

Values stand as they were written, where they were; else in SI with every digit. What a file need
not say is left out. The text is JSON, which is YAML too, so that any program can read it.
"""

from __future__ import annotations

import json
import typing
from decimal import Decimal
from typing import Any

from backspan.core.errors import BackspanError
from backspan.core.model.order import ordered
from backspan.core.model.project import Project
from backspan.core.quantities import Dimension, QuantityError, parse
from backspan.core.wire import to_data
from backspan.core.wire.hints import bare, fields_of, marker, record_class
from backspan.exchange.parse.problems import ProjectError
from backspan.exchange.parse.project import parse_project
from backspan.exchange.parse.shape import is_stated, item_hint


class NoProjectFileError(BackspanError, ValueError):
    """A project that no project file can say."""


def project_text(project: Project) -> str:
    """The text of a project file that says what `project` holds.

    Raises NoProjectFileError where it would be read as another project: a rig that was moved here,
    say, takes over from its old drop what its own record leaves blank.
    """
    data = _written(project, Project)
    text = json.dumps(data, ensure_ascii=False, indent=1) + "\n"
    try:
        again = parse_project(text, "project file")
    except ProjectError as error:
        raise NoProjectFileError(f"no project file can say this: {error}") from error
    # Things stand in the order of their ids in what is read, and in that of their entries here.
    where = _difference(to_data(again), to_data(ordered(project)), "")
    if where is not None:
        raise NoProjectFileError(
            f"{where}: a project file would say something else than was recorded"
        )
    return text


def part_data(record: Any) -> dict[str, Any]:
    """One record of a project as a project file says it: keys, and texts with their units."""
    return _record(record, type(record))


def _written(value: Any, hint: Any) -> Any:
    inner = bare(hint)
    dimension = marker(hint, Dimension)
    if isinstance(value, float):
        return _number(value, dimension)
    if is_stated(inner):
        return _stated(value, inner)
    if record_class(inner) is not None:
        return _record(value, inner)
    if isinstance(value, tuple):
        return [_written(one, item_hint(inner, index)) for index, one in enumerate(value)]
    return value if isinstance(value, int) else str(value)


def _record(record: Any, hint: Any) -> dict[str, Any]:
    said = {}
    for field in fields_of(hint):
        value = getattr(record, field.name)
        # An empty list is told apart from none: a rig brings along what it does not speak of.
        blank = value is None or (value == field.default() and value != ())
        if field.required or not blank:
            said[field.name] = _written(value, field.hint)
    return said


def _stated(stated: Any, hint: Any) -> Any:
    (of,) = typing.get_args(hint)
    said = _record(stated, hint)
    text = said.pop("text", "")
    dimension = marker(of, Dimension)
    if text and dimension is not None and _means(text, dimension, stated.value):
        said["value"] = text
    if dimension is None:
        said["value"] = str(said["value"])
    return said["value"] if said.keys() == {"value"} else said


def _means(text: str, dimension: Dimension, value: float) -> bool:
    """Whether a text still says a value."""
    try:
        return parse(text, dimension) == value
    except QuantityError:
        return False


def _number(value: float, dimension: Dimension | None) -> str:
    unit = "" if dimension is None else dimension.si
    return f"{Decimal(repr(value)):f} {unit}".strip()


def _difference(found: Any, wanted: Any, where: str) -> str | None:
    """Where two projects differ first, but for how their values were written; None if nowhere."""
    match found, wanted:
        case dict(), dict():
            steps = [(name, found.get(name), one) for name, one in wanted.items() if name != "text"]
        case list(), list() if len(found) == len(wanted):
            steps = [
                (_name(two, at), one, two)
                for at, (one, two) in enumerate(zip(found, wanted, strict=True))
            ]
        case _:
            return None if found == wanted else where
    differences = (_difference(one, two, f"{where}.{name}".strip(".")) for name, one, two in steps)
    return next((one for one in differences if one is not None), None)


def _name(record: Any, index: int) -> str:
    return record["id"] if isinstance(record, dict) and "id" in record else f"#{index + 1}"
