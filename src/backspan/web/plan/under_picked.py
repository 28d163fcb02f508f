"""What a form says of two points and a third length: where they lie on a file and on the roof."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace

from backspan.core.errors import quoted
from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.model.laid import Check, LaidError, Pick, lay_by_length
from backspan.core.model.project import Project
from backspan.core.model.site import Point, Roof
from backspan.core.model.underlay import Underlay, laid_under
from backspan.core.model.walked import on_plan
from backspan.core.quantities import LENGTH, Length, QuantityError, display, parse
from backspan.web.pages.common import FormError
from backspan.web.plan.under_file import Given

#: The points of a form by their numbers, as a person calls them.
POINTS = (
    ("1", "first point"),
    ("2", "second point"),
    ("3", "check, from"),
    ("4", "check, to"),
)
ORIGIN, APART = "origin:", "apart:"
_FURTHEST = 1e9
#: What differs by less is told as the same.
_SAME: Length = 0.0005
_CALLED = dict(POINTS)


@dataclass(frozen=True, slots=True)
class Placed:
    """A point of the roof, and the words for it."""

    at: Point
    words: str


@dataclass(frozen=True, slots=True)
class Answered:
    """What came of a check, in words: both lengths, how far they differ, how far they may."""

    holds: bool
    on_it: str
    taped: str
    off: str
    may: str

    @property
    def text(self) -> str:
        """It as a sentence."""
        return (
            f"The third length: found {self.on_it} on what was laid and {self.taped} by the tape,"
            f" {self.off}; expected no more than {self.may} between them"
        )


def places_on(roof: Roof) -> Iterator[tuple[str, str]]:
    """What a point of the roof may be told by: its word in a form, and its name."""
    yield from ((f"corner:{one}", f"corner {one}") for one in range(1, len(roof.outline) + 1))
    yield from ((f"anchor:{one.id}", f"anchor {one.id}") for one in roof.anchors)
    yield from ((f"edge:{one.id}", f"from edge {one.id}") for one in roof.edges)
    yield ORIGIN, "0, 0 of the plan"


def underlay_of_form(
    form: Mapping[str, str], given: Given, roof: Roof, *, by: str | None, at: str
) -> Underlay:
    """The underlay that a form describes; its difference is worked out.

    Raises FormError for what is blank or leads nowhere, LaidError for what lays nothing.
    """
    drawn = [_on_file(form, given, number) for number, _ in POINTS]
    first = _on_roof(form, roof, "1")
    if form.get("at2") == APART:
        second = _taped_from(form, (drawn[0], drawn[1]), first, given)
    else:
        second = _on_roof(form, roof, "2")
    text = form.get("taped", "").strip()
    length = _length(form, "taped", "The third length")
    taped = StatedValue(length, None, Evidence.MEASURED, by, at, text=text)
    found = Underlay(
        given.file,
        given.name,
        (Pick(drawn[0], first.at), Pick(drawn[1], second.at)),
        (first.words, second.words),
        (drawn[2], drawn[3]),
        taped,
        0.0,
        None if given.drawn is None else given.unit,
        given.size,
    )
    return with_difference(found)


def with_difference(found: Underlay) -> Underlay:
    """The same with the difference that its third length shows."""
    return replace(found, difference=check_of(found).difference)


def check_of(found: Underlay) -> Check:
    """Its third length held against the tape. Raises LaidError where it lays nothing."""
    check = laid_under(found).check
    if check is None:
        raise LaidError("the third length: found none, expected one that was taped")
    return check


def answered(check: Check, project: Project) -> Answered:
    """A check in words."""

    def told(length: Length) -> str:
        return display(length, LENGTH, project.units)

    off = abs(check.difference)
    same = off < _SAME
    way = "longer" if check.difference > 0.0 else "shorter"
    return Answered(
        check.holds,
        told(check.measured),
        told(check.taped),
        "no difference" if same else f"{told(off)} ({1000 * off:.0f} mm) {way} on it",
        f"{told(check.tolerance)} ({1000 * check.tolerance:.0f} mm)",
    )


def _on_file(form: Mapping[str, str], given: Given, number: str) -> Point:
    """A point on the file: a drawing's in metres, a picture's in dots."""
    x, y = (_number(form, f"{axis}{number}", f"{_CALLED[number]}, {axis}") for axis in "xy")
    if given.size is not None:
        across, down = given.size
        if not (0.0 <= x <= across and 0.0 <= y <= down):
            raise FormError(
                f"The {_CALLED[number]}: found {x:g}, {y:g}, expected a place on the picture, 0, 0"
                f" to {across}, {down}"
            )
    return x * given.factor, y * given.factor


def _number(form: Mapping[str, str], name: str, told: str) -> float:
    text = form.get(name, "").strip()
    expected = "expected a number, as it stands on the drawing"
    if not text:
        raise FormError(f"The {told}: found nothing, {expected}")
    try:
        found = float(text)
    except ValueError as error:
        raise FormError(f"The {told}: found {quoted(text)}, {expected}") from error
    if not abs(found) <= _FURTHEST:
        raise FormError(f"The {told}: found {quoted(text)}, {expected}")
    return found


def _length(form: Mapping[str, str], name: str, told: str) -> Length:
    text = form.get(name, "").strip()
    if not text:
        raise FormError(f"{told}: found nothing, expected a length with its unit")
    try:
        return parse(text, LENGTH)
    except QuantityError as error:
        raise FormError(f"{told}: {error}") from error


def _on_roof(form: Mapping[str, str], roof: Roof, number: str) -> Placed:
    """Where a point lies on the roof. Raises FormError where the form does not say."""
    word = form.get(f"at{number}", "")
    kind, _, name = word.partition(":")
    words = dict(places_on(roof)).get(word)
    if words is None:
        names = ", ".join(name for _, name in places_on(roof))
        raise FormError(
            f"Where the {_CALLED[number]} lies on the roof: found {quoted(word)}, expected one of:"
            f" {names}"
        )
    match kind:
        case "corner":
            return Placed(roof.outline[int(name) - 1], words)
        case "anchor":
            return Placed(next(one.at for one in roof.anchors if one.id == name), words)
        case "edge":
            edge = next(one for one in roof.edges if one.id == name)
            told = f"The {_CALLED[number]}"
            along = _length(form, f"along{number}", f"{told}, along edge {name}")
            back = _length(form, f"back{number}", f"{told}, back from edge {name}")
            at = on_plan(edge, along=along, back=back)
            ways = (form[f"{one}{number}"].strip() for one in ("along", "back"))
            return Placed(at, "{} along and {} back from edge ".format(*ways) + name)
        case _:
            return Placed((0.0, 0.0), words)


def _taped_from(
    form: Mapping[str, str], drawn: tuple[Point, Point], first: Placed, given: Given
) -> Placed:
    """The second point by its taped distance from the first: what is up on the file stays up."""
    taped = _length(form, "apart", "The distance between the two points")
    one, other = drawn
    laid = lay_by_length(one, other, taped=taped, at=first.at, y_down=given.size is not None)
    across, up = other[0] - one[0], other[1] - one[1]
    up = -up if laid.y_down else up
    at = first.at[0] + laid.along * across, first.at[1] + laid.along * up
    return Placed(at, f"{form['apart'].strip()} from the first")
