"""The web of a beam without a rating. W6x12 of 50 ksi; numbers by hand beside each test."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from backspan.core.findings import DoesNotApply, Finding, Verdict
from backspan.core.model.basis import Confirmation
from backspan.core.model.beams import BeamSection, BeamSplice, Metal
from backspan.core.model.project import Project
from backspan.core.quantities import FORCE, PRESSURE, parse
from backspan.core.wire.code import configuration_code
from tests.unit.core.checks.test_beam_strength import (
    CHANNEL,
    CONFIRMED,
    FIFTY,
    SIZES,
    SOUND,
    TEXTS,
    W6X12,
    answers,
    by,
    on_label,
)
from tests.unit.core.rigs import ARM, BEAM, STACK, count, labelled, length, needs, put

ID = "beam-web"
OF_I = (
    *("safety-shear", "safety-shear-stocky", "stocky-web", "shear-web"),
    *("safety-yielding", "safety-crippling", "elastic-constant"),
)
ALL = (
    *(one for one in CONFIRMED if one.value != "beam.elastic-constant"),
    *(
        Confirmation("us-aisc-360", "2016", f"beam.{key}", "MT", "2026-11-20", "invented")
        for key in (*OF_I, "shear-tube")
    ),
)
#: The rig of the other check, whose office has the values of the web too.
PLAIN = replace(SOUND, confirmations=ALL)
BEARING = (*ARM, "fulcrum", "bearing_length")
HELD = put(PLAIN, BEARING, length("4 in", tolerance="0 in"))
OURS = tuple(one for one in TEXTS if one.rule_set != "us-osha-1926-subpart-l")
TUBE = BeamSection(
    material=Metal.STEEL,
    section_depth=on_label(length("4 in")),
    flange_width=on_label(length("3 in")),
    wall=on_label(length("0.233 in")),
    yield_strength=FIFTY,
)
PIPE = BeamSection(
    material=Metal.STEEL,
    section_depth=on_label(length("4.5 in")),
    wall=on_label(length("0.221 in")),
    yield_strength=FIFTY,
)


def of(section: BeamSection, project: Project = PLAIN) -> Project:
    """The rig on a beam of that section, the office as before."""
    return replace(by(section, project), confirmations=ALL)


def of_steel(text: str, section: BeamSection) -> BeamSection:
    """The section of a softer steel."""
    return replace(section, yield_strength=replace(FIFTY, value=parse(text, PRESSURE)))


def in_service(project: Project) -> Project:
    """No text in force asks for four times the load."""
    return replace(project, basis=replace(project.basis, beam=OURS))


def pieces(number: int, project: Project = PLAIN) -> Project:
    return put(project, (*STACK, "groups", "LOT", "count"), count(number))


def on_left(project: Project) -> list[Finding]:
    return [
        one
        for one in answers(project, ID)
        if isinstance(one, Finding) and one.subject.endswith("/L")
    ]


def web(project: Project) -> Finding:
    return on_left(project)[0]


def lb(amount: Any) -> float:
    return float(amount.value / parse("1 lbf", FORCE))


def test_what_presses_the_web_over_the_fulcrum_governs() -> None:
    """50 ksi x 0.230 in x 5 x 0.530 in = 30,475 lb, on no length of bearing."""
    found = web(PLAIN)
    assert (found.verdict, found.message.id) == (Verdict.PASS, "web-bears-four.pass")
    assert lb(found.capacity) == pytest.approx(30_475, rel=1e-4)
    assert {one.id for one in found.notes} == {"note.web-not-asked", "note.no-bearing-length"}


def test_what_presses_it_is_the_reaction_of_the_fulcrum() -> None:
    """1,000 lb x (1 + a / c) and what idle presses the front, four times, is more than 4,000 lb."""
    pressed = next(one for one in web(PLAIN).steps if one.formula == "imposed_load")
    assert pressed.value == pytest.approx(web(PLAIN).demand.value)  # type: ignore[union-attr]
    assert lb(web(PLAIN).demand) > 4_000


def test_with_a_length_of_bearing_the_shear_governs() -> None:
    """0.6 x 50 ksi x 6.03 in x 0.230 in = 41,607 lb; 4 x 1,000 lb and 200 lb x 2.5 / 18 ft."""
    found = web(HELD)
    assert (found.verdict, found.message.id) == (Verdict.PASS, "web-shear-four.pass")
    assert lb(found.capacity) == pytest.approx(41_607, rel=1e-4)
    assert lb(found.demand) == pytest.approx(4_027.8, rel=1e-4)
    assert "note.no-bearing-length" not in {one.id for one in found.notes}


def test_near_its_end_the_web_takes_half() -> None:
    """Fulcrum to front end 3 in of a depth of 6.03 in: 50 ksi x 0.230 in x 2.5 x 0.530 in."""
    reach = put(PLAIN, (*ARM, "reach"), length("2 in"))
    short = put(reach, (*ARM, "tip_beyond_line"), length("1 in"))
    assert lb(web(short).capacity) == pytest.approx(15_237.5, rel=1e-4)


@pytest.mark.parametrize(("tip", "taken"), [("4 in", 15_237.5), ("4.1 in", 30_475)])
def test_the_depth_from_the_end_is_where_it_changes(tip: str, taken: float) -> None:
    """6 in or 6.1 in from the end, of a depth of 6.03 in; the tape is taken at its word."""
    exact = put(PLAIN, (*ARM, "reach"), length("2 in", tolerance="0 in"))
    near = put(exact, (*ARM, "tip_beyond_line"), length(tip, tolerance="0 in"))
    assert lb(web(near).capacity) == pytest.approx(taken, rel=1e-4)


def test_by_its_sizes_the_flange_stands_for_the_fillet() -> None:
    """50 ksi x 0.23 in x 5 x 0.28 in = 16,100 lb."""
    assert lb(web(of(SIZES)).capacity) == pytest.approx(16_100, rel=1e-4)


def test_plates_that_may_be_welded_are_allowed_less_shear() -> None:
    """W6x12 by the table 41,607 lb / 1.50, by its sizes 0.6 x 50 x 6.03 x 0.23 / 1.67."""
    light = in_service(pieces(60, HELD))
    sizes = of(SIZES, light)
    sizes = in_service(put(sizes, BEARING, length("6 in")))
    keys = {one.key for one in web(sizes).rules}
    assert "beam.safety-shear" in keys
    steps = [one.value for one in web(sizes).steps if one.formula == "allowed_force"]
    assert any(lb_of(one) == pytest.approx(41_607 / 1.67, rel=1e-3) for one in steps)
    steps = [one.value for one in web(light).steps if one.formula == "allowed_force"]
    assert any(lb_of(one) == pytest.approx(41_607 / 1.50, rel=1e-3) for one in steps)


def lb_of(force: float) -> float:
    return force / parse("1 lbf", FORCE)


def test_idle_the_rear_stand_presses_the_web() -> None:
    """60 x 55 lb stand over the stand: 30,475 lb / 1.50."""
    found = web(pieces(60))
    assert found.message.id == "web-rear.pass"
    assert lb(found.capacity) == pytest.approx(30_475 / 1.5, rel=1e-4)


def test_a_rear_stand_at_the_end_of_the_beam_has_half() -> None:
    at_end = put(pieces(60), (*ARM, "rear_stand"), length("15 ft 3 in"))
    steps = {lb_of(one.value) for one in web(at_end).steps if one.formula == "web_yields_at_end"}
    assert min(steps) == pytest.approx(15_237.5, rel=1e-4)


@pytest.mark.parametrize(
    ("project", "message"),
    [
        (of(of_steel("5 ksi", W6X12)), "web-bears-four.fail"),
        (of(of_steel("4 ksi", TUBE)), "web-shear-four.fail"),
        (of(TUBE, pieces(60)), "web-inboard.pass"),
        (of(of_steel("5 ksi", TUBE), pieces(60)), "web-inboard.fail"),
        (in_service(of(TUBE, pieces(4))), "web-shear.pass"),
        (in_service(of(of_steel("1 ksi", TUBE), pieces(4))), "web-shear.fail"),
        (in_service(pieces(4)), "web-bears.pass"),
        (in_service(of(of_steel("2 ksi", W6X12), pieces(4))), "web-bears.fail"),
        (in_service(of(of_steel("5 ksi", W6X12), pieces(60))), "web-rear.fail"),
    ],
)
def test_which_of_the_forces_is_told(project: Project, message: str) -> None:
    found = web(project)
    assert found.message.id == message
    verdict = Verdict.PASS if message.endswith("pass") else Verdict.FAIL
    assert found.verdict is verdict


def test_a_tube_carries_shear_by_two_sides() -> None:
    """0.6 x 50 ksi x 2 x (4 - 3 x 0.233) in x 0.233 in = 46,148 lb."""
    assert lb(web(of(TUBE)).capacity) == pytest.approx(46_148, rel=1e-4)


def test_a_pipe_carries_shear_by_half_of_it() -> None:
    """0.6 x 50 ksi x pi x (4.5 - 0.221) in x 0.221 in / 2 = 44,563 lb."""
    assert lb(web(of(PIPE)).capacity) == pytest.approx(44_563, rel=1e-4)
    shape = BeamSection(
        shape="Pipe 4 STD",
        section_depth=on_label(length("4.5 in")),
        wall=on_label(length("0.221 in")),
        yield_strength=FIFTY,
    )
    assert lb(web(of(shape)).capacity) == pytest.approx(0.6 * 50_000 * 2.96 / 2, rel=1e-3)


@pytest.mark.parametrize("section", [TUBE, PIPE])
def test_the_wall_of_a_hollow_section_is_an_engineers(section: BeamSection) -> None:
    """Its shear holds, and still nothing passes: what presses the wall is not judged."""
    shear, wall = on_left(of(section))
    assert shear.verdict is Verdict.PASS
    assert (wall.verdict, wall.message.id) == (Verdict.REFER, "web-wall.refer")
    assert wall.not_judged
    assert shear.key != wall.key


def test_values_nobody_confirmed_leave_a_pass_to_the_office() -> None:
    for key in OF_I:
        some = tuple(one for one in ALL if one.value != f"beam.{key}")
        assert web(replace(PLAIN, confirmations=some)).verdict is Verdict.REFER, key
    weak = of(of_steel("5 ksi", W6X12))
    assert web(replace(weak, confirmations=())).verdict is Verdict.FAIL
    for section, key in ((TUBE, "shear-tube"), (PIPE, "safety-shear")):
        some = tuple(one for one in ALL if one.value != f"beam.{key}")
        assert web(replace(of(section), confirmations=some)).verdict is Verdict.REFER, key


@pytest.mark.parametrize(
    ("project", "name"),
    [
        (of(replace(W6X12, yield_strength=None)), "yield_strength"),
        (of(replace(SIZES, web_thickness=None)), "web_thickness"),
        (put(PLAIN, (*ARM, "rear_stand"), None), "rear_stand"),
        (put(PLAIN, (*ARM, "tip_beyond_line"), None), "tip_beyond_line"),
        (put(PLAIN, (*BEAM, "mass"), None), "beam_mass"),
    ],
)
def test_what_lacks_is_named(project: Project, name: str) -> None:
    found = web(project)
    assert (found.verdict, found.message.id) == (Verdict.MISSING, "web-force.missing")
    assert ("need.input", name) in needs(found)


def test_a_known_fail_stands_whatever_else_lacks() -> None:
    weak = of(of_steel("1 ksi", TUBE))
    assert web(put(weak, (*ARM, "rear_stand"), None)).verdict is Verdict.FAIL


@pytest.mark.parametrize(
    ("section", "message"),
    [
        (replace(SIZES, web_thickness=on_label(length("0.08 in"))), "outside.thin_web"),
        (replace(TUBE, wall=on_label(length("0.055 in"))), "outside.thin_web"),
        (replace(TUBE, wall=on_label(length("1.4 in"))), "outside.no_web"),
        (replace(W6X12, flange_thickness=on_label(length("0.2 in"))), "outside.other_shape"),
    ],
)
def test_webs_that_the_equations_do_not_hold_for_are_refused(
    section: BeamSection, message: str
) -> None:
    found = web(of(section))
    assert (found.verdict, found.message.id) == (Verdict.FAIL, message)


def test_a_beam_that_lifts_off_its_front_is_refused() -> None:
    """A stack far behind a rear stand near the fulcrum turns the beam about that."""
    tail = put(pieces(60), (*ARM, "rear_stand"), length("2 ft"))
    assert web(tail).message.id == "outside.front"


@pytest.mark.parametrize(
    ("project", "message"),
    [
        (put(PLAIN, (*ARM, "splices"), (BeamSplice("J1"),)), "beam-spliced.refer"),
        (replace(PLAIN, basis=replace(PLAIN.basis, beam=())), "beam-silent.refer"),
    ],
)
def test_what_only_an_engineer_can_reckon(project: Project, message: str) -> None:
    found = web(project)
    assert (found.verdict, found.message.id) == (Verdict.REFER, message)
    assert found.not_judged


def test_the_web_of_a_channel_that_would_hold_is_an_engineers() -> None:
    """50 ksi x 0.200 in x 5 x 0.343 in = 17,150 lb: the flange stands for the fillet."""
    found = web(of(CHANNEL))
    assert (found.verdict, found.message.id) == (Verdict.REFER, "web-twists.refer")
    assert found.not_judged
    assert lb(found.capacity) == pytest.approx(17_150, rel=1e-4)
    assert len(on_left(of(CHANNEL))) == 1


def test_a_channel_s_shear_has_no_credit_of_a_rolled_i() -> None:
    """0.6 x 50 ksi x 6 in x 0.200 in = 36,000 lb / 1.67, though the table has it."""
    found = web(of(CHANNEL))
    assert "beam.safety-shear-stocky" not in {one.key for one in found.rules}
    allowed = {lb_of(one.value) for one in found.steps if one.formula == "allowed_force"}
    assert any(one == pytest.approx(36_000 / 1.67, rel=1e-3) for one in allowed)


def test_a_channel_whose_web_gives_way_fails() -> None:
    assert web(of(of_steel("5 ksi", CHANNEL))).message.id == "web-bears-four.fail"


def test_the_label_goes_first() -> None:
    rated = put(PLAIN, (*BEAM, "label"), labelled())
    assert all(isinstance(one, DoesNotApply) for one in answers(rated, ID))
    assert all(isinstance(one, DoesNotApply) for one in answers(by(None), ID))


def test_a_length_of_bearing_is_of_the_configuration_only_where_it_is_stated() -> None:
    drop = PLAIN.drops[0]
    bare, held = (configuration_code(one, one.drops[0]) for one in (PLAIN, HELD))
    assert bare != held
    assert configuration_code(put(HELD, BEARING, None), drop) == bare


def test_a_length_of_bearing_within_its_doubt_is_taken_shorter() -> None:
    soft = of(of_steel("5 ksi", W6X12), HELD)
    found = [
        lb(web(put(soft, BEARING, length("1 in", tolerance=one))).capacity)
        for one in ("0 in", "0.5 in")
    ]
    assert found[1] < found[0]


def takes(project: Project) -> float:
    """How many times over the beam takes what presses or shears it."""
    found = web(project)
    assert found.utilisation is not None
    return 1 / found.utilisation


def test_more_bearing_and_a_thicker_web_never_harm() -> None:
    """The laws of this check; at four tenths of an inch of web the answer has turned to a pass."""
    soft = of(of_steel("5 ksi", SIZES))
    bearing = [
        takes(put(soft, BEARING, length(f"{one} in", tolerance="0 in")))
        for one in (0.1, 0.5, 1, 2, 3, 5, 6, 8, 20)
    ]
    assert bearing == sorted(bearing)
    assert takes(soft) <= bearing[0]
    order, found = [Verdict.FAIL, Verdict.PASS], []
    for hundredths in (20, 25, 30, 40, 60, 90, 150):
        web_of = on_label(length(f"{hundredths / 100} in"))
        found.append(web(of(of_steel("5 ksi", replace(SIZES, web_thickness=web_of)))).verdict)
    assert [order.index(one) for one in found] == sorted(order.index(one) for one in found)
    assert set(found) == set(order)


def test_more_load_or_reach_never_helps() -> None:
    soft = of(of_steel("12 ksi", SIZES))
    by_reach = [takes(put(soft, (*ARM, "reach"), length(f"{one} ft"))) for one in (1, 2, 4, 6)]
    assert by_reach == sorted(by_reach, reverse=True)
