"""The blanks of a drop's stop list with their numbers: the same on the sheet and on its page."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from backspan.core.ledger import bodies
from backspan.core.ledger.stop_list import ROWS
from backspan.papers import sheet_code
from backspan.web.shown import Shown, shown_items
from backspan.web.workbench import DayState

#: Items that ask for nothing on any roof: what papers and dates say of them is judged.
_OF_PAPERS = frozenset(one.id for one in ROWS if not one.fields)


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
    """An item of the stop list with its blanks; `of_papers` where papers tell it, not the roof."""

    number: int
    title: str
    blanks: tuple[Blank, ...]
    of_papers: bool


def blank_items(state: DayState, drop: str) -> tuple[BlankItem, ...]:
    """The stop list of a drop as blanks. Raises as `stop_list` and the review do."""
    project = state.described
    items = shown_items(state.stop_list(drop), project)
    return tuple(
        BlankItem(
            one.number,
            one.title,
            tuple(Blank(f"{one.number}.{at}", value) for at, value in enumerate(one.values, 1)),
            one.id in _OF_PAPERS,
        )
        for one in items
    )


def code_of(state: DayState, drop: str, items: Iterable[BlankItem]) -> str:
    """The code of a drop's sheet: other blanks, or a rig set up anew, have another code.

    What was found of a rig that stood there before is nothing that was found of this one.
    """
    set_up = [
        one.hash
        for one in state.entries
        if isinstance(one.body, bodies.RigSetUp) and one.body.drop == drop
    ]
    blanks = [f"{one.number} {one.value.key}" for item in items for one in item.blanks]
    return sheet_code([*set_up[-1:], *blanks])
