from __future__ import annotations

import json

import pytest

from backspan.core.version import VERSION
from backspan.exchange.files import load_rule_library
from tests.unit.cli.conftest import Run
from tools.write_commands_page import PAGE, helps, page


def test_rule_sets_are_listed_with_their_editions(run: Run) -> None:
    ran = run("rules")
    assert ran.status == 0
    for one in load_rule_library().rule_sets:
        assert f"{one.id}@{one.edition}\n" in ran.out


@pytest.mark.parametrize("rule_set", load_rule_library().rule_sets, ids=lambda one: str(one.id))
def test_a_rule_set_is_shown_with_clause_mark_and_source(run: Run, rule_set: object) -> None:
    for one in load_rule_library().rule_sets:
        if one == rule_set:
            ran = run("rules", f"{one.id}@{one.edition}")
            text = " ".join(ran.out.split())
            assert ran.status == 0
            assert max(len(line) for line in ran.out.splitlines()) <= 80
            for value in one.values:
                assert value.key in text
                for reading in value.readings:
                    stands = reading.provenance
                    source = " ".join(stands.source.split())
                    assert f"{stands.clause} [{stands.mark}]: {source}" in text


def test_a_rule_set_that_is_not_there(run: Run) -> None:
    ran = run("rules", "osha")
    assert (ran.status, ran.out) == (2, "")
    assert "did you mean us-osha-1926-subpart-l?" in ran.err


def test_the_schema_is_json(run: Run) -> None:
    ran = run("schema")
    assert ran.status == 0
    assert json.loads(ran.out)["title"] == "backspan project file"


@pytest.mark.parametrize("shell", ["bash", "zsh", "fish"])
def test_completion_names_the_program(run: Run, shell: str) -> None:
    ran = run("completion", shell)
    assert ran.status == 0
    assert "_BACKSPAN_COMPLETE" in ran.out
    assert run("completion", "csh").status == 2


def test_the_version(run: Run) -> None:
    ran = run("--version")
    assert (ran.status, ran.out) == (0, f"backspan {VERSION}\n")


def test_help_is_given_without_a_question(run: Run) -> None:
    for flag in ("-h", "--help"):
        ran = run(flag)
        assert ran.status == 0
        assert "review" in ran.out


def test_the_page_of_commands_is_what_the_commands_say() -> None:
    assert PAGE.read_text(encoding="utf-8") == page(), "run: python tools/write_commands_page.py"


def test_every_command_has_an_example() -> None:
    for path, text in helps():
        assert "backspan " in text.split("Options:")[0].split("\n", 1)[1], path
