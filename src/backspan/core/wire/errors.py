"""The error of this room."""

from __future__ import annotations

from backspan.core.errors import BackspanError

Step = str | int


class WireError(BackspanError, ValueError):
    """Data that cannot be written or read as asked; `path` leads to the place in it."""

    def __init__(self, reason: str, path: tuple[Step, ...] = ()) -> None:
        self.reason = reason
        self.path = path
        place = ".".join(str(step) for step in path) or "the top"
        super().__init__(f"at {place}: {reason}")

    def within(self, step: Step) -> WireError:
        """The same error seen from one level further out."""
        return WireError(self.reason, (step, *self.path))
