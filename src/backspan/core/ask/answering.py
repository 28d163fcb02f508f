"""How any topic is answered: by the finding where all is given, else by the boundary sought.

What is sought is found on the same sums that judge it (core/sheet/boundary.py): the last step that
holds going up, or the first one. A branch that waits for the stall load stays open; beside the
number by what is known stands the one for a hoist that stalls at the most its rule allows.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from backspan.core.ask.imagined import case_of_question, subject_of
from backspan.core.ask.shape import Answer, Asked, Given, Line
from backspan.core.checks import plausible_values, tipping
from backspan.core.checks.tipping import Held, most_that_fit
from backspan.core.findings import Finding, Message, MessageValue, Need, Verdict
from backspan.core.numbers import MOST_STEPS, step_down
from backspan.core.quantities import FORCE, RATIO, Amount, display, roof_step
from backspan.core.quantities.named import QUANTITIES
from backspan.core.review.run import governing_of, roll_up, with_margins
from backspan.core.rules.selected import SelectedValue
from backspan.core.rules.shape import LoadBasis
from backspan.core.sheet.beam_as_built import AsBuilt, as_built
from backspan.core.sheet.boundary import Change, search_of
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Check
from backspan.core.sheet.compared import Weighed
from backspan.core.sheet.limits import limit_of
from backspan.core.sheet.moments import Branch
from backspan.core.sheet.question import Asked as OfBeam
from backspan.core.sheet.reads import Read
from backspan.core.sheet.sheet import BareSheet

#: Said of the rig as it stands in a review; where a number is sought, the rig is made up.
_OF_WHAT_IS_THERE = "note.stall-at-most"
#: A question has no kit to choose from.
_OF_THE_KIT = "hoists-that-do"


#: A number that was sought: infinity where it never ends, None where none holds.
Found = Amount | int | float | None


@dataclass(frozen=True, slots=True)
class Sought:
    """What a topic seeks: a quantity, up to the most that holds or down to the least.

    With `by_ratio` the stall load is a share of the rated load that is sought.
    """

    name: str
    line: str
    most: bool
    from_stack: bool = False
    by_ratio: bool = False


@dataclass(frozen=True, slots=True)
class Posed:
    """A question as a case, with the sums of its one beam."""

    asked: Asked
    case: Case
    one: OfBeam[Held]
    weighed: Weighed[Branch]

    @property
    def built(self) -> AsBuilt:
        """The beam as the question describes it."""
        return as_built(BareSheet({}, {}), self.one.subject.support.beam)

    @property
    def cap(self) -> float | None:
        """The most stall load over rated load that the rule allows; None where it sets no cap."""
        found = self.one.subject.cap
        return None if found is None else limit_of(found, RATIO)

    @property
    def stall_open(self) -> bool:
        """Whether a branch of the rule waits for the stall load."""
        return any(
            branch.rule.load is LoadBasis.HOIST_STALL and math.isnan(branch.load)
            for branch in self.weighed.branches
        )


def posed(asked: Asked, *, from_stack: bool = False) -> Posed:
    """The question as a case, and its sums."""
    case = case_of_question(asked, from_stack=from_stack)
    one = tipping.asked(case, subject_of(case), case.under(tipping.TOPIC)[0])
    return Posed(asked, case, one, tipping.QUESTION.bare({}, one, {}))


def boundary(asked: Asked, what: Sought) -> Found:
    """The number sought by what is known; infinity where it never ends, None where none holds."""
    at = posed(asked, from_stack=what.from_stack)
    search = search_of(at.case, tipping.QUESTION, at.one)
    moves = _moves(at, what)
    most = most_that_fit(at.case, at.one) if what.from_stack else MOST_STEPS
    if search is None or not at.one.values:
        return None
    change = Change(moves, most=most, start=0.0)
    if search.at(change, 1).governing is None:
        return None
    step = moves[0][1]
    if what.most:
        count = search.room(change, lambda branch: branch.met is not None)
        if count == MOST_STEPS:
            return math.inf
        return _given(what, count, step) if count > 0 else None
    fewest = search.short(change)
    return None if fewest is None else _given(what, fewest, step)


def having(asked: Asked, what: Sought, number: Given) -> Asked:
    """The question with what is sought given."""
    filled = asked.having(QUANTITIES[what.name].asked, number)
    ratio = asked.number("stall-ratio")
    if what.by_ratio and ratio is not None and isinstance(number, Amount):
        return filled.having("stall", Amount(ratio * number.value, FORCE))
    return filled


def at_most_stall(at: Posed, what: Sought) -> Asked | None:
    """The same question with the hoist at the most stall load its rule allows; None if not open."""
    if at.cap is None or not at.stall_open:
        return None
    if what.by_ratio:
        return at.asked.having("stall-ratio", Amount(at.cap, RATIO))
    rated = at.asked.number("rated") or 0.0
    return at.asked.having("stall", Amount(at.cap * rated, FORCE))


def findings_of(case: Case, checks: Sequence[Check]) -> tuple[Finding, ...]:
    """What the checks find on the case's beam, in their order, with what is left."""
    found = [one for check in checks for one in check.judge(case) if isinstance(one, Finding)]
    return with_margins(case, found)


