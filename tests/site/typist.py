"""Whoever sets a site up from nothing: what they type is counted, what they tap is not."""

from __future__ import annotations

import re
from collections.abc import Iterator
from html import unescape
from typing import Any

from backspan.core.ledger.fold import fold
from backspan.core.model.project import Project
from backspan.records.api import SiteRecord
from tests.site.bench import Answer, Browser
from tests.unit.core.rigs import ON

OBLONG = "60 ft, right 90, 30 ft, right 90, 60 ft, right 90, 30 ft"
FIRST: dict[str, Any] = {
    "name": "Teal House",
    "place": "12 Weir Lane, Port Callow",
    "units": "us",
    "basis": ["us-osha-1926-subpart-l|1996"],
    "me.name": "R. Tern",
    "me.role": "owner's engineer",
    "me.employer": "Tern Engineers",
    "me.card": "PE 1",
}
ROOF = {
    "name": "main roof",
    "level": "174 ft",
    "first": "south",
    "walk": OBLONG,
    "parapet.height": "42 in",
    "parapet.thickness": "12 in",
}
ANCHOR: dict[str, Any] = {
    "id": "A1",
    "edge": "MAIN-ROOF/S",
    "along": "8 ft",
    "back": "21 ft",
    "kind": "through-bolted post",
    "uses": ["tieback"],
    "ratings.0.load": "10,000 lb",
    "any-way": "yes",
    "inspected": "2026-03-03",
    "certified": "2024-05-14",
    "fixed_by": "bolted through",
}


def project_of(record: SiteRecord) -> Project:
    folded = fold(record.entries(), on=ON)
    assert folded.unplaced == []
    assert not list(folded.disputes.unsettled)
    return folded.project


#: Each page of a first run in its order, with what a person types there and what they tap.
KIT = (
    (
        "hoist",
        {
            "name": "HM 1000",
            "rated_load": "1000 lb",
            "stall_load": "2500 lb",
            "rope_diameter": "5/16 in",
        },
    ),
    ("rope", {"name": "5/16 wire", "diameter": "5/16 in", "breaking_force": "9800 lb"}),
    (
        "rope",
        {
            "name": "tieback rope",
            "diameter": "3/4 in",
            "breaking_force": "15000 lb",
        },
    ),
    (
        "rope",
        {
            "name": "lifeline",
            "diameter": "5/8 in",
            "breaking_force": "9000 lb",
            "elongation": "0.04",
        },
    ),
    ("termination", {"name": "swaged eye", "efficiency": "0.95"}),
    ("termination", {"name": "sewn eye", "efficiency": "0.9", "rope_diameter": "5/8 in"}),
    (
        "lanyard",
        {
            "name": "lanyard",
            "length": "4 ft",
            "deceleration": "42 in",
            "slide": "1 ft",
            "most_force": "1350 lb",
        },
    ),
    ("connector", {"name": "5/8 shackle", "breaking_force": "30000 lb"}),
    (
        "beam",
        {
            "name": "18 ft beam",
            "length": "18 ft",
            "label.most_pieces": "40",
            "label.most_load": "1250 lb",
            "label.most_reach": "6 ft",
            "label.least_backspan": "8 ft",
        },
    ),
    ("piece", {"name": "55 lb plate", "mass": "55 lb", "length_on_beam": "2 in"}),
    ("stage", {"name": "20 ft stage", "length": "20 ft"}),
)
CHOSEN = {
    "hoist": {
        "takes_rope": "climbs the rope",
        "tested_by": "tested by a qualified laboratory",
        "secondary_brake": "acts by itself on overspeed",
    },
    "rope": {"kind": "wire"},
    "termination": {"kind": "swaged", "made_by": "rope maker"},
    "connector": {"kind": "shackle"},
    "lanyard": {},
    "beam": {},
    "piece": {"kind": "purpose-made steel plate"},
    "stage": {"listed": "tested and listed"},
}
#: What is chosen of a kind of thing beside that, by its name.
CHOSEN_OF = {"lifeline": {"kind": "synthetic fibre"}, "sewn eye": {"kind": "sewn eye"}}
UNITS = (
    ("hoist|HM-1000", "H-1, H-2"),
    ("rope|5-16-WIRE", "W-1, W-2"),
    ("beam|18-FT-BEAM", "B-1, B-2"),
    ("piece|55-LB-PLATE", "LOT-1"),
    ("stage|20-FT-STAGE", "ST-1"),
)
ARM = "counterweighted_beam"
LEFT_TYPED = {
    "station": "21 ft",
    f"{ARM}.reach": "2 ft",
    f"{ARM}.backspan": "10 ft",
    f"{ARM}.tip_beyond_line": "6 in",
    f"{ARM}.rear_stand": "10 ft",
    f"{ARM}.fulcrum.setback": "18 in",
    f"{ARM}.fulcrum.height": "44 in",
    f"{ARM}.stack.groups.0.count": "17",
    "rope_length": "150 ft",
}
LEFT_CHOSEN = {
    "id": "L",
    "hoist": "H-1",
    "rope": "W-1",
    "termination": "SWAGED-EYE",
    "connectors": ["5-8-SHACKLE"],
    f"{ARM}.beam": "B-1",
    f"{ARM}.fulcrum.kind": "stand",
    f"{ARM}.stack.groups.0.piece": "LOT-1",
    "tiebacks.0.anchor": "A1",
    "tiebacks.0.rope": "TIEBACK-ROPE",
}


