"""What a drop would answer with another reach, backspan, count or hoist: tried, never recorded.

The site is copied with the changed values in the place of the stated ones, each with the evidence
it has, and reviewed like any other. Nothing here can write an entry.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from typing import Any

from backspan.core.errors import BackspanError, quoted
from backspan.core.findings import Review
from backspan.core.ledger.document import Path, at, checked, put
from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop
from backspan.core.quantities import LENGTH, TAPE_STEP, Style, display
from backspan.core.review.run import case_of, review_findings
from backspan.core.wire import from_data
from backspan.web.workbench import DayState

_MOST = 4.0
_LARGEST = 10_000
#: Steps of a path before it is within its drop.
_OF_DROP = 2


class TryError(BackspanError):
    """A value that cannot be tried; says what was found and what was expected."""


@dataclass(frozen=True, slots=True)
class Slider:
    """A value that may be tried: its name in the form, where it stands, its range in steps."""

    name: str
    title: str
    where: str
    path: Path
    now: int
    most: int
    step: float | None
    """What a step is, in metres; None for a count."""

    def text(self, steps: int, style: Style) -> str:
        """So many steps as people read them."""
        return str(steps) if self.step is None else display(steps * self.step, LENGTH, style)


@dataclass(frozen=True, slots=True)
class Tried:
    """What was tried: each slider with its steps, the hoist of each point, the review of it."""

    sliders: tuple[tuple[Slider, int], ...]
    hoists: tuple[tuple[str, str], ...]
    review: Review


def sliders(project: Project, drop: str) -> Iterator[Slider]:
    """What may be tried of a drop's rig: what is stated of reach, backspan and pieces."""
    step = TAPE_STEP[project.units]
    rig = next(one.rig for one in project.drops if one.id == drop)
    for point in () if rig is None else rig.suspension_points:
        beam = point.counterweighted_beam
        if beam is None:
            continue
        place = ("drops", drop, "rig", "suspension_points", point.id, "counterweighted_beam")
        for name in ("reach", "backspan"):
            stated = getattr(beam, name)
            if stated is not None:
                now = round(stated.value / step)
                most = max(round(_MOST * now), 1)
                yield Slider(f"{name}-{point.id}", name, point.id, (*place, name), now, most, step)
        for number, group in enumerate(beam.stack.groups):
            path = (*place, "stack", "groups", str(number), "count")
            now = group.count.value
            title = f"pieces, lot {group.piece}"
            name = f"pieces-{point.id}-{number}"
            yield Slider(name, title, point.id, path, now, max(2 * now, 10), None)


def tried(state: DayState, drop: str, said: Mapping[str, str]) -> Tried:
    """The review of a drop with what a form says in the place of what is stated.

    Raises TryError for what is no number of steps or no hoist of the kit.
    """
    project = state.described
    there = {one["id"]: one for one in state.folded.data["drops"]}
    data, moved = there[drop], []
    for slider in sliders(project, drop):
        steps = _steps(said.get(slider.name, ""), slider)
        moved.append((slider, steps))
        if steps != slider.now:
            value = steps if slider.step is None else steps * slider.step
            data = _with(data, slider.path, value)
    hoists = tuple(_hoists(project, drop, said))
    hangs = dict(_hoists(project, drop, {}))
    for point, hoist in hoists:
        if hoist == hangs[point]:
            continue
        path = ("drops", drop, "rig", "suspension_points", point, "hoist")
        data = put(data, path[_OF_DROP:], checked(path, hoist))
    if data is there[drop]:
        return Tried(tuple(moved), hoists, state.review(drop))
    new = from_data(Drop, data)
    drops = tuple(new if one.id == drop else one for one in project.drops)
    site, kept = replace(project, drops=drops), state.answered
    case = case_of(site, drop, state.library, on=state.on, kept=kept)
    return Tried(tuple(moved), hoists, review_findings(case))


def _with(data: Any, path: Path, value: float) -> Any:
    stated = {**at(data, path[_OF_DROP:]), "value": value, "text": ""}
    return put(data, path[_OF_DROP:], checked(path, stated))


def _steps(text: str, slider: Slider) -> int:
    if not text:
        return slider.now
    if not text.isdigit() or not 1 <= int(text) <= _LARGEST:
        raise TryError(
            f"{slider.title} {slider.where}: found {quoted(text)}, expected a whole number of steps"
        )
    return int(text)


def _hoists(project: Project, drop: str, said: Mapping[str, str]) -> Iterator[tuple[str, str]]:
    rig = next(one.rig for one in project.drops if one.id == drop)
    there = {one.id for one in project.kit.hoists}
    for point in () if rig is None else rig.suspension_points:
        asked = said.get(f"hoist-{point.id}", "") or point.hoist
        if asked != point.hoist and asked not in there:
            raise TryError(f"found the hoist {quoted(asked)}, expected one of the kit")
        yield point.id, asked
