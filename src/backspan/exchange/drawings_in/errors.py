"""What is wrong with a drawing."""

from __future__ import annotations

from backspan.exchange.wrong import Wrong, WrongError


class DrawingError(WrongError):
    """A drawing that cannot be taken."""


def refused(where: str, found: str, expected: str) -> DrawingError:
    """The error of one thing that is wrong."""
    return DrawingError([Wrong(where, found, expected)])
