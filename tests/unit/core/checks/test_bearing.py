"""What the fulcrum asks of its surface. Sums by statics: moments about the fulcrum, then forces.

Load 1,000 lb (stall 2,500 lb) at 2 ft, 880 lb of plates at 10 ft, a beam of 200 lb at 6 ft 6 in, a
rear stand at 10 ft: it carries (8,800 + 1,300 - 2,000) / 10 = 810 lb, the fulcrum 1,270 lb; at
stall 510 lb and 3,070 lb. On 4 sq ft four times the one is 1,270 psf, 1.5 times the other 1,151.25.
"""

from __future__ import annotations

import pytest

from backspan.core.findings import Finding, Verdict
from backspan.core.mechanics.bearing import bearing_pressure, front_reaction, rear_reaction
from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.model.project import Project
from backspan.core.quantities import AREA, FORCE, PRESSURE, parse
from tests.unit.core.rigs import (
    ARM,
    HOIST,
    PIECE,
    PROJECT,
    QUEBEC,
    STACK,
    count,
    finding,
    force,
    length,
    mass,
    needs,
    notes,
    on_basis,
    put,
    stated,
    without_stall,
)

STRENGTH = (*ARM, "fulcrum", "surface_strength")


def bearing(project: Project) -> Finding:
    return finding(project, "bearing")


def carries(text: str) -> StatedValue[float]:
    return stated(text, PRESSURE, Evidence.CERTIFICATE)


def test_the_branch_that_asks_for_most_governs() -> None:
    found = bearing(PROJECT)
    assert found.demand is not None
    assert found.demand.value == pytest.approx(parse("1270 psf", PRESSURE), rel=1e-9)
    assert (found.verdict, found.governing) == (Verdict.PASS, "bearing.rated-load")
    strong = bearing(put(PROJECT, (*HOIST, "stall_load"), force("3000 lb")))
    # 10,100 - 6,000 leave 410 lb behind: 3,670 lb and 1.5 of it on 4 sq ft.
    assert strong.demand is not None
    assert strong.demand.value == pytest.approx(parse("1376.25 psf", PRESSURE), rel=1e-9)
    assert strong.governing == "bearing.stall-load"


@pytest.mark.parametrize(("text", "verdict"), [("1270 psf", "pass"), ("1269 psf", "fail")])
def test_equal_is_enough(text: str, verdict: str) -> None:
    assert bearing(put(PROJECT, STRENGTH, carries(text))).verdict == verdict


def test_where_the_tail_would_lift_the_fulcrum_carries_all() -> None:
    """At 5 ft one plate holds not: nothing is left behind, and less than nothing is not counted."""
    far = put(PROJECT, (*ARM, "reach"), length("5 ft"))
    found = bearing(put(far, (*STACK, "groups", 0, "count"), count(1)))
    assert found.demand is not None
    assert found.demand.value == pytest.approx(parse("1255 psf", PRESSURE), rel=1e-9)


def test_a_rear_stand_nearer_carries_more_and_leaves_less() -> None:
    near, far = (
        bearing(put(PROJECT, (*ARM, "rear_stand"), length(text))).demand
        for text in ("10 ft", "14 ft")
    )
    assert near is not None
    assert far is not None
    assert near.value < far.value


@pytest.mark.parametrize(
    ("place", "name"),
    [
        ((*ARM, "rear_stand"), "rear_stand"),
        ((*ARM, "fulcrum", "plate_width"), "plate_width"),
        (STRENGTH, "surface_strength"),
        (("kit", "beams", "B", "mass"), "beam_mass"),
        ((*HOIST, "stall_load"), "stall_load"),
    ],
)
def test_what_is_not_known_is_missing(place: tuple[str, ...], name: str) -> None:
    found = bearing(put(put(PROJECT, (*HOIST, "limiter_trip"), None), place, None))
    assert found.verdict is Verdict.MISSING
    assert needs(found) == (("need.input", name),)


