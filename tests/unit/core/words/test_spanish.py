"""Spanish says all that English says, with the same values, and calls nothing what it is not."""

from __future__ import annotations

import re
import string
from collections.abc import Iterator, Mapping
from dataclasses import replace
from enum import StrEnum

import pytest

from backspan.core.findings import Decider, Margin, Message, Verdict
from backspan.core.model.evidence import Evidence
from backspan.core.model.kit import PieceKind, RopeKind
from backspan.core.model.rigs import (
    BackspanFrom,
    Fastening,
    Found,
    FulcrumKind,
    OtherSupportKind,
)
from backspan.core.model.site import AnchorFixing, AnchorStanding, AnchorUse
from backspan.core.model.topics import Topic
from backspan.core.model.units import Condition, LabelState, UnitKind
from backspan.core.quantities import FORCE, LENGTH, Amount, Style, parse
from backspan.core.review import review
from backspan.core.review.citing import cited, content_text
from backspan.core.review.report import formula_descriptions
from backspan.core.review.told import beside_the_answer, why_open
from backspan.core.rules.shape import BeamWeight, FactorOnLoad, LoadBasis, Mark, WordList
from backspan.core.words import (
    ENGLISH,
    drop_answer,
    language_of,
    say,
    say_check,
    say_decider,
    say_input,
    say_label,
    say_margin,
    say_margins,
    say_stated,
    say_verdict,
    shown,
)
from tests.unit.core.rigs import LIBRARY, ON, PROJECT

SPANISH = language_of("es")

#: The tables of a language that are texts by id.
TABLES = (
    *("sentences", "inputs", "seen_from", "checks", "labels", "verdict_meanings", "marks"),
    *(
        "deciders",
        "phrases",
        "mends_by_margin",
        "mends_by_message",
        "paper",
        "dimensions",
        "drawing",
    ),
    *("states", "state_meanings", "events", "reasons", "entry_titles", "entry_lines"),
)
PAIRS = ("margins", "one_piece", "topics_counted")
SINGLE = ("one_change", "stay_on", "not_judged", "one_line_caution")
LISTS = ("cautions", "question_cautions")

#: Texts that are signs and values alone, the same in every language.
SIGNS_ALONE = {
    "{factor} x {load}",
    "{title}: {value}.",
    "{reference}: {asked}",
    "{value} ± {tolerance}",
}

#: The words of the model that can stand in a message or beside one.
ENUMS: tuple[type[StrEnum], ...] = (
    *(Verdict, Decider, Topic, Evidence, UnitKind, Condition, LabelState),
    *(PieceKind, RopeKind, Fastening, FulcrumKind, BackspanFrom, OtherSupportKind, Found),
    *(AnchorUse, AnchorStanding, AnchorFixing, LoadBasis, BeamWeight, Mark),
)
#: Words of promise that no text here may hold.
PROMISES = re.compile(r"\b(?:aprob|segur|asegur|autoriz|garanti)", re.IGNORECASE)


def texts(table: str) -> Iterator[tuple[str, str, str]]:
    """Name, English text and Spanish text of every entry of a table."""
    english, spanish = getattr(ENGLISH, table), getattr(SPANISH, table)
    if isinstance(english, str):
        yield table, english, spanish
    elif isinstance(english, tuple):
        for at, pair in enumerate(zip(english, spanish, strict=True)):
            yield f"{table} {at}", *pair
    else:
        for name, one in english.items():
            other = spanish[name]
            both = [(one, other)] if isinstance(one, str) else zip(one, other, strict=True)
            for pair in both:
                yield f"{table} {name}", *pair


ALL = [found for table in (*TABLES, *PAIRS, *SINGLE, *LISTS) for found in texts(table)]


def places(text: str) -> list[str]:
    """The names of the values a text shows, in any order."""
    return sorted(name for _, name, _, _ in string.Formatter().parse(text) if name)


#: Lists that are held against what people write freely, and so hold words of both languages.
OF_FREE_TEXT = {"anchor.refused-kinds", "anchor.accepted-kinds", "stage.light-metals"}


