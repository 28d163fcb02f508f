"""The shape of a finding and of a review. No logic: data that every later room only reads."""

from __future__ import annotations

import datetime
from dataclasses import dataclass
from enum import StrEnum
from typing import NamedTuple

from backspan.core.model.evidence import Evidence
from backspan.core.model.topics import Topic
from backspan.core.quantities import Amount, Style
from backspan.core.rules.selected import SelectedValue
from backspan.core.worked.formula import Step


class Verdict(StrEnum):
    """The four answers of a finding."""

    PASS = "pass"
    FAIL = "fail"
    REFER = "refer"
    MISSING = "missing"


#: Findings and drops in the order people need them: what stops a drop comes first.
WORST_FIRST = (Verdict.FAIL, Verdict.MISSING, Verdict.REFER, Verdict.PASS)

#: What a message can carry: a number with its dimension, a count, a name, or several names.
MessageValue = Amount | int | str | tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Message:
    """A sentence by its id, with typed values; the words of each language live in core/words."""

    id: str
    values: tuple[tuple[str, MessageValue], ...] = ()


class Decider(StrEnum):
    """Who must decide or supply what is not settled."""

    COMPETENT_PERSON = "competent person"
    QUALIFIED_PERSON = "qualified person"
    LICENSED_ENGINEER = "licensed engineer"
    OWNER = "owner"
    CONTRACTOR = "contractor"
    OFFICE = "the office that keeps the text"
    MEASURER = "the person who measures on the roof"


@dataclass(frozen=True, slots=True)
class Need:
    """What would settle an open finding, and who supplies it."""

    who: Decider
    what: Message


@dataclass(frozen=True, slots=True)
class InputUsed:
    """One input of a finding: as stated, and at the worst corner, where the check was made."""

    name: str
    stated: Amount | int | str
    used: Amount | int | str
    evidence: Evidence | None
    tolerance: Amount | int | None = None
    usual: bool = False
    """Whether the tolerance is the usual one of the trade, since nobody stated it."""
    by: str | None = None
    at: str | None = None
    document: str | None = None
    checked_by: str | None = None
    place: tuple[str | int, ...] = ()
    written: str = ""
    """The text of the statement, with the unit somebody wrote."""


@dataclass(frozen=True, slots=True)
class Margin:
    """What is left, in the units people use on a roof, rounded to the side of caution."""

    id: str
    value: Amount | int | str
    beyond: bool = False
    """True where the margin is already used up: the value is what is short."""


#: The note of a finding that was judged by the shorter of two backspans; drawings print it too.
SHORTER_BACKSPAN = "note.shorter-backspan"


class FindingKey(NamedTuple):
    """Which finding it is, whatever it found: check, subject, rule set with edition, question."""

    check: str
    subject: str
    rule_set: str
    question: str


@dataclass(frozen=True, slots=True)
class Finding:
    """The answer to one check on one subject.

    `place` is the path of the subject in the project. Demand and capacity share a dimension.
    `steps` are the formulas that ran, in order. `rules` are the values the answer rests on, the
    governing one first.
    """

    check: str
    subject: str
    place: tuple[str | int, ...]
    verdict: Verdict
    message: Message
    demand: Amount | None = None
    capacity: Amount | None = None
    utilisation: float | None = None
    governing: str | None = None
    question: str = ""
    """What of its check the finding answers, where a check asks more than one thing."""
    rules: tuple[SelectedValue, ...] = ()
    inputs: tuple[InputUsed, ...] = ()
    steps: tuple[Step, ...] = ()
    margins: tuple[Margin, ...] = ()
    notes: tuple[Message, ...] = ()
    needs: tuple[Need, ...] = ()
    figures: tuple[tuple[str, Amount], ...] = ()
    """What was worked out of the subject on the way, for drawings that show it."""
    strength: bool = False
    """Whether its utilisation is of strength: a cap is never ranked with those."""
    not_judged: bool = False
    """Whether it is referred because this version, or the rule set, has nothing to judge it by."""

    @property
    def key(self) -> FindingKey:
        """By what findings are paired: two findings of one review never share it."""
        under = self.rules[0] if self.rules else None
        rule_set = "" if under is None else f"{under.rule_set}@{under.edition}"
        return FindingKey(self.check, self.subject, rule_set, self.question)


