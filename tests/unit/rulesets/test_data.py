"""The rule sets as shipped: nothing missing, nothing claimed that was not seen, stricter first."""

from __future__ import annotations

from collections.abc import Collection, Mapping
from enum import StrEnum

import pytest

from backspan.core.model.evidence import Evidence
from backspan.core.model.kit import PieceKind, TerminationKind, TerminationMaker
from backspan.core.model.rigs import (
    Fastening,
    Found,
    TiebackEnd,
    TiebackStart,
)
from backspan.core.model.seen import (
    Pin,
    Route,
    Saddle,
    Tautness,
    Tightened,
)
from backspan.core.model.topics import Topic
from backspan.core.model.units import Condition, LabelState, RopeDamage
from backspan.core.quantities import ANGLE, FORCE, LENGTH, MASS, PRESSURE, RATIO, Dimension, parse
from backspan.core.rules.shape import Limit, Mark, WordList
from tests.unit.rulesets.beam_data import BEAM_BANDS, BEAM_COPIED, BEAM_WORDS
from tests.unit.rulesets.fall_data import BARRED, FALL_LIMITS, FALL_WORDS
from tests.unit.rulesets.power_data import POWER_LIMITS, POWER_REMEMBERED
from tests.unit.rulesets.shipped import ALL, BY_ID, OSHA, all_readings, all_values
from tests.unit.rulesets.stage_data import STAGE_COPIED, STAGE_LIMITS, STAGE_WORDS
from tests.unit.rulesets.steel_data import SHAPES, STEEL_COPIED, STEEL_LIMITS, STEEL_REMEMBERED
from tools.write_sources import PAGE, ROOT, RULE_SETS, page

EDITIONS = {
    "au-as-nzs-1576-4": "alert-5616",
    "br-nr-18": "undated",
    "ca-on-ihsa-counterweights": "undated",
    "ca-on-oreg-213-91": "2017",
    "ca-on-reg-859": "1990",
    "ca-qc-s21-r4": "undated",
    "cn-gb-19155": "2003",
    "cn-gb-t-19155": "2017",
    "eu-en-1808": "2015",
    "hk-cap-59ac": "undated",
    "in-bocw": "1998",
    "no-performance-of-work": "undated",
    "nz-acop-scaffolding": "1995",
    "sg-wsh-scaffolds": "2011",
    "trade-practice": "2026",
    "uk-bs-5974": "undated",
    SHAPES: "15",
    "us-aisc-360": "2016",
    "us-aluminum-design-manual": "2015",
    OSHA: "1996",
    "us-wa-wac-296-870": "undated",
    "us-wa-wac-296-874": "2007",
}

# The values whose text nobody has seen. A value leaves this list when its text was read.
REMEMBERED = {
    (OSHA, "counterweight.stay-until-dismantled"),
    (OSHA, "geometry.least-parapet"),
    ("eu-en-1808", "tipping.working-load-limit"),
    ("cn-gb-t-19155", "tipping.working-load-limit"),
    ("uk-bs-5974", "tipping.rated-load"),
    ("in-bocw", "tipping.not-found"),
    *(("trade-practice", key) for key in POWER_REMEMBERED),
    *STEEL_REMEMBERED,
}

#: What the paragraphs on suspension ropes and their ends ask for.
LINE_COPIED = (
    *("least-clips", "clip-spacing", "clips-by-maker", "tightened", "refused-clips", "saddle"),
    *("end-maker", "thimble", "end-stop", "least-drum-turns", "broken-in-lay"),
    *("broken-in-strand", "wire-worn"),
    "damage",
)

