"""Laws of what arrests a fall: strength, words, clearance; each is judged alone."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from backspan.core.findings import Verdict
from backspan.core.model.kit import RopeKind
from backspan.core.model.project import Project
from backspan.core.model.seen import (
    Grab,
    GrabHeight,
    HarnessState,
    Hooks,
    LowEnd,
    Splices,
    Swing,
    TiedTo,
)
from backspan.core.quantities import RATIO, Amount
from backspan.core.sheet.case import Place
from tests.properties.rig_strategies import RANK, all_findings, inches
from tests.unit.core.rigs import PROJECT, RIG, at, force, put, seen, stated

LINE: Place = (*RIG, "lifelines", "LL1")
LANYARD: Place = ("kit", "lanyards", "LAN")
ROPE: Place = ("kit", "ropes", "LIFE")
BELOW: Place = ("drops", "D", "clear_below")
KINDS = {"length": 12, "deceleration": 12, "slide": 1, "stretch": 1}
#: What has to be stated for a pass.
STATED: tuple[Place, ...] = (
    *((*LANYARD, name) for name in ("length", "deceleration", "slide", "most_force")),
    BELOW,
    (*ROPE, "elongation"),
    (*LINE, "grab_height"),
)
#: Each word check: its field, what passes, what never does.
WORDS: tuple[tuple[str, str, tuple[Any, ...], tuple[Any, ...]], ...] = (
    ("lifeline-grab", "grab", (Grab.MATCHED,), (Grab.UPSIDE_DOWN, Grab.OTHER_ROPE, Grab.NONE)),
    (
        "grab-height",
        "grab_height",
        (GrabHeight.ABOVE, GrabHeight.LEVEL),
        (GrabHeight.BELOW,),
    ),
    ("lifeline-swing", "swing", (Swing.NEAR,), (Swing.WIDE, Swing.STRIKES)),
    (
        "rider-harness",
        "harness",
        (HarnessState.SOUND,),
        (HarnessState.WORN, HarnessState.ARRESTED),
    ),
    ("rider-hooks", "hooks", (Hooks.LOCKING,), (Hooks.NOT_LOCKING, Hooks.BAD)),
    ("lifeline-low-end", "low_end", (LowEnd.BELOW,), (LowEnd.ABOVE,)),
    ("lifeline-splices", "splices", (Splices.NONE,), (Splices.KNOTTED, Splices.SPLICED)),
    (
        "lifeline-tied",
        "tied_to",
        (TiedTo.LIFELINE,),
        (TiedTo.STAGE, TiedTo.SUPPORT_LINES, TiedTo.SUSPENSION_ROPE),
    ),
)


@st.composite
def falls(draw: st.DrawFn) -> Project:
    """A rig whose lanyard, line and height above the level below are drawn."""
    project = put(PROJECT, BELOW, draw(inches(60, 400)))
    for name, low in KINDS.items():
        value = at(project, (*LANYARD, name))
        project = put(project, (*LANYARD, name), _as(value, draw(inches(low, 6 * low + 40))))
    share = stated(draw(st.sampled_from(["0.01", "0.03", "0.05", "0.1"])), RATIO)
    elongation = _as(at(project, (*ROPE, "elongation")), share)
    return put(project, (*ROPE, "elongation"), elongation)


def _as(value: Any, number: Any) -> Any:
    """A number on the evidence of another."""
    return put_value(value, number.value)


def put_value(value: Any, number: float) -> Any:
    """The value with another number, as exactly known."""
    return type(value)(number, 0.0, value.evidence, by=value.by, at=value.at, text=f"{number!r}")


def verdicts(project: Project, check: str) -> dict[Any, Verdict]:
    """The answers of one check."""
    return {key: one.verdict for key, one in all_findings(project, check).items()}


def no_worse(project: Project, changed: Project, check: str) -> None:
    """Every answer of the changed rig is at least as good."""
    before, after = verdicts(project, check), verdicts(changed, check)
    assert before.keys() == after.keys()
    for key, found in after.items():
        assert RANK[found] >= RANK[before[key]], key


@pytest.mark.law("fall-clearance")
@given(falls(), st.sampled_from([*KINDS, "elongation", "clear"]), st.floats(0.0, 1.5))
def test_less_fall_or_more_height_below_is_no_worse(rig: Project, name: str, by: float) -> None:
    if name == "clear":
        value = at(rig, BELOW)
        no_worse(rig, put(rig, BELOW, put_value(value, value.value + by)), "fall-clearance")
        return
    place = (*ROPE, name) if name == "elongation" else (*LANYARD, name)
    value = at(rig, place)
    more = put_value(value, value.value * (1 + by))
    no_worse(put(rig, place, more), rig, "fall-clearance")


@pytest.mark.law("fall-clearance")
@given(
    falls(),
    st.sampled_from(STATED),
)
def test_what_nobody_stated_never_makes_a_pass(rig: Project, place: Place) -> None:
    verdicts(rig, "fall-clearance")
    left = all_findings(put(rig, place, None), "fall-clearance")
    whole = [one for one in left.values() if one.subject == "D/LL1"]
    assert any(one.verdict is not Verdict.PASS for one in whole)


def needed(project: Project) -> float:
    """How much height a fall takes on the first line."""
    (found,) = [
        one
        for one in all_findings(project, "fall-clearance").values()
        if one.subject == "D/LL1" and one.question == "fall-clearance"
    ]
    (amount,) = [value for name, value in found.message.values if name == "needed"]
    assert isinstance(amount, Amount)
    return amount.value


@pytest.mark.law("fall-clearance")
@given(falls(), inches(120, 2400), st.floats(0.0, 1.5))
def test_lower_on_the_line_never_needs_less_clearance(rig: Project, height: Any, by: float) -> None:
    place: Place = ("drops", "D", "height")
    stands = at(rig, place)
    short = put(rig, place, put_value(stands, height.value))
    tall = put(rig, place, put_value(stands, height.value * (1 + by)))
    assert needed(tall) >= needed(short)
    no_worse(tall, short, "fall-clearance")


@pytest.mark.law("lifeline-strength")
@given(st.integers(3000, 9000), st.floats(0.4, 1.0), st.integers(0, 2000))
def test_a_stronger_line_is_no_worse(strong: int, kept: float, more: int) -> None:
    end: Place = ("kit", "terminations", "SEWN", "efficiency")
    rig = put(PROJECT, end, put_value(at(PROJECT, end), kept))
    few, many = (
        put(rig, (*ROPE, "breaking_force"), force(f"{one} lb")) for one in (strong, strong + more)
    )
    no_worse(few, many, "lifeline-strength")
    for lost in ((*LINE, "termination"), (*LINE, "rope")):
        found = all_findings(put(many, lost, None), "lifeline-strength")
        assert {v.verdict for v in found.values() if v.subject == "D/LL1"} == {Verdict.MISSING}


@pytest.mark.law("lifeline-rope")
@given(st.sampled_from(sorted(RopeKind)))
def test_no_line_of_natural_fibre_passes(kind: RopeKind) -> None:
    assert (
        Verdict.FAIL
        in verdicts(put(PROJECT, (*ROPE, "kind"), RopeKind.NATURAL), "lifeline-rope").values()
    )
    found = set(verdicts(put(PROJECT, (*ROPE, "kind"), kind), "lifeline-rope").values())
    by_kind = {RopeKind.NATURAL: Verdict.FAIL, RopeKind.WIRE: Verdict.REFER}
    assert found == {by_kind.get(kind, Verdict.PASS)}


@pytest.mark.law
@pytest.mark.parametrize(
    ("check", "field", "good", "bad"), WORDS, ids=[check for check, *_ in WORDS]
)
@given(st.data())
def test_only_an_accepted_word_passes(
    check: str, field: str, good: tuple[Any, ...], bad: tuple[Any, ...], data: st.DataObject
) -> None:
    for words, passes in ((good, True), (bad, False)):
        word = data.draw(st.sampled_from(words))
        found = all_findings(put(PROJECT, (*LINE, field), seen(word)), check)
        (own,) = [one for one in found.values() if one.subject == "D/LL1"]
        assert (own.verdict is Verdict.PASS) is passes
    assert Verdict.FAIL in verdicts(put(PROJECT, (*LINE, field), seen(bad[0])), check).values()
