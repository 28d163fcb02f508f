"""A beam without a rating, by its section. W6x12 of 50 ksi; numbers by hand beside each test."""

from __future__ import annotations

import json
from dataclasses import replace
from typing import Any

import pytest

from backspan.core.findings import Decider, DoesNotApply, Finding, Verdict
from backspan.core.model.basis import Confirmation, RuleChoice
from backspan.core.model.beams import (
    BeamSection,
    BeamSplice,
    Holes,
    Joined,
    Metal,
    Restraint,
    Upright,
)
from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.model.kit import BeamLabel
from backspan.core.model.project import Project
from backspan.core.model.units import LabelState
from backspan.core.quantities import MOMENT, PRESSURE, Style, parse
from backspan.core.review.run import answers_of, case_of
from backspan.core.rules.shape import SectionForm
from backspan.core.wire.code import configuration, configuration_code
from backspan.core.words import say
from tests.unit.core.rigs import (
    ARM,
    BEAM,
    BEAM_UNIT,
    LIBRARY,
    ON,
    PROJECT,
    STACK,
    count,
    length,
    needs,
    put,
    seen,
)

ID = "beam-strength"
KEYS = (
    *("safety-bending", "elastic-constant", "slender-web", "slender-flange"),
    *("slender-tube-flange", "slender-tube-web", "slender-pipe"),
)
TEXTS = (
    RuleChoice("us-osha-1926-subpart-l", "1996"),
    RuleChoice("us-aisc-360", "2016"),
    RuleChoice("us-aisc-shapes", "15"),
)
CONFIRMED = tuple(
    Confirmation("us-aisc-360", "2016", f"beam.{key}", "MT", "2026-11-20", "office copy, invented")
    for key in KEYS
)


def on_label(value: StatedValue[Any]) -> StatedValue[Any]:
    return replace(value, evidence=Evidence.LABEL)


FIFTY = StatedValue(parse("50 ksi", PRESSURE), None, Evidence.CERTIFICATE, "MT", "2026-11-20")
W6X12 = BeamSection(
    shape="W6x12",
    section_depth=on_label(length("6 in")),
    flange_width=on_label(length("4 in")),
    web_thickness=on_label(length("0.23 in")),
    flange_thickness=on_label(length("0.28 in")),
    yield_strength=FIFTY,
)
CHANNEL = BeamSection(
    shape="C6x8.2",
    section_depth=on_label(length("6 in")),
    flange_width=on_label(length("1.92 in")),
    web_thickness=on_label(length("0.2 in")),
    flange_thickness=on_label(length("0.343 in")),
    yield_strength=FIFTY,
)
SIZES = BeamSection(
    material=Metal.STEEL,
    form=SectionForm.I_SHAPE,
    section_depth=on_label(length("6.03 in")),
    flange_width=on_label(length("4 in")),
    web_thickness=on_label(length("0.23 in")),
    flange_thickness=on_label(length("0.28 in")),
    yield_strength=FIFTY,
)


def by(section: BeamSection | None, project: Project = PROJECT) -> Project:
    """The rig on a plain beam: no label, its section stated, an office that has the text."""
    bare = put(put(project, (*BEAM, "label"), None), BEAM_UNIT_LABEL, seen(LabelState.NONE))
    named = replace(bare, basis=replace(bare.basis, beam=TEXTS), confirmations=CONFIRMED)
    return put(named, (*BEAM, "section"), section)


BEAM_UNIT_LABEL = (*BEAM_UNIT, "label")
_LONG = put(PROJECT, (*ARM, "unbraced_length"), length("10 ft"))
_HELD = put(_LONG, (*ARM, "found", "upright"), seen(Upright.HELD))
SOUND = by(W6X12, put(_HELD, (*ARM, "found", "holes"), seen(Holes.NONE)))


def answers(project: Project, check: str = ID) -> list[Finding | DoesNotApply]:
    case = case_of(project, project.drops[0].id, LIBRARY, on=ON)
    return [one for one in answers_of(case) if one.check == check]


def strength(project: Project) -> Finding:
    found = next(one for one in answers(project) if one.subject.endswith("/L"))
    assert isinstance(found, Finding), found
    return found


def lb_ft(amount: Any) -> float:
    return float(amount.value / parse("1 lb ft", MOMENT))


def test_four_times_the_load_governs_over_the_fulcrum() -> None:
    """4 x 1,000 lb x 2 ft and 200 lb / 18 ft x (2 ft 6 in)2 / 2 = 34.7: 8,034.7 of 23,353 lb ft."""
    found = strength(SOUND)
    assert found.verdict is Verdict.PASS
    assert found.message.id == "beam-four-times.pass"
    assert lb_ft(found.demand) == pytest.approx(8034.7, rel=1e-4)
    assert lb_ft(found.capacity) == pytest.approx(13.98 * 1.67 * 1000, rel=2e-3)


