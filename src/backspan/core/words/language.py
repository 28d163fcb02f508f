"""What a language must bring to say everything the program says, and English, the default."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum

from backspan.core.errors import BackspanError
from backspan.core.words import (
    drawing_labels,
    english,
    labels,
    mends,
    phrases,
    record_sentences,
    roof_questions,
    seen_from,
)


class WordsError(BackspanError, KeyError):
    """A message without a sentence, a sentence without one of its values, a word without words."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Language:
    """All tables of one language.

    Every table has the ids of the English one, and every text the places (`{name}`) of the English
    text. `note` is what papers print beside a text in this language; empty where there is nothing
    to say. `words` are the model's words by their English text: empty in the model's own language.
    """

    code: str
    note: str
    sentences: Mapping[str, str]
    margins: Mapping[str, tuple[str, str]]
    """What is left, and what is short."""
    one_piece: Mapping[str, tuple[str, str]]
    one_change: str
    stay_on: str
    inputs: Mapping[str, str]
    seen_from: Mapping[str, str]
    """From where a thing can be seen, by what is asked of it."""
    checks: Mapping[str, str]
    labels: Mapping[str, str]
    verdict_meanings: Mapping[str, str]
    marks: Mapping[str, str]
    mends_by_margin: Mapping[str, str]
    """One change of the rig that mends a refusal, by the margin that is used up."""
    mends_by_message: Mapping[str, str]
    """What mends a refusal that has no margin."""
    paper: Mapping[str, str]
    """The fixed words of papers and screens."""
    drawing: Mapping[str, str]
    """The fixed words of drawings."""
    dimensions: Mapping[str, str]
    topics_counted: Mapping[str, tuple[str, str]]
    """One of them, and several."""
    not_judged: str
    cautions: tuple[str, ...]
    question_cautions: tuple[str, ...]
    one_line_caution: str
    deciders: Mapping[str, str]
    phrases: Mapping[str, str]
    states: Mapping[str, str]
    """Where a drop stands, by the ledger's word for it."""
    state_meanings: Mapping[str, str]
    events: Mapping[str, str]
    """What happened to a drop, as the end of a sentence."""
    reasons: Mapping[str, str]
    """Why nobody rides, or an entry has no effect, and what settles it."""
    entry_titles: Mapping[str, str]
    entry_lines: Mapping[str, str]
    """What an entry says, by its kind, and by its case behind a stroke."""
    words: Mapping[str, str]
    formulas: Mapping[str, str]
    """Titles of formulas by their names: empty where the formulas' own titles are in it."""

    def word(self, text: str) -> str:
        """A word of the model in this language; what a person wrote in own words stays as it is.

        Raises WordsError for a word of the model that this language lacks.
        """
        if not self.words:
            return str(text)
        if isinstance(text, StrEnum) and text not in self.words:
            raise WordsError(f"word {str(text)!r} has no words in {self.code!r}")
        return self.words.get(text, text)

    def phrase(self, name: str, **values: str) -> str:
        """Values joined into a text; WordsError where the phrase or a value of it is lacking."""
        return self._filled("phrase", self.phrases, name, values)

    def drawn(self, name: str, /, **values: str) -> str:
        """A fixed text of drawings with its values; WordsError where it or a value is lacking."""
        return self._filled("text of drawings", self.drawing, name, values)

    def line_of_entry(self, name: str, /, **values: str) -> str:
        """A line of an entry with its values; WordsError where it or a value is lacking."""
        return self._filled("line of an entry", self.entry_lines, name, values)

    def reason(self, name: str, /, **values: str) -> str:
        """A reason with its values; WordsError where it or a value is lacking."""
        return self._filled("reason", self.reasons, name, values)

    def _filled(
        self, what: str, table: Mapping[str, str], name: str, values: Mapping[str, str]
    ) -> str:
        if name not in table:
            raise WordsError(f"{what} {str(name)!r} has no words in {self.code!r}")
        try:
            return table[name].format(**values)
        except KeyError as error:
            raise WordsError(f"{what} {str(name)!r} lacks the value {error}") from error


ENGLISH = Language(
    code="en",
    note="",
    sentences={**roof_questions.SENTENCES, **english.SENTENCES},
    margins=english.MARGINS,
    one_piece=english.ONE_PIECE,
    one_change=english.ONE_CHANGE,
    stay_on=english.STAY_ON,
    inputs=english.INPUTS,
    seen_from=seen_from.SEEN_FROM,
    checks=english.CHECKS,
    labels=roof_questions.LABELS,
    verdict_meanings=english.VERDICTS,
    marks=english.MARKS,
    mends_by_margin=mends.BY_MARGIN,
    mends_by_message=mends.BY_MESSAGE,
    paper=labels.LABELS,
    drawing=drawing_labels.DRAWING,
    dimensions=labels.DIMENSIONS,
    topics_counted=english.TOPICS_COUNTED,
    not_judged=english.NOT_JUDGED,
    cautions=english.CAUTIONS,
    question_cautions=roof_questions.CAUTIONS,
    one_line_caution=english.ONE_LINE_CAUTION,
    deciders=phrases.DECIDERS,
    phrases={**phrases.PHRASES, **record_sentences.PHRASES},
    states=record_sentences.STATES,
    state_meanings=record_sentences.STATE_MEANINGS,
    events=record_sentences.EVENTS,
    reasons=record_sentences.REASONS,
    entry_titles=record_sentences.TITLES,
    entry_lines=record_sentences.LINES,
    words={},
    formulas={},
)
