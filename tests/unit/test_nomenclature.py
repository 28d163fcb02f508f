from __future__ import annotations

import re

import pytest

from backspan.core.mechanics import FORMULAS
from backspan.core.quantities import SAME, CoherentSet, coherent_unit
from backspan.core.worked.symbols import SYMBOLS
from backspan.core.worked.table import describe
from tools.write_nomenclature import PAGE, WORDS, page


def rows(text: str) -> list[list[str]]:
    return [line.strip("| ").split(" | ") for line in text.splitlines() if line.startswith("| ")]


def test_the_page_is_what_the_formulas_and_words_say() -> None:
    assert PAGE.read_text(encoding="utf-8") == page(), "run `python tools/write_nomenclature.py`"


@pytest.mark.parametrize("name", FORMULAS)
def test_every_name_of_a_formula_has_its_row(name: str) -> None:
    names = page().partition("## Constants")[0]
    found = {row[0]: row for row in rows(names)}
    for parameter, dimension in describe(FORMULAS[name]).parameters:
        symbol = SYMBOLS[parameter]
        metric = "that of what is compared"
        if dimension != SAME:
            metric = coherent_unit(dimension, CoherentSet.METRES_NEWTONS)[0] or "none"
        unit = found[parameter].pop()
        assert found[parameter] == [parameter, symbol.symbol, symbol.meaning]
        assert unit.split(", ")[0] == metric


def test_every_row_is_whole() -> None:
    for table in re.split(r"\n\n", page()):
        assert len({len(row) for row in rows(table)}) <= 1


def test_a_word_stands_once_with_a_meaning() -> None:
    words = [word for word, _ in WORDS]
    assert len(words) == len(set(words))
    assert all(meaning and "|" not in meaning for _, meaning in WORDS)
