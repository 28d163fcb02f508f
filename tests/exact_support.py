"""Does one support hold, worked out a second time: in fractions, from the model alone.

A beam rests on its fulcrum. Outboard hangs the load P at the reach a; inboard lies the
counterweight. A rule asks that its moment about the fulcrum be at least k times P a. Rows of
pieces stand from the tail inwards, each with its weight at its middle, so that a row whose middle
lies c from the tail turns w (L_in - c), where L_in = length - tip - reach. Where the backspan b was
taped, the whole counterweight W turns W b. The beam's own weight is counted where it pulls
outboard; inboard it is left out, unless the rule credits it. A beam is no help to pieces whose
middle is not inboard of the fulcrum: they hold nothing down.

A doubtful value may be anything within its tolerance, each by itself: the support holds when it
holds at the worst of all. Nothing here rounds, so an answer is either yes or no, and how near.
"""

from __future__ import annotations

import operator
import random
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import product
from typing import NamedTuple

from backspan.core.model.evidence import StatedValue
from backspan.core.model.kit import Kit
from backspan.core.model.project import Project
from backspan.core.model.rigs import BackspanFrom, CounterweightedBeam, SuspensionPoint

GRAVITY = Fraction("9.80665")

Values = Mapping[str, Fraction]


class Rule(NamedTuple):
    """`factor` times the moment of `load` is to be held; whether the beam's weight may help."""

    factor: float
    load: str
    credits_beam: bool


class Moments(NamedTuple):
    """What a rule asks for and what there is, about the fulcrum."""

    required: Fraction
    resisting: Fraction

    @property
    def spare(self) -> Fraction:
        """What is left; negative where it does not hold."""
        return self.resisting - self.required

    @property
    def margin(self) -> Fraction:
        """What is left, as a share of the larger moment."""
        larger = max(abs(self.required), abs(self.resisting))
        return self.spare / larger if larger else Fraction(0)


@dataclass(frozen=True, slots=True)
class Answer:
    """The worst margin at the ends of all doubts, where that is, and what was met on the way.

    `inside` are values within the doubts at which less is left than at any of their ends.
    """

    margin: Fraction
    worst: Values
    ends: int
    beam_harms: bool
    inside: Values | None


@dataclass(frozen=True, slots=True)
class Support:
    """A suspension point whose line hangs from a counterweighted beam, and its stages."""

    point: SuspensionPoint
    beam: CounterweightedBeam
    from_stack: bool
    kit: Kit
    stages: tuple[str, ...]
    both: bool = False
    """Whether the backspan is known both ways: then the shorter counts."""

    def moments(self, values: Values, rule: Rule) -> Moments:
        """The two sides of a rule at these values."""
        own = self._beam_moment(values)
        counted = own if rule.credits_beam else min(Fraction(0), self._looked_at(values, own))
        required = Fraction(rule.factor) * self._load(rule.load, values) * values["reach"]
        stack = self._stack_moment(values)
        if stack <= 0 and self._weighs(values):
            counted = min(Fraction(0), counted)
        return Moments(required, stack + counted)

    def _weighs(self, values: Values) -> bool:
        groups = enumerate(self.beam.stack.groups)
        return any(values[f"count {n}"] * values[f"mass {group.piece}"] for n, group in groups)

    def harms(self, values: Values) -> bool:
        """Whether the beam's own weight is counted as pulling outboard."""
        return self._looked_at(values, self._beam_moment(values)) < 0

    def _stack_moment(self, values: Values) -> Fraction:
        if not (self.both or self.from_stack):
            return self._taped_moment(values)
        placed = self._placed_moment(values)
        return min(placed, self._taped_moment(values)) if self.both else placed

    def _taped_moment(self, values: Values) -> Fraction:
        pieces = ((n, group.piece) for n, group in enumerate(self.beam.stack.groups))
        heavy = sum(values[f"count {n}"] * values[f"mass {piece}"] for n, piece in pieces)
        return heavy * GRAVITY * values["backspan"]

    def _placed_moment(self, values: Values) -> Fraction:
        moment, to_row = Fraction(0), inboard(values) - values["tail gap"]
        for n, group in enumerate(self.beam.stack.groups):
            left, rows, halves = int(values[f"count {n}"]), 0, 0
            long = values[f"length {group.piece}"]
            while left > 0:  # row by row: its middle lies an odd number of half lengths further in
                halves += min(left, group.per_row) * (2 * rows + 1)
                left, rows = left - group.per_row, rows + 1
            arms = values[f"count {n}"] * to_row - halves * long / 2
            moment += values[f"mass {group.piece}"] * GRAVITY * arms
            to_row -= rows * long
        return moment

    def _beam_moment(self, values: Values) -> Fraction:
        from_tail = values.get("beam centroid", values["beam length"] / 2)
        return values["beam mass"] * GRAVITY * (inboard(values) - from_tail)

    def _looked_at(self, values: Values, own: Fraction) -> Fraction:
        """The beam's moment, where it could pull outboard for all that the rule looks at."""
        back = inboard(values) if self.from_stack else self._backspan(values)
        longer_outboard = back < values["reach"] + values["tip"]
        return own if longer_outboard or "beam centroid" in values else Fraction(0)

    def _backspan(self, values: Values) -> Fraction:
        """The taped backspan, or that of the stack where both are known and it is shorter."""
        if not (self.both and self._weighs(values)):
            return values["backspan"]
        heavy = self._taped_moment({**values, "backspan": Fraction(1)})
        return min(values["backspan"], self._placed_moment(values) / heavy)

    def _load(self, name: str, values: Values) -> Fraction:
        dead = sum((values[f"dead {one}"] for one in self.stages), Fraction(0)) * GRAVITY
        live = sum((values[f"live {one}"] for one in self.stages), Fraction(0)) * GRAVITY
        return {
            "hoist rated load": values["rated"],
            "hoist stall load": values["stall"],
            "largest rope tension": values["trip"] + (values["rope"] + values["bottom"]) * GRAVITY,
            "half the dead load and the full live load": dead / 2 + live,
            "half the dead load and half the live load": (dead + live) / 2,
        }[name]

    def stated(self) -> Iterator[tuple[str, StatedValue[float] | StatedValue[int] | None]]:
        """Every value that could bear on the moments, by a name of its own."""
        support, point, stack = self.beam, self.point, self.beam.stack
        beam, hoist = self.kit.beam(support.beam), self.kit.hoist(point.hoist)
        assert beam is not None
        assert hoist is not None
        yield from (("reach", support.reach), ("tip", support.tip_beyond_line))
        yield from (("beam length", beam.length), ("beam mass", beam.mass))
        yield from (("beam centroid", beam.centroid_from_tail), ("rope", point.rope_mass))
        yield from (("rated", hoist.rated_load), ("stall", hoist.stall_load))
        yield from (("trip", hoist.limiter_trip), ("bottom", point.bottom_weight))
        for stage in (one for one in self.kit.stages if one.id in self.stages):
            yield f"dead {stage.id}", stage.dead_mass
            yield f"live {stage.id}", stage.intended_load
        if self.from_stack or self.both:
            yield "tail gap", stack.tail_gap
        if self.both or not self.from_stack:
            yield "backspan", support.backspan
        for n, group in enumerate(stack.groups):
            piece = self.kit.piece(group.piece)
            assert piece is not None
            yield from ((f"count {n}", group.count), (f"mass {piece.id}", piece.mass))
            if self.from_stack or self.both:
                yield f"length {piece.id}", piece.length_on_beam


