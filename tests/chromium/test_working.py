"""Work as people do it: taps that bring the answer, keys alone, and no script at all."""

from __future__ import annotations

from backspan.core.ledger import bodies
from backspan.core.ledger.drop_states import State
from backspan.core.ledger.fold import fold
from backspan.records.api import SiteRecord
from tests.chromium.conftest import Opened

POWER = "form:has(input[value='drops/S1/rig/power'])"


def test_a_tap_brings_the_new_answer_without_leaving_the_page(
    opened: Opened, record: SiteRecord
) -> None:
    page = opened("/drops/S1/")
    page.evaluate("window.stayed = true")
    page.click("#power > details > summary")
    page.click(f"#power .value details:has({POWER}) summary")
    page.click(f"{POWER} button[value='defective']")
    page.wait_for_selector(".answer-line .answer.fail")
    assert page.evaluate("window.stayed") is True
    said = record.entries()[-1].body
    assert isinstance(said, bodies.WordFound)
    assert fold(record.entries()).record("S1").state is State.STOPPED or "fail" in page.inner_text(
        ".answer-line"
    )


def test_without_a_script_every_step_works(opened: Opened, record: SiteRecord) -> None:
    page = opened("/drops/S1/", script=False)
    page.click("#power > details > summary")
    page.click(f"#power .value details:has({POWER}) summary")
    # A click does not wait for the page it brings: what is looked at next has to.
    page.click(f"{POWER} button[value='defective']")
    page.wait_for_selector(".answer-line .answer.fail")
    page.fill("form.stop-now input[name=why]", "invented: a noise")
    page.click("form.stop-now button")
    page.wait_for_selector(".stand.stopped")
    assert fold(record.entries()).record("S1").state is State.STOPPED


def test_a_stop_by_keys_alone(opened: Opened, record: SiteRecord) -> None:
    page = opened("/")
    for _ in range(80):
        page.keyboard.press("Tab")
        if page.evaluate("document.activeElement?.getAttribute('href')") == "/drops/S1/":
            break
    page.keyboard.press("Enter")
    page.wait_for_url("**/drops/S1/")
    for _ in range(400):
        page.keyboard.press("Tab")
        if page.evaluate("document.activeElement?.closest('.stop-now input') != null"):
            break
    page.keyboard.type("invented: a noise")
    page.keyboard.press("Enter")
    page.wait_for_selector(".stand.stopped")
    assert fold(record.entries()).record("S1").state is State.STOPPED


def test_a_slider_answers_and_writes_nothing(opened: Opened, record: SiteRecord) -> None:
    before = record.ledger.last()
    page = opened("/drops/S1/try")
    page.eval_on_selector(
        "input[name='reach-L']",
        "one => { one.value = one.max; one.dispatchEvent(new Event('input', {bubbles: true})); }",
    )
    page.wait_for_selector("#tried .answer.fail")
    assert "counterweight does not hold" in page.inner_text("#tried")
    assert record.ledger.last() == before


def test_a_form_sent_twice_is_one_entry(opened: Opened, record: SiteRecord) -> None:
    page = opened("/drops/S1/")
    before = len(record.entries())
    page.fill("form.stop-now input[name=why]", "invented: a noise")
    page.evaluate(
        "() => { const form = document.querySelector('form.stop-now');"
        " form.requestSubmit(); form.requestSubmit(); }"
    )
    page.wait_for_selector(".stand.stopped")
    page.reload()
    page.go_back()
    assert len(record.entries()) == before + 1
