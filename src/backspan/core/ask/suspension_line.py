"""What a rope's end carries, and how clips are set: topics of the suspension line."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace

from backspan.core.ask.answering import answer_of, findings_of, posed, questioned
from backspan.core.ask.shape import Answer, Asked, Line
from backspan.core.checks import clips, rope_strength
from backspan.core.findings import DoesNotApply, Finding, Message, Verdict
from backspan.core.mechanics.ropes import (
    least_clip_spacing,
    most_clip_torque,
    strength_at_end,
    turnback_for_clips,
)
from backspan.core.numbers import at_least, step_down
from backspan.core.quantities import FORCE, LENGTH, MOMENT, RATIO, Amount, roof_step
from backspan.core.rules.shape import FactorOnLoad, LoadBasis
from backspan.core.sheet.case import Case
from backspan.core.sheet.limits import limit_of
from backspan.core.sheet.subjects import in_force_or_practice
from backspan.core.worked.formula import Step

ONE_LINE = "note.one-line"

#: What is asked for by which load of the hoist, as a line of the answer.
_MOST = {LoadBasis.HOIST_RATED: "most-rated", LoadBasis.HOIST_STALL: "most-stall-held"}


def answer_rope(asked: Asked) -> Answer:
    """The largest hoist that a rope's end carries; with the hoist given: does it hold."""
    at = posed(asked)
    (one,) = rope_strength.asked(at.case)
    if isinstance(one, DoesNotApply):
        rules = at.case.under("line")[0].rule_set.id
        return Answer(Message("ask.no-number", (("rule_set", rules),)), verdict=Verdict.REFER)
    breaking, keeps = asked.number("breaking") or 0.0, asked.number("keeps") or 0.0
    kept: Step = strength_at_end(breaking_force=breaking, efficiency=keeps)
    lines = [Line("strength-at-end", Amount(kept.value, FORCE))]
    message = None
    step = roof_step(FORCE, asked.style)
    for value in one.values:
        rule = value.content
        if not isinstance(rule, FactorOnLoad) or rule.load not in _MOST:
            continue
        most = Amount(step_down(kept.value / rule.factor, step=step), FORCE)
        lines.append(Line(_MOST[rule.load], most))
        if rule.load is LoadBasis.HOIST_RATED:
            by = (("factor", Amount(rule.factor, RATIO)), ("load", str(rule.load)))
            message = Message("ask.most", (("input", "rated_load"), ("value", most), *by))
    if "rated" in asked.values:
        findings = findings_of(at.case, (rope_strength.CHECK,))
        return answer_of(at, findings, None, lines, notes=(ONE_LINE,))
    own = (Message(ONE_LINE), Message("note.stall-besides"), Message("note.rounded-down"))
    said = (*own, *questioned(asked, at.case), Message("note.asker-vouches"))
    spoken = message or Message("ask.not-known", (("rule_set", one.values[0].rule_set),))
    return Answer(spoken, lines=tuple(lines), steps=(kept,), rules=one.values, notes=said)


def answer_clips(asked: Asked) -> Answer:
    """How the clips of a sheet are set on a rope; what is given of those in place is judged."""
    at = posed(asked)
    answer = _as_asked(asked, at.case)
    findings = tuple(_of_those_in_place(asked, at.case))
    if not findings:
        return answer
    judged = answer_of(at, findings, None, answer.lines, notes=(ONE_LINE,))
    return replace(judged, steps=tuple(dict.fromkeys((*judged.steps, *answer.steps))))


def _of_those_in_place(asked: Asked, case: Case) -> Iterator[Finding]:
    """The findings on the numbers that were given of clips in place."""
    given = ("clips", "spacing", "turnback", "torque")
    wanted = {
        question
        for name, question in zip(given, clips.NUMBERS, strict=True)
        if name in asked.values
    }
    for one in clips.CHECK.judge(case):
        if isinstance(one, Finding) and one.question in wanted:
            yield one


def _as_asked(asked: Asked, case: Case) -> Answer:
    makers = {
        name: asked.number(f"maker-{name}") or 0.0 for name in ("clips", "turnback", "torque")
    }
    (floor, *_), (apart, *_), (most, *_) = (
        in_force_or_practice(case, f"line.{key}")
        for key in ("least-clips", "clip-spacing", "most-clip-torque")
    )
    fewest = at_least(limit_of(floor, RATIO), least=makers["clips"])
    count = at_least(fewest, least=asked.number("clips") or 0.0)
    steps = (
        least_clip_spacing(
            factor=limit_of(apart, RATIO), rope_diameter=asked.number("diameter") or math.nan
        ),
        turnback_for_clips(
            sheet_turnback=makers["turnback"], clip_count=count, sheet_clip_count=makers["clips"]
        ),
        most_clip_torque(factor=limit_of(most, RATIO), sheet_torque=makers["torque"]),
    )
    spacing, turned, torque = (step.value for step in steps)
    told = (
        ("least-spacing", Amount(spacing, LENGTH)),
        ("least-turnback", Amount(turned, LENGTH)),
        ("least-torque", Amount(makers["torque"], MOMENT)),
        ("most-torque", Amount(torque, MOMENT)),
    )
    words = (
        ("least", int(count)),
        ("apart", Amount(spacing, LENGTH)),
        ("turned", Amount(turned, LENGTH)),
        ("makers", Amount(makers["torque"], MOMENT)),
    )
    return Answer(
        Message("ask.clips", words),
        lines=(Line("least-clips", int(fewest)), *(Line(name, value) for name, value in told)),
        steps=steps,
        rules=(floor, apart, most),
        notes=(Message(ONE_LINE), *questioned(asked, case), Message("note.asker-vouches")),
    )
