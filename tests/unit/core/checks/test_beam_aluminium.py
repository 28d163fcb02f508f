"""A beam of aluminium by the strength of its alloy; numbers by hand beside each test."""

from __future__ import annotations

import json
from dataclasses import replace
from typing import Any

import pytest

from backspan.core.findings import Decider, DoesNotApply, Finding, Verdict
from backspan.core.model.basis import Confirmation, RuleChoice
from backspan.core.model.beams import BeamSection, Joined, Metal, Weld
from backspan.core.model.project import Project
from backspan.core.rules.shape import SectionForm
from backspan.core.wire.code import configuration
from tests.unit.core.checks.test_beam_strength import (
    SIZES,
    SOUND,
    TEXTS,
    answers,
    by,
    lb_ft,
    on_label,
)
from tests.unit.core.checks.test_beam_web import TUBE, of_steel
from tests.unit.core.rigs import ARM, BEAM, labelled, length, needs, put, seen

ID = "beam-aluminium"
MANUAL = RuleChoice("us-aluminum-design-manual", "2015")
NAMES = (
    *("safety-aluminium-yielding", "safety-aluminium-rupture"),
    *(f"{way}-6061-t6{weld}" for way in ("yield", "rupture") for weld in ("", "-weld")),
)
CONFIRMED = tuple(
    Confirmation(MANUAL.rule_set, "2015", f"beam.{key}", "MT", "2026-11-20", "office copy")
    for key in NAMES
)
#: S_x of the plates: (4 x 6.03^3 - 3.77 x 5.47^3) / (6 x 6.03) = 7.187 in3.
ALLOY = replace(SIZES, yield_strength=None, material=Metal.ALLOY_6061, weld=Weld.NONE)
WELDED = replace(ALLOY, weld=Weld.WELDED)


def of(section: BeamSection, project: Project = SOUND) -> Project:
    plain = by(section, project)
    basis = replace(plain.basis, beam=(*TEXTS, MANUAL))
    return replace(plain, basis=basis, confirmations=(*plain.confirmations, *CONFIRMED))


def alloy(project: Project) -> Finding:
    found = next(one for one in answers(project, ID) if one.subject.endswith("/L"))
    assert isinstance(found, Finding), found
    return found


def test_one_that_would_hold_is_an_engineers() -> None:
    """4 x 1,000 lb over 2 ft and its own: 8,034.7 of 35 ksi x 7.187 in3 = 20,962 lb ft."""
    found = alloy(of(ALLOY))
    assert (found.verdict, found.message.id) == (Verdict.REFER, "aluminium-holds.refer")
    assert found.not_judged
    assert [one.who for one in found.needs] == [Decider.LICENSED_ENGINEER]
    assert lb_ft(found.demand) == pytest.approx(8034.7, rel=1e-4)
    assert lb_ft(found.capacity) == pytest.approx(20_962, rel=1e-3)


def test_beside_a_weld_it_has_less_than_half() -> None:
    """15 ksi x 7.187 in3 = 8,984 lb ft; what nobody spoke of counts as welded."""
    assert lb_ft(alloy(of(WELDED)).capacity) == pytest.approx(8_984, rel=1e-3)
    silent = alloy(of(replace(ALLOY, weld=None)))
    assert silent.capacity == alloy(of(WELDED)).capacity
    assert {one.id for one in silent.notes} == {"note.maybe-welded"}
    assert not alloy(of(WELDED)).notes


@pytest.mark.parametrize(("weld", "verdict"), [(Weld.NONE, Verdict.REFER), (None, Verdict.FAIL)])
def test_a_weld_nobody_denied_refuses_a_longer_reach(weld: Any, verdict: Verdict) -> None:
    """3 ft: 12,068 lb ft, between 8,984 with a weld and 20,962 without."""
    far = put(of(replace(ALLOY, weld=weld)), (*ARM, "reach"), length("3 ft"))
    found = alloy(far)
    assert found.verdict is verdict
    if verdict is Verdict.FAIL:
        assert found.message.id == "beam-four-times.fail"


def test_in_service_both_factors_are_asked() -> None:
    """35 ksi / 1.65 = 21.2 ksi and 38 ksi / 1.95 = 19.5 ksi: the second governs."""
    only = replace(of(ALLOY), basis=replace(of(ALLOY).basis, beam=(MANUAL,)))
    found = alloy(only)
    assert lb_ft(found.capacity) == pytest.approx(38 / 1.95 * 7.187 / 12 * 1000, rel=1e-3)
    weak = put(only, (*ARM, "reach"), length("14 ft"))
    assert alloy(weak).message.id == "beam-service.fail"


