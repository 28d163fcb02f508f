"""Every message the core can send has a sentence with exactly its values, and none is idle."""

from __future__ import annotations

import ast
import re
import string
from collections.abc import Iterator
from dataclasses import replace
from typing import Any

import pytest

from backspan.core.findings import DoesNotApply, Finding, Message
from backspan.core.model.basis import ReadingChoice
from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.model.kit import PieceKind
from backspan.core.model.plan import Plan
from backspan.core.model.project import Project
from backspan.core.model.rigs import (
    Fastening,
    FulcrumKind,
    HungStage,
    OtherSupport,
    OtherSupportKind,
    Rig,
    Tieback,
    TiebackEnd,
)
from backspan.core.model.signed import SignedLimits
from backspan.core.model.site import AnchorStanding, AnchorUse
from backspan.core.model.units import Condition, LabelState
from backspan.core.quantities import ANGLE, Style
from backspan.core.quantities.named import QUANTITIES
from backspan.core.review import review
from backspan.core.words import ENGLISH, language_of, say
from backspan.core.words.english import CHECKS, INPUTS, MARGINS, SENTENCES
from backspan.core.words.say import NO_NAME, WORD_VALUES
from tests.architecture.source import SRC, read_module
from tests.unit.core import rigs
from tests.unit.core.rigs import (
    ARM,
    BEAM,
    BEAM_UNIT,
    EN,
    HOIST,
    HONG_KONG,
    LEFT,
    LIBRARY,
    ON,
    OSHA,
    PIECE,
    PROJECT,
    QUEBEC,
    RIG,
    STACK,
    STACKED,
    STAGE,
    TODAY,
    count,
    force,
    labelled,
    length,
    mass,
    on_basis,
    put,
    seen,
    without_stall,
)
from tests.unit.core.words.lacking_lines import LINES

ROOMS = ("sheet", "checks", "review")
TREES = [
    read_module(path, under=SRC).tree
    for room in ROOMS
    for path in sorted((SRC / "backspan" / "core" / room).rglob("*.py"))
]


def first_arguments(called: str) -> Iterator[ast.expr]:
    """The first argument of every call of that name."""
    for tree in TREES:
        for node in ast.walk(tree):
            if not isinstance(node, ast.Call) or not node.args:
                continue
            if isinstance(node.func, ast.Name) and node.func.id == called:
                yield node.args[0]


def ids(node: ast.expr) -> Iterator[str]:
    """The ids an argument can be, as patterns."""
    if isinstance(node, ast.Constant):
        yield re.escape(str(node.value))
    elif isinstance(node, ast.IfExp):
        yield from ids(node.body)
        yield from ids(node.orelse)
    elif isinstance(node, ast.JoinedStr):
        parts = (
            re.escape(str(part.value)) if isinstance(part, ast.Constant) else r"[a-z-]+"
            for part in node.values
        )
        yield "".join(parts)


MESSAGES = sorted({one for node in first_arguments("Message") for one in ids(node)})


def places(sentence: str) -> set[str]:
    """The names of the values a sentence shows."""
    return {name for _, name, _, _ in string.Formatter().parse(sentence) if name}


GROUP = (*STACK, "groups", 0, "count")
OUTBOARD = put(put(PROJECT, (*ARM, "reach"), length("9 ft")), (*ARM, "backspan"), length("8 ft"))
CREDITED = replace(EN, readings=(ReadingChoice("tipping.working-load-limit", "beam credited"),))
PLAN = PROJECT.plan or Plan("")
UNTIED = tuple(
    replace(one, tiebacks=()) for one in (PROJECT.drops[0].rig or Rig()).suspension_points
)
UNIT = ("kit", "units", "H-1")
SETBACK = (*ARM, "fulcrum", "setback")
EDGE = ("site", "roofs", "ROOF", "edges", "S")
ANCHOR = ("site", "roofs", "ROOF", "anchors", "A1")
#: What of a person leaves a take-over without effect.
WITHOUT_EFFECT: tuple[dict[str, Any], ...] = (
    {"role": "painter"},
    {"card": None},
    {"employer": None},
    {"employer": "Upline Access"},
)


