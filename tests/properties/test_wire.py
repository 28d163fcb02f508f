"""Canonical data is an exact mirror of the model; a code names the rig and nothing else."""

import json
import typing
from collections.abc import Callable
from dataclasses import fields, is_dataclass, replace
from fractions import Fraction
from typing import Annotated, Any

import hypothesis.strategies as st
import pytest
import yaml
from hypothesis import given

from backspan.core.model.basis import Basis, Confirmation
from backspan.core.model.dated import is_date
from backspan.core.model.evidence import ShortForm, Sign, StatedValue
from backspan.core.model.kit import Kit
from backspan.core.model.people import Person
from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop
from backspan.core.model.site import Site
from backspan.core.wire import (
    WireError,
    canonical,
    configuration_code,
    from_changed,
    from_data,
    report_number,
    to_data,
)
from backspan.core.wire.hints import fields_of, marker, optional, record_class, repeated
from backspan.exchange.parse import Problem, ProjectError, parse_project
from tests.unit.exchange.sample import SAMPLE, changed

FINITE = st.floats(allow_nan=False, allow_infinity=False)
PLAIN: dict[Any, st.SearchStrategy[Any]] = {
    str: st.text(max_size=5),
    int: st.integers(1, 10**9 - 1),
    float: FINITE,
}


def dates(hint: Any) -> st.SearchStrategy[Any]:
    """Days, and none where a field may be without one."""
    days = st.dates().map(lambda day: day.isoformat())
    return days if optional(hint) is None else st.none() | days


def values_of(hint: Any) -> st.SearchStrategy[Any]:
    """Any value that the model's types allow."""
    if typing.get_origin(hint) is Annotated:
        short = marker(hint, ShortForm)
        inner = values_of(typing.get_args(hint)[0])
        return inner if short is None else inner.map(lambda one: possible(one, short))
    if optional(hint) is not None:
        return st.none() | values_of(optional(hint))
    if repeated(hint) is not None:
        return st.lists(values_of(repeated(hint)), max_size=2).map(tuple)
    if typing.get_origin(hint) is tuple:
        return st.tuples(*(values_of(item) for item in typing.get_args(hint)))
    record = record_class(hint)
    if record is not None:
        return st.builds(
            record,
            **{
                one.name: dates(one.hint) if is_date(record, one.name) else values_of(one.hint)
                for one in fields_of(hint)
            },
        )
    return PLAIN[hint] if hint in PLAIN else st.sampled_from(list(hint))


def possible(stated: StatedValue[Any], short: ShortForm) -> StatedValue[Any]:
    """A value like this one that the field can hold."""
    if not isinstance(stated.value, int | float):
        return replace(stated, tolerance=None)
    value, tolerance = stated.value, stated.tolerance
    if short.sign is not Sign.ANY:
        value = abs(value) or type(value)(1)
    planned = stated.planned if short.sign is Sign.ANY else value
    if short.sign is Sign.SHARE:
        value = planned = min(value, type(value)(1))
    if short.sign in {Sign.POSITIVE, Sign.SHARE}:
        tolerance = None
    elif tolerance is not None:
        tolerance = abs(tolerance)
    return replace(stated, value=value, tolerance=tolerance, planned=planned)


@pytest.mark.parametrize("cls", [Site, Kit, Drop, Basis, Confirmation, Person])
@given(data=st.data())
def test_any_record_survives_its_canonical_bytes(cls: type[Any], data: st.DataObject) -> None:
    record = data.draw(values_of(cls))
    written = canonical(to_data(record))
    again = from_data(cls, json.loads(written))
    assert again == record
    assert canonical(to_data(again)) == written


