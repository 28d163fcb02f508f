"""What is left is true: take it and the rig still holds, take one step more and it does not."""

from __future__ import annotations

from dataclasses import replace

import pytest

from backspan.core.findings import Finding, Verdict
from backspan.core.model.basis import ReadingChoice
from backspan.core.model.project import Project
from backspan.core.model.rigs import PieceGroup
from backspan.core.quantities import FORCE, LENGTH, Amount, Style, parse
from tests.unit.core.rigs import (
    ARM,
    AUSTRALIA,
    BEAM,
    EN,
    HOIST,
    PIECE,
    PROJECT,
    STACK,
    STACKED,
    at,
    confirmed,
    count,
    finding,
    findings,
    force,
    length,
    margin,
    mass,
    on_basis,
    put,
    without_stall,
)

STEP = 0.0254 / 2
COUNT = (*STACK, "groups", 0, "count")
FACTOR = "tipping.working-load-limit"
CREDIT = replace(EN, readings=(ReadingChoice(FACTOR, "beam credited"),))


def outboard() -> Project:
    """The beam's own weight pulls outboard and is counted."""
    far = put(put(PROJECT, (*ARM, "reach"), length("9 ft")), (*ARM, "backspan"), length("8 ft"))
    return put(far, COUNT, count(95))


def two_groups() -> Project:
    heavy = put(put(PROJECT.kit.pieces[0], ("id",), "Q"), ("mass",), mass("100 lb"))
    kit = put(STACKED, ("kit", "pieces"), (*PROJECT.kit.pieces, heavy))
    return put(kit, (*STACK, "groups"), (PieceGroup("Q", count(5)), PieceGroup("P", count(6), 2)))


RIGS = {
    "taped": PROJECT,
    "from the stack": STACKED,
    "two groups": two_groups(),
    "harmful beam": outboard(),
    "credited beam": confirmed(on_basis(PROJECT, CREDIT), EN, FACTOR),
    "does not hold": put(PROJECT, COUNT, count(9)),
    "in metric": replace(PROJECT, units=Style.METRIC),
    "stall governs": put(PROJECT, (*HOIST, "stall_load"), force("2900 lb")),
}


@pytest.fixture(params=RIGS.values(), ids=list(RIGS))
def rig(request: pytest.FixtureRequest) -> Project:
    project: Project = request.param
    return project


def tipping(project: Project) -> Finding:
    return finding(project, "tipping")


def shifted(project: Project, name: str, by: float) -> Project:
    """The project with a measured length changed."""
    place = (*ARM, name)
    old = at(project, place)
    return put(project, place, replace(old, value=old.value + by))


def step_of(project: Project) -> float:
    return 0.01 if project.units is Style.METRIC else STEP


def holds(project: Project) -> bool:
    """Whether the counterweight holds, and stands on the beam."""
    fits = {one.verdict for one in findings(project, "beam-length")} <= {Verdict.PASS}
    return fits and tipping(project).verdict is Verdict.PASS


def told_of(project: Project, name: str) -> bool:
    return name in {one.id for one in tipping(project).margins}


def measured(project: Project) -> bool:
    return at(project, (*ARM, "backspan")) is not None


def test_more_reach(rig: Project) -> None:
    left = margin(tipping(rig), "more-reach")
    assert holds(shifted(rig, "reach", left))
    assert not holds(shifted(rig, "reach", left + step_of(rig)))


def test_less_backspan(rig: Project) -> None:
    if rig is RIGS["does not hold"]:
        # It would hold at a backspan that this beam is too short for.
        assert not told_of(rig, "less-backspan")
        return
    left = margin(tipping(rig), "less-backspan")
    if measured(rig):
        assert holds(shifted(rig, "backspan", -left))
        assert not holds(shifted(rig, "backspan", -left - step_of(rig)))
        return
    gap = at(rig, (*STACK, "tail_gap"))
    place = (*STACK, "tail_gap")
    assert holds(put(rig, place, replace(gap, value=gap.value + left)))
    assert not holds(put(rig, place, replace(gap, value=gap.value + left + step_of(rig))))


def test_fulcrum_inboard(rig: Project) -> None:
    left = margin(tipping(rig), "fulcrum-inboard")
    for extra, held in ((0.0, True), (step_of(rig), False)):
        moved = shifted(rig, "reach", left + extra)
        if measured(rig):
            moved = shifted(moved, "backspan", -left - extra)
        assert holds(moved) is held


def test_pieces_spare(rig: Project) -> None:
    spare = margin(tipping(rig), "pieces-spare")
    place = (*STACK, "groups", len(at(rig, (*STACK, "groups"))) - 1, "count")
    there = at(rig, place).value
    assert holds(put(rig, place, count(there - spare)))
    assert not holds(put(rig, place, count(there - spare - 1)))


@pytest.mark.parametrize("name", ["rated", "stall"])
def test_most_load(rig: Project, name: str) -> None:
    found = tipping(rig)
    told_of = {one.id for one in found.margins}
    if f"most-{name}-load" not in told_of:
        assert name == "stall"
        assert "most-stall-load-allowed" in told_of or rig.basis.tipping == (CREDIT,)
        return
    most = margin(found, f"most-{name}-load")
    light = put(rig, (*HOIST, "stall_load"), force("100 lb"))
    light = put(light, (*HOIST, "rated_load"), force("100 lb"))
    step = 10.0 if rig.units is Style.METRIC else parse("1 lb", FORCE)
    place = (*HOIST, f"{name}_load")
    assert holds(put(light, place, replace(force("1 lb"), value=most)))
    assert not holds(put(light, place, replace(force("1 lb"), value=most + step)))