def inboard(values: Values) -> Fraction:
    """From the fulcrum to the tail end."""
    return values["beam length"] - values["tip"] - values["reach"]


def ends_of(value: StatedValue[float] | StatedValue[int]) -> tuple[Fraction, ...]:
    """The least and the most a value can be; every whole number of a count."""
    stated, doubt = Fraction(value.value), Fraction(value.tolerance or 0)
    least, most = max(Fraction(0), stated - doubt), stated + doubt
    if isinstance(value.value, int):
        return tuple(Fraction(n) for n in range(int(least), int(most) + 1))
    return (least, most) if doubt else (stated,)


def support_of(project: Project, drop: str, point: str) -> Support:
    """The support of a suspension point that has a counterweighted beam."""
    rig = next(one.rig for one in project.drops if one.id == drop)
    assert rig is not None
    found = next(one for one in rig.suspension_points if one.id == point)
    beam = found.counterweighted_beam
    assert beam is not None
    named = (one.stage for one in rig.stages if point in one.from_points)
    stages = tuple(one.id for name in named if (one := project.kit.stage(name)) is not None)
    stacked = beam.backspan_from is BackspanFrom.STACK
    both = beam.backspan is not None and beam.stack.tail_gap is not None
    return Support(found, beam, stacked, project.kit, stages, both)


def answer(support: Support, rules: Sequence[Rule], *, draw: random.Random, inside: int) -> Answer:
    """Ask at every end of the doubts, and at some points `inside` them."""
    choices = {name: ends_of(value) for name, value in support.stated() if value is not None}
    corners = [dict(zip(choices, one, strict=True)) for one in product(*choices.values())]
    found = [[support.moments(at, rule) for rule in rules] for at in corners]
    margins = [min(one.margin for one in at) for at in found]
    least = [min(at[n].spare for at in found) for n in range(len(rules))]
    worst = margins.index(min(margins))
    harms = any(support.harms(at) for at in corners)
    worse = None
    for _ in range(inside if len(corners) > 1 else 0):
        at = {name: _within(name, ends, draw) for name, ends in choices.items()}
        spare = [support.moments(at, rule).spare for rule in rules]
        worse = at if any(map(operator.lt, spare, least)) else worse
    return Answer(margins[worst], corners[worst], len(corners), harms, worse)


def _within(name: str, ends: Sequence[Fraction], draw: random.Random) -> Fraction:
    if name.startswith("count "):
        return draw.choice(ends)
    return ends[0] + (ends[-1] - ends[0]) * Fraction(draw.randint(0, 16), 16)
