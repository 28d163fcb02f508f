"""Questions as they are heard on a roof, each answered by the program; the numbers are by hand.

The questions are common practice, no source; their arithmetic is statics and Ohm's law, and their
limits those of the rule values, which name their clauses.
"""

from __future__ import annotations

import datetime
from dataclasses import replace

import pytest

from backspan.core.findings import Finding, Verdict
from backspan.core.model.project import Project
from backspan.core.model.rigs import Lifeline
from backspan.core.model.stages import HungStage
from backspan.core.model.work import LoadKind, PlacedLoad, WorkStep
from backspan.core.review import review
from tests.unit.core.ask.asking import FOOT, POUND_FORCE, ask
from tests.unit.core.ask.asking import amount as told
from tests.unit.core.rigs import LIBRARY, PROJECT, RIG, STAGE, count, force, length, mass, put

ON = datetime.date(2026, 11, 25)
HOIST = "rated=1000lb stall=2000lb"
CORD = "volts=220V amps=10A hoists=2 phases=1 start-amps=40A gage=8AWG"


def finding(project: Project, check: str, begins: str = "") -> Finding:
    """The first finding of a check on the drop of the sample."""
    made = review(project, "D", LIBRARY, on=ON, compared=False)
    return next(
        one for one in made.findings if one.check == check and one.message.id.startswith(begins)
    )


def on_stage(*loads: PlacedLoad) -> Project:
    """20 ft between the ropes, 600 lb of stage and hoists, one step of the work."""
    project = put(PROJECT, (*STAGE, "stirrup_spacing"), length("20 ft", tolerance="0 in"))
    project = put(project, (*STAGE, "dead_mass"), mass("600 lb"))
    hung = HungStage("ST-1", ("L", "R"), work=(WorkStep("UP", loads),))
    return put(project, (*RIG, "stages"), (hung,))


def person(name: str, feet: float | None = None) -> PlacedLoad:
    """A person who stays where they are, or walks."""
    at = None if feet is None else feet * FOOT
    return PlacedLoad(name, LoadKind.PERSON, at=at, to=at)


def test_1_only_5_ft_of_backspan_how_many_plates() -> None:
    """4 x 1,000 lb x 18 in / 5 ft = 1,200 lb: 24 of 50 lb, and 23 do not hold."""
    asked = f"{HOIST} reach=18in backspan=5ft piece=50lb"
    assert ask("counterweight", asked, "pieces=24").verdict is Verdict.PASS
    assert ask("counterweight", asked, "pieces=23").verdict is Verdict.FAIL


def test_2_just_40_plates_how_far_out_on_both_beams() -> None:
    """20 on each: 20 x 50 lb x 10 ft / 4,000 lb = 2 ft 6 in."""
    asked = f"{HOIST} pieces=20 piece=50lb backspan=10ft"
    assert told(ask("reach", asked), "most-reach") == pytest.approx(2.5 * FOOT)


def test_3_the_fulcrum_goes_6_in_inwards_for_the_drain() -> None:
    """Reach 2 ft 6 in and backspan 9 ft 6 in ask for 1,053 lb; 24 in and 10 ft for 800 lb."""
    asked = f"{HOIST} piece=50lb pieces=20"
    assert ask("counterweight", asked, "reach=2ft backspan=10ft").verdict is Verdict.PASS
    moved = ask("counterweight", asked, "reach=2ft6in backspan=9ft6in")
    assert moved.verdict is Verdict.FAIL


def test_4_two_windows_up_the_old_and_the_new_one_at_once() -> None:
    """One unit of 200 lb at 2 ft holds, two are 1,085 lb on a hoist of 1,000 lb."""
    people = (person("P1", 3), person("P2", 3))
    small = put(PROJECT, ("kit", "hoists", "H", "rated_load"), force("1000 lb"))
    for units, verdict in (("200 lb", Verdict.PASS), ("400 lb", Verdict.FAIL)):
        unit = PlacedLoad("U", LoadKind.MATERIAL, mass(units), at=2 * FOOT)
        rig = on_stage(*people, unit)
        rig = put(rig, ("kit", "hoists"), small.kit.hoists)
        assert finding(rig, "hoist-share", "share-in-step").verdict is verdict


