"""One text for one content: canonical JSON, written and read, and the numbers of reports."""

from __future__ import annotations

import json
import re
from typing import Any

from backspan.core.numbers import significant
from backspan.core.wire.errors import WireError

_INFINITY = float("inf")
#: Far deeper than any record of ours, far shallower than the interpreter's own limit.
_DEEPEST = 100
#: Below this a reported number is arithmetic noise and is written as nothing.
_NOISE = 1e-9
_TEXT = re.compile(rb'"(?:[^"\\]|\\.)*+"?', re.DOTALL)
_SIGN = re.compile(rb"[\[\]{}]")


def canonical(data: Any) -> bytes:
    """`data` as JSON in UTF-8: keys sorted, no spaces, floats in their shortest exact form.

    Minus nothing is written as nothing. Raises WireError, with the path, for a number that is
    not finite, a key that is not text, text that is not Unicode, and anything JSON has no form for.
    """
    text = json.dumps(
        _plain(data, 0), sort_keys=True, separators=(",", ":"), ensure_ascii=False, allow_nan=False
    )
    return text.encode("utf-8")


def read_canonical(raw: bytes) -> Any:
    """The data that `canonical` wrote as these bytes.

    Raises WireError for bytes that are no JSON, nested deeper than any of ours, or written in
    another form: with other blanks, an order of keys or numbers of its own, a key twice.
    """
    if _too_deep(raw):
        raise WireError(f"data nested deeper than {_DEEPEST} levels")
    try:
        data = json.loads(raw.decode("utf-8"), parse_constant=_no_constant)
    except (ValueError, RecursionError) as error:
        raise WireError(f"not JSON: {error}") from error
    if canonical(data) != raw:
        raise WireError("not in the one form: keys, blanks or numbers differ")
    return data


def report_number(x: float) -> float:
    """`x` as a report writes it: 10 significant digits, 0.0 below 1e-9 of its unit, never -0.0.

    Raises NumberError if `x` is not finite.
    """
    rounded = significant(x, digits=10)
    return 0.0 if -_NOISE < rounded < _NOISE else rounded


def _too_deep(raw: bytes) -> bool:
    """Whether brackets outside of texts are nested too deep, told before a reader goes down there.

    The browser's Python has a small stack: a reader that runs out of it takes the page along.
    """
    depth = 0
    for sign in _SIGN.findall(_TEXT.sub(b"", raw)):
        depth += 1 if sign in b"[{" else -1
        if depth > _DEEPEST:
            return True
    return False


def _no_constant(text: str) -> Any:
    raise ValueError(f"found {text}, expected a finite number")


def _plain(data: Any, depth: int) -> Any:
    """`data` in the few types JSON has, each checked."""
    if depth > _DEEPEST:
        raise WireError(f"data nested deeper than {_DEEPEST} levels")
    if data is None or type(data) is bool or type(data) is int:
        return data
    if isinstance(data, str):
        return _unicode(data)
    if isinstance(data, float):
        if not -_INFINITY < data < _INFINITY:
            raise WireError(f"found {data!r}, expected a finite number")
        return data + 0.0  # -0.0 + 0.0 is 0.0
    if isinstance(data, dict):
        return {_key(name): _at(name, value, depth) for name, value in data.items()}
    if isinstance(data, list | tuple):
        return [_at(index, value, depth) for index, value in enumerate(data)]
    raise WireError(f"a {type(data).__name__} has no form in JSON")


def _at(step: str | int, value: Any, depth: int) -> Any:
    try:
        return _plain(value, depth + 1)
    except WireError as error:
        raise error.within(step) from error


def _key(name: Any) -> str:
    if not isinstance(name, str):
        raise WireError(f"found the key {name!r}, expected text")
    return _unicode(name)


def _unicode(text: str) -> str:
    try:
        text.encode("utf-8")
    except UnicodeEncodeError as error:
        raise WireError(f"found the text {text!r}, expected Unicode without surrogates") from error
    return str(text)
