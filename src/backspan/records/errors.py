"""What can go wrong where records are kept; each says where, what was found, what was expected."""

from __future__ import annotations

from backspan.core.errors import BackspanError


class RecordsError(BackspanError):
    """Something of the records cannot be read or kept."""


class StoreError(RecordsError):
    """A ledger that cannot do what it was asked; `where` is its file or its server."""

    def __init__(self, where: str, *, found: str, expected: str) -> None:
        super().__init__(f"{where}: found {found}, expected {expected}")
        self.where = where
        self.found = found
        self.expected = expected


class StoreMissingError(StoreError):
    """No ledger is there, and none was to be made."""


class NotAStoreError(StoreError):
    """What is there is no ledger."""


class StoreFormatError(StoreError):
    """A ledger that a newer program made."""


class StoreSiteError(StoreError):
    """A ledger of another site, or a new one without a name for its site."""


class StoreDamagedError(StoreError):
    """A ledger whose content is not what was written."""


class StoreFullError(StoreError):
    """No room is left; nothing of what was to be kept is there."""


class StoreLockedError(StoreError):
    """Another program kept the ledger locked for longer than we wait; nothing was kept."""


class StoreUnreachableError(StoreError):
    """The server does not answer.

    Where it stopped while entries were kept they may be there or not; to send them again is safe.
    """


class MomentError(RecordsError):
    """A time that is no day with a time and its offset."""


class WriterClosedError(RecordsError):
    """Entries handed to a writer that was closed: nothing of them is kept."""


class EvidenceError(RecordsError):
    """A file of evidence that cannot be kept or read."""


class EvidenceMissingError(EvidenceError):
    """No evidence of that hash is here."""


class EvidenceDamagedError(EvidenceError):
    """A file of evidence whose content is not what its name says."""


class EvidenceFullError(EvidenceError):
    """No room is left for a file of evidence; nothing of it is there."""


class SigningKeyError(RecordsError):
    """A key file that cannot be made, is no key, or can be read by others."""


class FolderError(RecordsError):
    """A folder that cannot hold the record of a site."""


class FolderTakenError(FolderError):
    """A folder in which something is already, where a new one was to be made."""


class NoRecordError(FolderError):
    """A folder without the record of a site."""
