"""The roof plan to work on: every part a group of its own, and only what changed drawn anew."""

from __future__ import annotations

import re
from dataclasses import replace
from pathlib import Path

import pytest

from backspan.core.drafting import drawn
from backspan.core.drafting.acting import Act, Hand
from backspan.core.drafting.building import MoveCorner, MoveEdge
from backspan.core.drafting.rigging import LeadTieback, Measure, MoveBeam, MoveDrop, PlaceDrop
from backspan.core.drafting.standing import MoveAnchor, PlaceAnchor, TakeObstacle
from backspan.core.model.project import Project
from backspan.drawings.edges import roof_named
from backspan.drawings.surface import groups, surface_of
from backspan.drawings.things import path_in
from backspan.exchange.files import load
from benchmarks.large_roof import ANCHORS, DROPS, LINES, large

DEMO = load(Path(__file__).resolve().parents[3] / "examples" / "demo" / "site.yaml")
MAIN = roof_named(DEMO, "MAIN")
HAND = Hand()


def parts(project: Project, was: Project | None = None) -> dict[str, str]:
    """The groups that are drawn, by their names."""
    return dict(groups(surface_of(DEMO, "MAIN"), project, {}, "MAIN", was=was))


def over(edge: str) -> set[str]:
    """The strips over an edge and the chain of their widths."""
    strips = {f"strip-{one.id}" for one in DEMO.drops if (one.roof, one.edge) == ("MAIN", edge)}
    return {f"widths-{edge}", *strips}


def test_every_thing_of_the_roof_is_there_by_its_path() -> None:
    whole = "".join(parts(DEMO).values())
    paths = {path_in(one) for one in re.findall(r'data-path="([^"]+)"', whole)}
    base = ("site", "roofs", "MAIN")
    assert {(*base, "anchors", one.id) for one in MAIN.anchors} <= paths
    assert {(*base, "obstacles", one.id) for one in MAIN.obstacles} <= paths
    assert {(*base, "edges", one.id) for one in MAIN.edges} <= paths
    assert {(*base, "outline", str(number)) for number in range(len(MAIN.outline))} <= paths
    for drop in DEMO.drops:
        if drop.roof == "MAIN":
            assert ("drops", drop.id) in paths
            for point in drop.rig.suspension_points if drop.rig else ():
                at = ("drops", drop.id, "rig", "suspension_points", point.id)
                assert (*at, "counterweighted_beam", "stack") in paths
                assert {(*at, "tiebacks", one.id) for one in point.tied} <= paths


def test_a_place_of_the_site_lies_where_the_page_looks_for_it() -> None:
    """Origin plus its metres, y counted down: what turns a tap into a place."""
    surface = surface_of(DEMO, "MAIN")
    signs = re.findall(r"translate\(([-\d.]+),([-\d.]+)\)", parts(DEMO)["anchors"])
    at = [(float(x), float(y)) for x, y in signs]
    for anchor in MAIN.anchors:
        x = surface.frame.origin[0] + anchor.at[0] * surface.per_metre
        y = surface.height - surface.frame.origin[1] - anchor.at[1] * surface.per_metre
        assert any(abs(u - x) < 2e-3 and abs(v - y) < 2e-3 for u, v in at), anchor.id


@pytest.mark.parametrize(
    ("act", "changed"),
    [
        (MoveBeam("S1", "L", Measure.REACH, 0.5), {"rig-S1"}),
        (LeadTieback("S1", "L", "TB-L", "A02"), {"rig-S1"}),
        (MoveDrop("S1", 1.0), {"building", "rig-S1", *over("S")}),
        (MoveAnchor("MAIN", "A01", (34.0, 7.0)), {"rig-S1", "anchors"}),
        (PlaceAnchor("MAIN", "X1", (20.0, 9.0), "post"), {"anchors"}),
        (PlaceDrop("X1", "MAIN", "N", 30.0, 2.0), {"building", "rig-X1", "strip-X1", *over("N")}),
        (TakeObstacle("MAIN", "COOLER"), {"building"}),
    ],
    ids=lambda one: one.told(DEMO.units) if not isinstance(one, set) else "",
)
def test_only_what_changed_is_drawn_anew(act: Act, changed: set[str]) -> None:
    after = drawn(DEMO, [act], HAND)
    assert set(parts(after, DEMO)) == changed
    whole, before = parts(after), parts(DEMO)
    # What is not sent again is as it was: the page that puts the rest in shows the whole plan.
    assert {name: one for name, one in whole.items() if name not in changed} == {
        name: one for name, one in before.items() if name not in changed
    }


def test_a_drop_that_is_taken_back_leaves_nothing_on_the_plan() -> None:
    rig = next(one.rig for one in DEMO.drops if one.id == "S1")
    (placed,) = drawn(DEMO, [PlaceDrop("X1", "MAIN", "N", 30.0, 2.0)], HAND).drops[-1:]
    after = replace(DEMO, drops=(*DEMO.drops, replace(placed, rig=rig)))
    undone = parts(DEMO, after)
    assert parts(after)["rig-X1"].count("<") > undone["rig-X1"].count("<")
    for name in ("strip-X1", "rig-X1"):
        assert undone.pop(name) == f'<g data-part="{name}">\n</g>'
    assert {**parts(after), **undone}.items() >= parts(DEMO).items()


@pytest.mark.parametrize("act", [MoveEdge("MAIN", "N", 1.0), MoveCorner("MAIN", 0, (-1.0, -1.0))])
def test_what_an_edge_places_is_drawn_anew_with_it(act: Act) -> None:
    after = drawn(DEMO, [act], HAND)
    again = {**parts(DEMO), **parts(after, DEMO)}
    assert again == parts(after)


def test_a_review_that_changed_is_drawn_though_nothing_moved() -> None:
    surface = surface_of(DEMO, "MAIN")
    found = dict(groups(surface, DEMO, {}, "MAIN", was=DEMO, asked={"S1"}))
    assert set(found) == {"strip-S1"}
    assert dict(groups(surface, DEMO, {}, "MAIN", was=DEMO)) == {}


def test_a_roof_that_nobody_recorded_is_drawn_on_a_usual_surface() -> None:
    assert surface_of(DEMO, "R9").width == pytest.approx(580.0)
    bare = replace(DEMO, site=replace(DEMO.site, roofs=(replace(MAIN, outline=(), edges=()),)))
    assert "building" in dict(groups(surface_of(bare, "MAIN"), bare, {}, "MAIN"))


def test_the_large_roof_of_the_benchmark_is_as_large_as_it_says() -> None:
    project = large(DEMO)
    drops = [one for one in project.drops if one.roof == "BIG"]
    rigs = [one.rig for one in drops if one.rig is not None]
    lines = sum(
        len(rig.lines) + sum(len(one.tied) for one in rig.suspension_points) for rig in rigs
    )
    assert (len(rigs), len(roof_named(project, "BIG").anchors)) == (DROPS, ANCHORS)
    assert lines >= LINES