def with_person(**changes: Any) -> Project:
    """The rig with the engineer who took it over changed."""
    people = (replace(one, **changes) if one.id == "LE" else one for one in PROJECT.people)
    return replace(PROJECT, people=tuple(people))


TIE = (*LEFT, "tiebacks", "TL")
TIED_TO_STRUCTURE = put(
    put(PROJECT, (*TIE, "anchor"), None), (*TIE, "ends_on"), seen(TiebackEnd.STRUCTURE)
)


def turned(degrees: float) -> StatedValue[float]:
    """An angle that somebody measured."""
    return rigs.stated(f"{degrees} deg", ANGLE)


OF_PAIR = replace(rigs.at(PROJECT, TIE), id="T2", anchor="A2", angle=turned(30))
PAIR = put(
    put(PROJECT, (*LEFT, "tiebacks"), (rigs.at(PROJECT, TIE), OF_PAIR)),
    (*TIE, "angle"),
    turned(30),
)
WEAK_TIE = put(
    replace(
        PROJECT,
        kit=replace(
            PROJECT.kit,
            ropes=(
                *PROJECT.kit.ropes,
                replace(PROJECT.kit.ropes[0], id="T", breaking_force=force("5000 lb")),
            ),
        ),
    ),
    (*TIE, "rope"),
    "T",
)
SIGNED = SignedLimits(
    "LE", "S-301", TODAY, "2026-12-20", ("D",), "C", most_front=1e6, most_rear=1e6
)
NO_STRENGTH = put(PROJECT, (*ARM, "fulcrum", "surface_strength"), None)
#: Papers that do not reach so far, that ended or will, that nobody may sign.
PAPERS: tuple[dict[str, Any], ...] = (
    {},
    {"most_reach": 0.1},
    {"hoists": ("WEAK",)},
    {"until": "2026-12-01"},
    {"until": "2026-11-24"},
    {"by": "PE"},
)
ON_TOWER = put(PROJECT, (*ARM, "fulcrum", "kind"), FulcrumKind.TOWER)

