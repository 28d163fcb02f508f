"""Values besides the stop list: waited for by a topic, or of no finding; the way back to them."""

from __future__ import annotations

import datetime
import re
from html import unescape

import pytest

from backspan.core.ledger import bodies
from backspan.core.ledger.fields import rig_fields
from backspan.core.ledger.stop_list import also_wanted, stop_list, wanting_topics
from backspan.core.model.topics import Topic
from backspan.core.review import review
from backspan.records.api import SiteRecord
from tests.site.bench import NOON, Browser, browser
from tests.unit.core.rigs import LIBRARY, ON, PROJECT

AT, VALUES = "/drops/D/", "/drops/D/values"
LATER = NOON + datetime.timedelta(days=40)
PATH = re.compile(r'name="path" value="([^"]+)"')
GROUP = re.compile(
    r'<details (id="waited" class="waited" open)?><summary class="title">(.*?)</summary>(.*?)'
    r"(?=<details (?:id=\"waited\"|><summary class=\"title\">)|</section>)",
    re.DOTALL,
)
SECTION = re.compile(r'<section aria-labelledby="([^"]+)">(.*?)</section>', re.DOTALL)


@pytest.fixture
def later(record: SiteRecord) -> Browser:
    """The owner's engineer, so much later that all has to be looked at again."""
    one = browser(record, LATER)
    one.post("/speaker", person="MT")
    return one


def waited(page: str) -> dict[str, tuple[bool, list[str]]]:
    """Each group of what is waited for: whether it stands open, and the paths of its values."""
    found = {}
    at = page.find('<section aria-labelledby="more">')
    for is_open, title, values in GROUP.findall(page[at:] if at >= 0 else ""):
        found[re.sub(r" *<.*", "", title)] = (bool(is_open), PATH.findall(values))
    return found


def others(reader: Browser) -> dict[str, list[str]]:
    """The paths of the other values by the slug of their group, each opened in turn."""
    slugs = [slug for slug, _ in SECTION.findall(reader.get(VALUES).text)]
    pages = {slug: reader.get(f"{VALUES}?open={slug}").text for slug in slugs}
    return {slug: PATH.findall(page) for slug, page in pages.items()}


def test_every_value_of_the_rig_is_asked_for_on_one_of_two_pages(later: Browser) -> None:
    on_drop = PATH.findall(later.get(AT).text)
    other = [path for group in others(later).values() for path in group]
    assert set(on_drop) & set(other) == set()
    assert len(other) == len(set(other))
    everything = {"/".join(one.path) for one in rig_fields(PROJECT, "D")}
    assert everything <= {*on_drop, *other}
    assert f"{len(other)} other values" in later.get(AT).plain


def test_other_values_stand_by_what_they_are_of(pages: Browser) -> None:
    page, rig = pages.get(VALUES).text, PROJECT.drops[0].rig
    assert rig is not None
    titles = {
        slug: re.sub(r"<.*?>", "", title)
        for slug, title in re.findall(r'<h2 id="([^"]+)" class="placed">(.*?)</h2>', page)
    }
    groups = others(pages)
    told = [f"{titles[slug]}" for slug in groups]
    assert told == [
        f"{title} {len(paths)}"
        for title, paths in zip(
            (
                *("Suspension point L", "Suspension point R", "Stage no. 1"),
                *(f"Lifeline {one.id}" for one in rig.lifelines or ()),
            ),
            groups.values(),
            strict=True,
        )
    ]
    for slug, paths in groups.items():
        of, _, part = slug.partition("-")
        assert paths
        assert all(one.split("/")[3:5] == [of, part] for one in paths)


def test_one_group_of_other_values_stands_open(pages: Browser) -> None:
    def is_open(asked: str) -> list[str]:
        page = pages.get(VALUES + asked).text
        return [slug for slug, values in SECTION.findall(page) if PATH.findall(values)]

    assert is_open("") == ["suspension_points-L"]
    assert is_open("?open=stages-0") == ["stages-0"]
    assert is_open("?open=nothing") == ["suspension_points-L"]


def test_after_another_value_is_stated_one_is_where_one_was(
    pages: Browser, record: SiteRecord
) -> None:
    page = pages.get(VALUES).text
    path = next(one for one in PATH.findall(page) if one.endswith("/tip_beyond_line"))
    assert f'id="{path}"' in page
    assert f'name="item" value="{path}"' in page
    said = {"path": path, "item": path, "from": "values", "value": "7 in"}
    to = pages.leads(f"{AT}state", VALUES, **said)
    assert to == f"{VALUES}?open=suspension_points-{path.split('/')[4]}#{path}"
    body = record.entries()[-1].body
    assert isinstance(body, bodies.NumberFound)
    assert f'id="{path}"' in pages.get(VALUES).text


def test_a_value_refused_there_writes_nothing_and_leads_back(
    pages: Browser, record: SiteRecord
) -> None:
    before = len(record.entries())
    path = next(one for one in PATH.findall(pages.get(VALUES).text) if one.endswith("beyond_line"))
    answer = pages.post(f"{AT}state", VALUES, path=path, value="long", **{"from": "values"})
    assert answer.status == 400
    assert "a length is wanted" in answer.plain
    assert len(record.entries()) == before


def test_what_is_waited_for_stands_by_topic_the_first_open(later: Browser) -> None:
    found = review(PROJECT, "D", LIBRARY, on=LATER.date(), compared=False)
    wanted, of = also_wanted(PROJECT, "D", found), wanting_topics(found)
    groups = waited(later.get(AT).text)
    order = [str(topic).capitalize() for topic in Topic]
    assert len(groups) > 1
    assert list(groups) == sorted(groups, key=order.index)
    assert [is_open for is_open, _ in groups.values()] == [True, *[False] * (len(groups) - 1)]
    for title, (_, paths) in groups.items():
        assert paths == [
            "/".join(one.value.path)
            for one in wanted
            if str(of[one.value.path]).capitalize() == title
        ]
    assert sum(len(paths) for _, paths in groups.values()) == len(wanted)


def test_the_group_that_was_open_is_open_after_a_value_of_it(later: Browser) -> None:
    groups = waited(later.get(AT).text)
    last, (_, paths) = list(groups.items())[-1]
    page = later.get(AT).text
    form = page[page.index(f'value="{paths[0]}"') :].partition("</form>")[0]
    said = dict(re.findall(r'<input type="hidden" name="(item|from)" value="([^"]+)"', form))
    assert said == {"item": "waited", "from": last.lower().replace(" ", "-")}
    word = re.search(r'name="value" value="([^"]+)"', form)
    said |= {"value": unescape(word[1])} if word else {"again": "1"}
    to = later.leads(f"{AT}state", AT, path=paths[0], **said)
    assert to == f"{AT}?open={said['from']}#waited"
    there = later.get(to.partition("#")[0]).text
    after = waited(there)
    is_open = last if last in after else next(iter(after))
    assert [title for title, (there, _) in after.items() if there] == [is_open]
    assert there.count('id="waited"') == 1


def test_a_group_that_is_not_there_opens_the_first(later: Browser) -> None:
    first = next(iter(waited(later.get(AT).text)))
    groups = waited(later.get(f"{AT}?open=%3Cscript%3E").text)
    assert [title for title, (is_open, _) in groups.items() if is_open] == [first]


def test_nothing_more_is_waited_for_of_the_sound_rig(pages: Browser) -> None:
    assert waited(pages.get(AT).text) == {}
    found = review(PROJECT, "D", LIBRARY, on=ON, compared=False)
    asked = [one for item in stop_list(PROJECT, "D", found) for one in item.asked]
    assert asked
