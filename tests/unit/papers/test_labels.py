"""Every fixed word of papers and screens is printed somewhere, and every one printed is there."""

from __future__ import annotations

import re

from backspan.core.words import ENGLISH
from tests.architecture.source import SRC

ROOMS = ("papers", "cli")
TEMPLATES = [
    path.read_text(encoding="utf-8")
    for path in sorted((SRC / "backspan" / "papers" / "templates").glob("*.typ"))
]
CODE = [
    path.read_text(encoding="utf-8")
    for room in ROOMS
    for path in sorted((SRC / "backspan" / room).rglob("*.py"))
]


#: Labels that are looked up by a name that is worked out: facts, heads of reasons, drawings.
BY_NAME = {
    *("contractor", "designer", "drawing", "days", "reviewed_by", "reviewed_for"),
    *("refused", "open", "section", "details", "plan", "said_by", "said_at"),
    *("short_rated", "short_stall", "short_tension", "short_full_live", "short_half_live"),
    *("column_rule", "column_asks", "column_needed", "column_pieces", "column_enough"),
    "column_mark",
    *("lift_permit", "lift_hold", "lift_deficiency", "lift_concern"),
}


def test_no_label_is_idle() -> None:
    text = "\n".join([*TEMPLATES, *CODE])
    printed = set(re.findall(r"words\.(\w+)", text))
    printed |= set(re.findall(r"(?:paper|words)\[[\"'](\w+)[\"']\]", text))
    assert set(ENGLISH.paper) - printed == BY_NAME


def test_every_label_of_a_template_is_there() -> None:
    named = {name for text in TEMPLATES for name in re.findall(r"\bwords\.(\w+)", text)}
    assert named
    assert named <= set(ENGLISH.paper)
