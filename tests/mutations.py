"""Damaged files and wire documents: whatever comes of them is an answer or a documented error."""

from __future__ import annotations

import copy
import random
import re
from typing import Any

from backspan.core.errors import BackspanError
from backspan.core.model.project import Project
from backspan.core.review import review
from backspan.core.wire import from_data, to_data
from tests.unit.core.rigs import LIBRARY, ON, PROJECT

Path = tuple[str | int, ...]
#: Numbers at which sums break: none, below none, hardly any, more than anything.
NUMBERS: tuple[float, ...] = (0.0, -0.0, -1.0, 1e-12, 1e9, 1e18, 1e150, 1e300)
VALUES: tuple[Any, ...] = (
    *(None, True, [], {}, "", "x", "\u202e", "x" * 3000, 0, -1, 10**8, 10**400),
    *NUMBERS,
)


def places_of(data: Any, path: Path = ()) -> list[Path]:
    """The place of every value in a document, those that hold others too."""
    if isinstance(data, dict):
        inner = [place for key, one in data.items() for place in places_of(one, (*path, key))]
    elif isinstance(data, list):
        inner = [place for at, one in enumerate(data) for place in places_of(one, (*path, at))]
    else:
        inner = []
    return [path, *inner] if path else inner


DOCUMENT = to_data(PROJECT)
PLACES = places_of(DOCUMENT)


def changed(path: Path, value: Any) -> Any:
    """The document with one value replaced."""
    data = copy.deepcopy(DOCUMENT)
    inner = data
    for step in path[:-1]:
        inner = inner[step]
    inner[path[-1]] = value
    return data


def outcome(data: Any) -> str:
    """The verdict of the review of a wire document, or the error that refused it.

    Any other exception goes through: it is the counterexample.
    """
    try:
        return str(review(from_data(Project, data), "D", LIBRARY, on=ON).verdict)
    except BackspanError as error:
        return type(error).__name__


def number_places() -> list[Path]:
    """Where the numbers of the document stand."""
    found = []
    for path in PLACES:
        inner = DOCUMENT
        for step in path:
            inner = inner[step]
        if type(inner) in (int, float):
            found.append(path)
    return found


def mutated(draw: random.Random) -> Any:
    """The document with one to three values replaced by others, of any kind."""
    data = copy.deepcopy(DOCUMENT)
    for _ in range(draw.randint(1, 3)):
        inner, path = data, draw.choice(PLACES)
        try:
            for step in path[:-1]:
                inner = inner[step]
            inner[path[-1]] = draw.choice(VALUES)
        except (LookupError, TypeError):
            continue  # an earlier change took away what this one would change
    return data


def damaged(draw: random.Random, text: str) -> str:
    """The text of a file with a few characters taken out, doubled, or put in, or a line moved."""
    for _ in range(draw.randint(1, 4)):
        at = draw.randrange(len(text))
        kind = draw.randrange(5)
        if kind == 0:
            text = text[:at] + text[at + draw.randint(1, 30) :]
        elif kind == 1:
            text = text[:at] + draw.choice("{}[]:,-&*!|>'\"%@`#\t\n 0") + text[at:]
        elif kind == 2:
            lines = text.split("\n")
            lines.insert(draw.randrange(len(lines)), lines[draw.randrange(len(lines))])
            text = "\n".join(lines)
        elif kind == 3:
            text = text[: at + 1]
        else:
            numbers = list(re.finditer(r"\d+", text))
            one = draw.choice(numbers) if numbers else None
            if one is not None:
                other = draw.choice(("0", "-5", "1e999", "9" * 400, "1/0", "NaN", "٣"))
                text = text[: one.start()] + other + text[one.end() :]
        if not text:
            return " "
    return text
