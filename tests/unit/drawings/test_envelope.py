from dataclasses import replace

import pytest

from backspan.core.quantities import LENGTH, Amount, Style
from backspan.core.rules.selected import Confirmed
from backspan.core.rules.shape import Mark, Remark
from backspan.drawings import envelope_picture
from backspan.drawings.axes import axis_for, tick_text
from backspan.drawings.envelope import PLOT
from backspan.drawings.scene import Layer, Polyline, Symbol, SymbolName
from tests.unit.drawings.inspection import overlapping, said_on, words_of
from tests.unit.drawings.sample_reviews import envelope


def test_the_line_is_the_review_s_own_points() -> None:
    scene = envelope_picture(envelope(), Style.US)
    (line,) = [
        one for one in scene.sheet if isinstance(one, Polyline) and one.layer is Layer.ENVELOPE
    ]
    slopes = {round((y - PLOT[1]) / (x - PLOT[0]), 6) for x, y in line.points if x > PLOT[0] + 1e-9}
    assert len(line.points) == 7
    assert len(slopes) == 1


def test_the_point_as_built_has_its_place_and_its_figures() -> None:
    scene = envelope_picture(envelope(), Style.US)
    (mark,) = [
        one
        for one in scene.sheet
        if isinstance(one, Symbol) and one.name is SymbolName.POINT_AS_BUILT
    ]
    line = next(one for one in scene.sheet if isinstance(one, Polyline))
    share = (mark.at[0] - PLOT[0]) / (line.points[-1][0] - PLOT[0])
    assert share == pytest.approx(10 / 18)
    assert {"As built", "backspan 10'-0\"", "reach 2'-0\""} <= words_of(scene)


def test_the_caption_names_rule_factor_and_mark() -> None:
    said = said_on(envelope_picture(envelope(), Style.US))
    assert "us-osha-1926-subpart-l, edition 1996, 1926.451(a)(2)" in said
    assert "4 times the moment of the hoist rated load" in said
    assert "Source of the rule: an official text was seen." in said
    assert "16 pieces, 880 lb [399 kg] together" in said


@pytest.mark.parametrize(
    ("mark", "words"),
    [
        (Mark.MEMORY, "from memory, text not seen: verify"),
        (Mark.COPY, "a state copy or a quotation of the text was seen"),
        (Mark.PRACTICE, "common practice, no source"),
    ],
)
def test_the_mark_says_how_far_the_rule_was_verified(mark: Mark, words: str) -> None:
    one = envelope()
    seen = replace(one.rule, provenance=replace(one.rule.provenance, mark=mark))
    assert words in said_on(envelope_picture(replace(one, rule=seen), Style.US))


def test_a_confirmation_is_printed() -> None:
    one = envelope()
    rule = replace(one.rule, confirmed=Confirmed("A. Reader", "2026-11-20", "shelf copy"))
    said = said_on(envelope_picture(replace(one, rule=rule), Style.US))
    assert "confirmed by A. Reader on 2026-11-20" in said


@pytest.mark.parametrize("style", list(Style))
def test_axes_carry_the_unit_of_the_style(style: Style) -> None:
    words = words_of(envelope_picture(envelope(), style))
    unit = "ft" if style is Style.US else "m"
    assert {f"Backspan, {unit}", f"Reach, {unit}"} <= words


def test_a_rule_without_a_factor_and_a_review_without_points_are_drawn() -> None:
    one = replace(envelope(), points=(), rule=replace(envelope().rule, content=Remark("see text")))
    scene = envelope_picture(one, Style.METRIC)
    assert "The review gave no line for this point." in said_on(scene)
    assert overlapping(scene) == []


@pytest.mark.parametrize("reach", [0.0, 0.01, 3.0, 40.0])
@pytest.mark.parametrize("backspan", [0.0, 0.5, 60.0])
def test_any_point_as_built_is_on_the_picture(reach: float, backspan: float) -> None:
    one = replace(
        envelope(), reach_now=Amount(reach, LENGTH), backspan_now=Amount(backspan, LENGTH)
    )
    assert overlapping(envelope_picture(one, Style.US)) == []


@pytest.mark.parametrize("style", list(Style))
@pytest.mark.parametrize("largest", [0.0, 0.02, 0.9, 3.7, 12.0, 90.0, 5000.0])
def test_an_axis_has_few_round_ticks_and_room(style: Style, largest: float) -> None:
    axis = axis_for(largest, style, low=0.0, high=100.0)
    assert 2 <= len(axis.ticks) <= 9
    assert axis.at(largest) < 100.0
    assert tick_text(axis.ticks[0], style) == "0"
