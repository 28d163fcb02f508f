from __future__ import annotations

import re

import pytest

from backspan.core.ask import QuestionError, read_values, topic_of
from backspan.core.model.evidence import Sign
from backspan.core.quantities import FORCE, LENGTH, Amount

MOMENT = topic_of("moment")
SHIFT = topic_of("shift")
COUNTERWEIGHT = topic_of("counterweight")


@pytest.mark.parametrize(
    "words",
    [
        ["load=2000lb", "reach=8ft"],
        ["load=2,000 lb reach=8 ft"],
        ["load=2000", "lb", "reach=8", "ft"],
        ["reach=96in", "load=2kip"],
        ["load", "=", "2000lb", "reach", "=8ft"],
        ["LOAD=2000lb", "Reach=8ft"],
        ["load=2000lb", "reach=8'-0\""],
    ],
)
def test_one_question_in_many_spellings(words: list[str]) -> None:
    values = read_values(MOMENT, words)
    assert values == {"load": Amount(8896.443230521, FORCE), "reach": Amount(2.4384, LENGTH)}


def test_an_underscore_is_a_hyphen() -> None:
    stack = topic_of("stack")
    with pytest.raises(QuestionError, match="beam is not given") as caught:
        read_values(stack, ["tail_gap=0in"])
    assert not any("tail" in problem for problem in caught.value.problems)


def test_all_problems_at_once() -> None:
    words = ["rated=1000 reach=4ft reach=5ft pices=3 backspan=11ft pieces=2.5"]
    with pytest.raises(QuestionError, match="bare number") as caught:
        read_values(COUNTERWEIGHT, words)
    told = caught.value.problems
    assert len(told) == 5
    assert told[0].startswith("rated: found '1000': a bare number")
    assert told[1] == "reach is given twice; give it once"
    assert told[2] == "counterweight takes no 'pices'; did you mean pieces or piece?"
    assert told[3] == "pieces: found '2.5', expected a whole number such as 26"
    assert told[4].startswith("piece is not given (mass of one piece")
    assert told[4].endswith("write for example piece=50lb")


@pytest.mark.parametrize(
    ("words", "what"),
    [
        (["load=0lb reach=8ft"], "load: found '0lb', expected more than zero"),
        (["load=-5lb reach=8ft"], "load: found '-5lb', expected more than zero"),
        (["load=nan lb reach=8ft"], "load: found 'nan lb'"),
        (["load=inf lb reach=8ft"], "load: found 'inf lb'"),
        (["load=8ft reach=8ft"], "is a unit of length"),
        (["load= reach=8ft"], "load= has nothing after it; write load=1,000 lb"),
        (["2000lb load=1lb reach=8ft"], "found '2000lb', expected name=value"),
        ([], "load is not given"),
    ],
)
def test_what_cannot_be_read_is_told(words: list[str], what: str) -> None:
    with pytest.raises(QuestionError, match=re.escape(what)):
        read_values(MOMENT, words)


def test_an_end_keeps_no_more_than_all_of_its_rope() -> None:
    line = topic_of("rope")
    with pytest.raises(QuestionError, match=r"keeps: found '1\.5', expected more than zero and at"):
        read_values(line, ["rated=1000lb keeps=1.5 breaking=8000lb"])
    assert Sign.SHARE.allows(1.0)
    assert not Sign.SHARE.allows(0.0)


def test_a_shift_may_go_either_way() -> None:
    rest = "rated=1kip reach=2ft backspan=9ft piece=55lb pieces=9"
    values = read_values(SHIFT, [f"shift=-6in {rest}"])
    assert values["shift"] == Amount(-0.1524, LENGTH)
    assert read_values(SHIFT, [f"shift=0in {rest}"])["shift"] == Amount(0.0, LENGTH)


def test_a_count_may_be_none_where_that_means_something() -> None:
    rest = "rated=1kip reach=2ft backspan=9ft piece=55lb"
    assert read_values(COUNTERWEIGHT, [f"pieces=0 {rest}"])["pieces"] == 0
    assert read_values(COUNTERWEIGHT, [f"pieces=1,000 {rest}"])["pieces"] == 1000


def test_a_misspelled_topic_is_suggested() -> None:
    with pytest.raises(QuestionError, match=r"no topic 'momnt'; did you mean moment\?"):
        topic_of("momnt")
    with pytest.raises(QuestionError, match="no topic 'xyz'; topics: counterweight, reach"):
        topic_of("xyz")