# The values known only from a copy, a quotation in passing or a paraphrase.
COPIED = {
    (OSHA, "tipping.tieback-in-addition"),
    (OSHA, "tipping.rated-load"),
    (OSHA, "tipping.stall-load"),
    (OSHA, "line.rated-load"),
    (OSHA, "line.stall-load"),
    *((OSHA, f"line.{name}") for name in LINE_COPIED),
    *((OSHA, f"stage.{name}") for name in STAGE_COPIED),
    *((OSHA, f"beam.{name}") for name in BEAM_COPIED),
    *((OSHA, f"fall.most-{name}") for name in ("free-fall", "deceleration", "force")),
    (OSHA, "fall.tied-by-person"),
    (OSHA, "hoist.stall-load-meaning"),
    (OSHA, "design.designer"),
    (OSHA, "anchor.lifeline-alone"),
    (OSHA, "anchor.lifeline-load"),
    *((OSHA, f"counterweight.{name}") for name in ("masons-scaffold", "refused-flowable")),
    *((OSHA, f"counterweight.{name}") for name in ("purpose-made", "accepted-fastening")),
    (OSHA, "bearing.rated-load"),
    (OSHA, "bearing.stall-load"),
    *STEEL_COPIED,
    ("ca-on-oreg-213-91", "load.factored-load"),
    ("cn-gb-19155", "tipping.half-of-total"),
}

LIMITS: dict[str, tuple[str, Dimension]] = {
    "hoist.stall-cap": ("3", RATIO),
    "geometry.inboard-to-outboard": ("1.5", RATIO),
    "geometry.least-parapet": ("39 in", LENGTH),
    "tolerance.taped-length": ("0.5 in", LENGTH),
    "tolerance.piece-length": ("1/16 in", LENGTH),
    "load.person": ("250 lb", MASS),
    "age.observation": ("1", RATIO),
    "age.count": ("1", RATIO),
    "age.rig-geometry": ("7", RATIO),
    "age.geometry": ("365", RATIO),
    "age.anchor-letter": ("365", RATIO),
    "age.anchor-test": ("3650", RATIO),
    "age.adhesive-anchor-test": ("1825", RATIO),
    "tolerance.line-over-stirrup": ("6 in", LENGTH),
    "tolerance.as-planned": ("1/2 in", LENGTH),
    "plausible.most-reach": ("15 ft", LENGTH),
    "plausible.least-backspan": ("1.5 ft", LENGTH),
    "plausible.most-backspan": ("30 ft", LENGTH),
    "plausible.most-backspan-against-stack": ("6 in", LENGTH),
    "plausible.least-reach": ("6 in", LENGTH),
    "plausible.least-pull-to-rated-load": ("1", RATIO),
    "plausible.most-trip-to-stall-load": ("1", RATIO),
    "plausible.most-setback": ("15 ft", LENGTH),
    "plausible.most-fulcrum-height": ("12 ft", LENGTH),
    "plausible.most-plate": ("6 ft", LENGTH),
    **BEAM_BANDS,
    "plausible.most-hanging-to-dead-mass": ("1", RATIO),
    "plausible.least-intended-load": ("150 lb", MASS),
    "plausible.most-piece-mass": ("110 lb", MASS),
    "plausible.least-piece-mass": ("20 lb", MASS),
    "plausible.most-pieces": ("40", RATIO),
    "plausible.most-rated-load": ("3000 lb", FORCE),
    "plausible.least-rated-load": ("500 lb", FORCE),
    "plausible.most-hoist-mass-to-rated-load": ("1", RATIO),
    "plausible.most-tip-to-inboard": ("1", RATIO),
    "plausible.most-section-to-mass": ("1.15", RATIO),
    "plausible.most-label-mass": ("5000 lb", MASS),
    "plausible.most-label-pieces": ("100", RATIO),
    "plausible.most-stage-length": ("60 ft", LENGTH),
    "tieback.most-angle": ("15 deg", ANGLE),
    "tolerance.tieback-angle": ("2 deg", ANGLE),
    "tolerance.plan-position": ("3 in", LENGTH),
    "anchor.lifeline-load": ("5000 lb", FORCE),
    "anchor.least-apart": ("6 in", LENGTH),
    "line.least-clips": ("3", RATIO),
    "line.least-drum-turns": ("4", RATIO),
    "bearing.pad-spread": ("1", RATIO),
    "line.clip-spacing": ("6", RATIO),
    "line.most-clip-torque": ("1.25", RATIO),
    "line.least-sling-angle": ("30 deg", ANGLE),
    "line.metal-share": ("0.4", RATIO),
    "line.modulus": ("12000000 psi", PRESSURE),
    "line.broken-in-lay": ("6", RATIO),
    "line.broken-in-strand": ("3", RATIO),
    "line.wire-worn": ("1/3", RATIO),
    **STAGE_LIMITS,
    "fall.line-strength": ("5000 lb", FORCE),
    "fall.most-free-fall": ("6 ft", LENGTH),
    "fall.most-deceleration": ("3.5 ft", LENGTH),
    "fall.most-force": ("1800 lb", FORCE),
    "fall.counts-from": ("10 ft", LENGTH),
    "fall.margin": ("1.5 ft", LENGTH),
    **FALL_LIMITS,
    **POWER_LIMITS,
    **STEEL_LIMITS,
    "fall.harness-shift": ("1.5 ft", LENGTH),
}

