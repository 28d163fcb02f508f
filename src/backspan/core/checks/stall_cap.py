"""Is the hoist's stall load within what the rule allows for its rated load."""

from __future__ import annotations

from collections.abc import Iterator

from backspan.core.findings import DoesNotApply, Finding, Message, MessageValue
from backspan.core.judgement.case import Case
from backspan.core.judgement.check import Answer, Check
from backspan.core.judgement.decide import decide
from backspan.core.judgement.inputs import EvidenceClass, Inputs
from backspan.core.judgement.limits import limit_of
from backspan.core.mechanics.loads import stall_cap
from backspan.core.model.rigs import SuspensionPoint
from backspan.core.numbers import meets
from backspan.core.quantities import FORCE, RATIO, Amount
from backspan.core.rules.selected import SelectedValue

ID = "stall-cap"
KEY = "hoist.stall-cap"


def judge(case: Case) -> Iterator[Answer]:
    """One finding for each suspension point under each rule set that caps the stall load."""
    having = [value for rules in case.rules if (value := rules.find(KEY)) is not None]
    if not case.points:
        yield DoesNotApply(ID, case.subject, case.place, Message("na.no-suspension-point"))
    for point in case.points:
        if not having:
            names = tuple(rules.rule_set.id for rules in case.rules)
            reason = Message("na.no-rule", (("value", KEY), ("rule_sets", names)))
            yield DoesNotApply(ID, case.name_of(point), case.place_of(point), reason)
        for value in having:
            yield _judge_hoist(case, point, value)


def _judge_hoist(case: Case, point: SuspensionPoint, value: SelectedValue) -> Finding:
    inputs = Inputs(case)
    hoist = case.hoist(point.hoist)
    place = ("kit", "hoists", hoist.id)
    rated = inputs.measure(
        "rated_load", hoist.rated_load, FORCE, EvidenceClass.RATING, (*place, "rated_load")
    )
    stall = inputs.measure(
        "stall_load", hoist.stall_load, FORCE, EvidenceClass.RATING, (*place, "stall_load")
    )
    cap_factor = limit_of(value, RATIO)
    cap = None if rated is None else stall_cap(cap_factor=cap_factor, rated_load=rated)
    met = None if cap is None or stall is None else meets(demand=stall, capacity=cap.value)
    verdict, needs = decide(met=met, inputs=inputs, rules=(value,))
    values: list[tuple[str, MessageValue]] = [
        ("hoist", hoist.id),
        ("factor", Amount(cap_factor, RATIO)),
    ]
    if cap is not None:
        values.append(("cap", Amount(cap.value, FORCE)))
    if stall is not None:
        values.append(("stall", Amount(stall, FORCE)))
    ending = "missing" if met is None else "pass" if met else "fail"
    return Finding(
        check=ID,
        subject=case.name_of(point),
        place=case.place_of(point),
        verdict=verdict,
        message=Message(f"stall-cap.{ending}", tuple(values)),
        demand=None if stall is None else Amount(stall, FORCE),
        capacity=None if cap is None else Amount(cap.value, FORCE),
        utilisation=_share(stall, None if cap is None else cap.value),
        governing=value.key,
        rules=(value,),
        inputs=tuple(inputs.used),
        steps=() if cap is None else (cap,),
        needs=needs,
    )


def _share(stall: float | None, cap: float | None) -> float | None:
    return stall / cap if stall is not None and cap is not None and cap > 0.0 else None


CHECK = Check(ID, judge)
