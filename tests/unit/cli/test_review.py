from __future__ import annotations

import datetime
import json
from pathlib import Path

import pytest

from tests.unit.cli.conftest import DEMO, ON, Run

SIGNS = "✓✗→?"
WORST_FIRST = ["S4", "W1", "W2", "N2", "T1", "N1", "S2", "S3", "S5", "T2", "T3", "S1"]
DROPS = ("N1", "N2", "S1", "S2", "S3", "S4", "S5", "T1", "T2", "T3", "W1", "W2")


def test_every_drop_is_answered_and_the_worst_is_the_status(run: Run) -> None:
    ran = run("review", DEMO, "--on", ON)
    assert ran.status == 10
    assert ran.err == ""
    lines = [line.split() for line in ran.out.splitlines() if line.startswith(tuple(SIGNS))]
    assert [line[2] for line in lines] == WORST_FIRST
    for word in ("✓ pass", "✗ fail", "→ refer", "? missing"):
        assert word in ran.out
    assert "Invented for this demonstration" in ran.out
    assert "reviewed on 2026-11-25" in ran.out


@pytest.mark.parametrize(
    ("drop", "status"), [("S1", 0), ("S4", 10), ("S5", 11), ("T1", 11), ("T2", 11)]
)
def test_the_status_of_one_drop(run: Run, drop: str, status: int) -> None:
    assert run("review", DEMO, "--drop", drop, "--on", ON).status == status


def test_several_drops_have_the_status_of_the_worst(run: Run) -> None:
    ran = run("review", DEMO, "--drop", "T2", "--drop", "S1", "--on", ON)
    assert ran.status == 11
    assert ran.out.index("\n→ refer    T2 ") < ran.out.index("\n✓ pass     S1 ")


@pytest.mark.parametrize("others", [("S5",), ("W1",), ("S3",), ("S1",), ("T2",)])
def test_a_site_of_two_drops_is_told_on_one_screen(run: Run, others: tuple[str, ...]) -> None:
    text = run("review", DEMO, "--drop", "S4", "--drop", *others, "--on", ON).out
    assert len(text.splitlines()) <= 24
    told = " ".join(text.split())
    assert 'contractor: One change: add 1 piece; or take 1/2" off the reach' in told
    assert ("the office that keeps the text: Confirm" in told) is (others == ("S5",))


def test_findings_that_want_the_same_are_one_reason(run: Run) -> None:
    told = " ".join(run("review", DEMO, "--drop", "N2", "--on", ON).out.split())
    titles = (
        "Counterweight against tipping; Surface under the fulcrum; Strength of the suspension rope;"
        " Strength of the connecting hardware; Stall load of the hoist; Load of the anchor"
    )
    head = f"N2, L, R, L/SHACKLE, R/SHACKLE, L/TB-L, R/TB-R ? missing {titles}"
    assert f"{head}: Not stated: stall load of the hoist." in told
    assert told.count("State stall load of the hoist") == 1


@pytest.mark.parametrize(
    "arguments", [(), ("--drop", "S4", "--compare"), ("--drop", "N1", "--worked")]
)
def test_the_text_fits_eighty_columns(run: Run, arguments: tuple[str, ...]) -> None:
    ran = run("review", DEMO, *arguments, "--on", ON)
    assert max(len(line) for line in ran.out.splitlines()) <= 80
    assert "\x1b" not in ran.out


@pytest.mark.parametrize("columns", ["40", "60"])
def test_a_narrow_screen_keeps_what_governs(
    run: Run, monkeypatch: pytest.MonkeyPatch, columns: str
) -> None:
    monkeypatch.setenv("COLUMNS", columns)
    lines = run("review", DEMO, "--on", ON).out.splitlines()
    assert max(len(line) for line in lines) <= int(columns)
    assert any(line.startswith("W2  ✗ fail, 2 topics refused;") for line in lines)
    told = " ".join(" ".join(lines).split())
    assert "The pieces are not held the way the rule asks: pin, not locked." in told


def test_what_is_open_names_what_would_settle_it(run: Run) -> None:
    text = " ".join(run("review", DEMO, "--on", ON).out.split())
    assert "qualified person: State stall load of the hoist" in text
    assert "licensed engineer: Judge the parapet clamp" in text
    assert "the office that keeps the text: Confirm" in text


def test_the_arithmetic_is_shown_where_it_is_asked_for(run: Run) -> None:
    short = run("review", DEMO, "--drop", "S4", "--on", ON).out
    assert "M_req" not in short
    text = run("review", DEMO, "--drop", "S4", "--worked", "--on", ON).out
    assert "M_req = k · P · a = 4 × 1,000 lb × 1.541667 ft = 6,166.67 lb ft" in text
    assert "Stall load of the hoist, S4/L, S4/R: ✓ pass" in text
    assert "Does not apply:" in text
    assert "under other" not in text


def test_other_rules_are_those_that_give_a_number_or_those_named(run: Run) -> None:
    every = run("review", DEMO, "--drop", "S4", "--compare", "--on", ON).out
    assert "The same rig under other counterweight rules, S4/L, S4/R:" in every
    assert "uk-bs-5974" in every
    assert "no number to work with" not in every
    named = run("review", DEMO, "--drop", "S4", "--against", "eu-en-1808", "--on", ON).out
    assert "eu-en-1808" in named
    assert "uk-bs-5974" not in named


