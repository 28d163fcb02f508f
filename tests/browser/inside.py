"""The program that runs in the browser's Python: reviews from source and compiled, then tests.

Given are the folders core, rules, projects, repository and libraries; see given.py.
"""

from __future__ import annotations

import compileall
import json
import os
import runpy
import shutil
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

GIVEN = Path("/given")
ANSWERS = Path("/answers")
HERE = Path("/here")


@contextmanager
def importing_from(*folders: Path) -> Iterator[None]:
    """Import what stands in these folders, and nothing of the project that is loaded already."""
    names = [str(folder) for folder in folders]
    sys.path[:0] = names
    try:
        yield
    finally:
        sys.path[:] = [name for name in sys.path if name not in names]
        for name in [one for one in sys.modules if one.split(".")[0] in {"backspan", "tests"}]:
            del sys.modules[name]


def write_reviews(core: Path, answers: Path) -> int:
    """Write the reviews of all projects with the core in a folder; formulas that have a source."""
    with importing_from(core):
        program = runpy.run_path(str(GIVEN / "reviews.py"))
        projects = program["read_projects"](GIVEN / "projects")
        program["write_reviews"](projects, program["read_library"](GIVEN / "rules"), answers)
        return int(program["sources_at_hand"]())


def compiled() -> Path:
    """The core as compiled files alone, in a folder where its source never was imported."""
    folder = HERE / "compiled"
    shutil.copytree(GIVEN / "core", folder)
    if not compileall.compile_dir(folder, quiet=1, legacy=True):
        raise RuntimeError("the core does not compile")
    for source in folder.rglob("*.py"):
        source.unlink()
    return folder


class Counts:
    """Listens to pytest: how each test ended."""

    def __init__(self) -> None:
        self.passed: dict[str, int] = {}
        self.others: list[str] = []

    def pytest_runtest_logreport(self, report: object) -> None:
        """Count a test that passed; keep the name of one that did not."""
        name, outcome = str(getattr(report, "nodeid", "")), getattr(report, "outcome", "")
        if outcome != "passed":
            self.others.append(f"{outcome}: {name}")
        elif getattr(report, "when", "") == "call":
            file = name.split("::", maxsplit=1)[0]
            self.passed[file] = self.passed.get(file, 0) + 1

    def pytest_collectreport(self, report: object) -> None:
        """Keep the name of a file that cannot be read."""
        if getattr(report, "outcome", "") != "passed":
            self.others.append(f"not collected: {getattr(report, 'nodeid', '')}")


class Spread:
    """Leaves in each function of the tests some of its cases, and says which are left."""

    def __init__(self, every: int) -> None:
        self.every = every

    def pytest_collection_modifyitems(self, config: Any, items: list[Any]) -> None:
        """Take out what is not chosen."""
        spread = runpy.run_path(str(GIVEN / "spread.py"))["spread"]
        chosen = set(spread([one.nodeid for one in items], every=self.every))
        left_out = [one for one in items if one.nodeid not in chosen]
        items[:] = [one for one in items if one.nodeid in chosen]
        config.hook.pytest_deselected(items=left_out)


def run_tests(every: int) -> dict[str, object]:
    """Run the core's own tests; how many passed in each file, and what did not.

    All of them if `every` is 1. Else of each function the first case and every n-th after it,
    and none of those that are marked as slow.
    """
    repository = GIVEN / "repository"
    os.chdir(repository)
    with importing_from(repository / "src", GIVEN / "libraries"):
        import pytest  # noqa: PLC0415 - it is here only inside this folder of libraries

        counts = Counts()
        arguments = ["-q", "--tb=short", "-p", "no:cacheprovider"]
        leave_out = json.loads((GIVEN / "leave_out.json").read_text(encoding="utf-8"))
        arguments += [f"--deselect={name}" for name in leave_out]
        if every > 1:
            arguments += ["-m", "not slow"]
        plugins: list[object] = [counts, Spread(every)]
        status = int(pytest.main([*arguments, "tests/unit/core"], plugins=plugins))
    return {"status": status, "passed": counts.passed, "others": counts.others}


def main() -> None:
    """Do all three and write what came of them."""
    sys.dont_write_bytecode = True
    sources = {
        "source": write_reviews(GIVEN / "core", ANSWERS / "source"),
        "compiled": write_reviews(compiled(), ANSWERS / "compiled"),
    }
    told = {
        "python": list(sys.version_info[:2]),
        "platform": sys.platform,
        "sources_at_hand": sources,
        "tests": run_tests(json.loads((GIVEN / "every.json").read_text(encoding="utf-8"))),
    }
    (ANSWERS / "told.json").write_text(json.dumps(told), encoding="utf-8")


if __name__ == "__main__":
    main()
