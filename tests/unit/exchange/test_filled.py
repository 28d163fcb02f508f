"""What a file need not say, and how much is left to type."""

from __future__ import annotations

import copy
import datetime
from typing import Any

import pytest
import yaml

from backspan.core.findings import Verdict
from backspan.core.model.evidence import Evidence
from backspan.core.model.project import Project
from backspan.core.model.rigs import CounterweightedBeam, FulcrumKind, Rig
from backspan.core.review import review
from backspan.core.words import counterweight
from backspan.exchange.files import load_rule_library
from backspan.exchange.parse import parse_project
from backspan.exchange.parse.problems import ProjectError
from tests.architecture.source import ROOT

CASES = ROOT / "tests" / "cases"
LIBRARY = load_rule_library()
ON = datetime.date(2026, 11, 25)
MOST_SMALLEST, MOST_REPEAT = 60, 119


def read(name: str) -> Any:
    text = (CASES / f"{name}.yaml").read_text(encoding="utf-8")
    return yaml.load(text, Loader=yaml.CBaseLoader)  # noqa: S506 - the base loader makes text only


def parsed(data: Any) -> Project:
    return parse_project(
        yaml.dump(data, Dumper=yaml.CSafeDumper, sort_keys=False), "here.yaml", LIBRARY
    )


def typed(data: Any) -> int:
    """How many values a person types."""
    if isinstance(data, dict):
        return sum(typed(one) for one in data.values())
    return sum(typed(one) for one in data) if isinstance(data, list) else 1


def moved(**changes: Any) -> Any:
    """The rig of the cases with a repeat drop that it was moved to, the last statement measured."""
    data = read("rig")
    data["values_from"]["evidence"] = "measured"
    repeat = read("repeat")
    repeat["rig"].update(changes)
    data["drops"].append(repeat)
    return data


def rig_of(project: Project, drop: str) -> Rig:
    found = next(one.rig for one in project.drops if one.id == drop)
    assert found is not None
    return found


def left(rig: Rig) -> CounterweightedBeam:
    found = rig.suspension_points[0].counterweighted_beam
    assert found is not None
    return found


def test_the_smallest_file_has_an_answer_worth_having() -> None:
    assert typed(read("smallest")) <= MOST_SMALLEST
    made = review(parsed(read("smallest")), "D", LIBRARY, on=ON)
    assert counterweight(made) is Verdict.PASS
    assert made.verdict is Verdict.MISSING


def test_a_repeat_drop_is_typed_with_few_values_and_fully_judged() -> None:
    assert typed(read("repeat")) <= MOST_REPEAT
    project = parsed(moved())
    made = review(project, "E", LIBRARY, on=ON)
    assert counterweight(made) is Verdict.PASS
    assert {one.message.id for one in made.findings if one.verdict is not Verdict.PASS} == set()


def test_the_drop_it_was_moved_from_is_stopped() -> None:
    made = review(parsed(moved()), "D", LIBRARY, on=ON)
    assert made.verdict is Verdict.FAIL
    assert "rig.moved" in {one.message.id for one in made.findings}


def test_equipment_comes_along_and_the_roof_stays_blank() -> None:
    project = parsed(moved())
    before, after = rig_of(project, "D"), rig_of(project, "E")
    assert [one.stage for one in after.stages] == [one.stage for one in before.stages]
    old, new = before.suspension_points[0], after.suspension_points[0]
    assert (new.hoist, new.rope) == (old.hoist, old.rope)
    assert left(after).beam == left(before).beam
    assert left(after).stack.groups[0].piece == "LOT"
    blank = moved()
    beam = blank["drops"][1]["rig"]["suspension_points"][0]["counterweighted_beam"]
    for name in ("reach", "backspan", "rear_stand", "tip_beyond_line"):
        del beam[name]
    del beam["stack"]["fastening"]
    found = left(rig_of(parsed(blank), "E"))
    assert (found.reach, found.backspan, found.rear_stand) == (None, None, None)
    assert (found.tip_beyond_line, found.stack.fastening, found.stack.tail_gap) == (None,) * 3


def test_what_was_read_elsewhere_keeps_who_read_it_and_when() -> None:
    data = moved(values_from={"evidence": "measured", "by": "PE", "at": "2026-11-25"})
    data["drops"][0]["values_from"]["at"] = "2026-11-23"
    found = rig_of(parsed(data), "E")
    fulcrum = left(found).fulcrum
    assert fulcrum is not None
    assert fulcrum.kind is FulcrumKind.PAD
    assert fulcrum.plate_width is not None
    assert (fulcrum.plate_width.by, fulcrum.plate_width.at) == ("MT", "2026-11-23")
    assert fulcrum.surface_strength is not None
    assert (fulcrum.surface_strength.by, fulcrum.surface_strength.at) == ("PE", "2026-11-25")
    mass = found.suspension_points[0].rope_mass
    assert mass is not None
    assert (mass.evidence, mass.by) == (Evidence.LABEL, "MT")


def test_what_is_said_goes_before_what_comes_along() -> None:
    data = moved()
    data["drops"][1]["rig"]["suspension_points"][0]["hoist"] = "H"
    assert rig_of(parsed(data), "E").suspension_points[0].hoist == "H"


def test_a_rig_may_be_moved_twice() -> None:
    data = moved()
    again = copy.deepcopy(data["drops"][1])
    again["id"], again["start"], again["rig"]["moved_from"] = "F", "40 ft", "E"
    for point, station in zip(again["rig"]["suspension_points"], ("41 ft", "59 ft"), strict=True):
        point["station"] = station
    data["drops"].append(again)
    project = parsed(data)
    assert rig_of(project, "F").suspension_points[0].hoist == "H-1"
    assert review(project, "E", LIBRARY, on=ON).verdict is Verdict.FAIL


def test_a_way_that_leads_nowhere() -> None:
    with pytest.raises(ProjectError, match="the drop 'X'"):
        parsed(moved(moved_from="X"))
    in_a_circle = moved()
    in_a_circle["drops"][0]["rig"]["moved_from"] = "E"
    with pytest.raises(ProjectError, match="a way back to D"):
        parsed(in_a_circle)


@pytest.mark.parametrize(
    "wrong",
    [
        {"drops": "none"},
        {"drops": [["x"]]},
        {"drops": [{"id": ["x"], "rig": {"moved_from": ["y"]}}]},
        {"kit": ["x"], "site": "x"},
        {"site": {"roofs": [{"edges": "x"}]}},
    ],
)
def test_what_is_no_record_is_told_as_such(wrong: Any) -> None:
    with pytest.raises(ProjectError, match="expected"):
        parsed(read("smallest") | wrong)


def test_names_and_outlines_that_are_not_said() -> None:
    project = parsed(read("smallest"))
    (roof,) = project.site.roofs
    assert (roof.name, len(roof.outline)) == ("ROOF", 2)
    assert project.kit.hoists[0].name == "H"
    assert rig_of(project, "D").stages[0].from_points == ("L", "R")
