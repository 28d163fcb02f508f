"""What the browser's Python is given, and how it is started: one run of node, no network."""

from __future__ import annotations

import ast
import functools
import json
import shutil
import subprocess
import sys
from collections.abc import Iterator
from importlib.metadata import distribution
from pathlib import Path

from packaging.requirements import Requirement

from backspan.core.wire import canonical, to_data
from backspan.exchange.files import load

ROOT = Path(__file__).resolve().parents[2]
BROWSER = ROOT / "tests" / "browser"
TESTS = ROOT / "tests" / "unit" / "core"
#: The projects reviewed on both sides, by the name they have here.
PROJECTS = {
    "demo": ROOT / "examples" / "demo" / "site.yaml",
    **{path.stem: path for path in sorted((ROOT / "examples" / "published").glob("*.yaml"))},
}
#: Files outside the core that its own tests read or import.
BESIDE = (
    "src/backspan/__init__.py",
    "src/backspan/exchange",
    "src/backspan/rulesets",
    "tests/architecture",
    "tools",
)
BROWSER_HAS = sys.stdlib_module_names | {"backspan", "tools", "pytest"}
MENDS = "run `npm ci` in tests/browser (or `make test`, which does it)"
LONGEST_SECONDS = 600

SETTINGS = """\
[pytest]
addopts = --import-mode=importlib --strict-markers
pythonpath = .
filterwarnings = error
markers =
    slow: not in a spread of the tests
    long: begun first
"""


def installed_problem(folder: Path) -> str | None:
    """Why the browser's Python cannot be started from a folder with a package.json, or None."""
    wanted = json.loads((folder / "package.json").read_text(encoding="utf-8"))
    version = wanted["devDependencies"]["pyodide"]
    installed = folder / "node_modules" / "pyodide" / "package.json"
    if not installed.is_file():
        return f"the browser's Python is not installed: {MENDS}"
    found = json.loads(installed.read_text(encoding="utf-8"))["version"]
    if found != version:
        return f"the browser's Python is {found}, expected {version}: {MENDS}"
    if shutil.which("node") is None:
        return "found no node on the search path: install Node.js 18 or newer with npm"
    return None


def needs_of_core_tests() -> dict[str, frozenset[str]]:
    """Each file of the core's tests, with the packages it needs that the browser does not have."""
    return {
        path.relative_to(ROOT).as_posix(): _needs(path) for path in sorted(TESTS.rglob("test_*.py"))
    }


def starting_processes() -> list[str]:
    """The core's tests that start a process, which a browser cannot."""
    return [
        f"{path.relative_to(ROOT).as_posix()}::{node.name}"
        for path in sorted(TESTS.rglob("test_*.py"))
        for node in ast.parse(path.read_text(encoding="utf-8")).body
        if isinstance(node, ast.FunctionDef) and "subprocess" in _names(node)
    ]


def prepare(folder: Path, *, every: int) -> None:
    """Write into a folder all that the browser's Python is given.

    Of each function of the core's tests it is to run the first case and every n-th after it.
    """
    for name in ("reviews.py", "inside.py", "spread.py"):
        _copy(BROWSER / name, folder / name)
    _copy(ROOT / "src" / "backspan" / "core", folder / "core" / "backspan" / "core")
    (folder / "core" / "backspan" / "__init__.py").write_text("", encoding="utf-8")
    _copy(ROOT / "src" / "backspan" / "rulesets", folder / "rules")
    for name, path in PROJECTS.items():
        file = folder / "projects" / f"{name}.json"
        file.parent.mkdir(exist_ok=True)
        file.write_bytes(canonical(to_data(load(path))))
    _copy_tests(folder / "repository")
    _copy_libraries("pytest", folder / "libraries")
    leave_out = json.dumps(starting_processes())
    (folder / "every.json").write_text(json.dumps(every), encoding="utf-8")
    (folder / "leave_out.json").write_text(leave_out, encoding="utf-8")


def start(given: Path, answers: Path, *, longest: int = LONGEST_SECONDS) -> str:
    """Run all in the browser's Python; what it printed. Raises RuntimeError if it cannot."""
    done = subprocess.run(
        ["node", str(BROWSER / "run.mjs"), "inside.py", str(given), str(answers)],
        cwd=BROWSER,
        check=False,
        capture_output=True,
        text=True,
        timeout=longest,
    )
    if done.returncode != 0:
        raise RuntimeError(f"node ended early:\n{done.stdout[-3000:]}\n{done.stderr[-3000:]}")
    return done.stdout


def _copy_tests(repository: Path) -> None:
    for name in ("src/backspan/core", *BESIDE):
        _copy(ROOT / name, repository / name)
    _copy(TESTS, repository / TESTS.relative_to(ROOT))
    for name, needs in needs_of_core_tests().items():
        if needs:
            (repository / name).unlink()
    (repository / "pytest.ini").write_text(SETTINGS, encoding="utf-8")


def _copy_libraries(name: str, folder: Path) -> None:
    """Copy a package with all that it needs; each must be plain Python."""
    found = distribution(name)
    for file in found.files or ():
        if file.suffix in {".so", ".pyd"}:
            raise RuntimeError(f"{name} is not plain Python: {file}")
        if file.suffix == ".py" and ".." not in file.parts:
            _copy(Path(str(found.locate_file(file))), folder / file)
    for line in found.requires or ():
        needed = Requirement(line)
        if needed.marker is None or needed.marker.evaluate({"extra": ""}):
            _copy_libraries(needed.name, folder)


def _copy(source: Path, target: Path) -> None:
    target.parent.mkdir(parents=True, exist_ok=True)
    if source.is_dir():
        shutil.copytree(source, target, ignore=shutil.ignore_patterns("__pycache__"))
    else:
        shutil.copyfile(source, target)


@functools.cache
def _needs(path: Path) -> frozenset[str]:
    """The packages a file and the helpers it imports need that the browser does not have."""
    needs: set[str] = set()
    for module, name in _imported(path):
        top = module.split(".")[0]
        if top == "tests":
            needs |= _needs(ROOT.joinpath(*module.split(".")).with_suffix(".py"))
        elif (module, name) == ("backspan.exchange.files", "load"):
            needs.add("pydantic")  # imported when the first project file is read
        elif top not in BROWSER_HAS:
            needs.add(top)
    return frozenset(needs)


def _imported(path: Path) -> Iterator[tuple[str, str]]:
    """Each module a file imports, with the name that is taken from it."""
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            yield from ((alias.name, "") for alias in node.names)
        elif isinstance(node, ast.ImportFrom) and node.module:
            yield from ((node.module, alias.name) for alias in node.names)


def _names(node: ast.AST) -> set[str]:
    return {one.id for one in ast.walk(node) if isinstance(one, ast.Name)}
