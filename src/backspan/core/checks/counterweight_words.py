"""What the pieces are, how their mass is known, how they are held: words against a clause's list.

One row a question: which words it looks at, which rule value lists the words, and whether that list
accepts or refuses. Where no text of the basis has such a value, a row falls back on the trade's own
list: what nobody in the trade would hang people on is refused, a mass that is only told left open.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from backspan.core.findings import DoesNotApply
from backspan.core.model.topics import Topic
from backspan.core.rules.selected import SelectedValue
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.limits import needed_value
from backspan.core.sheet.reads import read_of
from backspan.core.sheet.subjects import BeamSubject, counterweighted, in_force, under_value
from backspan.core.sheet.witness import EvidenceClass
from backspan.core.sheet.words_allowed import judge_words

Words = tuple[str, ...]


@dataclass(frozen=True, slots=True)
class WordRow:
    """One question: the words stated of a beam's stack against the list of a rule value."""

    says: str
    key: str
    words: Callable[[Inputs, BeamSubject], Words]
    refused: bool = False
    asks_only: bool = False
    """Whether the trade's own list leaves a word off it open; else it refuses as a rule would."""


def kinds(inputs: Inputs, beam: BeamSubject) -> Words:
    """What the pieces are; a fact of the kit, on nobody's word."""
    found: list[str] = []
    for group in beam.support.stack.groups:
        piece = inputs.case.piece(group.piece)
        found.append(str(piece.kind))
        inputs.fact("piece_kind", str(piece.kind), ("kit", "pieces", piece.id, "kind"))
    return _or_wanted(inputs, beam, found)


def marking(inputs: Inputs, beam: BeamSubject) -> Words:
    """How the mass of each piece is known."""
    found: list[str] = []
    for group in beam.support.stack.groups:
        piece = inputs.case.piece(group.piece)
        inputs.number(read_of("piece_mass", piece, ("kit", "pieces", piece.id)))
        found.append("not stated" if piece.mass.evidence is None else str(piece.mass.evidence))
    return _or_wanted(inputs, beam, found)


def fastening(inputs: Inputs, beam: BeamSubject) -> Words:
    """How the pieces are held on the beam."""
    place = (*beam.place, "stack", "fastening")
    held = beam.support.stack.fastening
    word = inputs.word("fastening", held, EvidenceClass.OBSERVATION, place)
    return () if word is None else (word,)


def _or_wanted(inputs: Inputs, beam: BeamSubject, found: list[str]) -> Words:
    if not found:
        inputs.want("pieces", EvidenceClass.COUNT, (*beam.place, "stack", "groups"))
    return tuple(found)


def _check(name: str, *rows: WordRow) -> Check:
    def judge(case: Case) -> Iterator[Answer]:
        for row in rows:
            for one in _asked(case, name, row):
                if isinstance(one, DoesNotApply):
                    yield one
                    continue
                beam, value, custom = one
                inputs = Inputs(case)
                yield judge_words(
                    check=name,
                    subject=beam.name,
                    place=beam.place,
                    message=row.says,
                    words=row.words(inputs, beam) or None,
                    rule=value,
                    inputs=inputs,
                    refused=row.refused,
                    never_fails=custom,
                )

    return Check(name, Topic.TIPPING, judge)


def _asked(
    case: Case, check: str, row: WordRow
) -> Iterator[tuple[BeamSubject, SelectedValue, bool] | DoesNotApply]:
    """Each beam with the list it is held against, and whether that is the trade's own."""
    if in_force(case, row.key):
        for one in under_value(case, check, row.key):
            yield one if isinstance(one, DoesNotApply) else (one.beam, one.value, False)
        return
    value = needed_value(case.practice, row.key)
    for beam in counterweighted(case, check):
        yield beam if isinstance(beam, DoesNotApply) else (beam, value, row.asks_only)


#: Nothing flowable, everything purpose-made.
KIND = _check(
    "counterweight-kind",
    WordRow("flowable", "counterweight.refused-flowable", kinds, refused=True),
    WordRow("purpose-made", "counterweight.purpose-made", kinds),
)
MARKING = _check(
    "counterweight-marking",
    WordRow("marking", "counterweight.mass-evidence", marking, asks_only=True),
)
FASTENING = _check(
    "counterweight-fastening", WordRow("fastening", "counterweight.accepted-fastening", fastening)
)
