"""What an outrigger beam of aluminium takes over its fulcrum, so far as its alloy refuses it.

How one turns over sideways and when its thin plates buckle no equation here says, so that nothing
passes: what would hold is for an engineer.
"""

from __future__ import annotations

from backspan.core.ask.answering import posed
from backspan.core.ask.beam import (
    OWN,
    Noted,
    answer_beam,
    factor_of,
    four_times,
    need_of,
    own_outboard,
    section_of,
)
from backspan.core.ask.shape import Answer, Asked, Line, QuestionError
from backspan.core.checks.beam_aluminium import ALLOYS, SAFETY, YIELDS
from backspan.core.errors import quoted
from backspan.core.findings import Decider, Message, Need, Verdict
from backspan.core.mechanics.beam_bending import moment_at_the_edge
from backspan.core.mechanics.beam_loading import allowed_moment, hogging_moment
from backspan.core.numbers import at_most, meets
from backspan.core.quantities import MOMENT, PRESSURE, RATIO, Amount
from backspan.core.review.basis import OF_ALUMINIUM, OF_SHAPES, selected_rules
from backspan.core.rules.selected import SelectedRules
from backspan.core.sheet.beam_section import section_numbers
from backspan.core.sheet.decide import to_confirm
from backspan.core.sheet.limits import limit_of, needed_value

STEEL = "steel"


def answer_beam_of(asked: Asked) -> Answer:
    """Whether a beam of steel or of aluminium takes the load of its line at this reach."""
    material = asked.word("material")
    if material is None or material.casefold() == STEEL:
        if asked.word("weld") is not None:
            raise QuestionError("weld: it is asked of aluminium alone; give material=6061-T6 too")
        return answer_beam(asked)
    alloy = next((one for one in ALLOYS.values() if one == material.casefold()), None)
    if alloy is None:
        raise QuestionError(
            f"material: found {quoted(material)}, expected steel, 6061-T6 or 6063-T6"
        )
    if asked.word("shape") is not None:
        raise QuestionError("material: the shapes of the table are of steel; give the sizes")
    weld = asked.word("weld")
    if weld not in {None, "no", "yes"}:
        raise QuestionError(f"weld: found {quoted(weld or '')}, expected yes or no")
    return _of_alloy(asked, alloy if weld == "no" else f"{alloy}-weld", said=weld is not None)


def _of_alloy(asked: Asked, strength: str, *, said: bool) -> Answer:
    case, do = posed(asked).case, Noted()
    manual = selected_rules(case.project, OF_ALUMINIUM, asked.library)
    one = section_of(asked, selected_rules(case.project, OF_SHAPES, asked.library))
    four = four_times(case.topics["tipping"])
    rules = (
        four,
        *(needed_value(manual, key) for key in SAFETY.values()),
        *(needed_value(manual, f"beam.{way}-{strength}") for way in SAFETY),
    )
    modulus = section_numbers(do, one.form, one.given)["elastic_modulus_x"]
    nominal, allowed = _takes(asked, do, manual, strength, modulus)
    load, reach = asked.number("rated") or 0.0, asked.number("reach") or 0.0
    over = {"load": load, "reach": reach, "own_outboard": own_outboard(asked, do, reach)}
    service = do(hogging_moment, factor=1.0, **over)
    factored = do(hogging_moment, factor=factor_of(four), **over)
    needs: tuple[Need, ...] = (
        *(need_of(name) for name in OWN if name not in asked.values),
        Need(Decider.LICENSED_ENGINEER, Message("ask.need-of-aluminium")),
        *(to_confirm(rule) for rule in rules if rule.only_remembered),
    )
    told = all(name in asked.values for name in OWN)
    ending, verdict = "aluminium", Verdict.REFER if told else Verdict.MISSING
    holds = meets(demand=factored, capacity=nominal) and meets(demand=service, capacity=allowed)
    if not holds:
        ending, verdict, needs = "over", Verdict.FAIL, ()
    numbers = {"moment": service, "factored": factored, "nominal": nominal, "allowed": allowed}
    lines = {"beam-moment": service, "beam-takes": nominal, "beam-allowed": allowed}
    notes = ["aluminium-alone"] + ([] if told else ["own-weight-left-out"])
    notes += [] if said else ["maybe-welded"]
    return Answer(
        Message(f"ask.beam-{ending}", tuple((n, Amount(x, MOMENT)) for n, x in numbers.items())),
        verdict=verdict,
        lines=tuple(Line(name, Amount(number, MOMENT)) for name, number in lines.items()),
        steps=tuple(dict.fromkeys(do.steps)),
        rules=rules,
        notes=tuple(Message(f"note.{name}") for name in (*notes, "asker-vouches")),
        needs=needs,
    )


def _takes(
    asked: Asked, do: Noted, manual: SelectedRules, strength: str, modulus: float
) -> tuple[float, float]:
    """The least moments at which it yields or breaks: nominal, and allowed in service."""
    most = asked.number("yield") or 0.0
    nominal, allowed = [], []
    for way, key in SAFETY.items():
        stress = limit_of(needed_value(manual, f"beam.{way}-{strength}"), PRESSURE)
        stress = at_most(stress, most=most) if way == YIELDS else stress
        moment = do(moment_at_the_edge, edge_strength=stress, elastic_modulus_x=modulus)
        safety = limit_of(needed_value(manual, key), RATIO)
        nominal.append(moment)
        allowed.append(do(allowed_moment, nominal_moment=moment, safety_factor=safety))
    return min(nominal), min(allowed)
