"""Numbers of a stage: width, length, what it carries, its top rail, how far from the face it hangs.

How far its deck bends under load is not asked here. A rail on the side of the face too stands for a
distance that is too large or that nobody measured. Riders who are tied there without a rail are
left to a person: one clause takes a tie in place of the rail, another asks for both. A top rail
above the usual height is no fault where all else that is asked of a guardrail was seen to be met,
no earlier than the height was taped: what was seen of another rail says nothing of this one.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import TypeVar

from backspan.core.findings import Decider, DoesNotApply, Finding, Message, Need, Verdict
from backspan.core.mechanics.hoist_share import deck_beyond_line
from backspan.core.model.evidence import StatedValue, is_before
from backspan.core.model.stages import FaceSide, HighRail
from backspan.core.model.topics import Topic
from backspan.core.quantities import LENGTH, MASS
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.decide import refused_by_a_person
from backspan.core.sheet.hung import Hung, each_hung
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.limits import limit_of
from backspan.core.sheet.question import Asked, Question
from backspan.core.sheet.reads import Read, read_of
from backspan.core.sheet.set_up import since_set_up
from backspan.core.sheet.sheet import Sheet
from backspan.core.sheet.subjects import in_force_or_practice
from backspan.core.sheet.witness import EvidenceClass
from backspan.core.sheet.words_seen import WordSeen

ID = "stage-measures"
S = TypeVar("S")
Seen = StatedValue[HighRail] | None


def width(sheet: Sheet, one: Asked[Read]) -> Iterator[Compared]:
    """The width against the most of a stage that nobody designed for itself."""
    yield from _at_most("width", sheet.read(one.subject), one)


def narrow(sheet: Sheet, one: Asked[Read]) -> Iterator[Compared]:
    """The least width of a stage against its own."""
    yield from _at_least("width", sheet.read(one.subject), one)


def short(sheet: Sheet, one: Asked[tuple[Read, Read]]) -> Iterator[Compared]:
    """How far apart its stirrups are against how long it is."""
    apart, long = (sheet.read(read) for read in one.subject)
    yield Compared(apart, long, numbers=(("apart", apart, LENGTH), ("length", long, LENGTH)))


def beyond(sheet: Sheet, one: Asked[tuple[Read, Read]]) -> Iterator[Compared]:
    """How far the deck stands out beyond each line against the most of a stage not designed so."""
    apart, long = (sheet.read(read) for read in one.subject)
    out = sheet.do(deck_beyond_line, stage_length=long, stirrup_spacing=apart)
    for value in one.values:
        most = limit_of(value, LENGTH)
        numbers = (("out", out, LENGTH), ("most", most, LENGTH))
        yield Compared(out, most, numbers=numbers, value=value)


def rail(sheet: Sheet, one: Asked[Read]) -> Iterator[Compared]:
    """The least height of a top rail against the one that was measured."""
    yield from _at_least("height", sheet.read(one.subject), one)


def rail_high(sheet: Sheet, one: Asked[Read]) -> Iterator[Compared]:
    """The height of the top rail against the usual most."""
    yield from _at_most("height", sheet.read(one.subject), one)


def to_face(sheet: Sheet, one: Asked[Read]) -> Iterator[Compared]:
    """How far from the face it hangs against the most that nobody falls through."""
    yield from _at_most("apart", sheet.read(one.subject), one)


def load(sheet: Sheet, one: Asked[tuple[Read, Read]]) -> Iterator[Compared]:
    """People and material that are intended against what the plate allows."""
    intended, most = (sheet.read(read) for read in one.subject)
    yield Compared(intended, most, numbers=(("intended", intended, MASS), ("most", most, MASS)))


def _at_most(name: str, found: float, one: Asked[Read]) -> Iterator[Compared]:
    for value in one.values:
        most = limit_of(value, LENGTH)
        numbers = ((name, found, LENGTH), ("most", most, LENGTH))
        yield Compared(found, most, numbers=numbers, value=value)


def _at_least(name: str, found: float, one: Asked[Read]) -> Iterator[Compared]:
    for value in one.values:
        least = limit_of(value, LENGTH)
        numbers = ((name, found, LENGTH), ("least", least, LENGTH))
        yield Compared(least, found, numbers=numbers, value=value)


WIDTH = Question(ID, "stage-width", LENGTH, width, strength=False)
NARROW = Question(ID, "stage-narrow", LENGTH, narrow, strength=False)
SHORT = Question(ID, "stage-short", LENGTH, short, strength=False)
BEYOND = Question(ID, "stage-beyond", LENGTH, beyond, strength=False, share=False)
RAIL = Question(ID, "rail-height", LENGTH, rail, strength=False)
RAIL_HIGH = Question(ID, "rail-high", LENGTH, rail_high, strength=False)
TO_FACE = Question(ID, "to-face", LENGTH, to_face, strength=False)
LOAD = Question(ID, "most-load", MASS, load, strength=False)


def judge(case: Case) -> Iterator[Answer]:
    """Of each stage its width, its length, its load, its rail, and its distance to the face."""
    for one in each_hung(case, ID):
        if isinstance(one, DoesNotApply):
            yield one
            continue
        plate, found = (one.stage, one.plate), (one.hung.found, (*one.place, "found"))
        wide = read_of("stage_width", *plate)
        yield _to_a_person(_asked(case, one, WIDTH, wide, "stage.most-width"), one)
        yield _asked(case, one, NARROW, wide, "stage.least-width")
        between = (read_of("stirrup_spacing", *plate), read_of("stage_length", *plate))
        yield _asked(case, one, SHORT, between, "stage.hangs-within")
        yield _to_a_person(_asked(case, one, BEYOND, between, "stage.most-beyond"), one)
        both = (read_of("intended_load", *plate), read_of("most_load", *plate))
        yield _asked(case, one, LOAD, both, "stage.most-load")
        height = _where_it_hangs(case, one, read_of("rail_height", *found))
        low = _asked(case, one, RAIL, height, "stage.least-rail-height")
        yield low
        if low.verdict is Verdict.PASS:
            yield from _high(case, one, height)
        yield from _face(case, one)


def _asked(case: Case, one: Hung, question: Question[S, Compared], read: S, key: str) -> Finding:
    values = in_force_or_practice(case, key)
    return question.judge(case, Asked(read, one.name, one.place, values))


def _high(case: Case, one: Hung, height: Read) -> Iterator[Finding]:
    usual = _asked(case, one, RAIL_HIGH, height, "stage.most-rail-height")
    at, inputs = (*one.place, "found"), Inputs(case)
    if usual.verdict is not Verdict.FAIL:
        yield usual
        lacking = one.hung.found.high_rail
        if lacking is not None and lacking.value is HighRail.NOT_ALL:
            # Said of a rail of whatever height: it lacks something that is asked of it.
            yield from _word_of(one, at, inputs, lacking, "rail-lacks")
        return
    seen = _since(height.stated, one.hung.found.high_rail)
    for found in _word_of(one, at, inputs, seen, "high-rail"):
        yield replace(found, inputs=(*usual.inputs, *found.inputs))


def _word_of(one: Hung, at: Place, inputs: Inputs, seen: Seen, says: str) -> Iterator[Finding]:
    word = inputs.word("high_rail", seen, EvidenceClass.OBSERVATION, (*at, "high_rail"))
    yield from WordSeen(ID, one.name, at, inputs, word).against("stage.high-rail", says)


def _since(taped: StatedValue[float] | StatedValue[int] | None, seen: Seen) -> Seen:
    """What was seen of a rail, unless its height was taped on a later day."""
    if taped is None or seen is None or taped.at is None or seen.at is None:
        return seen
    return None if is_before(seen.at, taped.at) else seen


def _where_it_hangs(case: Case, one: Hung, read: Read) -> Read:
    """A number as taped; of a rig that was moved, what was taped before says nothing."""
    rig = case.drop.rig
    if rig is None or rig.moved_from is None:
        return read
    return replace(read, stated=since_set_up(case, one, read.stated))


def _face(case: Case, one: Hung) -> Iterator[Finding]:
    at = (*one.place, "found")
    apart = _where_it_hangs(case, one, read_of("to_face", one.hung.found, at))
    near = _asked(case, one, TO_FACE, apart, "stage.most-to-face")
    side, place = one.hung.found.face_side, (*at, "face_side")
    kept = side is not None and side.value is not FaceSide.NEITHER
    if near.verdict is Verdict.PASS or (near.verdict is Verdict.MISSING and not kept):
        yield near
        return
    inputs = Inputs(case)
    word = inputs.word("face_side", side, EvidenceClass.OBSERVATION, place)
    if word == FaceSide.TIED:
        who = Message("need.face-open", (("stage", one.hung.stage),))
        inputs.refer.append(Need(Decider.QUALIFIED_PERSON, who))
    for found in WordSeen(ID, one.name, at, inputs, word).against("stage.face-side", "face-side"):
        yield replace(found, inputs=(*near.inputs, *found.inputs))


def _to_a_person(found: Finding, one: Hung) -> Finding:
    """What is more than a rule's limit is not refused where a person may have designed it so."""
    need = Message(f"need.{found.question}", (("stage", one.hung.stage),))
    return refused_by_a_person(found, Need(Decider.QUALIFIED_PERSON, need))


CHECK = Check(ID, Topic.STAGE, judge)
