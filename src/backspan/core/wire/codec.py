"""Our frozen dataclasses to plain JSON data and back, exactly inverse, driven by type hints.

Every field is written, also one at its default, so that stored bytes do not change when a
default does. Reading is strict: nothing is converted, guessed or left over. A field that has a
default may be absent: bytes that were stored before there was such a field are still read.

What entries write anew along a path is read along that path alone (`from_changed`): a part that is
the same object as in data that was read before is the part it was read as then.
"""

from __future__ import annotations

import functools
import types
import typing
from collections.abc import Callable
from dataclasses import dataclass
from enum import StrEnum
from typing import Annotated, Any, TypeVar

from backspan.core.model.counts import at_least_one
from backspan.core.model.dated import DATE, DATE_OR_TIME, is_date, is_time, why_no_date
from backspan.core.model.evidence import ShortForm
from backspan.core.wire.errors import WireError
from backspan.core.wire.hints import fields_of, marker, optional, record_class, repeated

T = TypeVar("T")
_INFINITY = float("inf")
_LONGEST = 60
#: As a project file has them at the most.
_LARGEST_COUNT, _LONGEST_TEXT = 999_999_999, 2_000
_Convert = Callable[[Any], Any]
_Again = Callable[[Any, Any, Any], Any]


def to_data(record: Any) -> Any:
    """Plain data (dict, list, str, int, float, bool, None) for a dataclass instance.

    Raises WireError, with the path, for a value its field's type does not allow.
    """
    cls: Any = type(record)
    return codec_for(cls).write(record)


def from_data(cls: type[T], data: Any) -> T:
    """The instance of `cls` that `to_data` wrote as `data`.

    Raises WireError, with the path, for a missing or unknown field, a value of another type, and
    a number that is not finite.
    """
    hint: Any = cls
    return typing.cast("T", codec_for(hint).read(data))


def from_changed(cls: type[T], data: Any, before: Any, known: T) -> T:
    """The same as `from_data(cls, data)`, where `known` is what `before` was read as.

    Of data that is never changed in place only what is another object than before is read.
    Raises WireError as `from_data` does.
    """
    hint: Any = cls
    return typing.cast("T", codec_for(hint).again(data, before, known))


@dataclass(frozen=True, slots=True)
class Codec:
    """How one type is written and read; how its parts are read anew where only some changed."""

    write: _Convert
    read: _Convert
    parts: _Again | None = None

    def again(self, data: Any, before: Any, known: Any) -> Any:
        """What `data` is read as, where `before` was read as `known`."""
        if data is before:
            return known
        if self.parts is None or type(data) is not type(before):
            return self.read(data)
        return self.parts(data, before, known)


@functools.cache
def codec_for(hint: Any) -> Codec:
    """The codec of a type hint. Raises WireError for a type that has no plain form."""
    origin = typing.get_origin(hint)
    if origin is Annotated:
        inner = codec_for(typing.get_args(hint)[0])
        short = marker(hint, ShortForm)
        return inner if short is None else _possible(inner, short)
    if optional(hint) is not None:
        return _optional(codec_for(optional(hint)))
    if origin is tuple:
        return _tuple(hint)
    record = record_class(hint)
    if record is not None:
        return _record(hint, record)
    if isinstance(hint, type) and issubclass(hint, StrEnum):
        return _word(hint)
    plain = _PLAIN.get(hint)
    if plain is None:
        raise WireError(f"a value of type {hint!r} has no plain form")
    return plain


def _possible(inner: Codec, short: ShortForm) -> Codec:
    """Values of a field that can be: of its sign, known less badly than they are large."""

    def read(data: Any) -> Any:
        stated = inner.read(data)
        why = short.why_impossible(stated)
        if why is not None:
            raise _refusal(stated.value, why)
        return stated

    return Codec(write=inner.write, read=read)


def _refusal(data: Any, wanted: str) -> WireError:
    return WireError(f"found {_shown(data)}, expected {wanted}")


def _shown(data: Any) -> str:
    if isinstance(data, dict | list | tuple):
        return f"a {type(data).__name__}"
    if isinstance(data, int) and abs(data) > _LARGEST_COUNT:
        return "a very large number"
    text = repr(data)
    return text if len(text) <= _LONGEST else f"{text[:_LONGEST]}..."


def _exactly(cls: type, wanted: str) -> Codec:
    # type(), not isinstance: True is an int to Python and a different thing in JSON.
    def same(value: Any) -> Any:
        if type(value) is not cls:
            raise _refusal(value, wanted)
        return value

    return Codec(write=same, read=same)


def _write_float(value: Any) -> float:
    if type(value) not in (float, int) or not -_INFINITY < value < _INFINITY:
        raise _refusal(value, "a finite number")
    return float(value)


def _read_float(data: Any) -> float:
    if type(data) is not float or not -_INFINITY < data < _INFINITY:
        raise _refusal(data, "a finite number written with a decimal point")
    return data


def _dated(data: str, *, with_time: bool) -> None:
    if why_no_date(data, with_time=with_time) is not None:
        raise _refusal(data, DATE_OR_TIME if with_time else DATE)


def _read_int(data: Any) -> int:
    if type(data) is not int or not -_LARGEST_COUNT <= data <= _LARGEST_COUNT:
        raise _refusal(data, f"a whole number of at most {_LARGEST_COUNT:,}")
    return data


def _read_text(data: Any) -> str:
    if type(data) is not str or len(data) > _LONGEST_TEXT:
        raise _refusal(data, f"text of at most {_LONGEST_TEXT:,} characters")
    return data


