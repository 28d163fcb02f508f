"""Whether the web of a plain beam buckles sideways. W6x12 of 50 ksi; numbers by hand."""

from __future__ import annotations

from dataclasses import replace

import pytest

from backspan.core.findings import Decider, DoesNotApply, Finding, Verdict
from backspan.core.model.basis import Confirmation
from backspan.core.model.project import Project
from tests.unit.core.checks.test_beam_strength import CHANNEL, W6X12, answers, by
from tests.unit.core.checks.test_beam_web import ALL, TUBE, in_service, lb
from tests.unit.core.checks.test_beam_web import PLAIN as OTHERS
from tests.unit.core.rigs import ARM, BEAM, length, needs, put

ID = "beam-sideways"
CONFIRMED = (
    *ALL,
    *(
        Confirmation("us-aisc-360", "2016", f"beam.{key}", "MT", "2026-11-20", "invented")
        for key in ("safety-sideways", "sideways-ratio", "sideways-constant")
    ),
)
PLAIN = replace(OTHERS, confirmations=CONFIRMED)
HELD_AT = (*ARM, "unbraced_length")


def short(long: str, behind: str, project: Project = PLAIN) -> Project:
    """A short beam with its stack over its rear stand: nothing of it lies far from both."""
    for place in ((*ARM, "backspan"), (*ARM, "rear_stand")):
        project = put(project, place, length(behind, tolerance="0 in"))
    return put(project, (*BEAM, "length"), length(long, tolerance="0 in"))


SHORT = short("8 ft", "4 ft")


def held(text: str, project: Project = SHORT) -> Project:
    """Held sideways so far apart, to the last digit."""
    return put(project, HELD_AT, length(text, tolerance="0 in"))


NEAR_CHANNEL = held("2 ft", short("5 ft", "2 ft", replace(by(CHANNEL), confirmations=CONFIRMED)))


#: The web is 4.97 in high between its fillets.
SLENDER = 4.97 / 0.230


def takes(unbraced: float) -> float:
    """What it takes by J10-7 where it is held so many inches apart, lb."""
    share = SLENDER * 4.00 / unbraced
    return 480e6 * 0.230**3 * 0.280 / 4.97**2 * 0.4 * share**3


def sideways(project: Project) -> Finding:
    (found,) = (
        one
        for one in answers(project, ID)
        if isinstance(one, Finding) and one.subject.endswith("/L")
    )
    return found


def test_all_of_the_beam_is_unheld_where_nobody_stated_how() -> None:
    """18 ft: (21.6 / 54) = 0.4, which takes 1,696 lb."""
    found = sideways(put(PLAIN, HELD_AT, None))
    assert (found.verdict, found.message.id) == (Verdict.REFER, "sideways-four.refer")
    assert lb(found.capacity) == pytest.approx(1_696, rel=2e-2)
    assert lb(found.capacity) == pytest.approx(takes(216), rel=1e-6)
    assert found.not_judged
    assert [one for one, _ in needs(found)] == ["need.sideways"]
    assert [one.who for one in found.needs] == [Decider.LICENSED_ENGINEER]
    assert {one.id for one in found.notes} == {"note.whole-beam"}


@pytest.mark.parametrize("inches", [80, 100, 180])
def test_the_nearer_it_is_held_the_more_it_takes(inches: int) -> None:
    found = sideways(held(f"{inches} in"))
    assert lb(found.capacity) == pytest.approx(takes(inches), rel=1e-6)
    passes = lb(found.demand) <= takes(inches)
    assert found.verdict is (Verdict.PASS if passes else Verdict.REFER)
    assert found.message.id == f"sideways-four.{found.verdict}"


def test_both_answers_were_seen() -> None:
    seen = {sideways(held(f"{inches} in")).verdict for inches in (80, 180)}
    assert seen == {Verdict.PASS, Verdict.REFER}


@pytest.mark.parametrize(("inches", "says"), [("50 in", "held"), ("51 in", "four")])
def test_held_so_near_it_does_not_buckle_so(inches: str, says: str) -> None:
    """21.61 x 4.00 in / 1.7 = 50.8 in."""
    found = sideways(held(inches))
    assert (found.verdict, found.message.id) == (Verdict.PASS, f"sideways-{says}.pass")


def test_a_channel_held_so_near_is_told_without_a_force() -> None:
    """C6x8.2 held each 2 ft: its web stays upright, and its twist is an engineer's."""
    found = sideways(NEAR_CHANNEL)
    assert (found.verdict, found.message.id) == (Verdict.REFER, "web-twists-held.refer")


def test_in_service_it_is_allowed_less() -> None:
    found = sideways(in_service(held("100 in")))
    assert found.message.id == "sideways-service.pass"
    assert lb(found.capacity) == pytest.approx(takes(100) / 1.76, rel=1e-6)
    assert sideways(in_service(held("200 in"))).message.id == "sideways-service.refer"


def test_nothing_holds_it_between_its_fulcrum_and_its_stack() -> None:
    """Held each 80 in by word, 120 in by stack and stand: (21.6 / 30) = 0.72."""
    found = sideways(held("80 in", PLAIN))
    assert lb(found.capacity) == pytest.approx(takes(120), rel=2e-2)


def test_a_value_that_is_only_remembered_waits_for_an_office() -> None:
    short = replace(SHORT, confirmations=OTHERS.confirmations)
    found = sideways(held("80 in", short))
    assert found.verdict is Verdict.REFER
    assert found.message.id == "sideways-four.pass"


def test_not_known_is_missing() -> None:
    nothing = by(replace(W6X12, shape="W6x12", section_depth=None))
    assert sideways(replace(nothing, confirmations=CONFIRMED)).verdict is Verdict.MISSING
    unknown = put(held("80 in"), (*ARM, "rear_stand"), None)
    assert (sideways(unknown).verdict, sideways(unknown).message.id) == (
        Verdict.MISSING,
        "sideways.missing",
    )


def test_a_tube_has_no_such_web() -> None:
    given = answers(replace(by(TUBE), confirmations=CONFIRMED), ID)
    assert {one.reason.id for one in given if isinstance(one, DoesNotApply)} == {"na.no-open-web"}
