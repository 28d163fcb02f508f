from __future__ import annotations

import pytest

from tests.browser.difference import first_difference


def test_equal_bytes_do_not_differ() -> None:
    assert first_difference(b'{"a":1}', b'{"a":1}') is None


@pytest.mark.parametrize(
    ("first", "second", "where"),
    [
        (b'{"a":[1,{"b":2.5}]}', b'{"a":[1,{"b":2.4}]}', ".a[1].b: 2.5 and 2.4"),
        (b'{"a":1,"b":1}', b'{"b":1,"a":1}', "top: keys ['a', 'b'] and ['b', 'a']"),
        (b"[1,2]", b"[1,2,3]", "top: 2 items and 3"),
        (b"[[1,2],3]", b"[[1],3]", "[0]: 2 items and 1"),
        (b"[1]", b"[1.0]", "[0]: 1 and 1.0"),
        (b"[true]", b"[1]", "[0]: True and 1"),
        (b"1", b"null", "top: 1 and None"),
        (b"[1, 2]", b"[1,2]", "byte 3, with equal content: b'[1, 2]' and b'[1,2]'"),
        (b"[1]", b"[1] ", "byte 3, with equal content: b'[1]' and b'[1] '"),
    ],
)
def test_the_first_place_is_named(first: bytes, second: bytes, where: str) -> None:
    assert first_difference(first, second) == where
