"""A whole site as one file that is read in twenty years, and the proof of such a file alone."""

from backspan.records.archive.errors import (
    ArchiveDamagedError,
    ArchiveError,
    ContentError,
    EvidenceAbsentError,
    WritingError,
)
from backspan.records.archive.reading import Archive, looks_like_archive, read_archive
from backspan.records.archive.report import Damage, Report
from backspan.records.archive.verify import verify, verify_stream
from backspan.records.archive.writing import Content, write_archive

__all__ = [
    "Archive",
    "ArchiveDamagedError",
    "ArchiveError",
    "Content",
    "ContentError",
    "Damage",
    "EvidenceAbsentError",
    "Report",
    "WritingError",
    "looks_like_archive",
    "read_archive",
    "verify",
    "verify_stream",
    "write_archive",
]
