"""What the counterweight is, how its mass is known, how it is held: 29 CFR 1926.451(d)(3)."""

from __future__ import annotations

import pytest

from backspan.core.findings import Finding, Verdict
from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.model.kit import PieceKind
from backspan.core.model.rigs import Fastening, PieceGroup
from backspan.core.quantities import MASS
from tests.unit.core.rigs import (
    AUSTRALIA,
    EN,
    HONG_KONG,
    OSHA,
    PIECE,
    PROJECT,
    STACK,
    count,
    finding,
    findings,
    mass,
    needs,
    on_basis,
    put,
    seen,
    stated,
)

P, F = Verdict.PASS, Verdict.FAIL


def kinds(kind: PieceKind) -> dict[str, Finding]:
    found = findings(put(PROJECT, (*PIECE, "kind"), kind), "counterweight-kind")
    return {one.message.id.split(".")[0]: one for one in found}


@pytest.mark.parametrize(
    ("kind", "flowable", "purpose_made"),
    [
        (PieceKind.STEEL_PLATE, P, P),
        (PieceKind.CAST_IRON, P, P),
        (PieceKind.CONCRETE_CAST, P, P),
        (PieceKind.SAND, F, F),
        (PieceKind.GRAVEL, F, F),
        (PieceKind.WATER, F, F),
        (PieceKind.MASONRY_UNIT, P, F),
        (PieceKind.ROOFING_ROLL, P, F),
        (PieceKind.SCRAP, P, F),
    ],
)
def test_what_may_be_a_counterweight(
    kind: PieceKind, flowable: Verdict, purpose_made: Verdict
) -> None:
    found = kinds(kind)
    assert found["flowable"].verdict is flowable
    assert found["purpose-made"].verdict is purpose_made
    assert found["flowable"].rules[0].provenance.clause == "1926.451(d)(3)(ii)"
    assert found["purpose-made"].rules[0].provenance.clause == "1926.451(d)(3)(iii)"


def test_every_kind_of_piece_is_decided() -> None:
    for kind in PieceKind:
        assert {one.verdict for one in kinds(kind).values()} <= {P, F}


def test_one_bad_kind_among_good_ones_is_named() -> None:
    sand = put(PROJECT.kit.pieces[0], ("kind",), PieceKind.SAND)
    mixed = put(PROJECT, ("kit", "pieces"), (*PROJECT.kit.pieces, put(sand, ("id",), "X")))
    groups = (PieceGroup("P", count(16)), PieceGroup("X", count(1)))
    found = findings(put(mixed, (*STACK, "groups"), groups), "counterweight-kind")
    assert [one.verdict for one in found] == [F, F]
    assert dict(found[0].message.values)["found"] == ("sand",)


@pytest.mark.parametrize("check", ["counterweight-kind", "counterweight-marking"])
def test_without_pieces_there_is_nothing_to_look_at_yet(check: str) -> None:
    for found in findings(put(PROJECT, (*STACK, "groups"), ()), check):
        assert found.verdict is Verdict.MISSING
        assert needs(found) == (("need.input", "pieces"),)


@pytest.mark.parametrize(
    ("fastening", "verdict"),
    [
        (Fastening.LOCKED_PIN, P),
        (Fastening.BOLTED, P),
        (Fastening.UNLOCKED_PIN, F),
        (Fastening.WIRE_TIE, F),
        (Fastening.RESTING, F),
    ],
)
def test_how_pieces_are_held(fastening: Fastening, verdict: Verdict) -> None:
    found = finding(put(PROJECT, (*STACK, "fastening"), seen(fastening)), "counterweight-fastening")
    assert found.verdict is verdict
    assert found.rules[0].provenance.clause == "1926.451(d)(3)(iv)"


def test_a_lock_is_not_a_tool() -> None:
    found = finding(on_basis(PROJECT, AUSTRALIA), "counterweight-fastening")
    assert found.verdict is F


def test_a_fastening_nobody_looked_at_is_missing() -> None:
    found = finding(put(PROJECT, (*STACK, "fastening"), None), "counterweight-fastening")
    assert found.verdict is Verdict.MISSING
    told = StatedValue(Fastening.LOCKED_PIN, evidence=Evidence.TOLD)
    heard = finding(put(PROJECT, (*STACK, "fastening"), told), "counterweight-fastening")
    assert heard.verdict is Verdict.MISSING
    assert needs(heard) == (("need.evidence", "fastening"),)


@pytest.mark.parametrize(
    ("evidence", "verdict"),
    [
        (Evidence.LABEL, P),
        (Evidence.CERTIFICATE, P),
        (Evidence.MEASURED, P),
        (Evidence.TOLD, Verdict.MISSING),
        (Evidence.ASSUMED, Verdict.MISSING),
        (None, Verdict.MISSING),
    ],
)
def test_how_the_mass_of_a_piece_is_known(evidence: Evidence | None, verdict: Verdict) -> None:
    piece = stated("55 lb", MASS, evidence)
    found = finding(put(PROJECT, (*PIECE, "mass"), piece), "counterweight-marking")
    assert found.verdict is verdict


def test_where_the_text_asks_for_a_stamp_weighing_is_not_enough() -> None:
    weighed = put(PROJECT, (*PIECE, "mass"), stated("55 lb", MASS, Evidence.MEASURED))
    hong_kong = on_basis(weighed, HONG_KONG)
    assert finding(hong_kong, "counterweight-marking").verdict is F
    stamped = on_basis(put(PROJECT, (*PIECE, "mass"), mass("55 lb")), HONG_KONG)
    assert finding(stamped, "counterweight-marking").verdict is P


def test_where_a_basis_is_silent_on_kind_and_fastening_the_trade_refuses() -> None:
    silent = on_basis(PROJECT, EN)
    assert finding(silent, "counterweight-fastening").verdict is P
    resting = put(silent, (*STACK, "fastening"), seen(Fastening.RESTING))
    found = finding(resting, "counterweight-fastening")
    assert (found.verdict, found.rules[0].rule_set) == (F, "trade-practice")
    sand = put(silent, (*PIECE, "kind"), PieceKind.SAND)
    assert {one.verdict for one in findings(sand, "counterweight-kind")} == {F}
    both = on_basis(PROJECT, EN, OSHA)
    assert finding(both, "counterweight-fastening").verdict is P