def words_of_rules() -> set[str]:
    """Every word of the lists in the rule sets that is one of the model's."""
    return {
        word
        for rules in LIBRARY.rule_sets
        for value in rules.values
        if value.key not in OF_FREE_TEXT
        for reading in value.readings
        if isinstance(reading.content, WordList)
        for word in reading.content.words
    }


@pytest.mark.parametrize("table", [*TABLES, *PAIRS])
def test_a_table_has_the_ids_of_the_english_one(table: str) -> None:
    english: Mapping[str, object] = getattr(ENGLISH, table)
    assert set(getattr(SPANISH, table)) == set(english)


@pytest.mark.parametrize(("name", "english", "spanish"), ALL)
def test_a_text_shows_the_same_values_in_other_words(name: str, english: str, spanish: str) -> None:
    assert places(spanish) == places(english), name
    assert (spanish == english) is (english in SIGNS_ALONE), name
    assert (spanish.strip() == spanish) is (english.strip() == english), name
    assert spanish.endswith(".") is english.endswith("."), name


@pytest.mark.parametrize("word", [word for kind in ENUMS for word in kind])
def test_a_word_of_the_model_has_a_spanish_one(word: StrEnum) -> None:
    assert SPANISH.word(word) != str(word)


def test_every_word_of_a_rule_set_has_a_spanish_one() -> None:
    assert words_of_rules()
    assert words_of_rules() <= set(SPANISH.words)


def test_words_of_one_kind_stay_apart() -> None:
    for kind in ENUMS:
        assert len({SPANISH.word(word) for word in kind}) == len(kind), kind


def test_no_word_is_left_in_english() -> None:
    assert [one for one, other in SPANISH.words.items() if one == other] == []


def test_no_text_promises_what_no_review_can() -> None:
    said = [*(spanish for _, _, spanish in ALL), *SPANISH.words.values(), SPANISH.note]
    assert [text for text in said if PROMISES.search(text)] == []


def test_the_tables_say_themselves_that_they_are_to_be_checked() -> None:
    assert "pendientes de comprobar por un ingeniero" in SPANISH.note


def test_the_four_answers() -> None:
    assert [say_verdict(one, language=SPANISH) for one in Verdict] == [
        "✓ cumple",
        "✗ no cumple",
        "→ a decidir",
        "? falta dato",
    ]


def test_a_sentence_keeps_numbers_and_units() -> None:
    words = (
        ("hoist", "H1"),
        ("stall", Amount(parse("3001 lb", FORCE), FORCE)),
        ("cap", Amount(parse("3000 lb", FORCE), FORCE)),
    )
    assert say(Message("stall-cap.fail", words), Style.US, language=SPANISH) == (
        "La carga de bloqueo del aparejo H1 es de 3,001 lb; la mayor permitida es 3,000 lb."
    )


@pytest.mark.parametrize(
    ("message", "text"),
    [
        (
            Message("fastening.fail", (("found", (str(Fastening.WIRE_TIE),)), ("listed", ()))),
            "Las piezas no están sujetas como pide la regla: atado con alambre.",
        ),
        (
            Message("designer.fail", (("found", ("painter",)), ("listed", ("qualified person",)))),
            "Diseñado por: painter; quién puede: persona calificada.",
        ),
        (
            Message("need.input", (("input", "reach"), ("place", "drops/D"))),
            "Declarar: voladizo, del fulcro al cable de suspensión (drops/D).",
        ),
        (
            Message("compare.not-known", (("inputs", ("rope_mass", "beam_mass")),)),
            "no declarado: masa del cable de suspensión; masa de la viga",
        ),
        (
            Message("as-planned.differs", (("input", "riders"), ("planned", 2), ("found", 3))),
            "Personas en la plataforma a la vez: previsto 2, encontrado 3.",
        ),
        (
            Message("unit.unknown", (("kind", "hoist"), ("name", "not stated"))),
            "Nadie declaró qué unidad es (aparejo); único nombre dado: no declarado.",
        ),
    ],
)
def test_words_of_the_model_are_told_in_spanish(message: Message, text: str) -> None:
    assert say(message, Style.US, language=SPANISH) == text


