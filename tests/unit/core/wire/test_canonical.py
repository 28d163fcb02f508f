from typing import Any

import pytest

from backspan.core.numbers import NumberError
from backspan.core.wire import WireError, canonical, read_canonical, report_number


def test_keys_are_sorted_and_nothing_is_spaced() -> None:
    assert canonical({"b": [1, 2.0, None, True], "a": {"é": "x y"}}) == (
        '{"a":{"é":"x y"},"b":[1,2.0,null,true]}'.encode()
    )


@pytest.mark.parametrize(
    ("number", "text"),
    [
        (0.1, b"0.1"),
        (-0.0, b"0.0"),
        (0.0, b"0.0"),
        (3, b"3"),
        (3.0, b"3.0"),
        (1e22, b"1e+22"),
        (1e-7, b"1e-07"),
        (4448.2216152605, b"4448.2216152605"),
        (5e-324, b"5e-324"),
        (2**60, b"1152921504606846976"),
    ],
)
def test_numbers_have_one_text(number: float, text: bytes) -> None:
    assert canonical(number) == text


def test_minus_nothing_in_text_stays_text() -> None:
    assert canonical(["-0.0"]) == b'["-0.0"]'


def test_a_tuple_is_written_as_a_list() -> None:
    assert canonical((1, ("a",))) == b'[1,["a"]]'


def deep(levels: int) -> list[Any]:
    data: list[Any] = []
    for _ in range(levels):
        data = [data]
    return data


@pytest.mark.parametrize(
    ("data", "message"),
    [
        ({"a": [1.0, float("nan")]}, r"^at a\.1: found nan, expected a finite number"),
        (float("inf"), "^at the top: found inf"),
        ({"a": {1: 2}}, "^at a: found the key 1, expected text"),
        ({"a": {1, 2}}, "^at a: a set has no form in JSON"),
        (["\ud800"], "^at 0: found the text .*expected Unicode"),
        ({"\ud800": 1}, "expected Unicode without surrogates"),
        (deep(5000), "nested deeper than 100 levels"),
    ],
)
def test_what_json_cannot_say_is_refused(data: Any, message: str) -> None:
    with pytest.raises(WireError, match=message):
        canonical(data)


def test_a_hundred_levels_are_written() -> None:
    assert canonical(deep(100)) == b"[" * 101 + b"]" * 101


@pytest.mark.parametrize(
    ("number", "reported"),
    [
        (1.0 / 3.0, 0.3333333333),
        (123456789.12345, 123456789.1),
        (9.9e-10, 0.0),
        (-9.9e-10, 0.0),
        (1e-9, 1e-9),
        (-0.0, 0.0),
        (-2.5, -2.5),
    ],
)
def test_reported_numbers_have_ten_digits_and_no_noise(number: float, reported: float) -> None:
    assert report_number(number) == reported
    assert str(report_number(number))[0] != "-" or reported < 0


def test_an_unknown_number_is_not_reported() -> None:
    with pytest.raises(NumberError, match="not a finite number"):
        report_number(float("nan"))


def test_what_was_written_is_read() -> None:
    data = {"a": [1, 2.5, None, True], "b": {"c": 'brackets [{ and "quotes" \\ in a text'}}
    assert read_canonical(canonical(data)) == data


@pytest.mark.parametrize(
    ("raw", "said"),
    [
        (b"", "not JSON"),
        (b"\xff", "not JSON"),
        (b"{", "not JSON"),
        (b"NaN", "finite"),
        (b'{"a":1,"a":2}', "not in the one form"),
        (b'{"b":1,"a":2}', "not in the one form"),
        (b"[1, 2]", "not in the one form"),
        (b"1.50", "not in the one form"),
        (b"[" * 100_000, "nested deeper"),
        (b"[" * 101 + b"]" * 101, "nested deeper"),
    ],
)
def test_bytes_in_another_form_are_refused(raw: bytes, said: str) -> None:
    with pytest.raises(WireError, match=said):
        read_canonical(raw)


def test_brackets_in_a_text_are_not_nested() -> None:
    text = "[" * 100_000
    assert read_canonical(canonical([text])) == [text]