RIGS = [
    PROJECT,
    STACKED,
    OUTBOARD,
    on_basis(PROJECT, OSHA, EN, QUEBEC),
    on_basis(put(PROJECT, (*ARM, "reach"), length("9 ft")), QUEBEC),
    on_basis(put(PROJECT, (*ARM, "reach"), None), QUEBEC),
    put(PROJECT, RIG, None),
    put(PROJECT, ARM, None),
    put(PROJECT, (*LEFT, "other_support"), OtherSupport(OtherSupportKind.DAVIT)),
    put(put(PROJECT, ARM, None), (*LEFT, "other_support"), OtherSupport(OtherSupportKind.DAVIT)),
    put(PROJECT, (*LEFT, "tiebacks"), (Tieback("T", "A1"),)),
    put(PROJECT, (*RIG, "stages"), ()),
    put(PROJECT, (*RIG, "stages"), (HungStage("ST", ("L",)), HungStage("ST", ("L", "R")))),
    put(PROJECT, (*RIG, "stages"), (HungStage("ST", ("L", "M", "R")),)),
    put(PROJECT, (*STACK, "groups"), ()),
    put(PROJECT, (*STACK, "fastening"), None),
    put(
        PROJECT,
        (*STACK, "fastening"),
        StatedValue(Fastening.WIRE_TIE, evidence=Evidence.TOLD),
    ),
    put(PROJECT, GROUP, count(50)),
    put(PROJECT, GROUP, count(16, tolerance=2)),
    put(PROJECT, GROUP, count(5000, tolerance=4000)),
    put(PROJECT, (*PIECE, "kind"), PieceKind.SAND),
    put(PROJECT, (*PIECE, "mass", "evidence"), Evidence.TOLD),
    put(PROJECT, (*BEAM, "label"), None),
    put(PROJECT, (*BEAM_UNIT, "label"), seen(LabelState.UNREADABLE)),
    put(PROJECT, (*BEAM_UNIT, "label"), None),
    put(PROJECT, (*BEAM, "label"), labelled(10, "500 lb")),
    put(PROJECT, (*BEAM, "label"), labelled(None, "5000 lb")),
    put(PROJECT, (*BEAM, "length"), None),
    put(PROJECT, (*ARM, "tip_beyond_line"), None),
    put(PROJECT, (*BEAM, "length"), length("10 ft")),
    without_stall(PROJECT),
    put(PROJECT, ("kit", "ropes", "W", "breaking_force"), force("5000 lb")),
    *LINES,
    put(PROJECT, (*HOIST, "stall_load"), force("3001 lb")),
    put(PROJECT, (*HOIST, "rated_load"), force("499 lb")),
    put(PROJECT, (*ARM, "backspan"), None),
    put(PROJECT, (*ARM, "reach", "value"), 5.0),
    put(put(PROJECT, (*ARM, "reach", "value"), 5.0), (*ARM, "reach", "checked_by"), "PE"),
    on_basis(put(PROJECT, (*PIECE, "mass", "evidence"), Evidence.MEASURED), HONG_KONG),
    on_basis(PROJECT, CREDITED),
    put(STACKED, (*BEAM, "length"), None),
    put(STACKED, (*ARM, "reach"), length("18 ft")),
    put(STACKED, (*ARM, "reach"), length("15 ft 5 in")),
    put(STACKED, (*PIECE, "length_on_beam"), length("1 ft")),
    on_basis(put(PROJECT, (*ARM, "reach"), length("0 in")), QUEBEC),
    put(PROJECT, (*ARM, "rear_stand"), length("0 in")),
    put(PROJECT, (*ARM, "rear_stand"), length("2 ft")),
    put(PROJECT, (*ARM, "rear", "plate_length"), length("0 in")),
    put(PROJECT, (*ARM, "rear", "plate_length"), length("3 in")),
    put(PROJECT, (*ARM, "rear"), None),
    put(ON_TOWER, ("signed_limits",), (SIGNED,)),
    *(put(NO_STRENGTH, ("signed_limits",), (replace(SIGNED, **one),)) for one in PAPERS),
    put(put(PROJECT, ("people", "LE", "card"), None), ("signed_limits",), (SIGNED,)),
    put(put(PROJECT, (*BEAM, "mass"), None), ("signed_limits",), (SIGNED,)),
    put(PROJECT, (*ARM, "fulcrum", "plate_length"), length("0 in")),
    put(PROJECT, (*ARM, "fulcrum", "plate_length"), length("3 in")),
    put(PROJECT, (*ARM, "fulcrum"), None),
    replace(PROJECT, plan=None),
    put(PROJECT, (*HOIST, "stall_load"), None),
    put(PROJECT, SETBACK, length("24 in")),
    put(PROJECT, (*EDGE, "parapet", "height"), length("30 in")),
    put(PROJECT, (*EDGE, "parapet"), None),
    put(PROJECT, SETBACK, length("23 in", tolerance="1 in")),
    put(PROJECT, (*ARM, "fulcrum", "height"), length("1 in")),
    put(PROJECT, SETBACK, length("1 in")),
    put(put(PROJECT, SETBACK, length("1 in")), (*BEAM, "mass"), None),
    put(PROJECT, ("drops", "D", "width"), length("18 ft")),
    put(PROJECT, (*STAGE, "stirrup_spacing"), length("16 ft")),
    put(PROJECT, (*STAGE, "stirrup_spacing"), None),
    put(PROJECT, (*STAGE, "intended_load"), None),
    put(PROJECT, (*STAGE, "intended_load"), mass("2000 lb")),
    put(PROJECT, (*ANCHOR, "standing"), AnchorStanding.OUT_OF_SERVICE),
    put(PROJECT, (*ANCHOR, "standing"), AnchorStanding.CONDITIONAL),
    put(PROJECT, (*ANCHOR, "uses"), ()),
    replace(
        put(PROJECT, (*ANCHOR, "inspected"), "2025-12-01"), anchor_dates_required_by="roof rules"
    ),
    put(PROJECT, (*ANCHOR, "certified"), "2012-01-01"),
    put(PROJECT, (*ANCHOR, "uses"), (AnchorUse.SWAY_TIE,)),
    put(PROJECT, (*LEFT, "tiebacks", "TL", "anchor"), "A2"),
    put(PROJECT, (*RIG, "lifelines", "LL1", "anchor"), "A1"),
    replace(
        PROJECT,
        drops=(*PROJECT.drops, replace(PROJECT.drops[0], id="E", rig=Rig(moved_from="D"))),
    ),
    put(PROJECT, (*LEFT, "hoist"), "H"),
    put(PROJECT, (*LEFT, "hoist"), "H-2"),
    put(PROJECT, (*UNIT, "condition"), None),
    put(PROJECT, (*UNIT, "condition"), seen(Condition.WITHDRAWN)),
    put(PROJECT, ("kit", "units", "LOT", "count"), count(31)),
    put(PROJECT, (*UNIT, "tests", 0, "until"), "2026-12-01"),
    put(PROJECT, (*UNIT, "tests", 0, "until"), "2026-11-24"),
    replace(PROJECT, plan=replace(PLAN, ends="2026-11-24")),
    put(PROJECT, ("people", "QP", "role"), "painter"),
    put(PROJECT, (*ARM, "reach", "planned"), 0.5),
    put(PROJECT, (*ARM, "reach", "planned"), 0.61),
    put(PROJECT, ("site", "roofs", "ROOF", "anchors", "A1", "inspected"), "2025-12-01"),
    put(PROJECT, ("site", "roofs", "ROOF", "anchors", "A1", "inspected"), None),
    put(put(PROJECT, (*RIG, "lifelines"), ()), (*LEFT, "tiebacks"), ()),
    put(put(PROJECT, (*RIG, "lifelines"), None), (*LEFT, "tiebacks"), None),
    put(put(PROJECT, (*RIG, "lifelines"), None), (*RIG, "suspension_points"), UNTIED),
    put(
        put(PROJECT, ARM, None),
        (*LEFT, "other_support"),
        OtherSupport(OtherSupportKind.BOLTED_TAIL),
    ),
    put(PROJECT, (*ARM, "reach", "by"), None),
    put(PROJECT, (*STACK, "tail_gap"), length("6 ft")),
    put(ON_TOWER, (*ARM, "rear_stand"), None),
    put(PROJECT, (*ARM, "reach", "at"), "2026-11-01"),
    put(PROJECT, ("people", "MT", "role"), "painter"),
    *(with_person(**changes) for changes in WITHOUT_EFFECT),
    replace(
        PROJECT, taken_over=tuple(replace(one, until="2026-11-24") for one in PROJECT.taken_over)
    ),
    replace(
        PROJECT, taken_over=tuple(replace(one, until="2026-12-01") for one in PROJECT.taken_over)
    ),
    put(
        put(PROJECT, (*ARM, "rear_stand"), length("9 ft 9 in")),
        (*PIECE, "mass"),
        mass("55 lb", tolerance="1 lb"),
    ),
    put(TIED_TO_STRUCTURE, (*TIE, "ends_on"), None),
    put(TIED_TO_STRUCTURE, (*TIE, "ends_on"), seen(TiebackEnd.VENT)),
    TIED_TO_STRUCTURE,
    *(put(PAIR, (*LEFT, "tiebacks", "T2", "angle"), turned(one)) for one in (-30, 30, -100)),
    WEAK_TIE,
    put(PROJECT, (*ANCHOR, "ratings", 0, "load"), force("3000 lb")),
    put(PROJECT, (*ANCHOR, "ratings", 0, "toward", "value"), 0.0),
    put(PROJECT, (*ANCHOR, "ratings"), ()),
    put(put(PROJECT, (*TIE, "angle"), None), (*TIE, "attached"), None),
    put(PROJECT, (*TIE, "angle"), turned(30)),
    put(PROJECT, (*TIE, "rope"), None),
]


