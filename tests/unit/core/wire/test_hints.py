from dataclasses import dataclass, field
from typing import Annotated, Generic, TypeVar

import pytest

from backspan.core.model.evidence import ShortForm, Sign, StatedPositive, StatedValue
from backspan.core.quantities import LENGTH, Dimension, Length
from backspan.core.wire.hints import bare, fields_of, marker, optional, record_class, repeated

T = TypeVar("T")


@dataclass(frozen=True)
class Pair(Generic[T]):
    """A record with an open type."""

    first: T
    second: T | None = None
    others: tuple[T, ...] = field(default_factory=tuple)


def test_type_variables_are_filled_in() -> None:
    first, second, others = fields_of(Pair[Length])
    assert (first.name, first.hint, first.required) == ("first", Length, True)
    assert bare(second.hint) is float
    assert (second.required, second.default()) == (False, None)
    assert repeated(others.hint) == Length
    assert (others.required, others.default()) == (False, ())


def test_an_open_type_stays_open_where_nothing_fills_it() -> None:
    assert fields_of(Pair)[0].hint is T


def test_marks_are_found_however_they_are_wrapped() -> None:
    hint = Annotated[StatedPositive[Length] | None, "other"]
    assert bare(hint) == StatedValue[Length]
    assert marker(hint, ShortForm).sign is Sign.POSITIVE
    assert marker(hint, Dimension) is None
    assert marker(Length | None, Dimension) is LENGTH


def test_only_one_type_or_nothing_is_optional() -> None:
    assert optional(int | None) is int
    assert optional(int) is None
    assert optional(int | str) is None
    assert optional(int | str | None) is None
    assert bare(int | str) == int | str


def test_only_a_tuple_of_any_length_repeats() -> None:
    assert repeated(tuple[int, ...]) is int
    assert repeated(tuple[int, int]) is None
    assert repeated(list[int]) is None


def test_only_dataclasses_are_records() -> None:
    assert record_class(Pair[Length]) is Pair
    assert record_class(int) is None
    with pytest.raises(TypeError, match="is not a record"):
        fields_of(int)
