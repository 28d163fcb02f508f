"""Projects to the text of project files and back."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.model.project import Project
from backspan.core.model.rigs import SuspensionPoint
from backspan.core.wire import configuration_code
from backspan.exchange.files import load, load_rule_library
from backspan.exchange.parse import parse_project
from backspan.exchange.written import NoProjectFileError, project_text
from tests.unit.core.rigs import PROJECT

LIBRARY = load_rule_library()
FILES = ("examples/demo/site.yaml", "tests/cases/rig.yaml", "tests/cases/smallest.yaml")


def again(project: Project) -> Project:
    """A project written and read."""
    return parse_project(project_text(project), "again", LIBRARY)


@pytest.mark.parametrize("name", FILES)
def test_a_project_written_is_read_as_the_same_one(name: str) -> None:
    project = load(Path(name), LIBRARY)
    assert again(project) == project


def with_reach(stated: StatedValue[float]) -> Project:
    """The sound rig with another reach at its first point."""
    drop = PROJECT.drops[0]
    assert drop.rig is not None
    point = drop.rig.suspension_points[0]
    assert point.counterweighted_beam is not None
    beam = replace(point.counterweighted_beam, reach=stated)
    return with_point(replace(point, counterweighted_beam=beam))


def with_point(point: SuspensionPoint) -> Project:
    """The sound rig with another first point."""
    drop = PROJECT.drops[0]
    assert drop.rig is not None
    rig = replace(drop.rig, suspension_points=(point, *drop.rig.suspension_points[1:]))
    return replace(PROJECT, drops=(replace(drop, rig=rig), *PROJECT.drops[1:]))


@pytest.mark.parametrize("metres", [0.1 + 0.2, 1 / 3, 1e-7, 1.2192, 5.0])
def test_a_number_that_was_never_written_keeps_every_digit(metres: float) -> None:
    project = with_reach(StatedValue(metres, None, Evidence.MEASURED, "MT", "2026-04-01"))
    read = again(project)
    assert configuration_code(read, read.drops[0]) == configuration_code(project, project.drops[0])


def test_a_text_that_says_another_number_is_not_written() -> None:
    stale = StatedValue(1.0, None, Evidence.MEASURED, "MT", "2026-04-01", text="4 ft")
    assert '"value": "1.0 m"' in project_text(with_reach(stale))


def test_a_moved_rig_that_would_be_read_with_more_than_it_states_is_refused() -> None:
    first = PROJECT.drops[0]
    assert first.rig is not None
    point = replace(first.rig.suspension_points[0], rope=None)
    moved = replace(first.rig, moved_from=first.id, suspension_points=(point,), stages=())
    other = replace(first, id="E", rig=moved)
    with pytest.raises(NoProjectFileError, match=r"drops\.E\.rig.*something else"):
        project_text(replace(PROJECT, drops=(first, other)))


def test_a_project_that_no_file_can_hold_is_refused() -> None:
    with pytest.raises(NoProjectFileError, match="prepared_by"):
        project_text(replace(PROJECT, prepared_by="a\nb"))
