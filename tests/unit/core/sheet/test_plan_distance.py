"""How near a line comes to an outline, held against points tried one by one along the line."""

from __future__ import annotations

import math
import random

import pytest

from backspan.core.sheet.plan_distance import Spot, is_inside, line_to_outline

SQUARE: tuple[Spot, ...] = ((0.0, 0.0), (2.0, 0.0), (2.0, 2.0), (0.0, 2.0))
#: An L of two arms one wide.
ELL: tuple[Spot, ...] = ((0.0, 0.0), (3.0, 0.0), (3.0, 1.0), (1.0, 1.0), (1.0, 3.0), (0.0, 3.0))
EACH = 300


@pytest.mark.parametrize(
    ("start", "end", "outline", "apart"),
    [
        ((3.0, -1.0), (3.0, 5.0), SQUARE, 1.0),
        ((-1.0, 1.0), (5.0, 1.0), SQUARE, 0.0),
        ((0.5, 0.5), (1.5, 1.5), SQUARE, 0.0),
        ((2.0, 2.0), (4.0, 4.0), SQUARE, 0.0),
        ((5.0, 6.0), (9.0, 9.0), SQUARE, 5.0),
        ((3.0, 3.0), (3.0, 3.0), SQUARE, math.sqrt(2.0)),
        ((2.0, 2.0), (2.5, 2.5), ELL, 1.0),
        ((-1.0, 5.0), (5.0, 2.0), ELL, 2.0 / math.sqrt(5.0)),
        ((0.0, 1.0), (4.0, 1.0), ((2.0, 3.0),), 2.0),
        ((0.0, 1.0), (4.0, 1.0), ((2.0, 3.0), (2.0, 0.0)), 0.0),
    ],
)
def test_by_hand(start: Spot, end: Spot, outline: tuple[Spot, ...], apart: float) -> None:
    for way in ((start, end), (end, start)):
        for order in (outline, outline[::-1], (*outline[1:], outline[0])):
            assert line_to_outline(*way, order) == pytest.approx(apart)


@pytest.mark.parametrize("place", range(4))
def test_unknown_is_carried(place: int) -> None:
    numbers = [5.0, 6.0, 9.0, 9.0]
    numbers[place] = math.nan
    start, end = (numbers[0], numbers[1]), (numbers[2], numbers[3])
    assert math.isnan(line_to_outline(start, end, SQUARE))
    assert math.isnan(line_to_outline((5.0, 6.0), (9.0, 9.0), (*SQUARE, start, end)))


def test_an_outline_of_no_points_is_nowhere() -> None:
    assert math.isnan(line_to_outline((0.0, 0.0), (1.0, 1.0), ()))


def inside(spot: Spot, outline: tuple[Spot, ...]) -> bool:
    """By the angle under which the outline is seen all round."""
    turned = 0.0
    for one, other in zip(outline, (*outline[1:], outline[0]), strict=True):
        first = math.atan2(one[1] - spot[1], one[0] - spot[0])
        second = math.atan2(other[1] - spot[1], other[0] - spot[0])
        turned += math.remainder(second - first, 2 * math.pi)
    return abs(turned) > math.pi


def tried(start: Spot, end: Spot, outline: tuple[Spot, ...], steps: int = 60) -> float:
    """The least of distances between points along the line and points along the outline."""
    least = math.inf
    sides = list(zip(outline, (*outline[1:], outline[0]), strict=True))
    for step in range(steps + 1):
        spot = between(start, end, step / steps)
        if inside(spot, outline):
            return 0.0
        for one, other in sides:
            for part in range(steps + 1):
                least = min(least, math.dist(spot, between(one, other, part / steps)))
    return least


def between(one: Spot, other: Spot, share: float) -> Spot:
    return (one[0] + share * (other[0] - one[0]), one[1] + share * (other[1] - one[1]))


def star(draw: random.Random) -> tuple[Spot, ...]:
    """An outline that does not cross itself, as seen all round from its middle."""
    corners = draw.randint(3, 7)
    turns = [2 * math.pi * (number + draw.uniform(0.0, 0.8)) / corners for number in range(corners)]
    return tuple(
        (far * math.cos(turn), far * math.sin(turn))
        for turn in turns
        for far in (draw.uniform(0.3, 3.0),)
    )


def test_against_points_tried_one_by_one() -> None:
    draw, crossed = random.Random("outlines"), 0  # noqa: S311 - examples, not secrets
    for _ in range(EACH):
        outline = star(draw)
        start, end = ((draw.uniform(-5, 5), draw.uniform(-5, 5)) for _ in range(2))
        apart, sampled = line_to_outline(start, end, outline), tried(start, end, outline)
        crossed += apart == 0.0
        # No point that was tried is nearer, and one is as near but for half a step on both lines.
        assert apart <= sampled + 1e-9
        assert sampled <= apart + 10 * math.sqrt(2) / 60
        assert is_inside(start, outline) == inside(start, outline)
    assert EACH / 10 < crossed < EACH * 9 / 10
