"""What the package imports is what it declares, is listed with its licence, and is permissive."""

from __future__ import annotations

import re
import sys
import tomllib
from collections.abc import Callable, Iterator
from importlib.metadata import metadata

import pytest

from tests.architecture.source import (
    ROOT,
    Module,
    Offence,
    found,
    hold,
    imports,
    source_modules,
)

#: Packages whose module has another name than the package.
MODULE_NAMES = {"django-htmx": "django_htmx", "pyyaml": "yaml"}
#: Comes with pydantic and speaks its language: the hooks of the core use it.
COMES_WITH = {"pydantic": "pydantic_core"}

PINNED = re.compile(r"^([a-z0-9][a-z0-9._-]*)==", re.MULTILINE)
TABLE_ROW = re.compile(r"^\| (?!package )([a-z0-9][a-z0-9._-]*) \| ([^|]+) \|", re.MULTILINE)
COPYLEFT = re.compile(r"\b(?:A|L)?GPL|General Public License", re.IGNORECASE)


def declared() -> list[str]:
    """The packages that pyproject.toml declares, by name."""
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    return [re.split(r"[<>=!~;\[ ]", one)[0].lower() for one in project["dependencies"]]


def module_names(packages: list[str]) -> frozenset[str]:
    """The modules these packages bring."""
    own = {MODULE_NAMES.get(one, one) for one in packages}
    return frozenset(own | {COMES_WITH[one] for one in packages if one in COMES_WITH})


def undeclared_imports(allowed: frozenset[str]) -> Callable[[Module], Iterator[Offence]]:
    """The rule over imports, given the modules of the declared packages."""

    def rule(module: Module) -> Iterator[Offence]:
        for name, line in imports(module.tree):
            top = name.split(".")[0]
            if top not in {"backspan", *sys.stdlib_module_names, *allowed}:
                yield Offence(module.place, line, f"{name} is not declared in pyproject.toml")

    return rule


def listed_to_run() -> dict[str, str]:
    """The first table of the notices: package and licence."""
    page = (ROOT / "THIRD-PARTY-NOTICES.md").read_text(encoding="utf-8")
    first = page.split("## Needed to run")[1].split("\n## ")[0]
    return {name: licence.strip() for name, licence in TABLE_ROW.findall(first)}


def pinned_to_run() -> list[str]:
    """Every package that is installed with backspan."""
    lock = (ROOT / "requirements" / "run.txt").read_text(encoding="utf-8")
    return sorted(set(PINNED.findall(lock)))


def licence_of(package: str) -> str:
    """What the installed package says its licence is."""
    said = metadata(package)
    stated = said.get_all("License-Expression") or said.get_all("License") or []
    classifiers = said.get_all("Classifier") or []
    return " ".join([*stated, *(one for one in classifiers if one.startswith("License ::"))])


@pytest.mark.parametrize("text", ["import anastruct", "from numpy import array"])
def test_an_undeclared_import_is_seen(text: str) -> None:
    assert len(found(undeclared_imports(frozenset({"click"})), text)) == 1


def test_declared_packages_and_the_standard_library_are_fine() -> None:
    text = "import click, json\nfrom backspan.core import numbers\nimport yaml, pydantic_core"
    assert found(undeclared_imports(module_names(["click", "pyyaml", "pydantic"])), text) == []


def test_the_package_imports_only_what_it_declares() -> None:
    hold(undeclared_imports(module_names(declared())), source_modules())


def test_every_package_installed_with_backspan_is_listed_with_its_licence() -> None:
    assert sorted(listed_to_run()) == pinned_to_run()


def test_a_copyleft_licence_is_known_by_any_of_its_names() -> None:
    assert COPYLEFT.search("GPL-3.0-or-later")
    assert COPYLEFT.search("License :: OSI Approved :: GNU Lesser General Public License v3")
    assert not COPYLEFT.search("MIT OR Apache-2.0")


def test_nothing_installed_with_backspan_is_copyleft() -> None:
    copyleft = {one for one in pinned_to_run() if COPYLEFT.search(licence_of(one))}
    assert copyleft == set()


def test_the_lock_and_the_declared_packages_agree() -> None:
    assert set(declared()) <= set(pinned_to_run())
