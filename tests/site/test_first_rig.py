"""A first drop with its rig from an empty record, and the same rig at a further drop."""

from __future__ import annotations

import pytest

from backspan.core.wire import to_data
from backspan.exchange.parse import parse_project
from backspan.exchange.written import project_text
from backspan.records.api import SiteRecord
from tests.site.bench import Browser
from tests.site.typist import (
    ARM,
    LEFT_CHOSEN,
    LEFT_TYPED,
    fields_of,
    project_of,
    rigged,
    values_in,
)

#: From an empty site to a drop with its whole rig; the goal for a first accepted drop.
MOST_TYPED = 120


def test_a_first_drop_with_its_rig_is_typed_with_few_values(
    new: Browser, empty: SiteRecord
) -> None:
    hand = rigged(new)
    assert hand.typed <= MOST_TYPED, hand.typed
    project = project_of(empty)
    (drop,) = project.drops
    assert drop.rig is not None
    left, right = drop.rig.suspension_points
    assert (left.id, right.id) == ("L", "R")
    assert right.station == pytest.approx(39 * 0.3048)
    assert (right.hoist, right.rope) == ("H-2", "W-2")
    assert left.counterweighted_beam is not None
    assert right.counterweighted_beam is not None
    assert right.counterweighted_beam.beam == "B-2"
    assert right.counterweighted_beam.reach == left.counterweighted_beam.reach
    assert [one.anchor for one in (*left.tied, *right.tied)] == ["A1", "A2"]
    assert drop.rig.stages[0].from_points == ("L", "R")
    assert [one.anchor for one in drop.rig.lines] == ["A3", "A4"]
    # What was typed on pages can leave the record as a project file too.
    assert parse_project(project_text(project), "site.yaml").site.name == "Teal House"


def test_every_value_of_a_plan_is_planned_and_every_observation_blank(
    new: Browser, empty: SiteRecord
) -> None:
    rigged(new)
    rig = project_of(empty).drops[0].rig
    assert rig is not None
    data = to_data(rig)
    stated = list(values_in(data))
    assert {one["evidence"] for one in stated} == {"drawing"}
    assert {one["by"] for one in stated} == {"TERN"}
    point = data["suspension_points"][1]
    for name in ("rope_ends", "thimble", "end_stop", "softener", "clips"):
        assert point[name] is None
    assert point["connectors"][0]["pin"] is None
    assert point["tiebacks"][0]["taut"] is None
    assert point[ARM]["stack"]["fastening"] is None
    page = new.get("/drops/S1/")
    assert page.status == 200
    assert "MISSING" in page.plain.upper()


def over(record: SiteRecord) -> list[float | None]:
    """Where the lifelines of the drop pass the edge."""
    rig = project_of(record).drops[0].rig
    assert rig is not None
    return [one.station for one in rig.lines]


def test_each_lifeline_says_of_what_it_is_made(new: Browser, empty: SiteRecord) -> None:
    """Two riders need not wear the same lanyard, and one line may end on no anchor of the roof."""
    rigged(new)
    new.post("/set-up/kit/lanyard", name="lanyard 2", length="6 ft")
    at = "/set-up/drops/S1/rig"
    there = {**fields_of(new.get(at)), "lines": ["A3", "A4"]}
    assert there["line.0.lanyard"] == there["line.1.lanyard"] == "LANYARD"
    new.post(at, **{**there, "line.1.lanyard": "LANYARD-2"})
    rig = project_of(empty).drops[0].rig
    assert rig is not None
    assert [(one.anchor, one.lanyard) for one in rig.lines] == [
        ("A3", "LANYARD"),
        ("A4", "LANYARD-2"),
    ]
    people = [one.id for one in project_of(empty).people]
    new.post(at, **{**there, "line.0.worker": people[0], "line.1.worker": ""})
    rig = project_of(empty).drops[0].rig
    assert rig is not None
    assert [one.worker for one in rig.lines] == [people[0], None]
    assert fields_of(new.get(at))["line.0.worker"] == people[0]
    assert over(empty) == [pytest.approx(27 * 0.3048), pytest.approx(33 * 0.3048)]
    new.post(at, **{**there, "line.0.station": "28 ft 3 in", "line.1.station": ""})
    assert over(empty) == [pytest.approx(28.25 * 0.3048), None]
    wrong = new.post(at, None, **{**there, "line.0.station": "28 stone"})
    assert "over the edge at" in wrong.plain
    assert "28 stone" in wrong.plain
    assert over(empty) == [pytest.approx(28.25 * 0.3048), None]
    new.post(at, **{**there, "lines": ["A3"], "line.0.rope": ""})
    rig = project_of(empty).drops[0].rig
    assert rig is not None
    assert [(one.anchor, one.rope) for one in rig.lines] == [("A3", None)]


