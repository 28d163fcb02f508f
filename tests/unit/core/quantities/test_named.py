"""Each row of the table of quantities fits the project file, the practice rules and `ask`."""

from __future__ import annotations

import inspect
import re
from collections import Counter
from dataclasses import fields, is_dataclass
from typing import Any, get_type_hints

import pytest

from backspan.core.model import kit, rigs, site
from backspan.core.model.evidence import Sign
from backspan.core.quantities.named import QUANTITIES, Quantity
from backspan.core.rules.shape import Limit, WordList
from tests.unit.core.rigs import case

#: The record of the project file that each row names.
RECORDS: dict[str, type] = {
    "counterweighted_beam": rigs.CounterweightedBeam,
    "stack": rigs.Stack,
    "group": rigs.PieceGroup,
    "suspension_point": rigs.SuspensionPoint,
    "fulcrum": rigs.Fulcrum,
    "beam": kit.Beam,
    "label": kit.BeamLabel,
    "piece": kit.Piece,
    "hoist": kit.Hoist,
    "stage": kit.Stage,
    "rig": rigs.Rig,
    "parapet": site.Parapet,
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
    assert signs <= {Sign.NOT_NEGATIVE if one.zero else Sign.POSITIVE}


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


def test_every_stated_number_of_these_records_is_a_row_or_left_alone_for_a_reason() -> None:
    """A number nobody reads yet is named here, so that a new one is not forgotten."""
    unread = {
        "hoist.mass",  # looked at beside its rated load
        "stage.width",
        "suspension_point.rope_length",
    }
    number = re.compile(r"StatedValue\[(typing\.Annotated\[)?(float|int)\b")
    numbers = set()
    for name, record in RECORDS.items():
        assert is_dataclass(record)
        hints = get_type_hints(record, include_extras=True)
        for field in fields(record):
            if number.search(str(hints[field.name])):
                numbers.add(f"{name}.{field.name}")
    rows = {f"{one.record}.{one.field}" for one in STATED}
    assert rows <= numbers
    assert numbers - rows == unread


def test_names_of_questions_and_words_are_each_its_own() -> None:
    asked = Counter(one.asked for one in QUANTITIES.values() if one.asked)
    words = Counter(one.words for one in QUANTITIES.values())
    symbols = Counter(one.symbol for one in QUANTITIES.values() if one.symbol)
    assert max(asked.values()) == max(words.values()) == max(symbols.values()) == 1
    assert all(inspect.cleandoc(one.words) == one.words for one in QUANTITIES.values())
