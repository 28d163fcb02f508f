"""Each row of the table of quantities fits the project file, the practice rules and `ask`."""

from __future__ import annotations

import inspect
import re
from collections import Counter
from dataclasses import is_dataclass
from typing import Any, get_type_hints

import pytest

from backspan.core.model import kit, rigs, site, stages, units, work
from backspan.core.model.evidence import Sign, StatedValue
from backspan.core.quantities.named import QUANTITIES
from backspan.core.quantities.quantity import Quantity
from backspan.core.rules.shape import Limit, WordList
from backspan.core.sheet.leans_on import name_of_field, record_name
from backspan.core.words import say_input
from tests.unit.core.rigs import case

#: Every record of the project file, by what the table calls it.
RECORDS: dict[str, type] = {
    record_name(record): record
    for module in (rigs, stages, kit, site, units, work)
    for record in vars(module).values()
    if is_dataclass(record) and isinstance(record, type) and record is not StatedValue
}
STATED = [one for one in QUANTITIES.values() if one.record]


def marks(hint: Any) -> list[object]:
    """What stands beside a field's type, wherever in it."""
    inner = [mark for part in getattr(hint, "__args__", ()) for mark in marks(part)]
    return [*getattr(hint, "__metadata__", ()), *inner]


def hint_of(one: Quantity) -> Any:
    return get_type_hints(RECORDS[one.record], include_extras=True)[one.field]


@pytest.mark.parametrize("one", STATED, ids=lambda one: one.name)
def test_the_project_file_has_it_in_that_dimension(one: Quantity) -> None:
    found = marks(hint_of(one))
    assert one.dimension is None or one.dimension in found
    signs = {getattr(mark, "sign", None) for mark in found} - {None}
    above = {Sign.POSITIVE, Sign.SHARE}
    assert signs <= ({Sign.NOT_NEGATIVE, Sign.ANY} if one.zero else above)


@pytest.mark.parametrize("one", QUANTITIES.values(), ids=lambda one: one.name)
def test_the_practice_rules_have_what_it_names(one: Quantity) -> None:
    practice = case().practice
    if one.evidence:
        policy = practice.find(one.evidence)
        assert policy is not None
        assert isinstance(policy.content, WordList)
    bands = [f"plausible.{side}-{key}" for side in ("least", "most") if (key := getattr(one, side))]
    for key in [*bands, *([one.tolerance] if one.tolerance else [])]:
        value = practice.find(key)
        assert value is not None, key
        assert isinstance(value.content, Limit)
        if one.dimension is not None:
            assert value.content.amount.dimension == one.dimension


def stated_fields(kind: str) -> set[tuple[str, str]]:
    """The fields of the project file that hold a stated value of a kind, by record and field."""
    pattern = re.compile(rf"StatedValue\[(typing\.Annotated\[)?({kind})\b")
    found = set()
    for name, record in RECORDS.items():
        hints = get_type_hints(record, include_extras=True)
        found |= {(name, field) for field in hints if pattern.search(str(hints[field]))}
    return found


def test_every_stated_number_is_a_row() -> None:
    rows = {(one.record, one.field) for one in STATED}
    assert stated_fields("float|int") == rows


def test_every_stated_word_has_a_name_of_its_own_in_words() -> None:
    words = stated_fields("backspan")
    names = [name_of_field(RECORDS[record], field) for record, field in words]
    assert len(words) > 6
    assert len(set(names)) == len(names)
    assert all(say_input(name) for name in names)


def test_names_of_questions_and_words_are_each_its_own() -> None:
    asked = Counter(one.asked for one in QUANTITIES.values() if one.asked)
    words = Counter(one.words for one in QUANTITIES.values())
    symbols = Counter(one.symbol for one in QUANTITIES.values() if one.symbol)
    assert max(asked.values()) == max(words.values()) == max(symbols.values()) == 1
    assert all(inspect.cleandoc(one.words) == one.words for one in QUANTITIES.values())