PURPOSE_MADE = {PieceKind.STEEL_PLATE, PieceKind.CAST_IRON, PieceKind.CONCRETE_CAST}
PIPES = {TiebackEnd.VENT, TiebackEnd.PIPE, TiebackEnd.CONDUIT, TiebackEnd.STANDPIPE}
FLOWING = {PieceKind.SAND, PieceKind.GRAVEL, PieceKind.WATER}


class Role(StrEnum):
    """Roles that trade practice speaks of; a person of a project may have any other."""

    COMPETENT = "competent person"
    QUALIFIED = "qualified person"
    ENGINEER = "licensed engineer"
    OWNER = "owner's engineer"
    ELECTRICIAN = "licensed electrician"


# What each list of words may be made of, as the project file spells it.
WORDS_OF: Mapping[str, Collection[str]] = {
    "counterweight.refused-flowable": FLOWING,
    "counterweight.purpose-made": PURPOSE_MADE,
    "counterweight.accepted-fastening": {Fastening.LOCKED_PIN, Fastening.BOLTED},
    "counterweight.label-state": {LabelState.READABLE},
    "counterweight.mass-evidence": {Evidence.LABEL, Evidence.CERTIFICATE, Evidence.MEASURED},
    "equipment.label-state": {LabelState.READABLE},
    **{
        f"presence.{name}": {Found.SOUND} for name in ("tieback", "rope-ends", "lifeline", "rescue")
    },
    "condition.in-use": {Condition.SOUND},
    "presence.softeners": {Found.SOUND},
    "tieback.strength": {"the rope as it is", "the rope as it has to be"},
    "tieback.refused-ends": PIPES,
    "tieback.refused-by-trade": set(TiebackEnd) - {TiebackEnd.STRUCTURE},
    "tieback.accepted-starts": {TiebackStart.TAIL, TiebackStart.SHACKLE},
    "tieback.accepted-tautness": {Tautness.TAUT},
    "tieback.accepted-routes": {Route.STRAIGHT, Route.ABOVE, Route.OVER_AN_EDGE},
    "line.connector": {Found.SOUND},
    "line.pin": set(Pin) - {Pin.NOT_MOUSED, Pin.OPEN},
    "line.thimble": {Found.SOUND},
    "line.thimble-at-socket": {Found.SOUND, Found.NONE_NEEDED},
    "anchor.refused-kinds": BARRED,
    "line.refused-clips": {TerminationKind.U_BOLT_CLIPS},
    "line.refused-knot": {TerminationKind.KNOT, TerminationKind.SEWN},
    "line.end-maker": {TerminationMaker.ROPE_MAKER, TerminationMaker.QUALIFIED_PERSON},
    "line.end-stop": {Found.SOUND},
    "line.saddle": {Saddle.LIVE},
    "line.saddle-of-fist-grips": {Saddle.NEITHER},
    "line.tightened": {Tightened.THIS_SHIFT},
    "line.damage": {RopeDamage.NONE},
    **STAGE_WORDS,
    **BEAM_WORDS,
    **FALL_WORDS,
    "presence.power": {Found.SOUND, Found.NONE_NEEDED},
    "evidence.geometry": {Evidence.MEASURED},
    "evidence.rating": {Evidence.LABEL, Evidence.CERTIFICATE},
    "evidence.mass": {Evidence.LABEL, Evidence.CERTIFICATE, Evidence.MEASURED},
    "evidence.size": {Evidence.LABEL, Evidence.CERTIFICATE, Evidence.MEASURED},
    "evidence.count": {Evidence.MEASURED},
    "evidence.observation": {Evidence.MEASURED},
}


