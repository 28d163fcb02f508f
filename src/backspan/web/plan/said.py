"""What a form of the roof plan said: places in metres from a pointer, or lengths that were typed.

A pointer sends places on the plan and how near is near enough; both ways of saying a place end in
the same point, so that they become the same act.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from backspan.core.drafting import DraftError, snapped
from backspan.core.drafting.acting import edge_of
from backspan.core.errors import quoted
from backspan.core.model.project import Project
from backspan.core.model.site import Point, Roof
from backspan.core.model.walked import on_plan
from backspan.core.quantities import LENGTH, Length, QuantityError, parse
from backspan.drawings.things import path_in

_LONGEST = 100
#: A pointer is near enough within this, in metres, where it says nothing else.
_NEAR: Length = 0.15
_FURTHEST: Length = 10_000.0


@dataclass(frozen=True, slots=True)
class Said:
    """What a form said, on a roof of the site as drawn so far."""

    form: Mapping[str, str]
    project: Project
    roof: Roof

    def text(self, name: str, told: str) -> str:
        """A text that has to be there. Raises DraftError where it is blank."""
        found = self.form.get(name, "").strip()
        if not found:
            raise DraftError(f"{told}: found nothing, expected it")
        if len(found) > _LONGEST or not found.isprintable():
            raise DraftError(f"{told}: found {quoted(found)}, expected one line of 100 signs")
        return found

    def length(self, name: str, told: str) -> Length:
        """A length that was typed. Raises DraftError where it is none."""
        try:
            return parse(self.text(name, told), LENGTH)
        except QuantityError as error:
            raise DraftError(f"{told}: {error}") from error

    def has(self, *names: str) -> bool:
        """Whether all of these fields say something."""
        return all(self.form.get(name, "").strip() for name in names)

    @property
    def path(self) -> tuple[str, ...]:
        """The thing that the act is about, by its path in the project."""
        return path_in(self.form.get("of", ""))

    @property
    def near(self) -> Length:
        """How near to a thing counts as meant."""
        return abs(metres(self.form["near"])) if self.has("near") else _NEAR

    def pointed(self, number: str = "") -> Point:
        """A place in metres, as a pointer sends it. Raises DraftError where it is none."""
        names = f"x{number}", f"y{number}"
        x, y = (metres(self.text(name, "Where on the plan")) for name in names)
        return x, y

    def place(self, number: str = "") -> Point:
        """A place on the roof: pointed at, seen from an edge, or by its coordinates."""
        if self.has(f"x{number}", f"y{number}"):
            return snapped(
                self.roof, self.pointed(number), within=self.near, style=self.project.units
            ).at
        if self.has("edge"):
            edge = edge_of(self.roof, self.text("edge", "Seen from edge"))
            along, back = self.length("along", "Along it"), self.length("back", "Back from it")
            return on_plan(edge, along=along, back=back)
        return self.length("across", "Across the plan"), self.length("up", "Up the plan")


def metres(text: str) -> Length:
    """A place as a pointer sends it. Raises DraftError for anything else."""
    try:
        found = float(text)
    except ValueError as error:
        raise DraftError(f"found {quoted(text)}, expected a place in metres") from error
    if not abs(found) <= _FURTHEST:
        raise DraftError(f"found a place {quoted(text)} m away, expected one on the site")
    return found


def next_mark(taken: Iterable[str], like: str) -> str:
    """A mark that none has: the first letters of `like` with the next number, as wide as it."""
    there = set(taken)
    stem = like.rstrip("0123456789") or like
    wide = len(like) - len(stem) or 1
    number = 1 + max((int(one[len(stem) :]) for one in there if _is_numbered(one, stem)), default=0)
    found = f"{stem}{number:0{wide}}"
    while found in there:
        number += 1
        found = f"{stem}{number:0{wide}}"
    return found


def next_anchor(project: Project) -> str:
    """The mark of one more anchor: like those there are, else A01."""
    there = [one.id for roof in project.site.roofs for one in roof.anchors]
    return next_mark(there, there[-1] if there else "A01")


def next_drop(project: Project, edge: str) -> str:
    """The mark of one more drop over an edge: like those there, else the edge's letter."""
    there = [one.id for one in project.drops]
    over = [one.id for one in project.drops if one.edge == edge]
    return next_mark(there, over[-1] if over else f"{edge}1")


def _is_numbered(name: str, stem: str) -> bool:
    rest = name[len(stem) :]
    return name.startswith(stem) and rest.isascii() and rest.isdigit()
