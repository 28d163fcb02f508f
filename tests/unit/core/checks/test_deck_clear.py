"""A stage has its strip of the face for itself, by the roof as it stands."""

from __future__ import annotations

from dataclasses import replace

import pytest

from backspan.core.findings import Verdict
from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop
from tests.unit.core.rigs import PROJECT, RIG, STAGE, finding, length, put, reasons

#: The rig's deck is 20 ft long on lines 18 ft apart: it ends a foot beyond each.
LONG = put(PROJECT, (*STAGE, "length"), length("20 ft", tolerance="0 in"))


def moved(drop: Drop, by: str) -> Drop:
    """The same drop and rig further along the edge, under another name."""
    step = length(by).value
    assert drop.rig is not None
    points = tuple(replace(one, station=one.station + step) for one in drop.rig.suspension_points)
    rig = replace(drop.rig, suspension_points=points)
    return replace(drop, id="E", start=drop.start + step, rig=rig)


def beside(by: str, project: Project = LONG) -> Project:
    """The site with a second rig so far along."""
    return replace(project, drops=(*project.drops, moved(project.drops[0], by)))


@pytest.mark.parametrize(
    ("by", "verdict"),
    [
        ("20 ft", Verdict.PASS),
        ("19 ft", Verdict.FAIL),
        ("2 ft", Verdict.FAIL),
        ("0 ft", Verdict.FAIL),
    ],
)
def test_two_decks_share_no_strip(by: str, verdict: Verdict) -> None:
    found = finding(beside(by), "deck-clear", "D/ST-1")
    assert (found.verdict, found.message.id) == (verdict, f"deck-clear.{verdict}")


def test_a_deck_that_may_be_longer_is_taken_longer() -> None:
    doubtful = put(LONG, (*STAGE, "length"), length("20 ft", tolerance="1 in"))
    assert finding(beside("20 ft", doubtful), "deck-clear", "D/ST-1").verdict is Verdict.FAIL


def test_a_deck_of_no_known_length_is_missing() -> None:
    unknown = put(LONG, (*STAGE, "length"), None)
    assert finding(beside("25 ft", unknown), "deck-clear", "D/ST-1").verdict is Verdict.MISSING


def test_a_rig_that_left_stands_no_more() -> None:
    there = beside("5 ft")
    assert there.drops[1].rig is not None
    gone = replace(there.drops[1].rig, moved_from="D")
    left = replace(there, drops=(there.drops[0], replace(there.drops[1], rig=gone)))
    assert ("D", "na.alone-at-edge") in reasons(left, "deck-clear")


def test_other_edges_and_no_rig_ask_nothing() -> None:
    assert ("D", "na.alone-at-edge") in reasons(PROJECT, "deck-clear")
    assert ("D", "na.alone-at-edge") in reasons(put(PROJECT, RIG, None), "deck-clear")
    there = beside("5 ft")
    other = replace(there, drops=(there.drops[0], replace(there.drops[1], edge="W")))
    assert ("D", "na.alone-at-edge") in reasons(other, "deck-clear")