def factor_on_load(branch: Branch) -> tuple[tuple[str, MessageValue], ...]:
    """Factor and load of a branch, as messages carry them."""
    return (("factor", Amount(branch.rule.factor, RATIO)), ("load", str(branch.rule.load)))


def factor_line(findings: Sequence[Finding], name: str = "factor-reached") -> tuple[Line, ...]:
    """The factor that the governing branch's load is held with, where it could be worked out."""
    steps = [step for finding in findings for step in finding.steps]
    found = [step.value for step in steps if step.formula == "factor_reached"]
    return (Line(name, Amount(found[0], RATIO)),) if found else ()


def governing_line(at: Posed) -> tuple[Line, ...]:
    """Which branch of the rule asks for most."""
    branch = at.weighed.governing
    if branch is None:
        return ()
    factor = display(branch.rule.factor, RATIO, at.asked.style)
    return (Line("governing", f"{factor} x {branch.rule.load}"),)


def answer_of(
    at: Posed,
    findings: Sequence[Finding],
    message: Message | None,
    lines: Sequence[Line],
    *,
    notes: Sequence[str] = (),
    by_ratio: bool = False,
) -> Answer:
    """The answer that findings make.

    With `message` a number was asked for: then a pass is no verdict, since nothing that is there
    was judged. Without it the governing finding speaks.
    """
    verdict: Verdict | None = roll_up(findings)
    spoken = findings[governing_of(findings) or 0].message
    if message is not None and verdict is not Verdict.FAIL:
        spoken = message
    said = [note for finding in findings for note in finding.notes]
    if message is not None:
        said = [note for note in said if note.id != _OF_WHAT_IS_THERE]
        if verdict is Verdict.MISSING:
            said.append(Message("note.by-what-is-known"))
    needs = [_need(need, by_ratio=by_ratio) for finding in findings for need in finding.needs]
    margins = () if message is not None else findings[0].margins
    own = [Message(note) for note in notes]
    return Answer(
        message=spoken,
        verdict=None if message is not None and verdict is Verdict.PASS else verdict,
        lines=tuple(lines),
        margins=tuple(one for one in margins if one.id != _OF_THE_KIT),
        steps=tuple(dict.fromkeys(step for finding in findings for step in finding.steps)),
        rules=_distinct([rule for finding in findings for rule in finding.rules]),
        notes=(*own, *said, *questioned(at.asked, at.case), Message("note.asker-vouches")),
        needs=tuple(dict.fromkeys(needs)),
    )


def questioned(asked: Asked, case: Case) -> tuple[Message, ...]:
    """What the trade would look at again, among the values that were given."""
    found = []
    for answer in plausible_values.CHECK.judge(case):
        if isinstance(answer, Finding):
            name = str(dict(answer.message.values)["input"])
            if QUANTITIES[name].asked in asked.values:
                found.append(answer.message)
    return tuple(found)


def _moves(at: Posed, what: Sought) -> tuple[tuple[Read, float], ...]:
    """What is sought, with the step it is told in; the stall load goes with the rated load."""
    support = at.one.subject.support
    ratio = at.asked.number("stall-ratio")
    reads = {
        "reach": support.beam.reach,
        "backspan": support.beam.backspan,
        "pieces": support.beam.groups[-1].count,
        "rated_load": support.line.rated_load,
    }
    dimension = QUANTITIES[what.name].dimension
    step = 1.0 if dimension is None else roof_step(dimension, at.asked.style)
    sought = ((reads[what.name], step),)
    if what.by_ratio and ratio is not None:
        return (*sought, (support.line.stall_load, ratio * step))
    return sought


def _given(what: Sought, count: int, step: float) -> Amount | int:
    dimension = QUANTITIES[what.name].dimension
    return count if dimension is None else Amount(step_down(count * step, step=step), dimension)


def _distinct(rules: Sequence[SelectedValue]) -> tuple[SelectedValue, ...]:
    found: list[SelectedValue] = []
    for rule in rules:
        if rule not in found:
            found.append(rule)
    return tuple(found)


def _need(need: Need, *, by_ratio: bool) -> Need:
    """A need told by the parameter that would meet it; the place in a project says nothing here."""
    name = str(dict(need.what.values).get("input", ""))
    if need.what.id != "need.input" or name not in QUANTITIES or not QUANTITIES[name].asked:
        return need
    by = "stall-ratio" if by_ratio and name == "stall_load" else QUANTITIES[name].asked
    return Need(need.who, Message("ask.need", (("input", name), ("parameter", by))))