@pytest.mark.parametrize(("reach", "verdict"), [("5 ft", Verdict.PASS), ("6 ft", Verdict.FAIL)])
def test_the_reach_at_which_it_fails(reach: str, verdict: Verdict) -> None:
    assert strength(put(SOUND, (*ARM, "reach"), length(reach))).verdict is verdict


def test_without_a_place_that_holds_it_all_of_the_beam_is_unbraced() -> None:
    """18 ft is beyond L_r of 11.2 ft: it takes less, and a note says why."""
    found = strength(put(SOUND, (*ARM, "unbraced_length"), None))
    assert lb_ft(found.capacity) < lb_ft(strength(SOUND).capacity)
    assert "note.whole-beam" in {one.id for one in found.notes}


def test_a_longer_unbraced_length_within_its_doubt_is_taken() -> None:
    doubtful = put(SOUND, (*ARM, "unbraced_length"), length("10 ft", tolerance="6 in"))
    assert lb_ft(strength(doubtful).capacity) < lb_ft(strength(SOUND).capacity)


def test_idle_the_stack_bends_it_over_a_rear_stand_far_in_front() -> None:
    """60 x 55 lb = 3,300 lb, 10 ft less 2 ft behind the stand: 26,400 lb ft, and the beam."""
    heavy = put(SOUND, (*STACK, "groups", "LOT", "count"), count(60))
    found = strength(put(heavy, (*ARM, "rear_stand"), length("2 ft")))
    assert found.message.id == "beam-idle.fail"
    own = 200 / 18 * (18 - 2.5 - 2) ** 2 / 2
    assert lb_ft(found.demand) == pytest.approx(26_400 + own)


def test_by_its_sizes_it_takes_a_little_less_than_the_shape() -> None:
    by_sizes = lb_ft(strength(by(SIZES, SOUND)).capacity)
    assert 0.95 < by_sizes / lb_ft(strength(SOUND).capacity) < 1.0


def test_a_thickness_that_may_be_less_is_taken_less() -> None:
    thin = replace(SIZES, flange_thickness=on_label(length("0.28 in", tolerance="0.03 in")))
    exact, doubtful = strength(by(SIZES, SOUND)), strength(by(thin, SOUND))
    assert lb_ft(doubtful.capacity) < lb_ft(exact.capacity)


def test_how_far_it_bends_is_told_and_decides_nothing() -> None:
    """1,000 lb, 2 ft and 14 ft of W6x12: 1000 x 24^2 x 192 / (3 x 29e6 x 22.1) = 0.0575 in."""
    exact = put(SOUND, (*ARM, "reach"), length("2 ft", tolerance="0 in"))
    found = strength(put(exact, (*ARM, "rear_stand"), length("14 ft", tolerance="0 in")))
    inches = {name: one.value / 0.0254 for name, one in found.figures}
    assert inches["tip_down"] == pytest.approx(0.0575, rel=1e-3)
    # P a c2 / (9 sqrt(3) E I) = 1000 x 24 x 168^2 / (15.588 x 29e6 x 22.1) = 0.0678 in
    assert inches["bow_up"] == pytest.approx(0.0678, rel=1e-3)
    assert "note.beam-bends" in {one.id for one in found.notes}
    assert found.message.id == "beam-four-times.pass"
    told = say(next(one for one in found.notes if one.id == "note.beam-bends"), Style.US)
    # As a tape shows them, no less than they are.
    assert "1/16 in down" in told or '1/16" down' in told
    assert '1/8"' in told or "1/8 in" in told
    unknown = strength(put(SOUND, (*ARM, "rear_stand"), None))
    assert not {one.id for one in unknown.notes} & {"note.beam-bends"}


def test_a_stack_behind_the_rear_stand_is_where_the_beam_is_held() -> None:
    """The further of the two: it bends more there, never less."""
    near, far = (
        dict(strength(put(SOUND, (*ARM, "rear_stand"), length(one))).figures)["tip_down"].value
        for one in ("4 ft", "14 ft")
    )
    assert near <= far
    assert near > 0.0


def test_values_nobody_confirmed_leave_a_pass_to_the_office() -> None:
    found = strength(replace(SOUND, confirmations=()))
    assert found.verdict is Verdict.REFER
    # Not one of the values it rests on may be left unconfirmed.
    for key in KEYS[:4]:
        some = tuple(one for one in CONFIRMED if one.value != f"beam.{key}")
        assert strength(replace(SOUND, confirmations=some)).verdict is Verdict.REFER, key
    far = put(SOUND, (*ARM, "reach"), length("6 ft"))
    assert strength(replace(far, confirmations=())).verdict is Verdict.FAIL


