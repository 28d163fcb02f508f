"""What people and things bring on each hoist, and whether a fall ends above what is below."""

from __future__ import annotations

from collections.abc import Iterator

from backspan.core.ask.answering import posed
from backspan.core.ask.shape import Answer, Asked, Line, QuestionError
from backspan.core.findings import Message, MessageValue, Verdict
from backspan.core.mechanics.fall import (
    fall_distance,
    free_fall,
    lifeline_length,
    lifeline_stretch,
    lowest_in_time,
)
from backspan.core.mechanics.hoist_share import hoist_share, share_of_load
from backspan.core.mechanics.tipping import weight
from backspan.core.numbers import meets, surely_above, surely_below, total
from backspan.core.quantities import FORCE, LENGTH, Amount, Style, display_round, parse
from backspan.core.rules.selected import SelectedValue
from backspan.core.sheet.limits import limit_of, needed_value
from backspan.core.worked.formula import Step

#: So many loads may be asked about at once: `load` at `at`, `load-2` at `at-2`...
LOADS = ("", "-2", "-3", "-4")
_VOUCHED = Message("note.asker-vouches")


def answer_share(asked: Asked) -> Answer:
    """What each of two hoists carries; against its rating, and what has to come off, if told."""
    apart = asked.number("apart") or 0.0
    loads = list(_loads(asked))
    dead = weight(mass=asked.number("dead") or 0.0)
    steps: list[Step] = [dead]
    found: list[float] = []
    for arms in ([apart - at for _, at in loads], [at for _, at in loads]):
        each = [
            share_of_load(placed_load=load, arm=arm, stirrup_spacing=apart)
            for (load, _), arm in zip(loads, arms, strict=True)
        ]
        share = hoist_share(dead_load=dead.value, shares=total([one.value for one in each]))
        steps += [*each, share]
        found.append(share.value)
    left, right = found
    words: list[tuple[str, MessageValue]] = [
        ("left", Amount(left, FORCE)),
        ("right", Amount(right, FORCE)),
    ]
    lines = [Line("share-left", Amount(left, FORCE)), Line("share-right", Amount(right, FORCE))]
    rated, ending, verdict = asked.number("rated"), "only", None
    if rated is not None:
        words.append(("rated", Amount(rated, FORCE)))
        over = {
            side: carries - rated
            for side, carries in (("left", left), ("right", right))
            if not meets(demand=carries, capacity=rated)
        }
        ending, verdict = ("over", Verdict.FAIL) if over else ("holds", Verdict.PASS)
        lines += [Line(f"take-off-{side}", Amount(more, FORCE)) for side, more in over.items()]
    for side, carries in (("left", left), ("right", right)):
        if surely_below(carries, limit=0.0):
            # What lies beyond the other line lifts the stage off this one.
            ending, verdict = "slack", Verdict.FAIL
            words.append(("side", side))
    rule = needed_value(posed(asked).case.practice, "load.each-hoist")
    return Answer(
        Message(f"ask.share-{ending}", tuple(words)),
        verdict=verdict,
        lines=tuple(lines),
        steps=tuple(dict.fromkeys(steps)),
        rules=(rule,),
        notes=(Message("note.two-lines"), _VOUCHED),
    )


def _loads(asked: Asked) -> Iterator[tuple[float, float]]:
    """Each load's weight and where it is; QuestionError where one of the two is not told."""
    for number in LOADS:
        load, at = asked.number(f"load{number}"), asked.number(f"at{number}")
        if (load is None) != (at is None):
            missing = f"at{number}" if at is None else f"load{number}"
            raise QuestionError(f"{missing}: a load and where it is go together; give both")
        if load is not None and at is not None:
            yield load, at


def _limit(value: SelectedValue) -> Amount:
    return Amount(limit_of(value, LENGTH), LENGTH)


def _up(length: float, style: Style) -> Amount:
    """A length in the steps of a tape, no shorter than it is."""
    told = display_round(Amount(length, LENGTH), style, direction="up")
    return Amount(parse(told, LENGTH), LENGTH)


def answer_clearance(asked: Asked) -> Answer:
    """How far down the feet go in a fall; with the deck's height, whether that is in time."""
    practice = posed(asked).case.practice
    margin, shift = (needed_value(practice, f"fall.{one}") for one in ("margin", "harness-shift"))
    elongation = asked.number("elongation") or 0.0
    lanyard, above = asked.number("lanyard") or 0.0, asked.number("above") or 0.0
    if surely_above(above, limit=lanyard):
        raise QuestionError("above: the lanyard does not reach so far above the D-ring")
    free = free_fall(lanyard_length=lanyard, above_ring=above)
    slowed = asked.number("deceleration") or 0.0
    stretch = lifeline_stretch(elongation=elongation, lifeline=asked.number("line") or 0.0)
    given = asked.number("shift")
    needed = fall_distance(
        falls_free=free.value,
        deceleration=slowed,
        grab_slide=asked.number("slide") or 0.0,
        harness_shift=limit_of(shift, LENGTH) if given is None else given,
        line_stretch=stretch.value,
        line_slack=asked.number("slack") or 0.0,
        fall_margin=limit_of(margin, LENGTH),
    )
    steps = [free, stretch, needed]
    words = [("needed", Amount(needed.value, LENGTH))]
    lines = [Line("fall-takes", _up(needed.value, asked.style))]
    height, ending, verdict = asked.number("height"), "only", None
    most = needed_value(practice, "fall.most-free-fall")
    slowest = needed_value(practice, "fall.most-deceleration")
    if not meets(demand=free.value, capacity=limit_of(most, LENGTH)):
        words += [("free", Amount(free.value, LENGTH)), ("most", _limit(most))]
        ending, verdict = "too-far", Verdict.FAIL
    elif not meets(demand=slowed, capacity=limit_of(slowest, LENGTH)):
        words += [("slowed", Amount(slowed, LENGTH)), ("most", _limit(slowest))]
        ending, verdict = "too-slow", Verdict.FAIL
    elif height is not None:
        lowest = lowest_in_time(distance=needed.value, elongation=elongation, above_level=height)
        steps.append(lowest)
        words.append(("there", Amount(height, LENGTH)))
        lines.append(Line("in-time-from", _up(lowest.value, asked.style)))
        holds = meets(demand=needed.value, capacity=height)
        ending, verdict = ("in-time", Verdict.PASS) if holds else ("too-late", Verdict.FAIL)
    return Answer(
        Message(f"ask.clearance-{ending}", tuple(words)),
        verdict=verdict,
        lines=tuple(lines),
        steps=tuple(steps),
        rules=(most, slowest, margin, *((shift,) if given is None else ())),
        notes=(Message("note.from-the-feet"), _VOUCHED),
    )


def answer_lifeline(asked: Asked) -> Answer:
    """Lifeline from its anchor over the parapet down to the lowest place."""
    step = lifeline_length(
        line_run=asked.number("run") or 0.0,
        wall_height=asked.number("wall") or 0.0,
        drop_height=asked.number("drop") or 0.0,
    )
    value = _up(step.value, asked.style)
    return Answer(
        Message("ask.lifeline", (("value", value),)),
        lines=(Line("lifeline-length", value),),
        steps=(step,),
        notes=(Message("note.line-and-end"), _VOUCHED),
    )
