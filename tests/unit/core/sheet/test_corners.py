"""The worst corner of what is doubtful: nobody declares a direction, nothing is left untried."""

from __future__ import annotations

import pytest

from backspan.core.findings import DoesNotApply, Finding, Verdict
from backspan.core.model.basis import RuleChoice
from backspan.core.model.evidence import StatedValue
from backspan.core.model.kit import Piece, PieceKind
from backspan.core.model.project import Project
from backspan.core.model.rigs import BackspanFrom, PieceGroup
from backspan.core.numbers import MOST_COMBINATIONS
from backspan.core.quantities import MOMENT, Amount, parse, parse_exact
from backspan.core.review import review
from backspan.core.sheet.case import Place
from tests.unit.core.rigs import (
    ARM,
    BEAM,
    HOIST,
    HONG_KONG,
    LIBRARY,
    ON,
    OSHA,
    PIECE,
    PROJECT,
    QUEBEC,
    STACK,
    STAGE,
    count,
    finding,
    findings,
    force,
    labelled,
    length,
    mass,
    needs,
    notes,
    on_basis,
    put,
)

GROUPS = (*STACK, "groups")


def outer_blocks(number: int, tolerance: int | None = None) -> Project:
    """Light, long blocks outside five plates: each block pushes the plates to the fulcrum."""
    pieces = (
        *PROJECT.kit.pieces,
        Piece("BLOCK", "block", PieceKind.STEEL_PLATE, mass("20 lb"), length("24 in")),
        Piece("HEAVY", "plate", PieceKind.STEEL_PLATE, mass("100 lb"), length("3 in")),
    )
    project = put(PROJECT, ("kit", "pieces"), pieces)
    project = put(project, (*ARM, "backspan"), None)
    project = put(project, (*ARM, "backspan_from"), BackspanFrom.STACK)
    project = put(project, (*ARM, "reach"), length("1 ft 6 in"))
    project = put(project, (*HOIST, "stall_load"), force("1250 lb"))
    project = put(project, (*STACK, "tail_gap"), length("0 in"))
    groups = (
        PieceGroup("BLOCK", count(number, tolerance=tolerance)),
        PieceGroup("HEAVY", count(5)),
    )
    return put(project, GROUPS, groups)


def test_one_more_outer_block_can_be_the_harmful_end() -> None:
    """4 x 1,000 lb x 1.5 ft = 6,000 lb ft; inboard there are 16 ft of beam (18 - 0.5 - 1.5)."""
    held = {}
    for number in (1, 2, 3):
        capacity = finding(outer_blocks(number), "tipping").capacity
        assert capacity is not None
        held[number] = capacity.value / parse("1 lb ft", MOMENT)
        # blocks 2 ft long at 20 lb from the tail, then 15 in of plates of 500 lb in all
        by_hand = 20 * number * (16 - number) + 500 * (16 - 2 * number - 0.625)
        assert held[number] == pytest.approx(by_hand, rel=1e-9)
    assert held[3] < held[2] < held[1]


def test_a_doubtful_count_is_asked_at_every_whole_number() -> None:
    for number in (1, 2, 3):
        sure = [finding(outer_blocks(one), "tipping") for one in range(number - 1, number + 2)]
        vague = finding(outer_blocks(number, tolerance=1), "tipping")
        worst = max(sure, key=lambda one: one.utilisation or 0.0)
        assert (vague.verdict, vague.demand, vague.capacity) == (
            worst.verdict,
            worst.demand,
            worst.capacity,
        )


def test_more_pieces_in_doubt_shorten_the_backspan_of_a_proportion() -> None:
    """Quebec asks 1.5 times as far inboard as outboard; a longer stack has its middle nearer."""
    project = on_basis(outer_blocks(0), QUEBEC)
    project = put(project, (*PIECE, "length_on_beam"), length("6 in"))

    def proportion(number: int, tolerance: int | None = None) -> Finding:
        groups = (PieceGroup("P", count(number, tolerance=tolerance)),)
        rig = put(project, GROUPS, groups)
        return finding(put(rig, (*ARM, "reach"), length("4 ft 9 in")), "beam-proportion")

    assert proportion(20).verdict is Verdict.PASS
    assert proportion(23).verdict is Verdict.FAIL
    vague = proportion(20, tolerance=3)
    assert vague.verdict is Verdict.FAIL
    assert "note.within-tolerance" in notes(vague)


def test_a_beam_of_doubtful_mass_is_asked_at_both_ends() -> None:
    """Its weight pulls outboard here, so the heavy end does harm."""
    far = put(PROJECT, (*ARM, "reach"), length("9 ft"))
    far = put(far, (*ARM, "backspan"), length("8 ft"))
    far = put(far, (*GROUPS, 0, "count"), count(90))
    vague = finding(put(far, (*BEAM, "mass"), mass("200 lb", tolerance="20 lb")), "tipping")
    (used,) = (one for one in vague.inputs if one.name == "beam_mass")
    assert getattr(used.used, "value", 0.0) == pytest.approx(220 * 0.45359237)


