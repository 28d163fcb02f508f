"""What joins, ends and holds the suspension line, beyond what the cases of tests/cases say.

The left point hangs on a swaged eye with two shackles, the right one on fist grips with one.
"""

from __future__ import annotations

from dataclasses import replace

import pytest

from backspan.core.findings import Finding, Verdict
from backspan.core.mechanics.ropes import (
    hardware_strength,
    least_clip_spacing,
    most_clip_torque,
    rope_to_reach,
    turnback_for_clips,
)
from backspan.core.model.basis import RuleChoice
from backspan.core.model.evidence import Evidence
from backspan.core.model.kit import HoistRope, RopeKind, TerminationKind
from backspan.core.model.project import Project
from backspan.core.model.rigs import Fitted, Found, OtherSupport, OtherSupportKind
from backspan.core.model.seen import Pin
from backspan.core.quantities import FORCE, parse
from backspan.core.sheet.case import Place
from tests.unit.core.rigs import (
    ARM,
    EN,
    HOIST,
    LEFT,
    OSHA,
    PROJECT,
    QUEBEC,
    RIG,
    RIGHT,
    answers,
    count,
    findings,
    force,
    length,
    needs,
    on_basis,
    put,
    reasons,
    seen,
    without_stall,
)

EYE: Place = ("kit", "terminations", "EYE")
SHACKLE: Place = ("kit", "connectors", "SH")
WLL: Place = ("kit", "connectors", "WLL")
CHECKS = (
    *("hardware-strength", "hardware-seen", "termination-kind", "clips", "rope-wear"),
    "rope-length",
)


def one(project: Project, check: str, question: str, subject: str = "D/L") -> Finding:
    (only,) = (it for it in findings(project, check, subject) if it.question == question)
    return only


def strength(project: Project, piece: str = "SH") -> Finding:
    return one(project, "hardware-strength", "hardware", f"D/L/{piece}")


def test_the_formulas() -> None:
    assert hardware_strength(connector_working_load=1000.0, connector_factor=5.0).value == 5000.0
    assert least_clip_spacing(factor=6.0, rope_diameter=0.008).value == pytest.approx(0.048)
    assert most_clip_torque(factor=1.25, sheet_torque=40.0).value == 50.0
    assert rope_to_reach(drop_height=30.0, height_above_roof=1.2).value == pytest.approx(31.2)
    grown = turnback_for_clips(sheet_turnback=0.1, clip_count=3, sheet_clip_count=2)
    assert grown.value == pytest.approx(0.15)


def test_hardware_is_held_against_the_same_rule_as_the_rope() -> None:
    found = strength(PROJECT)
    assert (found.verdict, found.governing) == (Verdict.PASS, "line.rated-load")
    assert found.demand is not None
    assert found.demand.value == pytest.approx(parse("6000 lb", FORCE))
    assert found.utilisation == pytest.approx(0.5)
    assert strength(PROJECT, "WLL").utilisation == pytest.approx(6000 / 7200)


def test_a_breaking_force_goes_before_a_working_load() -> None:
    both = put(PROJECT, (*WLL, "breaking_force"), certified("5,000 lb"))
    assert strength(both, "WLL").verdict is Verdict.FAIL


@pytest.mark.parametrize("field", ["working_load", "working_load_factor"])
def test_a_working_load_without_its_factor_is_no_strength(field: str) -> None:
    assert strength(put(PROJECT, (*WLL, field), None), "WLL").verdict is Verdict.MISSING


def test_a_branch_that_fails_fails_whatever_the_other_is() -> None:
    assert strength(without_stall(PROJECT)).verdict is Verdict.MISSING
    weak = put(without_stall(PROJECT), (*SHACKLE, "breaking_force"), force("5,000 lb"))
    assert strength(weak).verdict is Verdict.FAIL


@pytest.mark.parametrize(
    ("connectors", "message"), [(None, "hardware.unsaid"), ((), "hardware.none")]
)
@pytest.mark.parametrize("check", ["hardware-strength", "hardware-seen"])
@pytest.mark.parametrize("basis", [OSHA, QUEBEC])
def test_a_line_without_hardware_is_not_known_to_be_joined(
    connectors: tuple[Fitted, ...] | None, message: str, check: str, basis: object
) -> None:
    project = on_basis(put(PROJECT, (*LEFT, "connectors"), connectors), basis)  # type: ignore[arg-type]
    found = [it for it in findings(project, check) if it.question == "connector"]
    if basis is QUEBEC and check == "hardware-strength":
        assert ("D/L", "na.no-rule") in reasons(project, check)
        return
    (only,) = found
    assert (only.verdict, only.message.id) == (Verdict.MISSING, message)
    assert needs(only) == (("need.input", "connectors"),)


