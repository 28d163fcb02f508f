"""The core in the browser's Python: the same bytes as here, from source and compiled alone.

Everything is checked on one run of node, started when the first of these tests needs it.
"""

from __future__ import annotations

import json
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest

from backspan.exchange.files import load, load_rule_library
from tests.browser.difference import first_difference
from tests.browser.given import (
    BROWSER,
    PROJECTS,
    installed_problem,
    needs_of_core_tests,
    prepare,
    start,
)
from tests.browser.reviews import write_reviews

pytestmark = pytest.mark.long

#: Of each function of the core's tests the first case and every so many after it are run here, and
#: none that is marked as slow; `make soak PART=browser_core` runs all.
EVERY = 20


@dataclass(frozen=True)
class Run:
    """What was written here and in the browser, what the browser told, and what it printed."""

    here: Path
    browser: Path
    told: dict[str, Any]
    printed: str


@pytest.fixture(scope="module")
def run(tmp_path_factory: pytest.TempPathFactory) -> Run:
    problem = installed_problem(BROWSER)
    if problem is not None:
        pytest.fail(problem)
    given, answers = tmp_path_factory.mktemp("given"), tmp_path_factory.mktemp("answers")
    prepare(given, every=EVERY)
    printed = start(given, answers)
    here = tmp_path_factory.mktemp("here")
    write_reviews({name: load(path) for name, path in PROJECTS.items()}, load_rule_library(), here)
    told = json.loads((answers / "told.json").read_text(encoding="utf-8"))
    return Run(here, answers, told, printed)


def test_it_is_the_browser_s_python(run: Run) -> None:
    assert run.told["platform"] == "emscripten"


@pytest.mark.parametrize("core", ["source", "compiled"])
@pytest.mark.parametrize("project", PROJECTS)
def test_every_review_is_the_same_bytes(run: Run, project: str, core: str) -> None:
    here, there = run.here / project, run.browser / core / project
    names = sorted(path.name for path in here.iterdir())
    assert names == sorted(path.name for path in there.iterdir())
    differences = {
        name: first_difference((here / name).read_bytes(), (there / name).read_bytes())
        for name in names
    }
    assert differences == dict.fromkeys(names)


def test_compiled_files_alone_print_from_the_table_of_formulas(run: Run) -> None:
    at_hand = run.told["sources_at_hand"]
    assert at_hand["source"] > 0
    assert at_hand["compiled"] == 0


def test_a_spread_of_the_core_s_own_tests_passes(
    run: Run, record_property: Callable[[str, object], None]
) -> None:
    told = run.told["tests"]
    record_property("passed", sum(told["passed"].values()))
    assert told["others"] == [], run.printed[-20000:]
    assert told["status"] == 0, run.printed[-20000:]


def test_no_file_of_the_core_s_tests_is_left_out_without_need(run: Run) -> None:
    without_needs = {name for name, needs in needs_of_core_tests().items() if not needs}
    assert set(run.told["tests"]["passed"]) == without_needs
