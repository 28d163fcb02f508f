from __future__ import annotations

import json
import subprocess
import sys
from compileall import compile_dir
from dataclasses import replace
from pathlib import Path
from shutil import copytree, ignore_patterns
from types import FunctionType

import pytest

from backspan.core.mechanics import FORMULAS
from backspan.core.mechanics.formula_table import FORMULA_TABLE
from backspan.core.quantities import FORCE, LENGTH, RATIO, Force, Style
from backspan.core.worked.expression import (
    SourceMissingError,
    WorkedError,
    from_source,
    from_text,
)
from backspan.core.worked.formula import AnyFormula, Formula, formula
from backspan.core.worked.infix import source_text
from backspan.core.worked.lines import worked_line
from backspan.core.worked.table import FormulaDescription, describe, describe_all
from tests.unit.core.worked.made_up import counterweight_force
from tools.write_formula_table import TABLE, table_text

ROOT = Path(__file__).resolve().parents[4]

PRINT_LINES = """
import json
import sys
from dataclasses import replace
from backspan.core.mechanics import FORMULAS
from backspan.core.mechanics.formula_table import FORMULA_TABLE
from backspan.core.quantities import LENGTH, Style
from backspan.core.worked.expression import SourceMissingError, from_source
from backspan.core.worked.lines import worked_line
from backspan.core.worked.table import describe

lines = []
for formula in FORMULAS.values():
    try:
        from_source(formula.__wrapped__)
        sys.exit("there is source")
    except SourceMissingError:
        description = describe(formula, FORMULA_TABLE)
    arguments = {name: 2.0 + at for at, (name, _) in enumerate(description.parameters)}
    line = worked_line(replace(formula(**arguments), of=LENGTH), description, Style.US)
    lines.append([line.title, line.plain, line.source])
print(json.dumps(lines))
"""


def without_source() -> AnyFormula:
    """The made-up counterweight formula, as where only compiled files are shipped."""
    function = counterweight_force.__wrapped__
    moved = function.__code__.replace(co_filename="not shipped")
    copy = FunctionType(moved, function.__globals__, function.__name__)
    copy.__module__ = "not_shipped"
    copy.__kwdefaults__ = function.__kwdefaults__
    copy.__annotations__ = function.__annotations__
    copy.__doc__ = function.__doc__
    return Formula(copy, counterweight_force.symbol)


def test_a_formula_is_described_from_its_source() -> None:
    assert describe(counterweight_force) == FormulaDescription(
        name="counterweight_force",
        symbol="W",
        parameters=(("factor", RATIO), ("load", FORCE), ("reach", LENGTH), ("backspan", LENGTH)),
        result=FORCE,
        expression=from_source(counterweight_force.__wrapped__),
        title="Counterweight that resists a load",
        source="made up, for a test.",
    )


def test_the_table_stands_in_where_there_is_no_source() -> None:
    from_table = {"counterweight_force": "factor * load * reach / backspan"}
    assert describe(without_source(), from_table) == describe(counterweight_force)


def test_the_source_goes_before_the_table() -> None:
    assert describe(counterweight_force, {"counterweight_force": "factor"}) == describe(
        counterweight_force
    )


def test_without_source_and_table_the_error_says_so() -> None:
    with pytest.raises(SourceMissingError, match="counterweight_force: the source is not at hand"):
        describe(without_source(), {"another": "factor"})


def test_a_wrong_text_in_the_table_is_named() -> None:
    with pytest.raises(
        WorkedError, match=r"table of formulas, counterweight_force: 'x' is neither"
    ):
        describe(without_source(), {"counterweight_force": "x * load"})


def test_a_parameter_without_a_dimension_is_refused() -> None:
    @formula(symbol="X")
    def bare(*, load: float) -> Force:
        """Made up.

        Source: made up.
        """
        return load

    with pytest.raises(WorkedError, match="bare: parameter 'load' has no dimension; annotate it"):
        describe(bare)


def test_a_result_without_a_dimension_is_refused() -> None:
    @formula(symbol="X")
    def bare(*, load: Force) -> float:
        """Made up.

        Source: made up.
        """
        return load

    with pytest.raises(WorkedError, match="bare: the result has no dimension"):
        describe(bare)


@pytest.mark.parametrize(
    "docstring",
    [None, "", "A title alone.", "Source: only this.", "A title.\n\nSource:", "A title. Source: x"],
)
def test_a_docstring_without_title_or_source_is_refused(docstring: str | None) -> None:
    def made(*, load: Force) -> Force:
        return load

    made.__doc__ = docstring
    with pytest.raises(WorkedError, match='needs a title and a "Source:" paragraph'):
        describe(Formula(made, "X"))


def test_all_formulas_are_described_by_name() -> None:
    described = describe_all(FORMULAS)
    assert list(described) == list(FORMULAS)
    assert all(name == one.name for name, one in described.items())


def test_the_table_is_what_the_sources_say() -> None:
    assert TABLE.read_text(encoding="utf-8") == table_text(FORMULAS), (
        "run `python tools/write_formula_table.py`"
    )


@pytest.mark.parametrize("name", FORMULAS)
def test_the_table_reads_back_to_the_tree_of_the_source(name: str) -> None:
    function = FORMULAS[name].__wrapped__
    tree = from_source(function)
    assert FORMULA_TABLE[name] == source_text(tree)
    read = from_text(
        FORMULA_TABLE[name],
        parameters=tuple(name for name, _ in describe(FORMULAS[name]).parameters),
        constants=function.__globals__,
        place=name,
    )
    assert read == tree


def test_compiled_files_alone_print_the_same_lines(tmp_path: Path) -> None:
    package = tmp_path / "backspan"
    copytree(
        ROOT / "src" / "backspan" / "core",
        package / "core",
        ignore=ignore_patterns("__pycache__"),
    )
    (package / "__init__.py").write_text("", encoding="utf-8")
    assert compile_dir(package, quiet=1, legacy=True)
    for source in package.rglob("*.py"):
        source.unlink()
    run = subprocess.run(
        [
            sys.executable,
            "-I",
            "-c",
            f"import sys\nsys.path.insert(0, {str(tmp_path)!r})\n{PRINT_LINES}",
        ],
        check=False,
        capture_output=True,
        text=True,
    )
    assert run.stderr == ""
    expected = []
    for one in FORMULAS.values():
        description = describe(one)
        arguments = {name: 2.0 + at for at, (name, _) in enumerate(description.parameters)}
        line = worked_line(replace(one(**arguments), of=LENGTH), description, Style.US)
        expected.append([line.title, line.plain, line.source])
    assert json.loads(run.stdout) == expected
