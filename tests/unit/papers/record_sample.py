"""The papers of a record as tests set them: invented entries of the case rig's site."""

from __future__ import annotations

from dataclasses import replace

from backspan.papers import (
    Codes,
    DeficiencyNotice,
    Lift,
    PaperContent,
    SheetItem,
    SheetValue,
    Stamp,
    StopNotice,
    StopReason,
    Tag,
    deficiency_content,
    sheet_content,
    stop_content,
    tag_content,
)
from tests.unit.core.rigs import ON, PROJECT

HEAD = "3f0a9c1d" * 8
CODES = Codes("D", "7K3M-9QXT-B", "3f0a9c1d77ab")
STAMP = Stamp(142, HEAD, ON, (CODES,))
TAG = Tag(
    drop="D",
    name="north face",
    permitted_at="2026-11-25T12:00:00+00:00",
    permitted_by="M. Taper",
    role="owner's engineer",
    employer="Taper Engineers",
    card="PE 77",
    answer="pass, 3 topics taken over",
    riders="2",
)
REASON = StopReason(
    said="cracked stirrup at the left end",
    by="M. Taper, owner's engineer",
    at="2026-11-25T12:00:00+00:00",
    settles={"en": "Settle the cause, and permit anew.", "es": "Resolver la causa."},
    lifts=(Lift.PERMIT,),
)
NOTICE = StopNotice(
    drop="D", name="north face", who="M. Taper, owner's engineer", reasons=(REASON,)
)
RAISED = DeficiencyNotice(
    number="4f-12",
    drops=("D",),
    about="left stirrup",
    says="a crack of 1 in at the weld",
    by="M. Taper, owner's engineer",
    at="2026-11-25T12:00:00+00:00",
    forbids=True,
    closed=False,
    until="",
)
WORDS = ("there and sound", "defective", "not there", "none needed")
VALUE = SheetValue(
    number="1.1",
    name="tieback",
    where="L, TB-L",
    words=WORDS,
    count=False,
    like="",
    planned="there and sound",
    found="",
    by="",
)
NUMBER = replace(
    VALUE, number="4.1", name="reach", where="L", words=(), like="5'-6 1/2\"", planned="2'-0\""
)
COUNT = replace(NUMBER, number="3.1", name="pieces", count=True, planned="14", found="13", by="QP")
ITEMS = (
    SheetItem(1, "Tieback there", (VALUE,)),
    SheetItem(3, "Pieces counted", (COUNT,)),
    SheetItem(4, "Reach", (NUMBER,)),
    SheetItem(6, "Anchors in date", (), of_papers=True),
    SheetItem(11, "Beam label", ()),
)


def tag(one: Tag = TAG) -> PaperContent:
    """A tag of the case rig."""
    return tag_content(PROJECT, one, STAMP)


def stop(one: StopNotice = NOTICE, stamp: Stamp = STAMP) -> PaperContent:
    """A notice of a stop."""
    return stop_content(PROJECT, one, stamp)


def deficiency(
    one: DeficiencyNotice = RAISED, evidence: dict[str, bytes | None] | None = None
) -> PaperContent:
    """A notice of a deficiency."""
    return deficiency_content(PROJECT, one, evidence or {}, STAMP)


def sheet() -> PaperContent:
    """A sheet for the roof."""
    return sheet_content(PROJECT, ("D", "north face"), ITEMS, code="4F2A1", stamp=STAMP)