def test_a_name_that_reads_like_a_word_stays_as_it_was_given() -> None:
    named = Message("anchor-use.out", (("anchor", "parapet"),))
    assert say(named, Style.US, language=SPANISH) == "El anclaje parapet está fuera de servicio."
    hung = Message("stage-on-point.one", (("stages", ("stage",)),))
    assert say(hung, Style.US, language=SPANISH).endswith(": stage.")
    assert say_stated("stage", "stage", Style.US, language=SPANISH) == "stage"
    assert say_stated("fulcrum", "stand", Style.US, language=SPANISH) == "caballete"


def test_names_titles_and_labels() -> None:
    assert say_input("stall_load", language=SPANISH) == "carga de bloqueo del aparejo"
    assert say_check("tipping", language=SPANISH) == "Contrapeso frente al vuelco"
    assert say_label("required-at-most-stall", language=SPANISH) == (
        "contrapeso necesario con esa carga de bloqueo"
    )
    assert say_decider(Decider.LICENSED_ENGINEER, language=SPANISH) == "el ingeniero con licencia"
    assert shown(("sand", "water"), Style.US, language=SPANISH) == "arena, agua"


def test_margins_say_what_is_left_and_what_is_short() -> None:
    spare, reach = Margin("pieces-spare", 2), Margin("more-reach", Amount(0.0254, LENGTH))
    short = Margin("pieces-spare", 1, beyond=True)
    assert say_margin(short, Style.US, language=SPANISH) == "falta 1 pieza"
    assert say_margins((spare, reach), Style.US, language=SPANISH) == (
        'Un solo cambio: sobran 2 piezas; margen de 1" más de voladizo.'
        " Tal como está montado; las piezas se quedan hasta desmontar la plataforma."
    )
    none = Margin("hoists-that-do", "none")
    assert say_margin(none, Style.US, language=SPANISH).endswith(": ninguno")


def test_a_review_is_told_in_spanish() -> None:
    made = review(PROJECT, "D", LIBRARY, on=ON)
    answer = drop_answer(made, language=SPANISH)
    assert answer == drop_answer(made).replace("pass", "cumple").replace(
        "topics taken over", "temas asumidos por personas nombradas"
    )
    assert beside_the_answer(made, language=SPANISH) != beside_the_answer(made)
    for finding in made.findings:
        for message in (finding.message, *finding.notes, *(need.what for need in finding.needs)):
            assert say(message, made.units, language=SPANISH) != say(message, made.units)


def test_why_a_drop_is_open_names_its_topics_in_spanish() -> None:
    nobody = review(replace(PROJECT, taken_over=()), "D", LIBRARY, on=ON)
    told = why_open(nobody, language=SPANISH) or ""
    assert told.startswith("No juzgado, nadie lo asumió: ")
    assert "líneas eléctricas aéreas" in told


def test_the_title_of_a_formula_that_stands_in_an_answer_is_told_in_spanish() -> None:
    title = formula_descriptions()["tipping_moment"].title
    said = say(Message("ask.formula", (("title", title), ("value", 1))), Style.US, language=SPANISH)
    assert said.startswith("Momento con que una carga")


def test_a_rule_is_cited_in_spanish() -> None:
    made = review(PROJECT, "D", LIBRARY, on=ON)
    rules = [
        rule
        for finding in made.findings
        for rule in finding.rules
        if isinstance(rule.content, FactorOnLoad)
    ]
    told = content_text(rules[0].content, Style.US, language=SPANISH)
    assert re.fullmatch(r"4 x carga [a-z ]+, peso propio de la viga: [a-z ]+", told)
    assert cited(rules[0], Style.US, language=SPANISH).endswith(f": {told}")


def test_every_formula_has_a_title_in_spanish_and_no_title_is_idle() -> None:
    formulas = formula_descriptions()
    assert set(SPANISH.formulas) == set(formulas)
    for name, one in formulas.items():
        title = SPANISH.formulas[name]
        assert title != one.title
        assert not PROMISES.search(title)
        assert not title.endswith(".")
    assert ENGLISH.formulas == {}
