"""What was found of a counterweighted beam and of its joints: one word a question, against a list.

A beam at an angle to its bearing is refused, unless an obstruction that cannot be moved is stated:
whether that and the tiebacks at opposing angles are so, a qualified person says. A beam of one
piece has no joints; where joints are listed of it all the same, one of the two is wrong, and what
is right is asked. So it is of an I without a web, of a pair of channels where one section is
stated, of a bow that a maker allows where no label speaks of any maker, and of a joint that is not
there and of which somebody saw something. A word that says only that nobody can tell leaves its
question open.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.findings import Decider, DoesNotApply, Finding, Message, Need
from backspan.core.model.beams import (
    BeamBow,
    BeamSplice,
    Channels,
    Joined,
    JointThere,
    SpliceMarks,
    SpliceOrder,
    Square,
    Web,
)
from backspan.core.model.topics import Topic
from backspan.core.sheet.beam_section import OPEN, by_its_section
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.plain_beam import form_of
from backspan.core.sheet.subjects import BeamSubject, counterweighted
from backspan.core.sheet.witness import EvidenceClass
from backspan.core.sheet.words_seen import WordSeen

ID = "beam-seen"


@dataclass(frozen=True, slots=True)
class Row:
    """A question of a beam or a joint: the field that answers it, and how it is called."""

    field: str
    key: str

    @property
    def says(self) -> str:
        """What the ids of its sentences begin with."""
        return self.key.replace(".", "-")


ROWS = (
    Row("web", "beam.web"),
    Row("stop_bolts", "beam.stops"),
    Row("square", "beam.square"),
    Row("shackle", "beam.shackle"),
    Row("beam_level", "beam.level"),
    Row("beam_bow", "beam.bow"),
    Row("restrained", "beam.restrained"),
    Row("channels", "beam.channels"),
)
#: What the strength of a section rests on, and no label speaks of.
OF_SECTION = (Row("upright", "beam.upright"), Row("holes", "beam.holes"))
JOINED = Row("joined", "beam.joined")
THERE = Row("there", "beam.joint-there")
OF_SPLICE = (Row("pins", "beam.pins"), Row("order", "beam.order"), Row("marks", "beam.marks"))
#: What is no answer of a joint, although somebody looked.
NOT_TOLD = frozenset({SpliceOrder.NOT_KNOWN, SpliceMarks.NONE})


def judge(case: Case) -> Iterator[Answer]:
    """One finding a question under each rule set that lists words for it, else by the trade's."""
    for one in counterweighted(case, ID):
        if isinstance(one, DoesNotApply):
            yield one
            continue
        by_section = by_its_section(case.beam(one.support.beam))
        for row in (*ROWS, *(OF_SECTION if by_section else ())):
            yield from _of_beam(case, one, row)
        yield from _joined(case, one)
        for splice in one.support.splices:
            if splice.there is not None:
                yield from _there(case, one, splice)
        for splice in one.support.joints:
            for row in OF_SPLICE:
                yield from _of_splice(case, one, splice, row)


def _of_beam(case: Case, beam: BeamSubject, row: Row) -> Iterator[Finding]:
    inputs, at = Inputs(case), (*beam.place, "found", row.field)
    stated = getattr(beam.support.found, row.field)
    word = inputs.word(row.field, stated, EvidenceClass.OBSERVATION, at)
    says = row.says
    if word is not None and _contradicts(case, beam, word):
        says, word = f"{says}-contradicts", None
        inputs.want(row.field, EvidenceClass.OBSERVATION, at)
    if word == Square.OBSTRUCTED:
        # Seen on the day and no part of the configuration: no letter on the beam stands for it.
        who = Message("need.beam-square", (("point", beam.point.id),))
        inputs.refer.append(Need(Decider.QUALIFIED_PERSON, who))
    yield from WordSeen(ID, beam.name, at, inputs, word).against(row.key, says)


def _contradicts(case: Case, beam: BeamSubject, word: str) -> bool:
    """Whether a word that passes cannot be of a beam of the section that is stated."""
    section = case.beam(beam.support.beam).section
    if section is None:
        return False
    form, _ = form_of(case, section)
    no_maker = word == BeamBow.ALLOWED and by_its_section(case.beam(beam.support.beam))
    return no_maker or word == Channels.FASTENED or (word == Web.NONE and form in OPEN)


def _joined(case: Case, beam: BeamSubject) -> Iterator[Finding]:
    inputs, at = Inputs(case), (*beam.place, JOINED.field)
    word = inputs.word("joined", beam.support.joined, EvidenceClass.OBSERVATION, at)
    if word == Joined.ONE_PIECE and beam.support.joints:
        word = None
        inputs.want("joined", EvidenceClass.OBSERVATION, at)
    yield from WordSeen(ID, beam.name, at, inputs, word).against(JOINED.key, JOINED.says)


def _there(case: Case, beam: BeamSubject, splice: BeamSplice) -> Iterator[Finding]:
    inputs, at = Inputs(case), (*beam.place, "splices", splice.id, THERE.field)
    word = inputs.word("joint_there", splice.there, EvidenceClass.OBSERVATION, at)
    if word == JointThere.NOT_THERE and not splice.absent:
        word = None
        inputs.want("joint_there", EvidenceClass.OBSERVATION, at)
    name = f"{beam.name}/{splice.id}"
    yield from WordSeen(ID, name, at, inputs, word).against(THERE.key, THERE.says)


def _of_splice(case: Case, beam: BeamSubject, splice: BeamSplice, row: Row) -> Iterator[Finding]:
    inputs, at = Inputs(case), (*beam.place, "splices", splice.id, row.field)
    stated = getattr(splice, row.field)
    word = inputs.word(row.field, stated, EvidenceClass.OBSERVATION, at)
    if word in NOT_TOLD:
        word = None
        inputs.want(row.field, EvidenceClass.OBSERVATION, at)
    name = f"{beam.name}/{splice.id}"
    yield from WordSeen(ID, name, at, inputs, word).against(row.key, row.says)


CHECK = Check(ID, Topic.BEAM, judge)
