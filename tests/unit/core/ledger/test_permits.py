"""Permits, checks and holds: what is refused, and what stands against people on a stage."""

from __future__ import annotations

from dataclasses import replace

import pytest

from backspan.core.ledger import bodies
from backspan.core.ledger.drop_states import State
from backspan.core.ledger.entry import Signer
from backspan.core.ledger.fold import fold
from backspan.core.ledger.standing import Why
from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.model.units import Condition
from tests.unit.core.ledger.histories import (
    DROP,
    NOON,
    TOMORROW,
    accepted,
    connected,
    described,
    in_service,
    lines,
    permit,
    reach,
    reasons,
    refusals,
)
from tests.unit.core.rigs import PROJECT, TODAY


def test_a_stop_beats_a_permit_that_did_not_know_of_it() -> None:
    here = connected()
    there = here.apart("phone")
    stop = there.says(bodies.UseStopped((DROP,), "noise"))
    here.says(permit(here))
    assert here.drop.state is State.ACCEPTED
    here.gets(there)
    there.gets(here)
    for each in (here, there):
        assert each.state is State.STOPPED
        assert not each.standing().in_service
    again = here.says(permit(here))
    assert again.has_seen(stop)
    assert here.drop.state is State.ACCEPTED


@pytest.mark.parametrize(
    ("change", "why"),
    [
        (lambda one: replace(one, configuration="0000-0000-0"), Why.OTHER_CONFIGURATION),
        (lambda one: replace(one, basis="0"), Why.OTHER_BASIS),
        (lambda one: replace(one, answer="missing"), Why.NO_PASS),
        (lambda one: replace(one, answer="fail"), Why.NO_PASS),
        (lambda one: replace(one, answer="passable"), Why.NO_PASS),
    ],
)
def test_a_permit_names_what_is_there(change: object, why: Why) -> None:
    history = connected()
    assert callable(change)
    history.says(change(permit(history)))
    assert (history.state, refusals(history)) == (State.CONNECTED, [why])


def test_a_pass_with_topics_taken_over_is_a_pass() -> None:
    history = connected()
    history.says(replace(permit(history), answer="pass, 2 topics taken over"))
    assert history.drop.state is State.ACCEPTED


def test_nobody_accepts_the_rig_of_their_own_employer() -> None:
    history = connected()
    plan = history.site.project.plan or history.site.project.drops[0].plan
    assert plan is not None
    own = Signer("cy", "Cy Example", "engineer", f" {plan.contractor.upper()} ")
    history.says(permit(history), signer=own)
    assert (history.state, refusals(history)) == (State.CONNECTED, [Why.OWN_RIG])


def test_a_change_that_a_permit_did_not_know_of() -> None:
    here = connected()
    there = here.apart("phone")
    there.says(reach(0.9))
    here.says(permit(here))
    here.gets(there)
    assert here.state is State.CONNECTED or here.state is State.STOPPED
    assert not here.standing().in_service


def test_an_open_concern_is_closed_by_a_named_test_only() -> None:
    history = accepted()
    history.says(bodies.ConcernNoted("C-1", "B-1", "it made a noise"))
    history.says(bodies.ConcernClosed("C-1", " ", "fixed"))
    history.says(bodies.ConcernClosed("C-2", "load test", "held"))
    history.says(permit(history))
    assert [one.why for one in history.site.matters.refused] == [Why.NO_TEST, Why.UNKNOWN]
    assert refusals(history) == [Why.CONCERN]
    history.says(bodies.ConcernClosed("C-1", "load test 1,500 lb, ten minutes", "no slip"))
    history.says(permit(history))
    assert history.drop.state is State.ACCEPTED


def test_a_deficiency_is_closed_by_looking_again_not_by_an_answer() -> None:
    history = accepted()
    history.says(bodies.DeficiencyRaised("D-1", (DROP,), "pin", "missing", forbids_use=True))
    history.says(bodies.DeficiencyAnswered("D-1", "put in"))
    history.says(bodies.DeficiencyClosed("D-1"))
    history.says(permit(history))
    assert [one.why for one in history.site.matters.refused] == [Why.NOT_MENDED]
    assert refusals(history) == [Why.DEFICIENT]
    history.says(bodies.DeficiencyReinspected("D-1", mended=False, says="still not locked"))
    history.says(bodies.DeficiencyClosed("D-1"))
    history.says(permit(history))
    assert history.state is State.STOPPED
    history.says(bodies.DeficiencyReinspected("D-1", mended=True, says="locked"))
    history.says(bodies.DeficiencyClosed("D-1"))
    history.says(permit(history))
    assert history.drop.state is State.ACCEPTED
    history.says(bodies.DeficiencyReinspected("D-1", mended=False, says="out again"))
    assert history.state is State.STOPPED
    history.says(permit(history))
    assert history.state is State.STOPPED


# Lines, checks, holds


