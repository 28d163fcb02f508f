"""Data of a record along the dotted names of its questions.

A step that is a number leads into a list. While it is written, a list of records is a record whose
keys are numbers: one of its places can be filled before those in front of it.
"""

from __future__ import annotations

from typing import Any


def at(data: Any, name: str) -> Any:
    """What stands there; None where nothing does."""
    for step in name.split("."):
        if isinstance(data, list):
            data = data[int(step)] if step.isdigit() and int(step) < len(data) else None
        else:
            data = data.get(step) if isinstance(data, dict) else None
    return data


def put(data: dict[str, Any], name: str, value: Any) -> None:
    """Write a value there, with the records around it that are not there yet."""
    *around, last = name.split(".")
    for step in around:
        inner = data.get(step)
        if not isinstance(inner, dict):
            inner = data[step] = {}
        data = inner
    data[last] = value


def take_out(data: dict[str, Any], name: str) -> None:
    """Take a value away, and the records around it that hold nothing else."""
    first, _, rest = name.partition(".")
    inner = data.get(first)
    if rest and isinstance(inner, dict):
        take_out(inner, rest)
    if not rest or inner == {}:
        data.pop(first, None)


def listed(data: Any) -> Any:
    """Records whose keys are all numbers as lists, in the order of the numbers."""
    if not isinstance(data, dict):
        return data
    inner = {name: listed(value) for name, value in data.items()}
    if inner and all(name.isdigit() for name in inner):
        return [inner[name] for name in sorted(inner, key=int)]
    return inner


def numbered(data: Any) -> Any:
    """Lists of records as records whose keys are numbers: what `listed` takes back."""
    if isinstance(data, dict):
        return {name: numbered(value) for name, value in data.items()}
    if isinstance(data, list) and data and all(isinstance(one, dict) for one in data):
        return {str(number): numbered(one) for number, one in enumerate(data)}
    return data
