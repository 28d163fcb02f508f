"""Things of a site that have an id, and one of them put in the place of another."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Protocol, TypeVar


class Named(Protocol):
    """A thing of the site that has an id."""

    @property
    def id(self) -> str:
        """Its id."""


T = TypeVar("T", bound=Named)


def in_place(there: Iterable[T], new: T) -> tuple[T, ...]:
    """The things with a new one in the place of the one that has its id."""
    return tuple(new if one.id == new.id else one for one in there)
