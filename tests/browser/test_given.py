from __future__ import annotations

import json
from pathlib import Path

from tests.browser.given import installed_problem, needs_of_core_tests, starting_processes


def folder_with(folder: Path, *, wanted: str, installed: str | None) -> Path:
    """A made-up folder of a package with one dependency, installed or not."""
    package = {"devDependencies": {"pyodide": wanted}}
    (folder / "package.json").write_text(json.dumps(package), encoding="utf-8")
    if installed is not None:
        inner = folder / "node_modules" / "pyodide"
        inner.mkdir(parents=True)
        (inner / "package.json").write_text(json.dumps({"version": installed}), encoding="utf-8")
    return folder


def test_what_mends_a_missing_installation_is_said(tmp_path: Path) -> None:
    problem = installed_problem(folder_with(tmp_path, wanted="1.0", installed=None))
    assert problem is not None
    assert "not installed: run `npm ci` in tests/browser" in problem


def test_another_version_than_the_one_asked_for_is_no_installation(tmp_path: Path) -> None:
    problem = installed_problem(folder_with(tmp_path, wanted="1.0", installed="0.9"))
    assert problem is not None
    assert "is 0.9, expected 1.0: run `npm ci` in tests/browser" in problem


def test_the_version_asked_for_will_do(tmp_path: Path) -> None:
    assert installed_problem(folder_with(tmp_path, wanted="1.0", installed="1.0")) is None


def test_a_file_is_left_out_for_a_package_the_browser_does_not_have() -> None:
    needs = needs_of_core_tests()
    assert needs["tests/unit/core/quantities/test_boundary.py"] == {"pydantic"}
    assert needs["tests/unit/core/review/test_run.py"] == frozenset()


def test_a_test_that_starts_a_process_is_found() -> None:
    name = "tests/unit/core/worked/test_table.py::test_compiled_files_alone_print_the_same_lines"
    assert name in starting_processes()
