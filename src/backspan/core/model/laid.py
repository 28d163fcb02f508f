"""A drawing or a picture laid on a roof: turned, scaled and moved so that two points fit.

Two points always fit. Whether the whole does is shown by a third length, between points that were
not used, held against the tape: until then nothing may be read off it.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from backspan.core.errors import BackspanError
from backspan.core.model.site import Point
from backspan.core.numbers import root, surely_below
from backspan.core.quantities import Length, Ratio

#: A check over a shorter part than this of what was laid shows no wrong scale.
SHORTEST_CHECK: Ratio = 0.25


class LaidError(BackspanError, ValueError):
    """Points or lengths by which nothing can be laid or checked."""


class NotConfirmedError(BackspanError, RuntimeError):
    """Something was to be read off a drawing that no third length has confirmed."""


class NotToScaleError(LaidError):
    """A drawing whose two points lie otherwise apart on the roof than its own units say."""


@dataclass(frozen=True, slots=True)
class Pick:
    """A point picked on the drawing or picture, and the same point of the roof."""

    drawn: Point
    roof: Point


@dataclass(frozen=True, slots=True)
class Check:
    """A length as measured on what was laid, as the tape has it, and how far it may be off."""

    measured: Length
    taped: Length
    tolerance: Length

    @property
    def difference(self) -> Length:
        """Measured less taped."""
        return self.measured - self.taped

    @property
    def holds(self) -> bool:
        """Whether they differ by no more than the tolerance."""
        return abs(self.difference) <= self.tolerance


@dataclass(frozen=True, slots=True)
class Laid:
    """Something laid on a roof by two of its points; `check` is the third length, once taped.

    A point x, y of it lies on the roof at `along` x - `aside` y, `aside` x + `along` y, moved by
    `shift`; of a picture, whose y runs down the screen, after y is turned about.
    """

    along: Ratio
    aside: Ratio
    shift: Point
    picks: tuple[Point, Point]
    y_down: bool = False
    check: Check | None = None

    @property
    def scale(self) -> Ratio:
        """Metres of the roof in a unit of the drawing or picture."""
        return root(self.along * self.along + self.aside * self.aside)

    @property
    def confirmed(self) -> bool:
        """Whether a third length was taped and fits."""
        return self.check is not None and self.check.holds

    def on_roof(self, at: Point) -> Point:
        """Where a point of it lies on the roof. Raises NotConfirmedError before it is confirmed."""
        self._refuse_unconfirmed()
        return _placed(self, at)

    def on_drawing(self, at: Point) -> Point:
        """Where a point of the roof lies on it. Raises NotConfirmedError before it is confirmed."""
        self._refuse_unconfirmed()
        x, y = at[0] - self.shift[0], at[1] - self.shift[1]
        square = self.along * self.along + self.aside * self.aside
        back = (self.along * y - self.aside * x) / square
        return (self.along * x + self.aside * y) / square, -back if self.y_down else back

    def _refuse_unconfirmed(self) -> None:
        if self.check is None:
            found = "no third length was taped"
        elif not self.check.holds:
            found = f"its third length is {self.check.difference:+.4g} m off"
            found += f", and may be {self.check.tolerance:.4g} m off"
        else:
            return
        raise NotConfirmedError(
            f"the drawing on the roof is not confirmed: found that {found}; expected a length"
            " between two further points that agrees with the tape"
        )


def lay(one: Pick, other: Pick, *, y_down: bool = False) -> Laid:
    """Laid by two points of the roof. Raises LaidError where two of them are one.

    `y_down` is said of a picture, whose y is counted from its top.
    """
    drawn, roof = _between(one.drawn, other.drawn, y_down=y_down), _between(one.roof, other.roof)
    _refuse_one_spot(drawn, "on the drawing")
    _refuse_one_spot(roof, "on the roof")
    square = drawn[0] * drawn[0] + drawn[1] * drawn[1]
    along = (drawn[0] * roof[0] + drawn[1] * roof[1]) / square
    aside = (drawn[0] * roof[1] - drawn[1] * roof[0]) / square
    return _moved(along, aside, (one, other), y_down=y_down)


def lay_by_length(
    one: Point, other: Point, *, taped: Length, at: Point = (0.0, 0.0), y_down: bool = False
) -> Laid:
    """Laid by the taped length between two points: the first lies `at`, up stays up.

    Raises LaidError where the points are one, or the length is none.
    """
    drawn = _between(one, other, y_down=y_down)
    _refuse_one_spot(drawn, "on the drawing")
    if not taped > 0.0:
        raise LaidError(f"the taped length: found {taped:.4g} m, expected more than 0")
    scale = taped / _length(drawn)
    end = at[0] + drawn[0] * scale, at[1] + drawn[1] * scale
    return _moved(scale, 0.0, (Pick(one, at), Pick(other, end)), y_down=y_down)


def lay_to_scale(one: Pick, other: Pick, *, within: Ratio) -> Laid:
    """Laid at a drawing's own scale, in metres, half-way between what the two points say.

    Raises NotToScaleError where the points lie otherwise apart on the roof than on the drawing, by
    more than this part of it: it is not to scale, or its units are others.
    """
    found = lay(one, other)
    scale = found.scale
    if not abs(scale - 1.0) <= within:
        drawn = _length(_between(one.drawn, other.drawn))
        roof = _length(_between(one.roof, other.roof))
        raise NotToScaleError(
            f"the drawing's scale: found its two points {drawn:.5g} m apart by its own units and"
            f" {roof:.5g} m apart on the roof ({scale:.5g} times as far); expected the same within"
            f" {within:.4g} of it: it is not to scale, or was drawn in other units"
        )
    return _moved(found.along / scale, found.aside / scale, (one, other), y_down=False)


def checked(laid: Laid, between: tuple[Point, Point], *, taped: Length, tolerance: Length) -> Laid:
    """The same with a third length between two further points of the drawing, as it was taped.

    Its `check` has the difference; it is confirmed where that is within the tolerance. Raises
    LaidError where the two points are those it was laid by, or too near to show anything.
    """
    if not tolerance >= 0.0 or not taped > 0.0:
        told = f"{taped:.4g} m within {tolerance:.4g} m"
        raise LaidError(f"the third length: found {told}, expected more than 0 within 0 or more")
    if set(between) == set(laid.picks):
        raise LaidError(
            "the third length: found the two points by which it was laid, expected two further ones"
        )
    measured = _length(_between(*(_placed(laid, one) for one in between)))
    base = _length(_between(*(_placed(laid, one) for one in laid.picks)))
    if surely_below(measured, limit=SHORTEST_CHECK * base):
        raise LaidError(
            f"the third length: found {measured:.4g} m on the drawing, expected a quarter at least"
            f" of the {base:.4g} m by which it was laid: a short length shows no wrong scale"
        )
    return replace(laid, check=Check(measured, taped, tolerance))


def _moved(along: Ratio, aside: Ratio, picks: Sequence[Pick], *, y_down: bool) -> Laid:
    """Turned and scaled so, and moved so that the middle of the picks fits."""
    one, other = picks
    unmoved = Laid(along, aside, (0.0, 0.0), (one.drawn, other.drawn), y_down)
    there = [_placed(unmoved, each.drawn) for each in picks]
    x, y = (
        ((one.roof[axis] - there[0][axis]) + (other.roof[axis] - there[1][axis])) / 2
        for axis in (0, 1)
    )
    return replace(unmoved, shift=(x, y))


def _placed(laid: Laid, at: Point) -> Point:
    x, y = at[0], -at[1] if laid.y_down else at[1]
    return (
        laid.along * x - laid.aside * y + laid.shift[0],
        laid.aside * x + laid.along * y + laid.shift[1],
    )


def _refuse_one_spot(way: Point, where: str) -> None:
    if not _length(way) > 0.0:
        raise LaidError(f"the two points {where}: found one spot, expected two apart")


def _between(one: Point, other: Point, *, y_down: bool = False) -> Point:
    up = other[1] - one[1]
    return other[0] - one[0], -up if y_down else up


def _length(way: Point) -> Length:
    return root(way[0] * way[0] + way[1] * way[1])