def sent() -> Iterator[Message]:
    """The messages of the reviews of all these rigs."""
    for rig in RIGS:
        made = review(rig, "D", LIBRARY, on=ON)
        for answer in made.topics:
            yield from answer.notes
            yield from () if answer.taken_over is None else (answer.taken_over,)
        for one in (*made.findings, *made.not_applicable):
            if isinstance(one, DoesNotApply):
                yield one.reason
            elif isinstance(one, Finding):
                yield one.message
                yield from one.notes
                yield from (need.what for need in one.needs)
        yield from (row.reason for row in made.comparison if row.reason is not None)


SENT = list(sent())
SPANISH = language_of("es")


def test_messages_are_found_in_the_source() -> None:
    assert len(MESSAGES) > 40


@pytest.mark.parametrize("pattern", MESSAGES)
def test_a_message_of_the_source_has_a_sentence(pattern: str) -> None:
    assert [name for name in SENTENCES if re.fullmatch(pattern, name)]


@pytest.mark.parametrize("name", SENTENCES)
def test_a_sentence_is_said_somewhere_with_all_its_values(name: str) -> None:
    carried = [dict(message.values) for message in SENT if message.id == name]
    assert carried, "no rig of this file brings it up"
    for values in carried:
        assert places(SENTENCES[name]) <= set(values)