def test_two_people_connect_a_line() -> None:
    history = described()
    history.says(bodies.LineConnected(DROP, "L", "ana"))
    history.says(bodies.LineConnected(DROP, "no such line", "bo"))
    assert refusals(history) == [Why.ONE_PERSON, Why.NOT_RIGGED]
    assert not history.drop.connected
    for line in [*lines()][:-1]:
        history.says(bodies.LineConnected(DROP, line, "bo"))
    assert history.state is State.RIGGED


def test_a_shift_check_is_written_on_its_day() -> None:
    history = accepted()
    history.says(bodies.ShiftChecked(DROP, TOMORROW.isoformat(), fit=True))
    assert (history.state, refusals(history)) == (State.ACCEPTED, [Why.OTHER_DAY])


def test_a_clock_that_runs_ahead_brings_nothing_into_service_tomorrow() -> None:
    history = accepted()
    ahead = f"{TOMORROW.isoformat()}T07:00:00+00:00"
    entry = history.says(bodies.ShiftChecked(DROP, TOMORROW.isoformat(), fit=True), at=ahead)
    received = [*history.entries[:-1], replace(entry, received=NOON)]
    assert fold(received).record(DROP).state is State.ACCEPTED


def test_a_hold_needs_a_shift_check_once_it_has_ended() -> None:
    history = in_service()
    history.says(bodies.HoldBegun((), "gusts of 30 mph"))
    history.says(bodies.ShiftChecked(DROP, TODAY, fit=True))
    assert (history.state, refusals(history)) == (State.ACCEPTED, [Why.ON_HOLD])
    assert Why.ON_HOLD in reasons(history)
    history.says(bodies.HoldEnded((), "12 mph for 15 minutes"))
    assert history.drop.state is State.ACCEPTED
    assert not history.standing().in_service
    history.says(bodies.ShiftChecked(DROP, TODAY, fit=True))
    assert history.standing().in_service


def test_a_hold_that_nobody_knew_of_is_not_ended() -> None:
    here = in_service()
    there = here.apart("phone")
    there.says(bodies.HoldBegun((), "storm"))
    here.says(bodies.HoldEnded((), "calm"))
    here.says(bodies.ShiftChecked(DROP, TODAY, fit=True))
    here.gets(there)
    assert not here.standing().in_service
    assert Why.ON_HOLD in reasons(here)


def test_a_deficiency_under_a_name_that_no_drop_has_forbids_all() -> None:
    history = accepted()
    history.says(bodies.DeficiencyRaised("D-1", ("misspelt",), "pin", "out", forbids_use=True))
    history.says(permit(history))
    assert history.state is State.STOPPED
    assert refusals(history) == [Why.DEFICIENT]


POWER = ("drops", DROP, "rig", "power")


def said(path: tuple[str, ...], word: str) -> bodies.WordFound:
    """A word that somebody found today."""
    return bodies.WordFound(path, StatedValue(word, None, Evidence.MEASURED, "MT", TODAY))


@pytest.mark.parametrize("word", ["defective", "not there"])
def test_what_was_found_wrong_ends_the_acceptance_also_once_it_is_mended(word: str) -> None:
    history = in_service()
    history.says(said(POWER, word))
    states = [history.state]
    assert reasons(history)[0] is Why.ENDED
    history.says(said(POWER, "there and sound"))
    states.append(history.state)
    history.says(permit(history))
    assert [*states, history.state] == [State.STOPPED, State.STOPPED, State.ACCEPTED]


def test_what_was_found_sound_again_ends_nothing() -> None:
    history = in_service()
    history.says(said(POWER, "there and sound"))
    assert history.standing().in_service


def test_a_thing_that_is_defective_stops_the_drops_that_have_it_and_no_others() -> None:
    unit = next(one for one in PROJECT.kit.units if one.id == "H-1")
    bad = StatedValue(Condition.DEFECTIVE, None, Evidence.MEASURED, "MT", TODAY)
    history = in_service()
    history.says(bodies.UnitLookedAt(replace(unit, condition=bad)))
    assert history.state is State.STOPPED
    spare = in_service()
    spare.says(bodies.UnitRegistered(replace(unit, id="H-9")))
    spare.says(bodies.UnitLookedAt(replace(unit, id="H-9", condition=bad)))
    assert spare.standing().in_service
    tagged = in_service()
    tagged.says(said(("kit", "units", "H-1", "condition"), "withdrawn"))
    assert tagged.state is State.STOPPED


def test_what_the_review_of_the_day_refuses_is_not_in_service() -> None:
    """A word that ends no acceptance by itself, and the basis refuses."""
    history = in_service()
    path = ("drops", DROP, "rig", "suspension_points", "R", "clips", "tightened")
    history.says(said(path, "not since they were fitted"))
    assert history.state is State.IN_SERVICE
    standing = history.standing()
    assert not standing.in_service
    assert standing.state is State.STOPPED
    assert [why for why, _ in standing.reasons] == [Why.REFUSED]
