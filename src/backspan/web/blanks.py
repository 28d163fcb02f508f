"""The blanks of a drop's stop list with their numbers: the same on the sheet and on its page."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from backspan.core.ledger.stop_list import stop_list
from backspan.papers import sheet_code
from backspan.web.shown import Shown, shown_items
from backspan.web.workbench import DayState


@dataclass(frozen=True, slots=True)
class Blank:
    """A value that may be written down: its number, such as "4.2", and the value."""

    number: str
    value: Shown

    @property
    def field(self) -> str:
        """How the page's form names it."""
        return f"value-{self.number}"

    @property
    def title(self) -> str:
        """What errors name it by."""
        return " ".join(one for one in (self.number, self.value.name, self.value.where) if one)


@dataclass(frozen=True, slots=True)
class BlankItem:
    """An item of the stop list with its blanks."""

    number: int
    title: str
    blanks: tuple[Blank, ...]


def blank_items(state: DayState, drop: str) -> tuple[BlankItem, ...]:
    """The stop list of a drop as blanks. Raises as `stop_list` and the review do."""
    project = state.folded.project
    items = shown_items(stop_list(project, drop, state.review(drop)), project)
    return tuple(
        BlankItem(
            one.number,
            one.title,
            tuple(Blank(f"{one.number}.{at}", value) for at, value in enumerate(one.values, 1)),
        )
        for one in items
    )


def code_of(items: Iterable[BlankItem]) -> str:
    """The code of a sheet with these blanks: another rig, other numbers, another code."""
    return sheet_code(f"{one.number} {one.value.key}" for item in items for one in item.blanks)
