"""How fast the roof plan is under a hand, on a roof larger than any, in Chromium with a script.

Frames are counted while the view is moved and zoomed step by step, as a hand does it: a frame that
comes late is missed. First paint is the browser's own figure. A moved beam's answer is from the
release of the pointer to the answer that stands beside the plan.
"""

from __future__ import annotations

import contextlib
import socket
import threading
from collections.abc import Iterator
from pathlib import Path

from playwright.sync_api import Page, sync_playwright
from waitress.server import create_server

from backspan.core.ledger.described import entries_of
from backspan.core.ledger.entry import Signer
from backspan.exchange.files import load, load_rule_library
from backspan.records.api import make_record
from backspan.records.store import Statement
from backspan.web.application import application_of, seldom_collected
from backspan.web.workbench import Workbench
from benchmarks.large_roof import large
from benchmarks.pages import NOON
from tools.check_environment import found_chromium

ROOT = Path(__file__).resolve().parents[1]
AT = "/plan/BIG/"
MOVED = "drops/B7/rig/suspension_points/L/counterweighted_beam/stack"
#: Moves and zooms for so many frames; the milliseconds of each.
HAND = """async () => {
  const paper = document.getElementById('paper'), box = paper.getBoundingClientRect();
  const at = (kind, x, y) => paper.dispatchEvent(new PointerEvent(kind, {pointerId: 7,
    pointerType: 'mouse', bubbles: true, clientX: box.x + x, clientY: box.y + y}));
  paper.setPointerCapture = () => undefined;
  const frame = () => new Promise((done) => requestAnimationFrame(done));
  const times = [];
  at('pointerdown', 300, 300);
  let last = await frame();
  for (let step = 1; step <= 90; step += 1) {
    at('pointermove', 300 + 2 * step, 300 + step);
    const now = await frame(); times.push(now - last); last = now;
  }
  at('pointerup', 480, 390);
  for (let step = 1; step <= 90; step += 1) {
    paper.dispatchEvent(new WheelEvent('wheel', {deltaY: step < 45 ? -20 : 20, clientX: box.x + 400,
      clientY: box.y + 300, bubbles: true, cancelable: true}));
    const now = await frame(); times.push(now - last); last = now;
  }
  return times;
}"""
PULL = """async ([path, by]) => {
  const one = document.querySelector(`[data-path="${path}"]`).getBoundingClientRect();
  const paper = document.getElementById('paper');
  paper.setPointerCapture = () => undefined;
  const target = document.querySelector(`[data-path="${path}"] *`);
  const at = (kind, y) => target.dispatchEvent(new PointerEvent(kind, {pointerId: 9,
    pointerType: 'mouse', bubbles: true, clientX: one.x + one.width / 2, clientY: y}));
  const middle = one.y + one.height / 2;
  const before = document.getElementById('side');
  const came = new Promise((done) => new MutationObserver((_, all) => {
    const side = document.getElementById('side');
    if (side !== before && side.querySelector('.try-out .reason')) { all.disconnect(); done(); }
  }).observe(document.getElementById('plan'), {childList: true, subtree: true}));
  at('pointerdown', middle); at('pointermove', middle + by);
  const begun = performance.now();
  at('pointerup', middle + by);
  await came;
  return performance.now() - begun;
}"""
PAINTED = "performance.getEntriesByName('first-contentful-paint')[0].startTime"


def under_a_hand(folder: Path, runs: int = 12) -> tuple[list[float], list[float], list[float]]:
    """Seconds of frames, of first paints, of a moved beam's answers."""
    with _opened(folder) as page:
        paints, frames, answers = [], [], []
        for _ in range(3):
            page.goto(page.url)
            page.wait_for_timeout(1500)
            paints.append(page.evaluate(PAINTED) / 1000)
        frames = [one / 1000 for one in page.evaluate(HAND)]
        page.click("button[data-verb=move]")
        for run in range(runs):
            page.keyboard.press("0")
            page.wait_for_timeout(300)
            answers.append(page.evaluate(PULL, [MOVED, -12 if run % 2 else 12]) / 1000)
        return frames, paints, answers


@contextlib.contextmanager
def _opened(folder: Path) -> Iterator[Page]:
    project = large(load(ROOT / "examples" / "demo" / "site.yaml"))
    one = next(person for person in project.people if person.id == "MARLOW")
    signer = Signer(one.id, one.name, one.role, one.employer, one.card)
    with make_record(folder, project.site.name) as record, socket.socket() as here:
        at = NOON.isoformat(timespec="seconds")
        record.say([Statement(body, signer) for body in entries_of(project)], at=at)
        pages = application_of(Workbench(record, load_rule_library(), lambda: NOON))
        here.bind(("127.0.0.1", 0))
        server = create_server(pages, sockets=[here], threads=4)
        seldom_collected()
        threading.Thread(target=server.run, daemon=True).start()
        with sync_playwright() as playwright:
            browser = playwright.chromium.launch(
                executable_path=found_chromium(), args=["--no-sandbox"]
            )
            page = browser.new_page(viewport={"width": 1440, "height": 900})
            address = f"http://127.0.0.1:{here.getsockname()[1]}"
            page.goto(f"{address}/speaker")
            page.click("button[value=MARLOW]")
            page.goto(address + AT)
            page.wait_for_timeout(6000)
            yield page
            browser.close()
        server.close()
