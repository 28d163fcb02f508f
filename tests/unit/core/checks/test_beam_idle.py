"""An idle beam: it sags, or bends over its rear stand, by each known backspan. By hand."""

from __future__ import annotations

import pytest

from backspan.core.findings import Verdict
from backspan.core.model.project import Project
from backspan.core.quantities import MOMENT, Amount
from tests.unit.core.checks.test_beam_strength import SOUND, lb_ft, strength
from tests.unit.core.rigs import ARM, BEAM, STACK, labelled, length, put

#: 16 pieces of 55 lb.
PIECES = 880


def idle(project: Project) -> list[float]:
    """The idle moments that a finding worked out, lb ft."""
    names = {"sagging_moment", "sagging_halfway", "tail_moment"}
    steps = (one for one in strength(project).steps if one.formula in names)
    return [lb_ft(Amount(one.value, MOMENT)) for one in steps]


def known_both_ways(taped: str, gap: str, stand: str) -> Project:
    """The rig with its backspan taped, and what its beam and stack give beside that."""
    one = SOUND
    for place, text in (
        ((*ARM, "backspan"), taped),
        ((*STACK, "tail_gap"), gap),
        ((*ARM, "rear_stand"), stand),
    ):
        one = put(one, place, length(text, tolerance="0 in"))
    return one


def test_idle_it_sags_by_its_own_weight_too() -> None:
    """10 ft of 12 to the stack: 200 lb / 18 ft x (12 ft)2 / 8 = 200 lb ft of its own."""
    one = put(SOUND, (*ARM, "rear_stand"), length("12 ft", tolerance="0 in"))
    weighs = PIECES * 10 * (12 - 10) / 12
    (told,) = idle(put(one, (*ARM, "backspan"), length("10 ft", tolerance="0 in")))
    assert told == pytest.approx(weighs + 200, rel=1e-6)


def test_idle_it_is_asked_at_both_backspans_and_halfway_between() -> None:
    """Sagging grows with the longer one: 5 ft taped, some 13 by the stack, a stand at 14."""
    told = idle(known_both_ways("5 ft", "1 ft", "14 ft"))
    assert len(told) == 3
    own = 200 / 18 * 14**2 / 8
    assert told[-1] == pytest.approx(PIECES * 14 / 4 + own, rel=1e-6)
    assert any(one == pytest.approx(PIECES * 5 * 9 / 14 + own, rel=1e-6) for one in told)


def test_idle_a_stack_behind_its_stand_by_one_way_alone_is_asked() -> None:
    told = idle(known_both_ways("5 ft", "1 ft", "6 ft"))
    assert max(told) > PIECES * 5


def test_no_less_than_its_backspan_is_unbraced() -> None:
    near = put(SOUND, (*ARM, "unbraced_length"), length("3 ft"))
    assert strength(near).capacity == strength(SOUND).capacity


def test_a_centroid_toward_the_tip_adds_to_the_moment() -> None:
    """A foot beyond the middle: 200 lb ft more."""
    toward = put(SOUND, (*BEAM, "centroid_from_tail"), length("10 ft", tolerance="0 in"))
    more = lb_ft(strength(toward).demand) - lb_ft(strength(SOUND).demand)
    assert more == pytest.approx(200, rel=1e-6)
    inboard = put(SOUND, (*BEAM, "centroid_from_tail"), length("8 ft", tolerance="0 in"))
    assert strength(inboard).demand == strength(SOUND).demand


def test_a_label_does_not_take_away_what_the_section_refuses() -> None:
    failing = put(SOUND, (*ARM, "reach"), length("6 ft"))
    assert strength(failing).verdict is Verdict.FAIL
    found = strength(put(failing, (*BEAM, "label"), labelled()))
    assert (found.verdict, found.message.id) == (Verdict.REFER, "section-under-label.refer")
