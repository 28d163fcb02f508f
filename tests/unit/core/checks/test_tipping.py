"""Tipping of a rig with 4 x 1,000 lb x 2 ft against 16 x 55 lb x 10 ft; 1.5 x 2,500 lb is less."""

from __future__ import annotations

from dataclasses import replace

import pytest

from backspan.core.findings import Finding, Verdict
from backspan.core.model.basis import ReadingChoice
from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.model.project import Project
from backspan.core.model.rigs import OtherSupport, OtherSupportKind, PieceGroup, Tieback
from backspan.core.quantities import FORCE, MOMENT, parse
from tests.unit.core.rigs import (
    ARM,
    BEAM,
    EN,
    HOIST,
    LEFT,
    OSHA,
    PIECE,
    PROJECT,
    QUEBEC,
    RIG,
    STACK,
    confirmed,
    count,
    finding,
    findings,
    force,
    length,
    margin,
    mass,
    needs,
    notes,
    on_basis,
    put,
    reasons,
    without_stall,
)

GROUPS = (*STACK, "groups")
CREDITED = replace(EN, readings=(ReadingChoice("tipping.working-load-limit", "beam credited"),))


def tipping(project: Project, subject: str = "D/L") -> Finding:
    return finding(project, "tipping", subject)


def pieces(project: Project, number: int) -> Project:
    return put(project, (*GROUPS, "LOT", "count"), count(number))


def test_it_holds_and_shows_both_moments() -> None:
    found = tipping(PROJECT)
    assert found.verdict is Verdict.PASS
    assert found.message.id == "tipping.holds"
    assert found.demand is not None
    assert found.capacity is not None
    assert found.demand.value == pytest.approx(parse("8000 lb ft", MOMENT), rel=1e-12)
    assert found.capacity.value == pytest.approx(parse("8800 lb ft", MOMENT), rel=1e-12)
    assert found.utilisation == pytest.approx(8000 / 8800)
    assert found.governing == "tipping.rated-load"
    assert [value.key for value in found.rules] == ["tipping.rated-load", "tipping.stall-load"]
    assert found.needs == ()


def test_each_beam_has_a_finding_of_its_own() -> None:
    assert tipping(pieces(PROJECT, 14)).verdict is Verdict.FAIL
    assert tipping(pieces(PROJECT, 14), "D/R").verdict is Verdict.PASS


def test_one_piece_fewer_than_needed_fails() -> None:
    assert tipping(pieces(PROJECT, 15)).verdict is Verdict.PASS
    short = tipping(pieces(PROJECT, 14))
    assert short.verdict is Verdict.FAIL
    assert short.message.id == "tipping.does-not-hold"
    assert margin(short, "pieces-spare") == -1


def test_the_stall_branch_governs_above_eight_thirds_of_the_rated_load() -> None:
    at_limit = put(PROJECT, (*HOIST, "stall_load"), force("2666 lb"))
    above = put(PROJECT, (*HOIST, "stall_load"), force("2667 lb"))
    assert tipping(at_limit).governing == "tipping.rated-load"
    assert tipping(above).governing == "tipping.stall-load"


def test_without_a_backspan_it_is_missing_and_asks_for_it() -> None:
    found = tipping(put(PROJECT, (*ARM, "backspan"), None))
    assert found.verdict is Verdict.MISSING
    assert found.message.id == "tipping.not-known"
    assert needs(found) == (("need.input", "backspan"),)
    assert found.demand is None
    assert found.margins == ()
    assert notes(found) == {"note.tieback-no-credit"}


def test_without_a_reach_it_is_missing() -> None:
    found = tipping(put(PROJECT, (*ARM, "reach"), None))
    assert found.verdict is Verdict.MISSING
    assert needs(found) == (("need.input", "reach"),)


def test_an_unknown_stall_load_leaves_its_branch_open() -> None:
    found = tipping(without_stall(PROJECT))
    assert found.verdict is Verdict.MISSING
    assert found.message.id == "tipping.branch-not-known"
    assert needs(found) == (("need.input", "stall_load"),)
    assert "note.stall-not-known" in notes(found)
    assert found.utilisation == pytest.approx(8000 / 8800)


