"""An entry of each kind is one line in each language; what people wrote stays as they wrote it."""

from __future__ import annotations

import importlib
import inspect
import pkgutil
from collections import Counter
from dataclasses import fields, is_dataclass, replace

import pytest

from backspan.core import model
from backspan.core.ledger import bodies
from backspan.core.ledger.chain import Chains
from backspan.core.ledger.entry_lines import entry_line
from backspan.core.ledger.kinds import KINDS, Body
from backspan.core.ledger.places_in_words import input_at
from backspan.core.quantities.named import QUANTITIES
from backspan.core.words import ENGLISH, LANGUAGES, WordsError, language_of
from backspan.core.words.say import WORD_INPUTS
from tests.unit.core.ledger.every_kind import SAID
from tests.unit.core.ledger.histories import described
from tests.unit.core.ledger.writing import SITE, written

SPANISH = language_of("es")


def line(body: Body, code: str = "en") -> str:
    """The line of an entry that says this."""
    return entry_line(written(Chains(SITE), "pad", body), LANGUAGES[code])


@pytest.mark.parametrize(("body", "english", "spanish"), SAID)
def test_an_entry_is_told_as_one_line(body: Body, english: str, spanish: str) -> None:
    assert line(body) == english
    assert line(body, "es") == spanish


def test_there_is_an_entry_of_every_kind_and_of_every_case() -> None:
    assert {type(body) for body, _, _ in SAID} == set(KINDS.values())
    told = dict.fromkeys(ENGLISH.entry_lines, 0)
    for name in told:
        without = {one: text for one, text in ENGLISH.entry_lines.items() if one != name}
        lacking = replace(ENGLISH, entry_lines=without)
        for body, _, _ in SAID:
            try:
                entry_line(written(Chains(SITE), "pad", body), lacking)
            except WordsError:
                told[name] += 1
    assert [name for name, many in told.items() if not many] == []


def test_the_entries_of_a_whole_site_are_told() -> None:
    for entry in described().entries:
        assert entry_line(entry)
        assert entry_line(entry, SPANISH) != entry_line(entry)


@pytest.mark.parametrize(
    "written_by_somebody",
    ["{where} {0} {", "línea «rota»", "use stopped", "100 % {by.__class__}", "-"],
)
def test_what_somebody_wrote_stays_as_it_is(written_by_somebody: str) -> None:
    body = bodies.UseStopped(("{drops}",), written_by_somebody)
    assert line(body) == f"drop {{drops}}: use stopped - {written_by_somebody}"
    assert line(body, "es") == f"bajada {{drops}}: uso parado: «{written_by_somebody}»"


@pytest.mark.parametrize("sign", ["\n", "\r\n", "\x1b[2J", "\u2028", "\u202e", "\0"])
def test_nothing_that_somebody_wrote_leaves_its_line(sign: str) -> None:
    told = line(bodies.UseStopped((f"S{sign}2",), f"wind{sign}drop S3: use permitted"))
    assert told.isprintable()
    assert told.startswith("drop S")
    assert told.endswith("drop S3: use permitted")


def test_an_empty_remark_leaves_no_stroke_behind() -> None:
    assert line(bodies.UseStopped(("S2",), " \n")) == "drop S2: use stopped"


@pytest.mark.parametrize(
    ("path", "name"),
    [
        (("kit", "hoists", "H", "stall_load"), "stall load of the hoist"),
        (("x", "fulcrum", "height"), "height of the fulcrum, from what it stands on"),
        (("x", "parapet", "height"), "height of the parapet above the roof"),
        (("kit", "units", "H-1", "condition"), "condition of the thing"),
        (("kit", "beams", "B", "length"), None),
        (("kit", "units", "H-1", "label"), None),
        (("height",), None),
        ((), None),
    ],
)
def test_a_value_is_called_by_its_name_only_where_that_is_certain(
    path: tuple[str, ...], name: str | None
) -> None:
    assert input_at(path, ENGLISH) == name


def test_no_name_is_that_of_a_field_which_another_record_has_too() -> None:
    there = Counter[str]()
    for module in pkgutil.iter_modules(model.__path__, f"{model.__name__}."):
        for _, record in inspect.getmembers(importlib.import_module(module.name), is_dataclass):
            if record.__module__ == module.name:
                there.update(one.name for one in fields(record) if "Stated" in str(one.type))
    named = Counter(one.field for one in QUANTITIES.values() if one.field)
    assert {name: many for name, many in there.items() if name in named} == named
    assert {name for name in WORD_INPUTS if there[name] > 1} == set()
