"""What a drawing prints comes from the language: nothing English is left in a Spanish one."""

from __future__ import annotations

import re
import string
from dataclasses import replace
from functools import cache

import pytest

from backspan.core.findings import Review
from backspan.core.quantities import Style
from backspan.core.review import review
from backspan.core.words import ENGLISH, WordsError, language_of
from backspan.drawings import (
    Scene,
    drop_details,
    drop_section,
    elevation,
    elevation_figure,
    envelope_picture,
    plan_figure,
    roof_plan,
    section_figure,
)
from backspan.exchange.files import load_rule_library
from tests.architecture.source import source_modules
from tests.unit.core.rigs import ON
from tests.unit.drawings.inspection import outside, overlapping, said_on, words_of
from tests.unit.drawings.test_demo import demo

SPANISH = language_of("es")
UNITS = pytest.mark.parametrize("units", list(Style))

#: The drops that are drawn here: refused, with another support, with points that differ.
DROPS = ("S4", "T1", "T2", "W2")


@cache
def reviewed(units: Style) -> dict[str, Review]:
    """The reviews of the drops."""
    rules = load_rule_library()
    return {drop: review(demo(units), drop, rules, on=ON) for drop in DROPS}


@cache
def spanish(units: Style) -> dict[str, Scene]:
    """Each kind of drawing, in Spanish."""
    made, site = reviewed(units), demo(units)
    scenes = {
        f"plan {roof.id}": roof_plan(site, made, roof.id, language=SPANISH)
        for roof in site.site.roofs
    }
    for roof in site.site.roofs:
        for edge in roof.edges:
            of = (site, roof.id, edge.id, made)
            scenes[f"elevation {edge.id}"] = elevation(*of, language=SPANISH)
            scenes[f"facade {edge.id}"] = elevation_figure(*of, language=SPANISH)
    for drop in DROPS:
        found = made[drop]
        scenes[f"section {drop}"] = drop_section(site, drop, found, language=SPANISH)
        scenes[f"details {drop}"] = drop_details(site, drop, found, language=SPANISH)
        scenes[f"section figure {drop}"] = section_figure(site, drop, found, language=SPANISH)
        scenes[f"plan figure {drop}"] = plan_figure(site, drop, found, language=SPANISH)
        for one in found.envelopes:
            scenes[f"envelope {one.subject}"] = envelope_picture(one, units, language=SPANISH)
    for drop in DROPS:
        scenes[f"no review {drop}"] = drop_section(site, drop, None, language=SPANISH)
    return scenes


#: What people named in English, and Spanish words that read like English ones.
KEPT = (
    "stalls high",
    "Plan del montaje",
    "suspension wire rope",
    "sewn eye of the lifeline",
    "letter of 3 March 2026",
    "Dimensions and properties of steel shapes",
)


def entry(text: str) -> re.Pattern[str]:
    """What finds a text of the table among others, with any value in each of its places."""
    parts = string.Formatter().parse(text)
    found = "".join(
        re.escape(said) + ("" if name is None else r"\S+(?: \S+){0,3}?")
        for said, name, _, _ in parts
    )
    return re.compile(rf"(?<!\w){found}(?!\w)")


def told(scene: Scene) -> str:
    """All that a scene says, to be seen and to be read aloud."""
    parts = " ".join(part.title for part in scene.parts)
    return f"{said_on(scene)} {scene.title} {scene.description} {parts}"


def left_in_english(said: str) -> list[str]:
    """The entries of the English table that stand in a text."""
    for words in KEPT:
        said = said.replace(words, "")
    return [text for text in ENGLISH.drawing.values() if entry(text).search(said)]


def test_an_english_text_would_be_seen() -> None:
    assert left_in_english("Voladizo 5 m, rated load 1,000 lb") == ["rated load {load}"]
    assert left_in_english("Voladizo 5 m sin medir") == []


@UNITS
def test_no_spanish_drawing_says_anything_in_english(units: Style) -> None:
    found = {name: left_in_english(told(scene)) for name, scene in spanish(units).items()}
    assert {name: left for name, left in found.items() if left} == {}


@UNITS
def test_in_a_spanish_drawing_nothing_is_cut_or_covered(units: Style) -> None:
    for name, scene in spanish(units).items():
        assert overlapping(scene) == [], name
        assert outside(scene) == [], name
        assert [words for words in words_of(scene) if words.endswith("...")] == [], name


def test_words_of_the_model_are_told_in_spanish() -> None:
    said = said_on(spanish(Style.US)["section S4"])
    for words in ("no cumple", "medido", "Taco de apoyo", "sujeción: pasador a través de la viga"):
        assert words in said
    assert "ingeniero del propietario" in said


def test_what_a_language_says_of_itself_stands_on_what_is_read_alone() -> None:
    for name in ("section S4", "plan MAIN", "envelope S4/L"):
        said = said_on(spanish(Style.US)[name])
        assert SPANISH.note in said, name


def test_a_text_the_table_lacks_is_told() -> None:
    with pytest.raises(WordsError, match="text of drawings 'nothing' has no words in 'en'"):
        ENGLISH.drawn("nothing")
    with pytest.raises(WordsError, match="'rope' lacks the value"):
        ENGLISH.drawn("rope")
    lacking = replace(SPANISH, drawing={})
    with pytest.raises(WordsError, match="'es'"):
        section_figure(demo(Style.US), "S4", None, language=lacking)


def test_every_text_of_the_table_is_used_by_a_drawing() -> None:
    source = "\n".join(
        module.text for module in source_modules() if module.within("backspan.drawings")
    )
    assert source
    quoted = set(re.findall(r"""["'](\w+)["']""", source))
    assert sorted(set(ENGLISH.drawing) - quoted) == []
