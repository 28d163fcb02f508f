"""The error of this room."""

from collections.abc import Sequence

from backspan.core.errors import BackspanError


class QuantityError(BackspanError, ValueError):
    """A quantity that cannot be read or shown as asked.

    `found` is what was given, `expected` the forms that would do, `reason` what is wrong.
    """

    def __init__(self, *, reason: str, found: str, expected: Sequence[str]) -> None:
        self.reason = reason
        self.found = found
        self.expected = tuple(expected)
        super().__init__(f"found {found!r}: {reason}; write for example {', '.join(self.expected)}")