def test_a_stall_load_is_promised_no_further_than_the_rule_allows() -> None:
    plenty = put(PROJECT, COUNT, count(60))
    most = margin(tipping(plenty), "most-stall-load-allowed")
    assert most == pytest.approx(parse("3000 lb", FORCE), rel=1e-3)
    assert holds(put(plenty, (*HOIST, "stall_load"), force("3000 lb")))


def test_nothing_is_promised_while_a_branch_is_unknown() -> None:
    open_stall = tipping(without_stall(PROJECT))
    assert open_stall.verdict is Verdict.MISSING
    assert {one.id for one in open_stall.margins} == {
        "most-rated-load",
        "most-stall-load",
        "hoists-that-do",
    }


def test_the_hoists_of_the_kit_that_would_do() -> None:
    big = put(at(PROJECT, HOIST), ("id",), "H15")
    big = replace(big, rated_load=force("1500 lb"), stall_load=force("4000 lb"))
    unknown = replace(put(at(PROJECT, HOIST), ("id",), "HX"), stall_load=None)
    kit = put(PROJECT, ("kit", "hoists"), (at(PROJECT, HOIST), big, unknown))
    assert told(tipping(kit), "hoists-that-do") == "H"
    assert told(tipping(put(kit, COUNT, count(30))), "hoists-that-do") == "H, H15"
    assert told(tipping(put(kit, COUNT, count(1))), "hoists-that-do") == "none"


def test_loads_that_are_not_the_hoists_alone_tell_nothing_of_hoists() -> None:
    names = {one.id for one in tipping(on_basis(PROJECT, AUSTRALIA)).margins}
    assert not names & {"most-rated-load", "most-stall-load", "hoists-that-do"}
    assert "pieces-spare" in names


def told(found: Finding, name: str) -> object:
    return next(one.value for one in found.margins if one.id == name)


def price(project: Project) -> float:
    style = project.units
    value = told(tipping(project), f"pieces-per-step-{style}")
    assert isinstance(value, Amount)
    return value.value


def test_the_price_of_a_little_more_reach_is_rounded_up() -> None:
    # 4 x 1,000 lb x 1 in / (120 in x 55 lb) = 0.606; 10 mm: 0.2386.
    assert price(PROJECT) == pytest.approx(0.7)
    assert price(replace(PROJECT, units=Style.METRIC)) == pytest.approx(0.3)


def test_where_the_stack_moves_too_more_reach_costs_more() -> None:
    # (4 x 1,000 + 880) lb x 1 in / (55 lb x 133.5 in to the middle of the next plate) = 0.665.
    assert price(STACKED) == pytest.approx(0.7)


def test_more_reach_ends_where_the_beam_does() -> None:
    plenty = put(PROJECT, COUNT, count(400))
    left = margin(tipping(plenty), "more-reach")
    assert left == pytest.approx(parse("5 ft 6 in", LENGTH))  # 18 ft - 6 in - 2 ft - 10 ft
    assert holds(shifted(plenty, "reach", left))


def test_weight_that_is_left_out_counts_where_it_begins_to_harm() -> None:
    """Nobody knows the beam's mass: reach ends where its weight would have to be counted."""
    plenty = put(put(PROJECT, COUNT, count(400)), (*BEAM, "mass"), None)
    short = put(plenty, (*ARM, "backspan"), length("8 ft"))
    left = margin(tipping(short), "more-reach")
    # The middle of 18 ft of beam passes the fulcrum at a reach of 9 ft - 6 in.
    assert left == pytest.approx(parse("6 ft 6 in", LENGTH))
    assert holds(shifted(short, "reach", left))
    assert tipping(shifted(short, "reach", left + STEP)).verdict is Verdict.MISSING


def test_a_stack_too_long_for_its_beam_is_not_told_that_no_number_holds() -> None:
    """A hundred and thirty plates reach past the fulcrum and hold nothing; sixteen hold."""
    crowded = put(STACKED, COUNT, count(130))
    assert tipping(crowded).verdict is Verdict.FAIL
    assert not told_of(crowded, "no-number-of-pieces")
    assert not told_of(crowded, "pieces-spare")
    assert holds(STACKED)


def test_a_length_that_may_shrink_to_nothing_is_not_told_of() -> None:
    """A heavy beam that is credited holds alone: without a piece its backspan is no matter."""
    credited = confirmed(on_basis(PROJECT, CREDIT), EN, FACTOR)
    heavy = put(put(credited, (*BEAM, "mass"), mass("2000 lb")), COUNT, count(0))
    assert tipping(heavy).verdict is Verdict.PASS
    assert not told_of(heavy, "less-backspan")
    assert told_of(heavy, "more-reach")


def test_lighter_pieces_leave_less() -> None:
    lighter = put(PROJECT, (*PIECE, "mass"), mass("52 lb"))
    assert margin(tipping(lighter), "more-reach") < margin(tipping(PROJECT), "more-reach")
