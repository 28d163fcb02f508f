"""Outside core/numbers the core uses no call whose last digit depends on the platform.

Versions of Python differ in `sum` of floats, in powers and in trigonometry; the core must write
the same bytes on a server and in a browser. Whole numbers and fractions are exact everywhere, so
counting and powers of ten are left alone.
"""

from __future__ import annotations

import ast
from collections.abc import Iterator
from typing import TypeGuard

import pytest

from tests.architecture.source import Module, Offence, found, hold, imports, source_modules

THE_ONE_PLACE = "backspan.core.numbers"
#: Its powers are of exact fractions; the float is made once, at the end.
EXACT_POWERS = "backspan.core.quantities"
MODULES = frozenset({"cmath", "statistics"})
#: What of `math` has one answer on every platform.
EXACT_MATH = frozenset({"ceil", "floor", "gcd", "inf", "isfinite", "isinf", "isnan", "lcm", "nan"})


def math_names(tree: ast.Module) -> Iterator[tuple[str, int]]:
    """Each name of `math` that the module uses, with its line."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Attribute) and isinstance(node.value, ast.Name):
            if node.value.id == "math":
                yield node.attr, node.lineno
        elif isinstance(node, ast.ImportFrom) and node.module == "math":
            yield from ((alias.name, node.lineno) for alias in node.names)
        elif isinstance(node, ast.Import):
            # Under another name its uses could not be followed.
            yield from (
                (f"as {alias.asname}", node.lineno)
                for alias in node.names
                if alias.name == "math" and alias.asname
            )


def is_counted(node: ast.expr) -> bool:
    """Whether an expression is a count: `1`, `len(...)` or something's `.count`."""
    if isinstance(node, ast.Constant):
        return isinstance(node.value, int)
    if isinstance(node, ast.Call):
        return isinstance(node.func, ast.Name) and node.func.id == "len"
    return isinstance(node, ast.Attribute) and node.attr == "count"


def sums_of_counts(tree: ast.Module) -> set[ast.expr]:
    """The names `sum` that add up counts, which are exact."""
    return {
        node.func
        for node in ast.walk(tree)
        if isinstance(node, ast.Call) and len(node.args) == 1
        if isinstance(node.args[0], ast.GeneratorExp) and is_counted(node.args[0].elt)
    }


def is_power(node: ast.AST) -> TypeGuard[ast.BinOp | ast.AugAssign]:
    """Whether it is `a ** b` or `a **= b`."""
    return isinstance(node, ast.BinOp | ast.AugAssign) and isinstance(node.op, ast.Pow)


def is_power_of_a_whole_number(power: ast.BinOp | ast.AugAssign) -> bool:
    """Whether it is `10**places`, a whole number to an exponent not typed negative: exact."""
    if not isinstance(power, ast.BinOp) or isinstance(power.right, ast.UnaryOp):
        return False
    typed = [one.value for one in (power.left, power.right) if isinstance(one, ast.Constant)]
    return isinstance(power.left, ast.Constant) and all(isinstance(one, int) for one in typed)


def platform_numbers(module: Module) -> Iterator[Offence]:
    """Uses of `sum`, `pow`, `**` and of the modules with platform-dependent functions."""
    if not module.within("backspan.core") or module.name == THE_ONE_PLACE:
        return
    for name, line in imports(module.tree):
        if name in MODULES:
            yield Offence(module.place, line, f"{name} outside core/numbers")
    for name, line in math_names(module.tree):
        if name not in EXACT_MATH:
            yield Offence(module.place, line, f"math {name} outside core/numbers")
    counting = sums_of_counts(module.tree)
    squares_units = module.within(EXACT_POWERS)
    for node in ast.walk(module.tree):
        if isinstance(node, ast.Name) and node.id in {"sum", "pow"} and node not in counting:
            yield Offence(module.place, node.lineno, f"{node.id} outside core/numbers")
        elif is_power(node) and not squares_units and not is_power_of_a_whole_number(node):
            yield Offence(module.place, node.lineno, "** outside core/numbers")


@pytest.mark.parametrize(
    ("text", "what"),
    [
        ("total = sum(loads)", "sum outside core/numbers"),
        ("total = sum(load.weight for load in loads)", "sum outside core/numbers"),
        ("add = sum", "sum outside core/numbers"),
        ("area = width ** 2", "** outside core/numbers"),
        ("area **= 2", "** outside core/numbers"),
        ("small = 10 ** -2", "** outside core/numbers"),
        ("side = 2 ** 0.5", "** outside core/numbers"),
        ("area = pow(width, 2)", "pow outside core/numbers"),
        ("import math\nmath.sin(1)", "math sin outside core/numbers"),
        ("from math import hypot", "math hypot outside core/numbers"),
        ("import math as m", "math as m outside core/numbers"),
        ("import statistics", "statistics outside core/numbers"),
    ],
)
def test_a_platform_dependent_call_is_seen(text: str, what: str) -> None:
    assert found(platform_numbers, text) == [what]


@pytest.mark.parametrize(
    "text",
    [
        "import math\nmath.isfinite(1.0)",
        "from math import floor",
        "pieces = sum(group.count for group in groups)",
        "pieces = sum(1 for piece in pieces)",
        "scale = 10 ** places",
        "from fractions import Fraction\nx = Fraction(1, 3) * width * width",
        "x = table.sum",
    ],
)
def test_exact_arithmetic_is_left_alone(text: str) -> None:
    assert found(platform_numbers, text) == []


def test_core_numbers_and_other_rooms_are_left_alone() -> None:
    text = "import math\ntotal = sum(loads) ** math.pi"
    assert found(platform_numbers, text, name=THE_ONE_PLACE) == []
    assert found(platform_numbers, text, name="backspan.drawings.scene") == []


def test_quantities_may_square_an_exact_unit_but_not_sum() -> None:
    name = "backspan.core.quantities.units"
    assert found(platform_numbers, "area = FOOT**2", name=name) == []
    assert found(platform_numbers, "x = sum(y)", name=name) == ["sum outside core/numbers"]


def test_the_core_leaves_platform_dependent_calls_to_core_numbers() -> None:
    hold(platform_numbers, source_modules())
