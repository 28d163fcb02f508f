"""The core opens nothing, asks no clock, prints nothing, and needs only the standard library."""

from __future__ import annotations

import ast
import sys
from collections.abc import Iterator

import pytest

from tests.architecture.source import (
    FunctionNode,
    Module,
    Offence,
    found,
    hold,
    imports,
    source_modules,
)

#: Modules of the standard library that reach outside: files, clock, chance, network, processes.
REACHING_OUT = frozenset(
    {
        *("glob", "io", "os", "pathlib", "shutil", "sqlite3", "tempfile"),
        *("getpass", "locale", "logging", "platform", "time"),
        *("random", "secrets", "uuid"),
        *("http", "socket", "ssl", "urllib"),
        *("asyncio", "ctypes", "multiprocessing", "signal", "subprocess", "threading"),
    }
)
REACHING_OUT_CALLS = frozenset({"open", "print", "input", "eval", "exec", "__import__"})
CLOCK_READINGS = frozenset({"now", "today", "utcnow"})

#: The hooks where a type of the core explains itself to pydantic, inside a function, when asked.
EXPLAINED_TO_PYDANTIC = {
    "backspan.core.quantities.boundary": frozenset({"pydantic_core"}),
    "backspan.core.model.evidence": frozenset({"pydantic_core"}),
}


def lazy_imports(module: Module) -> set[tuple[str, int]]:
    """Imports that stand inside a function."""
    return {
        found_import
        for node in ast.walk(module.tree)
        if isinstance(node, FunctionNode)
        for found_import in imports(node)
    }


def foreign_imports(module: Module) -> Iterator[Offence]:
    """Imports of anything but the core and the pure part of the standard library."""
    if not module.within("backspan.core"):
        return
    allowed_hooks = EXPLAINED_TO_PYDANTIC.get(module.name, frozenset())
    lazy = lazy_imports(module)
    for name, line in imports(module.tree):
        top = name.split(".")[0]
        if name.startswith("."):
            yield Offence(module.place, line, f"relative import {name}")
        elif top == "backspan":
            if name != "backspan.core" and not name.startswith("backspan.core."):
                yield Offence(module.place, line, f"{name} is above the core")
        elif top in allowed_hooks and (name, line) in lazy:
            continue
        elif top not in sys.stdlib_module_names:
            yield Offence(module.place, line, f"{name} is not in the standard library")
        elif top in REACHING_OUT:
            yield Offence(module.place, line, f"{name} reaches outside the core")


def reaching_out(module: Module) -> Iterator[Offence]:
    """Calls that open, print or run something, and readings of the clock."""
    if not module.within("backspan.core"):
        return
    for node in ast.walk(module.tree):
        if isinstance(node, ast.Name) and node.id in REACHING_OUT_CALLS:
            yield Offence(module.place, node.lineno, f"{node.id} in the core")
        elif isinstance(node, ast.Attribute) and node.attr in CLOCK_READINGS:
            yield Offence(module.place, node.lineno, f".{node.attr} reads a clock in the core")


@pytest.mark.parametrize(
    ("text", "what"),
    [
        ("import os.path", "os.path reaches outside the core"),
        ("from pathlib import Path", "pathlib reaches outside the core"),
        ("from time import monotonic", "time reaches outside the core"),
        ("def f():\n    import random", "random reaches outside the core"),
        ("import numpy", "numpy is not in the standard library"),
        ("import pydantic_core", "pydantic_core is not in the standard library"),
        ("from backspan.exchange import load", "backspan.exchange is above the core"),
        ("import backspan", "backspan is above the core"),
        ("from . import sibling", "relative import ."),
    ],
)
def test_a_foreign_import_is_seen(text: str, what: str) -> None:
    assert found(foreign_imports, text) == [what]


def test_the_hooks_for_pydantic_may_import_it_only_inside_a_function() -> None:
    hook = "backspan.core.quantities.boundary"
    inside = "def hook():\n    from pydantic_core import core_schema\n"
    assert found(foreign_imports, inside, name=hook) == []
    assert found(foreign_imports, "import pydantic_core", name=hook) == [
        "pydantic_core is not in the standard library"
    ]


def test_other_rooms_may_import_what_they_need() -> None:
    assert found(foreign_imports, "import os, yaml", name="backspan.exchange.files") == []


@pytest.mark.parametrize(
    ("text", "what"),
    [
        ("open('x')", "open in the core"),
        ("print(1)", "print in the core"),
        ("write = print", "print in the core"),
        ("import datetime\ndatetime.datetime.now()", ".now reads a clock in the core"),
        ("from datetime import date\ndate.today()", ".today reads a clock in the core"),
        ("import datetime as d\nd.datetime.utcnow", ".utcnow reads a clock in the core"),
    ],
)
def test_a_call_that_reaches_out_is_seen(text: str, what: str) -> None:
    assert found(reaching_out, text) == [what]


def test_the_core_imports_only_itself_and_the_standard_library() -> None:
    hold(foreign_imports, source_modules())


def test_the_core_opens_nothing_and_asks_no_clock() -> None:
    hold(reaching_out, source_modules())
