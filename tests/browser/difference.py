"""Where two JSON documents differ first."""

from __future__ import annotations

import json
from typing import Any


def first_difference(first: bytes, second: bytes) -> str | None:
    """The place and the two values where two JSON texts differ first; None for equal bytes."""
    if first == second:
        return None
    found = _between(json.loads(first), json.loads(second), "")
    if found is not None:
        return found
    at = next(
        (at for at, (one, other) in enumerate(zip(first, second, strict=False)) if one != other),
        min(len(first), len(second)),
    )
    around = slice(max(0, at - 20), at + 20)
    return f"byte {at}, with equal content: {first[around]!r} and {second[around]!r}"


def _between(first: Any, second: Any, place: str) -> str | None:
    if type(first) is not type(second):
        return f"{place or 'top'}: {first!r} and {second!r}"
    if isinstance(first, dict):
        if list(first) != list(second):
            return f"{place or 'top'}: keys {list(first)} and {list(second)}"
        pairs = [(first[key], second[key], f"{place}.{key}") for key in first]
    elif isinstance(first, list):
        sides = zip(first, second, strict=False)
        pairs = [(one, other, f"{place}[{at}]") for at, (one, other) in enumerate(sides)]
    else:
        return None if first == second else f"{place or 'top'}: {first!r} and {second!r}"
    found = next((one for pair in pairs if (one := _between(*pair)) is not None), None)
    if found is None and len(first) != len(second):
        return f"{place or 'top'}: {len(first)} items and {len(second)}"
    return found