def test_equal_pieces_are_told_apart() -> None:
    fitted = Fitted("SH", seen(Pin.BOLTED), seen(Found.SOUND))
    loose = replace(fitted, pin=seen(Pin.OPEN))
    project = put(PROJECT, (*LEFT, "connectors"), (fitted, loose))
    assert one(project, "hardware-seen", "pin", "D/L/SH").verdict is Verdict.PASS
    assert one(project, "hardware-seen", "pin", "D/L/SH (2)").verdict is Verdict.FAIL
    keys = [it.key for it in answers(project, "hardware-seen") if isinstance(it, Finding)]
    assert len(set(keys)) == len(keys)


@pytest.mark.parametrize("kind", TerminationKind)
def test_only_a_socket_needs_no_thimble(kind: TerminationKind) -> None:
    none = put(put(PROJECT, (*EYE, "kind"), kind), (*LEFT, "thimble"), seen(Found.NONE_NEEDED))
    holds = kind in {TerminationKind.POURED_SOCKET, TerminationKind.WEDGE_SOCKET}
    found = one(none, "hardware-seen", "thimble")
    assert found.verdict is (Verdict.PASS if holds else Verdict.FAIL)


def test_an_end_of_an_unknown_kind_may_need_one() -> None:
    none = put(put(PROJECT, (*EYE, "kind"), None), (*LEFT, "thimble"), seen(Found.NONE_NEEDED))
    assert one(none, "hardware-seen", "thimble").verdict is Verdict.FAIL


def test_an_end_nobody_named_is_of_no_known_kind() -> None:
    project = put(PROJECT, (*LEFT, "termination"), None)
    for question in ("end-clips", "end-knot", "end-fits"):
        assert one(project, "termination-kind", question).verdict is Verdict.MISSING
    assert ("D/L", "na.no-clips") in reasons(project, "clips")


def test_clips_and_knots_are_refused_under_every_text() -> None:
    for basis in (OSHA, EN, QUEBEC):
        for kind, question in (
            (TerminationKind.U_BOLT_CLIPS, "end-clips"),
            (TerminationKind.KNOT, "end-knot"),
        ):
            project = on_basis(put(PROJECT, (*EYE, "kind"), kind), basis)
            assert one(project, "termination-kind", question).verdict is Verdict.FAIL


def test_who_made_an_end_is_asked_of_formed_ends_only() -> None:
    asked = {
        kind
        for kind in TerminationKind
        for it in findings(put(PROJECT, (*EYE, "kind"), kind), "termination-kind")
        if it.question == "end-maker"
    }
    assert asked == {TerminationKind.SWAGED, TerminationKind.SPLICED, TerminationKind.SEWN}


@pytest.mark.parametrize("maker", ["qualified person", "rope maker"])
def test_the_same_diameter_in_another_unit_is_the_same(maker: str) -> None:
    made = put(PROJECT, (*EYE, "made_by"), maker)
    exact = put(made, (*EYE, "rope_diameter", "value"), 0.1 * 0.08)
    assert one(exact, "termination-kind", "end-fits").verdict is Verdict.PASS
    off = put(made, (*EYE, "rope_diameter", "value"), 0.00801)
    assert one(off, "termination-kind", "end-fits").verdict is Verdict.FAIL


@pytest.mark.parametrize("kind", [RopeKind.SYNTHETIC, RopeKind.NATURAL])
def test_wires_are_counted_of_wire_ropes_only(kind: RopeKind) -> None:
    project = put(PROJECT, ("kit", "ropes", "W", "kind"), kind)
    assert ("D/L", "na.no-wire-rope") in reasons(project, "rope-wear")


@pytest.mark.parametrize("rope", [None, "W"])
def test_a_rope_without_a_tag_was_looked_at_by_nobody(rope: str | None) -> None:
    found = findings(put(PROJECT, (*LEFT, "rope"), rope), "rope-wear")
    assert len(found) == 4
    assert {it.verdict for it in found} == {Verdict.MISSING}


