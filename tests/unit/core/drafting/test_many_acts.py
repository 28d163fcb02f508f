"""Random acts and undos: a draft is its acts, and nothing that was taken back leaves a trace."""

from __future__ import annotations

import random

import pytest

from backspan.core.drafting import Draft, DraftError, drawn, entries_between
from backspan.core.drafting.acting import Act
from backspan.core.drafting.building import MoveCorner
from backspan.core.drafting.rigging import LeadTieback, Measure, MoveBeam, MovePoint, PlaceDrop
from backspan.core.drafting.standing import MoveAnchor, MoveObstacle, PlaceAnchor, PlaceObstacle
from backspan.core.model.order import ordered
from tests.unit.core.drafting.test_acts import HAND, told
from tests.unit.core.rigs import PROJECT

MANY = 1_000


def an_act(chance: random.Random, number: int) -> Act:
    """Any act, of which some cannot be done."""
    x, y = chance.uniform(-1.0, 19.0), chance.uniform(-1.0, 13.0)
    anchor, point = f"A{chance.randrange(1, 5)}", chance.choice("LR")
    box = ((x, y), (x + 1.0, y), (x + 1.0, y + 1.0), (x, y + 1.0))
    made: tuple[Act, ...] = (
        PlaceAnchor("ROOF", f"N{number}", (x, y), "post"),
        MoveAnchor("ROOF", anchor, (x, y)),
        MoveAnchor("ROOF", f"N{chance.randrange(number + 1)}", (x, y)),
        PlaceObstacle("ROOF", f"O{number}", "tank", box),
        MoveObstacle("ROOF", "VENT", (chance.uniform(-1.0, 1.0), 0.0)),
        MoveCorner("ROOF", chance.randrange(4), (x * 1.2, y * 1.2)),
        PlaceDrop(f"D{number}", "ROOF", "S", chance.uniform(-1.0, 14.0), 4.0),
        MovePoint("D", point, chance.uniform(-0.5, 19.0)),
        MoveBeam("D", point, chance.choice(tuple(Measure)), chance.uniform(-0.1, 4.0)),
        LeadTieback("D", point, f"TB-{point}", anchor),
    )
    return chance.choice(made)


@pytest.mark.parametrize("seed", [1, 2])
def test_a_thousand_acts_and_undos_end_in_the_site_of_what_is_left(seed: int) -> None:
    chance = random.Random(seed)  # noqa: S311 - no secret is made
    draft, kept = Draft(), list[Act]()
    site, sites = PROJECT, [PROJECT]
    done = refused = undone = 0
    for number in range(MANY):
        if kept and chance.random() < 0.45:
            draft, site = draft.without_last(), sites[-2]
            kept.pop()
            sites.pop()
            undone += 1
            continue
        act = an_act(chance, number)
        try:
            site = drawn(sites[-1], [act], HAND)
        except DraftError:
            refused += 1
            continue
        draft = draft.after(act)
        kept.append(act)
        sites.append(site)
        done += 1
    assert done > 200 < undone
    assert refused > 50
    assert draft.acts == tuple(kept)
    whole = drawn(PROJECT, draft.acts, HAND)
    assert whole == site
    assert ordered(told(PROJECT, entries_between(PROJECT, whole))) == ordered(whole)
    while draft.acts:
        draft = draft.without_last()
    assert drawn(PROJECT, draft.acts, HAND) == PROJECT
    assert entries_between(PROJECT, PROJECT) == ()