def test_without_its_yield_strength_nothing_is_known() -> None:
    found = strength(by(replace(W6X12, yield_strength=None), SOUND))
    assert found.verdict is Verdict.MISSING
    assert ("need.input", "yield_strength") in needs(found)


@pytest.mark.parametrize(
    ("section", "lacks"),
    [
        (replace(SIZES, form=None), {"section_form"}),
        (replace(SIZES, material=None), {"section_material"}),
        (replace(SIZES, material=None, form=None), {"section_form", "section_material"}),
    ],
)
def test_sizes_alone_do_not_say_what_a_beam_is(section: BeamSection, lacks: set[str]) -> None:
    """Those of a channel are those of an I, and those of aluminium those of steel."""
    for check in ("beam-strength", "beam-web", "beam-sideways"):
        given = answers(by(section, SOUND), check)
        found = next(one for one in given if isinstance(one, Finding))
        assert (found.verdict, found.message.id) == (Verdict.MISSING, "section-unsaid.missing")
        assert {what for _, what in needs(found)} == lacks


def test_plates_too_thin_for_the_equations_are_refused() -> None:
    tube = BeamSection(
        material=Metal.STEEL,
        section_depth=on_label(length("8 in")),
        flange_width=on_label(length("8 in")),
        wall=on_label(length("0.06 in")),
        yield_strength=FIFTY,
    )
    assert strength(by(tube, SOUND)).message.id == "outside.thin_plates"


def test_a_shape_is_known_again_by_what_is_measured_of_it() -> None:
    """W6x9 has flanges of 0.215 in: whoever names it W6x12 is told so."""
    other = replace(W6X12, flange_thickness=on_label(length("0.215 in")))
    assert strength(by(other, SOUND)).message.id == "outside.other_shape"
    doubtful = on_label(length("0.27 in", tolerance="0.05 in"))
    assert strength(by(replace(W6X12, flange_thickness=doubtful), SOUND)).verdict is Verdict.FAIL
    for unknown in ("flange_thickness", "section_depth", "flange_width", "web_thickness"):
        found = strength(by(replace(W6X12, **{unknown: None}), SOUND))
        assert found.verdict is Verdict.MISSING
        assert ("need.input", unknown) in needs(found)


def test_sizes_that_somebody_told_of_are_not_good_enough() -> None:
    told = replace(length("0.28 in"), evidence=Evidence.TOLD)
    found = strength(by(replace(W6X12, flange_thickness=told), SOUND))
    assert found.verdict is Verdict.MISSING


@pytest.mark.parametrize(
    ("project", "message"),
    [
        (put(SOUND, (*ARM, "joined"), seen(Joined.SECTIONS)), "beam-spliced.refer"),
        (put(SOUND, (*ARM, "splices"), (BeamSplice("J1"),)), "beam-spliced.refer"),
        (replace(SOUND, basis=replace(SOUND.basis, beam=())), "beam-silent.refer"),
        (replace(SOUND, basis=replace(SOUND.basis, beam=TEXTS[:2])), "beam-silent.refer"),
    ],
)
def test_what_only_an_engineer_can_reckon(project: Project, message: str) -> None:
    found = strength(project)
    assert (found.verdict, found.message.id) == (Verdict.REFER, message)
    assert found.not_judged


def test_a_channel_that_would_hold_is_an_engineers_for_its_twist() -> None:
    """4 x 1,000 lb over 2 ft and the beam itself, 8,034.7 lb ft, as of an I; it takes less."""
    found = strength(by(CHANNEL, SOUND))
    assert (found.verdict, found.message.id) == (Verdict.REFER, "beam-twists.refer")
    assert found.not_judged
    assert [one.who for one in found.needs] == [Decider.LICENSED_ENGINEER]
    assert lb_ft(found.demand) == pytest.approx(8034.7, rel=1e-4)
    # F_y Z_x = 50 ksi x 5.16 in3 = 21.5 kip ft at most; at 10 ft it turns over before.
    assert 8_100 < lb_ft(found.capacity) < 12_000
    assert not strength(replace(by(CHANNEL, SOUND), confirmations=())).not_judged


def test_nothing_that_is_stated_lets_a_single_channel_pass() -> None:
    """Held sideways at short intervals, restrained against moving, a small load: still refer."""
    held = put(by(CHANNEL, SOUND), (*ARM, "unbraced_length"), length("2 ft 6 in"))
    calm = put(held, (*ARM, "found", "restrained"), seen(Restraint.RESTRAINED))
    near = put(calm, (*ARM, "reach"), length("6 in"))
    assert strength(near).verdict is Verdict.REFER


