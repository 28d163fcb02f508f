import copy
import json
import re
import typing
from typing import Any

import pytest
import yaml
from jsonschema import Draft202012Validator

from backspan.exchange.parse.schema import project_schema
from tests.architecture.source import ROOT
from tests.unit.exchange.sample import SAMPLE


def as_an_editor_reads_it() -> Any:
    """The sample with numbers as numbers and dates as text, as in YAML 1.2."""
    return numbered(yaml.load(SAMPLE, Loader=yaml.CBaseLoader))  # noqa: S506  # the loader that makes text only


def numbered(data: Any) -> Any:
    """The data with whole numbers as numbers, but for the editions, which stand in quotes."""
    if isinstance(data, dict):
        return {key: one if key == "edition" else numbered(one) for key, one in data.items()}
    if isinstance(data, list):
        return [numbered(one) for one in data]
    return int(data) if data.isdigit() else data


def errors(data: Any) -> list[str]:
    return [error.message for error in Draft202012Validator(project_schema()).iter_errors(data)]


def test_the_schema_is_a_sound_schema_and_plain_json() -> None:
    schema = project_schema()
    Draft202012Validator.check_schema(schema)
    assert json.loads(json.dumps(schema)) == schema


def test_the_sample_fits_as_the_parser_and_as_an_editor_reads_it() -> None:
    assert errors(yaml.load(SAMPLE, Loader=yaml.CBaseLoader)) == []  # noqa: S506  # as above
    assert errors(as_an_editor_reads_it()) == []


def test_text_that_an_editor_takes_for_a_number_fits() -> None:
    data = as_an_editor_reads_it()
    data["basis"]["tipping"][0]["edition"] = 1996
    data["kit"]["terminations"] = [{"id": 7, "name": "Thimble end", "efficiency": 0.8}]
    assert errors(data) == []


def changed(path: str, value: Any) -> Any:
    data = copy.deepcopy(as_an_editor_reads_it())
    place: Any = data
    *steps, last = [int(step) if step.isdigit() else step for step in path.split(".")]
    for step in steps:
        place = place[step]
    place[last] = value
    return data


POINT = "drops.1.rig.suspension_points.0"


@pytest.mark.parametrize(
    ("path", "value"),
    [
        ("format", 2),
        ("units", "imperial"),
        ("nmber", "T-1"),
        ("site.roofs.0.edges.0.start", ["0 ft"]),
        ("site.roofs.0.edges.0.start", ["0 ft", "0 ft", "0 ft"]),
        ("site.roofs.0.anchors.0.uses", ["tie back"]),
        ("site.roofs.0.anchors.0.id", "A 1"),
        (f"{POINT}.station", 12),
        (f"{POINT}.counterweighted_beam.reach", 18),
        (f"{POINT}.counterweighted_beam.reach", {"value": "18 in", "text": "18 in"}),
        (f"{POINT}.counterweighted_beam.reach", {"tolerance": "1 in"}),
        (f"{POINT}.counterweighted_beam.stack.groups.0.count", 1.5),
        (f"{POINT}.counterweighted_beam.fulcrum.kind", "stnd"),
        ("drops", {}),
        ("people.0", {"id": "EK", "name": "E. Kestrel"}),
    ],
)
def test_what_the_parser_refuses_by_shape_the_schema_refuses(path: str, value: Any) -> None:
    assert len(errors(changed(path, value))) == 1


def within(schema: Any) -> typing.Iterator[dict[str, Any]]:
    """Every schema within a schema, itself among them."""
    if isinstance(schema, dict):
        yield schema
        for value in schema.values():
            yield from within(value)
    elif isinstance(schema, list):
        for value in schema:
            yield from within(value)


def test_every_record_says_what_it_is_and_takes_no_other_key() -> None:
    records = [one for one in within(project_schema()) if one.get("type") == "object"]
    assert len(records) > 30
    for record in records:
        assert record["description"].endswith(".")
        assert record["additionalProperties"] is False
        assert set(record["required"]) <= set(record["properties"])


def test_quantities_say_what_may_be_written() -> None:
    beam = project_schema()["$defs"]["CounterweightedBeam"]["properties"]["reach"]["anyOf"][0]
    assert beam["type"] == "string"
    assert beam["description"].startswith("a length, such as 5'-6 1/2\"")
    assert beam["description"].endswith("more than zero")
    assert beam["examples"]


def test_dates_and_counts_say_what_may_be_written() -> None:
    definitions = project_schema()["$defs"]
    assert "2026-11-25 14:05" in definitions["Statement"]["properties"]["at"]["description"]
    assert definitions["Anchor"]["properties"]["inspected"]["description"] == (
        "a date, such as 2026-11-25"
    )
    assert definitions["Anchor"]["properties"]["at"]["type"] == "array"
    count = definitions["PieceGroup"]["properties"]["count"]["anyOf"][0]
    assert count["description"] == "a whole number; zero or more"


WRONG_TEXTS = [
    ("reach", "18"),
    ("reach", "-18 in"),
    ("reach", {"value": "18"}),
    ("reach", {"value": "-18 in"}),
    ("reach", {"value": "18 in", "planned": "-1 in"}),
    ("reach", {"value": "18 in", "at": "25.11.2026"}),
    ("stack.groups.0.count", -1),
    ("stack.groups.0.count", "-1"),
    ("stack.groups.0.count", {"value": -1}),
    ("stack.groups.0.per_row", 0),
    ("stack.groups.0.per_row", "0"),
    ("stack.groups.0.count", "10000000000"),
    ("rope", "x" * 201),
]


@pytest.mark.parametrize(("path", "value"), WRONG_TEXTS, ids=str)
def test_a_text_without_unit_an_impossible_count_and_another_date_do_not_fit(
    path: str, value: Any
) -> None:
    place = f"{POINT}.{path}" if path == "rope" else f"{POINT}.counterweighted_beam.{path}"
    assert errors(changed(place, value))


def test_every_example_of_a_quantity_fits_and_is_none_without_its_unit() -> None:
    found = [one for one in within(project_schema()) if {"examples", "pattern"} <= set(one)]
    assert len(found) > 40
    for one in found:
        for example in one["examples"]:
            assert re.search(one["pattern"], example)
        if one["type"] == "string":
            assert not re.search(one["pattern"], "12")


def test_the_demo_fits() -> None:
    text = (ROOT / "examples" / "demo" / "site.yaml").read_text(encoding="utf-8")
    assert errors(yaml.load(text, Loader=yaml.CBaseLoader)) == []  # noqa: S506  # as above