def test_how_far_out_the_pieces_hold_is_told_where_it_is_asked_for(run: Run) -> None:
    text = run("review", DEMO, "--drop", "S1", "--envelope", "--on", ON).out
    assert "Most reach by backspan, S1/L, 12 pieces (now 11'-5\": 1'-6 1/2\"): " in text


def test_cautions_and_what_was_not_checked_are_always_there(run: Run) -> None:
    for arguments in ((), ("--drop", "S1")):
        text = run("review", DEMO, *arguments, "--on", ON).out
        assert ("Not judged here; may be taken over in writing by" in text) is (arguments == ())
        assert "9 topics taken over" in text
        assert "Supports a qualified or licensed person's judgement" in text
        assert "safe" not in text.lower()


def test_other_rules_replace_those_of_the_project(run: Run) -> None:
    ran = run("review", DEMO, "--drop", "S1", "--rules", "uk-bs-5974", "--on", ON)
    assert ran.status == 11
    assert "Basis: uk-bs-5974 undated, trade-practice 2026" in ran.out


def test_the_day_is_today_unless_it_is_given(run: Run) -> None:
    before = datetime.datetime.now().astimezone().date().isoformat()
    text = run("review", DEMO, "--drop", "S1").out
    after = datetime.datetime.now().astimezone().date().isoformat()
    assert any(f"reviewed on {day} by" in text for day in (before, after))


def test_data_is_printed_for_programs(run: Run) -> None:
    ran = run("review", DEMO, "--format", "json", "--on", ON)
    data = json.loads(ran.out)
    assert (ran.status, data["format"], data["verdict"]) == (10, 1, "fail")
    assert [one["drop"] for one in data["reviews"]] == list(DROPS)
    assert {one["on"] for one in data["reviews"]} == {ON}


def test_a_project_without_drops_is_missing(run: Run, tmp_path: Path) -> None:
    file = tmp_path / "empty.yaml"
    file.write_text(
        "format: 1\nsite: {name: Nowhere (invented), place: Nowhere, roofs: []}\n"
        "basis: {tipping: [{rule_set: us-osha-1926-subpart-l, edition: '1996'}]}\n",
        encoding="utf-8",
    )
    ran = run("review", str(file))
    assert ran.status == 11
    assert "no drops" in ran.out
    assert run("review", str(file), "--format", "json").status == 11


@pytest.mark.parametrize(
    ("arguments", "what"),
    [
        (["review"], "Missing argument 'FILE'"),
        (["review", "nowhere.yaml"], "nowhere.yaml: no such file or folder"),
        (["review", DEMO, "--drop", "S9"], "the project has no drop 'S9'"),
        (["review", DEMO, "--drop", "s1"], "did you mean S1"),
        (["review", DEMO, "--rules", "uk-bs-5947"], "did you mean uk-bs-5974?"),
        (["review", DEMO, "--format", "xml"], "'xml' is not one of"),
        (["review", DEMO, "--on", "2026-02-30"], "'2026-02-30' does not match"),
        (["review", DEMO, "--frmat", "json"], "Did you mean '--format'?"),
        (["reveiw", DEMO], "there is no command 'reveiw'; did you mean review?"),
        (["xyz"], "there is no command 'xyz'; commands: review, ask, rules"),
    ],
)
def test_what_cannot_be_done_is_told_on_standard_error(
    run: Run, arguments: list[str], what: str
) -> None:
    ran = run(*arguments)
    assert ran.status == 2
    assert what in ran.err
    assert ran.out == ""
    assert "Traceback" not in ran.err
    assert len(ran.err.splitlines()) <= 24


def test_all_problems_of_a_file_are_told_with_their_places(run: Run, tmp_path: Path) -> None:
    text = Path(DEMO).read_text(encoding="utf-8")
    file = tmp_path / "bad.yaml"
    wrong = text.replace("format: 1", "format: 1\nfrmat: 2", 1)
    wrong = wrong.replace("evidence: measured", "x: y", 1)
    line = wrong.splitlines().index("frmat: 2") + 1
    file.write_text(wrong, encoding="utf-8")
    ran = run("review", str(file))
    assert ran.status == 2
    assert "problems in what was read" in ran.err
    assert f"{file}:{line}:1" in ran.err


def test_the_review_is_told_in_spanish_with_a_word_of_caution(run: Run) -> None:
    ran = run("review", DEMO, "--language", "es", "--on", ON, "--drop", "S4", "--worked")
    told = " ".join(ran.out.split())
    assert ran.status == 10
    assert "✗ no cumple S4 1 tema rechazado" in told
    assert "contratista: Un solo cambio: añadir 1 pieza" in told
    assert "pendientes de comprobar por un ingeniero" in told
    for english in ("Needed from", "used at", "taken over", "Does not apply", "counterweight"):
        assert english not in told.replace("us-osha", "")


def test_the_data_names_its_language(run: Run) -> None:
    for code, word in (("en", "fail, 1 topic refused"), ("es", "no cumple, 1 tema rechazado")):
        arguments = ("--format", "json", "--drop", "S4", "--on", ON, "--language", code)
        (one,) = json.loads(run("review", DEMO, *arguments).out)["reviews"]
        assert (one["language"], one["answer"], one["verdict"]) == (code, word, "fail")


def test_what_is_told_in_short_is_what_the_whole_review_tells(run: Run) -> None:
    short = run("review", DEMO, "--on", ON).out
    whole = run("review", DEMO, "--on", ON, "--worked").out
    *answers, caution = short.rsplit("\n\n", 1)
    assert whole.startswith(answers[0])
    assert whole.endswith(caution)