def test_5_three_people_and_the_mixer_in_the_middle() -> None:
    """Two lifelines are none for the third; 3 x 250 and 300 lb are more than is intended."""
    riders = put(PROJECT, (*RIG, "riders"), count(3))
    assert finding(riders, "heads").verdict is Verdict.FAIL
    mixer = PlacedLoad("M", LoadKind.TOOLS, mass("300 lb"), at=10 * FOOT)
    heavy = on_stage(person("P1"), person("P2"), person("P3"), mixer)
    assert finding(heavy, "work-steps", "step-load").verdict is Verdict.FAIL


def test_6_the_inspector_wants_to_come_along() -> None:
    """A third head asks for a third line."""
    riders = put(PROJECT, (*RIG, "riders"), count(3))
    assert finding(riders, "heads").verdict is Verdict.FAIL
    assert finding(PROJECT, "heads").verdict is Verdict.PASS


def test_7_all_six_want_to_ride_down_at_once() -> None:
    """Two lines: two ride at a time, whatever the hoists lift."""
    six = put(PROJECT, (*RIG, "riders"), count(6))
    found = finding(six, "heads")
    assert found.verdict is Verdict.FAIL
    assert {("riders", 6), ("lines", 2)} <= {
        (name, value) for name, value in found.message.values if isinstance(value, int)
    }


def test_8_two_lifelines_on_one_eyebolt_whatever_it_was_tested_for() -> None:
    lines = PROJECT.drops[0].rig.lines if PROJECT.drops[0].rig else ()
    first, second = lines[:2]
    assert isinstance(first, Lifeline)
    shared = put(PROJECT, (*RIG, "lifelines"), (first, replace(second, anchor=first.anchor)))
    strong = put(
        shared, ("site", "roofs", "ROOF", "anchors", first.anchor, "rating"), force("10000 lb")
    )
    for project in (shared, strong):
        assert finding(project, "lifeline-alone").verdict is Verdict.FAIL


def test_12_the_tieback_cannot_be_straight() -> None:
    """Alone at 35 degrees it does not hold; with one at 20 on the other side the two share."""
    assert ask("tieback", "angle=35deg").verdict is not Verdict.PASS
    pair = ask("tieback", "angle=35deg other-angle=20deg held=6800lb")
    # F sin 20 / sin 55 = 2,839 lb, F sin 35 / sin 55 = 4,761 lb.
    assert told(pair, "pull") == pytest.approx(2839 * POUND_FORCE, rel=1e-3)
    assert told(pair, "pull-other") == pytest.approx(4761 * POUND_FORCE, rel=1e-3)


def test_16_the_hoist_trips_as_it_goes_up_loaded() -> None:
    """8 AWG, 0.778 ohm/kft: 2 x 20 A x 200 ft lose 6.2 V, and 80 A as both start 24.9 V of 22."""
    found = ask("cord", CORD, "length=200ft least-volts=198V")
    assert told(found, "cord-drop") == pytest.approx(6.22, rel=1e-2)
    assert told(found, "cord-drop-start") == pytest.approx(24.9, rel=1e-2)
    assert found.verdict is Verdict.FAIL
    # 22 V / (2 x 80 A x 0.000778 ohm/ft) = 176.7 ft.
    longest = told(ask("cord", CORD, "least-volts=198V"), "cord-longest")
    assert longest == pytest.approx(176.7 * FOOT, rel=1e-3)
    # Enough, once an office has seen the resistance of the cord in its own copy of the table.
    enough = ask("cord", CORD, "length=176ft least-volts=198V")
    assert (enough.verdict, enough.message.id) == (Verdict.REFER, "ask.cord-enough")


def test_17_100_ft_more_cord() -> None:
    """Half as much again is lost: 6.2 V become 9.3 V; 300 ft of 0.5 lb/ft weigh 150 lb."""
    found = ask("cord", CORD, "length=200ft more=100ft least-volts=198V cord-mass=0.5lb/ft")
    before, now = told(found, "cord-drop-before"), told(found, "cord-drop")
    assert now == pytest.approx(1.5 * before)
    assert told(found, "cord-length") == pytest.approx(300 * FOOT)


def test_18_can_a_generator_of_5_kva_run_two_hoists() -> None:
    """230 V x 20 A = 4.6 kVA run; 230 V x (45 + 10) A = 12.65 kVA as one starts."""
    asked = "volts=230V amps=10A hoists=2 phases=1 start-amps=45A starting=1 set=5kVA"
    assert ask("generator", asked, "set-start=12.5kVA").verdict is Verdict.FAIL
    assert ask("generator", asked, "set-start=13kVA").verdict is Verdict.PASS
