import json
from dataclasses import dataclass
from enum import StrEnum
from typing import Annotated, Any

import pytest

from backspan.core.errors import BackspanError
from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.model.kit import Hoist
from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop
from backspan.core.quantities import Length
from backspan.core.wire import WireError, canonical, from_data, to_data
from tests.unit.core.model.sample import project, stated


class Colour(StrEnum):
    RED = "red"
    BLUE = "blue"


@dataclass(frozen=True, slots=True)
class Inner:
    name: str
    value: StatedValue[Length] | None = None


@dataclass(frozen=True, slots=True)
class Outer:
    count: int
    ready: bool
    length: Annotated[float, "marked"]
    colour: Colour
    inners: tuple[Inner, ...] = ()
    pair: tuple[float, str] = (0.0, "")


OUTER = Outer(3, ready=True, length=2, colour=Colour.BLUE, inners=(Inner("a"),), pair=(1.5, "x"))
DATA = {
    "count": 3,
    "ready": True,
    "length": 2.0,
    "colour": "blue",
    "inners": [{"name": "a", "value": None}],
    "pair": [1.5, "x"],
}


def test_every_field_is_written_also_at_its_default() -> None:
    assert to_data(OUTER) == DATA
    assert type(to_data(OUTER)["length"]) is float
    assert type(to_data(OUTER)["colour"]) is str


def test_reading_gives_back_what_was_written() -> None:
    assert from_data(Outer, DATA) == OUTER
    assert from_data(Project, to_data(project())) == project()


def test_a_project_survives_its_canonical_bytes() -> None:
    assert from_data(Project, json.loads(canonical(to_data(project())))) == project()


def test_a_value_with_evidence_is_read_as_what_it_holds() -> None:
    hoist = Hoist("H1", "Hoist", stated(4448.2, evidence=Evidence.LABEL))
    data = to_data(hoist)
    assert data["rated_load"] == {
        "value": 4448.2,
        "tolerance": None,
        "evidence": "label",
        "by": None,
        "at": None,
        "document": None,
        "checked_by": None,
        "text": "",
        "planned": None,
    }
    assert from_data(Hoist, data) == hoist


def test_a_field_with_a_default_may_be_absent_from_what_was_stored() -> None:
    assert from_data(Outer, without("pair")) == Outer(
        3, ready=True, length=2.0, colour=Colour.BLUE, inners=(Inner("a"),)
    )
    assert from_data(Inner, {"name": "a"}) == Inner("a")


def without(name: str) -> dict[str, Any]:
    return {key: value for key, value in DATA.items() if key != name}


BAD = [
    (without("count"), r"^at the top: a Outer with missing fields \['count'\]"),
    (DATA | {"more": 1}, r"unknown fields \['more'\]"),
    (DATA | {"count": True}, "^at count: found True, expected a whole number"),
    (DATA | {"count": 3.0}, "^at count: found 3.0, expected a whole number"),
    (DATA | {"ready": 1}, "^at ready: found 1, expected true or false"),
    (DATA | {"length": 2}, "^at length: found 2, expected a finite number"),
    (DATA | {"length": float("nan")}, "^at length: found nan, expected a finite number"),
    (DATA | {"length": float("inf")}, "^at length: found inf"),
    (DATA | {"length": "2 ft"}, "^at length: found '2 ft'"),
    (DATA | {"colour": "green"}, "^at colour: found 'green', expected one of: red | blue"),
    (DATA | {"colour": 5}, "^at colour: found 5"),
    (DATA | {"inners": {"name": "a"}}, "^at inners: found a dict, expected a list"),
    (DATA | {"inners": [{"name": 7, "value": None}]}, "^at inners.0.name: found 7, expected text"),
    (DATA | {"inners": ["a"]}, "^at inners.0: found 'a', expected a Inner as a dict"),
    (DATA | {"pair": [1.0]}, "^at pair: found a list, expected a list of 2"),
    (DATA | {"pair": [1.0, None]}, "^at pair.1: found None, expected text"),
    ([], "^at the top: found a list, expected a Outer as a dict"),
]


@pytest.mark.parametrize(("data", "message"), BAD)
def test_reading_refuses_what_was_not_written_so(data: Any, message: str) -> None:
    with pytest.raises(WireError, match=message):
        from_data(Outer, data)


WRITTEN_BADLY: list[tuple[dict[str, Any], str]] = [
    ({"length": float("nan")}, "^at length: found nan, expected a finite number"),
    ({"length": True}, "^at length: found True"),
    ({"count": 1.0}, "^at count: found 1.0"),
    ({"colour": "blue"}, "^at colour: found 'blue'"),
    ({"inners": [Inner("a")]}, "^at inners: found a list, expected a tuple"),
    ({"inners": (Inner("a", 5),)}, "^at inners.0.value: found 5, expected a StatedValue"),  # type: ignore[arg-type]  # the wrong type is the point
    ({"pair": (1.0, "x", "y")}, "^at pair: found a tuple, expected a tuple of 2"),
]


@pytest.mark.parametrize(("changes", "message"), WRITTEN_BADLY)
def test_writing_refuses_what_its_type_does_not_allow(
    changes: dict[str, Any], message: str
) -> None:
    good: dict[str, Any] = {"count": 1, "ready": False, "length": 1.0, "colour": Colour.RED}
    with pytest.raises(WireError, match=message):
        to_data(Outer(**(good | changes)))


def test_the_path_of_an_error_leads_to_the_place() -> None:
    data = to_data(project())
    data["drops"][1]["rig"]["lifelines"][0]["anchor"] = 5
    with pytest.raises(WireError, match=r"^at drops\.1\.rig\.lifelines\.0\.anchor: ") as caught:
        from_data(Project, data)
    assert caught.value.path == ("drops", 1, "rig", "lifelines", 0, "anchor")


def test_a_type_without_a_plain_form_is_refused() -> None:
    @dataclass(frozen=True)
    class Odd:
        value: complex

    with pytest.raises(WireError, match=r"complex.* has no plain form"):
        to_data(Odd(1j))


def test_a_long_value_is_cut_in_the_message() -> None:
    with pytest.raises(WireError, match=r"x{20}\.\.\., expected") as caught:
        from_data(Drop, "x" * 5000)
    assert len(str(caught.value)) < 200


def test_the_error_is_one_of_ours_and_a_value_error() -> None:
    assert issubclass(WireError, BackspanError)
    assert issubclass(WireError, ValueError)