def test_an_end_stop_that_somebody_was_told_of_does_not_stand_for_the_length() -> None:
    told = put(PROJECT, (*LEFT, "end_stop", "evidence"), Evidence.TOLD)
    (found,) = findings(told, "rope-length")
    assert (found.question, found.verdict) == ("end-stop", Verdict.MISSING)
    long = put(told, (*LEFT, "rope_length"), length("120 ft"))
    (found,) = findings(long, "rope-length")
    assert (found.question, found.verdict) == ("rope-length", Verdict.PASS)


@pytest.mark.parametrize("word", [None, Found.NONE_NEEDED, Found.ABSENT, Found.DEFECTIVE])
def test_without_a_sound_stop_the_length_decides(word: Found | None) -> None:
    stop = None if word is None else seen(word)
    bare = put(PROJECT, (*LEFT, "end_stop"), stop)
    for text, verdict in (("120 ft", "pass"), ("100 ft", "fail")):
        project = put(bare, (*LEFT, "rope_length"), length(text))
        (found,) = findings(project, "rope-length")
        assert found.verdict == verdict
    (found,) = findings(bare, "rope-length")
    assert found.verdict is Verdict.MISSING


def test_a_rope_from_another_support_begins_at_no_known_height() -> None:
    project = put(put(PROJECT, ARM, None), (*LEFT, "end_stop"), None)
    davit = put(project, (*LEFT, "other_support"), OtherSupport(OtherSupportKind.DAVIT))
    long = put(davit, (*LEFT, "rope_length"), length("500 ft"))
    (found,) = findings(long, "rope-length")
    assert found.verdict is Verdict.MISSING


def test_a_beam_on_the_parapet_begins_above_it() -> None:
    on_wall = put(PROJECT, (*RIGHT, "counterweighted_beam", "fulcrum", "setback"), length("3 in"))
    (found,) = findings(on_wall, "rope-length", "D/R")
    assert found.demand is not None
    # 100 ft and its half inch, 42 in and its half inch of parapet, 48 in of fulcrum.
    assert found.demand.value == pytest.approx((1200 + 0.5 + 42 + 0.5 + 48) * 0.0254)


def test_a_stop_and_a_long_rope_do_not_stand_for_turns_on_a_drum() -> None:
    drum = put(PROJECT, (*HOIST, "takes_rope"), HoistRope.WINDS)
    long = put(drum, (*LEFT, "rope_length"), length("500 ft"))
    (found,) = findings(long, "rope-length")
    assert (found.question, found.verdict) == ("drum-turns", Verdict.MISSING)
    assert found.governing == "line.least-drum-turns"
    told = replace(count(5), evidence=Evidence.TOLD)
    (found,) = findings(put(long, (*LEFT, "drum_turns"), told), "rope-length")
    assert found.verdict is Verdict.MISSING
    doubtful = put(long, (*LEFT, "drum_turns"), count(4, tolerance=1))
    (found,) = findings(doubtful, "rope-length")
    assert found.verdict is Verdict.FAIL


@pytest.mark.parametrize("basis", [OSHA, QUEBEC])
def test_turns_on_a_drum_are_asked_under_every_basis(basis: RuleChoice) -> None:
    drum = on_basis(put(PROJECT, (*HOIST, "takes_rope"), HoistRope.WINDS), basis)
    for turns, verdict in ((0, "fail"), (3, "fail"), (4, "pass")):
        (found,) = findings(put(drum, (*LEFT, "drum_turns"), count(turns)), "rope-length")
        assert found.verdict == verdict


def test_a_hoist_of_which_nobody_said_what_it_does_with_its_rope_is_no_climber() -> None:
    unsaid = put(PROJECT, (*HOIST, "takes_rope"), None)
    for project in (unsaid, put(unsaid, (*LEFT, "rope_length"), length("500 ft"))):
        (found,) = findings(project, "rope-length")
        assert (found.question, found.verdict) == ("hoist-rope", Verdict.MISSING)
        assert needs(found) == (("need.input", "takes_rope"),)


@pytest.mark.parametrize("check", CHECKS)
def test_without_a_rig_there_is_nothing_to_judge(check: str) -> None:
    assert reasons(put(PROJECT, RIG, None), check) == (("D", "na.no-suspension-point"),)


def certified(text: str) -> object:
    return replace(force(text), evidence=Evidence.CERTIFICATE)
