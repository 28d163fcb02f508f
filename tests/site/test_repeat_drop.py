"""The same rig at the next strip: every tap and every number typed is counted, to the answer.

Counted is what a thumb does: a link, a button, a word, a tick; a choice of a list is two. The goal
is 35 taps and 6 typed numbers until the fifteen items of the stop list are answered.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from html import unescape
from typing import Any

import pytest

from backspan.core.ledger.stop_list import stop_list
from backspan.core.model.rigs import Rig
from backspan.core.review import review
from backspan.records.api import SiteRecord
from tests.site import typist
from tests.site.bench import Browser
from tests.site.test_first_accepted import FORM, PATH, SOUND, WORD
from tests.site.typist import ARM, fields_of, project_of, rigged
from tests.unit.core.rigs import LIBRARY, ON

MOST_TAPS = 35
STOP = re.compile(r'<ol class="stop">.*?</ol>', re.DOTALL)


@dataclass
class Thumb:
    """Taps on pages, and counts; what it taps has to be there."""

    pages: Browser
    taps: int = 0

    def follows(self, page: str, words: str) -> str:
        """Tap a link of a page; where it leads."""
        for to, text in re.findall(r'<a [^>]*href="([^"]+)"[^>]*>(.*?)</a>', self._shown(page)):
            if re.sub(r"<[^>]+>", "", text).strip() == words:
                self.taps += 1
                return unescape(to)
        raise AssertionError(words)

    def sends(self, page: str, **chosen: Any) -> str:
        """Choose on a form, and tap its button; where that leads."""
        shown = self.pages.get(page)
        does = chosen.keys() & {"does"}
        # A choice of a list is two taps: it is opened first.
        ticks = [len(one) if isinstance(one, list) else 2 for one in chosen.values()]
        self.taps += sum(ticks) - len(does) if does else sum(ticks) + 1
        answer = self.pages.post(page, None, **{**fields_of(shown), **chosen})
        assert answer.status == 200, answer.plain
        return answer.text

    def states(self, drop: str) -> None:
        """State what is open on a drop's stop list: as planned, or as it has to be."""
        at, tried = f"/drops/{drop}/", set[str]()
        while True:
            page = self.pages.get(at)
            shown = STOP.search(page.body.decode())
            assert shown is not None
            for form in FORM.findall(shown[0]):
                path = PATH.findall(form)[0]
                words = [unescape(one) for one in WORD.findall(form)]
                sound = next((one for one in SOUND if one in words), None)
                if path not in tried:
                    break
            else:
                return
            assert sound or 'name="as_planned"' in form, path
            said = {"value": sound} if sound else {"as_planned": "1"}
            tried.add(path)
            self.taps += 1
            self.pages.tap(page, f"{at}state", path=path, **said)

    def _shown(self, page: str) -> str:
        return self.pages.get(page).body.decode()


@pytest.mark.long
def test_a_repeat_drop_is_answered_with_few_taps(
    new: Browser, empty: SiteRecord, monkeypatch: pytest.MonkeyPatch
) -> None:
    plates = {f"{ARM}.rear.plate_{one}": "2 ft" for one in ("length", "width")}
    monkeypatch.setattr(typist, "LEFT_TYPED", {**typist.LEFT_TYPED, **plates})
    rigged(new)
    path = f"drops/S1/rig/suspension_points/L/{ARM}/reach"
    new.post("/drops/S1/state", "/drops/S1/", path=path, value="2 ft 1 in")
    hand = Thumb(new)
    page = hand.follows("/drops/S1/", "Move this rig along")
    shown = fields_of(new.get(page))
    assert (shown["id"], shown["start"], shown["height"]) == ("S2", "40'-0\"", "130 ft")
    hand.sends(page, does="same rig")
    kept = fields_of(new.get("/set-up/drops/S2/rig-of/S1?plan=same"))
    assert kept == {**fields_of(new.get("/set-up/drops/S2/rig-of/S1")), **kept}
    anchors = {f"suspension_points.{one}.tiebacks.0.anchor": f"A{one + 1}" for one in (0, 1)}
    hand.sends("/set-up/drops/S2/rig-of/S1?plan=same", **anchors, lines=["A3", "A4"])
    rig = project_of(empty).drops[1].rig
    assert rig is not None
    only_planned(rig)
    hand.states("S2")
    found = review(project_of(empty), "S2", LIBRARY, on=ON, compared=False)
    listed = stop_list(project_of(empty), "S2", found)
    assert [one.id for one in listed if one.open] == []
    # Of six numbers none is typed: where the roof is another one, the number found goes over it.
    assert hand.taps <= MOST_TAPS, hand.taps


def only_planned(rig: Rig) -> None:
    """What the plan shows came along as planned; what was found at the old drop did not."""
    left = rig.suspension_points[0].counterweighted_beam
    assert left is not None
    assert left.reach is not None
    assert left.reach.value == pytest.approx(2 * 0.3048)
    assert left.reach.evidence == "drawing"
    assert left.rear is not None
    assert left.rear.plate_length is not None
    assert left.rear.surface_strength is None
    assert left.fulcrum is not None
    assert left.fulcrum.surface_strength is None
    assert left.stack.fastening is None
    assert rig.riders is not None
    assert rig.riders.value == 2
    assert rig.riders.evidence == "drawing"


def test_a_drop_that_would_reach_beyond_its_edge_is_not_placed_by_itself(
    new: Browser, empty: SiteRecord
) -> None:
    rigged(new)
    page = "/set-up/drops?like=S1"
    assert "does" not in fields_of(new.get(page))
    shown = {**fields_of(new.get(page)), "start": "50 ft"}
    answer = new.post(page, None, **shown, does="same rig")
    assert answer.status == 400
    assert "found a drop that ends at 70'-0\"" in answer.plain
    new.post(page, None, **{**shown, "start": "40 ft"})
    assert [one.id for one in project_of(empty).drops] == ["S1", "S2"]
    shown = fields_of(new.get("/set-up/drops?like=S2"))
    assert (shown["id"], shown.get("start", "")) == ("S3", "")