def mixed(one: Any, other: Any, draw: st.DataObject) -> Any:
    """`one` with some of its parts from `other` or broken; all else the very same objects."""
    match draw.draw(st.integers(0, 9)):
        case 0:
            return one
        case 1:
            return other
        case 2:
            return draw.draw(st.sampled_from([None, 1, "x", [], {}]))
    if isinstance(one, dict) and isinstance(other, dict):
        return {name: mixed(part, other.get(name), draw) for name, part in one.items()}
    if isinstance(one, list) and isinstance(other, list):
        pairs = zip(one, other, strict=False)
        return draw.draw(st.permutations([*one[1:], *(mixed(*pair, draw) for pair in pairs)]))
    return one


def read_or_refusal(read: Callable[[], Any]) -> Any:
    try:
        return read()
    except WireError as error:
        return str(error)


@pytest.mark.parametrize("cls", [Site, Kit, Drop])
@given(data=st.data())
def test_what_changed_is_read_as_all_of_it_is(cls: type[Any], data: st.DataObject) -> None:
    before, other = (to_data(data.draw(values_of(cls))) for _ in range(2))
    known = from_data(cls, before)
    after = mixed(before, other, data)
    whole = read_or_refusal(lambda: from_data(cls, after))
    again = read_or_refusal(lambda: from_changed(cls, after, before, known))
    assert again == whole
    assert from_changed(cls, before, before, known) is known


JSON = st.recursive(
    st.none() | st.booleans() | st.integers() | FINITE | st.text(max_size=5),
    lambda inner: st.lists(inner, max_size=4) | st.dictionaries(st.text(max_size=5), inner),
    max_leaves=20,
)


@given(data=JSON)
def test_canonical_bytes_say_what_the_data_says(data: Any) -> None:
    assert json.loads(canonical(data)) == data


def turned(data: Any) -> Any:
    """The same data with every dict written in the other order."""
    if isinstance(data, dict):
        return {key: turned(data[key]) for key in reversed(data)}
    return [turned(item) for item in data] if isinstance(data, list) else data


@given(data=JSON)
def test_the_order_of_keys_does_not_show(data: Any) -> None:
    assert canonical(turned(data)) == canonical(data)


@given(number=st.floats(-1e300, 1e300))
def test_a_reported_number_is_near_the_number_and_reports_as_itself(number: float) -> None:
    reported = report_number(number)
    assert abs(reported - number) <= max(1e-9, abs(number) * 1e-9)
    assert report_number(reported) == reported
    assert str(reported) != "-0.0"


def decimal(value: Fraction) -> str:
    """A fraction whose decimals end, written out."""
    scaled = value * 10**9
    assert scaled.denominator == 1
    return f"{int(scaled) / 10**9:.9f}"


def spellings(sixteenths: int) -> list[str]:
    """One length in many units, exact in each."""
    inches = Fraction(sixteenths, 16)
    whole, rest = divmod(sixteenths, 16)
    feet, odd = divmod(whole, 12)
    part = f" {rest}/16" if rest else ""
    return [
        f"{decimal(inches)} in",
        f"{feet}'-{odd}{part}\"",
        f"{feet} ft {odd}{part} in",
        f"{decimal(inches * Fraction(254, 10))} mm",
        f"{decimal(inches * Fraction(254, 100))} cm",
        f"{decimal(inches * Fraction(254, 10000))} m",
    ]


def without_text(value: Any) -> Any:
    """A record with no trace of how its values were written."""
    if isinstance(value, tuple):
        return tuple(without_text(item) for item in value)
    if not is_dataclass(value) or isinstance(value, type):
        return value
    changes = {one.name: without_text(getattr(value, one.name)) for one in fields(value)}
    return replace(value, **(changes | ({"text": ""} if isinstance(value, StatedValue) else {})))


def codes(project: Project) -> dict[str, str]:
    return {drop.id: configuration_code(project, drop) for drop in project.drops}


