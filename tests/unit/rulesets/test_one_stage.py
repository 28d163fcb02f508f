"""One two-point stage under every rule: factor, load basis, counterweight; the stricter first."""

from __future__ import annotations

from backspan.core.numbers import whole_up
from backspan.core.rules.shape import (
    BeamWeight,
    FactorOnLoad,
    LoadBasis,
    Reading,
    Remark,
    RuleValue,
    WordList,
)
from tests.unit.rulesets.shipped import ALL, BY_ID, OSHA, all_readings, all_values

RATED = LoadBasis.HOIST_RATED
STALL = LoadBasis.HOIST_STALL
TENSION = LoadBasis.LARGEST_ROPE_TENSION
FULL = LoadBasis.HALF_DEAD_FULL_LIVE
EVEN = LoadBasis.HALF_DEAD_HALF_LIVE

# One two-point stage under every rule, worked by hand: reach 0.5 m, backspan 4.0 m, hoist rated
# 500 kg with a limiter at 1.25 times that and a stall load of 1,500 kg, 400 kg hanging dead, 240 kg
# of people and material, 25 kg of rope and 20 kg of bottom weight a point, a beam of 60 kg with its
# centroid 1.75 m inboard of the fulcrum. Masses in kg stand for their weights throughout.
REACH, BACKSPAN = 0.5, 4.0
LOADS = {
    RATED: 500.0,
    STALL: 1500.0,
    TENSION: 1.25 * 500.0 + 25.0 + 20.0,
    FULL: 400.0 / 2 + 240.0,
    EVEN: 400.0 / 2 + 240.0 / 2,
}
BEAM_MOMENT = 60.0 * 1.75

# For every reading with a factor: the factor, the load, and what this one stage then needs in kg
# and in pieces of 25 kg.
ONE_STAGE = {
    (OSHA, "tipping.rated-load", "as written"): (4, RATED, 250.0, 10),
    (OSHA, "tipping.stall-load", "as written"): (1.5, STALL, 281.25, 12),
    ("us-wa-wac-296-874", "tipping.rated-load", "as written"): (4, RATED, 250.0, 10),
    ("ca-on-ihsa-counterweights", "tipping.equipment-capacity", "as written"): (
        4,
        RATED,
        250.0,
        10,
    ),
    ("ca-on-reg-859", "tipping.likely-load", "all the load at one end"): (4, FULL, 220.0, 9),
    ("ca-on-reg-859", "tipping.likely-load", "even split"): (4, EVEN, 160.0, 7),
    ("eu-en-1808", "tipping.working-load-limit", "beam not credited"): (3, RATED, 187.5, 8),
    ("eu-en-1808", "tipping.working-load-limit", "beam credited"): (3, RATED, 161.25, 7),
    ("cn-gb-t-19155", "tipping.working-load-limit", "beam not credited"): (3, RATED, 187.5, 8),
    ("cn-gb-t-19155", "tipping.working-load-limit", "beam credited"): (3, RATED, 161.25, 7),
    ("uk-bs-5974", "tipping.rated-load", "as written"): (3, RATED, 187.5, 8),
    ("au-as-nzs-1576-4", "tipping.rope-tension", "as written"): (3, TENSION, 251.25, 11),
    ("nz-acop-scaffolding", "tipping.load-at-one-end", "as written"): (3, FULL, 165.0, 7),
    ("hk-cap-59ac", "tipping.load-on-projecting-part", "full live load"): (3, FULL, 165.0, 7),
    ("hk-cap-59ac", "tipping.load-on-projecting-part", "even split"): (3, EVEN, 120.0, 5),
    ("no-performance-of-work", "tipping.scaffold-and-load", "all the load at one end"): (
        2.5,
        FULL,
        137.5,
        6,
    ),
    ("no-performance-of-work", "tipping.scaffold-and-load", "even split"): (2.5, EVEN, 100.0, 4),
    ("cn-gb-19155", "tipping.half-of-total", "as written"): (2, EVEN, 80.0, 4),
}


def needed(content: FactorOnLoad) -> float:
    """The counterweight, in kg, that the one stage needs: moments about the fulcrum."""
    credit = BEAM_MOMENT if content.beam_weight is BeamWeight.CREDITED else 0.0
    return (content.factor * LOADS[content.load] * REACH - credit) / BACKSPAN


