"""What every topic shares: the sums of its beam, the checks that judge it, the answer's parts."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from backspan.core.checks import beam_length, beam_proportion, plausible_values, stall_cap, tipping
from backspan.core.checks.tipping import Held
from backspan.core.findings import Finding, Message, MessageValue, Need, Verdict
from backspan.core.quantities import RATIO, Amount, Style, display
from backspan.core.questions.imagined import rules_of_case, subject_of
from backspan.core.questions.parameters import SUPPLIES
from backspan.core.questions.shape import Answer, Asked, Line
from backspan.core.review.run import governing_of, roll_up, with_margins
from backspan.core.rules.selected import SelectedValue
from backspan.core.rules.shape import LoadBasis
from backspan.core.sheet import question as sheet_question
from backspan.core.sheet.beam_as_built import AsBuilt, as_built
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Check
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.limits import limit_of
from backspan.core.sheet.moments import Branch
from backspan.core.sheet.question import Weighed, weigh
from backspan.core.sheet.sheet import BareSheet, RecordedSheet
from backspan.core.worked.formula import Step

#: The checks whose subject a question describes.
JUDGES = (tipping.CHECK, beam_length.CHECK, stall_cap.CHECK, beam_proportion.CHECK)

#: The check that says what is not known while a number of the rig is only a trial.
OF_A_TRIAL = (tipping.CHECK,)

#: Said of the rig as it stands in a review; where a number is sought, the rig is made up.
_OF_WHAT_IS_THERE = "note.stall-at-most"
#: A question has no kit to choose from.
_OF_THE_KIT = "hoists-that-do"


@dataclass(frozen=True, slots=True)
class Worked:
    """The sums of the one beam of a case, with their steps."""

    case: Case
    asked: sheet_question.Asked[Held]
    inputs: Inputs
    weighed: Weighed[Branch]
    steps: tuple[Step, ...]

    @property
    def values(self) -> tuple[SelectedValue, ...]:
        """The branches of the rule; none where the text has no number."""
        return self.asked.values

    @property
    def governing(self) -> Branch | None:
        """The branch that asks for most of those that are known."""
        return self.weighed.governing

    @property
    def built(self) -> AsBuilt:
        """The beam as the question describes it."""
        return as_built(BareSheet({}, {}), self.asked.subject.support.beam)

    @property
    def held(self) -> bool:
        """Whether every branch that is known is held, and at least one is known."""
        return self.governing is not None and self.weighed.met is not False

    @property
    def rule_set(self) -> str:
        """The rule set the question is asked under."""
        return rules_of_case(self.case).rule_set.id


def worked_of(case: Case) -> Worked:
    """The sums of a case's beam under its first rule set."""
    one = tipping.asked(case, subject_of(case), rules_of_case(case))
    inputs = Inputs(case)
    sheet = RecordedSheet(inputs)
    branches = tuple(tipping.QUESTION.work(sheet, one))
    weighed = weigh(branches, sheet.outside)
    return Worked(case, one, inputs, weighed, tuple(sheet.steps))


def stall_cap_of(case: Case) -> float | None:
    """The most stall load over rated load that the rule set allows; None where it sets no cap."""
    value = rules_of_case(case).find(stall_cap.KEY)
    return None if value is None else limit_of(value, RATIO)


def stall_open(worked: Worked) -> bool:
    """Whether a branch of the rule waits for the stall load."""
    return any(
        branch.rule.load is LoadBasis.HOIST_STALL and math.isnan(branch.load)
        for branch in worked.weighed.branches
    )


def findings_of(case: Case, judges: Sequence[Check] = JUDGES) -> tuple[Finding, ...]:
    """What the checks find on the case's beam, in their order."""
    found = [
        answer for check in judges for answer in check.judge(case) if isinstance(answer, Finding)
    ]
    return with_margins(case, found)


def factor_on_load(branch: Branch) -> tuple[tuple[str, MessageValue], ...]:
    """Factor and load of a branch, as messages carry them."""
    return (("factor", Amount(branch.rule.factor, RATIO)), ("load", str(branch.rule.load)))