def test_a_channel_that_does_not_hold_fails_and_one_not_known_is_missing() -> None:
    far = put(by(CHANNEL, SOUND), (*ARM, "reach"), length("5 ft"))
    assert strength(far).message.id == "beam-four-times.fail"
    unknown = strength(by(replace(CHANNEL, yield_strength=None), SOUND))
    assert unknown.verdict is Verdict.MISSING
    other = replace(CHANNEL, flange_thickness=on_label(length("0.28 in")))
    assert strength(by(other, SOUND)).message.id == "outside.other_shape"


def test_sizes_are_a_channel_s_only_where_its_form_says_so() -> None:
    """The same plates are an I that passes where nobody says more."""
    narrow = replace(SIZES, flange_width=on_label(length("2 in")))
    near = put(SOUND, (*ARM, "reach"), length("1 ft"))
    assert strength(by(replace(narrow, form=SectionForm.CHANNEL), near)).verdict is Verdict.REFER
    assert strength(by(narrow, near)).verdict is Verdict.PASS
    named = strength(by(replace(SIZES, form=SectionForm.I_SHAPE), SOUND))
    assert named.capacity == strength(by(SIZES, SOUND)).capacity
    missing = strength(by(replace(SIZES, form=SectionForm.TUBE), SOUND))
    assert ("need.input", "wall") in needs(missing)


def test_a_channel_s_flange_that_is_not_compact_is_refused() -> None:
    """All of its width counts: 4 in over 0.28 in is 14.3, more than 0.38 root(E / F_y) = 9.15."""
    found = strength(by(replace(SIZES, form=SectionForm.CHANNEL), SOUND))
    assert found.message.id == "outside.thin_plates"


@pytest.mark.parametrize("form", [SectionForm.I_SHAPE, SectionForm.CHANNEL])
@pytest.mark.parametrize(
    ("size", "far", "message"),
    [
        ("flange_width", "0.2 in", "outside.no_flange"),
        ("flange_width", "0.05 in", "outside.no_flange"),
        ("flange_thickness", "3.1 in", "outside.no_web"),
        ("flange_thickness", "7 in", "outside.no_web"),
    ],
)
def test_sizes_of_no_section_are_refused(
    form: SectionForm, size: str, far: str, message: str
) -> None:
    plain = by(replace(SIZES, form=form), SOUND)
    found = strength(put(plain, (*BEAM, "section", size), on_label(length(far))))
    assert (found.verdict, found.message.id) == (Verdict.FAIL, message)


def test_a_form_is_of_the_configuration_only_where_it_is_stated() -> None:
    bare, named = (by(replace(SIZES, form=form), SOUND) for form in (None, SectionForm.CHANNEL))
    codes = [configuration_code(one, one.drops[0]) for one in (bare, named)]
    assert codes[0] != codes[1]
    told = [json.dumps(configuration(one, one.drops[0])) for one in (bare, named)]
    assert ['"form"' in one for one in told] == [False, True]


def test_the_label_goes_first() -> None:
    rated = put(SOUND, (*BEAM, "label"), BeamLabel(most_load=FIFTY))
    assert all(isinstance(one, DoesNotApply) for one in answers(rated))
    assert all(isinstance(one, DoesNotApply) for one in answers(by(None)))


def test_a_plain_beam_has_no_label_to_lose() -> None:
    reasons = {
        one.reason.id for one in answers(SOUND, "beam-label") if isinstance(one, DoesNotApply)
    }
    assert "na.by-its-section" in reasons
    lost = put(SOUND, BEAM_UNIT_LABEL, seen(LabelState.UNREADABLE))
    states = [one.verdict for one in answers(lost, "beam-label") if isinstance(one, Finding)]
    assert Verdict.FAIL in states


def test_a_label_that_is_gone_rates_nothing_and_is_not_passed_over() -> None:
    """Numbers of a label that the beam does not carry: refused, whatever its section would take."""
    gone = put(SOUND, (*BEAM, "label"), BeamLabel(most_load=FIFTY))
    states = [one.verdict for one in answers(gone, "beam-label") if isinstance(one, Finding)]
    assert Verdict.FAIL in states


def test_more_load_reach_or_length_never_helps() -> None:
    """The law of this check: each of these by itself only takes a pass away."""
    order = [Verdict.PASS, Verdict.FAIL]
    for field in ("reach", "unbraced_length"):
        found = [
            strength(put(SOUND, (*ARM, field), length(f"{feet} ft"))).verdict
            for feet in (2, 4, 5, 6, 9, 14, 30, 60)
        ]
        assert [order.index(one) for one in found] == sorted(order.index(one) for one in found)
        if field == "reach":
            assert set(found) == set(order)
