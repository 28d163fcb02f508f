"""From an empty record to a drop that is accepted, by the pages alone; what is typed is counted.

Whoever measures finds everything as planned, and says so value by value: each is a tap. What no
plan shows is typed. The papers by which topics are taken over are counted apart.
"""

from __future__ import annotations

import re
from html import unescape

import pytest

from backspan.core.findings import Verdict
from backspan.core.ledger.drop_states import State
from backspan.core.ledger.fold import fold
from backspan.core.ledger.happenings import lines_of
from backspan.core.review import review
from backspan.core.review.front import front_data
from backspan.records.api import SiteRecord
from tests.site import typist
from tests.site.bench import Answer, Browser
from tests.site.typist import Typist, project_of, rigged
from tests.unit.core.rigs import LIBRARY, ON

AT = "/drops/S1/"
MOST_TYPED = 131
#: What is found where something is as it has to be.
SOUND = (
    *("there and sound", "pin through the beam, locked", "taut", "straight, touching nothing"),
    *("tail of the beam", "bolt, nut and cotter", "sound", "readable", "none seen"),
    *("each hoist its own", "nothing overhead", "nothing along its way", "tied against sway"),
    *("lifted and held, both brakes", "no hot work", "runs level"),
    *("bends within a sixtieth of its span", "gears and brakes enclosed"),
    *("web vertical", "at both ends", "square to its bearing", "directly over the stirrup"),
    *("level, or tail low as its maker shows", "straight", "restrained"),
    *("no pair of channels", "one piece"),
    *("worked close below it", "looked at and sound"),
    *("matched to the rope, right way up", "level with the D-ring", "none below its end"),
    *("to this lifeline", "all lock by themselves, closed", "below the lowest place"),
)
FORM = re.compile(
    r'<div class="value known-(?:not-stated|planned-only|look-again)">.*?(<form.*?</form>)',
    re.DOTALL,
)
PATH = re.compile(r'name="path" value="([^"]+)"')
WORD = re.compile(r'name="value" value="([^"]+)"')
ARM = "counterweighted_beam"
#: What a plan shows besides: plates on which the stands bear.
PLATES = {
    f"{ARM}.{stand}.plate_{side}": "2 ft"
    for stand in ("fulcrum", "rear")
    for side in ("length", "width")
}
#: What papers say of the roof under each beam.
SURFACES = {"fulcrum": "40 psi", "rear": "30 psi"}
#: Who judges in writing what the program does not: entered with the papers, counted apart.
JUDGES = (
    ("L. Enders", "Tern Engineers", "PE 2", "licensed engineer"),
    ("E. Lectra", "Bright Wires", "E 1", "licensed electrician"),
    ("C. Watch", "Owner's watch", "C 1", "competent person"),
)


def taps(pages: Browser) -> int:
    """State by taps all that a tap can state; how many it took."""
    tried, before = set[str](), -1
    while len(tried) > before:
        before = len(tried)
        for page in (AT, f"{AT}values"):
            shown = pages.get(page)
            while (form := untried(shown, tried)) is not None:
                path, said = form
                tried.add(path)
                pages.tap(shown, f"{AT}state", path=path, **said)
                shown = pages.get(page)
    return len(tried)


def untried(shown: Answer, tried: set[str]) -> tuple[str, dict[str, str]] | None:
    """The first value of a page that a tap can state and none has; what the tap says."""
    for form in FORM.findall(shown.body.decode()):
        path = PATH.findall(form)[0]
        words = [unescape(one) for one in WORD.findall(form)]
        sound = next((one for one in SOUND if one in words), None)
        if path not in tried and ('name="as_planned"' in form or sound):
            return path, {"value": sound} if sound else {"as_planned": "1"}
    return None


def read_on_the_roof(hand: Typist) -> None:
    """What is typed because no plan shows it."""
    pages = hand.pages
    for point in "LR":
        for stand, strength in SURFACES.items():
            path = f"drops/S1/rig/suspension_points/{point}/{ARM}/{stand}/surface_strength"
            paper = {"evidence": "certificate", "document": "letter 7"}
            answer = pages.post(f"{AT}state", AT, path=path, value=strength, **paper)
            assert answer.status == 200, answer.plain
            hand.typed += 2
    for name, value in {"rail_height": "42 in", "to_face": "2 in"}.items():
        path = f"drops/S1/rig/stages/0/found/{name}"
        answer = pages.post(f"{AT}state", AT, path=path, value=value)
        assert answer.status == 200, answer.plain
        hand.typed += 1
    for rope in ("W-1", "W-2"):
        wear = {"broken_in_lay": "0", "broken_in_strand": "0", "wire_worn": "0"}
        for name, value in {**wear, "damage": "none seen"}.items():
            path, page = f"kit/units/{rope}/wear/{name}", f"/kit/{rope}/"
            assert pages.post(page, does="look", path=path, value=value).status == 200
            hand.typed += name in wear


