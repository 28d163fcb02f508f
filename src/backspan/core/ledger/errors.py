"""What can be wrong with an entry, or with where it stands in its chain."""

from __future__ import annotations

from backspan.core.errors import BackspanError


class LedgerError(BackspanError, ValueError):
    """Something of a ledger cannot be taken as it is."""


class EntryError(LedgerError):
    """Bytes that are no entry this program can read; says what was found and expected."""


class ChainError(LedgerError):
    """An entry that does not follow on what is there."""


class GapError(ChainError):
    """An entry whose forerunners are not here yet: it is taken once they came."""


class ForkError(ChainError):
    """A second entry in a place of a device's chain that is taken: one of them was changed."""
