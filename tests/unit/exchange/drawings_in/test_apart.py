"""Loading in a process of its own: what ends it is told, and nothing else ends with it."""

from __future__ import annotations

import pytest

from backspan.exchange.drawings_in import DrawingError, apart
from tests.unit.exchange.drawings_in.drawing import content, made, oblong


def drawing() -> bytes:
    document = made()
    oblong(document)
    return content(document)


def test_what_takes_too_long_is_ended_and_told() -> None:
    with pytest.raises(DrawingError, match=r"roof\.dxf: found no end of it within 0 seconds"):
        apart.loaded_apart(drawing(), "roof.dxf", 1.0, seconds=0)


def test_what_ends_the_process_is_told(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(apart, "_MODULE", "backspan.exchange.drawings_in.no_such_module")
    with pytest.raises(DrawingError, match="something that stopped the reading"):
        apart.loaded_apart(drawing(), "roof.dxf", 1.0)


def test_what_is_no_drawing_behind_its_beginning_is_told_once() -> None:
    with pytest.raises(DrawingError, match=r"roof\.dxf: found something that is no DXF"):
        apart.loaded_apart(b"0\nSECTION\nabc\nENTITIES\n0\nEOF\n", "roof.dxf", 1.0)


def test_a_broken_entity_is_told_by_what_it_is() -> None:
    document = made(6)
    document.modelspace().add_lwpolyline([(0, 0), (9, 0), (9, 9)], close=True)
    data = content(document)
    broken = data.replace(b"\n 90\n3\n", b"\n 90\n3\n210\n0\n220\n0\n230\n0\n")
    assert broken != data
    told = apart.loaded_apart(broken, "roof.dxf", 1.0)
    assert len(told["lines"]) == 1
