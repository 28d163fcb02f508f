from __future__ import annotations

import re
from collections import Counter

import pytest

from backspan.core.mechanics import FORMULAS, constants
from backspan.core.worked.expression import Constant, leaves
from backspan.core.worked.symbols import CONSTANTS, SYMBOLS, Symbol
from backspan.core.worked.table import describe

ALL = (*SYMBOLS.values(), *CONSTANTS.values())


def constants_of(name: str) -> dict[str, float]:
    tree = describe(FORMULAS[name]).expression
    return {one.name: one.value for one in leaves(tree) if isinstance(one, Constant)}


@pytest.mark.parametrize("name", FORMULAS)
def test_every_parameter_has_a_symbol_in_its_dimension(name: str) -> None:
    for parameter, dimension in describe(FORMULAS[name]).parameters:
        assert parameter in SYMBOLS, f"{parameter} has no symbol"
        assert SYMBOLS[parameter].dimension == dimension, f"{parameter} is {dimension.wanted}"


@pytest.mark.parametrize("name", FORMULAS)
def test_every_constant_has_a_symbol(name: str) -> None:
    for constant, value in constants_of(name).items():
        assert constant in CONSTANTS
        assert getattr(constants, constant) == value


@pytest.mark.parametrize("name", FORMULAS)
def test_no_two_things_in_a_line_share_a_symbol(name: str) -> None:
    described = describe(FORMULAS[name])
    symbols = [SYMBOLS[parameter].symbol for parameter, _ in described.parameters]
    symbols += [CONSTANTS[constant].symbol for constant in constants_of(name)]
    assert not [one for one, times in Counter([*symbols, described.symbol]).items() if times > 1]


def test_no_symbol_is_left_that_no_formula_uses() -> None:
    used = {name for one in FORMULAS.values() for name, _ in describe(one).parameters}
    assert set(SYMBOLS) - used == set()
    assert set(CONSTANTS) == {name for one in FORMULAS for name in constants_of(one)}


def test_one_symbol_stands_for_one_name() -> None:
    assert max(Counter(one.symbol for one in ALL).values()) == 1


@pytest.mark.parametrize("symbol", ALL, ids=lambda symbol: symbol.name)
def test_a_symbol_is_one_letter_with_at_most_one_index(symbol: Symbol) -> None:
    assert re.fullmatch(r"[^\W\d_](_[^\W_]+)?", symbol.symbol)
    assert symbol.meaning
    assert "|" not in symbol.meaning


@pytest.mark.parametrize("name", FORMULAS)
def test_the_symbol_of_a_result_is_letters_with_at_most_one_index(name: str) -> None:
    assert re.fullmatch(r"[^\W\d_]+(_[^\W_]+)?", FORMULAS[name].symbol)
