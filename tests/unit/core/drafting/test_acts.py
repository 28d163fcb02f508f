"""Each act on the roof plan: what it changes, what it refuses, and the entries that say it."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from backspan.core.drafting import DraftError, act_of, data_of, drawn, entries_between
from backspan.core.drafting.acting import Act, Hand
from backspan.core.drafting.building import AddCorner, DrawRoof, MoveCorner, MoveEdge, RaiseParapet
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
from backspan.core.drafting.standing import (
    MoveAnchor,
    MoveObstacle,
    PlaceAnchor,
    PlaceObstacle,
    TakeObstacle,
)
from backspan.core.ledger.document import project_of
from backspan.core.ledger.kinds import Body
from backspan.core.ledger.writes import writes_of
from backspan.core.model.beams import BeamFound
from backspan.core.model.evidence import Evidence, Statement
from backspan.core.model.order import ordered
from backspan.core.model.project import Project
from backspan.core.model.rigs import Rig
from backspan.core.wire import to_data
from tests.unit.core.rigs import PROJECT, TODAY

SAYS = Statement(Evidence.MEASURED, "MT", TODAY)
HAND = Hand(says=SAYS)
ROOF = PROJECT.site.roofs[0]
SQUARE = ((2.0, 8.0), (4.0, 8.0), (4.0, 10.0), (2.0, 10.0))

EVERY: tuple[Act, ...] = (
    DrawRoof("R2", "lower roof", 20.0, ((0.0, 30.0), (9.0, 30.0), (9.0, 36.0), (0.0, 36.0))),
    MoveCorner("ROOF", 2, (20.0, 13.0)),
    MoveEdge("ROOF", "S", 0.5),
    RaiseParapet("ROOF", "S", 1.2, 0.2),
    PlaceObstacle("ROOF", "TANK", "water tank", SQUARE),
    MoveObstacle("ROOF", "VENT", (-1.0, 0.5)),
    TakeObstacle("ROOF", "VENT"),
    PlaceAnchor("ROOF", "A9", (3.0, 6.0), "post"),
    MoveAnchor("ROOF", "A1", (17.5, 9.5)),
    PlaceDrop("D2", "ROOF", "S", 9.0, 6.0),
    MoveDrop("D", 0.25),
    PlacePoint("D", "M", 3.0, "H-1", "B-1"),
    MovePoint("D", "L", 0.5),
    MoveBeam("D", "L", Measure.REACH, 0.5),
    MoveBeam("D", "L", Measure.BACKSPAN, 3.0),
    MoveBeam("D", "L", Measure.SETBACK, 0.0),
    MoveBeam("D", "R", Measure.TIP, 0.0),
    MoveBeam("D", "R", Measure.REAR_STAND, 2.5),
    LeadTieback("D", "L", "TB-L", "A2"),
    LeadTieback("D", "L", "TB-NEW", "A2"),
    LeadLifeline("D", "LL-NEW", "A2", 3.0),
)


def told(project: Project, bodies: tuple[Body, ...]) -> Project:
    """The site once these entries are taken."""
    data = to_data(project)
    for body in bodies:
        for write in writes_of(body, data):
            data = write.on(data)
    return project_of(data)


@pytest.mark.parametrize("act", EVERY, ids=lambda one: one.told(PROJECT.units))
def test_every_act_changes_the_site_and_its_entries_say_the_same(act: Act) -> None:
    after = drawn(PROJECT, [act], HAND)
    assert after != PROJECT
    said = entries_between(PROJECT, after)
    assert ordered(told(PROJECT, said)) == ordered(after)
    assert len(said) == 1


@pytest.mark.parametrize("act", EVERY, ids=lambda one: one.told(PROJECT.units))
def test_an_act_that_a_page_carries_is_the_same_act(act: Act) -> None:
    assert act_of(data_of(act)) == act


@pytest.mark.parametrize(
    ("data", "says"),
    [
        (None, "expected one of: draw roof"),
        ({"act": "fly"}, "found the act 'fly'"),
        ({"act": ["move anchor"]}, "expected one of"),
        ({"act": "move anchor", "roof": "ROOF", "anchor": "A1"}, "move anchor: "),
        ({"act": "move drop", "drop": "D", "start": "9 ft"}, "move drop: at start"),
        ({"act": "move drop", "drop": "D", "start": float("nan")}, "move drop: at start"),
        ({"act": "move drop", "drop": "D", "start": 1.0, "by": 2}, "move drop: "),
    ],
)
def test_what_is_no_act_is_refused(data: object, says: str) -> None:
    with pytest.raises(DraftError, match=re.escape(says)):
        act_of(data)


def test_a_corner_that_leaves_a_drop_beside_its_edge_is_refused() -> None:
    roof = PROJECT.site.roofs[0]
    near = tuple(one for one in roof.anchors if one.id in {"A1", "A2", "A3", "A4"})
    site = replace(PROJECT.site, roofs=(replace(roof, anchors=near),))
    with pytest.raises(DraftError, match=r"within edge S"):
        drawn(replace(PROJECT, site=site), [MoveCorner("ROOF", 0, (14.0, 0.0))], HAND)


@pytest.mark.parametrize(
    ("act", "says"),
    [
        (MoveAnchor("ROOF", "A1", (-5.0, 2.0)), "outside roof"),
        (MoveAnchor("ROOF", "A0", (5.0, 2.0)), "found no anchor 'A0'"),
        (MoveAnchor("R9", "A1", (5.0, 2.0)), "found no roof 'R9'"),
        (PlaceAnchor("ROOF", "A1", (5.0, 2.0), "post"), "a second time"),
        (PlaceAnchor("ROOF", " ", (5.0, 2.0), "post"), "found no mark"),
        (PlaceObstacle("ROOF", "X", "tank", SQUARE[:2]), "found 2 corners"),
        (
            PlaceObstacle("ROOF", "X", "tank", (SQUARE[0], SQUARE[2], SQUARE[1], SQUARE[3])),
            "crosses itself",
        ),
        (MoveObstacle("ROOF", "VENT", (30.0, 0.0)), "outside roof"),
        (TakeObstacle("ROOF", "TANK"), "found no obstacle"),
        (MoveCorner("ROOF", 4, (0.0, 0.0)), "found corner 4"),
        (MoveCorner("ROOF", 0, (17.0, 12.0)), "outside the roof then"),
        (MoveCorner("ROOF", 0, (30.0, 6.0)), "crosses itself"),
        (MoveEdge("ROOF", "S", -6.5), "outside the roof then"),
        (MoveEdge("ROOF", "Q", 0.5), "found no edge on roof"),
        (AddCorner("ROOF", "S", 3.0, "S2"), "under D"),
        (RaiseParapet("ROOF", "S", -1.0, 0.2), "found a parapet's height"),
        (DrawRoof("ROOF", "again", 3.0, SQUARE), "a second time"),
        (DrawRoof("R2", "flat", 3.0, (SQUARE[0], SQUARE[0], SQUARE[1])), "found no length"),
        (
            DrawRoof("R2", "bow", 3.0, (SQUARE[0], SQUARE[2], SQUARE[1], SQUARE[3])),
            "expected edges that do not cross",
        ),
        (PlaceDrop("D2", "ROOF", "S", 14.0, 6.0), "the end of a drop"),
        (PlaceDrop("D2", "ROOF", "S", 2.0, 0.0), "expected more than 0"),
        (MoveDrop("D", -1.0), "the beginning of a drop"),
        (MovePoint("D", "L", 40.0), "along edge S"),
        (MoveBeam("D", "L", Measure.REACH, 0.0), "expected more than 0"),
        (MoveBeam("D", "X", Measure.REACH, 1.0), "found no suspension point"),
        (PlacePoint("D", "M", 3.0, "H-9", "B-1"), "found no hoist 'H-9'"),
        (LeadTieback("D", "L", "TB-L", "A0"), "found no anchor 'A0'"),
        (LeadLifeline("D", "LL-1", "A1", 99.0), "along edge S"),
        (CarryRig("D", "D"), "with a rig"),
    ],
    ids=lambda one: one.told(PROJECT.units) if not isinstance(one, str) else "",
)
def test_what_cannot_be_is_refused_with_what_was_found(act: Act, says: str) -> None:
    with pytest.raises(DraftError, match=f"^1[.] .*{re.escape(says)}"):
        drawn(PROJECT, [act], HAND)


def test_an_edge_in_two_has_a_corner_between() -> None:
    bare = replace(PROJECT, drops=())
    site = drawn(
        bare, [AddCorner("ROOF", "S", 6.0, "S2"), MoveCorner("ROOF", 1, (12.0, -2.0))], HAND
    )
    roof = site.site.roofs[0]
    assert len(roof.outline) == 5
    first, second = roof.edges
    assert (first.end, second.start, second.end) == ((12.0, -2.0), (12.0, -2.0), (0.0, 0.0))
    assert second.parapet == first.parapet


def test_a_length_that_was_drawn_is_stated_by_whose_hand_drew() -> None:
    act = MoveBeam("D", "L", Measure.REACH, 0.5)
    (signed,) = entries_between(PROJECT, drawn(PROJECT, [act], HAND))
    assert signed.found.by == "MT"  # type: ignore[union-attr]
    assert signed.found.evidence is Evidence.MEASURED  # type: ignore[union-attr]
    point = drawn(PROJECT, [act], Hand()).drops[0].rig.suspension_points[0]  # type: ignore[union-attr]
    before = PROJECT.drops[0].rig.suspension_points[0].counterweighted_beam.reach  # type: ignore[union-attr]
    tried = point.counterweighted_beam.reach  # type: ignore[union-attr]
    assert (tried.evidence, tried.value) == (before.evidence, 0.5)  # type: ignore[union-attr]


def test_a_rig_is_carried_to_the_next_drop() -> None:
    def carried(project: Project, _drop: str, source: str) -> Rig:
        rig = next(one.rig for one in project.drops if one.id == source)
        return replace(rig or Rig(), moved_from=source)

    hand = replace(HAND, carried=carried)
    acts: list[Act] = [PlaceDrop("D2", "ROOF", "S", 9.0, 6.0), CarryRig("D2", "D")]
    after = drawn(PROJECT, acts, hand)
    assert [one.rig is None for one in after.drops] == [True, False]
    said = entries_between(PROJECT, after)
    assert [type(one).__name__ for one in said] == ["DropDescribed", "RigMoved", "RigSetUp"]
    assert ordered(told(PROJECT, said)) == ordered(after)


def test_nothing_that_was_there_goes_away_by_drawing() -> None:
    with pytest.raises(DraftError, match="found D no longer there"):
        entries_between(PROJECT, replace(PROJECT, drops=()))


def test_what_was_seen_at_another_place_is_not_known_of_the_new_one() -> None:
    """Or a softener, a route or a bearing that nobody looked at would pass."""
    rig = PROJECT.drops[0].rig
    assert rig is not None
    first, second = rig.suspension_points
    assert first.tied[0].taut is not None
    stood = replace(first, softener=first.tied[0].found)
    seen = replace(rig, suspension_points=(stood, second))
    site = replace(PROJECT, drops=(replace(PROJECT.drops[0], rig=seen),))
    moved, led, line = (
        drawn(site, [act], HAND).drops[0].rig or Rig()
        for act in (
            MovePoint("D", "L", 0.5),
            LeadTieback("D", "L", stood.tied[0].id, "A2"),
            LeadLifeline("D", rig.lines[0].id, "A2", 3.0),
        )
    )
    point = moved.suspension_points[0]
    beam = point.counterweighted_beam
    assert beam is not None
    assert beam.fulcrum is not None
    assert (point.softener, beam.fulcrum.surface_strength) == (None, None)
    assert beam.found == BeamFound()
    for tie in (point.tied[0], led.suspension_points[0].tied[0]):
        assert (tie.taut, tie.route, tie.found, tie.softener) == (None, None, None, None)
    assert (line.lines[0].found, line.lines[0].softener) == (None, None)
    assert line.lines[0].rope == rig.lines[0].rope
