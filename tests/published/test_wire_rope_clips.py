"""Published numbers of wire rope clips and of what a rope keeps where they hold it.

Sources. WorkSafeNB, "Wire Rope (Cable) Clips", worksafenb.ca/docs/15-wire-rope-cable-clips.html:
clips, turnback and torque by diameter. California Code of Regulations, Title 8, section 8497,
table 1 with its note: with more clips the turnback grows in proportion. US Army TM 5-3810-305-10,
at constructioncranes.tpub.com: correctly made clips keep 80 % of the catalogue strength. US Navy,
Steelworker training text, constructionmanuals.tpub.com/14026, figure 1-8: clips = 3 D + 1, D in
inches, rounded up. EN 13411-5 grips as sold at shop.usacord.ch: 8 mm 4 x 6 N m; forged clips as
told at sapsis-rigging.com/clipapp.html: 5/16 in 30 ft lb.
"""

from __future__ import annotations

import math

import pytest

from backspan.core.findings import Verdict
from backspan.core.mechanics.ropes import load_to_carry, strength_at_end, turnback_for_clips
from backspan.core.model.evidence import Evidence
from backspan.core.model.project import Project
from backspan.core.quantities import FORCE, LENGTH, MOMENT, parse
from backspan.core.rules.shape import Limit
from backspan.core.sheet.case import Place
from tests.unit.core import rigs
from tests.unit.core.rigs import HOIST, LIBRARY, OSHA, PROJECT, RIGHT, finding, findings, put

GRIPS: Place = ("kit", "terminations", "GRIPS")
SHEET: Place = (*GRIPS, "clips")
CLIPS: Place = (*RIGHT, "clips")

#: Diameter, clips and turnback of the sheet, clips used, turnback they then ask for, in inches.
TURNBACK = [("3/8 in", 2, 6.5, 3, 9.75), ("5/16 in", 2, 5.5, 3, 8.25)]


@pytest.mark.parametrize(("diameter", "sheet", "turnback", "used", "asked"), TURNBACK)
def test_the_turnback_grows_with_the_clips(
    diameter: str, sheet: int, turnback: float, used: int, asked: float
) -> None:
    grown = turnback_for_clips(
        sheet_turnback=parse(f"{turnback} in", LENGTH), clip_count=used, sheet_clip_count=sheet
    )
    assert grown.value == pytest.approx(parse(f"{asked} in", LENGTH), rel=1e-12)
    makers = (sheet, f"{turnback} in", "30 ft-lb")
    project = clipped(diameter, sheet=makers, found=(used, "30 ft-lb"))
    for text, verdict in ((f"{asked} in", Verdict.PASS), (f"{asked - 0.01} in", Verdict.FAIL)):
        at = put(project, (*CLIPS, "turnback"), rigs.length(text, tolerance="0 in"))
        assert clip(at, "clip-turnback") is verdict


#: Breaking force, most rated load with clips as the strength above gives.
STRENGTH = [("12,200 lb", 1626.7), ("8,520 lb", 1136.0)]


@pytest.mark.parametrize(("breaking", "most"), STRENGTH)
def test_the_largest_rated_load_on_clips(breaking: str, most: float) -> None:
    kept = strength_at_end(breaking_force=parse(breaking, FORCE), efficiency=0.8).value
    for load, holds in ((most - 0.1, True), (most + 0.1, False)):
        asked = load_to_carry(factor=6.0, load=parse(f"{load:.4f} lb", FORCE)).value
        assert (kept >= asked) is holds
        project = put(PROJECT, ("kit", "ropes", "W", "breaking_force"), certified(breaking))
        project = put(project, (*HOIST, "rated_load"), rigs.force(f"{load:.4f} lb"))
        verdict = finding(project, "rope-strength", "D/R").verdict
        assert verdict is (Verdict.PASS if holds else Verdict.FAIL)


@pytest.mark.parametrize(("rated", "verdict"), [("1,500 lb", "fail"), ("1,000 lb", "pass")])
def test_two_hoists_on_the_thinner_rope(rated: str, verdict: str) -> None:
    project = put(PROJECT, ("kit", "ropes", "W", "breaking_force"), certified("8,520 lb"))
    project = put(project, (*HOIST, "rated_load"), rigs.force(rated))
    assert finding(project, "rope-strength", "D/R").verdict == verdict


#: Diameter in inches, clips by the rule of thumb as printed or as it gives.
THUMB = [(1.0, 4), (0.5, 3), (5 / 16, 2), (3 / 8, 3)]


@pytest.mark.parametrize(("diameter", "clips"), THUMB)
def test_the_rule_of_thumb_never_goes_below_the_floor_of_a_scaffold(
    diameter: float, clips: int
) -> None:
    assert math.ceil(3 * diameter + 1) == clips
    assert max(clips, least_clips()) == max(clips, 3)


def least_clips() -> float:
    """The floor of 29 CFR 1926.451(d)(12)(i)."""
    (rules,) = (one for one in LIBRARY.rule_sets if one.id == OSHA.rule_set)
    value = rules.value("line.least-clips")
    assert value is not None
    content = value.readings[0].content
    assert isinstance(content, Limit)
    return content.amount.value


def test_two_clips_by_the_rule_of_thumb_do_not_pass_on_a_scaffold() -> None:
    project = clipped("5/16 in", sheet=(2, "5 1/2 in", "30 ft-lb"), found=(2, "30 ft-lb"))
    assert clip(project, "clip-count") is Verdict.FAIL


#: What the maker asks for, what was put on, and whether that holds.
MIXED = [
    ("6 N m", "30 ft-lb", Verdict.FAIL),
    ("30 ft-lb", "6 N m", Verdict.FAIL),
    ("6 N m", "6 N m", Verdict.PASS),
    ("30 ft-lb", "30 ft-lb", Verdict.PASS),
]


@pytest.mark.parametrize(("makers", "torque", "verdict"), MIXED)
def test_the_torque_of_one_maker_on_the_clips_of_another(
    makers: str, torque: str, verdict: Verdict
) -> None:
    project = clipped("8 mm", sheet=(4, "5 1/2 in", makers), found=(4, torque))
    assert clip(project, "clip-torque") is verdict


def test_how_much_too_much_it_is() -> None:
    assert parse("30 ft-lb", MOMENT) == pytest.approx(40.67, abs=0.005)
    assert parse("30 ft-lb", MOMENT) / parse("6 N m", MOMENT) == pytest.approx(6.8, abs=0.03)


def certified(text: str) -> object:
    """A breaking force from a certificate."""
    return rigs.stated(text, FORCE, Evidence.CERTIFICATE)


def clipped(diameter: str, *, sheet: tuple[int, str, str], found: tuple[int, str]) -> Project:
    """The rig whose right rope ends in such clips: count, turnback and torque of their sheet."""
    count, turnback, torque = sheet
    project = PROJECT
    for place, value in (
        (("kit", "ropes", "W", "diameter", "value"), parse(diameter, LENGTH)),
        ((*GRIPS, "rope_diameter", "value"), parse(diameter, LENGTH)),
        ((*SHEET, "count", "value"), count),
        ((*SHEET, "turnback", "value"), parse(turnback, LENGTH)),
        ((*SHEET, "torque", "value"), parse(torque, MOMENT)),
        ((*CLIPS, "count"), rigs.count(found[0])),
        ((*CLIPS, "torque"), rigs.stated(found[1], MOMENT)),
    ):
        project = put(project, place, value)
    return project


def clip(project: Project, question: str) -> Verdict:
    """What is said of one number of the clips."""
    (only,) = (one for one in findings(project, "clips", "D/R") if one.question == question)
    return only.verdict
