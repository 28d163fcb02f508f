import pytest

from backspan.drawings.lettering import plain, shortened, text_width, wrapped


def test_width_grows_with_height_and_bold() -> None:
    assert text_width("Reach", height=5.0) == pytest.approx(2 * text_width("Reach", height=2.5))
    assert text_width("Reach", height=2.5, bold=True) > text_width("Reach", height=2.5)


def test_accented_letters_are_as_wide_as_their_base() -> None:
    assert text_width("é", height=2.5) == text_width("e", height=2.5)
    assert text_width("e\u0301", height=2.5) == text_width("e", height=2.5)


def test_wide_letters_take_a_whole_square() -> None:
    assert text_width("高", height=0.72) == pytest.approx(1.0)
    assert text_width("\u2020", height=0.72) == pytest.approx(0.85)


def test_control_characters_and_line_breaks_are_not_drawn() -> None:
    assert plain("  a\n\tb\x00\x07c  ") == "a bc"


def test_a_short_text_stays_as_it_is() -> None:
    assert shortened("Reach", room=100.0, height=2.5) == "Reach"


def test_a_long_text_is_cut_with_dots_and_fits() -> None:
    cut = shortened("A very long name of a very long roof", room=30.0, height=2.5)
    assert cut.endswith("...")
    assert text_width(cut, height=2.5) <= 30.0


def test_lines_break_at_spaces_and_fit() -> None:
    lines = wrapped("one two three four five six seven", room=25.0, height=2.5)
    assert " ".join(lines) == "one two three four five six seven"
    assert all(text_width(line, height=2.5) <= 25.0 for line in lines)
    assert len(lines) > 1


def test_a_word_wider_than_the_room_is_broken() -> None:
    lines = wrapped("x" * 80, room=25.0, height=2.5)
    assert "".join(lines) == "x" * 80
    assert all(text_width(line, height=2.5) <= 25.0 for line in lines)


def test_lines_past_the_most_are_cut_with_dots() -> None:
    lines = wrapped("one two three four five six seven", room=20.0, height=2.5, most=2)
    assert len(lines) == 2
    assert lines[1].endswith("...")


def test_an_empty_text_has_no_lines() -> None:
    assert wrapped("   ", room=20.0, height=2.5) == ()
