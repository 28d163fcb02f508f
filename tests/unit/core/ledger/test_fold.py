"""The site as its entries make it: what stops a drop, what ends an acceptance, what is refused."""

from __future__ import annotations

from dataclasses import replace

import pytest

from backspan.core.ledger import bodies
from backspan.core.ledger.chain import in_order
from backspan.core.ledger.document import project_of
from backspan.core.ledger.drop_states import Refusal, State
from backspan.core.ledger.errors import LedgerError
from backspan.core.ledger.fold import fold, folded_on, take
from backspan.core.ledger.folded import Folded
from backspan.core.ledger.kinds import Body
from backspan.core.ledger.standing import Why
from backspan.core.model.beams import BeamFound
from backspan.core.model.site import AnchorStanding
from backspan.core.model.stages import StageFound
from tests.unit.core.ledger.every_kind import UNDER
from tests.unit.core.ledger.histories import (
    DROP,
    REACH,
    RIG,
    ROOF,
    TIED,
    TOMORROW,
    History,
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
from tests.unit.core.rigs import ON, PROJECT, TODAY


def test_a_project_told_in_entries_is_the_same_project() -> None:
    assert described().site.project == PROJECT
    assert described().state is State.RIGGED


def test_a_drop_goes_into_service_one_step_at_a_time() -> None:
    states = [one().state for one in (described, connected, accepted, in_service)]
    assert states == [State.RIGGED, State.CONNECTED, State.ACCEPTED, State.IN_SERVICE]
    assert in_service().standing().in_service


def test_without_a_site_there_is_nothing() -> None:
    history = History()
    history.says(bodies.UseStopped((), "no site yet"))
    assert len(history.site.unplaced) == 1
    with pytest.raises(LedgerError, match="no site is described"):
        _ = history.site.project


def test_a_missing_shift_check_is_not_in_service_today() -> None:
    history = in_service()
    assert not history.standing(TOMORROW).in_service
    assert history.standing(TOMORROW).state is State.ACCEPTED
    assert reasons(history, TOMORROW) == [Why.NO_CHECK_TODAY]
    assert reasons(accepted()) == [Why.NO_CHECK_TODAY]


def test_the_site_as_it_stood_on_a_day() -> None:
    history = in_service()
    history.says(
        bodies.UseStopped((DROP,), "a beam moved"), at=f"{TOMORROW.isoformat()}T07:00:00+00:00"
    )
    assert history.standing(ON).in_service
    assert history.standing(TOMORROW).state is State.STOPPED
    assert reasons(history, TOMORROW) == [Why.STOPPED]


@pytest.mark.parametrize(
    "body",
    [
        bodies.UseStopped((DROP,), "noise"),
        bodies.UseStopped((), "storm damage"),
        bodies.UseStopped(("misspelt",), "a stop under a name that no drop has"),
        bodies.ShiftChecked(DROP, TODAY, fit=False, says="brake"),
        bodies.DeficiencyRaised("D-1", (DROP,), "beam L", "pin missing", forbids_use=True),
        bodies.DeficiencyRaised("D-1", (), "roof", "hatch locked", forbids_use=True),
        bodies.ConcernNoted("C-1", "B-1", "it made a noise"),
        bodies.ConcernNoted("C-1", "H", "this type of hoist slipped elsewhere"),
        bodies.ConcernNoted("C-1", DROP, "the foreman does not like it"),
        bodies.AnchorWithdrawn(ROOF.id, TIED, "pulled out at its test"),
        bodies.AnchorInspected(ROOF.id, TIED, TODAY, AnchorStanding.OUT_OF_SERVICE),
        reach(0.9),
    ],
)
def test_what_ends_an_acceptance_says_which_entry_did(body: Body) -> None:
    history = in_service()
    entry = history.says(body)
    assert history.state is State.STOPPED
    assert not history.standing().in_service
    (ended,) = history.drop.ended
    assert ended.by == entry
    assert entry in [one for _, one in history.standing().reasons]


@pytest.mark.parametrize(
    "body",
    [
        bodies.DeficiencyRaised("D-1", (DROP,), "sign", "faded", forbids_use=False),
        bodies.ConcernNoted("C-1", "something that hangs elsewhere", "a noise"),
        bodies.PaperIssued("review.pdf", (DROP,)),
        bodies.UnderlayLaid(ROOF.id, UNDER),
        bodies.UseRestricted(DROP, "one person only"),
        bodies.UnitRegistered(replace(PROJECT.kit.units[0], id="B-99")),
    ],
)
def test_what_leaves_a_drop_in_service(body: Body) -> None:
    history = in_service()
    history.says(body)
    assert history.standing().in_service


def test_a_restriction_stands_beside_the_permit_until_the_next() -> None:
    history = accepted()
    entry = history.says(bodies.UseRestricted(DROP, "one person only"))
    assert history.standing().restrictions == (entry,)
    history.says(permit(history))
    assert not history.standing().restrictions


def test_a_confirming_tap_ends_nothing() -> None:
    history = in_service()
    beam = RIG.suspension_points[0].counterweighted_beam
    assert beam is not None
    assert beam.reach is not None
    again = replace(beam.reach, by="somebody else", document="photograph 7")
    history.says(bodies.NumberFound(REACH, again))
    assert history.standing().in_service


def test_a_beam_that_was_moved_and_moved_back_was_moved() -> None:
    history = in_service()
    beam = RIG.suspension_points[0].counterweighted_beam
    assert beam is not None
    assert beam.reach is not None
    history.says(reach(0.9))
    history.says(bodies.NumberFound(REACH, beam.reach))
    assert history.site.project == PROJECT
    assert history.state is State.STOPPED


def test_another_basis_ends_an_acceptance() -> None:
    history = in_service()
    other = replace(PROJECT, anchor_dates_required_by="the owner's letter")
    described_anew = next(iter(one.body for one in described(other).entries))
    entry = history.says(described_anew)
    assert [one.by for one in history.drop.ended] == [entry]


def test_an_exchanged_unit_ends_an_acceptance() -> None:
    history = described()
    path = ("suspension_points", "L", "counterweighted_beam", "beam")
    taken = RIG.suspension_points[0].counterweighted_beam
    assert taken is not None
    spare = replace(
        next(one for one in PROJECT.kit.units if one.id == taken.beam), id="B-77", serial="77"
    )
    history.says(bodies.UnitRegistered(spare))
    for line in lines():
        history.says(bodies.LineConnected(DROP, line, "bo"))
    history.says(permit(history))
    entry = history.says(bodies.UnitExchanged(DROP, path, taken.beam, "B-77"))
    assert [one.by for one in history.drop.ended] == [entry]
    assert not history.site.unplaced
    rig = history.site.project.drops[0].rig
    assert rig is not None
    beam = rig.suspension_points[0].counterweighted_beam
    # What was found of the beam that was taken out is not said of the other.
    assert beam == replace(taken, beam="B-77", joined=None, splices=(), found=BeamFound())


def test_what_was_found_of_a_stage_is_not_said_of_another_nor_of_other_hoists() -> None:
    for path, taken, new in (
        (("stages", "0", "stage"), "ST-1", "ST-77"),
        (("suspension_points", "L", "hoist"), "H-1", "H-77"),
    ):
        history = described()
        spare = next(one for one in PROJECT.kit.units if one.id == taken)
        history.says(bodies.UnitRegistered(replace(spare, id=new, serial="77")))
        history.says(bodies.UnitExchanged(DROP, path, taken, new))
        assert not history.site.unplaced
        rig = history.site.project.drops[0].rig
        assert rig is not None
        before, after = RIG.stages[0].found, rig.stages[0].found
        assert before.first_lift is not None
        same = replace(before, first_lift=None)
        assert after == (StageFound() if path[0] == "stages" else same)


@pytest.mark.parametrize(("taken", "put"), [("not there", "B-1"), ("B-1", "not there")])
def test_an_exchange_of_what_is_not_there_has_no_place(taken: str, put: str) -> None:
    history = in_service()
    path = ("suspension_points", "L", "counterweighted_beam", "beam")
    history.says(bodies.UnitExchanged(DROP, path, taken, put))
    assert reasons(history)[-1] is Why.NOT_PLACED
    assert history.state is State.STOPPED


def test_a_moved_rig_is_stopped_until_it_is_looked_at_again() -> None:
    two = replace(PROJECT, drops=(*PROJECT.drops, replace(PROJECT.drops[0], id="E", rig=None)))
    history = in_service(two)
    moved = history.says(bodies.RigMoved(DROP, "E"))
    assert history.state is State.PLANNED
    assert [one.by for one in history.drop.ended] == [moved]
    assert history.site.record("E").state is State.MOVING
    for line in lines():
        history.says(bodies.LineConnected("E", line, "bo"))
    assert history.site.record("E").state is State.MOVING
    history.says(bodies.RigSetUp("E", RIG))
    assert history.site.record("E").state is State.RIGGED


def test_a_rig_set_up_anew_is_connected_anew() -> None:
    history = in_service()
    history.says(bodies.RigSetUp(DROP, RIG))
    assert history.state is State.RIGGED
    history.says(permit(history))
    assert history.state is State.RIGGED
    assert refusals(history) == [Refusal.NOT_CONNECTED]


def eventful() -> History:
    """A site at which much happened."""
    history = in_service()
    history.says(bodies.ConcernNoted("C-1", DROP, "a noise"))
    history.says(bodies.ConcernClosed("C-1", "load test", "held"))
    history.says(bodies.DeficiencyRaised("N-1", (DROP,), "pin", "open", forbids_use=True))
    history.says(bodies.DeficiencyReinspected("N-1", mended=True, says="locked"))
    history.says(bodies.DeficiencyClosed("N-1"))
    value = history.says(reach(0.9))
    history.says(bodies.Corrected(value.hash, "another drop"))
    history.says(bodies.HoldBegun((), "gusts"))
    history.says(bodies.HoldEnded((), "calm"))
    history.says(bodies.UnitExchanged(DROP, ("nowhere",), "H-1", "H-2"))
    history.says(bodies.UseRestricted(DROP, "one rider"))
    return history


def test_going_on_from_a_fold_is_folding_all_and_leaves_the_first_as_it_was() -> None:
    entries = eventful().entries
    for at in range(1, len(entries)):
        first = fold(entries[:at], on=ON)
        kept = fold(entries[:at], on=ON)
        assert folded_on(first, entries[:at], entries[at:], on=ON) == fold(entries, on=ON)
        assert first == kept


def test_the_project_after_each_entry_is_what_all_of_its_data_is_read_as() -> None:
    site = Folded()
    for entry in in_order(eventful().entries):
        take(site, entry)
        assert site.project == project_of(site.data)


def test_an_entry_that_stands_before_others_is_folded_with_all_of_them() -> None:
    here = in_service()
    there = here.apart("phone")
    here.says(bodies.UseRestricted(DROP, "one rider"))
    here.says(bodies.UseRestricted(DROP, "no wind"))
    late = there.says(bodies.UseStopped((DROP,), "a noise"))
    assert folded_on(here.site, here.entries, [late], on=ON) is None


def test_an_entry_of_a_later_day_is_not_of_this_one() -> None:
    history = in_service()
    entry = history.says(bodies.UseStopped((DROP,), "x"), at=f"{TOMORROW}T08:00:00+00:00")
    before = history.entries[:-1]
    assert folded_on(fold(before, on=ON), before, [entry], on=ON) == fold(before, on=ON)
