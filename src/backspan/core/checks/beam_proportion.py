"""Is the inboard arm long enough for the outboard arm, where a rule set asks for a ratio."""

from __future__ import annotations

from collections.abc import Iterator

from backspan.core.findings import DoesNotApply, Finding, Message, MessageValue
from backspan.core.judgement import beam_as_built
from backspan.core.judgement.case import Case
from backspan.core.judgement.check import Answer, Check
from backspan.core.judgement.decide import decide
from backspan.core.judgement.inputs import EvidenceClass, Inputs
from backspan.core.judgement.limits import limit_of
from backspan.core.judgement.subjects import RuledSubject, under_value
from backspan.core.mechanics.beam_geometry import inboard_to_outboard
from backspan.core.numbers import meets
from backspan.core.quantities import RATIO, Amount

ID = "beam-proportion"
KEY = "geometry.inboard-to-outboard"


def judge(case: Case) -> Iterator[Answer]:
    """One finding a beam and rule set with such a ratio; the inboard arm is the backspan."""
    for one in under_value(case, ID, KEY):
        yield one if isinstance(one, DoesNotApply) else _judge_beam(case, one)


def _judge_beam(case: Case, one: RuledSubject) -> Finding:
    inputs = Inputs(case)
    built = beam_as_built.read(inputs, one.beam)
    least = limit_of(one.value, RATIO)
    ratio = None
    if built.reach is not None and built.reach <= 0.0:
        inputs.want("reach", EvidenceClass.GEOMETRY, (*one.beam.place, "reach"))
    elif built.reach is not None and built.backspan is not None:
        ratio = inboard_to_outboard(inboard=built.backspan, reach=built.reach)
    met = None if ratio is None else meets(demand=least, capacity=ratio.value)
    verdict, needs = decide(met=met, inputs=inputs, rules=(one.value,))
    values: list[tuple[str, MessageValue]] = [("least", Amount(least, RATIO))]
    if ratio is not None:
        values.append(("ratio", Amount(ratio.value, RATIO)))
    ending = "missing" if met is None else "pass" if met else "fail"
    return Finding(
        check=ID,
        subject=one.beam.name,
        place=one.beam.place,
        verdict=verdict,
        message=Message(f"proportion.{ending}", tuple(values)),
        demand=Amount(least, RATIO),
        capacity=None if ratio is None else Amount(ratio.value, RATIO),
        utilisation=None if ratio is None or ratio.value <= 0.0 else least / ratio.value,
        governing=one.value.key,
        rules=(one.value,),
        inputs=tuple(inputs.used),
        steps=built.steps if ratio is None else (*built.steps, ratio),
        needs=needs,
    )


CHECK = Check(ID, judge)
