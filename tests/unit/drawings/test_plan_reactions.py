"""The plan of reactions: every stand with what the data of its review say it presses."""

from __future__ import annotations

from functools import cache

import pytest

from backspan.core.findings import Review
from backspan.core.quantities import Style
from backspan.core.review import review
from backspan.core.review.plain import Data
from backspan.core.review.report import formula_descriptions, review_data
from backspan.core.words import language_of
from backspan.drawings import DrawingError, Scene, reactions_plan
from backspan.drawings.scene import SymbolName
from backspan.exchange.files import load_rule_library
from tests.unit.core.rigs import ON
from tests.unit.drawings.inspection import (
    meeting,
    outside,
    overlapping,
    said_on,
    symbols_of,
    through_texts,
)
from tests.unit.drawings.test_demo import demo

DROPS = ("S1", "S3", "W2", "T2")


@cache
def made() -> tuple[dict[str, Review], list[Data]]:
    """The reviews of some drops and all reactions of their data."""
    reviews = {one: review(demo(Style.US), one, load_rule_library(), on=ON) for one in DROPS}
    data = [review_data(one, formulas=formula_descriptions()) for one in reviews.values()]
    return reviews, [each for one in data for each in one["reactions"]]


def plan(roof: str = "MAIN", code: str = "en") -> Scene:
    """The plan of reactions of one roof."""
    reviews, reactions = made()
    return reactions_plan(demo(Style.US), reviews, reactions, roof, language=language_of(code))


@pytest.mark.parametrize("code", ["en", "es"])
def test_nothing_on_the_plan_of_reactions_lies_over_another(code: str) -> None:
    scene = plan(code=code)
    assert overlapping(scene) == []
    assert outside(scene) == []
    assert through_texts(scene) == []
    assert meeting(scene) == []


def test_every_stand_has_the_reaction_that_the_data_have() -> None:
    _, reactions = made()
    said = said_on(plan())
    stands = 0
    for one in reactions:
        assert f"{one['subject']} front most {one['front']['most']['text']}" in said
        assert f"{one['subject']} rear most {one['rear']['most']['text']}" in said
        stands += 2
    assert len(symbols_of(plan(), SymbolName.FULCRUM)) == stands
    assert f"x 4: {reactions[0]['front']['imposed'][0]['load']['text']}" in said


def test_a_support_of_another_kind_has_no_reaction_and_an_unknown_roof_no_plan() -> None:
    assert symbols_of(plan("TERRACE"), SymbolName.FULCRUM) == []
    with pytest.raises(DrawingError, match="nowhere"):
        plan("nowhere")