def test_a_known_branch_that_does_not_hold_fails_whatever_else_is_open() -> None:
    found = tipping(pieces(without_stall(PROJECT), 14))
    assert found.verdict is Verdict.FAIL
    assert needs(found) == (("need.input", "stall_load"),)


@pytest.mark.parametrize("groups", [(), (PieceGroup("P", count(0)),)])
def test_no_pieces_fail(groups: tuple[PieceGroup, ...]) -> None:
    found = tipping(put(PROJECT, GROUPS, groups))
    assert found.verdict is Verdict.FAIL
    assert found.message.id == "tipping.no-pieces"
    assert found.utilisation is None


def test_weak_evidence_is_missing_and_says_what_would_do() -> None:
    told = StatedValue(parse_ft(10), evidence=Evidence.TOLD)
    found = tipping(put(PROJECT, (*ARM, "backspan"), told))
    assert found.verdict is Verdict.MISSING
    assert needs(found) == (("need.evidence", "backspan"),)
    assert found.message.id == "tipping.would-hold"


def test_a_value_without_evidence_is_missing() -> None:
    found = tipping(put(PROJECT, (*ARM, "backspan"), StatedValue(parse_ft(10))))
    assert found.verdict is Verdict.MISSING


def test_a_rig_that_does_not_hold_fails_on_weak_evidence_too() -> None:
    told = StatedValue(parse_ft(5), evidence=Evidence.TOLD)
    assert tipping(put(PROJECT, (*ARM, "backspan"), told)).verdict is Verdict.FAIL


def parse_ft(feet: int) -> float:
    return feet * 0.3048


def test_a_pass_on_a_remembered_value_is_referred_until_it_is_confirmed() -> None:
    remembered = on_basis(PROJECT, EN)
    found = tipping(remembered)
    assert found.verdict is Verdict.REFER
    assert needs(found) == (("need.confirmation", "tipping.working-load-limit"),)
    seen = confirmed(remembered, EN, "tipping.working-load-limit")
    assert tipping(seen).verdict is Verdict.PASS


def test_a_remembered_value_still_fails_what_does_not_hold() -> None:
    assert tipping(pieces(on_basis(PROJECT, EN), 3)).verdict is Verdict.FAIL


def test_a_confirmation_of_another_edition_or_value_counts_for_nothing() -> None:
    remembered = on_basis(PROJECT, EN)
    other_edition = confirmed(remembered, replace(EN, edition="2024"), "tipping.working-load-limit")
    other_value = confirmed(remembered, EN, "tipping.something-else")
    assert tipping(other_edition).verdict is Verdict.REFER
    assert tipping(other_value).verdict is Verdict.REFER


def test_a_text_without_a_number_is_for_a_licensed_engineer() -> None:
    found = tipping(on_basis(PROJECT, QUEBEC))
    assert found.verdict is Verdict.REFER
    assert found.message.id == "tipping.no-number"
    assert [need.who for need in found.needs] == ["licensed engineer"]
    assert [value.key for value in found.rules] == ["tipping.no-factor"]


def test_each_rule_set_of_the_basis_has_its_own_finding() -> None:
    both = findings(on_basis(PROJECT, OSHA, EN), "tipping")
    assert [one.rules[0].rule_set for one in both] == [OSHA.rule_set, EN.rule_set]


def test_an_answer_that_changes_within_the_tolerance_says_so() -> None:
    tape = length("2 ft 2 3/8 in", tolerance="1/16 in")
    found = tipping(put(PROJECT, (*ARM, "reach"), tape))
    assert found.verdict is Verdict.FAIL
    assert "note.within-tolerance" in notes(found)
    plenty = tipping(put(PROJECT, (*ARM, "reach"), length("2 ft", tolerance="1/16 in")))
    assert plenty.verdict is Verdict.PASS
    assert "note.within-tolerance" not in notes(plenty)


