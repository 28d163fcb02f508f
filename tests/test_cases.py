"""The cases of tests/cases: a rig in a file, one thing changed, what the review says of it."""

from __future__ import annotations

import copy
import datetime
import functools
import json
import re
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest
import yaml

from backspan.core.errors import BackspanError
from backspan.core.findings import DoesNotApply, Finding, Review, Verdict
from backspan.core.mechanics import FORMULAS
from backspan.core.model.project import Project
from backspan.core.review import review
from backspan.core.review.front import front_data
from backspan.core.review.plain import Writer
from backspan.core.review.run import roll_up
from backspan.core.wire import configuration_code
from backspan.core.words import ENGLISH, counterweight, say_mend, settled
from backspan.core.worked.table import describe_all
from backspan.exchange.files import load, load_rule_library
from backspan.exchange.parse import parse_project
from tools import write_rig

ROOT = Path(__file__).resolve().parent
LIBRARY = load_rule_library()
DESCRIBED = describe_all(FORMULAS)
ON = datetime.date(2026, 11, 25)
FILES = ("limits", "impossible", "evidence", "unlikely")


def read(name: str) -> Any:
    """A file of tests/cases; every scalar stays the text it was written as."""
    text = (ROOT / "cases" / f"{name}.yaml").read_text(encoding="utf-8")
    return yaml.load(text, Loader=yaml.CBaseLoader)  # noqa: S506 - the base loader makes text only


RIG = read("rig")
CASES = [case for name in FILES for case in read(name)]
REFUSED = read("refused")
UNSEEN = read("unseen")

#: What a path of a case begins with, and where that is in the rig's file.
LEFT = ("drops", 0, "rig", "suspension_points", 0)
STARTS: dict[str, tuple[str | int, ...]] = {
    "rig": ("drops", 0, "rig"),
    "D": ("drops", 0),
    "L": (*LEFT, "counterweighted_beam"),
    "left": LEFT,
    "obstacles": ("site", "roofs", 0, "obstacles"),
    "anchors": ("site", "roofs", 0, "anchors"),
    "hoists": ("kit", "hoists"),
    "L.other": (*LEFT, "other_support"),
    "beams": ("kit", "beams"),
    "units": ("kit", "units"),
    "stages": ("kit", "stages"),
    "edges": ("site", "roofs", 0, "edges"),
    "pieces": ("kit", "pieces"),
    "ends": ("kit", "terminations"),
    "ropes": ("kit", "ropes"),
    "connectors": ("kit", "connectors"),
    "lanyards": ("kit", "lanyards"),
    "right": ("drops", 0, "rig", "suspension_points", 1),
}


def change(data: Any, path: str, value: Any) -> None:
    """Set what stands at a path such as `L.reach`; an empty text takes the key out."""
    start, *steps = path.split(".")
    if start == "without":
        for taken in data["taken_over"]:
            taken["topics"] = [one for one in taken["topics"] if one != steps[0]]
        return
    there = (
        (*LEFT, "other_support") if path == "L.other" else (*STARTS.get(start, (start,)), *steps)
    )
    put(data, there, value)


def put(data: Any, place: tuple[str | int, ...], value: Any) -> None:
    """Set what stands at a place of a file; an empty text takes it out."""
    *way, last = place
    for step in way:
        data = item(data, step)
    if isinstance(data, list):
        last = int(last) if str(last).isdigit() else data.index(item(data, last))
    if value == "":
        del data[last]
    elif isinstance(value, str) and last in data and isinstance(data[last], dict):
        data[last]["value"] = value  # how exactly it is known stays
    else:
        data[last] = value


def item(data: Any, step: str | int) -> Any:
    """A value by its key, by its position, or by the id of an item; a short form is opened."""
    if isinstance(data, dict):
        return data[step]
    if str(step).isdigit():
        return data[int(step)]
    return next(one for one in data if one["id"] == step)


def changed(case: dict[str, Any]) -> Any:
    """The rig's file as the case changes it."""
    data = copy.deepcopy(RIG)
    for path, value in case.get("set", {}).items():
        change(data, path, value)
    if "basis" in case:
        data["basis"]["tipping"] = [case["basis"]] if case["basis"] else []
    return data


def reviewed(case: dict[str, Any]) -> Review:
    """The review of the rig as the case changes it, read from a file's text."""
    return reviewed_as(json.dumps(case))


