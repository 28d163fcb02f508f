import pytest

from backspan.drawings.clipping import outline_within, segment_within, within
from backspan.drawings.scene import Align, Hatch, Layer, Line, Point, Polygon, Polyline, Text

WINDOW = (0.0, 0.0, 10.0, 5.0)


@pytest.mark.parametrize(
    ("start", "end", "kept"),
    [
        ((2.0, 1.0), (8.0, 4.0), ((2.0, 1.0), (8.0, 4.0))),
        ((-5.0, 2.0), (5.0, 2.0), ((0.0, 2.0), (5.0, 2.0))),
        ((-5.0, 2.0), (15.0, 2.0), ((0.0, 2.0), (10.0, 2.0))),
        ((4.0, -5.0), (4.0, 15.0), ((4.0, 0.0), (4.0, 5.0))),
        ((-5.0, 7.0), (15.0, 7.0), None),
        ((-4.0, 2.0), (2.0, 8.0), None),
        ((3.0, 3.0), (3.0, 3.0), ((3.0, 3.0), (3.0, 3.0))),
    ],
)
def test_a_line_is_cut_at_the_sides(
    start: Point, end: Point, kept: tuple[Point, Point] | None
) -> None:
    assert segment_within((start, end), WINDOW) == kept


def test_an_outline_keeps_what_lies_within() -> None:
    around = ((-5.0, -5.0), (5.0, -5.0), (5.0, 20.0), (-5.0, 20.0))
    assert set(outline_within(around, WINDOW)) == {(0.0, 0.0), (5.0, 0.0), (5.0, 5.0), (0.0, 5.0)}
    assert outline_within(((20.0, 1.0), (30.0, 1.0), (25.0, 4.0)), WINDOW) == ()
    inside = ((1.0, 1.0), (2.0, 1.0), (2.0, 2.0))
    assert set(outline_within(inside, WINDOW)) == set(inside)


def test_a_cut_outline_is_open_at_the_cut_and_filled_up_to_it() -> None:
    box = Polygon(Layer.OBSTACLE, ((8.0, 1.0), (14.0, 1.0), (14.0, 4.0), (8.0, 4.0)), "#eeeeee")
    fill, *lines = within((box,), WINDOW)
    assert isinstance(fill, Polygon)
    assert (fill.fill, fill.outlined) == ("#eeeeee", False)
    assert max(x for x, _ in fill.points) == 10.0
    ends = [{one.start, one.end} for one in lines if isinstance(one, Line)]
    assert {(10.0, 1.0), (10.0, 4.0)} not in ends
    assert len(ends) == 3


def test_hatches_and_lines_are_cut_and_texts_left_out() -> None:
    far = ((-5.0, 1.0), (15.0, 1.0), (15.0, 2.0), (-5.0, 2.0))
    hatch, line, *others = within(
        (
            Hatch(Layer.PARAPET, far, 2.0),
            Polyline(Layer.EXISTING, far[:2]),
            Text(Layer.LABEL, (1.0, 1.0), "A1", 2.5, Align.START),
            Hatch(Layer.PARAPET, ((20.0, 1.0), (30.0, 1.0), (30.0, 2.0)), 2.0),
        ),
        WINDOW,
    )
    assert isinstance(hatch, Hatch)
    assert {x for x, _ in hatch.points} == {0.0, 10.0}
    assert line == Line(Layer.EXISTING, (0.0, 1.0), (10.0, 1.0))
    assert others == []