def test_the_inputs_show_what_was_stated_and_what_was_used() -> None:
    found = tipping(put(PROJECT, (*ARM, "reach"), length("2 ft", tolerance="1 in")))
    reach = next(one for one in found.inputs if one.name == "reach")
    assert reach.place == (*ARM, "reach")
    assert reach.evidence is Evidence.MEASURED
    assert reach.by == "MT"
    assert getattr(reach.stated, "value", None) == pytest.approx(24 * 0.0254)
    assert getattr(reach.used, "value", None) == pytest.approx(25 * 0.0254)


def test_helpful_beam_weight_is_left_out() -> None:
    found = tipping(PROJECT)
    assert "note.beam-weight-left-out" in notes(found)
    assert "beam_mass" not in {one.name for one in found.inputs}


#: 9 ft outboard of a beam of 18 ft with a backspan of 8 ft: its middle lies outboard.
OUTBOARD = put(put(PROJECT, (*ARM, "reach"), length("9 ft")), (*ARM, "backspan"), length("8 ft"))


def test_harmful_beam_weight_is_counted() -> None:
    found = tipping(pieces(OUTBOARD, 90))
    # 200 lb x (18/2 - 0.5 - 9) ft = -100 lb ft beside 90 x 55 lb x 8 ft.
    assert found.capacity is not None
    assert found.capacity.value == pytest.approx(parse("39500 lb ft", MOMENT), rel=1e-12)
    assert "note.beam-weight-harms" in notes(found)


def test_harmful_beam_weight_has_to_be_known() -> None:
    found = tipping(put(pieces(OUTBOARD, 90), (*BEAM, "mass"), None))
    assert found.verdict is Verdict.MISSING
    assert needs(found) == (("need.input", "beam_mass"),)


def test_a_text_that_credits_the_beam_counts_it() -> None:
    plain = tipping(confirmed(on_basis(PROJECT, EN), EN, "tipping.working-load-limit"))
    found = tipping(confirmed(on_basis(PROJECT, CREDITED), EN, "tipping.working-load-limit"))
    assert plain.capacity is not None
    assert found.capacity is not None
    # 200 lb x (18/2 - 0.5 - 2) ft = 1,300 lb ft more.
    gained = found.capacity.value - plain.capacity.value
    assert gained == pytest.approx(parse("1300 lb ft", MOMENT), rel=1e-9)
    assert "note.beam-weight-credited" in notes(found)


def test_a_credit_that_is_not_known_leaves_it_open() -> None:
    credit = confirmed(on_basis(PROJECT, CREDITED), EN, "tipping.working-load-limit")
    found = tipping(put(credit, (*BEAM, "mass"), None))
    assert found.verdict is Verdict.MISSING


def test_a_tieback_gets_no_credit() -> None:
    tied = put(PROJECT, (*LEFT, "tiebacks"), (Tieback("T", "A1"),))
    found = tipping(pieces(tied, 14))
    assert found.verdict is Verdict.FAIL
    assert "note.tieback-no-credit" in notes(found)


def test_the_steps_begin_with_the_governing_branch_and_hold_each_step_once() -> None:
    steps = tipping(PROJECT).steps
    required = [step for step in steps if step.formula == "required_moment"]
    assert [dict(step.arguments)["load"] for step in required] == [
        pytest.approx(parse("1000 lb", FORCE)),
        pytest.approx(parse("2500 lb", FORCE)),
    ]
    assert len(set(steps)) == len(steps)
    assert {step.formula for step in steps} >= {"resisting_moment", "factor_reached", "utilisation"}


def test_where_there_is_no_counterweight_it_does_not_apply() -> None:
    clamp = OtherSupport(OtherSupportKind.PARAPET_CLAMP)
    clamped = put(put(PROJECT, ARM, None), (*LEFT, "other_support"), clamp)
    assert reasons(clamped, "tipping") == (("D/L", "na.no-counterweight"),)
    assert reasons(put(PROJECT, RIG, None), "tipping") == (("D", "na.no-suspension-point"),)


def test_lighter_pieces_hold_less() -> None:
    assert tipping(put(PROJECT, (*PIECE, "mass"), mass("49 lb"))).verdict is Verdict.FAIL
