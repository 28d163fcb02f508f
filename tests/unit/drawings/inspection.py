"""What a test asks of a finished scene: its texts, where they stand, what they cover."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from itertools import combinations

from backspan.core.findings import Review
from backspan.core.quantities import Style
from backspan.drawings import Scene, drop_section, envelope_picture, roof_plan
from backspan.drawings.geometry import Segment, meet, overlap, text_quad
from backspan.drawings.paper import frame_of
from backspan.drawings.scene import Dimension, Layer, Line, Symbol, SymbolName, Text
from tests.unit.drawings import sample
from tests.unit.drawings.sample_reviews import envelope, reviews

SCENE_NAMES = ("plan", "N-01", "N-02", "N-03", "W-01", "E-01", "envelope")


def scene_named(name: str, units: Style = Style.US) -> Scene:
    """One drawing of the invented site."""
    project = sample.project(units)
    if name == "plan":
        return roof_plan(project, reviews(), "ROOF")
    if name == "envelope":
        return envelope_picture(envelope(), units)
    return drop_section(project, name, review_or_none(name))


def review_or_none(drop: str) -> Review | None:
    """The invented review of a drop; one has none."""
    return reviews().get(drop)


def texts_on_paper(scene: Scene) -> list[Text]:
    """Every text of a scene where it stands on the sheet, in millimetres."""
    frame = frame_of(scene)
    found = [replace(text, at=frame.to_paper(text.at)) for text in _texts(scene.drawing)]
    return found + list(_texts(scene.sheet))


def _texts(shapes: tuple[object, ...]) -> Iterator[Text]:
    for shape in shapes:
        if isinstance(shape, Text):
            yield shape
        elif isinstance(shape, Dimension):
            yield shape.text


def words_of(scene: Scene) -> set[str]:
    """The texts of a scene."""
    return {text.text for text in texts_on_paper(scene)}


def said_on(scene: Scene) -> str:
    """All texts of a scene one after the other, so that a broken line is one again."""
    return " ".join(text.text for text in texts_on_paper(scene))


def overlapping(scene: Scene) -> list[tuple[str, str]]:
    """Pairs of texts of which one lies over the other."""
    placed = [(text.text, text_quad(text)) for text in texts_on_paper(scene)]
    return [
        (one, other)
        for (one, quad), (other, other_quad) in combinations(placed, 2)
        if overlap(quad, other_quad)
    ]


def outside(scene: Scene) -> list[str]:
    """Texts that stand wholly or partly off the sheet."""
    found = []
    for text in texts_on_paper(scene):
        for x, y in text_quad(text):
            if not (0.0 <= x <= scene.width and 0.0 <= y <= scene.height):
                found.append(text.text)
                break
    return found


def lines_on(scene: Scene, layer: Layer) -> list[Line]:
    """The straight lines of one layer of the drawing."""
    return [shape for shape in scene.drawing if isinstance(shape, Line) and shape.layer is layer]


def symbols_of(scene: Scene, name: SymbolName) -> list[Symbol]:
    """The signs of one kind in the drawing."""
    return [shape for shape in scene.drawing if isinstance(shape, Symbol) and shape.name is name]


def dimensions_of(scene: Scene) -> dict[str, Dimension]:
    """The dimensions of the drawing by their text."""
    return {shape.text.text: shape for shape in scene.drawing if isinstance(shape, Dimension)}


def leaders_of(scene: Scene) -> list[Segment]:
    """The leaders of a drawing where they lie on the sheet, in millimetres."""
    frame = frame_of(scene)
    return [
        (frame.to_paper(line.start), frame.to_paper(line.end))
        for line in lines_on(scene, Layer.LABEL)
    ]


def through_texts(scene: Scene) -> list[str]:
    """Texts of which a leader runs through more than the edge."""
    texts = [(text.text, text_quad(text)) for text in texts_on_paper(scene)]
    return [words for leader in leaders_of(scene) for words, quad in texts if overlap(leader, quad)]


def meeting(scene: Scene) -> list[tuple[Segment, Segment]]:
    """Pairs of leaders that cross before they reach what they point at."""
    pairs = combinations(leaders_of(scene), 2)
    return [(one, other) for one, other in pairs if one[1] != other[1] and meet(one, other)]
