"""What the checks found, by topic and all at once: nothing is lost between the pages."""

from __future__ import annotations

import datetime
import re
from collections import Counter

import pytest

from backspan.core.findings import Review, Verdict
from backspan.core.model.topics import Topic
from backspan.core.review import review
from backspan.core.words import say_check
from backspan.records.api import SiteRecord
from backspan.web.workbench import Workbench
from tests.site.bench import NOON, Browser, browser
from tests.unit.core.rigs import LIBRARY, ON, PROJECT

AT = "/drops/D/"
FINDING = re.compile(r'<details class="finding (\w+)".*?</details>', re.DOTALL)
TOLD = re.compile(r"</span> ([^<]+) <small>(.*?)</small></summary>")
LINE = re.compile(r'<a href="(/drops/D/findings/[^"]+)">(.*?)</a>', re.DOTALL)
COUNTED = re.compile(r"([0-9]+) of ([0-9]+) passed")
FAILS = {"path": "drops/D/rig/power", "value": "defective"}


def shown(pages: Browser, path: str) -> Counter[str]:
    """The findings of a page as they are written there."""
    return Counter(one[0] for one in FINDING.finditer(pages.get(path).text))


def lines(pages: Browser) -> dict[str, tuple[int, int]]:
    """Where each line of the drop's page leads, with how many of how many passed."""
    found = {}
    for to, text in LINE.findall(pages.get(AT).text):
        passed, several = COUNTED.findall(text)[0]
        found[to] = (int(passed), int(several))
    return found


@pytest.mark.parametrize("says", [{}, FAILS])
def test_the_pages_of_the_topics_have_every_finding_once(
    pages: Browser, record: SiteRecord, says: dict[str, str]
) -> None:
    if says:
        pages.post(f"{AT}state", AT, **says)
    topics = [f"{AT}findings/{topic.replace(' ', '-')}" for topic in Topic]
    everything = shown(pages, f"{AT}findings/")
    told = Workbench(record, LIBRARY, lambda: NOON).today().document("D")
    assert everything.total() == len(told["told"]["findings"])
    assert sum((shown(pages, one) for one in topics), Counter()) == everything
    assert set(lines(pages)) == {one for one in topics if shown(pages, one)}


def test_every_finding_of_the_review_stands_on_the_page_of_its_topic(pages: Browser) -> None:
    found: Review = review(PROJECT, "D", LIBRARY, on=ON, compared=False)
    for topic in found.topics:
        page = pages.get(f"{AT}findings/{topic.topic.replace(' ', '-')}").text
        told = {
            (title, one) for title, several in TOLD.findall(page) for one in several.split(", ")
        }
        own = [found.findings[at] for at in topic.findings]
        assert told == {(say_check(one.check), one.subject) for one in own}


@pytest.mark.parametrize("says", [{}, FAILS])
def test_a_topics_line_counts_what_its_page_shows(pages: Browser, says: dict[str, str]) -> None:
    if says:
        pages.post(f"{AT}state", AT, **says)
    counted = lines(pages)
    assert counted
    for path, (passed, several) in counted.items():
        page = pages.get(path)
        verdicts = FINDING.findall(page.text)
        assert (verdicts.count("pass"), len(verdicts)) == (passed, several)
        assert f"{passed} of {several} passed" in page.plain
        assert f'href="{AT}"' in page.text


def test_the_drops_page_has_what_does_not_pass_and_folds_what_does(pages: Browser) -> None:
    assert not shown(pages, AT)
    assert "Every finding passes" in pages.get(AT).plain
    pages.post(f"{AT}state", AT, **FAILS)
    there = FINDING.findall(pages.get(AT).text)
    assert there
    assert set(there) == {str(Verdict.FAIL)}
    # The topic that fails is the first line.
    assert next(iter(lines(pages))) == f"{AT}findings/power"


def test_a_topic_that_nobody_judged_never_reads_as_passed(pages: Browser) -> None:
    found = review(PROJECT, "D", LIBRARY, on=ON, compared=False)
    answers = {one.topic.replace(" ", "-"): str(one.verdict) for one in found.topics}
    for to, text in LINE.findall(pages.get(AT).text):
        assert f'class="answer {answers[to.rpartition("/")[2]]}"' in text


def test_a_topic_that_is_none_is_not_there(pages: Browser) -> None:
    answer = pages.get(f"{AT}findings/colour")
    assert answer.status == 404
    assert "found no topic 'colour'" in answer.plain
    assert pages.get("/drops/X/findings/tipping").status == 400


def test_a_topic_without_a_finding_says_who_judges_it(pages: Browser) -> None:
    shown_there = pages.get(f"{AT}findings/power-lines").plain
    assert "No check asks about this topic" in shown_there


def told(finding: str) -> str:
    return re.sub(r'<table class="inputs">.*?</table>', "", finding)


def test_the_next_day_what_was_too_long_ago_is_told_by_topic(record: SiteRecord) -> None:
    later = browser(record, NOON + datetime.timedelta(days=40))
    everything = shown(later, f"{AT}findings/")
    of_topics = (shown(later, f"{AT}findings/{one.replace(' ', '-')}") for one in Topic)
    assert sum(of_topics, Counter()) == everything
    missing = [one for one in everything if 'class="finding missing"' in one]
    assert missing
    # The drop's page tells each of them, and leaves what was used to the page of its topic.
    of_drop = {told(one) for one in shown(later, AT)}
    assert {told(one) for one in missing} <= of_drop