def coded(case: dict[str, Any]) -> Review:
    """The same with every take-over given for the rig as it is changed: none lapses for that."""
    return coded_as(json.dumps(case))


# Kept for a while: several tests ask for the same of one case in turn.
@functools.lru_cache(maxsize=64)
def project_of(case: str) -> Project:
    """The rig as a case changes it, written as a file's text and read from that."""
    text = yaml.dump(changed(json.loads(case)), Dumper=yaml.CSafeDumper, sort_keys=False)
    return parse_project(text, "case.yaml")


@functools.lru_cache(maxsize=64)
def reviewed_as(case: str) -> Review:
    """What `reviewed` answers."""
    return review(project_of(case), "D", LIBRARY, on=ON)


@functools.lru_cache(maxsize=64)
def coded_as(case: str) -> Review:
    """What `coded` answers; where no take-over is given anew it is the same review."""
    project = project_of(case)
    code = configuration_code(project, project.drops[0])
    taken = tuple(
        replace(one, drops=tuple(replace(drop, configuration=code) for drop in one.drops))
        for one in project.taken_over
    )
    if taken == project.taken_over:
        return reviewed_as(case)
    return review(replace(project, taken_over=taken), "D", LIBRARY, on=ON)


def judged(made: Review, case: dict[str, Any]) -> list[Finding]:
    """The findings a case is about."""
    return [
        one
        for one in made.findings
        if is_about(one, case) and one.message.id.startswith(case.get("message", ""))
    ]


def is_about(one: Finding | DoesNotApply, case: dict[str, Any]) -> bool:
    """Whether an answer is of the check and the subject of a case."""
    return (one.check, one.subject) == (case["check"], case.get("subject", "D/L"))


@pytest.fixture(scope="module", params=CASES, ids=lambda case: case["case"])
def case(request: pytest.FixtureRequest) -> Any:
    """A case; all tests of one run in turn, so that they share its review."""
    return request.param


def test_a_case(case: dict[str, Any]) -> None:
    made = reviewed(case)
    if "check" not in case:
        assert roll_up(made.findings) == case["answer"]
        return
    if case["answer"] == "does not apply":
        assert judged(made, case) == []
        assert any(is_about(one, case) for one in made.not_applicable)
        return
    (found,) = judged(made, case)
    assert found.verdict == case["answer"]
    writer = Writer(made.units, DESCRIBED)
    # What is worked out can be printed, each step with its numbers and their units.
    assert all(writer.step(one)["line"] for one in found.steps)
    assert found.verdict != "fail" or say_mend(found, made.units) != ENGLISH.phrase("put-right")
    if "governs" in case:
        assert found.governing == case["governs"]
    if "note" in case:
        assert case["note"] in {note.id for note in found.notes}
    if found.verdict != "pass":
        assert made.verdict != "pass"
        assert coded(case).verdict != "pass"


@pytest.mark.parametrize("case", UNSEEN, ids=lambda case: case["case"])
def test_what_nobody_looked_at_does_not_pass(case: dict[str, Any]) -> None:
    for found in (reviewed(case),) if "as_typed" in case else (reviewed(case), coded(case)):
        assert found.verdict != "pass"
        assert case["stopped"] in told(found)
    assert case["stopped"] not in told(coded({"set": case.get("put_right", {})}))


def told(made: Review) -> set[str]:
    """The ids of all that stops a drop: sentences of findings, needs, notes of topics."""
    stopped = [one for one in made.findings if one.verdict != "pass"]
    needs = [need.what.id for one in stopped for need in one.needs]
    notes = [note.id for one in made.topics for note in one.notes]
    left = ["not judged" for one in made.topics if one.not_judged]
    return {*(one.message.id for one in stopped), *needs, *notes, *left}


def test_the_rig_of_the_unit_tests_is_this_one() -> None:
    assert write_rig.RIG.read_text(encoding="utf-8") == write_rig.text(), "run `make generate`"


def test_the_rig_the_cases_change_passes() -> None:
    assert reviewed({}).verdict == "pass"


@pytest.mark.parametrize("case", REFUSED, ids=lambda case: case["case"])
def test_a_file_that_is_refused(case: dict[str, Any]) -> None:
    first = re.escape(case["told"][0])
    with pytest.raises(BackspanError, match=first) as caught:
        reviewed(case)
    assert [text for text in case["told"] if text not in str(caught.value)] == []