def test_a_point_that_was_looked_at_is_not_planned_away(new: Browser, empty: SiteRecord) -> None:
    hand = rigged(new)
    before = len(empty.entries())
    path = "drops/S1/rig/suspension_points/L/counterweighted_beam/reach"
    new.post("/drops/S1/state", "/drops/S1/", path=path, value="2 ft 1 in")
    assert len(empty.entries()) == before + 1
    shown = fields_of(new.get("/set-up/drops/S1/point?like=L"))
    # A third point hangs nobody knows where, and no hoist of that kind is left.
    assert "station" not in shown
    assert "hoist" not in shown
    # A copy takes the planned reach, not the one that was found.
    assert shown[f"{ARM}.reach"] == "2'-0\""
    page = new.post("/set-up/drops/S1/point", **{**LEFT_TYPED, **LEFT_CHOSEN})
    assert page.status == 400
    assert "which somebody looked at already" in page.plain
    assert hand.typed


def test_a_tag_that_stands_twice_is_refused_with_all_others(
    new: Browser, empty: SiteRecord
) -> None:
    rigged(new)
    before = len(empty.entries())
    page = new.post("/set-up/units", of="hoist|HM-1000", tags="H-2, H-3, H-3")
    assert page.status == 400
    assert "found 'H-2' a second time" in page.plain
    assert "found 'H-3' a second time" in page.plain
    assert len(empty.entries()) == before


def test_a_drop_beyond_its_edge_is_refused(new: Browser, empty: SiteRecord) -> None:
    rigged(new)
    page = new.post("/set-up/drops", id="S2", edge="MAIN-ROOF/S", start="50 ft", width="20 ft")
    assert page.status == 400
    assert "found a drop that ends at 70'-0\"" in page.plain
    assert len(project_of(empty).drops) == 1


#: What is typed for a further drop with the same rig.
SECOND = {"id": "S2", "start": "40 ft", "width": "20 ft", "height": "130 ft"}


def test_the_same_rig_at_a_further_drop_carries_the_equipment_and_nothing_seen(
    new: Browser, empty: SiteRecord
) -> None:
    hand = rigged(new)
    hand.typed = 0
    path = "drops/S1/rig/suspension_points/L/counterweighted_beam/stack/fastening"
    said = "pin through the beam, locked"
    new.post("/drops/S1/state", "/drops/S1/", path=path, value=said)
    hand.fill("/set-up/drops", SECOND, {"edge": "MAIN-ROOF/S"})
    assert "same rig as drop S1" in new.get("/set-up/drops/S2/rig").plain
    typed = {f"suspension_points.{one}.{ARM}.stack.groups.0.count": "17" for one in (0, 1)}
    taps = {f"suspension_points.{one}.tiebacks.0.anchor": f"A{one + 1}" for one in (0, 1)}
    hand.fill("/set-up/drops/S2/rig-of/S1", typed, {**taps, "lines": ["A3", "A4"]})
    # The goal for a repeat drop is six typed numbers, its own mark and place apart.
    assert hand.typed - len(SECOND) <= 6
    first, second = project_of(empty).drops
    assert first.rig is None
    rig = second.rig
    assert rig is not None
    assert rig.moved_from == "S1"
    left, right = rig.suspension_points
    assert (left.hoist, left.rope, right.hoist, right.rope) == ("H-1", "W-1", "H-2", "W-2")
    assert left.station == pytest.approx(41 * 0.3048)
    arm = left.counterweighted_beam
    assert arm is not None
    assert (arm.beam, arm.reach, arm.backspan, arm.rear_stand) == ("B-1", None, None, None)
    assert arm.fulcrum is not None
    assert arm.fulcrum.setback is None
    assert arm.fulcrum.height is not None
    assert arm.stack.fastening is None
    assert [(one.piece, one.count.value) for one in arm.stack.groups] == [("LOT-1", 17)]
    assert [(one.anchor, one.rope) for one in right.tied] == [("A2", "TIEBACK-ROPE")]
    assert rig.stages[0].stage == "ST-1"
    assert left.connectors is not None
    assert [one.connector for one in left.connectors] == ["5-8-SHACKLE"]
    assert new.get("/drops/S2/").status == 200
    assert new.get("/drops/S1/").status == 200


def test_a_rig_goes_nowhere_while_something_is_wrong(new: Browser, empty: SiteRecord) -> None:
    rigged(new)
    new.post("/set-up/drops", **SECOND, edge="MAIN-ROOF/S")
    before = len(empty.entries())
    at = "/set-up/drops/S2/rig-of/S1"
    page = new.post(at, **{"suspension_points.0.station": "70 ft", "riders": "2"})
    assert page.status == 400
    assert "a station at 70'-0\"" in page.plain
    page = new.post(
        at, **{f"suspension_points.1.{ARM}.stack.groups.0.count": "many", "riders": "x"}
    )
    assert "Point R: pieces of LOT-1: found 'many'" in page.plain
    assert "Most people on it at once: found 'x'" in page.plain
    assert len(empty.entries()) == before
    assert new.post("/set-up/drops/S1/rig-of/S2", "/set-up/drops/S1/rig").status == 400
