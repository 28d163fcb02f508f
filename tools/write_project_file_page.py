"""Write docs/project-file-fields.md: every record of a project file and its fields.

Run it after any change to the model: `python tools/write_project_file_page.py`.
"""

from __future__ import annotations

import dataclasses
import inspect
import typing
from collections.abc import Iterator
from enum import StrEnum
from pathlib import Path
from typing import Any

from backspan.core.model.evidence import ShortForm, StatedValue
from backspan.core.model.project import Project
from backspan.core.quantities import Dimension

PAGE = Path(__file__).resolve().parent.parent / "docs" / "project-file-fields.md"

OPENING = """\
# Every field of a project file

This page is written by `tools/write_project_file_page.py` from the model; change the model, not
the page. [project-file.md](project-file.md) explains how the parts fit together. *Stated* values
may be written as bare text or with evidence, tolerance and who stated them.
"""


def page() -> str:
    """The whole page."""
    sections = [OPENING]
    for record in records(Project):
        summary = inspect.cleandoc(record.__doc__ or "")
        rows = "\n".join(
            f"| `{name}` | {kind} | {'yes' if needed else ''} |"
            for name, kind, needed in fields_of(record)
        )
        head = f"## {record.__name__}\n\n{summary}\n\n| field | holds | needed |\n|---|---|---|"
        sections.append(f"{head}\n{rows}\n")
    return "\n".join(sections)


def records(start: type) -> list[type]:
    """All records reachable from one, each once, in order of first mention."""
    found: list[type] = []
    waiting = [start]
    while waiting:
        record = waiting.pop(0)
        if record not in found:
            found.append(record)
            hints = typing.get_type_hints(record)
            waiting += [
                inner
                for field in dataclasses.fields(record)
                for inner in parts(hints[field.name])
                if dataclasses.is_dataclass(inner) and isinstance(inner, type)
            ]
    return found


def parts(hint: Any) -> Iterator[Any]:
    """A type hint and everything inside it, generics opened."""
    origin = typing.get_origin(hint)
    yield hint if origin is None else origin
    for inner in typing.get_args(hint):
        yield from parts(inner)


def fields_of(record: type) -> Iterator[tuple[str, str, bool]]:
    """Name, contents in words, and whether it is needed, of each field."""
    hints = typing.get_type_hints(record, include_extras=True)
    for field in dataclasses.fields(record):
        needed = (
            field.default is dataclasses.MISSING and field.default_factory is dataclasses.MISSING
        )
        yield field.name, words(hints[field.name]), needed


def words(hint: Any) -> str:
    """A type hint in words for people who write project files."""
    arguments = typing.get_args(hint)
    if hasattr(hint, "__metadata__"):
        return annotated(hint, arguments)
    if type(None) in arguments:
        return " or ".join(words(one) for one in arguments if one is not type(None))
    if typing.get_origin(hint) is tuple:
        each = words(arguments[0])
        return f"list of {each}" if Ellipsis in arguments else f"[{each}, {words(arguments[1])}]"
    if typing.get_origin(hint) is StatedValue:
        return words(arguments[0])
    if isinstance(hint, type) and issubclass(hint, StrEnum):
        return " / ".join(f"`{one}`" for one in hint)
    if dataclasses.is_dataclass(hint) and isinstance(hint, type):
        return f"[{hint.__name__}](#{hint.__name__.lower()})"
    names = {str: "text", int: "whole number", float: "number", bool: "`true` / `false`"}
    return names.get(hint, "the same kind of value")


def annotated(hint: Any, arguments: tuple[Any, ...]) -> str:
    """A quantity, or a stated value with its sign."""
    for mark in hint.__metadata__:
        if isinstance(mark, Dimension):
            return mark.name
        if isinstance(mark, ShortForm):
            sign = "" if mark.sign == "any" else f", {mark.sign}"
            return f"stated {words(arguments[0])}{sign}"
    return words(arguments[0])


def main() -> None:
    """Write the page."""
    PAGE.write_text(page(), encoding="utf-8", newline="\n")


if __name__ == "__main__":
    main()
