"""A drawing or picture under the plan of a roof: how it was laid there, and how that was checked.

Two points lay it, a third length between two others confirms it. What is kept are the points and
the lengths themselves: whether it holds is worked out from them each time, and never taken over.
"""

from __future__ import annotations

from dataclasses import dataclass

from backspan.core.model.evidence import StatedValue
from backspan.core.model.laid import Laid, LaidError, Pick, checked, lay, lay_to_scale
from backspan.core.model.site import Point
from backspan.core.numbers import root, surely_below
from backspan.core.quantities import Length, Ratio

#: How far a third length may be off: a part of it, or a length where that is more. A choice of this
#: project after common practice with a tape over a roof; no text says so.
TOLERANCE_PART: Ratio = 0.01
TOLERANCE_LENGTH: Length = 0.05
#: What lays or checks is no shorter: over less, the tolerance would be more than a fiftieth of it.
SHORTEST: Length = 2.5


@dataclass(frozen=True, slots=True)
class Underlay:
    """A file of evidence, laid by two points and checked by the length between two others.

    Places on a drawing are in metres by its unit; on a picture in its dots, from its upper left
    corner across and down. `places` are the words for where the two points lie on the roof.
    """

    file: str
    name: str
    picks: tuple[Pick, Pick]
    places: tuple[str, str]
    check: tuple[Point, Point]
    taped: StatedValue[float]
    difference: Length
    """Measured less taped, as it was found when it was signed."""
    unit: str | None = None
    """The unit a drawing was drawn in; none of a picture."""
    size: tuple[int, int] | None = None
    """Dots of a picture across and down; none of a drawing."""

    @property
    def is_picture(self) -> bool:
        """Whether it is a picture; else it is a drawing."""
        return self.size is not None


def tolerance(length: Length) -> Length:
    """How far a length of the roof may be off on what is laid on it."""
    return max(TOLERANCE_PART * length, TOLERANCE_LENGTH)


def laid_by(one: Pick, other: Pick, *, picture: bool) -> Laid:
    """Laid by two points; a drawing at its own scale.

    Raises LaidError where two points are one, NotToScaleError where a drawing's units are not what
    its points say.
    """
    if picture:
        return lay(one, other, y_down=True)
    apart = _apart(one.roof, other.roof)
    if not apart > 0.0:
        raise LaidError("the two points on the roof: found one spot, expected two apart")
    return lay_to_scale(one, other, within=tolerance(apart) / apart)


def laid_under(underlay: Underlay) -> Laid:
    """How it lies on the roof, its third length held against the tape anew.

    Raises LaidError where its points or lengths lay nothing.
    """
    laid = laid_by(*underlay.picks, picture=underlay.is_picture)
    _refuse_the_same(laid, underlay)
    _refuse_short("the two points", laid.scale * _apart(*(one.drawn for one in underlay.picks)))
    _refuse_short("the third length", laid.scale * _apart(*underlay.check))
    taped = underlay.taped.value
    if not taped > 0.0:
        raise LaidError(f"the third length: found {taped:.4g} m, expected more than 0")
    return checked(laid, underlay.check, taped=taped, tolerance=tolerance(taped))


def _refuse_the_same(laid: Laid, underlay: Underlay) -> None:
    """Raise LaidError where the third length runs beside the two points that laid it.

    What two points fit, the length between them fits too, however wrong both are.
    """
    drawn = [one.drawn for one in underlay.picks]
    near = tolerance(laid.scale * _apart(*drawn))
    if all(any(laid.scale * _apart(one, at) <= near for at in drawn) for one in underlay.check):
        raise LaidError(
            "the third length: found it between the two points by which it was laid, expected it"
            " between others: a length that was used to lay it shows nothing"
        )


def _refuse_short(what: str, length: Length) -> None:
    if surely_below(length, limit=SHORTEST):
        raise LaidError(
            f"{what}: found {length:.4g} m on what was laid, expected {SHORTEST:g} m at least: over"
            " less, what a tape may be off is more than a wrong scale shows"
        )


def _apart(one: Point, other: Point) -> Length:
    across, up = other[0] - one[0], other[1] - one[1]
    return root(across * across + up * up)
