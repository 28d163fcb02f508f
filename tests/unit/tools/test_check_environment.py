from __future__ import annotations

import pytest

from tools.check_environment import (
    node_problem,
    postgres_folder,
    postgres_problem,
    python_problem,
)

ENOUGH = {"venv", "ensurepip"}


@pytest.mark.parametrize("version", [(3, 11, 0), (3, 12, 1), (3, 14, 2)])
def test_a_new_enough_python_with_venv_is_fine(version: tuple[int, ...]) -> None:
    assert python_problem(version=version, modules=ENOUGH) is None


@pytest.mark.parametrize("version", [(2, 7, 18), (3, 10, 13)])
def test_an_old_python_is_told_with_what_is_needed(version: tuple[int, ...]) -> None:
    problem = python_problem(version=version, modules=ENOUGH)
    assert problem is not None
    assert problem.startswith(f"found Python {'.'.join(map(str, version))}, need 3.11 or newer")


def test_a_python_without_venv_is_told_what_to_install() -> None:
    problem = python_problem(version=(3, 11, 2), modules={"venv"})
    assert problem is not None
    assert "no ensurepip" in problem
    assert "python3-venv" in problem


def test_a_new_enough_node_with_npm_is_fine() -> None:
    assert node_problem(node="v18.20.4\n", npm=True) is None


@pytest.mark.parametrize(
    ("node", "npm", "what"),
    [
        (None, False, "found no node and no npm, need Node.js 18"),
        (None, True, "found no node, need"),
        ("v20.1.0", False, "found no npm, need"),
        ("v16.20.2\n", True, "found Node.js v16.20.2, need Node.js 18"),
    ],
)
def test_what_is_missing_for_the_browser_tests_is_told(
    node: str | None,
    npm: bool,
    what: str,
) -> None:
    problem = node_problem(node=node, npm=npm)
    assert problem is not None
    assert problem.startswith(what)


def test_the_server_of_the_search_path_comes_first_and_then_the_newest() -> None:
    folders = ["/usr/lib/postgresql/9.6/bin", "/usr/lib/postgresql/15/bin"]
    assert postgres_folder(on_path="/server/bin/initdb", installed=folders) == "/server/bin"
    assert postgres_folder(on_path=None, installed=folders) == "/usr/lib/postgresql/15/bin"
    assert postgres_folder(on_path=None, installed=[]) is None


def test_a_machine_without_a_server_is_told_what_to_install() -> None:
    assert postgres_problem("/usr/lib/postgresql/15/bin") is None
    problem = postgres_problem(None)
    assert problem is not None
    assert "on Debian: postgresql" in problem
