"""Reading the project's own source for the house rules: files, modules, places."""

from __future__ import annotations

import ast
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
SRC = ROOT / "src"

FunctionNode = ast.FunctionDef | ast.AsyncFunctionDef


@dataclass(frozen=True)
class Module:
    """A parsed Python file: its dotted name (`backspan.core.numbers`), where it is, its tree."""

    name: str
    place: str
    text: str
    tree: ast.Module

    def within(self, room: str) -> bool:
        """Whether the module is `room` or inside it."""
        return self.name == room or self.name.startswith(room + ".")


@dataclass(frozen=True)
class Offence:
    """One place that breaks a rule, and what is wrong there."""

    place: str
    line: int
    what: str

    def __str__(self) -> str:
        """`file:line: what`, so that an editor can jump there."""
        return f"{self.place}:{self.line}: {self.what}"


Rule = Callable[[Module], Iterable[Offence]]


def read_module(path: Path, *, under: Path) -> Module:
    """Parse a file; its dotted name is its path from `under`."""
    parts = list(path.relative_to(under).with_suffix("").parts)
    if parts[-1] == "__init__":
        parts.pop()
    text = path.read_text(encoding="utf-8")
    place = path.relative_to(ROOT).as_posix()
    return Module(".".join(parts), place, text, ast.parse(text, filename=place))


def source_modules() -> list[Module]:
    """Every module of the package."""
    return [read_module(path, under=SRC) for path in sorted(SRC.rglob("*.py"))]


def modules_in(*folders: str) -> list[Module]:
    """Every Python file in these folders of the repository, those folders that are there."""
    paths = sorted(path for folder in folders for path in (ROOT / folder).rglob("*.py"))
    return [read_module(path, under=ROOT) for path in paths if "node_modules" not in path.parts]


def snippet(text: str, *, name: str = "backspan.core.made_up") -> Module:
    """A made-up module, to show that a rule sees what it must see."""
    return Module(name, "made_up.py", text, ast.parse(text))


def hold(rule: Rule, modules: Iterable[Module]) -> None:
    """Fail with every place in these modules that breaks the rule."""
    places = [str(offence) for module in modules for offence in rule(module)]
    assert not places, "\n".join(["house rule broken:", *places])


def found(rule: Rule, text: str, *, name: str = "backspan.core.made_up") -> list[str]:
    """What the rule says about a made-up module."""
    return [offence.what for offence in rule(snippet(text, name=name))]


def functions(module: Module) -> Iterator[FunctionNode]:
    """Every function and method, nested ones too."""
    for node in ast.walk(module.tree):
        if isinstance(node, FunctionNode):
            yield node


def docstrings(tree: ast.AST) -> set[ast.expr]:
    """The nodes that are docstrings."""
    holders = (ast.Module, ast.ClassDef, ast.FunctionDef, ast.AsyncFunctionDef)
    return {
        node.body[0].value
        for node in ast.walk(tree)
        if isinstance(node, holders) and ast.get_docstring(node) is not None
        if isinstance(node.body[0], ast.Expr)
    }


def imports(tree: ast.AST) -> Iterator[tuple[str, int]]:
    """Every imported module with its line, as dotted names; relative imports keep their dots."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Import):
            yield from ((alias.name, node.lineno) for alias in node.names)
        elif isinstance(node, ast.ImportFrom):
            yield "." * node.level + (node.module or ""), node.lineno
