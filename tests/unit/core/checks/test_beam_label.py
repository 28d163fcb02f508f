"""The maker's label: readable, and its limits kept. Source of the rule: the Ontario safety talk."""

from __future__ import annotations

from dataclasses import replace

import pytest

from backspan.core.findings import Decider, Finding, Verdict
from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.model.kit import BeamLabel
from backspan.core.model.project import Project
from backspan.core.model.rigs import PieceGroup
from backspan.core.model.units import LabelState
from tests.unit.core.rigs import (
    ARM,
    BEAM,
    BEAM_UNIT,
    PIECE,
    PROJECT,
    STACK,
    count,
    findings,
    force,
    labelled,
    length,
    mass,
    needs,
    put,
    seen,
)

LABEL = (*BEAM, "label")
STATE = (*BEAM_UNIT, "label")


def on_label(value: StatedValue[float]) -> StatedValue[float]:
    return replace(value, evidence=Evidence.LABEL)


def label(project: Project) -> tuple[Finding, ...]:
    return findings(project, "beam-label")


def verdicts(project: Project) -> list[tuple[str, Verdict]]:
    return [(one.message.id.rsplit(".", 1)[0], one.verdict) for one in label(project)]


@pytest.mark.parametrize("state", [LabelState.UNREADABLE, LabelState.NONE])
def test_a_beam_whose_label_cannot_be_read_is_not_used(state: LabelState) -> None:
    (found,) = label(put(PROJECT, STATE, seen(state)))
    assert found.verdict is Verdict.FAIL
    assert found.message.id == "label-state.fail"


@pytest.mark.parametrize("without", [None, BeamLabel()])
def test_a_kit_that_never_had_a_label_is_for_an_engineer(without: BeamLabel | None) -> None:
    kit = put(put(PROJECT, LABEL, without), STATE, seen(LabelState.NONE))
    (found,) = label(kit)
    assert (found.verdict, found.message.id) == (Verdict.REFER, "no-rating.refer")
    assert found.not_judged
    assert [one.who for one in found.needs] == [Decider.LICENSED_ENGINEER]
    (gone,) = label(put(kit, STATE, seen(LabelState.UNREADABLE)))
    assert gone.verdict is Verdict.FAIL


def test_a_label_nobody_looked_for_is_missing() -> None:
    (found,) = label(put(PROJECT, STATE, None))
    assert found.verdict is Verdict.MISSING
    assert needs(found) == (("need.input", "label_state"),)


@pytest.mark.parametrize("without", [None, BeamLabel()])
def test_a_readable_label_whose_limit_nobody_noted_is_missing(without: BeamLabel | None) -> None:
    found = label(put(PROJECT, LABEL, without))
    assert [one.verdict for one in found] == [Verdict.PASS, *[Verdict.MISSING] * 4]
    wanted = [needs(one)[0] for one in found[1:]]
    limits = ("label_pieces", "label_load", "label_reach", "label_backspan")
    assert wanted == [("need.input", name) for name in limits]


def test_that_a_label_asks_for_no_backspan_is_seen_on_it() -> None:
    none = put(PROJECT, (*LABEL, "least_backspan"), on_label(length("0 ft")))
    assert ("label-backspan", Verdict.PASS) in verdicts(none)
    unseen = put(PROJECT, (*LABEL, "least_backspan"), None)
    assert ("label-backspan", Verdict.MISSING) in verdicts(unseen)


@pytest.mark.parametrize(("most", "verdict"), [(16, Verdict.PASS), (15, Verdict.FAIL)])
def test_as_many_pieces_as_the_label_says_and_no_more(most: int, verdict: Verdict) -> None:
    found = verdicts(put(PROJECT, LABEL, labelled(most)))
    assert found[:2] == [("label-state", Verdict.PASS), ("label-limit", verdict)]


