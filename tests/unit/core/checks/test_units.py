"""Which very thing it is: named, sound, in one place, tested; and what its exchange changes."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from backspan.core.findings import Verdict
from backspan.core.model.project import Project
from backspan.core.model.rigs import PieceGroup, Rig
from backspan.core.model.units import Condition, TestOf, UnitKind
from backspan.core.wire import configuration_code
from tests.unit.core.rigs import (
    ARM,
    LEFT,
    PROJECT,
    RIG,
    RIGHT,
    STACK,
    at,
    count,
    findings,
    put,
    seen,
)

UNIT = ("kit", "units", "H-1")
OTHER = ("kit", "units", "H-2")
DROP = PROJECT.drops[0]


def code(project: Project, number: int = 0) -> str:
    return configuration_code(project, project.drops[number])


def messages(project: Project, check: str, subject: str = "D/L") -> list[tuple[str, Verdict]]:
    return [(one.message.id, one.verdict) for one in findings(project, check, subject)]


def two_drops() -> Project:
    """Another drop with the same rig: each thing is then named twice."""
    again = replace(DROP, id="E", start=9.0)
    return replace(PROJECT, drops=(DROP, again))


def test_each_thing_of_the_sound_rig_is_known_sound_and_in_one_place() -> None:
    assert messages(PROJECT, "hoist-unit") == [
        ("condition.pass", Verdict.PASS),
        ("test.pass", Verdict.PASS),
        ("brake-test.pass", Verdict.PASS),
    ]
    for check in ("rope-unit", "beam-unit", "piece-lot"):
        assert messages(PROJECT, check) == [("condition.pass", Verdict.PASS)]
    assert messages(PROJECT, "stage-unit", "D/ST-1") == [("condition.pass", Verdict.PASS)]


@pytest.mark.parametrize("condition", [Condition.DEFECTIVE, Condition.WITHDRAWN])
def test_what_is_not_sound_fails(condition: Condition) -> None:
    found = put(PROJECT, (*UNIT, "condition"), seen(condition))
    assert messages(found, "hoist-unit")[0] == ("condition.fail", Verdict.FAIL)


@pytest.mark.parametrize(
    "changes",
    [{"of": None}, {"of": TestOf.OTHER}, {"of": TestOf.LOADED}],
)
def test_only_a_test_of_the_brake_stands_for_it(changes: dict[str, Any]) -> None:
    (test,) = at(PROJECT, (*UNIT, "tests"))
    found = put(PROJECT, (*UNIT, "tests"), (replace(test, **changes),))
    assert messages(found, "hoist-unit")[-1] == ("brake-test.missing", Verdict.MISSING)
    assert messages(put(found, (*UNIT, "tests"), ()), "hoist-unit")[1:] == [
        ("brake-test.missing", Verdict.MISSING)
    ]
    both = put(found, (*UNIT, "tests"), (replace(test, **changes), test))
    assert messages(both, "hoist-unit")[-1] == ("brake-test.pass", Verdict.PASS)


def test_a_test_of_the_brake_that_ran_out_counts_no_more() -> None:
    over = put(PROJECT, (*UNIT, "tests", 0, "until"), "2026-11-24")
    assert messages(over, "hoist-unit")[1:] == [
        ("test.over", Verdict.FAIL),
        ("brake-test.missing", Verdict.MISSING),
    ]


@pytest.mark.parametrize(
    ("day", "told"),
    [
        ("2025-12-19", ("brake-test.pass", Verdict.PASS)),
        ("2025-12-18", ("brake-test.lapses", Verdict.REFER)),
        ("2025-11-24", ("brake-test.lapses", Verdict.REFER)),
        ("2025-11-23", ("brake-test.old", Verdict.MISSING)),
        ("1999-09-01", ("brake-test.old", Verdict.MISSING)),
    ],
)
def test_a_test_of_the_brake_counts_no_longer_than_a_year_whatever_its_paper_says(
    day: str, told: tuple[str, Verdict]
) -> None:
    (test,) = at(PROJECT, (*UNIT, "tests"))
    found = put(PROJECT, (*UNIT, "tests"), (replace(test, at=day, until="2099-09-01"),))
    assert messages(found, "hoist-unit")[-1] == told
    both = put(found, (*UNIT, "tests"), (replace(test, at=day, until="2099-09-01"), test))
    assert messages(both, "hoist-unit")[-1] == ("brake-test.pass", Verdict.PASS)


def test_a_thing_in_another_drop_too_fails_in_both() -> None:
    told = dict(messages(two_drops(), "hoist-unit"))
    assert told["unit.twice"] is Verdict.FAIL
    (twice,) = (
        one for one in findings(two_drops(), "hoist-unit") if one.message.id == "unit.twice"
    )
    assert dict(twice.message.values)["others"] == ("E/L",)


@pytest.mark.parametrize(
    ("first", "second", "stops"),
    [
        ("S-77", "S-77", True),
        ("S-77", "s - 77", True),
        ("S-77", "S-78", False),
        ("S-77", None, False),
        (None, None, False),
        (" ", " ", False),
    ],
)
def test_two_things_that_hang_with_one_serial_fail(
    first: str | None, second: str | None, stops: bool
) -> None:
    both = put(put(PROJECT, (*UNIT, "serial"), first), (*OTHER, "serial"), second)
    for subject in ("D/L", "D/R"):
        assert (dict(messages(both, "hoist-unit", subject)).get("unit.same-serial")) is (
            Verdict.FAIL if stops else None
        )


def test_one_serial_of_a_thing_that_hangs_nowhere_or_is_of_another_kind_is_no_fault() -> None:
    same = put(put(PROJECT, (*UNIT, "serial"), "S-77"), (*OTHER, "serial"), "S-77")
    other_kind = put(same, (*OTHER, "of"), "WEAK")
    spare = put(same, (*RIGHT, "hoist"), "H")
    for project in (other_kind, spare):
        assert "unit.same-serial" not in dict(messages(project, "hoist-unit"))


def test_one_lot_may_stand_in_many_places_up_to_its_count() -> None:
    enough = put(two_drops(), ("kit", "units", "LOT", "count"), count(64))
    short = put(two_drops(), ("kit", "units", "LOT", "count"), count(63))
    assert messages(enough, "piece-lot") == [("condition.pass", Verdict.PASS)]
    assert ("unit.lot-too-small", Verdict.FAIL) in messages(short, "piece-lot")


def test_two_lots_on_one_beam_are_two_findings() -> None:
    lot = PROJECT.kit.unit(UnitKind.PIECE, "LOT")
    assert lot is not None
    other = replace(lot, id="LOT2")
    more = put(PROJECT, ("kit", "units"), (*PROJECT.kit.units, other))
    groups = (PieceGroup("LOT", count(8)), PieceGroup("LOT2", count(8)))
    found = findings(put(more, (*STACK, "groups"), groups), "piece-lot")
    assert len({one.key for one in found}) == 2


def test_a_drop_without_a_rig_names_nothing_elsewhere() -> None:
    bare = replace(PROJECT, drops=(DROP, replace(DROP, id="E", rig=None)))
    assert "unit.twice" not in dict(messages(bare, "hoist-unit"))
    empty = replace(PROJECT, drops=(DROP, replace(DROP, id="E", rig=Rig())))
    assert "unit.twice" not in dict(messages(empty, "hoist-unit"))


def test_an_exchanged_unit_changes_the_code_of_its_drop_and_of_no_other() -> None:
    hoist = PROJECT.kit.unit(UnitKind.HOIST, "H-1")
    assert hoist is not None
    spare = replace(hoist, id="H-9")
    both = put(two_drops(), ("kit", "units"), (*PROJECT.kit.units, spare))
    exchanged = put(both, (*LEFT, "hoist"), "H-9")
    assert code(exchanged) != code(both)
    assert code(exchanged, 1) == code(both, 1)


@pytest.mark.parametrize(
    ("place", "value", "changes"),
    [
        ((*UNIT, "serial"), "S-77", True),
        ((*UNIT, "of"), "H", False),
        ((*UNIT, "condition"), None, False),
        ((*UNIT, "tests"), (), False),
        (("kit", "units", "B-1", "label"), None, False),
        ((*ARM, "beam"), "B-2", True),
        ((*RIG, "stages", 0, "stage"), "ST", True),
    ],
)
def test_what_of_a_unit_is_the_rig(place: tuple[str | int, ...], value: Any, changes: bool) -> None:
    assert (code(put(PROJECT, place, value)) != code(PROJECT)) is changes