def marked(mark: Mark) -> set[tuple[str, str]]:
    """Rule set and key of every value with a reading of that mark."""
    return {
        (rule_set.id, value.key)
        for rule_set, value, reading in all_readings()
        if reading.provenance.mark is mark
    }


def test_every_text_is_there_in_its_edition_and_in_its_place() -> None:
    assert {one.id: one.edition for one in ALL} == EDITIONS
    assert len(ALL) == len(EDITIONS)
    files = {file.relative_to(RULE_SETS).as_posix() for file in RULE_SETS.glob("[!_]*/*")}
    assert files == {f"{one.id}/{one.edition}.toml" for one in ALL}


def test_every_value_says_where_it_stands_and_where_it_was_seen() -> None:
    for rule_set, value, reading in all_readings():
        place = (rule_set.id, value.key, reading.name)
        assert value.description.endswith("."), place
        assert reading.description.endswith("."), place
        assert reading.provenance.clause, place
        assert reading.provenance.source, place


def test_remembered_values_are_marked_so_and_no_others() -> None:
    assert marked(Mark.MEMORY) == REMEMBERED


def test_values_from_copies_are_marked_so_and_no_others() -> None:
    assert marked(Mark.COPY) == COPIED


def test_a_remembered_value_says_so_in_its_source_and_no_other_does() -> None:
    for rule_set, value, reading in all_readings():
        unseen = "not seen" in reading.provenance.source or (
            reading.provenance.source.startswith("From memory")
        )
        expected = reading.provenance.mark is Mark.MEMORY or (
            (rule_set.id, value.key) == (OSHA, "tipping.tieback-in-addition")
        )
        assert unseen == expected, (rule_set.id, value.key)


#: What the custom of the trade may speak of.
CUSTOM = {"evidence", "tolerance", "plausible", "take-over", "witness", "age", "presence"}
CUSTOM |= {"design", "condition", "anchor", "load", "counterweight", "tieback", "line", "bearing"}
CUSTOM |= {"stage", "fall", "power", "beam"}


def test_trade_practice_names_no_source_and_stays_out_of_the_law() -> None:
    for rule_set, value, reading in all_readings():
        place = (rule_set.id, value.key)
        if reading.provenance.mark is Mark.PRACTICE:
            assert rule_set.id == "trade-practice", place
            assert value.topic in CUSTOM, place
            assert reading.provenance.source == "common practice, no source", place
    practice = BY_ID["trade-practice"]
    assert practice.topic("tipping") == ()
    assert {value.key for value in practice.topic("bearing")} == {"bearing.pad-spread"}
    assert {value.key for value in practice.topic("equipment")} == {
        "equipment.label-state",
        "equipment.label-count",
    }


def test_every_limit_is_the_number_of_its_text() -> None:
    found = {}
    for _, value, reading in all_readings():
        if isinstance(reading.content, Limit):
            found[value.key] = reading.content.amount
    assert {key: one.dimension for key, one in found.items()} == {
        key: dimension for key, (_, dimension) in LIMITS.items()
    }
    for key, (text, dimension) in LIMITS.items():
        assert found[key].value == parse(text, dimension), key


def test_what_is_plausible_leaves_room_around_what_is_usual() -> None:
    # Usual ranges of the trade; common practice, no source.
    usual = {
        "reach": ("12 in", "10 ft"),
        "backspan": ("5 ft", "16 ft"),
        "piece-mass": ("20 kg", "40 kg"),
        "rated-load": ("250 kg", "800 kg"),
        "stage-length": ("10 ft", "40 ft"),
    }
    checked = 0
    for value in BY_ID["trade-practice"].topic("plausible"):
        bound, _, name = value.key.removeprefix("plausible.").partition("-")
        content = value.readings[0].content
        assert isinstance(content, Limit)
        if name in usual:
            low, high = (parse(one, content.amount.dimension) for one in usual[name])
            inside = content.amount.value < low if bound == "least" else content.amount.value > high
            assert inside, value.key
            checked += 1
    assert checked == 9


