"""The loader reads what is right."""

from __future__ import annotations

import pytest

from backspan.core.quantities import FORCE, LENGTH, RATIO, Amount, parse
from backspan.core.rules.loader import ONLY_READING, load
from backspan.core.rules.shape import (
    BeamWeight,
    FactorOnLoad,
    Limit,
    LoadBasis,
    Mark,
    Provenance,
    Reading,
    Remark,
    RuleSet,
    RuleValue,
    WordList,
)
from tests.unit.core.rules.rule_file import (
    HEAD,
    LIMIT,
    PLAIN,
    READINGS,
    REMARK,
    SAMPLE,
    WORDS,
    plain,
    replaced,
)


def test_a_plain_factor_is_read_whole() -> None:
    description = "Four times the rated load."
    content = FactorOnLoad(4.0, LoadBasis.HOIST_RATED, BeamWeight.NO_CREDIT)
    provenance = Provenance("1(a)", Mark.READ, "the paper")
    assert load(plain(PLAIN), "made-up.toml") == RuleSet(
        id="made-up",
        edition="2001",
        title="A made-up text",
        publisher="Nobody",
        jurisdiction="Nowhere",
        scope="tests",
        values=(
            RuleValue(
                key="tipping.rated-load",
                topic="tipping",
                description=description,
                readings=(Reading(ONLY_READING, content, provenance, description),),
                default=ONLY_READING,
            ),
        ),
    )


def test_a_reading_takes_from_its_value_what_it_does_not_give_itself() -> None:
    value = load(plain(READINGS), "made-up.toml").value("tipping.any-load")
    assert value is not None
    one_end, even = value.readings
    assert value.default == one_end.name == "one end"
    assert value.note == "One end asks for more."
    assert one_end.content == FactorOnLoad(2.5, LoadBasis.HALF_DEAD_FULL_LIVE, BeamWeight.NO_CREDIT)
    assert one_end.provenance == Provenance("2", Mark.MEMORY, "from memory")
    assert one_end.description == "Two and a half times the load."
    assert even.content == FactorOnLoad(2.5, LoadBasis.HALF_DEAD_HALF_LIVE, BeamWeight.CREDITED)
    assert even.provenance == Provenance("2, example", Mark.COPY, "a quotation")
    assert even.description == "Shared evenly."


@pytest.mark.parametrize(
    ("content", "key", "expected"),
    [
        (LIMIT, "plausible.most-reach", Limit(Amount(parse("15 ft", LENGTH), LENGTH))),
        (
            replaced(replaced(LIMIT, "15 ft", "3"), '"length"', '"ratio"'),
            "plausible.most-reach",
            Limit(Amount(3.0, RATIO)),
        ),
        (
            replaced(replaced(LIMIT, "15 ft", "500 lb"), '"length"', '"force"'),
            "plausible.most-reach",
            Limit(Amount(parse("500 lb", FORCE), FORCE)),
        ),
        (WORDS, "counterweight.accepted-fastening", WordList(("bolted", "pinned"))),
        (REMARK, "hoist.unknown-stall", Remark("Ask the qualified person.")),
    ],
)
def test_other_contents_are_read(content: str, key: str, expected: object) -> None:
    value = load(plain(content), "made-up.toml").value(key)
    assert value is not None
    assert value.readings[0].content == expected


def test_values_stand_in_the_order_of_the_file() -> None:
    keys = [value.key for value in load(SAMPLE, "made-up.toml").values]
    assert keys == [
        "tipping.rated-load",
        "tipping.any-load",
        "plausible.most-reach",
        "counterweight.accepted-fastening",
        "hoist.unknown-stall",
    ]
    moved = load(HEAD + REMARK + PLAIN, "made-up.toml")
    assert [value.key for value in moved.values] == ["hoist.unknown-stall", "tipping.rated-load"]


def test_what_may_be_left_out_is_kept_when_given() -> None:
    rule_set = load(HEAD + 'retrieved = "2001-02-03"\nnote = "Old."\n' + PLAIN, "made-up.toml")
    assert (rule_set.retrieved, rule_set.note) == ("2001-02-03", "Old.")
