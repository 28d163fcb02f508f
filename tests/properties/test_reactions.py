"""What a beam presses on its two stands, against sums by hand and against a frame solver.

The solver shares nothing with the program: an elastic beam of five nodes, its stiffness put
together and solved. Reactions of a beam on two supports do not depend on how stiff it is, so that
both must give the same.
"""

from __future__ import annotations

import itertools
import random
from dataclasses import dataclass

import numpy as np
import pytest

from backspan.core.mechanics.constants import STANDARD_GRAVITY
from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.numbers import at_least
from backspan.core.sheet.moments import support_reads
from backspan.core.sheet.reactions import most_behind, on_two_stands
from backspan.core.sheet.reads import read_of
from backspan.core.sheet.sheet import BareSheet
from backspan.core.sheet.subjects import BeamSubject, counterweighted
from tests.unit.core.rigs import ARM, BEAM, HOIST, PIECE, PROJECT, STACK, case, count, put

LAYOUTS = 500
#: Share of the largest force by which two solutions may differ.
BY_HAND, BY_SOLVER = 1e-9, 1e-6
#: Relative stiffness of the beam, any at all.
STIFFNESS = 1e6


@dataclass(frozen=True)
class Layout:
    """A beam on two stands in SI: load at -a, plates at b, own weight at x, rear stand at c."""

    load: float
    reach: float
    plates: int
    piece: float
    backspan: float
    beam: float
    middle: float
    stand: float

    @property
    def stack(self) -> float:
        """Weight of the plates."""
        return self.plates * self.piece * STANDARD_GRAVITY

    @property
    def own(self) -> float:
        """Weight of the beam."""
        return self.beam * STANDARD_GRAVITY


def layouts() -> list[Layout]:
    """Rear stands before, under and behind the stack in turn."""
    draw, found = random.Random(20261125), []  # noqa: S311 - layouts, no secrets
    for number in range(LAYOUTS):
        backspan = draw.uniform(1.0, 5.0)
        before, behind = draw.uniform(0.3, 1.0), draw.uniform(1.0, 1.6)
        place = (before, 1.0, behind)[number % 3]
        found.append(
            Layout(
                load=draw.uniform(0.0, 12e3),
                reach=draw.uniform(0.2, 2.5),
                plates=draw.randint(0, 60),
                piece=draw.uniform(10.0, 30.0),
                backspan=backspan,
                beam=draw.uniform(20.0, 200.0),
                middle=draw.uniform(-0.5, 3.0),
                stand=backspan * place,
            )
        )
    return found


def by_program(one: Layout, load: float) -> tuple[float, float]:
    """Front, as the fulcrum carries it, and rear, negative where the tail would lift."""
    # So long that each of the rear stands has the beam over it.
    tail = 9.0
    length = 2.0 * (one.reach + one.middle) if one.reach + one.middle > 0.0 else 1.0
    rig = PROJECT
    for place, value in (
        ((*ARM, "reach"), one.reach),
        ((*ARM, "backspan"), one.backspan),
        ((*ARM, "rear_stand"), one.stand),
        ((*ARM, "tip_beyond_line"), 0.0),
        ((*BEAM, "length"), length + tail),
        ((*BEAM, "mass"), one.beam),
        # Inboard it is as long as beam less reach; its centroid lies `middle` from the fulcrum.
        ((*BEAM, "centroid_from_tail"), length + tail - one.reach - one.middle),
        ((*PIECE, "mass"), one.piece),
        ((*HOIST, "rated_load"), one.load),
    ):
        rig = put(rig, place, StatedValue(value, 0.0, Evidence.MEASURED))
    at = case(put(rig, (*STACK, "groups", 0, "count"), count(one.plates)))
    beam = next(one for one in counterweighted(at, "bearing") if isinstance(one, BeamSubject))
    reads = support_reads(at, beam).beam
    stand = read_of("rear_stand", beam.support, beam.place)
    sheet = BareSheet({}, {})
    stands = on_two_stands(sheet, reads, stand)
    rear = stands.rear(sheet, load)
    idle = most_behind(sheet, stands, reads)
    assert idle == pytest.approx(at_least(stands.rear(sheet, 0.0), least=0.0), rel=1e-12)
    return stands.front(sheet, load, carried_behind=at_least(rear, least=0.0)), rear


def by_solver(one: Layout, load: float) -> tuple[float, float]:
    """Front and rear of an elastic beam held down at both stands."""
    down = (
        (-one.reach, load),
        (0.0, 0.0),
        (one.backspan, one.stack),
        (one.middle, one.own),
        (one.stand, 0.0),
    )
    places = sorted({place for place, _ in down})
    size = 2 * len(places)
    stiff, force = np.zeros((size, size)), np.zeros(size)
    for at, (left, right) in enumerate(itertools.pairwise(places)):
        long = right - left
        six, four, two = 6.0 * long, 4.0 * long**2, 2.0 * long**2
        element = np.array(
            [
                [12.0, six, -12.0, six],
                [six, four, -six, two],
                [-12.0, -six, 12.0, -six],
                [six, two, -six, four],
            ]
        )
        stiff[2 * at : 2 * at + 4, 2 * at : 2 * at + 4] += STIFFNESS / long**3 * element
    for place, weight in down:
        force[2 * places.index(place)] -= weight
    held = [2 * places.index(0.0), 2 * places.index(one.stand)]
    free = [at for at in range(size) if at not in held]
    moved = np.zeros(size)
    moved[free] = np.linalg.solve(stiff[np.ix_(free, free)], force[free])
    front, rear = (stiff @ moved - force)[held]
    return float(front), float(rear)


@pytest.fixture(scope="module")
def drawn() -> list[Layout]:
    """The layouts, idle ones among them."""
    return layouts()


def test_both_kinds_of_layout_are_drawn(drawn: list[Layout]) -> None:
    lifting = [by_solver(one, one.load)[1] < 0.0 for one in drawn]
    assert 50 < sum(lifting) < LAYOUTS - 50


def test_reactions_are_those_of_sums_by_hand(drawn: list[Layout]) -> None:
    for one in drawn:
        for load in (0.0, one.load):
            front, rear = by_program(one, load)
            turned = one.stack * one.backspan + one.own * one.middle - load * one.reach
            every = load + one.stack + one.own
            assert rear == pytest.approx(turned / one.stand, rel=BY_HAND, abs=BY_HAND * every)
            expected = every - (turned / one.stand if turned > 0.0 else 0.0)
            assert front == pytest.approx(expected, rel=BY_HAND, abs=BY_HAND * every)


def test_reactions_are_those_of_an_independent_solver(drawn: list[Layout]) -> None:
    for one in drawn:
        every = one.load + one.stack + one.own
        front, rear = by_program(one, one.load)
        solved_front, solved_rear = by_solver(one, one.load)
        assert rear == pytest.approx(solved_rear, rel=BY_SOLVER, abs=BY_SOLVER * every)
        # A stand that would have to pull carries nothing, and the fulcrum all.
        expected = solved_front if solved_rear > 0.0 else every
        assert front == pytest.approx(expected, rel=BY_SOLVER, abs=BY_SOLVER * every)
