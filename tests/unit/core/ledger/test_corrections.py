"""Disputes, corrections, values without a place, papers that lapse."""

from __future__ import annotations

import datetime
from dataclasses import replace

import pytest

from backspan.core.ledger import bodies
from backspan.core.ledger.drop_states import Refusal, State
from backspan.core.ledger.kinds import Body
from backspan.core.ledger.standing import Why
from backspan.core.model.evidence import Evidence, StatedValue
from tests.unit.core.ledger.histories import (
    DROP,
    PAPERS,
    REACH,
    RIG,
    ROOF,
    TIED,
    TOMORROW,
    connected,
    described,
    in_service,
    lines,
    permit,
    reach,
    reasons,
    refusals,
)
from tests.unit.core.rigs import ON, PROJECT, TODAY

JOINT = (*REACH[:-1], "splices", "J2", "from_tail")


def test_two_who_differ_put_the_drop_in_dispute_until_it_is_settled() -> None:
    here = described()
    there = here.apart("phone")
    here.says(reach(0.9))
    there.says(reach(1.1))
    here.gets(there)
    for line in lines():
        here.says(bodies.LineConnected(DROP, line, "bo"))
    here.says(permit(here))
    assert refusals(here) == [Why.DISPUTED]
    assert Why.DISPUTED in reasons(here)
    here.says(reach(1.0))
    here.says(permit(here))
    assert here.drop.state is State.ACCEPTED


def test_two_who_say_the_same_dispute_nothing() -> None:
    here = described()
    there = here.apart("phone")
    here.says(reach(0.9))
    there.says(reach(0.9))
    here.gets(there)
    assert not here.site.disputes.unsettled


def test_a_rig_set_up_while_another_measured_it_is_in_dispute() -> None:
    here = described()
    there = here.apart("phone")
    here.says(bodies.RigSetUp(DROP, RIG))
    there.says(reach(0.9))
    here.gets(there)
    assert [one.path for one in here.site.disputes.unsettled] == [REACH]


def test_a_joint_that_two_found_elsewhere_is_in_dispute_and_none_is_lost_unseen() -> None:
    here = described()
    there = here.apart("phone")
    for one, away in ((here, 3.0), (there, 4.0)):
        one.says(bodies.NumberFound(JOINT, StatedValue(away, None, Evidence.MEASURED)))
    here.gets(there)
    assert {one.path for one in here.site.disputes.unsettled} == {JOINT}
    assert not here.site.unplaced
    here.says(bodies.NumberFound(JOINT, StatedValue(3.0, None, Evidence.MEASURED)))
    assert not here.site.disputes.unsettled


def test_a_joint_found_on_a_beam_that_was_exchanged_meanwhile_is_in_dispute() -> None:
    here = described()
    there = here.apart("phone")
    here.says(bodies.RigSetUp(DROP, RIG))
    there.says(bodies.NumberFound(JOINT, StatedValue(3.0, None, Evidence.MEASURED)))
    here.gets(there)
    assert here.site.disputes.unsettled


def test_only_a_distance_makes_a_joint() -> None:
    here = described()
    pins = bodies.WordFound((*JOINT[:-1], "pins"), StatedValue("all in and locked"))
    here.says(pins)
    assert [one.entry.body for one in here.site.unplaced] == [pins]


def test_papers_of_two_devices_are_both_there() -> None:
    here = described(replace(PROJECT, taken_over=()))
    there = here.apart("phone")
    papers = [replace(one, document=f"letter {n}") for n, one in enumerate(PAPERS)]
    here.says(bodies.TopicTakenOver(papers[0]))
    there.says(bodies.TopicTakenOver(papers[1]))
    here.gets(there)
    assert not here.site.disputes.unsettled
    assert {one.document for one in here.site.project.taken_over} == {"letter 0", "letter 1"}


def test_a_correction_takes_back_a_value_and_what_leans_on_it() -> None:
    history = described()
    wrong = history.says(reach(0.9))
    for line in lines():
        history.says(bodies.LineConnected(DROP, line, "bo"))
    history.says(permit(history))
    entry = history.says(bodies.Corrected(wrong.hash, "read from the wrong side"))
    assert history.site.project == PROJECT
    assert [one.by for one in history.drop.ended] == [entry]


def test_what_was_written_after_it_does_not_bring_a_corrected_value_back() -> None:
    history = described()
    wrong = history.says(reach(0.9))
    history.says(history.entries[0].body)
    history.says(bodies.DropDescribed(replace(PROJECT.drops[0], rig=None, plan=None)))
    history.says(bodies.Corrected(wrong.hash, "read from the wrong side"))
    assert history.site.project == PROJECT


@pytest.mark.parametrize(
    "body",
    [
        bodies.UseStopped((DROP,), "noise"),
        bodies.HoldBegun((), "wind"),
        bodies.ShiftChecked(DROP, TODAY, fit=False),
        bodies.DeficiencyRaised("D-1", (DROP,), "pin", "missing", forbids_use=True),
        bodies.ConcernNoted("C-1", DROP, "a noise"),
        bodies.AnchorWithdrawn(ROOF.id, TIED, "loose"),
    ],
)
def test_no_correction_undoes_what_stops_use(body: Body) -> None:
    history = in_service()
    wrong = history.says(body)
    history.says(bodies.Corrected(wrong.hash, "did not mean it"))
    assert [one.why for one in history.site.refused] == [Why.NOT_TO_CORRECT]
    assert not history.standing().in_service


