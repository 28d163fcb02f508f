import pytest

from backspan.core.quantities import Style
from backspan.drawings.scene import PENS, Layer, Symbol
from tests.unit.drawings.inspection import (
    SCENE_NAMES,
    outside,
    overlapping,
    scene_named,
    texts_on_paper,
    words_of,
)

SMALLEST = 2.5

EVERY = pytest.mark.parametrize("name", SCENE_NAMES)
BOTH = pytest.mark.parametrize("units", list(Style))


@EVERY
@BOTH
def test_no_text_lies_over_another(name: str, units: Style) -> None:
    assert overlapping(scene_named(name, units)) == []


@EVERY
@BOTH
def test_every_text_stands_on_the_sheet(name: str, units: Style) -> None:
    assert outside(scene_named(name, units)) == []


@EVERY
@BOTH
def test_no_text_is_smaller_than_survives_a_copy(name: str, units: Style) -> None:
    assert min(text.height for text in texts_on_paper(scene_named(name, units))) >= SMALLEST


@EVERY
def test_the_same_input_gives_the_same_scene(name: str) -> None:
    assert scene_named(name) == scene_named(name)


@EVERY
def test_no_sheet_says_safe(name: str) -> None:
    assert not [words for words in words_of(scene_named(name)) if "safe" in words.casefold()]


@EVERY
def test_every_sheet_defers_to_a_person_and_the_local_code(name: str) -> None:
    said = " ".join(text.text for text in texts_on_paper(scene_named(name)))
    assert "licensed person" in said
    assert "local code" in said
    assert "ot a design" in said


@pytest.mark.parametrize("name", [name for name in SCENE_NAMES if name != "envelope"])
def test_the_title_block_names_what_it_is_about(name: str) -> None:
    words = words_of(scene_named(name))
    assert {
        "Quince Court <Tower> & Annex",
        "nowhere",
        "Invented: Made up for tests.",
    } <= words
    assert any("us-osha-1926-subpart-l, edition 1996" in one for one in words)
    assert any(one.startswith("Scale ") for one in words)
    assert "Configuration" in words


@EVERY
def test_an_answer_is_always_a_word_beside_its_sign(name: str) -> None:
    scene = scene_named(name)
    words = {text.text.casefold() for text in texts_on_paper(scene)}
    for shape in (*scene.drawing, *scene.sheet):
        if isinstance(shape, Symbol) and shape.name.startswith("sign "):
            assert shape.name.removeprefix("sign ") in words


def test_every_layer_has_a_pen_and_the_rig_is_heavier_than_the_building() -> None:
    assert set(PENS) == set(Layer)
    assert PENS[Layer.BEAM].width > 3 * PENS[Layer.EXISTING].width
