"""The demo building shows what is asked of beams in all four answers, on drops that had them."""

from __future__ import annotations

import datetime
from dataclasses import replace

import pytest

from backspan.core.findings import Finding, Verdict
from backspan.core.model.project import Project
from backspan.core.review import review
from backspan.exchange.files import load
from tests.architecture.source import ROOT
from tests.unit.core.rigs import LIBRARY, put

DEMO = load(ROOT / "examples" / "demo" / "site.yaml", LIBRARY)
ON = datetime.date(2026, 11, 25)
STORY = {
    "S1": (Verdict.PASS, {}),
    "S2": (Verdict.REFER, {"no-rating": Verdict.REFER}),
    "S3": (Verdict.REFER, {"splice-reach": Verdict.REFER}),
    "N2": (Verdict.MISSING, {"label-load": Verdict.MISSING}),
    "W1": (Verdict.FAIL, {"splice-clear": Verdict.FAIL}),
}


def of_beams(found: tuple[Finding, ...]) -> dict[str | None, Verdict]:
    """The answers of the checks of beams that do not pass, by their question."""
    checks = {"beam-label", "beam-seen", "splice-clear"}
    return {
        one.question: one.verdict
        for one in found
        if one.check in checks and one.verdict is not Verdict.PASS
    }


@pytest.mark.parametrize("drop", STORY)
def test_a_drop_tells_its_part_of_the_story_of_beams(drop: str) -> None:
    found = review(DEMO, drop, LIBRARY, on=ON, compared=False)
    assert (found.verdict, of_beams(found.findings)) == STORY[drop]


#: What the three checks of a plain section say of each beam that has one, in their order here.
PLAIN = ("beam-strength", "beam-web", "beam-sideways")
SECTIONS = {
    "T1/L": (Verdict.PASS, Verdict.PASS, Verdict.PASS),
    "N2/R": (Verdict.MISSING, Verdict.MISSING, Verdict.MISSING),
    "S5/L": (Verdict.REFER, Verdict.REFER, Verdict.REFER),
    "S5/R": (Verdict.REFER, Verdict.REFER, Verdict.REFER),
    "W2/L": (Verdict.FAIL, Verdict.PASS, Verdict.REFER),
}


def by_section(project: Project, subject: str) -> tuple[Verdict, ...]:
    """The answers of a beam that is reckoned by its section."""
    found = review(project, subject.partition("/")[0], LIBRARY, on=ON, compared=False)
    told = {one.check: one for one in found.findings if one.subject == subject}
    return tuple(told[check].verdict for check in PLAIN)


@pytest.mark.parametrize("subject", SECTIONS)
def test_a_beam_without_a_label_is_reckoned_by_its_section(subject: str) -> None:
    assert by_section(DEMO, subject) == SECTIONS[subject]


def test_every_other_beam_of_the_demo_is_rated_or_a_kit() -> None:
    kinds = {one.id: one for one in DEMO.kit.beams}
    bare = {one.id for one in kinds.values() if one.section is not None}
    hung = {
        f"{drop.id}/{point.id}"
        for drop in DEMO.drops
        if drop.rig is not None
        for point in drop.rig.suspension_points
        if point.counterweighted_beam is not None
        and next(one.of for one in DEMO.kit.units if one.id == point.counterweighted_beam.beam)
        in bare
    }
    assert hung == set(SECTIONS)


def test_the_plain_beam_of_t1_turns_over_where_nobody_says_how_it_is_held() -> None:
    at = next(index for index, one in enumerate(DEMO.drops) if one.id == "T1")
    beam = ("drops", at, "rig", "suspension_points", 0, "counterweighted_beam")
    loose = put(DEMO, (*beam, "unbraced_length"), None)
    assert by_section(loose, "T1/L")[0] is Verdict.FAIL


def test_the_plain_beam_of_t1_is_for_the_office_where_a_value_is_not_confirmed() -> None:
    kept = tuple(one for one in DEMO.confirmations if one.value != "beam.safety-bending")
    assert by_section(replace(DEMO, confirmations=kept), "T1/L") == (
        Verdict.REFER,
        Verdict.PASS,
        Verdict.PASS,
    )
