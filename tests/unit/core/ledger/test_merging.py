"""Histories of two devices, merged in any order: one folded state, and never a way round a stop.

The histories are drawn from all kinds that touch a drop, with the devices meeting now and then.
"""

from __future__ import annotations

import functools
import random

import pytest

from backspan.core.ledger import bodies
from backspan.core.ledger.chain import Chains, take_all
from backspan.core.ledger.drop_states import State
from backspan.core.ledger.entry import Entry
from backspan.core.ledger.fold import fold
from backspan.core.ledger.kinds import Body
from backspan.core.wire import canonical
from tests.unit.core.ledger.histories import DROP, RIG, History, in_service, lines, permit, reach
from tests.unit.core.ledger.writing import SITE
from tests.unit.core.rigs import TODAY

#: Histories in `make test`; `make soak PART=merging` draws many others.
SEEDS = 100
STOPS = (
    bodies.UseStopped,
    bodies.HoldBegun,
    bodies.ConcernNoted,
    bodies.DeficiencyRaised,
    bodies.NumberFound,
    bodies.RigSetUp,
)


@functools.cache
def base() -> History:
    """A site in service, written once: each history goes on from a copy."""
    return in_service()


def drawn(draw: random.Random, history: History) -> Body:
    """One thing that may be said of the drop."""
    number = draw.randrange(1, 4)
    choices: list[Body] = [
        bodies.UseStopped((DROP,), "noise"),
        bodies.ShiftChecked(DROP, TODAY, fit=draw.random() < 0.8),
        bodies.ShiftChecked(DROP, TODAY, fit=True),
        bodies.LineConnected(DROP, draw.choice([*lines()]), "bo"),
        bodies.HoldBegun((), "wind"),
        bodies.HoldEnded((), "calm"),
        bodies.DeficiencyRaised(f"D{number}", (DROP,), "pin", "out", forbids_use=True),
        bodies.DeficiencyReinspected(f"D{number}", mended=draw.random() < 0.7, says="seen"),
        bodies.DeficiencyClosed(f"D{number}"),
        bodies.ConcernNoted(f"C{number}", "B-1", "a noise"),
        bodies.ConcernClosed(f"C{number}", "load test", "held"),
        bodies.UseRestricted(DROP, "one person"),
        bodies.RigSetUp(DROP, RIG),
        reach(draw.choice([0.9, 1.0])),
        bodies.Corrected(draw.choice(history.entries).hash, "wrong"),
    ]
    if draw.random() < 0.3:
        return permit(history)
    return draw.choice(choices)


def told(history: History) -> bytes:
    """All that a folded site is, as bytes."""
    site = history.site
    record = site.record(DROP)
    entries = [record.fit, *record.restrictions, *record.stops, *record.holds]
    return canonical(
        [
            site.data,
            str(record.state),
            sorted(record.connected),
            None if record.permit is None else record.permit.entry.hash,
            [None if one is None else one.hash for one in entries],
            [[one.entry.hash, str(one.why)] for one in (*record.refused, *site.refused)],
            [[one.permit.hash, one.by.hash] for one in record.ended],
            [[*one.path, one.one.hash, one.other.hash] for one in site.disputes.unsettled],
        ]
    )


@pytest.mark.parametrize("seed", range(SEEDS))
def test_two_devices_make_one_state_whatever_the_order(seed: int) -> None:
    draw = random.Random(seed)  # noqa: S311  # the same histories each time, no secret
    here = base().apart("pad")
    there = here.apart("phone")
    for _ in range(draw.randrange(4, 16)):
        one, other = draw.sample([here, there], 2)
        one.says(drawn(draw, one))
        if draw.random() < 0.15:
            one.gets(other)
    here.gets(there)
    there.gets(here)
    shuffled = draw.sample(here.entries, len(here.entries))
    third = History("desk", Chains(SITE), [])
    third.entries += list(take_all(third.chains, shuffled))
    assert told(here) == told(there) == told(third)
    _nobody_rides_past_a_stop(third)


def _nobody_rides_past_a_stop(history: History) -> None:
    """A drop in service has a permit and a check that know of every stop, hold and change."""
    site = history.site  # folded once
    record = site.record(DROP)
    if record.state is not State.IN_SERVICE:
        return
    assert record.permit is not None
    assert record.fit is not None
    assert record.fit.has_seen(record.permit.entry)
    for one in history.entries:
        refused = any(each.entry is one for each in (*record.refused, *site.refused))
        counts = not refused and one.hash not in site.corrected and not _found_again(history, one)
        if isinstance(one.body, STOPS) and counts:
            assert record.fit.has_seen(one), one.name
            if isinstance(one.body, bodies.UseStopped | bodies.RigSetUp):
                assert record.permit.entry.has_seen(one), one.name


def _found_again(history: History, one: Entry) -> bool:
    """Whether a number is that of the rig as permitted, found a second time: it ends nothing.

    A configuration is of values and not of who stated them. What was found otherwise in between
    is no second time, even where the rig is now as it was.
    """
    site = history.site
    permit = site.record(DROP).permit
    if not isinstance(one.body, bodies.NumberFound) or permit is None:
        return False
    said, rig = permit.entry.body, site.project.drops[0].rig
    assert isinstance(said, bodies.UsePermitted)
    assert rig is not None
    beam = rig.suspension_points[0].counterweighted_beam
    assert beam is not None
    assert beam.reach is not None
    same_rig = (said.configuration, said.basis) == site.codes(DROP)
    return same_rig and one.body.found.value == beam.reach.value


@pytest.mark.slow
def test_some_of_these_histories_end_in_service_and_some_do_not() -> None:
    """The law above would be no law if none did."""
    states = set()
    for seed in range(60):
        draw = random.Random(seed)  # noqa: S311  # the same histories each time, no secret
        here = base().apart("pad")
        for _ in range(draw.randrange(0, 6)):
            here.says(drawn(draw, here))
        states.add(here.state)
    assert {State.IN_SERVICE, State.STOPPED, State.RIGGED} <= states


def test_a_late_entry_of_long_ago_is_taken_where_it_belongs() -> None:
    here = in_service()
    there = here.apart("phone")
    stop = there.says(bodies.UseStopped((DROP,), "noise"))
    for _ in range(5):
        here.says(bodies.ShiftChecked(DROP, TODAY, fit=True))
    here.gets(there)
    assert here.state is State.STOPPED
    assert fold(reversed(here.entries)).record(DROP).stops == [stop]


def test_a_number_found_again_on_the_other_device_ends_nothing() -> None:
    """The pad tapes what it had taped already, while the phone has use permitted and checked."""
    here = base().apart("pad")
    here.says(reach(0.9))
    there = here.apart("phone")
    here.says(reach(0.9))
    there.says(permit(there))
    there.says(bodies.ShiftChecked(DROP, TODAY, fit=True))
    here.gets(there)
    assert here.site.record(DROP).state is State.IN_SERVICE
    _nobody_rides_past_a_stop(here)


def test_a_number_found_otherwise_on_the_other_device_ends_the_permit() -> None:
    here = base().apart("pad")
    here.says(reach(0.9))
    there = here.apart("phone")
    here.says(reach(1.0))
    here.says(reach(0.9))
    there.says(permit(there))
    there.says(bodies.ShiftChecked(DROP, TODAY, fit=True))
    here.gets(there)
    assert here.site.record(DROP).state is not State.IN_SERVICE