def test_every_case_has_a_name_of_its_own() -> None:
    names = [case["case"] for case in (*CASES, *REFUSED, *UNSEEN)]
    assert len(set(names)) == len(names)


SITE = ROOT.parent / "examples" / "demo" / "site.yaml"
DEMO = load(SITE)
STORIES = read("demo")
SIDES = {"L": 0, "R": 1}


def spare(made: Review) -> int:
    """Pieces spare on the worse beam under the first rule set; negative where they are short."""
    margins = [
        one
        for found in made.findings
        if found.check == "tipping"
        for one in found.margins
        if one.id == "pieces-spare"
    ]
    counts = [
        -one.value if one.beyond else one.value for one in margins if isinstance(one.value, int)
    ]
    return min(counts)


@pytest.mark.parametrize("drop", STORIES)
def test_a_story_of_the_demo_site(drop: str) -> None:
    story = STORIES[drop]
    made = review(DEMO, drop, LIBRARY, on=ON)
    assert (made.verdict, counterweight(made)) == (story["answer"], story["counterweight"])
    taken = settled(made)
    wrong = {
        one.message.id
        for at, one in enumerate(made.findings)
        if one.verdict != "pass" and at not in taken
    }
    assert wrong == set(story.get("because", ()))
    if "note" in story:
        assert story["note"] in {note.id for found in made.findings for note in found.notes}
    if "spare" in story:
        assert spare(made) == int(story["spare"])


@pytest.mark.parametrize("case", read("tries"), ids=lambda case: case["try"])
def test_what_the_demo_says_to_try(case: dict[str, Any]) -> None:
    data = yaml.load(SITE.read_text(encoding="utf-8"), Loader=yaml.CBaseLoader)  # noqa: S506 - as above
    points = ("drops", case["drop"], "rig", "suspension_points")
    for path, value in case["set"].items():
        start, *steps = path.split(".")
        beam = (*points, SIDES.get(start, 0), "counterweighted_beam")
        put(data, (*(beam if start in SIDES else (start,)), *steps), value)
    text = yaml.dump(data, Dumper=yaml.CSafeDumper)
    made = review(parse_project(text, "copy.yaml"), case["drop"], LIBRARY, on=ON)
    assert counterweight(made) == case["counterweight"]
    assert counterweight(review(DEMO, case["drop"], LIBRARY, on=ON)) != case["counterweight"]


def test_every_drop_of_the_demo_has_a_story_and_all_four_answers_occur() -> None:
    assert set(STORIES) == {drop.id for drop in DEMO.drops}
    assert {story["answer"] for story in STORIES.values()} == {"pass", "fail", "refer", "missing"}


def test_the_demo_says_that_it_is_invented() -> None:
    assert DEMO.site.invented


@pytest.mark.parametrize(
    "drop", [drop.id for drop in DEMO.drops if drop.id not in {"T1", "T2", "N2"}]
)
def test_the_comparison_of_a_demo_drop_is_complete(drop: str) -> None:
    rows = review(DEMO, drop, LIBRARY, on=ON).comparison
    unknown = [
        row.rule.rule_set for row in rows if row.reason and row.reason.id != "compare.no-number"
    ]
    assert unknown == []


def test_the_metric_twin_has_the_answer_of_s1() -> None:
    first = {one.check: one for one in review(DEMO, "S1", LIBRARY, on=ON).findings}
    twin = {
        one.check: one
        for one in reversed(review(DEMO, "N1", LIBRARY, on=ON).findings)
        if not any(value.rule_set == "eu-en-1808" for value in one.rules)
    }
    assert first["tipping"].demand == twin["tipping"].demand
    assert first["tipping"].capacity == twin["tipping"].capacity


def test_what_does_not_pass_has_a_reason_and_somebody_who_must_act(case: dict[str, Any]) -> None:
    made = coded(case)
    reasons = front_data(made)["reasons"]
    told = {one["verdict"] for one in reasons}
    if made.verdict is Verdict.PASS:
        assert reasons == []
        return
    assert str(made.verdict) in told
    assert next(iter(reasons))["verdict"] == made.verdict
    assert "pass" not in told
    for one in reasons:
        assert one["text"]
        assert one["acts"], one
        assert all(act["who"] and act["text"] for act in one["acts"])
    places = [at for one in reasons for at in one["findings"]]
    open_findings = [
        at
        for at, one in enumerate(made.findings)
        if one.verdict is not Verdict.PASS and at not in settled(made)
    ]
    assert sorted(places) == open_findings
