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


def test_no_label_is_idle() -> None:
    text = "\n".join([*TEMPLATES, *CODE]).replace('f"said_{key}"', '"said_by" "said_at"')
    idle = [
        name for name in ENGLISH.paper if not re.search(rf"words\.{name}\b|[\"']{name}[\"']", text)
    ]
    assert idle == []


def test_every_label_of_a_template_is_there() -> None:
    named = {name for text in TEMPLATES for name in re.findall(r"\bwords\.(\w+)", text)}
    assert named
    assert named <= set(ENGLISH.paper)
