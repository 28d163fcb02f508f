"""What was found of a stage where it hangs: one word a question, each against a list.

What is above the riders is built of the rig itself. On lines of its own it is not refused, but a
lifeline that hangs down through it holds nobody, and no check here counts another one: a
qualified person says how riders are held there. Hot work beside a lifeline of fibre burns it: how
each is shielded, whoever has charge of the shift says.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from backspan.core.findings import Decider, DoesNotApply, Finding, Message, Need, Verdict
from backspan.core.model.kit import Listing, RopeKind
from backspan.core.model.stages import HotWork, Overhead
from backspan.core.model.topics import Topic
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.hung import Hung, each_hung
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.limits import needed_value
from backspan.core.sheet.rope_of import rope_of
from backspan.core.sheet.set_up import since_set_up
from backspan.core.sheet.witness import EvidenceClass, words_of
from backspan.core.sheet.words_seen import WordSeen
from backspan.core.sheet.words_within import words_within

ID, LIGHT = "stage-seen", "stage.light-metals"


@dataclass(frozen=True, slots=True)
class Row:
    """A question of a stage: the field that answers it, the sentence, the list of words."""

    field: str
    says: str
    since_set_up: bool = False
    """Whether it tells of the set-up as it is, and of none before it."""

    @property
    def key(self) -> str:
        """The rule value that lists what is accepted."""
        return f"stage.{self.says}"


ROWS = (
    Row("joints", "joints"),
    Row("fixed", "fixed"),
    Row("guardrail", "guardrail"),
    Row("toeboard", "toeboard"),
    Row("along", "along"),
    Row("sway", "sway"),
    Row("first_lift", "first-lift", since_set_up=True),
    Row("hot_work", "hot-work"),
    Row("deck", "deck"),
    Row("running", "level"),
    Row("bow", "bow"),
    Row("drives", "drives"),
)


def judge(case: Case) -> Iterator[Answer]:
    """One finding a question under each rule set that lists words for it, else by the trade's."""
    for one in each_hung(case, ID):
        if isinstance(one, DoesNotApply):
            yield one
            continue
        for row in ROWS:
            inputs, at = Inputs(case), (*one.place, "found", row.field)
            stated = getattr(one.hung.found, row.field)
            stated = since_set_up(case, one, stated) if row.since_set_up else stated
            word = inputs.word(row.field, stated, EvidenceClass.OBSERVATION, at)
            if word == HotWork.INSULATED and _fibre(case):
                who = Message("need.hot-work-lines", (("stage", one.hung.stage),))
                inputs.refer.append(Need(Decider.COMPETENT_PERSON, who))
            yield from WordSeen(ID, one.name, at, inputs, word).against(row.key, row.says)
        yield from _overhead(case, one)
        yield from _listed(case, one)


def _fibre(case: Case) -> bool:
    """Whether a lifeline of the rig is of fibre, or of nobody knows what."""
    lines = () if case.drop.rig is None else case.drop.rig.lines
    ropes = (rope_of(case, line) for line in lines)
    return any(rope is None or rope.kind is not RopeKind.WIRE for rope in ropes)


def _listed(case: Case, one: Hung) -> Iterator[Finding]:
    """Whether it is listed; "not of light metal" is asked again of one whose name says it is."""
    inputs, at, says = Inputs(case), (*one.plate, "listed"), "listed"
    listed = inputs.plain("listed", one.stage.listed, one.stage, at)
    light = words_of(needed_value(case.practice, LIGHT))
    if listed == Listing.NOT_LIGHT and words_within(one.stage.name, light):
        says, listed = "listed-contradicts", None
        inputs.want("listed", EvidenceClass.OBSERVATION, at)
    yield from WordSeen(ID, one.name, at, inputs, listed).against("stage.listed", says)


def _overhead(case: Case, one: Hung) -> Iterator[Finding]:
    inputs, at = Inputs(case), (*one.place, "overhead")
    word = inputs.word("overhead", one.hung.overhead, EvidenceClass.OBSERVATION, at)
    if word == Overhead.OWN_LINES:
        who = Message("need.overhead", (("stage", one.hung.stage),))
        inputs.refer.append(Need(Decider.QUALIFIED_PERSON, who))
    for found in WordSeen(ID, one.name, at, inputs, word).against("stage.overhead", "overhead"):
        theirs = word == Overhead.OWN_LINES and found.verdict is Verdict.REFER
        yield replace(found, not_judged=theirs)


CHECK = Check(ID, Topic.STAGE, judge)