@pytest.mark.parametrize(("most", "verdict"), [("880 lb", Verdict.PASS), ("879 lb", Verdict.FAIL)])
def test_as_much_mass_as_the_label_says_and_no_more(most: str, verdict: Verdict) -> None:
    found = verdicts(put(PROJECT, LABEL, labelled(None, most)))
    assert found[:2] == [("label-state", Verdict.PASS), ("label-limit-mass", verdict)]


@pytest.mark.parametrize("pieces", range(1, 61))
def test_equal_masses_pass_however_many_pieces_make_them_up(pieces: int) -> None:
    fifties = put(PROJECT, (*PIECE, "mass"), mass("50 lb"))
    stacked = put(fifties, (*STACK, "groups", "LOT", "count"), count(pieces))
    full = put(stacked, LABEL, labelled(None, f"{50 * pieces} lb"))
    assert ("label-limit-mass", Verdict.PASS) in verdicts(full)


def test_each_limit_of_a_label_is_judged_and_named_for_itself() -> None:
    found = verdicts(put(PROJECT, LABEL, labelled(30, "500 lb")))
    assert ("label-limit", Verdict.PASS) in found
    assert ("label-limit-mass", Verdict.FAIL) in found


def test_pieces_of_all_groups_count() -> None:
    pair = (PieceGroup("P", count(16)), PieceGroup("P", count(15)))
    assert ("label-limit", Verdict.FAIL) in verdicts(put(PROJECT, (*STACK, "groups"), pair))


def test_a_limit_somebody_told_of_is_not_good_enough() -> None:
    told = StatedValue(30, evidence=Evidence.TOLD)
    found = label(put(PROJECT, (*LABEL, "most_pieces"), told))[1]
    assert found.verdict is Verdict.MISSING
    assert needs(found) == (("need.evidence", "label_pieces"),)


def test_a_count_that_may_be_higher_is_taken_higher() -> None:
    doubtful = put(PROJECT, (*STACK, "groups", "LOT", "count"), count(30, tolerance=1))
    assert ("label-limit", Verdict.FAIL) in verdicts(doubtful)


def test_a_tolerance_as_large_as_the_limit_is_a_finding() -> None:
    doubtful = put(PROJECT, (*LABEL, "most_pieces"), StatedValue(30, 30, Evidence.LABEL))
    assert ("label-limit", Verdict.FAIL) in verdicts(doubtful)


@pytest.mark.parametrize(
    ("field", "value", "verdict"),
    [
        ("most_load", on_label(force("1000 lb")), Verdict.PASS),
        ("most_load", on_label(force("999 lb")), Verdict.FAIL),
        ("most_reach", on_label(length("2 ft")), Verdict.PASS),
        ("most_reach", on_label(length("1 ft 11 in")), Verdict.FAIL),
        ("least_backspan", on_label(length("10 ft")), Verdict.PASS),
        ("least_backspan", on_label(length("10 ft 1 in")), Verdict.FAIL),
    ],
)
def test_a_label_rates_a_beam_for_a_load_up_to_a_reach_with_a_backspan(
    field: str, value: StatedValue[float], verdict: Verdict
) -> None:
    """Hoist 1,000 lb, reach 2 ft, backspan 10 ft, each exact."""
    says = {"most_load": "load", "most_reach": "reach", "least_backspan": "backspan"}[field]
    found = verdicts(put(PROJECT, (*LABEL, field), value))
    assert (f"label-{says}", verdict) in found


def test_a_reach_that_may_be_longer_is_taken_longer() -> None:
    doubtful = put(PROJECT, (*ARM, "reach"), length("2 ft", tolerance="1 in"))
    limited = put(doubtful, (*LABEL, "most_reach"), on_label(length("2 ft")))
    assert ("label-reach", Verdict.FAIL) in verdicts(limited)


def test_a_backspan_nobody_knows_is_missing() -> None:
    unknown = put(PROJECT, (*ARM, "backspan"), None)
    asked = put(unknown, (*LABEL, "least_backspan"), on_label(length("10 ft")))
    assert ("label-backspan", Verdict.MISSING) in verdicts(asked)