@pytest.mark.parametrize(
    ("rules", "place", "vague", "used"),
    [
        (OSHA, (*HOIST, "rated_load"), force("1000 lb", tolerance="10 lb"), 1010),
        (OSHA, (*HOIST, "stall_load"), force("3000 lb", tolerance="10 lb"), 3010),
        (HONG_KONG, (*STAGE, "dead_mass"), mass("900 lb", tolerance="10 lb"), 910),
        (OSHA, (*PIECE, "mass"), mass("55 lb", tolerance="1 lb"), 54),
    ],
    ids=["rated load", "stall load", "dead load", "mass of a piece"],
)
def test_loads_are_taken_heavy_and_pieces_light(
    rules: RuleChoice, place: Place, vague: StatedValue[float], used: int
) -> None:
    found = finding(put(on_basis(PROJECT, rules), place, vague), "tipping")
    (one,) = (one for one in found.inputs if one.place == place)
    assert isinstance(one.used, Amount)
    assert one.used.value == pytest.approx(float(parse_exact(f"{used} lb", one.used.dimension)))


def test_an_input_read_at_one_corner_only_is_asked_too() -> None:
    """As stated the beam is as long inboard as outboard; a little further out its weight counts."""
    even = put(PROJECT, (*ARM, "reach"), length("7 ft 6 in", tolerance="1 in"))
    even = put(even, (*ARM, "backspan"), length("8 ft"))
    even = put(even, (*GROUPS, 0, "count"), count(90))
    even = put(even, (*BEAM, "length"), length("15 ft"))
    even = put(even, (*BEAM, "mass"), mass("200 lb", tolerance="20 lb"))
    found = finding(even, "tipping")
    (used,) = (one for one in found.inputs if one.name == "beam_mass")
    assert getattr(used.used, "value", 0.0) == pytest.approx(220 * 0.45359237)


def test_more_in_doubt_than_can_be_tried_is_for_a_person() -> None:
    vague = put(
        PROJECT, (*GROUPS, 0, "count"), count(MOST_COMBINATIONS, tolerance=MOST_COMBINATIONS // 2)
    )
    vague = put(vague, (*ARM, "reach"), length("2 ft", tolerance="1/16 in"))
    found = finding(vague, "tipping")
    assert found.verdict is Verdict.REFER
    assert [one for one, _ in needs(found)] == ["need.too-much-doubt"]


def test_too_much_doubt_leaves_a_fail_a_fail() -> None:
    vague = put(PROJECT, (*GROUPS, 0, "count"), count(14, tolerance=MOST_COMBINATIONS))
    vague = put(vague, (*ARM, "reach"), length("20 ft", tolerance="1/16 in"))
    assert finding(vague, "tipping").verdict is Verdict.FAIL


def test_a_finding_that_only_a_corner_has_replaces_the_reason_for_none() -> None:
    """Without a tip the length check is silent, but for a backspan that may be too long."""
    open_tip = put(PROJECT, (*ARM, "tip_beyond_line"), None)
    exact = put(open_tip, (*ARM, "backspan"), length("15 ft 11 in"))
    vague = put(open_tip, (*ARM, "backspan"), length("15 ft 11 in", tolerance="2 in"))

    def of_left(project: Project) -> list[Finding | DoesNotApply]:
        made = review(project, "D", LIBRARY, on=ON)
        both: tuple[Finding | DoesNotApply, ...] = (*made.findings, *made.not_applicable)
        return [one for one in both if (one.check, one.subject) == ("beam-length", "D/L")]

    (reason,) = of_left(exact)
    assert isinstance(reason, DoesNotApply)
    (found,) = of_left(vague)
    assert isinstance(found, Finding)
    assert found.verdict is Verdict.FAIL


def test_what_changes_nothing_is_shown_as_stated() -> None:
    """The beam's own weight is left out here, so its tip plays no part; the reach does."""
    vague = put(PROJECT, (*ARM, "tip_beyond_line"), length("6 in", tolerance="1 in"))
    vague = put(vague, (*ARM, "reach"), length("2 ft", tolerance="1 in"))
    used = {one.name: (one.stated, one.used) for one in finding(vague, "tipping").inputs}
    assert used["tip_beyond_line"][0] == used["tip_beyond_line"][1]
    assert used["reach"][0] != used["reach"][1]


def test_a_question_that_finds_its_worst_corner_is_not_asked_again() -> None:
    vague = count(MOST_COMBINATIONS, tolerance=MOST_COMBINATIONS - 1)
    rig = put(PROJECT, (*GROUPS, 0, "count"), vague)
    rig = put(rig, (*BEAM, "label"), labelled(2 * MOST_COMBINATIONS))
    (found,) = (one for one in findings(rig, "beam-label") if one.question == "label-limit")
    assert found.verdict is Verdict.REFER
    assert [one for one, _ in needs(found)] == ["need.too-much-doubt"]
