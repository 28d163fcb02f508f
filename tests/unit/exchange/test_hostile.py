"""Texts that would flood a page or play with a terminal are refused with their place."""

from __future__ import annotations

import pytest

from backspan.exchange.parse import parse_project
from backspan.exchange.parse.problems import ProjectError
from tests.architecture.source import ROOT

SMALL = (ROOT / "tests" / "cases" / "smallest.yaml").read_text(encoding="utf-8")
NAME = "name: A small roof"


@pytest.mark.parametrize(
    ("old", "new", "told"),
    [
        (NAME, f"name: {'x' * 201}", "a text of 201 characters"),
        (NAME, f"name: {'x' * 200_000}", "at most 200 characters"),
        (NAME, f"{NAME}\n  invented: {'x' * 2001}", "at most 2,000 characters"),
        (NAME, 'name: "\\e[2Jgone"', r"U\+001B"),
        (NAME, 'name: "\\u202Eevil"', r"U\+202E"),
        (NAME, 'name: "a\\u2028b"', r"U\+2028"),
        (NAME, 'name: "a\\rb"', r"U\+000D"),
        (NAME, 'name: "a\\x85b"', r"U\+0085"),
        (NAME, f'{NAME}\n  "pl\\eace": x', r"U\+001B in a key"),
        ("role: owner's engineer", 'role: "owner\\u2066s engineer"', r"U\+2066"),
    ],
)
def test_it_is_refused_with_its_place(old: str, new: str, told: str) -> None:
    assert old in SMALL
    with pytest.raises(ProjectError, match=rf"(?s)here.yaml:\d+:\d+.*{told}") as caught:
        parse_project(SMALL.replace(old, new, 1), "here.yaml")
    said = str(caught.value)
    assert len(said) < 2000
    assert "\x1b" not in said


def test_long_but_allowed_texts_are_taken() -> None:
    text = SMALL.replace(NAME, f"name: {'x' * 200}\n  invented: {'y' * 2000}", 1)
    assert len(parse_project(text, "here.yaml").site.name) == 200
    assert parse_project(SMALL.replace(NAME, 'name: "Zür\u00edch\tTower"', 1), "x").site.name