def default_of(value: RuleValue) -> Reading:
    """The reading that applies where none is chosen."""
    return next(one for one in value.readings if one.name == value.default)


def test_every_factor_and_load_basis_is_as_tabled_and_gives_the_known_counterweight() -> None:
    found = {}
    for rule_set, value, reading in all_readings():
        if isinstance(reading.content, FactorOnLoad) and value.topic == "tipping":
            mass = needed(reading.content)
            found[rule_set.id, value.key, reading.name] = (
                reading.content.factor,
                reading.content.load,
                mass,
                whole_up(mass / 25.0),
            )
    assert found == ONE_STAGE


def test_every_factor_says_what_own_weight_does_on_its_topic() -> None:
    credited = set()
    for rule_set, value, reading in all_readings():
        if isinstance(reading.content, FactorOnLoad):
            counted = reading.content.beam_weight is BeamWeight.COUNTED
            assert (value.topic in {"bearing", "beam"}) is counted, (rule_set.id, value.key)
            if reading.content.beam_weight is BeamWeight.CREDITED:
                credited.add((rule_set.id, value.key, reading.name))
    assert credited == {
        ("eu-en-1808", "tipping.working-load-limit", "beam credited"),
        ("cn-gb-t-19155", "tipping.working-load-limit", "beam credited"),
    }


#: The usual reading of the trade is the default though another asks for more; its note says why.
USUAL = ("us-osha-1926-subpart-l", "line.stall-load")


#: Words name the reading and list nothing; where the rope itself holds the default asks for more.
STRENGTH = ("us-osha-1926-subpart-l", "tieback.strength")


def test_the_default_reading_is_the_strictest_and_the_note_says_so() -> None:
    several = [(rule_set, value) for rule_set, value in all_values() if len(value.readings) > 1]
    assert {(rule_set.id, value.key) for rule_set, value in several} == {
        ("ca-on-reg-859", "tipping.likely-load"),
        ("cn-gb-t-19155", "tipping.working-load-limit"),
        ("eu-en-1808", "tipping.working-load-limit"),
        ("hk-cap-59ac", "counterweight.accepted-fastening"),
        ("hk-cap-59ac", "tipping.load-on-projecting-part"),
        ("no-performance-of-work", "tipping.scaffold-and-load"),
        USUAL,
        STRENGTH,
    }
    for rule_set, value in several:
        default = default_of(value)
        others = [one for one in value.readings if one is not default]
        assert "default" in (value.note or ""), (rule_set.id, value.key)
        for other in others if (rule_set.id, value.key) not in {USUAL, STRENGTH} else ():
            assert is_stricter(default, other), (rule_set.id, value.key, other.name)


def is_stricter(one: Reading, other: Reading) -> bool:
    """Whether `one` asks for more counterweight, or accepts fewer words, than `other`."""
    if isinstance(one.content, FactorOnLoad) and isinstance(other.content, FactorOnLoad):
        return needed(one.content) > needed(other.content)
    assert isinstance(one.content, WordList)
    assert isinstance(other.content, WordList)
    return set(one.content.words) < set(other.content.words)


def test_texts_without_a_number_to_compare_give_remarks_only() -> None:
    silent = {
        rule_set.id
        for rule_set in ALL
        if all(
            isinstance(reading.content, Remark)
            for value in rule_set.topic("tipping")
            for reading in value.readings
        )
    }
    assert silent == {
        "br-nr-18",
        "ca-on-oreg-213-91",
        "ca-qc-s21-r4",
        "in-bocw",
        "sg-wsh-scaffolds",
        "trade-practice",
        "us-aisc-360",
        "us-aisc-shapes",
        "us-aluminum-design-manual",
        "us-wa-wac-296-870",
    }


def test_washington_has_no_stall_branch_and_the_federal_text_has_both() -> None:
    def loads(name: str) -> set[LoadBasis]:
        contents = (one.readings[0].content for one in BY_ID[name].topic("tipping"))
        return {one.load for one in contents if isinstance(one, FactorOnLoad)}

    assert loads(OSHA) == {RATED, STALL}
    assert loads("us-wa-wac-296-874") == {RATED}
