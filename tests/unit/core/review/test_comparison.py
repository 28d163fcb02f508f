"""One support under every counterweight rule at hand: order, marks, reasons."""

from __future__ import annotations

from dataclasses import replace

import pytest

from backspan.core.findings import ComparisonRow, Verdict
from backspan.core.model.basis import ReadingChoice
from backspan.core.model.project import Project
from backspan.core.model.rigs import OtherSupport, OtherSupportKind
from backspan.core.quantities import Style
from backspan.core.review import review
from backspan.core.words import say
from tests.unit.core.rigs import (
    ARM,
    BEAM,
    EN,
    HOIST,
    LEFT,
    LIBRARY,
    ON,
    OSHA,
    PROJECT,
    RIG,
    STACK,
    STACKED,
    count,
    finding,
    length,
    on_basis,
    put,
)

COUNT = (*STACK, "groups", 0, "count")
FACTOR = "tipping.working-load-limit"


def rows(project: Project, subject: str = "D/L") -> list[ComparisonRow]:
    made = review(project, "D", LIBRARY, on=ON)
    return [row for row in made.comparison if row.subject == subject]


def row(project: Project, rule_set: str, key: str, reading: str | None = None) -> ComparisonRow:
    (only,) = (
        one
        for one in rows(project)
        if (one.rule.rule_set, one.rule.key) == (rule_set, key)
        and reading in {None, one.rule.reading}
    )
    return only


def test_the_rule_that_asks_for_most_comes_first_and_those_without_a_number_last() -> None:
    sizes = [one.required.value if one.required else None for one in rows(PROJECT)]
    numbers = [size for size in sizes if size is not None]
    assert sizes == [*sorted(numbers, reverse=True), *[None] * (len(sizes) - len(numbers))]
    assert len(numbers) > 10


def test_every_text_on_tipping_has_a_row_and_every_reading_of_a_factor_its_own() -> None:
    found = rows(PROJECT)
    with_topic = {one.id for one in LIBRARY.rule_sets if one.topic("tipping")}
    assert {one.rule.rule_set for one in found} == with_topic
    readings = {one.rule.reading for one in found if one.rule.rule_set == EN.rule_set}
    assert readings == {"beam not credited", "beam credited"}


def test_a_row_without_a_number_says_why_and_no_other_does() -> None:
    for one in rows(put(PROJECT, (*HOIST, "limiter_trip"), None)):
        assert (one.required is None) is (one.reason is not None)
        if one.reason is not None:
            assert say(one.reason, Style.US)
    open_row = row(
        put(PROJECT, (*HOIST, "limiter_trip"), None), "au-as-nzs-1576-4", "tipping.rope-tension"
    )
    assert open_row.reason is not None
    assert open_row.reason.id == "compare.not-known"
    assert dict(open_row.reason.values)["inputs"] == ("limiter_trip",)


def test_only_the_reading_in_force_is_of_the_basis() -> None:
    plain = [one for one in rows(on_basis(PROJECT, OSHA, EN)) if one.in_basis]
    assert {(one.rule.rule_set, one.rule.reading) for one in plain} == {
        (OSHA.rule_set, "as written"),
        (EN.rule_set, "beam not credited"),
    }
    chosen = replace(EN, readings=(ReadingChoice(FACTOR, "beam credited"),))
    other = [one for one in rows(on_basis(PROJECT, chosen)) if one.in_basis]
    assert [one.rule.reading for one in other] == ["beam credited"]


@pytest.mark.parametrize("pieces", [14, 15, 16])
def test_enough_agrees_with_the_check(pieces: int) -> None:
    project = put(PROJECT, COUNT, count(pieces))
    enough = all(one.enough for one in rows(project) if one.in_basis)
    assert enough is (finding(project, "tipping").verdict is Verdict.PASS)


def test_the_pieces_of_a_row_are_whole_and_enough() -> None:
    one = row(PROJECT, OSHA.rule_set, "tipping.rated-load")
    assert one.pieces == 15  # 800 lb / 55 lb = 14.5
    assert one.required is not None
    assert one.required.value == pytest.approx(800 * 0.45359237)


def test_ten_pieces_of_25_kg_are_250_kg() -> None:
    exact = put(PROJECT, ("kit", "pieces", "P", "mass", "value"), 25.0)
    exact = put(exact, (*HOIST, "rated_load", "value"), 500 * 9.80665)
    exact = put(put(exact, (*ARM, "reach"), length("0.5 m")), (*ARM, "backspan"), length("4 m"))
    assert row(exact, OSHA.rule_set, "tipping.rated-load").pieces == 10


def test_a_credited_beam_asks_for_less_and_never_for_less_than_nothing() -> None:
    less = row(PROJECT, EN.rule_set, FACTOR, "beam credited")
    more = row(PROJECT, EN.rule_set, FACTOR, "beam not credited")
    assert less.required is not None
    assert more.required is not None
    assert less.required.value < more.required.value
    heavy = put(PROJECT, (*BEAM, "mass", "value"), 5000.0)
    none = row(heavy, EN.rule_set, FACTOR, "beam credited")
    assert none.required is not None
    assert none.required.value == 0.0
    assert none.pieces == 0


def test_a_fulcrum_beyond_the_tail_leaves_reasons_and_no_numbers() -> None:
    beyond = put(STACKED, (*ARM, "reach"), length("18 ft"))
    assert all(one.required is None for one in rows(beyond))
    for one in rows(beyond):
        assert one.reason is not None
        assert not say(one.reason, Style.US).endswith(": ")


def test_other_supports_have_no_rows() -> None:
    clamp = OtherSupport(OtherSupportKind.DAVIT)
    clamped = put(put(PROJECT, ARM, None), (*LEFT, "other_support"), clamp)
    assert rows(clamped) == []
    assert rows(clamped, "D/R") != []
    assert rows(put(PROJECT, RIG, None)) == []
