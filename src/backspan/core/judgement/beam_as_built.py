"""A counterweighted beam as it was built: reach, backspan, stack, at the corner asked for."""

from __future__ import annotations

from dataclasses import dataclass

from backspan.core.judgement.case import Case
from backspan.core.judgement.inputs import EvidenceClass, Inputs
from backspan.core.judgement.subjects import BeamSubject
from backspan.core.mechanics.beam_geometry import (
    backspan_to_stack,
    beam_centroid,
    inboard_length,
    uniform_beam_centroid,
)
from backspan.core.mechanics.stack import Rows, placed_stack, stacked_weight
from backspan.core.mechanics.tipping import weight
from backspan.core.model.kit import Beam
from backspan.core.model.rigs import BackspanFrom, CounterweightedBeam
from backspan.core.quantities import LENGTH, MASS
from backspan.core.worked.formula import Step


@dataclass(frozen=True, slots=True)
class AsBuilt:
    """What is known of the beam, SI; None where an input is not stated.

    `inboard` and `stack_inner_end` are there only where the backspan follows from the stack.
    """

    reach: float | None
    backspan: float | None
    rows: tuple[Rows, ...]
    counterweight: float | None
    inboard: float | None
    tail_gap: float | None
    stack_inner_end: float | None
    steps: tuple[Step, ...]

    @property
    def pieces(self) -> int:
        """How many pieces are on the beam."""
        return sum(group.count for group in self.rows)

    @property
    def from_stack(self) -> bool:
        """Whether the backspan was worked out, so that more pieces move it."""
        return self.inboard is not None


@dataclass(frozen=True, slots=True)
class OwnWeight:
    """The beam's weight and its centroid inboard of the fulcrum (negative: outboard)."""

    weight: float
    centroid_inboard: float
    steps: tuple[Step, ...]


def read(inputs: Inputs, subject: BeamSubject) -> AsBuilt:
    """The beam as built, every value read through `inputs`."""
    support = subject.support
    from_stack = support.backspan_from is BackspanFrom.STACK
    reach = inputs.measure(
        "reach", support.reach, LENGTH, EvidenceClass.GEOMETRY, (*subject.place, "reach")
    )
    rows = _rows(inputs, subject, with_lengths=from_stack)
    if rows is None:
        return AsBuilt(reach, None, (), None, None, None, None, ())
    if from_stack:
        return _on_beam(inputs, subject, reach, rows)
    backspan = inputs.measure(
        "backspan", support.backspan, LENGTH, EvidenceClass.GEOMETRY, (*subject.place, "backspan")
    )
    stacked = stacked_weight(rows)
    return AsBuilt(reach, backspan, rows, stacked.weight, None, None, None, stacked.steps)


def own_weight(
    inputs: Inputs, subject: BeamSubject, reach: float, *, credited: bool
) -> OwnWeight | None:
    """The beam's own weight, from its length or its stated centroid; None where not stated."""
    beam = inputs.case.beam(subject.support.beam)
    place = ("kit", "beams", beam.id)
    mass = inputs.measure(
        "credited_beam_mass" if credited else "beam_mass",
        beam.mass,
        MASS,
        EvidenceClass.MASS,
        (*place, "mass"),
    )
    length, tip = _beam_length(inputs, beam), _tip(inputs, subject)
    if mass is None or length is None or tip is None:
        return None
    heavy = weight(mass=mass)
    if beam.centroid_from_tail is None:
        middle = uniform_beam_centroid(beam_length=length, tip_beyond_line=tip, reach=reach)
        return OwnWeight(heavy.value, middle.value, (heavy, middle))
    from_tail = inputs.measure(
        "centroid_from_tail",
        beam.centroid_from_tail,
        LENGTH,
        EvidenceClass.GEOMETRY,
        (*place, "centroid_from_tail"),
    )
    inboard = inboard_length(beam_length=length, tip_beyond_line=tip, reach=reach)
    middle = beam_centroid(inboard=inboard.value, centroid_from_tail=from_tail or 0.0)
    return OwnWeight(heavy.value, middle.value, (heavy, inboard, middle))


def may_be_harmful(inputs: Inputs, subject: BeamSubject, built: AsBuilt) -> bool:
    """Whether the beam's own weight could pull outboard, so that it has to be known.

    A uniform beam at least as long inboard as outboard helps or does nothing; inboard it is at
    least as long as the backspan.
    """
    room = _room_outboard(inputs, subject, built)
    if room is None:
        return False
    beam = inputs.case.beam(subject.support.beam)
    return room < 0.0 or beam.centroid_from_tail is not None