@dataclass(frozen=True, slots=True)
class DoesNotApply:
    """A registered check that has nothing to judge on a subject, with its reason."""

    check: str
    subject: str
    place: tuple[str | int, ...]
    reason: Message
    inputs: tuple[InputUsed, ...] = ()
    """What was read before the reason was clear: elsewhere within its doubt there may be none."""


@dataclass(frozen=True, slots=True)
class ComparisonRow:
    """One counterweight rule applied to the same suspension point as it stands.

    `required` is the counterweight's mass at the backspan as built; None, with a reason, where
    the rule has no number or a load it needs is not known.
    """

    subject: str
    rule: SelectedValue
    in_basis: bool
    load: Amount | None = None
    required: Amount | None = None
    pieces: int | None = None
    enough: bool | None = None
    reason: Message | None = None


@dataclass(frozen=True, slots=True)
class EnvelopePoint:
    """At this backspan, the pieces that are there hold up to this reach."""

    backspan: Amount
    most_reach: Amount


@dataclass(frozen=True, slots=True)
class Envelope:
    """The operating envelope of one suspension point for the counterweight that is on the beam."""

    subject: str
    rule: SelectedValue
    pieces: int
    counterweight: Amount
    points: tuple[EnvelopePoint, ...]
    backspan_now: Amount
    reach_now: Amount
    """Both as used by the check: at the worst corner of what is doubtful."""


@dataclass(frozen=True, slots=True)
class Imposed:
    """What a surface has to carry under one branch of a rule, its factor counted."""

    rule: SelectedValue
    load: Amount | None


@dataclass(frozen=True, slots=True)
class Pressed:
    """What one stand of a beam presses on the roof, and on what; None where it is not known.

    `at` is on the plan. `most` is the most in service: on a fulcrum with the tail about to lift.
    """

    at: tuple[Amount, Amount] | None
    idle: Amount | None
    rated: Amount | None
    imposed: tuple[Imposed, ...]
    most: Amount | None
    plate_length: Amount | None
    plate_width: Amount | None
    surface_strength: Amount | None
    pad: tuple[Amount | None, Amount | None, Amount | None] | None = None
    """Length, width and thickness of a pad under the plate; None where there is none."""


@dataclass(frozen=True, slots=True)
class Reactions:
    """What a counterweighted beam presses on the roof, as stated."""

    subject: str
    kind: str | None
    """What it bears on in front."""
    rated_load: Amount | None
    front: Pressed
    rear: Pressed


@dataclass(frozen=True, slots=True)
class BasisLine:
    """One rule set of the basis, with the readings chosen, as every paper prints it."""

    topic: str
    rule_set: str
    edition: str
    title: str
    readings: tuple[tuple[str, str], ...]
    added_for_drop: bool = False


@dataclass(frozen=True, slots=True)
class TopicAnswer:
    """The answer of one topic a drop must be judged on; `findings` are places in the review's list.

    `who` may judge it instead of the program. `notes` tell why a take-over has no effect.
    """

    topic: Topic
    verdict: Verdict
    who: tuple[str, ...]
    findings: tuple[int, ...] = ()
    not_judged: bool = False
    """Whether this version does not judge it whole, and nobody took it over."""
    taken_over: Message | None = None
    notes: tuple[Message, ...] = ()


@dataclass(frozen=True, slots=True)
class Review:
    """All findings of one drop, rolled up."""

    format: int
    program: str
    site: str
    drop: str
    configuration: str
    on: datetime.date
    units: Style
    verdict: Verdict
    basis: tuple[BasisLine, ...]
    findings: tuple[Finding, ...]
    not_applicable: tuple[DoesNotApply, ...]
    governing: int | None
    """Index of the worst finding; None when there is no finding."""
    topics: tuple[TopicAnswer, ...] = ()
    """Every topic's answer: together they make the verdict."""
    comparison: tuple[ComparisonRow, ...] = ()
    envelopes: tuple[Envelope, ...] = ()
    reactions: tuple[Reactions, ...] = ()