def test_a_strength_that_somebody_told_of_is_not_enough() -> None:
    told = bearing(put(PROJECT, (*STRENGTH, "evidence"), Evidence.TOLD))
    assert told.verdict is Verdict.MISSING


def test_one_branch_known_to_fail_is_a_fail_whatever_the_other() -> None:
    weak = without_stall(put(PROJECT, STRENGTH, carries("1000 psf")))
    assert bearing(weak).verdict is Verdict.FAIL


def test_a_text_that_says_nothing_of_it_is_named() -> None:
    for check in ("bearing", "rear-bearing"):
        found = finding(on_basis(PROJECT, QUEBEC), check)
        assert (found.verdict, found.message.id) == (Verdict.REFER, f"{check}.silent")
        assert found.not_judged


def test_a_beam_that_turns_about_its_rear_stand_with_nothing_on_the_line_is_refused() -> None:
    """880 lb at 10 ft, 200 lb at 6 ft 6 in: over a stand at 8 ft the fulcrum lifts."""
    for check in ("bearing", "rear-bearing"):
        found = finding(put(PROJECT, (*ARM, "rear_stand"), length("8 ft")), check)
        assert (found.verdict, found.message.id) == (Verdict.FAIL, "outside.front")


def test_5000_lb_on_a_pad_of_2_ft_are_8_68_psi() -> None:
    # Insulation boards, ASTM C1289 grades: 8.68 psi on 2 ft square is borne, 34.7 on 1 ft is not.
    area = parse("4 sq ft", AREA)
    pressure = bearing_pressure(factor=1.0, reaction=parse("5000 lb", FORCE), plate_area=area)
    assert pressure.value == pytest.approx(parse("8.68 psi", PRESSURE), rel=5e-4)


def test_forces_and_moments_balance() -> None:
    """A second sum about the rear stand gives the same front reaction while the stand carries."""
    load, plates, beam, reach, arm, middle, stand = 4400.0, 3900.0, 890.0, 0.6, 3.0, 2.0, 3.4
    behind = rear_reaction(
        resisting=plates * arm + beam * middle,
        load=load,
        reach=reach,
        rear_stand=stand,
    ).value
    front = front_reaction(
        load=load, counterweight=plates, beam_weight=beam, carried_behind=behind
    ).value
    about_stand = load * (stand + reach) + plates * (stand - arm) + beam * (stand - middle)
    assert front * stand == pytest.approx(about_stand, rel=1e-12)


def behind(mass_of_piece: StatedValue[float]) -> Finding:
    """The stand just before the plates: 1,000 lb at 6 ft is not held yet by light ones."""
    rig = put(put(PROJECT, (*ARM, "rear_stand"), length("9.9 ft")), (*PIECE, "mass"), mass_of_piece)
    rig = put(rig, (*ARM, "reach"), length("6 ft"))
    return bearing(put(rig, ("kit", "beams", "B", "mass"), mass("20 lb")))


def test_behind_the_rear_stand_nothing_is_taken_off() -> None:
    """The worst of a doubtful mass would lie where the stand begins to carry, at neither end."""
    found = behind(mass("37 lb", tolerance="10 lb"))
    assert "note.behind-rear-stand" in notes(found)
    assert found.demand is not None
    on_stand = [(each, max(0.0, (160 * each + 20 * 2.5 - 6000) / 9.9)) for each in range(27, 48)]
    inside = [1000 + 16 * each + 20 - carried for each, carried in on_stand]
    assert found.demand.value >= parse(f"{max(inside)} psf", PRESSURE) * (1 - 1e-9)
    assert max(inside) not in (inside[0], inside[-1])


def test_masses_without_doubt_have_no_inside_and_the_stand_is_taken_off() -> None:
    found = behind(mass("47 lb"))
    assert "note.behind-rear-stand" not in notes(found)
    assert found.demand is not None
    pressed = 1000 + 16 * 47 + 20 - (160 * 47 + 20 * 2.5 - 6000) / 9.9
    assert found.demand.value == pytest.approx(parse(f"{pressed} psf", PRESSURE), rel=1e-9)
