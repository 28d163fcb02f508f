"""Laws of tolerance: every finding is made at the adverse end, wherever the true value lies."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import Any

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from backspan.core.checks import CHECKS
from backspan.core.findings import Direction, Finding, InputUsed
from backspan.core.judgement.case import Place
from backspan.core.model.evidence import StatedValue
from backspan.core.model.project import Project
from backspan.core.model.rigs import PieceGroup
from backspan.core.review import review_findings
from tests.properties.rig_strategies import (
    COUNT,
    LOADS,
    Key,
    all_findings,
    is_stacked,
    moved,
    no_better,
    one_kind_of_piece,
    rigs,
    stack_fits,
    tipping,
    walked,
)
from tests.unit.core.rigs import (
    ARM,
    BEAM,
    OSHA,
    QUEBEC,
    STACK,
    at,
    case,
    count,
    length,
    mass,
    on_basis,
    put,
)

FEW = settings(max_examples=30)
HARMFUL = {check.id: check.harmful for check in CHECKS}


@given(rigs())
@FEW
def test_a_tolerance_of_zero_on_every_value_is_no_tolerance(rig: Project) -> None:
    """For every finding: answer, numbers, margins, notes and needs."""
    rig = on_basis(rig, *rig.basis.tipping, QUEBEC)

    def exact(record: Any) -> Any:
        if isinstance(record, StatedValue):
            number = isinstance(record.value, int | float)
            return replace(record, tolerance=type(record.value)(0)) if number else record
        return walked(record, exact)

    plain, told = (review_findings(case(one)) for one in (rig, exact(rig)))
    assert told.verdict is plain.verdict
    assert [replace(one, inputs=()) for one in told.findings] == [
        replace(one, inputs=()) for one in plain.findings
    ]


VAGUE: tuple[tuple[Place, float], ...] = (
    ((*ARM, "reach"), 0.1),
    ((*ARM, "backspan"), 0.3),
    ((*ARM, "tip_beyond_line"), 0.1),
    ((*STACK, "tail_gap"), 0.1),
    ((*BEAM, "length"), 0.3),
    ((*BEAM, "mass"), 20.0),
    ((*BEAM, "centroid_from_tail"), 0.3),
    *(((*("kit", "pieces", piece), "mass"), 3.0) for piece in ("P", "Q", "M")),
    *(((*("kit", "pieces", piece), "length_on_beam"), 0.02) for piece in ("P", "Q", "M")),
    *((place, 40.0 if "mass" in str(place[-1]) else 400.0) for place in LOADS),
    ((*STACK, "groups", 0, "count"), 3),
    (COUNT, 3),
)
ROLES = [f"{place[-2]}-{place[-1]}" for place, _ in VAGUE]


@pytest.mark.parametrize(("place", "most"), VAGUE, ids=ROLES)
@given(rigs(), st.floats(0.0, 1.0), st.floats(0.0, 1.0))
@settings(max_examples=10)
def test_a_larger_tolerance_never_improves_any_finding(
    place: Place, most: float, rig: Project, one: float, other: float
) -> None:
    """Of any input, in stacks of one kind of piece or of several."""
    assume(at(rig, place) is not None)
    rig = on_basis(rig, *rig.basis.tipping, QUEBEC)
    number = type(at(rig, place).value)
    small, large = (number(share * most) for share in sorted((one, other)))
    narrow = all_findings(put(rig, (*place, "tolerance"), small))
    wide = all_findings(put(rig, (*place, "tolerance"), large))
    for key in narrow.keys() & wide.keys():
        if not either_way(rig, key):
            assert no_better(narrow[key], wide[key]), key


@given(rigs(), st.data())
@settings(max_examples=60)
def test_no_value_within_the_tolerances_makes_any_finding_worse_than_it_is(
    rig: Project, data: st.DataObject
) -> None:
    """Several doubtful inputs at once: wherever the true values lie, the answer was no better.

    This is what "made at the adverse end" means, and it does not rest on the declared directions.
    """
    rig = doubtful = on_basis(rig, OSHA, *rig.basis.tipping, QUEBEC)
    true = rig
    for place, most in data.draw(
        st.lists(st.sampled_from(VAGUE), min_size=1, max_size=6, unique=True)
    ):
        stated = at(rig, place)
        if stated is None:
            continue
        number = type(stated.value)
        tolerance = number(most * data.draw(st.sampled_from([0.34, 0.67, 1.0])))
        off = number(tolerance * data.draw(st.sampled_from([-1.0, -0.5, 0.0, 0.5, 1.0])))
        if tolerance < stated.value:
            doubtful = put(doubtful, (*place, "tolerance"), tolerance)
            true = put(true, (*place, "value"), stated.value + off)
    assume(stack_fits(doubtful))
    judged, really = all_findings(doubtful), all_findings(true)
    for key in judged.keys() & really.keys():
        if not either_way(rig, key):
            assert no_better(really[key], judged[key]), key


def either_way(project: Project, key: Key) -> bool:
    """Whether a finding compares the centroid of a mixed stack, which mass moves either way."""
    return key[0] == "beam-proportion" and is_stacked(project) and not one_kind_of_piece(project)


@given(rigs(stacked=True, share=st.floats(0.9, 1.1)), st.integers(1, 2))
@FEW
def test_a_piece_more_outboard_of_heavier_ones_is_no_help_to_tipping(
    rig: Project, doubt: int
) -> None:
    """A doubtful count near the tail is taken against tipping at whichever end does harm.

    A long light piece there pushes heavy ones to the fulcrum, and takes more than it adds.
    """
    stack = (PieceGroup("Q", count(3)), PieceGroup("P", count(16)))
    rig = put(put(rig, (*STACK, "groups"), stack), ("kit", "pieces", "Q", "mass"), mass("20 lb"))
    rig = put(rig, ("kit", "pieces", "Q", "length_on_beam"), length("12 in"))
    place = (*STACK, "groups", 0, "count")
    doubtful = put(rig, place, count(3, tolerance=doubt))
    assume(stack_fits(doubtful))
    for pieces in range(3 - doubt, 3 + doubt + 1):
        assert no_better(tipping(put(rig, place, count(pieces))), tipping(doubtful))


@given(rigs(), st.data())
@FEW
def test_a_finding_says_when_its_tolerances_change_it(rig: Project, data: st.DataObject) -> None:
    """The note stands exactly where the values as stated would give another answer."""
    doubtful = rig
    for place, most in data.draw(st.lists(st.sampled_from(VAGUE), min_size=1, max_size=4)):
        if at(rig, place) is not None:
            number = type(at(rig, place).value)
            doubtful = put(doubtful, (*place, "tolerance"), number(most))
    told, stated = all_findings(doubtful), all_findings(rig)
    for key in told.keys() & stated.keys():
        noted = "note.within-tolerance" in {note.id for note in told[key].notes}
        assert noted is (told[key].verdict is not stated[key].verdict), key


@given(rigs(), st.floats(0.0, 0.3))
@settings(max_examples=30)
def test_every_declared_direction_is_the_harmful_one(rig: Project, share: float) -> None:
    """An input of any finding moved its harmful way never improves that finding."""
    rig = on_basis(rig, OSHA, QUEBEC, *rig.basis.tipping)
    before = all_findings(rig)
    after: dict[tuple[Place, Direction], dict[Key, Finding]] = {}
    for key, found in before.items():
        for used in directed(rig, key, found):
            way = HARMFUL[found.check][used.name]
            move = (used.place, way)
            if move not in after:
                after[move] = all_findings(harmed(rig, used, way, share))
            if key in after[move]:
                assert no_better(found, after[move][key]), (key, used.name)


def directed(project: Project, key: Key, found: Finding) -> Iterator[InputUsed]:
    """The inputs of a finding that do harm one way, whatever the other values are."""
    mixed = is_stacked(project) and not one_kind_of_piece(project)
    outer = (*STACK, "groups", 0, "count")
    for used in found.inputs:
        of_pieces = used.name in {"pieces", "piece_mass"}
        if used.name not in HARMFUL[found.check] or (of_pieces and either_way(project, key)):
            continue
        if used.place == outer and mixed:
            continue  # how a doubtful count of outer pieces is taken is a law of its own
        if of_pieces and found.check == "tipping" and not stack_fits(project):
            continue  # beyond the fulcrum a piece pulls the other way: the stack has to fit
        if len([one for one in found.inputs if one.place == used.place]) > 1:
            continue  # the beam's mass, read light for credit and heavy for harm
        yield used


def harmed(project: Project, used: InputUsed, direction: Direction, share: float) -> Project:
    """The project with an input moved a share of itself, or a piece, its harmful way."""
    sign = 1 if direction is Direction.MORE else -1
    value = at(project, used.place).value
    return moved(project, used.place, sign if isinstance(value, int) else sign * share * value)