def test_a_permit_that_is_taken_back_stops_the_drop() -> None:
    history = in_service()
    wrong = next(one for one in history.entries if isinstance(one.body, bodies.UsePermitted))
    history.says(bodies.Corrected(wrong.hash, "the wrong drop"))
    assert history.state is State.STOPPED


def test_a_line_that_counts_no_longer_stops_the_drop() -> None:
    history = in_service()
    wrong = next(one for one in history.entries if isinstance(one.body, bodies.LineConnected))
    history.says(bodies.Corrected(wrong.hash, "the second person was not there"))
    history.says(permit(history))
    assert history.state is State.STOPPED
    assert refusals(history) == [Refusal.NOT_CONNECTED]


def test_a_correction_of_nothing_is_refused() -> None:
    history = described()
    history.says(bodies.Corrected("0" * 64, "of nothing"))
    assert [one.why for one in history.site.refused] == [Why.UNKNOWN]


@pytest.mark.parametrize(
    "path",
    [
        ("drops", "D", "rig", "suspension_points", "nobody", "rope_length"),
        ("drops", "D", "rig", "suspension_points", "L", "beauty"),
        ("drops", "nowhere", "height"),
        ("people", "ana", "name"),
        ("site",),
        (),
        (*REACH, "value"),
    ],
)
def test_a_value_that_has_no_place_stands_against_the_drop(path: tuple[str, ...]) -> None:
    history = in_service()
    wrong = history.says(bodies.NumberFound(path, StatedValue(1.0, 0.0, Evidence.MEASURED)))
    assert history.state is State.STOPPED
    assert Why.NOT_PLACED in reasons(history)
    history.says(bodies.Corrected(wrong.hash, "the wrong place"))
    history.says(permit(history))
    assert history.drop.state is State.ACCEPTED


def test_a_word_of_another_list_has_no_place() -> None:
    history = described()
    path = (*REACH[:5], "rope_ends")
    history.says(bodies.WordFound(path, StatedValue("beautiful", None, Evidence.MEASURED)))
    assert len(history.site.unplaced) == 1


def test_a_paper_that_a_permit_leans_on_lapses() -> None:
    taken = replace(PAPERS[0], until=TODAY)
    history = connected(replace(PROJECT, taken_over=(taken,)))
    paper = next(one for one in history.entries if isinstance(one.body, bodies.TopicTakenOver))
    history.says(replace(permit(history), taken_over=(taken.document,)))
    history.says(bodies.ShiftChecked(DROP, TODAY, fit=True))
    assert history.standing().in_service
    after = history.standing(TOMORROW)
    assert after.state is State.STOPPED
    assert (Why.LAPSED, paper) in after.reasons


def test_an_anchor_whose_letter_lapsed_ends_the_acceptance() -> None:
    history = in_service()
    late = ON + datetime.timedelta(days=4000)
    entries = [
        one
        for one in history.entries
        if isinstance(one.body, bodies.AnchorRegistered) and one.body.anchor.id == TIED
    ]
    after = history.standing(late)
    assert after.state is State.STOPPED
    assert (Why.LAPSED, entries[-1]) in after.reasons


def test_a_correction_brings_back_what_it_had_hidden() -> None:
    """Of one device only its last word was disputed; without it the one before is."""
    here = described()
    there = here.apart("phone")
    there.says(reach(0.9))
    wrong = there.says(reach(1.1))
    here.says(reach(1.0))
    here.gets(there)
    here.says(bodies.Corrected(wrong.hash, "the wrong beam"))
    assert [one.path for one in here.site.disputes.unsettled] == [REACH]


def test_a_correction_forgets_no_stop() -> None:
    """What leans on a corrected value loses its place; a stop of long after stays unforgotten."""
    here = described()
    there = here.apart("phone")
    wrong = here.says(reach(0.9))
    here.gets(there)
    stop = here.says(bodies.UseStopped((DROP,), "noise"))
    here.says(bodies.Corrected(wrong.hash, "the wrong beam"))
    assert here.drop.lowered[here.device].envelope.sequence > stop.envelope.sequence
    there.says(permit(there))
    there.gets(here)
    assert not there.standing().in_service


def test_an_exchange_without_a_place_forbids_use_until_it_is_corrected() -> None:
    """Of a kind that is not taken back where it has a place: here it changed nothing."""
    history = connected()
    entry = history.says(bodies.UnitExchanged(DROP, ("suspension_points", "X"), "H-1", "H-2"))
    history.says(permit(history))
    assert refusals(history) == [Why.NOT_PLACED]
    history.says(bodies.Corrected(entry.hash, "no such point"))
    assert history.site.refused == []
    assert history.site.unplaced == []
    history.says(permit(history))
    assert history.state is State.ACCEPTED
