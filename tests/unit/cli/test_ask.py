from __future__ import annotations

import json
from pathlib import Path

import pytest

from backspan.cli.units import style_of
from backspan.core.ask import TOPICS
from backspan.core.quantities import Style
from tests.unit.cli.conftest import Run

RIG = ("rated=1000lb", "reach=4ft", "backspan=11ft6in", "piece=55lb")


def test_topics_are_listed_with_an_example_to_copy(run: Run) -> None:
    ran = run("ask")
    assert ran.status == 0
    for topic in TOPICS:
        assert f"  backspan ask {topic.id} {topic.example}\n" in ran.out


@pytest.mark.parametrize("topic", TOPICS, ids=lambda topic: str(topic.id))
def test_every_example_is_answered_with_cautions(run: Run, topic: object) -> None:
    for one in TOPICS:
        if one is topic:
            ran = run("ask", one.id, *one.example.split(), "--worked")
            assert ran.status in (0, 10)
            assert "Local codes" in ran.out
            assert max(len(line) for line in ran.out.splitlines()) <= 80
            assert "safe" not in ran.out.lower()


def test_a_number_is_told_first_and_its_arithmetic_after(run: Run) -> None:
    ran = run("ask", "counterweight", *RIG, "stall=1250lb", "--worked")
    assert ran.status == 0
    text = ran.out
    assert "Pieces on the beam: at least 26" in text
    assert text.index("pieces needed") < text.index("M_req = k · P · a")
    assert "us-osha-1926-subpart-l 1996, 1926.451(a)(2) [copy]: 4 x hoist rated load" in text


@pytest.mark.parametrize("topic", TOPICS, ids=lambda topic: str(topic.id))
def test_by_default_three_lines_do_with_the_caution_among_them(run: Run, topic: object) -> None:
    for one in TOPICS:
        if one is topic and one.id != "compare":
            ran = run("ask", one.id, *one.example.split())
            assert ran.status in (0, 10)
            told = [line for line in ran.out.splitlines() if not line.startswith("  ")]
            needs = [line for line in told if line.startswith("Needed from")]
            assert len(told) - len(needs) <= 3
            assert "local codes come first" in " ".join(ran.out.split())
            assert max(len(line) for line in ran.out.splitlines()) <= 80


def test_the_three_lines_are_answer_what_governs_and_the_clause_with_its_mark(run: Run) -> None:
    answer, governs, clause, *_ = run("ask", "counterweight", *RIG, "stall=1250lb").out.splitlines()
    assert "Pieces on the beam: at least 26" in answer
    assert governs == "Governs: 4 x hoist rated load; factor reached 4.1112"
    assert "us-osha-1926-subpart-l 1996, 1926.451(a)(2) [copy]." in clause


@pytest.mark.parametrize(
    ("more", "status"),
    [
        (["stall=1250lb"], 0),
        (["stall=1250lb", "pieces=26"], 0),
        (["stall=1250lb", "pieces=25"], 10),
        ([], 11),
        (["rules=uk-bs-5974"], 11),
    ],
)
def test_the_status_says_the_answer(run: Run, more: list[str], status: int) -> None:
    assert run("ask", "counterweight", *RIG, *more).status == status
    assert run("ask", "counterweight", *RIG, *more, "--format", "json").status == status


def test_data_is_printed_for_programs(run: Run) -> None:
    data = json.loads(run("ask", "counterweight", *RIG, "--format", "json").out)
    assert (data["format"], data["topic"], data["verdict"]) == (1, "counterweight", "missing")
    lines = {line["id"]: line["value"] for line in data["lines"]}
    assert lines["pieces-needed"] == {"value": 26, "unit": "", "text": "26"}
    assert lines["required"]["unit"] == "kg"
    assert lines["required"]["text"] == "1,391.3 lb"


def test_a_file_of_confirmations_settles_a_remembered_value(run: Run, tmp_path: Path) -> None:
    file = tmp_path / "confirmed.yaml"
    file.write_text(
        "confirmations:\n"
        "  - {rule_set: uk-bs-5974, edition: undated, value: tipping.rated-load, by: SAMPLE,\n"
        "     at: 2026-11-02, copy_seen: office copy}\n"
        "people: [{id: SAMPLE, name: A. Sample, role: engineer}]\n",
        encoding="utf-8",
    )
    rules = ("rules=uk-bs-5974", "--confirmations", str(file))
    ran = run("ask", "counterweight", *RIG, *rules)
    assert ran.status == 0
    assert "[memory, confirmed by " in ran.out
    missing = run("ask", "counterweight", *RIG, "--confirmations", str(tmp_path / "no.yaml"))
    assert missing.status == 2


def test_help_lists_the_values_of_a_topic(run: Run) -> None:
    ran = run("ask", "reach", "--help")
    assert ran.status == 0
    assert "rated=1000lb" in ran.out
    assert "Values that may be left out:" in ran.out
    assert "backspan ask reach rated=1000lb" in ran.out


@pytest.mark.parametrize(
    ("arguments", "what"),
    [
        (["conterweight"], "there is no topic 'conterweight'; did you mean counterweight?"),
        (["counterweight", *RIG, "pices=3"], "takes no 'pices'; did you mean pieces"),
        (["counterweight", "rated=1000"], "a bare number, without its unit"),
        (["counterweight", *RIG, "rules=uk-bs"], "did you mean uk-bs-5974?"),
        (["moment", "load=1lb"], "reach is not given"),
        (["moment", "load=1" + "0" * 400 + "lb", "reach=8ft"], "load"),
    ],
)
def test_what_cannot_be_asked_is_told(run: Run, arguments: list[str], what: str) -> None:
    ran = run("ask", *arguments)
    assert ran.status == 2
    assert what in ran.err
    assert ran.out == ""


@pytest.mark.parametrize(
    ("asked", "values", "style"),
    [
        (None, ["rated=5kN", "reach=1.2m", "piece=25kg"], Style.METRIC),
        (None, ["rated=500", "kg"], Style.METRIC),
        (None, ["rated=1000lb", "reach=1.2m"], Style.US),
        (None, ["reach=4'-6\""], Style.US),
        (None, ["pieces=26"], Style.US),
        ("metric", ["rated=1000lb"], Style.METRIC),
        ("us", ["rated=5kN"], Style.US),
    ],
)
def test_units_are_those_the_values_were_written_in(
    asked: str | None, values: list[str], style: Style
) -> None:
    assert style_of(asked, values) is style
