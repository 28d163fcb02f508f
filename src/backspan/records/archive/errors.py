"""What can be wrong with an archive, or with writing one."""

from __future__ import annotations

from backspan.records.archive.report import Damage
from backspan.records.errors import RecordsError

_SHOWN = 5


class ArchiveError(RecordsError, ValueError):
    """An archive cannot be written or read as it is."""


class WritingError(ArchiveError):
    """The archive could not be written; nothing is left where it was to stand."""


class ContentError(ArchiveError):
    """What was to be written does not prove itself: an archive of it would be no proof."""


class EvidenceAbsentError(ContentError):
    """Entries name evidence that is not there; `hashes` are all of it, in order."""

    def __init__(self, hashes: tuple[str, ...]) -> None:
        self.hashes = hashes
        listed = ", ".join(hashes)
        super().__init__(
            f"evidence: {len(hashes)} of the files that entries name are not there ({listed});"
            " expected every one, since an archive without them is no proof"
        )


class ArchiveDamagedError(ArchiveError):
    """A file that is no archive as it was written; `damage` says what was found, and where."""

    def __init__(self, damage: tuple[Damage, ...]) -> None:
        self.damage = damage
        shown = "; ".join(str(one) for one in damage[:_SHOWN])
        more = f"; and {len(damage) - _SHOWN} more" if len(damage) > _SHOWN else ""
        super().__init__(f"archive: {shown}{more}")
