"""One made-up archive, written once."""

from __future__ import annotations

from pathlib import Path

import pytest

from backspan.records.archive import write_archive
from tests.unit.records.archive.content import content_of


@pytest.fixture(scope="session")
def whole(tmp_path_factory: pytest.TempPathFactory) -> bytes:
    """The bytes of an archive of 200 entries."""
    path: Path = tmp_path_factory.mktemp("archive") / "site.tar"
    write_archive(path, content_of())
    return path.read_bytes()
