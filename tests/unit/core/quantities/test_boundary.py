"""How pydantic reads a field whose type is a quantity."""

import subprocess
import sys

import pydantic
import pytest

from backspan.core.quantities import Length, Ratio


class Beam(pydantic.BaseModel):
    """An invented model for this test."""

    reach: Length
    factor: Ratio | None = None


def test_reads_text_with_its_unit() -> None:
    assert Beam.model_validate({"reach": "18 in"}).reach == 0.4572


def test_reads_an_optional_quantity() -> None:
    assert Beam.model_validate({"reach": "18 in", "factor": "4:1"}).factor == 4.0


@pytest.mark.parametrize("value", [18, 18.0, True, None, ["18 in"]])
def test_refuses_what_is_not_text(value: object) -> None:
    with pytest.raises(pydantic.ValidationError, match="not text; a length is written as text"):
        Beam.model_validate({"reach": value})


def test_the_error_keeps_what_was_found_and_expected() -> None:
    with pytest.raises(pydantic.ValidationError, match="bare number") as caught:
        Beam.model_validate({"reach": "18"})
    (error,) = caught.value.errors()
    assert error["type"] == "quantity"
    assert error["loc"] == ("reach",)
    assert error["ctx"]["found"] == "18"
    assert error["ctx"]["expected"] == ["5'-6 1/2\"", "66.5 in", "1.69 m", "1690 mm"]
    assert error["msg"].startswith("found '18': a bare number")


def test_all_errors_come_at_once() -> None:
    with pytest.raises(pydantic.ValidationError, match="2 validation errors"):
        Beam.model_validate({"reach": "18", "factor": "4 lb"})


def test_json_schema_shows_accepted_forms() -> None:
    schema = Beam.model_json_schema()["properties"]["reach"]
    assert schema["type"] == "string"
    assert schema["examples"] == ["5'-6 1/2\"", "66.5 in", "1.69 m", "1690 mm"]
    assert schema["description"].startswith("a length written as text, such as 5'-6 1/2\"")


def test_a_model_writes_numbers_in_si() -> None:
    assert Beam.model_validate({"reach": "18 in"}).model_dump() == {"reach": 0.4572, "factor": None}


def test_the_room_loads_without_pydantic() -> None:
    program = (
        "import sys, backspan.core.quantities, backspan.core.quantities.boundary\n"
        "sys.exit(any(name.startswith('pydantic') for name in sys.modules))"
    )
    assert subprocess.run([sys.executable, "-c", program], check=False).returncode == 0
