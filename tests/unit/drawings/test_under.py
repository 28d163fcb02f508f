"""A drawing under a plan: one path a layer, numbers only, what is out of sight left out."""

from __future__ import annotations

import re
from dataclasses import dataclass

from backspan.drawings.under import Window, matrix, under_svg

SHEET = Window(-10.0, -10.0, 120.0, 70.0)


@dataclass(frozen=True)
class Drawn:
    """A run of points."""

    layer: str
    points: tuple[tuple[float, float], ...]
    closed: bool = False


def paths(*runs: Drawn) -> list[str]:
    """The ways of the paths, y turned to run down."""
    text = under_svg(runs, lambda at: (at[0], 50.0 - at[1]), SHEET, pen=0.13)
    return re.findall(r'<path d="([^"]*)"/>', text)


def test_a_layer_is_one_path() -> None:
    one = Drawn("A", ((0.0, 0.0), (10.0, 0.125)))
    other = Drawn("B", ((0.0, 50.0), (1.0, 50.0), (1.0, 49.0)), closed=True)
    assert paths(one, other, one) == ["M0 50L10 49.88M0 50L10 49.88", "M0 0L1 0 1 1Z"]


def test_what_lies_out_of_sight_or_is_a_point_is_left_out() -> None:
    far = Drawn("A", ((500.0, 0.0), (600.0, 0.0)))
    through = Drawn("A", ((-500.0, 0.0), (600.0, 0.0)))
    assert paths(far, Drawn("B", ((1.0, 1.0),))) == []
    assert paths(through) == ["M-500 50L600 50"]


def test_nothing_of_a_files_own_texts_comes_through() -> None:
    layer = '"/><script>alert(1)</script>'
    text = under_svg([Drawn(layer, ((0.0, 0.0), (1.0, 1.0)))], lambda at: at, SHEET, pen=1.0)
    assert "script" not in text


def test_many_lines_stay_light() -> None:
    runs = [Drawn(f"L{one % 8}", ((one / 1000, 0.0), (one / 1000, 5.0))) for one in range(100_000)]
    text = under_svg(runs, lambda at: at, SHEET, pen=1.0)
    assert text.count("<path") == 8
    assert len(text) < 3_000_000


def test_a_picture_is_turned_by_six_numbers() -> None:
    assert matrix(lambda at: (2 * at[1] + 5, -2 * at[0] + 7)) == "matrix(0 -2 2 0 5 7)"