_PLAIN: typing.Mapping[Any, Codec] = types.MappingProxyType(
    {
        str: Codec(write=_exactly(str, "text").write, read=_read_text),
        int: Codec(write=_exactly(int, "a whole number").write, read=_read_int),
        bool: _exactly(bool, "true or false"),
        float: Codec(write=_write_float, read=_read_float),
    }
)


def _word(words: type[StrEnum]) -> Codec:
    by_text = {str(word): word for word in words}
    wanted = "one of: " + " | ".join(by_text)

    def write(value: Any) -> str:
        if not isinstance(value, words):
            raise _refusal(value, wanted)
        return str(value)

    def read(data: Any) -> StrEnum:
        found = by_text.get(data) if isinstance(data, str) else None
        if found is None:
            raise _refusal(data, wanted)
        return found

    return Codec(write=write, read=read)


def _optional(inner: Codec) -> Codec:
    return Codec(
        write=lambda value: None if value is None else inner.write(value),
        read=lambda data: None if data is None else inner.read(data),
        parts=inner.parts,
    )


def _at(step: str | int, convert: _Convert, value: Any) -> Any:
    try:
        return convert(value)
    except WireError as error:
        raise error.within(step) from error


def _tuple(hint: Any) -> Codec:
    item = repeated(hint)
    return _fixed(typing.get_args(hint)) if item is None else _endless(codec_for(item))


def _endless(codec: Codec) -> Codec:
    def items(value: Any, cls: Any, convert: _Convert) -> list[Any]:
        if type(value) is not cls:
            raise _refusal(value, f"a {cls.__name__}")
        return [_at(index, convert, item) for index, item in enumerate(value)]

    def parts(data: Any, before: Any, known: Any) -> Any:
        pairs = zip(before, known, strict=True)
        there = {id(one): (one, value) for one, value in pairs}
        beside = list(there.values()) if len(there) == len(data) else []

        def one_again(index: int) -> Any:
            same = there.get(id(data[index])) or (beside[index] if beside else None)
            return codec.read(data[index]) if same is None else codec.again(data[index], *same)

        return tuple(_at(index, one_again, index) for index in range(len(data)))

    return Codec(
        write=lambda value: items(value, tuple, codec.write),
        read=lambda data: tuple(items(data, list, codec.read)),
        parts=parts,
    )


def _fixed(hints: tuple[Any, ...]) -> Codec:
    codecs = [codec_for(hint) for hint in hints]

    def items(value: Any, cls: Any, converts: list[_Convert]) -> list[Any]:
        if type(value) is not cls or len(value) != len(converts):
            raise _refusal(value, f"a {cls.__name__} of {len(converts)}")
        pairs = zip(converts, value, strict=True)
        return [_at(index, convert, item) for index, (convert, item) in enumerate(pairs)]

    writers = [codec.write for codec in codecs]
    readers = [codec.read for codec in codecs]
    return Codec(
        write=lambda value: items(value, tuple, writers),
        read=lambda data: tuple(items(data, list, readers)),
    )


def _record(hint: Any, cls: type[Any]) -> Codec:
    fields = fields_of(hint)
    record = _Record(
        cls,
        {one.name: codec_for(one.hint) for one in fields},
        frozenset(one.name for one in fields if one.required),
        tuple(one.name for one in fields if at_least_one(cls, one.name)),
        tuple((one.name, is_time(cls, one.name)) for one in fields if is_date(cls, one.name)),
    )
    return Codec(write=record.write, read=record.read, parts=record.parts)


@dataclass(frozen=True, slots=True)
class _Record:
    """The codecs of a record's fields; which must be there, are counts, are dates (with time)."""

    cls: type[Any]
    codecs: dict[str, Codec]
    required: frozenset[str]
    counts: tuple[str, ...]
    dates: tuple[tuple[str, bool], ...]

    def write(self, value: Any) -> dict[str, Any]:
        if type(value) is not self.cls:
            raise _refusal(value, f"a {self.cls.__name__}")
        codecs = self.codecs.items()
        return {name: _at(name, codec.write, getattr(value, name)) for name, codec in codecs}

    def read(self, data: Any) -> Any:
        self._refuse(data)
        there = ((name, codec) for name, codec in self.codecs.items() if name in data)
        return self.cls(**{name: _at(name, codec.read, data[name]) for name, codec in there})

    def parts(self, data: Any, before: Any, known: Any) -> Any:
        self._refuse(data)

        def again(name: str) -> Any:
            codec = self.codecs[name]
            if name not in before:
                return codec.read(data[name])
            return codec.again(data[name], before[name], getattr(known, name))

        return self.cls(**{name: _at(name, again, name) for name in self.codecs if name in data})

    def _refuse(self, data: Any) -> None:
        if type(data) is not dict:
            raise _refusal(data, f"a {self.cls.__name__} as a dict")
        if not self.required <= data.keys() <= self.codecs.keys():
            missing = sorted(self.required - data.keys())
            unknown = sorted(map(str, data.keys() - self.codecs.keys()))
            raise WireError(
                f"a {self.cls.__name__} with missing fields {missing} and unknown fields {unknown}"
            )
        for name in self.counts:
            value = data.get(name)
            if type(value) is int and value < 1:
                raise _refusal(value, f"{name} of at least 1")
        for name, with_time in self.dates:
            if isinstance(data.get(name), str):
                _at(name, functools.partial(_dated, with_time=with_time), data[name])
