"""The demo of its own day on a real server, and a real Chromium that opens it."""

from __future__ import annotations

import contextlib
import datetime
import functools
import socket
import threading
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, ConsoleMessage, Page, ViewportSize, sync_playwright
from waitress.server import create_server

from backspan.records.api import SiteRecord, open_record
from backspan.web.application import application_of
from backspan.web.workbench import Workbench
from tests.unit.core.rigs import LIBRARY
from tools.check_environment import chromium_problem, found_chromium
from tools.serve_demo import ITS_DAY, filled

NOON = datetime.datetime.combine(ITS_DAY, datetime.time(12), datetime.UTC)
SPEAKER = "MARLOW"
Opened = Callable[..., Page]
Looked = Callable[[str, int], Page]


@pytest.fixture(scope="session")
def chromium() -> Iterator[Browser]:
    """Chromium, without its sandbox: tests may run as root."""
    program = found_chromium()
    assert program is not None, chromium_problem(None)
    with sync_playwright() as playwright:
        one = playwright.chromium.launch(executable_path=program, args=["--no-sandbox"])
        yield one
        one.close()


@pytest.fixture
def record(tmp_path: Path) -> Iterator[SiteRecord]:
    """The record of the demo, on its own day."""
    filled(tmp_path / "demo", NOON)
    with open_record(tmp_path / "demo") as one:
        yield one


@contextlib.contextmanager
def served(record: SiteRecord) -> Iterator[str]:
    """Where the workbench of a record is served until the end."""
    pages = application_of(Workbench(record, LIBRARY, lambda: NOON))
    with socket.socket() as here:
        here.bind(("127.0.0.1", 0))
        server = create_server(pages, sockets=[here], threads=4)

        def run() -> None:
            # Its socket is closed under it at the end: that is how it stops.
            with contextlib.suppress(OSError):
                server.run()

        thread = threading.Thread(target=run, daemon=True)
        thread.start()
        yield f"http://127.0.0.1:{here.getsockname()[1]}"
        server.close()
        thread.join(10)


@pytest.fixture
def address(record: SiteRecord) -> Iterator[str]:
    """Where its workbench is served."""
    with served(record) as one:
        yield one


@pytest.fixture(scope="session")
def shown(tmp_path_factory: pytest.TempPathFactory) -> Iterator[str]:
    """Where a demo is served at which nobody writes: tests that only look share it."""
    folder = tmp_path_factory.mktemp("shown") / "demo"
    filled(folder, NOON)
    with open_record(folder) as record, served(record) as one:
        yield one


def _is_a_fault(said: ConsoleMessage) -> bool:
    """Not that a page tells what was refused: its status is no fault."""
    return said.type == "error" and "the server responded with a status of 4" not in said.text


@contextlib.contextmanager
def browsing(chromium: Browser) -> Iterator[Opened]:
    """Opens a page at a size, with or without script; whoever speaks is the owner's engineer.

    What the browser complains of, such as a script that the policy forbids, fails the test.
    """
    complaints: list[str] = []
    contexts = []

    def open_page(
        at: str, path: str, *, width: int = 1280, script: bool = True, speaker: str = SPEAKER
    ) -> Page:
        size: ViewportSize = {"width": width, "height": 800}
        context = chromium.new_context(viewport=size, java_script_enabled=script)
        contexts.append(context)
        page = context.new_page()
        page.on("pageerror", lambda error: complaints.append(str(error)))
        page.on(
            "console",
            lambda said: complaints.append(said.text) if _is_a_fault(said) else None,
        )
        page.goto(f"{at}/speaker?back={path}")
        page.click(f"button[value={speaker}]")
        page.wait_for_url(f"{at}{path}")
        return page

    yield open_page
    for context in contexts:
        context.close()
    assert complaints == []


@pytest.fixture
def opened(chromium: Browser, address: str) -> Iterator[Opened]:
    """Opens pages of a record of this test's own."""
    with browsing(chromium) as open_page:
        yield functools.partial(open_page, address)


@pytest.fixture
def looked(chromium: Browser, shown: str) -> Iterator[Looked]:
    """Opens pages that all tests share, at a width."""
    with browsing(chromium) as open_page:
        yield lambda path, width: open_page(shown, path, width=width)
