"""What no file may state, no wire document may either: signs, sizes, counts."""

from __future__ import annotations

import typing
from collections.abc import Iterator
from typing import Any

import pytest

from backspan.core.model.evidence import ShortForm, Sign, StatedValue
from backspan.core.model.project import Project
from backspan.core.wire import WireError, from_data, to_data
from backspan.core.wire.hints import bare, fields_of, marker, record_class
from tests.unit.core.rigs import PROJECT

Path = tuple[str | int, ...]


def stated(value: Any, hint: Any, path: Path = ()) -> Iterator[tuple[Path, Sign]]:
    """Where every number that a person states stands in a record, with its sign."""
    short = marker(hint, ShortForm)
    if isinstance(value, StatedValue):
        if short is not None and isinstance(value.value, int | float):
            yield path, short.sign
    elif isinstance(value, tuple):
        item = typing.get_args(bare(hint))[0]
        for index, one in enumerate(value):
            yield from stated(one, item, (*path, index))
    elif record_class(bare(hint)) is not None and value is not None:
        for one in fields_of(bare(hint)):
            yield from stated(getattr(value, one.name), one.hint, (*path, one.name))


PLACES = list(stated(PROJECT, Project))


def changed(path: Path, value: Any) -> Any:
    data = to_data(PROJECT)
    inner = data
    for step in path[:-1]:
        inner = inner[step]
    inner[path[-1]] = value
    return data


def named(part: Path | Sign) -> str:
    """A path in the name of a test."""
    return "/".join(map(str, part)) if isinstance(part, tuple) else str(part)


def test_there_are_many_of_them() -> None:
    assert len(PLACES) >= 48


@pytest.mark.parametrize(("path", "sign"), PLACES, ids=named)
def test_a_number_of_the_wrong_sign_is_refused(path: Path, sign: Sign) -> None:
    data = to_data(PROJECT)
    for step in path:
        data = data[step]
    number = type(data["value"])
    above = {Sign.POSITIVE: (0, -1), Sign.NOT_NEGATIVE: (-1,), Sign.ANY: ()}
    wrong = {**above, Sign.SHARE: (0, -1, 2)}[sign]
    for value in wrong:
        with pytest.raises(WireError, match="expected a value of"):
            from_data(Project, changed((*path, "value"), number(value)))
    if data["tolerance"] is not None:
        with pytest.raises(WireError, match="a tolerance of zero or more"):
            from_data(Project, changed((*path, "tolerance"), number(-1)))


ROWS = ("drops", 0, "rig", "suspension_points", 0, "counterweighted_beam", "stack", "groups", 0)


@pytest.mark.parametrize("value", [0, -1])
def test_rows_hold_one_piece_at_least(value: int) -> None:
    with pytest.raises(WireError, match="per_row of at least 1"):
        from_data(Project, changed((*ROWS, "per_row"), value))


@pytest.mark.parametrize("value", [10**400, -(10**10)])
def test_a_whole_number_beyond_all_counts_is_refused(value: int) -> None:
    with pytest.raises(WireError, match="a whole number of at most"):
        from_data(Project, changed((*ROWS, "count", "value"), value))


def test_a_text_beyond_all_notes_is_refused() -> None:
    with pytest.raises(WireError, match="text of at most 2,000"):
        from_data(Project, changed(("site", "name"), "x" * 2001))
