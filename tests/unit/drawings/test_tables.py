import pytest

from backspan.core.findings import Verdict
from backspan.drawings.legend import legend, legend_height, legend_rows
from backspan.drawings.scene import Layer, Line, Symbol, SymbolName, Text
from backspan.drawings.tables import ROW, Cell, Column, table

COLUMNS = (Column("Drop", 20.0), Column("Answer", 30.0))
ROWS = [(f"D{place}", Verdict.PASS if place % 2 else None) for place in range(10)]


def written(shapes: tuple[object, ...]) -> list[str]:
    """The texts among shapes."""
    return [shape.text for shape in shapes if isinstance(shape, Text)]


def test_all_rows_are_shown_where_there_is_room() -> None:
    shapes, height = table(COLUMNS, ROWS, left=0.0, top=100.0, room=80.0, more="see there")
    assert {f"D{place}" for place in range(10)} <= set(written(shapes))
    assert height == pytest.approx(ROW * 11)
    assert not any("more" in words for words in written(shapes))


def test_rows_without_room_are_counted() -> None:
    shapes, height = table(COLUMNS, ROWS, left=0.0, top=100.0, room=ROW * 5, more="see there")
    words = written(shapes)
    assert any(one.startswith("and 7 more") for one in words)
    assert height <= ROW * 5 + 1e-9


def test_an_answer_is_sign_and_word_and_a_missing_one_is_said() -> None:
    shapes, _ = table(COLUMNS, ROWS[:2], left=0.0, top=100.0, room=80.0, more="")
    assert {"pass", "not reviewed"} <= set(written(shapes))
    assert sum(isinstance(shape, Symbol) for shape in shapes) == 1


def test_a_cell_too_wide_is_cut() -> None:
    shapes, _ = table(COLUMNS, [("x" * 60, None)], left=0.0, top=9.0, room=80.0, more="")
    assert any(words.endswith("...") for words in written(shapes))


def test_the_legend_has_what_the_drawing_uses_and_nothing_else() -> None:
    drawing = (
        Line(Layer.BEAM, (0.0, 0.0), (1.0, 0.0)),
        Line(Layer.DIMENSION, (0.0, 0.0), (1.0, 0.0)),
        Symbol(Layer.ANCHOR, SymbolName.ANCHOR_OUT, (0.0, 0.0), 4.0),
        Text(Layer.LABEL, (0.0, 0.0), "a", 2.5),
    )
    rows = legend_rows(drawing)
    assert rows == (Layer.BEAM, SymbolName.ANCHOR_OUT)
    words = written(legend(rows, left=0.0, right=90.0, top=50.0))
    assert words == ["Beam", "Out of service"]
    assert legend_height(rows) < legend_height((*rows, SymbolName.FULCRUM))


def test_a_long_text_goes_on_in_the_next_line_where_its_column_wraps() -> None:
    columns = (Column("At", 18.0, wraps=True), Column("Answer", 20.0, wraps=True))
    rows: list[tuple[Cell, ...]] = [("L, R, S-01, A01, A02", Verdict.PASS), ("L", Verdict.FAIL)]
    shapes, height = table(columns, rows, left=0.0, top=0.0, room=60.0, more="")
    words = [shape.text for shape in shapes if isinstance(shape, Text)]
    assert "..." not in " ".join(words)
    assert " ".join(words).count("A02") == 1
    assert "pass" in words
    assert height == pytest.approx(5 * ROW)


def test_rows_of_several_lines_are_counted_whole() -> None:
    columns = (Column("At", 18.0, wraps=True),)
    rows = [("L, R, S-01, A01",), ("L, R, S-01, A02",), ("L, R, S-01, A03",)]
    shapes, _ = table(columns, rows, left=0.0, top=0.0, room=ROW * 5.5, more="")
    words = [shape.text for shape in shapes if isinstance(shape, Text)]
    assert any(one.startswith("and 2") for one in words)
