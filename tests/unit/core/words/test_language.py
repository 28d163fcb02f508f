"""A language brings every table; English is the default, and its own words are the model's."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from backspan.core.findings import Decider, Margin, Message, Verdict
from backspan.core.model.topics import Topic
from backspan.core.quantities import Style
from backspan.core.words import (
    ENGLISH,
    LANGUAGES,
    WordsError,
    english,
    language_of,
    roof_questions,
    say,
    say_check,
    say_decider,
    say_input,
    say_label,
    say_margin,
    say_stated,
    say_verdict,
    shown,
)

#: A language that has an entry for nothing but one word.
MUTE = replace(
    ENGLISH,
    code="xx",
    sentences={},
    margins={},
    one_piece={},
    inputs={},
    seen_from={},
    checks={},
    labels={},
    deciders={},
    phrases={},
    words={"pass": "X"},
)


def test_languages_are_found_by_their_codes_and_english_is_first() -> None:
    assert list(LANGUAGES) == ["en", "es"]
    assert language_of("en") is ENGLISH
    with pytest.raises(WordsError, match="no language 'fr'; there are: en, es"):
        language_of("fr")


def test_english_has_no_note_and_puts_no_word_into_another() -> None:
    assert (ENGLISH.note, ENGLISH.words) == ("", {})
    assert ENGLISH.word(Topic.TIPPING) == "tipping"
    assert ENGLISH.word("anything") == "anything"


def test_no_sentence_of_a_question_hides_one_of_a_review() -> None:
    assert not set(english.SENTENCES) & set(roof_questions.SENTENCES)


@pytest.mark.parametrize("who", Decider)
def test_who_is_asked_is_told_with_an_article(who: Decider) -> None:
    assert say_decider(who) == f"the {str(who).removeprefix('the ')}"


def test_a_language_without_an_entry_is_an_error_and_never_english() -> None:
    with pytest.raises(WordsError, match=r"message 'plan\.pass' has no sentence"):
        say(Message("plan.pass"), Style.US, language=MUTE)
    with pytest.raises(WordsError, match="margin 'pieces-spare' has no words"):
        say_margin(Margin("pieces-spare", 1), Style.US, language=MUTE)
    with pytest.raises(WordsError, match="input 'reach' has no words"):
        say_input("reach", language=MUTE)
    with pytest.raises(WordsError, match="line 'reach' has no label"):
        say_label("reach", language=MUTE)
    with pytest.raises(WordsError, match="check 'tipping' has no title"):
        say_check("tipping", language=MUTE)
    with pytest.raises(WordsError, match="decider 'owner' has no words"):
        say_decider(Decider.OWNER, language=MUTE)
    with pytest.raises(WordsError, match="word 'fail' has no words in 'xx'"):
        say_verdict(Verdict.FAIL, language=MUTE)
    with pytest.raises(WordsError, match="phrase 'cited' has no words in 'xx'"):
        MUTE.phrase("cited", reference="", asked="")


def test_a_phrase_without_one_of_its_values_is_an_error() -> None:
    with pytest.raises(WordsError, match="phrase 'cited' lacks the value 'asked'"):
        ENGLISH.phrase("cited", reference="1926.451")


def test_what_a_person_wrote_in_own_words_stays() -> None:
    assert MUTE.word("painter") == "painter"
    assert shown(("pass", "painter"), Style.US, language=MUTE) == "X, painter"


def test_only_an_input_that_holds_a_word_is_put_into_words() -> None:
    assert say_stated("fulcrum", "pass", Style.US, language=MUTE) == "X"
    assert say_stated("anchor", "pass", Style.US, language=MUTE) == "pass"


def test_the_label_of_a_number_at_the_most_stall_load_says_so() -> None:
    assert say_label("required-at-most-stall") == "counterweight needed at that stall load"
    with pytest.raises(WordsError, match=re.escape("label-at-most-stall")):
        say_label("reach-at-most-stall", language=replace(MUTE, labels=ENGLISH.labels))
