"""Ropes that pull at an angle, and how far one stretches: tieback, sling, stretch.

Each angle names where it is counted from: a tieback's from straight back, a sling's from the
horizontal or from the vertical. The same sling has two numbers, and they are easily mixed up.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from backspan.core.angles import RIGHT_ANGLE, cosine, sine
from backspan.core.ask.answering import answer_of, posed
from backspan.core.ask.shape import Answer, Asked, Line, QuestionError
from backspan.core.checks import tieback_angle
from backspan.core.findings import Finding, Message, Verdict
from backspan.core.mechanics.ropes import metal_area, rope_stretch
from backspan.core.mechanics.tiebacks import pair_tension, pull_aside, sling_leg, turned_pull
from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.model.rigs import Rig, Tieback
from backspan.core.model.site import Edge, Roof
from backspan.core.numbers import meets, root, surely_below
from backspan.core.quantities import ANGLE, FORCE, LENGTH, PRESSURE, RATIO, Amount
from backspan.core.sheet.case import Case
from backspan.core.sheet.limits import limit_of, needed_value
from backspan.core.sheet.tied import MOST_ANGLE, is_pair
from backspan.core.worked.formula import Step

_VOUCHED = Message("note.asker-vouches")


@dataclass(frozen=True, slots=True)
class Pulled:
    """What one tieback pulls: along itself, across the beam, and down where it falls."""

    lines: tuple[Line, ...]
    steps: tuple[Step, ...]


def answer_tieback(asked: Asked) -> Answer:
    """Does a tieback at this angle hold alone, or do two as a pair; what each of them pulls."""
    at = posed(asked)
    names = [name for name in ("angle", "other-angle") if name in asked.values]
    angles = [asked.number(name) or 0.0 for name in names]
    slopes = [_slope(name, angle) for name, angle in zip(names, angles, strict=True)]
    found = tieback_angle.CHECK.judge(_tied(at.case, angles))
    findings = [one for one in found if isinstance(one, Finding)]
    held, down = asked.number("held"), asked.number("down")
    fall = None if down is None else _slope("down", down)
    if held is None and fall is not None:
        raise QuestionError("down: nothing follows from it without held=..., what is held")
    pulled = () if held is None else tuple(_pulls(held, angles, slopes, fall, _most(at.case)))
    notes = ("note.taut", *(("note.pair-opposite",) if slopes[1:] else ()))
    lines = [line for one in pulled for line in one.lines]
    answer = answer_of(at, findings, None, lines, notes=notes)
    steps = (step for one in pulled for step in one.steps)
    return replace(answer, steps=tuple(dict.fromkeys((*answer.steps, *steps))))


def answer_sling(asked: Asked) -> Answer:
    """What each of two equal legs pulls, and whether they lie flatter than slings are used."""
    given = [name for name in ("from-horizontal", "from-vertical") if name in asked.values]
    if len(given) != 1:
        found = "both" if given else "neither"
        raise QuestionError(
            f"{found} of from-horizontal and from-vertical is given; give the one that was measured"
        )
    turn = asked.number(given[0]) or 0.0
    flat = turn if given[0] == "from-horizontal" else RIGHT_ANGLE - turn
    slope = _slope(given[0], RIGHT_ANGLE - flat)
    leg = sling_leg(hung=asked.number("load") or 0.0, own_slope=slope)
    least = needed_value(posed(asked).case.practice, "line.least-sling-angle")
    too_flat = not meets(demand=limit_of(least, ANGLE), capacity=flat)
    lines = [
        Line("leg-pull", Amount(leg.value, FORCE)),
        Line("leg-from-horizontal", Amount(flat, ANGLE)),
        Line("leg-from-vertical", Amount(RIGHT_ANGLE - flat, ANGLE)),
    ]
    words = (("value", Amount(leg.value, FORCE)), ("angle", Amount(flat, ANGLE)))
    return Answer(
        Message(f"ask.sling-{'flat' if too_flat else 'leg'}", words),
        verdict=Verdict.REFER if too_flat else None,
        lines=tuple(lines),
        steps=(leg,),
        rules=(least,),
        notes=(Message("note.two-legs"), _VOUCHED),
    )


def answer_stretch(asked: Asked) -> Answer:
    """How far a rope stretches under a load; with another load, how far a stage goes out of level.

    The rope is taken as soft as its makers' tables allow: a stage tilts more, never less.
    """
    practice = posed(asked).case.practice
    share, modulus = (needed_value(practice, f"line.{key}") for key in ("metal-share", "modulus"))
    metal = metal_area(
        metal_share=asked.number("metal") or limit_of(share, RATIO),
        rope_diameter=asked.number("diameter") or 0.0,
    )
    stiff = asked.number("modulus") or limit_of(modulus, PRESSURE)
    loads = [asked.number(name) for name in ("load", "other-load")]
    steps = [
        rope_stretch(
            hung=load,
            hanging_length=asked.number("length") or 0.0,
            rope_modulus=stiff,
            metal=metal.value,
        )
        for load in loads
        if load is not None
    ]
    lines = [
        Line(name, Amount(step.value, LENGTH))
        for name, step in zip(("stretch", "stretch-of-other"), steps, strict=False)
    ]
    told = (("value", lines[0].value),)
    message = Message("ask.stretch", told)
    if steps[1:]:
        apart = Amount(abs(steps[0].value - steps[1].value), LENGTH)
        lines.append(Line("out-of-level", apart))
        message = Message("ask.out-of-level", (("value", apart),))
    taken = tuple(
        rule for rule, name in ((share, "metal"), (modulus, "modulus")) if name not in asked.values
    )
    return Answer(
        message,
        lines=tuple(lines),
        steps=(metal, *steps),
        rules=taken,
        notes=(Message("note.new-rope"), Message("note.as-stretched"), _VOUCHED),
    )


def _tied(case: Case, angles: Sequence[float]) -> Case:
    """The case with its point held by tiebacks at these angles, the second on the other side."""
    (point,), (drop,) = case.points, case.project.drops
    asker, day = case.project.people[0].id, case.on.isoformat()
    ties = tuple(
        Tieback(name, angle=StatedValue(side * angle, 0.0, Evidence.MEASURED, asker, day))
        for name, side, angle in zip(("1", "2"), (1.0, -1.0), angles, strict=False)
    )
    rig = replace(drop.rig or Rig(()), suspension_points=(replace(point, tiebacks=ties),))
    drop = replace(drop, rig=rig)
    edge = Edge(drop.edge, (0.0, 0.0), (1.0, 0.0))
    roof = Roof(drop.roof, drop.roof, StatedValue(0.0, 0.0, Evidence.DRAWING), (), (edge,))
    site = replace(case.project.site, roofs=(roof,))
    return replace(case, project=replace(case.project, site=site, drops=(drop,)), drop=drop)


def _most(case: Case) -> float:
    return limit_of(needed_value(case.practice, MOST_ANGLE), ANGLE)


def _pulls(
    held: float, angles: Sequence[float], slopes: Sequence[float], fall: float | None, most: float
) -> Iterator[Pulled]:
    """What each pulls: a pair shares what is held, of others each holds all of it.

    `fall` is how far they run down for their length on the level.
    """
    pair = is_pair(angles, most)
    for name, slope, other in zip(("", "-other"), slopes, reversed(slopes), strict=False):
        if pair:
            pull = pair_tension(held=held, own_slope=slope, other_slope=other)
        else:
            pull = turned_pull(held=held, own_slope=slope)
        # Across the beam a rope pulls its slope times what it pulls along it.
        along = pull.value / root(1.0 + slope * slope)
        aside = pull_aside(held=along, own_slope=slope)
        steps, lines = [pull, aside], [Line(f"pull-aside{name}", Amount(aside.value, FORCE))]
        if fall is not None:
            down = pull_aside(held=pull.value, own_slope=fall)
            pull = turned_pull(held=pull.value, own_slope=fall)
            steps += [pull, down]
            lines.append(Line(f"pull-down{name}", Amount(down.value, FORCE)))
        yield Pulled((Line(f"pull{name}", Amount(pull.value, FORCE)), *lines), tuple(steps))


def _slope(name: str, angle: float) -> float:
    """How far a line runs across for its length along, at an angle off it."""
    if not surely_below(angle, limit=RIGHT_ANGLE):
        raise QuestionError(f"{name}: such a rope holds nothing; expected an angle below 90 deg")
    return sine(angle) / cosine(angle)