def left_out_until(inputs: Inputs, subject: BeamSubject, built: AsBuilt) -> float | None:
    """How much further out the beam may reach before weight that is left out could do harm.

    None where nothing is known of it, or the weight does harm as it is and is counted.
    """
    room = _room_outboard(inputs, subject, built)
    if room is None or built.reach is None:
        return None
    if may_be_harmful(inputs, subject, built):
        own = own_weight(inputs, subject, built.reach, credited=False)
        room = None if own is None else own.centroid_inboard
    return None if room is None or room < 0.0 else room


def _room_outboard(inputs: Inputs, subject: BeamSubject, built: AsBuilt) -> float | None:
    """How much longer the beam is inboard than outboard, at the least."""
    if built.reach is None or built.backspan is None:
        return None
    tip = None if subject.support.tip_beyond_line is None else _tip(inputs, subject)
    outboard = built.reach + (tip or 0.0)
    inboard = built.backspan if built.inboard is None else built.inboard
    return inboard - outboard


def worked_out_backspan(case: Case, support: CounterweightedBeam) -> float | None:
    """The backspan that beam and stack give as stated, to hold a taped one against.

    None where a part of it is not stated, or nothing is stacked.
    """
    length = case.beam(support.beam).length
    tip, reach, gap = support.tip_beyond_line, support.reach, support.stack.tail_gap
    rows = [
        Rows(
            group.count.value,
            group.per_row,
            case.piece(group.piece).mass.value,
            None if piece_length is None else piece_length.value,
        )
        for group in support.stack.groups
        for piece_length in (case.piece(group.piece).length_on_beam,)
    ]
    complete = all(row.piece_length is not None for row in rows)
    if length is None or tip is None or reach is None or gap is None or not complete:
        return None
    if stacked_weight(rows).weight <= 0.0:
        return None
    inboard = inboard_length(beam_length=length.value, tip_beyond_line=tip.value, reach=reach.value)
    stack = placed_stack(rows, tail_gap=gap.value)
    return backspan_to_stack(inboard=inboard.value, stack_centroid=stack.centroid_from_tail).value


def _rows(inputs: Inputs, subject: BeamSubject, *, with_lengths: bool) -> tuple[Rows, ...] | None:
    rows: list[Rows] = []
    complete = True
    for index, group in enumerate(subject.support.stack.groups):
        piece = inputs.case.piece(group.piece)
        place = ("kit", "pieces", piece.id)
        count = inputs.count(
            "pieces",
            group.count,
            EvidenceClass.COUNT,
            (*subject.place, "stack", "groups", index, "count"),
        )
        mass = inputs.measure("piece_mass", piece.mass, MASS, EvidenceClass.MASS, (*place, "mass"))
        length = None
        if with_lengths:
            length = inputs.measure(
                "piece_length",
                piece.length_on_beam,
                LENGTH,
                EvidenceClass.GEOMETRY,
                (*place, "length_on_beam"),
            )
            complete = complete and length is not None
        if count is None or mass is None:
            complete = False
        else:
            rows.append(Rows(max(0, count), group.per_row, mass, length))
    return tuple(rows) if complete else None


def _on_beam(
    inputs: Inputs, subject: BeamSubject, reach: float | None, rows: tuple[Rows, ...]
) -> AsBuilt:
    beam = inputs.case.beam(subject.support.beam)
    length, tip = _beam_length(inputs, beam), _tip(inputs, subject)
    gap = inputs.measure(
        "tail_gap",
        subject.support.stack.tail_gap,
        LENGTH,
        EvidenceClass.GEOMETRY,
        (*subject.place, "stack", "tail_gap"),
    )
    stacked = stacked_weight(rows)
    if reach is None or length is None or tip is None or gap is None:
        return AsBuilt(reach, None, rows, stacked.weight, None, None, None, stacked.steps)
    inboard = inboard_length(beam_length=length, tip_beyond_line=tip, reach=reach)
    if stacked.weight == 0.0:
        return AsBuilt(reach, inboard.value - gap, rows, 0.0, inboard.value, gap, gap, (inboard,))
    stack = placed_stack(rows, tail_gap=gap)
    backspan = backspan_to_stack(inboard=inboard.value, stack_centroid=stack.centroid_from_tail)
    return AsBuilt(
        reach,
        backspan.value,
        rows,
        stack.weight,
        inboard.value,
        gap,
        stack.inner_end_from_tail,
        (inboard, *stack.steps, backspan),
    )


def _beam_length(inputs: Inputs, beam: Beam) -> float | None:
    place = ("kit", "beams", beam.id, "length")
    return inputs.measure("beam_length", beam.length, LENGTH, EvidenceClass.GEOMETRY, place)


def _tip(inputs: Inputs, subject: BeamSubject) -> float | None:
    return inputs.measure(
        "tip_beyond_line",
        subject.support.tip_beyond_line,
        LENGTH,
        EvidenceClass.GEOMETRY,
        (*subject.place, "tip_beyond_line"),
    )
