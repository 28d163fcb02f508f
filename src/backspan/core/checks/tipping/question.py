"""Does the counterweight hold: required against resisting moment, under each rule of the basis."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass, replace

from backspan.core.findings import (
    SHORTER_BACKSPAN,
    Decider,
    DoesNotApply,
    Finding,
    Message,
    MessageValue,
    Need,
    Verdict,
)
from backspan.core.mechanics.loads import stall_cap
from backspan.core.mechanics.tipping import (
    factor_reached,
    required_moment,
    tipping_moment,
)
from backspan.core.numbers import at_least, surely_above, surely_below, surely_nothing, whole_down
from backspan.core.quantities import FORCE, LENGTH, MOMENT, RATIO, Amount, Style, roof_step
from backspan.core.rules.selected import SelectedRules, SelectedValue
from backspan.core.rules.shape import BeamWeight, FactorOnLoad, LoadBasis
from backspan.core.sheet.beam_as_built import BeamReads, as_built
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer
from backspan.core.sheet.limits import limit_of
from backspan.core.sheet.moments import (
    TOPIC,
    Branch,
    SupportReads,
    branches,
    factor_values,
    support_reads,
)
from backspan.core.sheet.question import Asked, Judged, Question, Told
from backspan.core.sheet.sheet import BareSheet, Sheet
from backspan.core.sheet.subjects import BeamSubject, counterweighted

ID = "tipping"
CAP = "hoist.stall-cap"
Words = tuple[tuple[str, MessageValue], ...]


@dataclass(frozen=True, slots=True)
class Held:
    """A support, and the rule that caps the stall load of its hoist, where there is one."""

    support: SupportReads
    cap: SelectedValue | None


def work(sheet: Sheet, one: Asked[Held]) -> Iterator[Branch]:
    """Every branch of the rule: its factor times its load at the reach, against what holds."""
    support = one.subject.support
    built = as_built(sheet, support.beam)
    if not surely_nothing(built.counterweight):
        sheet.positive("backspan", built.backspan)
    yield from branches(sheet, support, built, one.values)


def also(sheet: Sheet, branch: Branch) -> None:
    """The factor that is reached, for whoever reads the sheet."""
    turned = sheet.do(tipping_moment, load=branch.load, reach=branch.built.reach)
    if surely_above(turned, limit=0.0):
        sheet.do(factor_reached, resisting=branch.capacity, tipping=turned)


def tells(judged: Judged[Held, Branch]) -> Told:
    """What is held against what is required, and what of the beam and the hoist plays a part."""
    governing = judged.weighed.governing
    figures = (("backspan", Amount(governing.built.backspan, LENGTH)),) if governing else ()
    return Told(_message(judged), tuple(_notes(judged)), figures)


QUESTION = Question(ID, "", MOMENT, work, tells, also)


def judge(case: Case) -> Iterator[Answer]:
    """One finding for each counterweighted beam under each rule set of the basis."""
    for subject in counterweighted(case, ID):
        if isinstance(subject, DoesNotApply):
            yield subject
            continue
        for rules in case.under(TOPIC):
            one = asked(case, subject, rules)
            yield _of(case, one) if one.values else _no_number(subject, rules)


def _of(case: Case, one: Asked[Held]) -> Finding:
    """The finding; where only the longer of two backspans holds, measured again it may be none."""
    found, support = QUESTION.judge(case, one), one.subject.support
    if not support.beam.both or found.verdict is not Verdict.FAIL:
        return found
    longer = replace(support, beam=replace(support.beam, both=False))
    worst = QUESTION.worst(case, replace(one, subject=replace(one.subject, support=longer)))
    if worst is None or worst.found.met is not True:
        return found
    told = next((note.values for note in found.notes if note.id == SHORTER_BACKSPAN), None)
    words = told or _as_stated(case.project.units, support.beam)
    need = Need(Decider.MEASURER, Message("need.two-backspans", words))
    return replace(found, verdict=Verdict.REFER, needs=(*found.needs, need))


def asked(case: Case, subject: BeamSubject, rules: SelectedRules) -> Asked[Held]:
    """A beam under the branches of one rule set; no values where the text has no number."""
    held = Held(support_reads(case, subject), _cap_under(case, rules))
    return Asked(held, subject.name, subject.place, factor_values(rules))


def _cap_under(case: Case, rules: SelectedRules) -> SelectedValue | None:
    """The cap on the stall load that goes with a rule set: its own, where hoists are under it."""
    of_hoists = case.under(CAP)
    under = [rules] if any(one is rules for one in of_hoists) else of_hoists
    return next((cap for one in under if (cap := one.find(CAP)) is not None), None)


def _no_number(subject: BeamSubject, rules: SelectedRules) -> Finding:
    """A text in the basis without a number: a person must decide, the program cannot."""
    name = rules.rule_set.id
    return Finding(
        check=ID,
        subject=subject.name,
        place=subject.place,
        verdict=Verdict.REFER,
        message=Message("tipping.no-number", (("rule_set", name),)),
        rules=rules.topic(ID),
        needs=(Need(Decider.LICENSED_ENGINEER, Message("need.design", (("rule_set", name),))),),
        not_judged=True,
    )


def _message(judged: Judged[Held, Branch]) -> Message:
    branch, met = judged.weighed.governing, judged.weighed.met
    values: list[tuple[str, MessageValue]] = [("rule_set", judged.asked.values[0].rule_set)]
    if branch is None:
        return Message("tipping.not-known", tuple(values))
    values += [
        ("required", Amount(branch.demand, MOMENT)),
        ("resisting", Amount(at_least(branch.capacity, least=0.0), MOMENT)),
        ("factor", Amount(branch.rule.factor, RATIO)),
        ("load", str(branch.rule.load)),
        ("pieces", int(branch.built.pieces)),
    ]
    if surely_nothing(branch.built.counterweight):
        return Message("tipping.no-pieces", tuple(values))
    if met is None:
        return Message("tipping.branch-not-known", tuple(values))
    held = "tipping.holds" if judged.passed else "tipping.would-hold"
    return Message(held if met else "tipping.does-not-hold", tuple(values))


def _notes(judged: Judged[Held, Branch]) -> Iterator[Message]:
    known = [one for one in judged.weighed.branches if one.met is not None]
    credited = [one for one in known if one.rule.beam_weight is BeamWeight.CREDITED]
    if any(surely_below(one.own_moment, limit=0.0) for one in known):
        yield Message("note.beam-weight-harms")
    elif credited:
        words = (("rule_set", judged.asked.values[0].rule_set),)
        yield Message("note.beam-weight-credited", words)
    elif known and all(one.own is None for one in judged.weighed.branches):
        yield Message("note.beam-weight-left-out")
    support, governing = judged.asked.subject.support, judged.weighed.governing
    if governing is not None and not math.isnan(governing.built.longer):
        shorter, longer = governing.built.backspan, governing.built.longer
        taped, computed = (shorter, longer) if support.beam.from_stack else (longer, shorter)
        both = _two_backspans(judged.ground.units, taped=taped, computed=computed)
        yield Message(SHORTER_BACKSPAN, both)
    if support.tiebacks:
        yield Message("note.tieback-no-credit")
    if any(("input", "stall_load") in need.what.values for need in judged.inputs.not_stated):
        yield Message("note.stall-not-known")
        yield from _at_most_stall(judged)


def _as_stated(units: Style, beam: BeamReads) -> Words:
    """Both as stated: behind the fulcrum no branch is worked out that could tell them."""
    by_stack = as_built(BareSheet({}, {}), replace(beam, from_stack=True, both=False))
    return _two_backspans(units, taped=beam.backspan.as_stated, computed=by_stack.backspan)


def _two_backspans(units: Style, *, taped: float, computed: float) -> Words:
    """The taped backspan and the one that beam and stack give, as far as a tape shows."""
    step = roof_step(LENGTH, units)
    taped, computed = (whole_down(one / step) * step for one in (taped, computed))
    return ("taped", Amount(taped, LENGTH)), ("computed", Amount(computed, LENGTH))


def _at_most_stall(judged: Judged[Held, Branch]) -> Iterator[Message]:
    """What the stall branch would ask of a hoist that stalls at the most the rule allows."""
    cap, governing = judged.asked.subject.cap, judged.weighed.governing
    rated = next((one.used for one in judged.inputs.used if one.name == "rated_load"), None)
    if cap is None or governing is None or not isinstance(rated, Amount):
        return
    most = stall_cap(cap_factor=limit_of(cap, RATIO), rated_load=rated.value).value
    reach = governing.built.reach
    for value in judged.asked.values:
        rule = value.content
        if isinstance(rule, FactorOnLoad) and rule.load is LoadBasis.HOIST_STALL:
            required = required_moment(factor=rule.factor, load=most, reach=reach).value
            words = (
                ("cap", Amount(most, FORCE)),
                ("required", Amount(required, MOMENT)),
                ("resisting", Amount(governing.capacity, MOMENT)),
            )
            yield Message("note.stall-at-most", words)
