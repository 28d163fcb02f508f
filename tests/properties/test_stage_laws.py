"""Laws of the stage and its hoists: measures, words, kinds; each is judged alone."""

from __future__ import annotations

from enum import StrEnum

import pytest
from hypothesis import given
from hypothesis import strategies as st

from backspan.core.findings import Verdict
from backspan.core.model.evidence import StatedValue
from backspan.core.model.kit import LabTested, SecondBrake
from backspan.core.model.project import Project
from backspan.core.model.stages import (
    Along,
    Bow,
    Control,
    Drives,
    FirstLift,
    HotWork,
    Joints,
    Level,
    OnStage,
    Sway,
)
from backspan.core.sheet.case import Place
from tests.properties.rig_strategies import RANK, all_findings, inches
from tests.unit.core.rigs import HOIST, PROJECT, RIG, STAGE, length, mass, put, seen

HUNG: Place = (*RIG, "stages", 0)
FOUND: Place = (*HUNG, "found")

#: Of each question of the stage, a word that is accepted; all others are not, nor is silence.
ACCEPTED: dict[str, tuple[type[StrEnum], frozenset[StrEnum]]] = {
    "joints": (Joints, frozenset({Joints.SOUND, Joints.ONE_PIECE})),
    "fixed": (OnStage, frozenset({OnStage.SOUND})),
    "guardrail": (OnStage, frozenset({OnStage.SOUND})),
    "toeboard": (OnStage, frozenset({OnStage.SOUND})),
    "along": (Along, frozenset({Along.NOTHING, Along.GUIDED})),
    "sway": (Sway, frozenset({Sway.TIED, Sway.EVALUATED})),
    "first_lift": (FirstLift, frozenset({FirstLift.HELD})),
    "deck": (OnStage, frozenset({OnStage.SOUND})),
    "running": (Level, frozenset({Level.LEVEL})),
    "bow": (Bow, frozenset({Bow.WITHIN})),
    "drives": (Drives, frozenset({Drives.ENCLOSED})),
    "hot_work": (HotWork, frozenset({HotWork.NO, HotWork.INSULATED})),
}
WORDS = [(name, word) for name, (kind, _) in ACCEPTED.items() for word in (*kind, None)]


def worst(project: Project, check: str) -> Verdict:
    """The worst answer of one check."""
    found = [one.verdict for one in all_findings(project, check).values()]
    return min(found, key=lambda one: RANK[one])


@pytest.mark.law("stage-seen")
@given(st.permutations(WORDS))
def test_only_an_accepted_word_passes(words: list[tuple[str, StrEnum | None]]) -> None:
    for name, word in words:
        project = put(PROJECT, (*FOUND, name), None if word is None else seen(word))
        answer = worst(project, "stage-seen")
        if word is None:
            assert answer is Verdict.MISSING
        else:
            good = Verdict.PASS if word is not HotWork.INSULATED else Verdict.REFER
            expected = good if word in ACCEPTED[name][1] else Verdict.FAIL
            assert answer is expected, (name, word)


def measured(rail: StatedValue[float], apart: StatedValue[float], most: int) -> Project:
    """The rig with a rail, a distance to the face and a plate of its own."""
    project = put(PROJECT, (*FOUND, "rail_height"), rail)
    return put(put(project, (*FOUND, "to_face"), apart), (*STAGE, "most_load"), mass(f"{most} lb"))


@pytest.mark.law("stage-measures")
@given(
    st.lists(st.tuples(inches(30, 44), inches(1, 20), st.integers(400, 900)), min_size=8),
    st.integers(0, 20),
)
def test_nearer_to_the_face_with_a_better_plate_is_no_worse(
    drawn: list[tuple[StatedValue[float], StatedValue[float], int]], by: int
) -> None:
    drawn = [*drawn, (length("42 in"), length("6 in"), 800), (length("30 in"), length("6 in"), 800)]
    for rail, apart, most in drawn:
        before = measured(rail, apart, most)
        nearer = StatedValue(apart.value / 2, apart.tolerance, apart.evidence, apart.by, apart.at)
        after = measured(rail, nearer, most + by)
        was, now = (worst(one, "stage-measures") for one in (before, after))
        assert RANK[now] >= RANK[was]
        if most < 500 or rail.value < length("36 in").value:
            assert was is Verdict.FAIL


KINDS = [
    (tested, brake, control)
    for tested in (*LabTested, None)
    for brake in (*SecondBrake, None)
    for control in (*Control, None)
]


@pytest.mark.law("hoist-kind")
@given(st.permutations(KINDS))
def test_a_hoist_passes_only_where_every_word_of_it_does(
    kinds: list[tuple[LabTested | None, SecondBrake | None, Control | None]],
) -> None:
    for tested, brake, control in kinds:
        project = put(PROJECT, (*HOIST, "tested_by"), tested)
        project = put(project, (*HOIST, "secondary_brake"), brake)
        said = None if control is None else seen(control)
        answer = worst(put(project, (*HUNG, "control"), said), "hoist-kind")
        refused = (
            tested is LabTested.NOT_TESTED or brake is SecondBrake.NONE or control is Control.ONE
        )
        if refused:
            assert answer is Verdict.FAIL
        elif None in {tested, brake, control}:
            assert answer is Verdict.MISSING
        else:
            assert answer is Verdict.PASS