def enter_test_sheets(pages: Browser) -> None:
    """The test sheets of the hoists: papers that came with them, counted apart."""
    test = {"what": "trip test", "by": "D. Quill", "day": "2026-11-20", "until": "2027-11-19"}
    test |= {"of": "secondary brake", "found": "held"}
    for hoist in ("H-1", "H-2"):
        answer = pages.post(f"/kit/{hoist}/", does="test", **test)
        assert answer.status == 200, answer.plain


def take_over(hand: Typist, record: SiteRecord) -> None:
    """The papers by which persons who may have judged what is left."""
    pages, typed = hand.pages, hand.typed
    for name, employer, card, role in JUDGES:
        hand.fill(
            "/set-up/people", {"name": name, "employer": employer, "card": card}, {"role": role}
        )
    hand.typed = typed
    people = {one.role: one.id for one in project_of(record).people}
    for one in review(project_of(record), "S1", LIBRARY, on=ON, compared=False).topics:
        if one.not_judged:
            by = next(people[role] for role in one.who if role in MAY)
            said = {"by": by, "topics": [str(one.topic)], "document": f"letter on {one.topic}"}
            days = {"at": "2026-11-25", "until": "2026-12-20"}
            answer = pages.post(f"{AT}take-over", **said, **days)
            assert answer.status == 200, answer.plain


MAY = {role for *_, role in JUDGES} | {"owner's engineer"}


@pytest.mark.long
def test_from_nothing_to_an_accepted_drop(
    new: Browser, empty: SiteRecord, monkeypatch: pytest.MonkeyPatch
) -> None:
    kit = {
        "termination": {"rope_diameter": "5/16 in"},
        "beam": {"mass": "140 lb"},
        "lanyard": {"breaking_force": "5000 lb"},
        "stage": {
            "stirrup_spacing": "18 ft",
            "dead_mass": "600 lb",
            "intended_load": "500 lb",
            "width": "28 in",
            "most_load": "750 lb",
        },
    }
    more = tuple((kind, {**kit.get(kind, {}), **said}) for kind, said in typist.KIT)
    monkeypatch.setattr(typist, "KIT", more)
    monkeypatch.setattr(typist, "LEFT_TYPED", {**typist.LEFT_TYPED, **PLATES})
    chosen = {**typist.LEFT_CHOSEN, "tiebacks.0.termination": "SWAGED-EYE"}
    monkeypatch.setattr(typist, "LEFT_CHOSEN", chosen)
    wall = {f"parapet.{one}:evidence": "measured" for one in ("height", "thickness")}
    hand = rigged(new, wall)
    new.post("/speaker", person="TERN")
    tapped = taps(new)
    read_on_the_roof(hand)
    enter_test_sheets(new)
    take_over(hand, empty)
    value = "us-osha-1926-subpart-l|1996|geometry.least-parapet"
    hand.fill("/set-up/confirm", {"copy_seen": "office copy"}, {"value": value})
    found = review(project_of(empty), "S1", LIBRARY, on=ON, compared=False)
    assert found.verdict is Verdict.PASS, front_data(found)["reasons"]
    for line in lines_of(fold(empty.entries()).rig("S1")):
        new.post(f"{AT}connect", AT, line=line, second="WATCH")
    new.post(f"{AT}permit", AT)
    assert fold(empty.entries()).record("S1").state is State.ACCEPTED
    assert hand.typed <= MOST_TYPED, hand.typed
    assert tapped > 60  # one observation each: nothing is passed over


def test_a_value_that_no_review_waits_for_is_not_confirmed(new: Browser, empty: SiteRecord) -> None:
    rigged(new)
    before = len(empty.entries())
    for value, copy in (("x|y|z", "ours"), ("", "ours"), ("x|y|z", " ")):
        answer = new.post("/set-up/confirm", value=value, copy_seen=copy)
        assert answer.status == 400
        assert "found none, expected one that waits" in answer.plain
    assert len(empty.entries()) == before