def test_a_softer_alloy_that_is_stated_counts() -> None:
    soft = of_steel("10 ksi", replace(SIZES, material=Metal.ALLOY_6061, weld=Weld.NONE))
    assert lb_ft(alloy(of(soft)).capacity) == pytest.approx(10 * 7.187 / 12 * 1000, rel=1e-3)
    hard = of_steel("60 ksi", replace(SIZES, material=Metal.ALLOY_6061, weld=Weld.NONE))
    assert alloy(of(hard)).capacity == alloy(of(ALLOY)).capacity


def test_the_other_alloy_has_less() -> None:
    other = alloy(of(replace(ALLOY, material=Metal.ALLOY_6063)))
    assert lb_ft(other.capacity) == pytest.approx(25 * 7.187 / 12 * 1000, rel=1e-3)
    # Its values nobody confirmed: the office as well as the engineer, and no take-over until then.
    assert not other.not_judged
    assert {one.who for one in other.needs} == {Decider.LICENSED_ENGINEER, Decider.OFFICE}


@pytest.mark.parametrize("form", SectionForm)
def test_no_form_of_it_passes(form: SectionForm) -> None:
    """A load of next to nothing on sizes of every form, and each of the checks."""
    hollow = form in {SectionForm.TUBE, SectionForm.PIPE}
    sizes = replace(TUBE, yield_strength=None) if hollow else SIZES
    section = replace(sizes, form=form, material=Metal.ALLOY_6061, weld=Weld.NONE)
    near = put(of(section), (*ARM, "reach"), length("1 in"))
    for check in (ID, "beam-strength", "beam-web"):
        found = [one for one in answers(near, check) if isinstance(one, Finding)]
        assert {one.verdict for one in found if one.subject.endswith("/L")} == {Verdict.REFER}


def test_strength_and_web_as_of_steel_are_not_asked_of_it() -> None:
    for check in ("beam-strength", "beam-web"):
        found = next(one for one in answers(of(ALLOY), check) if one.subject.endswith("/L"))
        assert isinstance(found, Finding)
        assert (found.message.id, found.not_judged) == ("beam-aluminium.refer", True)


def test_what_lacks_is_named_and_what_is_known_to_fail_fails() -> None:
    found = alloy(of(replace(ALLOY, web_thickness=None)))
    assert found.verdict is Verdict.MISSING
    assert ("need.input", "web_thickness") in needs(found)
    thin = replace(WELDED, flange_width=on_label(length("0.1 in")))
    assert alloy(of(thin)).message.id == "outside.no_flange"


@pytest.mark.parametrize(
    ("project", "reason"),
    [
        (SOUND, "na.no-aluminium"),
        (of(replace(ALLOY, material=Metal.STEEL)), "na.no-aluminium"),
        (put(of(ALLOY), (*BEAM, "label"), labelled()), "na.rated-by-label"),
        (put(of(ALLOY), (*ARM, "joined"), seen(Joined.SECTIONS)), "na.sections-joined"),
        (by(ALLOY, SOUND), "na.no-rule"),
    ],
)
def test_where_it_is_not_asked(project: Project, reason: str) -> None:
    found = next(one for one in answers(project, ID) if one.subject.endswith("/L"))
    assert isinstance(found, DoesNotApply)
    assert found.reason.id == reason


def test_without_its_text_the_beam_still_does_not_pass() -> None:
    found = next(one for one in answers(by(ALLOY, SOUND), "beam-strength"))
    assert isinstance(found, Finding)
    assert found.verdict is Verdict.REFER


def test_material_and_weld_are_of_the_configuration_only_where_stated() -> None:
    told = [
        json.dumps(configuration(one, one.drops[0]))
        for one in (by(SIZES, SOUND), of(ALLOY), of(WELDED))
    ]
    assert ['"material"' in one and '"weld"' in one for one in told] == [False, True, True]
    assert told[1] != told[2]


def test_more_reach_never_helps() -> None:
    order = [Verdict.REFER, Verdict.FAIL]
    found = [
        alloy(put(of(ALLOY), (*ARM, "reach"), length(f"{feet} ft"))).verdict
        for feet in (1, 2, 4, 6, 9, 14)
    ]
    assert [order.index(one) for one in found] == sorted(order.index(one) for one in found)
    assert set(found) == set(order)
