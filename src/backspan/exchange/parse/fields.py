"""Records made ready for the types of the model, and what those types do not tell.

Unknown keys, ids, dates and whole numbers are judged here, before the types are.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Any

from backspan.core.model.counts import at_least_one
from backspan.core.model.dated import DATE, DATE_OR_TIME, is_date, is_time, why_no_date
from backspan.core.model.identifiers import Path, near
from backspan.core.wire.hints import bare, fields_of, record_class
from backspan.exchange.parse.problems import shown
from backspan.exchange.parse.shape import is_stated, item_hint, keys_of
from backspan.exchange.parse.tree import Flaw

ID_PATTERN = "^[A-Za-z0-9_-]{1,24}$"
WHOLE_PATTERN = "^[+-]?[0-9]{1,9}$"

_ID = re.compile(ID_PATTERN)
_WHOLE = re.compile(WHOLE_PATTERN)
#: Characters: what stands on a line of a paper, and what fills a paragraph of it.
MOST_NAME, MOST_NOTES = 200, 2_000
_NOTES = {"invented", "document", "copy_seen"}


def prepared(data: Any, hint: Any, path: Path, flaws: list[Flaw]) -> Any:
    """`data` with every short form written out and unknown keys left out; flaws are added.

    `reach: 18 in` becomes `reach: {value: 18 in, text: 18 in}`.
    """
    inner = bare(hint)
    if is_stated(inner) and isinstance(data, str):
        data = {"value": data}
    if isinstance(data, dict) and record_class(inner) is not None:
        return _record(data, inner, path, flaws)
    if isinstance(data, list):
        return [
            prepared(item, item_hint(inner, index), (*path, index), flaws)
            for index, item in enumerate(data)
        ]
    if inner is int and isinstance(data, str) and not _WHOLE.fullmatch(data):
        flaws.append(Flaw(path, shown(data), "a whole number, such as 12"))
    return data


def _record(data: dict[str, Any], hint: Any, path: Path, flaws: list[Flaw]) -> dict[str, Any]:
    hints = {one.name: one.hint for one in fields_of(hint)}
    known = keys_of(hint)
    ready = {}
    for name, value in data.items():
        own = (*path, name)
        if name in known:
            flaws.extend(_flaws_of_field(record_class(hint), name, value, own))
            ready[name] = prepared(value, hints[name], own, flaws)
        else:
            expected = near(name, known, what="keys of this record")
            flaws.append(Flaw(own, f"the unknown key {shown(name)}", expected, at_key=True))
    if is_stated(hint):
        written = data.get("value")
        ready["text"] = written if isinstance(written, str) else ""
    return ready


def longest(name: str) -> int:
    """Characters that the text of a field may have."""
    return MOST_NOTES if name in _NOTES else MOST_NAME


def _flaws_of_field(cls: Any, name: str, value: Any, path: Path) -> Iterator[Flaw]:
    if not isinstance(value, str):
        return
    most = longest(name)
    if len(value) > most:
        yield Flaw(path, f"a text of {len(value):,} characters", f"at most {most:,} characters")
    if name == "id" and not _ID.fullmatch(value):
        yield Flaw(path, shown(value), "1 to 24 letters, digits, - or _")
    if is_date(cls, name):
        with_time = is_time(cls, name)
        reason = why_no_date(value, with_time=with_time)
        if reason is not None:
            expected = DATE_OR_TIME if with_time else DATE
            yield Flaw(path, f"{shown(value)}, {reason}", expected)
    if at_least_one(cls, name) and _WHOLE.fullmatch(value) and int(value) < 1:
        yield Flaw(path, shown(value), "a whole number of at least 1")