@given(sixteenths=st.integers(5, 16 * 12 * 8), picks=st.lists(st.integers(0, 5), min_size=3))
def test_units_of_input_do_not_show(sixteenths: int, picks: list[int]) -> None:
    texts = spellings(sixteenths)

    def project(choice: list[int]) -> Project:
        reach, gap, start = (texts[index] for index in choice[:3])
        text = changed(
            ("reach: {value: 18 in", f"reach: {{value: {reach}"),
            ("tail_gap: 3 ft 6 in", f"tail_gap: {gap}"),
            ("station: 1 ft", f"station: {start}"),
        )
        return parse_project(text, "roof.yaml")

    first, other = project([0, 0, 0]), project(picks)
    assert without_text(first) == without_text(other)
    assert codes(first) == codes(other)


def shuffled(data: Any, draw: st.DrawFn) -> Any:
    """The data of a file with its named lists, keys and the hung points in another order."""
    if isinstance(data, dict):
        keys = draw(st.permutations(list(data)))
        mixed = {key: shuffled(data[key], draw) for key in keys}
        if "from_points" in mixed:
            mixed["from_points"] = draw(st.permutations(mixed["from_points"]))
        return mixed
    if not isinstance(data, list):
        return data
    items = [shuffled(item, draw) for item in data]
    named = all(isinstance(item, dict) and "id" in item for item in items)
    return draw(st.permutations(items)) if named else items


@st.composite
def shuffled_samples(draw: st.DrawFn) -> str:
    data = yaml.load(SAMPLE, Loader=yaml.CBaseLoader)  # noqa: S506  # the loader that makes text only
    return yaml.dump(
        shuffled(data, draw), Dumper=yaml.CSafeDumper, sort_keys=False, allow_unicode=True
    )


@given(text=shuffled_samples())
def test_the_order_of_a_file_does_not_show(text: str) -> None:
    sample, mixed = parse_project(SAMPLE, "a"), parse_project(text, "b")
    assert codes(mixed) == codes(sample)
    assert [drop.id for drop in mixed.drops] == [drop.id for drop in sample.drops]
    assert mixed.kit == sample.kit
    assert mixed.site == sample.site
    assert mixed.people == sample.people


@given(name=st.text(max_size=8), start=st.floats(0.0, 20.0), count=st.integers(0, 3))
def test_other_drops_and_names_do_not_show(name: str, start: float, count: int) -> None:
    sample = parse_project(SAMPLE, "a")
    first, second = sample.drops
    others = tuple(replace(second, id=f"X{index}", start=start) for index in range(count))
    named = replace(first, name=name)
    mixed = replace(sample, drops=(*others, named), people=sample.people[::-1])
    assert configuration_code(mixed, named) == configuration_code(sample, first)


@given(station=st.floats(0.0, 30.0), pieces=st.integers(0, 40))
def test_a_moved_beam_or_another_count_always_shows(station: float, pieces: int) -> None:
    sample = parse_project(SAMPLE, "a")
    data = to_data(sample.drops[0])
    point = data["rig"]["suspension_points"][0]
    group = point["counterweighted_beam"]["stack"]["groups"][0]
    same = point["station"] == station and group["count"]["value"] == pieces
    point["station"], group["count"]["value"] = station, pieces
    code = configuration_code(sample, from_data(Drop, data))
    assert (code == configuration_code(sample, sample.drops[0])) is same


@st.composite
def damaged_samples(draw: st.DrawFn) -> str:
    """The sample with a piece of it replaced by something else, or cut off."""
    start = draw(st.integers(0, len(SAMPLE)))
    end = start + draw(st.integers(0, 20))
    signs = st.sampled_from([*"{}[]:-'\"&*!#|>?,~@`\t\n\r\u2028\u00e91", "<<: ", "---\n", "null"])
    return SAMPLE[:start] + "".join(draw(st.lists(signs, max_size=3))) + SAMPLE[end:]


def problems_of(text: str) -> tuple[Problem, ...]:
    try:
        parse_project(text, "roof.yaml")
    except ProjectError as error:
        return error.problems
    return ()


@given(text=damaged_samples())
def test_a_damaged_file_is_read_or_refused_with_places_in_it(text: str) -> None:
    lines = len(text.splitlines()) + 1
    assert all(1 <= problem.line <= lines for problem in problems_of(text))
