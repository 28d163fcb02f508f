"""Two numbers side by side can be swapped unseen, so public functions take them by name only."""

from __future__ import annotations

import ast
from collections.abc import Iterator

import pytest

from tests.architecture.source import FunctionNode, Module, Offence, found, hold, source_modules

NUMBERS = frozenset(
    {
        *("float", "Fraction", "Amount"),
        *("Length", "Area", "Force", "Mass", "Moment", "Pressure", "Speed", "Angle", "Ratio"),
        *("LinearMass", "ConductorArea", "Acceleration", "SectionModulus", "SecondMoment"),
        *("Voltage", "Current", "LinearResistance", "ApparentPower"),
    }
)
#: Called like any other function, by a name or by the class's.
PUBLIC_MAGIC = frozenset({"__init__", "__call__", "__new__"})


def names_a_number(annotation: ast.expr | None) -> bool:
    """Whether an annotation is a number or may be one (`float | None`, `Optional[Length]`)."""
    if annotation is None:
        return False
    if isinstance(annotation, ast.Constant) and isinstance(annotation.value, str):
        annotation = ast.parse(annotation.value, mode="eval").body
    if isinstance(annotation, ast.BinOp):
        return names_a_number(annotation.left) or names_a_number(annotation.right)
    if isinstance(annotation, ast.Subscript):
        outer = annotation.value
        if isinstance(outer, ast.Name) and outer.id in {"Optional", "Annotated"}:
            inner = annotation.slice
            return names_a_number(inner.elts[0] if isinstance(inner, ast.Tuple) else inner)
        return False
    name = annotation.attr if isinstance(annotation, ast.Attribute) else None
    if isinstance(annotation, ast.Name):
        name = annotation.id
    return name in NUMBERS


def public_functions(body: list[ast.stmt]) -> Iterator[FunctionNode]:
    """Functions of a module and methods of its public classes that others may call."""
    for node in body:
        if isinstance(node, FunctionNode):
            if not node.name.startswith("_") or node.name in PUBLIC_MAGIC:
                yield node
        elif isinstance(node, ast.ClassDef) and not node.name.startswith("_"):
            yield from public_functions(node.body)


def positional_numbers(module: Module) -> Iterator[Offence]:
    """Public functions that take two or more numbers by position."""
    if not module.within("backspan"):
        return
    for function in public_functions(module.tree.body):
        positional = [*function.args.posonlyargs, *function.args.args]
        numbers = [one.arg for one in positional if names_a_number(one.annotation)]
        if len(numbers) > 1:
            what = f"{function.name} takes {', '.join(numbers)} by position"
            yield Offence(module.place, function.lineno, what)


@pytest.mark.parametrize(
    "text",
    [
        "def f(reach: Length, backspan: Length) -> Moment: ...",
        "def f(load: Force, *, x: int, y: float) -> None: ...\ndef g(a: float, b: float): ...",
        "def f(reach: 'Length', load: quantities.Force) -> Moment: ...",
        "def f(reach: Length | None, load: Optional[Force] = None) -> Moment: ...",
        "def f(x: float, /, y: Annotated[float, LENGTH]) -> float: ...",
        "class Beam:\n    def at(self, reach: Length, backspan: Length) -> Moment: ...",
        "class Beam:\n    def __init__(self, reach: Length, backspan: Length) -> None: ...",
        "async def f(demand: Amount, capacity: Amount) -> bool: ...",
    ],
)
def test_two_numbers_by_position_are_seen(text: str) -> None:
    assert len(found(positional_numbers, text)) == 1


@pytest.mark.parametrize(
    "text",
    [
        "def f(*, reach: Length, backspan: Length) -> Moment: ...",
        "def f(load: Force, *, reach: Length) -> Moment: ...",
        "def f(load: Force, count: int, name: str) -> Moment: ...",
        "def f(loads: tuple[Force, ...], reaches: list[Length]) -> Moment: ...",
        "def _f(a: float, b: float) -> float: ...",
        "class _Hidden:\n    def f(self, a: float, b: float) -> float: ...",
        "class Beam:\n    reach: Length\n    backspan: Length",
    ],
)
def test_numbers_by_name_and_private_functions_are_fine(text: str) -> None:
    assert found(positional_numbers, text) == []


def test_public_functions_take_numbers_by_name() -> None:
    hold(positional_numbers, source_modules())
