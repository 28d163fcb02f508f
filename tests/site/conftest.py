"""A record of the case rig and a browser on it; whoever speaks is the owner's engineer."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from backspan.records.api import SiteRecord, make_record
from tests.site.bench import Browser, browser, made


@pytest.fixture
def record(tmp_path: Path) -> Iterator[SiteRecord]:
    with made(tmp_path / "site") as one:
        yield one


@pytest.fixture
def silent(record: SiteRecord) -> Browser:
    """A browser at which nobody speaks."""
    return browser(record)


@pytest.fixture
def pages(silent: Browser) -> Browser:
    """A browser at which the owner's engineer speaks."""
    silent.post("/speaker", person="MT")
    return silent


@pytest.fixture
def empty(tmp_path: Path) -> Iterator[SiteRecord]:
    with make_record(tmp_path / "new", "Teal House") as one:
        yield one


@pytest.fixture
def new(empty: SiteRecord) -> Browser:
    return browser(empty)
