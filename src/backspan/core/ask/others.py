"""Topics that are not one number sought: each a few lines over the same checks and formulas."""

from __future__ import annotations

import math
from dataclasses import replace

from backspan.core.ask.answering import (
    answer_of,
    boundary,
    factor_line,
    findings_of,
    governing_line,
    posed,
    questioned,
)
from backspan.core.ask.shape import (
    Answer,
    Asked,
    Line,
    QuestionError,
)
from backspan.core.ask.sought import (
    HOIST,
    JUDGES,
    PIECES,
    STACK,
    answer_sought,
    found_line,
    none_holds,
    required_line,
    stack_lines,
)
from backspan.core.checks import beam_length, bearing, stall_cap, tipping
from backspan.core.findings import DoesNotApply, Message, Verdict
from backspan.core.mechanics import FORMULAS
from backspan.core.mechanics.formula_table import FORMULA_TABLE
from backspan.core.quantities import FORCE, LENGTH, PRESSURE, RATIO, Amount
from backspan.core.review.comparison import compare
from backspan.core.rules.shape import FactorOnLoad, LoadBasis
from backspan.core.worked.formula import Step
from backspan.core.worked.table import describe

#: Notes of an answer about one beam, and of one that counts pieces.
ONE_BEAM = ("note.one-beam",)
LABEL = ("note.one-beam", "note.label")


def answer_shift(asked: Asked) -> Answer:
    """The fulcrum moves inboard: the reach grows and the backspan shrinks by as much."""
    by, before = asked.number("shift") or 0.0, posed(asked)
    reach, backspan = before.built.reach + by, before.built.backspan - by
    if reach <= 0.0 or backspan <= 0.0:
        passed = "suspension line" if reach <= 0.0 else "middle of the counterweight"
        raise QuestionError(f"shift: the fulcrum would pass the {passed}; give a smaller one")
    arms = {"reach": Amount(reach, LENGTH), "backspan": Amount(backspan, LENGTH)}
    after = replace(asked, values={**asked.values, **arms})
    at = posed(after)
    if at.weighed.governing is None:
        return none_holds(after, PIECES, None, ())
    findings = findings_of(at.case, JUDGES)
    lines = [Line(f"{name}-after", value) for name, value in arms.items()]
    lines += [*required_line(at), *found_line(PIECES, boundary(after, PIECES))]
    lines.append(Line("pieces", asked.values["pieces"]))
    lines += factor_line(findings_of(before.case, JUDGES), "factor-before")
    lines += [*factor_line(findings, "factor-after"), *governing_line(at)]
    return answer_of(at, findings, None, lines, notes=("note.shift", "note.one-beam"))


def answer_hoist(asked: Asked) -> Answer:
    """A rule that multiplies another load than the hoist's sets no hoist."""
    at = posed(asked)
    loads = [one.content.load for one in at.one.values if isinstance(one.content, FactorOnLoad)]
    others = [one for one in loads if one not in {LoadBasis.HOIST_RATED, LoadBasis.HOIST_STALL}]
    if others:
        raise QuestionError(
            f"{at.one.values[0].rule_set} multiplies {others[0]}, not the hoist's load, so it sets"
            " no hoist; ask counterweight instead"
        )
    answer = answer_sought(asked, HOIST, ONE_BEAM)
    ratio = asked.values.get("stall-ratio")
    noted = () if ratio is None else (Message("note.stall-ratio", (("stall_ratio", ratio),)),)
    return replace(answer, notes=(*noted, *answer.notes))


def answer_stack(asked: Asked) -> Answer:
    """Without a hoist only geometry is asked, and nothing is said of tipping."""
    if "rated" in asked.values:
        return answer_sought(asked, STACK, LABEL)
    if "pieces" not in asked.values:
        raise QuestionError("give pieces=... for where they stand, or rated=... for how many")
    at = posed(asked, from_stack=True)
    findings = findings_of(at.case, (beam_length.CHECK,))
    return answer_of(at, findings, None, stack_lines(at), notes=LABEL)


