"""A part of a work that is known again must be what working it out anew would give."""

from __future__ import annotations

import math
from collections.abc import Callable

from hypothesis import given
from hypothesis import strategies as st

from backspan.core.model.evidence import StatedValue
from backspan.core.quantities.named import QUANTITIES
from backspan.core.sheet.case import Place
from backspan.core.sheet.reads import Read
from backspan.core.sheet.sheet import BareSheet, Parts, Sheet

NAMES = ("a", "b", "c", "d", "e")


def read(name: str, number: float | None) -> Read:
    stated = None if number is None else StatedValue(number)
    return Read(QUANTITIES["reach"], stated, (name,))


def placed(corner: dict[str, float]) -> dict[Place, float]:
    return {(name,): number for name, number in corner.items()}


def branching(reads: dict[str, Read]) -> Callable[[Sheet], float]:
    """What is read next hangs on what was read before; d chooses without doubt, e aside."""

    def work(sheet: Sheet) -> float:
        first = sheet.read(reads["a"])
        second = sheet.read(reads["b" if first < 1.0 else "c"])
        beside = sheet.without_doubt().read(reads["d"])
        sheet.positive("second", second)
        chosen = sheet.aside().read(reads["e"])
        return first + second * beside + (100.0 if chosen < 1.0 else 0.0)

    return work


NUMBERS = st.sampled_from((0.0, 1.0, 2.0))
CORNERS = st.lists(st.dictionaries(st.sampled_from(NAMES), NUMBERS), min_size=2, max_size=12)


@given(stated=st.lists(st.none() | NUMBERS, min_size=5, max_size=5), corners=CORNERS)
def test_a_part_is_what_it_would_be_worked_out_anew(
    stated: list[float | None], corners: list[dict[str, float]]
) -> None:
    reads = {name: read(name, number) for name, number in zip(NAMES, stated, strict=True)}
    work, parts = branching(reads), Parts()
    for one in corners:
        corner = placed(one)
        again, anew = BareSheet(corner, {}, parts=parts), BareSheet(corner, {})
        got, expected = again.part("one", work), work(anew)
        assert got == expected or (math.isnan(got) and math.isnan(expected))
        assert (again.reads, again.outside, again.beside) == (
            anew.reads,
            anew.outside,
            anew.beside,
        )


def test_a_part_is_not_worked_out_again_for_what_it_does_not_read() -> None:
    one, parts, calls = read("a", 1.0), Parts(), list[float]()

    def work(sheet: Sheet) -> float:
        calls.append(sheet.read(one))
        return calls[-1]

    for corner in ({"a": 1.0}, {"a": 2.0}, {"b": 7.0}, {"a": 2.0, "b": 8.0}):
        BareSheet(placed(corner), {}, parts=parts).part("one", work)
    assert calls == [1.0, 2.0]


def test_a_part_within_a_part_tells_all_it_read() -> None:
    one, other = read("a", 1.0), read("b", 2.0)

    def outer(sheet: Sheet) -> float:
        return sheet.part("inner", lambda inner: inner.read(one)) + sheet.read(other)

    parts = Parts()
    for corner, expected in (({}, 3.0), ({"a": 5.0}, 7.0), ({"b": 4.0}, 5.0)):
        places: dict[Place, Read] = {}
        sheet = BareSheet(placed(corner), places, parts=parts)
        assert sheet.part("outer", outer) == expected
        assert list(places) == [("a",), ("b",)]


def test_what_is_of_the_same_things_is_known_to_every_question_and_of_others_to_none() -> None:
    one, calls = read("a", 1.0), list[float]()
    first, second = Parts(), Parts(common={})
    shared = Parts(common=first.common)
    thing, other = object(), object()

    def work(sheet: Sheet) -> float:
        calls.append(sheet.read(one))
        return calls[-1]

    for parts, of, expected in (
        (first, thing, 1),
        (shared, thing, 1),
        (shared, other, 2),
        (second, thing, 3),
    ):
        places: dict[Place, Read] = {}
        assert BareSheet({}, places, parts=parts).part("one", work, of=(of,)) == 1.0
        assert (len(calls), list(places)) == (expected, [("a",)])
    assert not first.own