def test_every_word_is_one_that_a_project_file_can_say() -> None:
    found: dict[str, set[str]] = {}
    for _, value, reading in all_readings():
        if value.topic in {"take-over", "witness", "design"}:
            assert isinstance(reading.content, WordList)
            assert set(reading.content.words) <= set(Role), value.key
        elif isinstance(reading.content, WordList):
            found.setdefault(value.key, set()).update(reading.content.words)
    assert found == {key: {str(word) for word in words} for key, words in WORDS_OF.items()}


def test_every_topic_says_who_may_take_it_over() -> None:
    keys = {value.key for value in BY_ID["trade-practice"].topic("take-over")}
    assert keys == {f"take-over.{topic.replace(' ', '-')}" for topic in Topic}


def test_no_piece_is_both_accepted_and_refused_and_every_kind_is_decided() -> None:
    rule_set = BY_ID[OSHA]
    accepted = rule_set.value("counterweight.purpose-made")
    refused = rule_set.value("counterweight.refused-flowable")
    assert accepted is not None
    assert refused is not None
    assert isinstance(accepted.readings[0].content, WordList)
    assert isinstance(refused.readings[0].content, WordList)
    good, bad = set(accepted.readings[0].content.words), set(refused.readings[0].content.words)
    assert not good & bad
    neither = {str(kind) for kind in PieceKind} - good - bad
    assert neither == {PieceKind.MASONRY_UNIT, PieceKind.ROOFING_ROLL, PieceKind.SCRAP}


@pytest.mark.parametrize(
    ("rule_set", "key", "clause"),
    [
        (OSHA, "tipping.rated-load", "1926.451(a)(2)"),
        (OSHA, "tipping.stall-load", "1926.451(a)(2)"),
        (OSHA, "hoist.stall-cap", "1926.451(a)(5)"),
        (OSHA, "counterweight.refused-flowable", "1926.451(d)(3)(ii)"),
        (OSHA, "counterweight.purpose-made", "1926.451(d)(3)(iii)"),
        (OSHA, "counterweight.accepted-fastening", "1926.451(d)(3)(iv)"),
        (OSHA, "counterweight.stay-until-dismantled", "1926.451(d)(3)(v)"),
        ("us-wa-wac-296-874", "tipping.rated-load", "WAC 296-874, Table 4"),
        ("ca-on-reg-859", "tipping.likely-load", "s. 22(1)(a)"),
        ("ca-qc-s21-r4", "geometry.inboard-to-outboard", "s. 3.9.15"),
        ("nz-acop-scaffolding", "tipping.load-at-one-end", "8.3.4 and Appendix B2"),
        ("hk-cap-59ac", "tipping.load-on-projecting-part", "s. 7(d)"),
        ("no-performance-of-work", "tipping.scaffold-and-load", "s. 17-16"),
    ],
)
def test_the_clauses_that_refusals_are_printed_with(rule_set: str, key: str, clause: str) -> None:
    value = BY_ID[rule_set].value(key)
    assert value is not None
    assert {reading.provenance.clause for reading in value.readings} == {clause}


def test_the_page_of_sources_is_what_the_data_says() -> None:
    assert PAGE.read_text(encoding="utf-8") == page(ALL), "run: python tools/write_sources.py"


def test_the_page_has_a_line_for_every_reading_and_a_legend() -> None:
    text = page(ALL)
    rows = [line for line in text.splitlines() if line.startswith("| `")]
    assert len(rows) == sum(len(value.readings) for _, value in all_values())
    for mark in Mark:
        assert f"| {mark} |" in text
    assert PAGE.relative_to(ROOT).as_posix() == "docs/sources.md"