def answer_stall(asked: Asked) -> Answer:
    """The cap on the stall load; with the stall load given: is it within."""
    at = posed(asked)
    rated, stall, value = asked.number("rated") or 0.0, asked.number("stall"), at.one.subject.cap
    notes = (*questioned(asked, at.case), Message("note.asker-vouches"))
    if at.cap is None or value is None:
        words = (("rule_set", at.case.under(tipping.TOPIC)[0].rule_set.id),)
        return Answer(Message("stall.no-cap", words), notes=notes)
    cap = FORMULAS["stall_cap"](cap_factor=at.cap, rated_load=rated)
    lines = [Line("most-stall", Amount(cap.value, FORCE))]
    factors = {
        one.content.load: one.content.factor
        for one in at.one.values
        if isinstance(one.content, FactorOnLoad)
    }
    if {LoadBasis.HOIST_RATED, LoadBasis.HOIST_STALL} <= factors.keys():
        above = factors[LoadBasis.HOIST_RATED] * rated / factors[LoadBasis.HOIST_STALL]
        lines.append(Line("stall-governs-above", Amount(above, FORCE)))
    if stall is None:
        capped = (("rated", Amount(rated, FORCE)), ("cap", Amount(cap.value, FORCE)))
        message = Message("stall.cap", capped)
        return Answer(message, lines=tuple(lines), steps=(cap,), rules=(value,), notes=notes)
    lines.append(Line("stall-ratio", Amount(stall / rated, RATIO)))
    return answer_of(at, findings_of(at.case, (stall_cap.CHECK,)), None, lines)


def answer_bearing(asked: Asked) -> Answer:
    """What the fulcrum asks of its surface; with the surface given: does it carry that."""
    at = posed(asked)
    findings = findings_of(at.case, (bearing.CHECK,))
    (one,) = bearing.asked(at.case)
    if isinstance(one, DoesNotApply):
        rules = at.case.under(bearing.TOPIC)[0].rule_set.id
        return Answer(Message("ask.no-number", (("rule_set", rules),)), verdict=Verdict.REFER)
    if "surface" in asked.values:
        return answer_of(at, findings, None, (), notes=ONE_BEAM)
    known = [
        branch
        for branch in bearing.QUESTION.bare({}, one, {}).branches
        if not math.isnan(branch.demand)
    ]
    most = max(known, key=lambda branch: branch.demand, default=None)
    if most is None or most.value is None or not isinstance(most.value.content, FactorOnLoad):
        return answer_of(at, findings, None, (), notes=ONE_BEAM)
    rule, pressure = most.value.content, Amount(most.demand, PRESSURE)
    words = (("input", "surface_strength"), ("value", pressure))
    by = (("factor", Amount(rule.factor, RATIO)), ("load", str(rule.load)))
    answer = answer_of(at, findings, Message("ask.least", (*words, *by)), (), notes=ONE_BEAM)
    own = ("input", "surface_strength")
    needs = tuple(one for one in answer.needs if own not in one.what.values)
    return replace(answer, verdict=answer.verdict if needs else None, needs=needs)


def answer_compare(asked: Asked) -> Answer:
    """The same beam under every counterweight rule at hand, the largest counterweight first."""
    at = posed(asked)
    rows = compare(at.case, asked.library)
    if "pieces" not in asked.values:
        rows = tuple(replace(row, enough=None) for row in rows)
    counts = [row.pieces for row in rows if row.pieces is not None]
    message = Message("compare.none")
    if counts:
        message = Message("compare.range", (("least", min(counts)), ("most", max(counts))))
    said = (*questioned(asked, at.case), Message("note.asker-vouches"))
    return Answer(message, notes=(Message("note.one-beam"), *said), comparison=rows)


def answer_formula(name: str, line: str, note: str, asked: Asked) -> Answer:
    """One formula alone: its values are its parameters."""
    described = describe(FORMULAS[name], FORMULA_TABLE)
    values = {one: asked.number(one) or 0.0 for one, _ in described.parameters}
    step: Step = FORMULAS[name](**values)
    result = Amount(step.value, described.result)
    message = Message("ask.formula", (("title", described.title), ("value", result)))
    notes = (Message(note), Message("note.asker-vouches"))
    return Answer(message, lines=(Line(line, result),), steps=(step,), notes=notes)