def governing_line(branch: Branch, style: Style) -> Line:
    """Which branch of the rule asks for most."""
    factor = display(branch.rule.factor, RATIO, style)
    return Line("governing", f"{factor} x {branch.rule.load}")


def factor_line(findings: Sequence[Finding], name: str = "factor-reached") -> tuple[Line, ...]:
    """The factor that the governing branch's load is held with, where it could be worked out."""
    steps = [step for finding in findings for step in finding.steps]
    found = [step.value for step in steps if step.formula == "factor_reached"]
    return (Line(name, Amount(found[0], RATIO)),) if found else ()


def answer_of(
    asked: Asked,
    case: Case,
    findings: Sequence[Finding],
    message: Message | None,
    lines: Sequence[Line],
    *,
    first_steps: Sequence[Step] = (),
    notes: Sequence[Message] = (),
    supplies: Mapping[str, str] = SUPPLIES,
) -> Answer:
    """The answer that findings make.

    With `message` a number was asked for: then a pass is no verdict, since nothing that is there
    was judged. Without it the governing finding speaks.
    """
    verdict: Verdict | None = roll_up(findings)
    governing = governing_of(findings)
    if message is None or verdict is Verdict.FAIL:
        spoken = findings[governing or 0].message
    else:
        spoken = message
    if message is not None and verdict is Verdict.PASS:
        verdict = None
    rules = [rule for finding in findings for rule in finding.rules]
    steps = [*first_steps, *(step for finding in findings for step in finding.steps)]
    needs = [_need(need, supplies) for finding in findings for need in finding.needs]
    said = [note for finding in findings for note in finding.notes]
    if message is not None:
        said = [note for note in said if note.id != _OF_WHAT_IS_THERE]
        if verdict is Verdict.MISSING:
            said.append(Message("note.by-what-is-known"))
    margins = () if message is not None else findings[0].margins
    return Answer(
        message=spoken,
        verdict=verdict,
        lines=tuple(lines),
        margins=tuple(one for one in margins if one.id != _OF_THE_KIT),
        steps=tuple(dict.fromkeys(steps)),
        rules=_distinct(rules),
        notes=(*notes, *said, *questioned(asked, case), Message("note.asker-vouches")),
        needs=tuple(dict.fromkeys(needs)),
    )


def not_known(
    asked: Asked,
    worked: Worked,
    supplies: Mapping[str, str] = SUPPLIES,
    judges: Sequence[Check] = JUDGES,
) -> Answer:
    """The answer where the rule has no number, or a load it needs is not given."""
    findings = findings_of(worked.case, judges)
    words: tuple[tuple[str, MessageValue], ...] = (("rule_set", worked.rule_set),)
    message = Message("ask.not-known" if worked.values else "ask.no-number", words)
    return answer_of(asked, worked.case, findings, message, (), supplies=supplies)


def questioned(asked: Asked, case: Case) -> tuple[Message, ...]:
    """What the trade would look at again, among the values that were given."""
    found = []
    for answer in plausible_values.CHECK.judge(case):
        if isinstance(answer, Finding):
            name = dict(answer.message.values).get("input")
            if SUPPLIES.get(str(name)) in asked.values:
                found.append(answer.message)
    return tuple(found)


def _distinct(rules: Sequence[SelectedValue]) -> tuple[SelectedValue, ...]:
    found: list[SelectedValue] = []
    for rule in rules:
        if rule not in found:
            found.append(rule)
    return tuple(found)


def _need(need: Need, supplies: Mapping[str, str]) -> Need:
    """A need told by the parameter that would meet it; the place in a project says nothing here."""
    name = str(dict(need.what.values).get("input", ""))
    if need.what.id != "need.input" or name not in supplies:
        return need
    words = (("input", name), ("parameter", supplies[name]))
    return Need(need.who, Message("ask.need", words))
