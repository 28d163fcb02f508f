"""Rule sets, editions, readings and values that are named but not there, each with its line."""

from __future__ import annotations

import pytest

from backspan.core.errors import BackspanError
from backspan.exchange.parse import parse_project
from tests.architecture.source import ROOT
from tests.unit.core.rigs import LIBRARY

RIG = (ROOT / "tests" / "cases" / "rig.yaml").read_text(encoding="utf-8")
ITSELF = RIG[RIG.index("confirmations:") : RIG.index("plan:")]
UNCONFIRMED = RIG.replace(ITSELF, "")
BASIS = 'basis:\n  tipping: [{rule_set: us-osha-1926-subpart-l, edition: "1996"}]'
CONFIRMED = (
    "confirmations:\n  - {rule_set: eu-en-1808, edition: '2015', value: tipping.working-load-limit,"
    " by: PE, at: 2026-11-18, copy_seen: copy}\n"
)


@pytest.mark.parametrize(
    ("old", "new", "told"),
    [
        ("us-osha-1926-subpart-l", "us-osha-1926-subpart-m", "did you mean us-osha-1926-subpart-l"),
        ('edition: "1996"', 'edition: "1896"', "the edition '1896', which is not there"),
        (
            'edition: "1996"}',
            'edition: "1996", readings: [{value: tipping.rated, reading: x}]}',
            "the value 'tipping.rated'",
        ),
        (
            'edition: "1996"}',
            'edition: "1996", readings: [{value: tipping.rated-load, reading: x}]}',
            "the reading 'x'",
        ),
    ],
)
def test_a_basis_that_is_not_there(old: str, new: str, told: str) -> None:
    assert old in BASIS
    line = RIG[: RIG.index("  tipping:")].count("\n") + 1
    text = RIG.replace(BASIS, BASIS.replace(old, new))
    with pytest.raises(BackspanError, match=rf"(?s)rig.yaml:{line}:.*{told}"):
        parse_project(text, "rig.yaml", LIBRARY)


@pytest.mark.parametrize(
    ("old", "new", "told"),
    [
        ("eu-en-1808", "eu-en-1888", "the rule set 'eu-en-1888'"),
        ("'2015'", "'2051'", "did you mean 2015"),
        ("working-load-limit,", "working-load,", "did you mean tipping.working-load-limit"),
    ],
)
def test_a_confirmation_of_what_is_not_there(old: str, new: str, told: str) -> None:
    parse_project(CONFIRMED + UNCONFIRMED, "rig.yaml", LIBRARY)
    with pytest.raises(BackspanError, match=rf"(?s)rig.yaml:2:.*{told}"):
        parse_project(CONFIRMED.replace(old, new) + UNCONFIRMED, "rig.yaml", LIBRARY)


def test_a_rule_set_of_one_drop_that_is_not_there() -> None:
    text = RIG.replace(
        "    edge: S\n", "    edge: S\n    also_meets: [{rule_set: x, edition: y}]\n"
    )
    with pytest.raises(BackspanError, match="also_meets"):
        parse_project(text, "rig.yaml", LIBRARY)


LABEL = "      label: {most_pieces"


@pytest.mark.parametrize(
    ("section", "told"),
    [
        ("shape: W7x12", "the shape 'W7x12', which is not there"),
        (
            "shape: W6x12, wall: {value: 0.2 in, evidence: label}",
            "wall beside the shape W6x12",
        ),
        (
            "shape: W6x12, material: aluminium 6061-T6",
            "material beside the shape W6x12",
        ),
        (
            "form: I, material: steel, wall: {value: 0.2 in, evidence: label}",
            "wall beside a section of form I",
        ),
        ("shape: W6x12, form: channel", "form beside the shape W6x12"),
        ("material: aluminium", "material"),
        ("shape: W6x12, depth: 6 in", "the unknown key 'depth'"),
        ("wall: {value: 0 in, evidence: label}", "wall"),
    ],
)
def test_a_section_that_is_none(section: str, told: str) -> None:
    text = RIG.replace(LABEL, f"      section: {{{section}}}\n{LABEL}", 1)
    line = RIG[: RIG.index(LABEL)].count("\n") + 1
    with pytest.raises(BackspanError, match=rf"(?s)rig.yaml:{line}:.*{told}"):
        parse_project(text, "rig.yaml", LIBRARY)


@pytest.mark.parametrize(
    "section", ["shape: W6x12, material: steel", "form: channel, material: aluminium 6063-T6"]
)
def test_a_section_that_says_what_it_is(section: str) -> None:
    parse_project(
        RIG.replace(LABEL, f"      section: {{{section}}}\n{LABEL}", 1), "rig.yaml", LIBRARY
    )