#: What is chosen of a rig; its lifelines are all of one kind.
RIG_CHOSEN = {
    "stage": "ST-1",
    "lines": ["A3", "A4"],
    "line-rope": "LIFELINE",
    "line-end": "SEWN-EYE",
    "line-lanyard": "LANYARD",
}


#: Whose each of these lines is, once they are there.
WHOSE = {"line.0.worker": "TERN", "line.1.worker": "QUILL"}
#: Where each of them passes the edge.
OVER = {"line.0.station": "27 ft", "line.1.station": "33 ft"}


#: The first drop, and what of it is taped.
TAPED = {"height": "130 ft", "clear_below": "25 ft"}
DROP = {"id": "S1", "start": "20 ft", "width": "20 ft", **TAPED}


class Typist:
    """Fills the forms of a browser: what it types is counted, what it taps is not."""

    def __init__(self, pages: Browser) -> None:
        self.pages = pages
        self.typed = 0

    def fill(
        self, path: str, typed: dict[str, str], chosen: dict[str, Any] | None = None
    ) -> Answer:
        """Send a form as a page shows it, with what is typed and chosen in it."""
        # A list in one field, such as tags or the edges of a roof, is counted by what it holds.
        self.typed += sum(len(one.split(", ")) for one in typed.values())
        shown = fields_of(self.pages.get(path))
        answer = self.pages.post(path, None, **{**shown, **typed, **(chosen or {})})
        assert answer.status == 200, answer.plain
        return answer


def fields_of(answer: Answer) -> dict[str, Any]:
    """What stands in the fields of a form."""
    page = answer.body.decode("utf-8")
    found = dict(re.findall(r'<input id="[^"]+" name="([^"]+)" value="([^"]+)"', page))
    for name, words in re.findall(
        r'<select [^>]*name="([^"]+)"[^>]*>(.*?)</select>', page, re.DOTALL
    ):
        chosen = re.search(r'value="([^"]*)" selected', words)
        if chosen is not None:
            found[name] = chosen[1]
    for name, value in re.findall(r'type="checkbox" name="([^"]+)" value="([^"]+)" checked', page):
        found.setdefault(name, []).append(value)
    for name, value in found.items():
        found[name] = list(map(unescape, value)) if isinstance(value, list) else unescape(value)
    return found


def rigged(pages: Browser, wall: dict[str, str] | None = None) -> Typist:
    """A whole first run: from an empty record to a drop with its rig; `wall` is chosen of it."""
    hand = Typist(pages)
    typed = {name: FIRST[name] for name in ("place", "me.name", "me.employer", "me.card")}
    hand.fill("/set-up/", typed)
    hand.fill(
        "/set-up/people", {"name": "D. Quill", "employer": "Callow"}, {"role": "qualified person"}
    )
    roof = dict(ROOF)
    hand.fill(
        "/set-up/roofs",
        {k: v for k, v in roof.items() if k != "first"},
        {"first": "south", **(wall or {})},
    )
    for mark, along, like in (
        ("A1", "21 ft", ""),
        ("A2", "39 ft", "A1"),
        ("A3", "27 ft", "A1"),
        ("A4", "33 ft", "A3"),
    ):
        typed = {"id": mark, "along": along, "back": "21 ft"}
        chosen: dict[str, Any] = {"edge": "MAIN-ROOF/S"}
        if not like:
            typed |= {
                name: ANCHOR[name] for name in ("kind", "ratings.0.load", "inspected", "certified")
            }
            chosen |= {"uses": ["tieback"], "any-way": "yes", "fixed_by": "bolted through"}
        if mark == "A3":
            chosen |= {"uses": ["fall arrest"]}
            typed |= {"ratings.0.load": "5000 lb"}
        hand.fill(f"/set-up/anchors?like={like}" if like else "/set-up/anchors", typed, chosen)
    for kind, said in KIT:
        hand.fill(f"/set-up/kit/{kind}", said, CHOSEN[kind] | CHOSEN_OF.get(said["name"], {}))
    for of, tags in UNITS:
        hand.fill("/set-up/units", {"tags": tags}, {"of": of})
    hand.fill(
        "/set-up/plan",
        {
            "contractor": "Callow",
            "drawing": "SW-04",
            "revision": "2",
            "begins": "2026-11-20",
            "ends": "2026-12-20",
        },
        {"designer": "QUILL"},
    )
    hand.fill(
        "/set-up/drops",
        DROP,
        {"edge": "MAIN-ROOF/S", **{f"{one}:evidence": "measured" for one in TAPED}},
    )
    hand.fill("/set-up/drops/S1/rig", {"riders": "2"}, RIG_CHOSEN)
    hand.fill("/set-up/drops/S1/rig", OVER, WHOSE)
    hand.fill("/set-up/drops/S1/point", LEFT_TYPED, LEFT_CHOSEN)
    hand.fill("/set-up/drops/S1/point?like=L", {}, {"tiebacks.0.anchor": "A2"})
    return hand


def values_in(data: Any) -> Iterator[Any]:
    """Every stated value of a record."""
    if isinstance(data, dict):
        if "evidence" in data and "value" in data:
            yield data
        else:
            for one in data.values():
                yield from values_in(one)
    elif isinstance(data, list):
        for one in data:
            yield from values_in(one)
