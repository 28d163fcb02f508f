"""All of the core's own tests in the browser's Python, of which `make test` runs a spread.

Left out are files that need a package the browser does not have, and tests that start a process.
"""

from __future__ import annotations

import json
import tempfile
from pathlib import Path

from tests.browser.given import (
    BROWSER,
    installed_problem,
    needs_of_core_tests,
    prepare,
    start,
    starting_processes,
)

ROUNDS = 1
LONGEST_SECONDS = 3600


def one_round(_number: int) -> dict[str, int]:
    """Run them once; AssertionError where one does not pass or a file is not run without need."""
    problem = installed_problem(BROWSER)
    if problem is not None:
        raise RuntimeError(problem)
    with tempfile.TemporaryDirectory() as name:
        given, answers = Path(name, "given"), Path(name, "answers")
        given.mkdir()
        answers.mkdir()
        prepare(given, every=1)
        printed = start(given, answers, longest=LONGEST_SECONDS)
        told = json.loads((answers / "told.json").read_text(encoding="utf-8"))["tests"]
    assert (told["others"], told["status"]) == ([], 0), printed[-20000:]
    needs = needs_of_core_tests()
    runs = {name for name, needed in needs.items() if not needed}
    assert set(told["passed"]) == runs, runs ^ set(told["passed"])
    return {
        "tests passed": sum(told["passed"].values()),
        "files run": len(runs),
        "files left out for a package": len(needs) - len(runs),
        "tests left out that start a process": len(starting_processes()),
    }
