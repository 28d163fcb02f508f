"""The workbench in a real browser over the demo: how long pages and a slider's answer take.

Each page is opened anew again and again, from the click to the browser's load event; the slider is
timed from its movement to the new answer on the page. Everything runs on this machine, the browser
and the server on the same cores.
"""

from __future__ import annotations

import datetime
import socket
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from playwright.sync_api import Page, sync_playwright
from waitress.server import create_server

from backspan.exchange.files import load_rule_library
from backspan.records.api import open_record
from backspan.web.application import application_of, seldom_collected
from backspan.web.workbench import Workbench
from tests.chromium.test_pages import PATHS
from tools.check_environment import found_chromium
from tools.serve_demo import ITS_DAY, filled

NOON = datetime.datetime.combine(ITS_DAY, datetime.time(12), datetime.UTC)
#: How often each page is opened, and the slider moved.
OPENED, MOVED = 20, 20
#: Moves the slider, and answers how long it took until the answer was another one.
MOVE = """(steps) => new Promise((done) => {
  const one = document.querySelector("input[name='reach-L']");
  const start = performance.now();
  const watch = new MutationObserver(() => {
    watch.disconnect();
    done(performance.now() - start);
  });
  watch.observe(document.querySelector('.try-out'), {childList: true, subtree: true});
  one.value = steps;
  one.dispatchEvent(new Event('input', {bubbles: true}));
})"""


def pages_and_slider(folder: Path) -> tuple[dict[str, list[float]], list[float]]:
    """Seconds of every page of the demo each time it was opened; of each answer of the slider."""
    with _page(folder) as (page, address):
        pages: dict[str, list[float]] = {path: [] for path in PATHS}
        for path, times in pages.items():
            page.goto(address + path)
            for _ in range(OPENED):
                page.goto(address + path)
                timing = page.evaluate(
                    "(() => { const one = performance.getEntriesByType('navigation')[0];"
                    " return one.loadEventEnd - one.startTime; })()"
                )
                times.append(timing / 1000)
        page.goto(f"{address}/drops/S1/try")
        slider = [page.evaluate(MOVE, 40 + step) / 1000 for step in range(MOVED)]
    return pages, slider


@contextmanager
def _page(folder: Path) -> Iterator[tuple[Page, str]]:
    filled(folder, NOON)
    with open_record(folder) as record, socket.socket() as here, sync_playwright() as playwright:
        pages = application_of(Workbench(record, load_rule_library(), lambda: NOON))
        here.bind(("127.0.0.1", 0))
        server = create_server(pages, sockets=[here], threads=4)
        seldom_collected()
        threading.Thread(target=server.run, daemon=True).start()
        browser = playwright.chromium.launch(
            executable_path=found_chromium(), args=["--no-sandbox"]
        )
        address = f"http://127.0.0.1:{here.getsockname()[1]}"
        page = browser.new_page()
        page.goto(f"{address}/speaker")
        page.click("button[value=MARLOW]")
        yield page, address
        browser.close()
        server.close()
