"""The project as entries make it: plain data that is never changed, only written anew along a path.

A path leads through names of fields, and through lists by the id of what they hold, or by number
where that has none. What a step does not touch is the same object as before, so a document is
cheap to keep for every entry that changed it.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Any

from backspan.core.ledger.errors import LedgerError
from backspan.core.model.project import Project
from backspan.core.wire import WireError, from_changed, from_data
from backspan.core.wire.codec import codec_for
from backspan.core.wire.hints import bare, fields_of, record_class, repeated

Path = tuple[str, ...]
#: Data, and the project that it was read as.
Known = tuple[Any, Project]


class PlaceError(LedgerError):
    """A path that leads nowhere in the project, or to a thing of another kind."""


def drop_of(path: Sequence[str]) -> str | None:
    """The drop that a path is about; None where it may be about any."""
    return path[1] if len(path) > 1 and path[0] == "drops" else None


def at(data: Any, path: Sequence[str]) -> Any:
    """What stands at a path. Raises PlaceError where it leads nowhere."""
    for place, step in enumerate(path):
        data = data[_step(data, step, path[: place + 1])]
    return data


def put(data: Any, path: Sequence[str], value: Any, *, add: bool = False) -> Any:
    """The data with a value at a path. With `add` a thing that a list does not hold yet is added.

    Raises PlaceError where the path leads nowhere.
    """
    return _put(data, tuple(path), value, 0, add=add)


def changes_a_fact(before: Any, after: Any) -> bool:
    """Whether two pieces of data differ in more than who stated a value, when and on what paper."""
    if before is after:
        return False
    if isinstance(before, dict) and isinstance(after, dict):
        stated = "value" in before and "evidence" in before
        names = ("value", "tolerance") if stated else {**before, **after}
        return any(changes_a_fact(before.get(name), after.get(name)) for name in names)
    if isinstance(before, list) and isinstance(after, list) and len(before) == len(after):
        return any(changes_a_fact(one, other) for one, other in zip(before, after, strict=True))
    return bool(type(before) is not type(after) or before != after)


def checked(path: Sequence[str], value: Any) -> Any:
    """A value that may stand at that path of a project, as it was given.

    Raises PlaceError where no value belongs there, or another one.
    """
    hint: Any = Project
    for place, step in enumerate(path):
        item = repeated(bare(hint))
        if item is not None:
            hint = item
            continue
        if record_class(bare(hint)) is None:
            raise PlaceError(f"{'/'.join(path[: place + 1])}: nothing is stated there")
        hints = {one.name: one.hint for one in fields_of(bare(hint))}
        if step not in hints:
            raise PlaceError(f"{'/'.join(path[: place + 1])}: there is no {step!r}")
        hint = hints[step]
    try:
        codec_for(hint).read(value)
    except WireError as error:
        raise PlaceError(f"{'/'.join(path)}: {error}") from error
    return value


def project_of(data: Any, known: Known | None = None) -> Project:
    """The project that the data is; of data known before only what changed is read.

    Raises PlaceError where it is none.
    """
    try:
        return from_data(Project, data) if known is None else from_changed(Project, data, *known)
    except WireError as error:
        raise PlaceError(f"the project: {error}") from error


def mentions(data: Any, name: str) -> bool:
    """Whether a name stands anywhere in a piece of data."""
    return any(one == name for one in _texts(data))


def _texts(data: Any) -> Iterator[str]:
    if isinstance(data, str):
        yield data
    elif isinstance(data, dict):
        for value in data.values():
            yield from _texts(value)
    elif isinstance(data, list):
        for value in data:
            yield from _texts(value)


def _put(data: Any, path: Path, value: Any, place: int, *, add: bool) -> Any:
    if place == len(path):
        return value
    step, last = path[place], place == len(path) - 1
    if isinstance(data, list) and last and add and _number(data, step) is None:
        return [*data, value]
    key = _step(data, step, path[: place + 1])
    inner = _put(data[key], path, value, place + 1, add=add)
    if isinstance(data, list):
        return [*data[:key], inner, *data[key + 1 :]]
    return {**data, key: inner}


def _step(data: Any, step: str, path: Sequence[str]) -> Any:
    if isinstance(data, dict) and step in data:
        return step
    number = _number(data, step) if isinstance(data, list) else None
    if number is None:
        raise PlaceError(f"{'/'.join(path)}: there is no such place in the site")
    return number


def _number(data: Sequence[Any], step: str) -> int | None:
    for number, one in enumerate(data):
        if isinstance(one, dict) and one.get("id") == step:
            return number
    places = {str(number): number for number, one in enumerate(data) if not _has_id(one)}
    return places.get(step)


def _has_id(data: Any) -> bool:
    return isinstance(data, dict) and "id" in data
