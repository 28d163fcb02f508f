"""Laws of a beam as it stands: words, and where its joints lie; each is judged alone."""

from __future__ import annotations

from enum import StrEnum

import pytest
from hypothesis import given
from hypothesis import strategies as st

from backspan.core.findings import Verdict
from backspan.core.model.beams import (
    BeamBow,
    BeamLevel,
    Channels,
    Restraint,
    Shackle,
    Square,
    StopBolts,
    Web,
)
from backspan.core.model.project import Project
from tests.properties.rig_strategies import RANK, all_findings
from tests.unit.core.rigs import PROJECT, length, put, seen
from tests.unit.core.words.lacking_beams import FOUND, JOINED, SPLICE, WORDS

PASSES: frozenset[StrEnum] = frozenset(
    {
        *(Web.VERTICAL, Web.NONE, StopBolts.BOTH_ENDS, Square.SQUARE, Shackle.OVER),
        *(BeamLevel.AS_MADE, BeamBow.STRAIGHT, BeamBow.ALLOWED, Restraint.RESTRAINED),
        *(Channels.FASTENED, Channels.NO_PAIR),
    }
)
SAID = [(name, word) for name, kind in WORDS.items() for word in (*kind, None)]
#: In sixteenths of an inch: the stack lies from 3 ft 6 in to 7 ft 6 in, its plates a sixteenth
#: longer or shorter each, sixteen of them, half of that on either side.
FROM, TO, OFF = 42 * 16, 90 * 16, 8 + 1
#: Half of the longest sleeve that a joint may have.
SLEEVE = 18 * 16


def worst(project: Project, check: str) -> Verdict:
    """The worst answer of one check."""
    found = [one.verdict for one in all_findings(project, check).values()]
    return min(found, key=lambda one: RANK[one])


@pytest.mark.law("beam-seen")
@given(st.permutations(SAID))
def test_only_an_accepted_word_passes(words: list[tuple[str, StrEnum | None]]) -> None:
    for name, word in words:
        project = put(PROJECT, (*FOUND, name), None if word is None else seen(word))
        answer = worst(project, "beam-seen")
        if word is None:
            assert answer is Verdict.MISSING
        elif word is Square.OBSTRUCTED:
            assert answer is Verdict.REFER
        else:
            assert answer is (Verdict.PASS if word in PASSES else Verdict.FAIL), (name, word)


@pytest.mark.law("splice-clear")
@given(st.lists(st.integers(1, 18 * 192 - 1), min_size=6))
def test_no_joint_under_the_stack_passes(places: list[int]) -> None:
    for at in (*places, 60 * 16, 108 * 16):
        project = put(JOINED, (*SPLICE, "from_tail"), length(f"{at}/16 in"))
        answer = worst(project, "splice-clear")
        if FROM < at < TO:
            assert answer is Verdict.FAIL
        elif not FROM - OFF < at < TO + OFF:
            outboard = 186 * 16 <= at <= 210 * 16
            apart = min(abs(at - end) for end in (FROM, TO, 186 * 16, 210 * 16))
            if outboard:
                assert answer is Verdict.REFER
            elif apart < SLEEVE - OFF:
                # Half of the longest sleeve would reach there: its length is asked.
                assert answer is Verdict.MISSING
            elif apart > SLEEVE + OFF:
                assert answer is Verdict.PASS


@pytest.mark.law("splice-clear")
@given(st.lists(st.tuples(st.integers(1, 18 * 192 - 1), st.integers(1, 900)), min_size=6))
def test_a_sleeve_never_improves_an_answer_and_all_of_it_counts(
    joints: list[tuple[int, int]],
) -> None:
    for at, long in (*joints, (41 * 16, 40), (91 * 16, 40), (185 * 16, 40), (211 * 16, 40)):
        without = put(JOINED, (*SPLICE, "from_tail"), length(f"{at}/16 in"))
        project = put(without, (*SPLICE, "sleeve"), length(f"{long}/16 in"))
        answer = worst(project, "splice-clear")
        shorter = put(without, (*SPLICE, "sleeve"), length(f"{(long + 1) // 2}/16 in"))
        assert RANK[answer] <= RANK[worst(shorter, "splice-clear")]
        start, end = at - long / 2, at + long / 2
        if start < TO and end > FROM:
            assert answer is Verdict.FAIL
        elif start <= 210 * 16 and end >= 186 * 16:
            assert answer in {Verdict.REFER, Verdict.FAIL}
