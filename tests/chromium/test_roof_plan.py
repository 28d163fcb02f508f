"""The roof plan under a pointer, a finger and keys: drawn, taken back, signed."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser, Page

from backspan.core.ledger.fold import fold
from backspan.records.api import SiteRecord, make_record
from tests.chromium.conftest import NOON, Opened, browsing, served
from tests.site.bench import browser
from tests.site.typist import FIRST

PLAN = "/plan/MAIN/"
STACK = "drops/S1/rig/suspension_points/L/counterweighted_beam/stack"


@dataclass
class Hand:
    """A newcomer at the plan, whose taps and typed values are counted."""

    page: Page
    inputs: list[str] = field(default_factory=list)

    def at(self, x: float, y: float) -> tuple[float, float]:
        """Where a place of the site, in metres, lies on the screen now."""
        found: list[float] = self.page.evaluate(
            """([x, y]) => {
              const data = document.getElementById('plan').dataset;
              const drawing = document.getElementById('drawing');
              const point = new DOMPoint(Number(data.x) + x * data.metre,
                data.height - data.y - y * data.metre);
              const at = point.matrixTransform(drawing.getScreenCTM());
              return [at.x, at.y];
            }""",
            [x, y],
        )
        return found[0], found[1]

    def tap(self, x: float, y: float) -> None:
        """One tap on the plan, with all that it brings."""
        self.inputs.append(f"tap {x}, {y}")
        self.page.mouse.click(*self.at(x, y))
        self.page.wait_for_timeout(30)

    def acts(self, many: int) -> None:
        """Wait until so many acts are not signed."""
        self.page.wait_for_selector(f"#unsigned small:text-is('{many}')")

    def press(self, told: str) -> None:
        """One button."""
        self.inputs.append(told)
        self.page.click(f"text={told}")

    def choose(self, verb: str) -> None:
        """What a tap does from now on."""
        self.inputs.append(verb)
        self.page.click(f"button[data-verb='{verb}']")

    def type(self, selector: str, text: str) -> None:
        """One value."""
        self.inputs.append(f"{selector} = {text}")
        self.page.fill(selector, text)


@pytest.fixture
def newcomer(chromium: Browser, tmp_path: Path) -> Iterator[tuple[Hand, SiteRecord]]:
    """Somebody before the plan of a site of which only its first page is filled."""
    with make_record(tmp_path / "new", "Teal House") as record:
        browser(record, NOON).post("/set-up/", **FIRST)
        with served(record) as address, browsing(chromium) as opened:
            yield Hand(opened(address, "/plan/R1/", speaker="TERN")), record


def test_a_newcomer_draws_a_roof_in_sixty_inputs(newcomer: tuple[Hand, SiteRecord]) -> None:
    """4 edges, 2 obstacles, 12 anchors, 4 drops: by taps, and three typed values."""
    hand, record = newcomer
    hand.type("#roof-level", "120 ft")
    for corner in ((2.0, 2.0), (34.0, 2.0), (34.0, 18.0), (2.0, 18.0), (2.0, 2.0)):
        hand.tap(*corner)
    hand.acts(1)
    hand.choose("place obstacle")
    many = 1
    for name, one, other in (
        ("stair head", (6.0, 8.0), (9.0, 12.0)),
        ("cooling tower", (20.0, 9.0), (24.0, 12.0)),
    ):
        hand.page.evaluate(
            "document.querySelectorAll('#side details').forEach(one => one.open = true)"
        )
        hand.type("#side details:has-text('An obstacle') input[name=name]", name)
        hand.tap(*one)
        hand.tap(*other)
        many += 1
        hand.acts(many)
    hand.choose("place anchor")
    for number in range(12):
        hand.tap(4.0 + 5.0 * (number % 6), 6.0 if number < 6 else 14.0)
        many += 1
        hand.acts(many)
    hand.choose("place drop")
    hand.type("#side details:has-text('A drop') input[name=width]", "20 ft")
    for place in ((32.0, 2.0), (24.0, 2.0), (16.0, 2.0), (10.0, 2.0)):
        hand.tap(*place)
        many += 1
        hand.acts(many)
    hand.inputs.append("how it is known")
    hand.page.check("#side input[name=known][value=measured]")
    hand.press("sign as")
    hand.page.wait_for_url(re.compile("signed=1"))
    assert len(hand.inputs) <= 60, hand.inputs
    project = fold(record.entries(), on=NOON.date()).project
    (roof,) = project.site.roofs
    assert (len(roof.edges), len(roof.obstacles), len(roof.anchors)) == (4, 2, 12)
    assert len(project.drops) == 4
    assert [one.name for one in roof.obstacles] == ["stair head", "cooling tower"]
    assert sorted(one.id for one in roof.edges) == ["E", "N", "S", "W"]
    xs = sorted({round(x, 9) for x, _ in roof.outline})
    assert len(xs) == 2, "the edges are not square"


def test_a_beam_that_is_pulled_is_answered_and_undone(opened: Opened, record: SiteRecord) -> None:
    page = opened(PLAN)
    before = len(record.entries())
    page.click("button[data-verb=move]")
    x, y = middle_of(page, STACK)
    page.mouse.move(x, y)
    page.mouse.down()
    page.mouse.move(x, y - 20, steps=4)
    page.mouse.up()
    page.wait_for_selector("#side .try-out .reason")
    assert "S1/L backspan" in page.inner_text("#side .try-out")
    assert "Ends the acceptance of S1" in page.inner_text("#side .try-out")
    page.keyboard.press("Control+z")
    page.wait_for_selector("#side .try-out", state="detached")
    assert len(record.entries()) == before


def test_what_is_under_the_pointer_says_its_name_and_its_last_statement(opened: Opened) -> None:
    page = opened(PLAN)
    page.mouse.move(*middle_of(page, "site/roofs/MAIN/anchors/A05"))
    page.wait_for_selector(".under:has-text('anchor A05')")
    page.wait_for_selector(".under:has-text('MARLOW'), .under:has-text('J. Marlow')")


def test_what_nobody_signed_is_there_after_the_page_was_closed(opened: Opened) -> None:
    page = opened(PLAN)
    page.click("button[data-verb='place anchor']")
    box = page.locator("#paper").bounding_box()
    assert box is not None
    page.mouse.click(box["x"] + box["width"] * 0.75, box["y"] + box["height"] * 0.35)
    page.wait_for_selector("#side .try-out")
    said = page.inner_text("#side .try-out ol")
    page.reload()
    assert page.locator("#side .try-out").count() == 0
    page.click("text=take up")
    page.wait_for_selector("#side .try-out")
    assert page.inner_text("#side .try-out ol") == said


def test_all_of_it_by_keys_alone(opened: Opened, record: SiteRecord) -> None:
    """A thing chosen, moved by arrows, one placed by numbers, signed: without a pointer."""
    page = opened(PLAN)
    before = len(record.entries())
    _tab_to(page, "document.activeElement?.dataset?.verb === 'move'")
    page.keyboard.press("Enter")
    _tab_to(page, "document.activeElement?.id === 'look'")
    page.keyboard.type("anchor A02")
    page.keyboard.press("Tab")
    page.keyboard.press("Enter")
    page.wait_for_selector("#side dl.facts")
    assert "anchor A02" in page.inner_text("#looked")
    _tab_to(page, "document.activeElement?.id === 'paper'", back=True)
    page.keyboard.press("ArrowUp")
    page.keyboard.press("Shift+ArrowLeft")
    Hand(page).acts(2)
    _tab_to(page, "document.activeElement?.name === 'known'")
    page.keyboard.press("Space")
    _tab_to(page, "document.activeElement?.value === 'sign'")
    page.keyboard.press("Enter")
    page.wait_for_url(re.compile("signed=1"))
    (entry,) = record.entries()[before:]
    assert "A02" in str(entry.body)


def test_a_finger_moves_the_view_and_two_zoom(chromium: Browser, address: str) -> None:
    context = chromium.new_context(viewport={"width": 390, "height": 800}, has_touch=True)
    page = context.new_page()
    page.goto(f"{address}{PLAN}")
    view = page.evaluate("document.getElementById('drawing').getAttribute('viewBox')")
    page.evaluate(TOUCHES)
    page.wait_for_timeout(400)
    now = page.evaluate("document.getElementById('drawing').getAttribute('viewBox')")
    context.close()
    assert float(now.split()[2]) < float(view.split()[2])


#: Two fingers that move apart over the plan.
TOUCHES = """() => {
  const paper = document.getElementById('paper'), box = paper.getBoundingClientRect();
  const at = (id, x, kind) => paper.dispatchEvent(new PointerEvent(kind, {pointerId: id,
    pointerType: 'touch', bubbles: true, clientX: box.x + x, clientY: box.y + 200}));
  paper.setPointerCapture = () => undefined;
  at(1, 150, 'pointerdown'); at(2, 200, 'pointerdown');
  for (let step = 1; step <= 10; step += 1) {
    at(1, 150 - 5 * step, 'pointermove'); at(2, 200 + 5 * step, 'pointermove');
  }
  at(1, 100, 'pointerup'); at(2, 250, 'pointerup');
}"""


def middle_of(page: Page, path: str) -> tuple[float, float]:
    """Where a thing of the plan lies on the screen, once it is brought into view."""
    one = page.locator(f"[data-path='{path}']").first
    one.scroll_into_view_if_needed()
    box = one.bounding_box()
    assert box is not None
    return box["x"] + box["width"] / 2, box["y"] + box["height"] / 2


def _tab_to(page: Any, there: str, *, back: bool = False) -> None:
    for _ in range(250):
        page.keyboard.press("Shift+Tab" if back else "Tab")
        if page.evaluate(there):
            return
    pytest.fail(f"no tab leads there: {there}")