def test_every_message_that_was_sent_has_a_sentence() -> None:
    assert {message.id for message in SENT} <= set(SENTENCES)


def told_words(message: Message) -> Iterator[tuple[str, str]]:
    """The texts a message carries, each with the name of its value."""
    for name, value in message.values:
        if isinstance(value, str | tuple):
            yield from ((name, one) for one in ([value] if isinstance(value, str) else value))


def test_every_message_that_was_sent_is_said_in_spanish() -> None:
    for message in SENT:
        spanish = say(message, Style.US, language=SPANISH)
        assert spanish != say(message, Style.US, language=ENGLISH), message


def test_a_word_that_was_sent_has_a_spanish_one_or_is_a_persons_own() -> None:
    sent_words = {
        one for message in SENT for name, one in told_words(message) if name in WORD_VALUES
    }
    assert sent_words - set(SPANISH.words) == {"", "painter"}


def test_a_word_of_the_model_is_sent_under_a_name_that_is_put_into_words() -> None:
    under = {name for message in SENT for name, one in told_words(message) if one in SPANISH.words}
    unnamed = {name for message in SENT for name, one in told_words(message) if one in NO_NAME}
    assert under - unnamed - {"input", "inputs"} <= WORD_VALUES


def constants() -> set[str]:
    """Every text constant of these rooms."""
    return {
        node.value
        for tree in TREES
        for node in ast.walk(tree)
        if isinstance(node, ast.Constant) and isinstance(node.value, str)
    }


def test_every_margin_of_the_source_has_words_and_no_words_are_idle() -> None:
    made = {one for node in first_arguments("Margin") for one in ids(node)}
    assert made
    for pattern in made:
        assert [name for name in MARGINS if re.fullmatch(pattern, name)]
    prefixes = tuple(text for text in constants() if text.endswith("-") and len(text) > 1)
    idle = [name for name in MARGINS if name not in constants() and not name.startswith(prefixes)]
    assert idle == []


#: Words a project file may state that no check reads yet.
AWAITED = {"connector", "connectors", "damage", "end_stop", "pin", "saddle", "thimble", "tightened"}


def test_no_words_for_inputs_or_checks_are_idle() -> None:
    beside_their_plan = {one.name for one in QUANTITIES.values() if one.record}
    assert set(INPUTS) - beside_their_plan - AWAITED <= constants()
    assert set(CHECKS) <= constants()
