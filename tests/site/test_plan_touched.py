"""A drop that answers otherwise on a plan as drawn is always told; one that does not, seldom."""

from __future__ import annotations

from collections.abc import Sequence
from functools import cache

import pytest

from backspan import load
from backspan.core.drafting import drawn
from backspan.core.drafting.acting import Act
from backspan.core.drafting.building import MoveEdge, RaiseParapet
from backspan.core.drafting.rigging import (
    CarryRig,
    LeadLifeline,
    LeadTieback,
    Measure,
    MoveBeam,
    MoveDrop,
    MovePoint,
    PlaceDrop,
    PlacePoint,
)
from backspan.core.drafting.standing import MoveAnchor
from backspan.core.errors import BackspanError
from backspan.core.model.project import Project
from backspan.core.review.run import case_of, review_findings
from backspan.exchange.files import load_rule_library
from backspan.web.plan.drawn import hand_of, touched
from tests.architecture.source import ROOT
from tests.site.bench import NOON

#: A strip beside the others.
STRIP = PlaceDrop("N3", "MAIN", "N", 2.0, 6.0)


@cache
def demo() -> Project:
    return load(ROOT / "examples" / "demo" / "site.yaml")


def answers(project: Project) -> dict[str, object]:
    """All findings of every drop; why it cannot be reviewed, where it cannot."""
    found: dict[str, object] = {}
    library = load_rule_library()
    for drop in project.drops:
        try:
            case = case_of(project, drop.id, library, on=NOON.date())
            found[drop.id] = review_findings(case).findings
        except BackspanError as error:
            found[drop.id] = str(error)
    return found


@cache
def recorded() -> dict[str, object]:
    return answers(demo())


def first_line(drop: str) -> str:
    rig = next(one.rig for one in demo().drops if one.id == drop)
    assert rig is not None
    return rig.lines[0].id


def first_tieback(drop: str) -> str:
    rig = next(one.rig for one in demo().drops if one.id == drop)
    assert rig is not None
    return rig.suspension_points[0].tied[0].id


ACTS: tuple[tuple[str, Sequence[Act], int], ...] = (
    ("reach", (MoveBeam("S1", "L", Measure.REACH, 0.9),), 1),
    ("along", (MovePoint("S1", "L", 2.5),), 5),
    ("tieback to another's anchor", (LeadTieback("S1", "L", first_tieback("S1"), "A05"),), 2),
    ("lifeline to another's anchor", (LeadLifeline("S1", first_line("S1"), "A05", 3.0),), 2),
    ("strip", (MoveDrop("S2", 8.0),), 5),
    ("anchor", (MoveAnchor("MAIN", "A05", (2.0, 2.5)),), 1),
    ("another's hoist", (STRIP, PlacePoint("N3", "M", 3.0, "H-01", "B-01")), 4),
    ("carried", (STRIP, CarryRig("N3", "S1")), 13),
    ("edge", (MoveEdge("MAIN", "W", 0.3),), 12),
    ("parapet", (RaiseParapet("MAIN", "W", 1.2, 0.3),), 12),
)


@pytest.mark.parametrize(("acts", "most"), [one[1:] for one in ACTS], ids=[one[0] for one in ACTS])
def test_a_drop_that_answers_otherwise_is_told(acts: Sequence[Act], most: int) -> None:
    after = drawn(demo(), acts, hand_of(demo()))
    told = touched(demo(), after)
    now = answers(after)
    changed = [name for name in now if now[name] != recorded().get(name)]
    assert set(changed) <= set(told)
    assert changed
    assert len(told) <= most
