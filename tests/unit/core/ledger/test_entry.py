"""An entry is its bytes: what is written is read, and what was changed is refused."""

from __future__ import annotations

import hashlib
import json
from typing import Any

import pytest

from backspan.core.ledger.bodies import UseStopped
from backspan.core.ledger.chain import Chains
from backspan.core.ledger.entry import MOST_BYTES, read_entry
from backspan.core.ledger.errors import EntryError
from backspan.core.ledger.kinds import read_body
from backspan.core.wire import WireError, canonical
from tests.unit.core.ledger.writing import SITE, STOP, written


def plain() -> dict[str, Any]:
    """An entry as plain data."""
    data: dict[str, Any] = json.loads(written(Chains(SITE), "pad").raw)
    return data


def test_what_is_written_is_read() -> None:
    entry = written(Chains(SITE), "pad")
    again = read_entry(entry.raw)
    assert again == entry
    assert again.body == STOP
    assert again.hash == hashlib.sha256(entry.raw).hexdigest()
    assert again.name == "pad 1"


@pytest.mark.parametrize(
    ("path", "value", "said"),
    [
        (("format",), 2, "format 2, expected 1"),
        (("site",), "", "no site or no device"),
        (("device",), "", "no site or no device"),
        (("sequence",), 0, "below 1"),
        (("sequence",), 2, "the hash of the one before"),
        (("order",), 0, "below 1"),
        (("before",), "0" * 64, "the hash of the one before"),
        (("seen",), [{"device": "pad", "sequence": 1}], "what was seen of other devices"),
        (("seen",), [{"device": "b", "sequence": 0}], "an entry seen below 1"),
        (
            ("seen",),
            [{"device": "b", "sequence": 1}, {"device": "a", "sequence": 1}],
            "each once and in order",
        ),
        (("at",), "2026-11-28", "with a time and its offset"),
        (("at",), "2026-11-28T10:00", "with a time and its offset"),
        (("at",), "noon", "with a time and its offset"),
        (("evidence",), ["abc"], "expected a hash"),
        (("signer", "name"), "", "nobody who states it"),
        (("signer", "role"), "", "nobody who states it"),
        (("kind",), "use blessed", "none of the registry"),
        (("version",), 9, "found version 9, expected 1"),
        (("body", "drops"), "S1", "drops"),
        (("body", "more"), 1, "more"),
        (("more",), 1, "more"),
    ],
)
def test_what_is_no_entry_is_refused(path: tuple[str, ...], value: object, said: str) -> None:
    data = plain()
    at = data
    for step in path[:-1]:
        at = at[step]
    at[path[-1]] = value
    with pytest.raises(EntryError, match=said):
        read_entry(canonical(data))


@pytest.mark.parametrize(
    ("raw", "said"),
    [
        (b"", "not JSON"),
        (b"\xff", "not JSON"),
        (b"[]", "expected an object with a body"),
        (b'{"body":1}', "expected an object with a body"),
        (b'{"body":{"a":NaN}}', "finite"),
        (b"[" * 100_000, "nested deeper"),
        (b'{"a":' * 101 + b"1" + b"}" * 101, "nested deeper"),
        (b'["' + b"[" * 100_000 + b'"]', "expected an object with a body"),
        (b'"\\' + b'"' + b"[" * 100_000, "not JSON"),
        (b" " * (MOST_BYTES + 1), "expected at most"),
    ],
)
def test_bytes_that_are_no_json_object_are_refused(raw: bytes, said: str) -> None:
    with pytest.raises(EntryError, match=said):
        read_entry(raw)


def test_the_same_content_in_another_form_is_refused() -> None:
    raw = json.dumps(plain()).encode()
    with pytest.raises(EntryError, match="not in the one form"):
        read_entry(raw)


def test_a_body_of_another_kind_is_refused_with_its_place() -> None:
    with pytest.raises(WireError, match="body"):
        read_body("use stopped", 1, {"drops": []})


def test_a_body_can_be_as_long_as_the_trade_needs() -> None:
    entry = written(Chains(SITE), "pad", UseStopped(tuple(f"S{n}" for n in range(600)), "wind"))
    assert read_entry(entry.raw).body == entry.body
