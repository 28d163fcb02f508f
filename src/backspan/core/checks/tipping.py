"""Does the counterweight hold: required against resisting moment, under each rule of the basis."""

from __future__ import annotations

from collections.abc import Iterator

from backspan.core.findings import (
    Decider,
    DoesNotApply,
    Finding,
    Message,
    MessageValue,
    Need,
    Verdict,
)
from backspan.core.judgement.case import Case
from backspan.core.judgement.check import Answer, Check
from backspan.core.judgement.decide import decide
from backspan.core.judgement.inputs import Inputs
from backspan.core.judgement.limits import limit_of
from backspan.core.judgement.subjects import BeamSubject, counterweighted
from backspan.core.judgement.tipping_margins import tipping_margins
from backspan.core.judgement.tipping_sums import (
    Branch,
    FactorValues,
    TippingSums,
    factor_values,
    tipping_sums,
)
from backspan.core.mechanics.loads import stall_cap
from backspan.core.mechanics.tipping import (
    factor_reached,
    required_moment,
    tipping_moment,
    utilisation,
)
from backspan.core.quantities import FORCE, MOMENT, RATIO, Amount
from backspan.core.rules.selected import SelectedRules, SelectedValue
from backspan.core.rules.shape import LoadBasis
from backspan.core.worked.formula import Step

ID = "tipping"


def judge(case: Case) -> Iterator[Answer]:
    """One finding for each counterweighted beam under each rule set of the basis."""
    for subject in counterweighted(case, ID):
        if isinstance(subject, DoesNotApply):
            yield subject
            continue
        for rules in case.rules:
            values = factor_values(rules)
            yield (
                _judge_beam(case, subject, rules, values) if values else _no_number(subject, rules)
            )


def _judge_beam(
    case: Case, subject: BeamSubject, rules: SelectedRules, values: FactorValues
) -> Finding:
    inputs = Inputs(case)
    sums = tipping_sums(inputs, subject, values)
    verdict, needs = decide(met=sums.met, inputs=inputs, rules=[value for value, _ in values])
    governing = sums.governing
    ratio = None if governing is None else _share(governing)
    return Finding(
        check=ID,
        subject=subject.name,
        place=subject.place,
        verdict=verdict,
        message=_message(sums, rules, passed=verdict is Verdict.PASS),
        demand=None if governing is None else Amount(governing.required, MOMENT),
        capacity=None if governing is None else Amount(governing.resisting, MOMENT),
        utilisation=None if ratio is None else ratio.value,
        governing=None if governing is None else governing.value.key,
        rules=_rules(governing, values),
        inputs=tuple(inputs.used),
        steps=_steps(sums, ratio),
        margins=()
        if case.searching
        else tipping_margins(case, sums, values, cap_factor=_cap_factor(rules)),
        notes=tuple(_notes(inputs, subject, sums, rules=rules, values=values)),
        needs=needs,
    )


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
    )


def _share(branch: Branch) -> Step | None:
    if branch.resisting <= 0.0:
        return None
    return utilisation(demand=branch.required, capacity=branch.resisting)


def _rules(governing: Branch | None, values: FactorValues) -> tuple[SelectedValue, ...]:
    rest = [value for value, _ in values if governing is None or value != governing.value]
    return tuple(rest) if governing is None else (governing.value, *rest)


def _steps(sums: TippingSums, ratio: Step | None) -> tuple[Step, ...]:
    """The steps of every branch, the governing one first, each distinct step once."""
    governing = sums.governing
    if governing is None or sums.built.reach is None:
        return sums.built.steps
    turned = tipping_moment(load=governing.load, reach=sums.built.reach)
    steps = [*governing.steps, turned]
    if turned.value > 0.0:
        steps.append(factor_reached(resisting=governing.resisting, tipping=turned.value))
    if ratio is not None:
        steps.append(ratio)
    for branch in sums.branches:
        steps += branch.steps
    return tuple(dict.fromkeys(steps))


def _message(sums: TippingSums, rules: SelectedRules, *, passed: bool) -> Message:
    branch = sums.governing
    values: list[tuple[str, MessageValue]] = [("rule_set", rules.rule_set.id)]
    if branch is None:
        return Message("tipping.not-known", tuple(values))
    values += [
        ("required", Amount(branch.required, MOMENT)),
        ("resisting", Amount(max(0.0, branch.resisting), MOMENT)),
        ("factor", Amount(branch.rule.factor, RATIO)),
        ("load", str(branch.rule.load)),
        ("pieces", sums.built.pieces),
    ]
    if sums.built.counterweight == 0.0:
        return Message("tipping.no-pieces", tuple(values))
    if sums.met is None:
        return Message("tipping.branch-not-known", tuple(values))
    held = "tipping.holds" if passed else "tipping.would-hold"
    return Message(held if sums.met else "tipping.does-not-hold", tuple(values))


def _notes(
    inputs: Inputs,
    subject: BeamSubject,
    sums: TippingSums,
    *,
    rules: SelectedRules,
    values: FactorValues,
) -> Iterator[Message]:
    if any(one.name == "beam_mass" for one in inputs.used) and _harmful(sums):
        yield Message("note.beam-weight-harms")
    elif any(one.name == "credited_beam_mass" for one in inputs.used):
        yield Message("note.beam-weight-credited", (("rule_set", rules.rule_set.id),))
    elif sums.branches and not _beam_weight_wanted(inputs):
        yield Message("note.beam-weight-left-out")
    if subject.point.tiebacks:
        yield Message("note.tieback-no-credit")
    if any(("input", "stall_load") in need.what.values for need in inputs.not_stated):
        yield Message("note.stall-not-known")
        yield from _at_most_stall(rules, values, sums, inputs)


def _beam_weight_wanted(inputs: Inputs) -> bool:
    """Whether the beam's own weight may pull outboard and is not known: then nothing is said."""
    wanted = {value for need in inputs.not_stated for _, value in need.what.values}
    return not wanted.isdisjoint({"beam_mass", "beam_length", "tip_beyond_line"})


def _at_most_stall(
    rules: SelectedRules, values: FactorValues, sums: TippingSums, inputs: Inputs
) -> Iterator[Message]:
    """What the stall branch would ask of a hoist that stalls at the most the rule allows."""
    cap, governing, reach = rules.find("hoist.stall-cap"), sums.governing, sums.built.reach
    rated = next((one.used for one in inputs.used if one.name == "rated_load"), None)
    if cap is None or governing is None or reach is None or not isinstance(rated, Amount):
        return
    most = stall_cap(cap_factor=limit_of(cap, RATIO), rated_load=rated.value).value
    for _, rule in values:
        if rule.load is LoadBasis.HOIST_STALL:
            required = required_moment(factor=rule.factor, load=most, reach=reach).value
            yield Message(
                "note.stall-at-most",
                (
                    ("cap", Amount(most, FORCE)),
                    ("required", Amount(required, MOMENT)),
                    ("resisting", Amount(governing.resisting, MOMENT)),
                ),
            )


def _cap_factor(rules: SelectedRules) -> float | None:
    cap = rules.find("hoist.stall-cap")
    return None if cap is None else limit_of(cap, RATIO)


def _harmful(sums: TippingSums) -> bool:
    return any(branch.held_by_beam < 0.0 for branch in sums.branches)


CHECK = Check(ID, judge)
