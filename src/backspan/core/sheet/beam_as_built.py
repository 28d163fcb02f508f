"""A counterweighted beam as it was built: reach, backspan, stack, own weight.

Lengths lie along the beam: tip, suspension line, fulcrum, stack, tail. A backspan was taped, or
follows from the beam and its stack; then it shrinks as the reach grows, and moves with each piece.
Where both are known the shorter is judged: one of the measurements is off, and nobody can tell from
here which. The one that was not asked for is taken as stated, at the reach of the corner: what the
two differ by within a tape's own doubt is then covered by that doubt alone.

The beam's own weight changes sides: its centroid lies x_G = L/2 - tip - a inboard of the fulcrum.
Inboard it helps and is left out, outboard it harms and is counted. It can only lie outboard where
the beam is shorter inboard than outboard, so that only then its length and mass have to be known.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from backspan.core.mechanics.beam_geometry import (
    backspan_to_stack,
    beam_centroid,
    inboard_length,
    uniform_beam_centroid,
)
from backspan.core.mechanics.tipping import weight
from backspan.core.model.rigs import BackspanFrom
from backspan.core.numbers import larger, surely_above, surely_below, surely_nothing, total
from backspan.core.sheet.case import Case
from backspan.core.sheet.reads import UNKNOWN, GroupReads, Read, piece_reads, read_of
from backspan.core.sheet.sheet import Sheet
from backspan.core.sheet.stack import PlacedStack, Rows, placed_stack, stacked_weight
from backspan.core.sheet.subjects import BeamSubject


@dataclass(frozen=True, slots=True)
class BeamReads:
    """What may be read of a counterweighted beam; nothing is read yet."""

    reach: Read
    backspan: Read
    tip: Read
    tail_gap: Read
    length: Read
    mass: Read
    centroid_from_tail: Read
    groups: tuple[GroupReads, ...]
    from_stack: bool
    both: bool = False
    """Whether the backspan is known both ways, as taped and by beam and stack."""


@dataclass(slots=True)
class AsBuilt:
    """The beam in SI; NaN where a value it follows from is not stated.

    `inboard`, `tail_gap` and `stack_inner_end` are known only where the backspan follows from the
    stack.
    """

    reach: float
    backspan: float
    counterweight: float
    pieces: float
    inboard: float = UNKNOWN
    tail_gap: float = UNKNOWN
    stack_inner_end: float = UNKNOWN
    longer: float = UNKNOWN
    """The backspan that was asked for, where the beam is judged by the shorter other one."""


@dataclass(slots=True)
class OwnWeight:
    """The beam's weight and its centroid inboard of the fulcrum (negative: outboard)."""

    weight: float
    centroid_inboard: float


def beam_reads(case: Case, subject: BeamSubject) -> BeamReads:
    """What may be read of a beam, each value with the evidence it asks for and its place.

    The same for all checks, so that what one works out of it is known to the others.
    """
    return case.once(("beam-reads", subject.place), lambda: _beam_reads(case, subject))


def _beam_reads(case: Case, subject: BeamSubject) -> BeamReads:
    support = subject.support
    beam = case.beam(support.beam)
    on_roof, of_kit = subject.place, ("kit", "beams", beam.id)
    reads = BeamReads(
        reach=read_of("reach", support, on_roof),
        backspan=read_of("backspan", support, on_roof),
        tip=read_of("tip_beyond_line", support, on_roof),
        tail_gap=read_of("tail_gap", support.stack, (*on_roof, "stack")),
        length=read_of("beam_length", beam, of_kit),
        mass=read_of("beam_mass", beam, of_kit),
        centroid_from_tail=read_of("centroid_from_tail", beam, of_kit),
        groups=piece_reads(case, support, subject.place),
        from_stack=support.backspan_from is BackspanFrom.STACK,
    )
    return replace(reads, both=_known_both_ways(reads))


def _known_both_ways(beam: BeamReads) -> bool:
    needed = (beam.backspan, beam.reach, beam.length, beam.tip, beam.tail_gap)
    of_pieces = [read for group in beam.groups for read in (group.length, group.mass, group.count)]
    return bool(beam.groups) and all(one.stated is not None for one in (*needed, *of_pieces))


def as_built(sheet: Sheet, beam: BeamReads) -> AsBuilt:
    """The beam with its stack, by the shorter of its backspans where both are known."""
    built = one_way(sheet, beam, from_stack=beam.from_stack)
    shorter = _shorter(sheet, beam, built.backspan)
    if shorter is built.backspan:
        return built
    return replace(built, backspan=shorter, longer=built.backspan)


def _shorter(sheet: Sheet, beam: BeamReads, backspan: float) -> float:
    """The backspan as asked for, or the other way where both are known and that is shorter.

    The other way is looked at aside, so that its lengths bring no doubt of their own.
    """
    if not beam.both:
        return backspan
    other = not beam.from_stack
    known = one_way(sheet.aside(), beam, from_stack=other).backspan
    if not surely_below(known, limit=backspan):
        return backspan
    return one_way(sheet.without_doubt(), beam, from_stack=other).backspan


def one_way(sheet: Sheet, beam: BeamReads, *, from_stack: bool) -> AsBuilt:
    """The beam by its backspan from the stack, or as it was taped, whatever the other is."""
    if from_stack:
        return sheet.part("from-stack", lambda sheet: _from_stack(sheet, beam), of=(beam,))
    reach = sheet.read(beam.reach)
    weight, pieces = sheet.part("pieces", lambda sheet: _weighed(sheet, beam), of=(beam,))
    return AsBuilt(reach, sheet.read(beam.backspan), weight, pieces)


def every_way(sheet: Sheet, beam: BeamReads) -> Iterator[tuple[Sheet, AsBuilt]]:
    """The beam by each way in which its backspan is known, with the sheet it was read on.

    For what a longer backspan makes worse, or one between. The way that was not asked for is read
    without doubt of its own, as `as_built` does.
    """
    for from_stack in (True, False) if beam.both else (beam.from_stack,):
        beside = sheet if from_stack is beam.from_stack else sheet.without_doubt()
        yield beside, one_way(beside, beam, from_stack=from_stack)


def furthest_backspan(sheet: Sheet, beam: BeamReads) -> float:
    """The longest of the backspans that are known."""
    return larger(*(built.backspan for _, built in every_way(sheet, beam)))


def _from_stack(sheet: Sheet, beam: BeamReads) -> AsBuilt:
    reach = sheet.read(beam.reach)
    stack, pieces = sheet.part("stack", lambda sheet: _stacked(sheet, beam), of=(beam,))
    gap, inboard = sheet.read(beam.tail_gap), inboard_of(sheet, beam, reach)
    backspan = sheet.do(backspan_to_stack, inboard=inboard, stack_centroid=stack.centroid_from_tail)
    end = stack.inner_end_from_tail
    return AsBuilt(reach, backspan, stack.weight, pieces, inboard, gap, end)


def _weighed(sheet: Sheet, beam: BeamReads) -> tuple[float, float]:
    """What the pieces weigh wherever they stand, and how many they are."""
    rows = [
        Rows(sheet.read(group.count), group.per_row, sheet.read(group.mass))
        for group in beam.groups
    ]
    return stacked_weight(sheet, rows), total(group.count for group in rows)


def _stacked(sheet: Sheet, beam: BeamReads) -> tuple[PlacedStack, float]:
    """The stack from the tail on, and how many pieces it has."""
    rows = stack_rows(sheet, beam)
    placed = placed_stack(sheet, rows, tail_gap=sheet.read(beam.tail_gap))
    return placed, total(group.count for group in rows)


def stack_at_tail(sheet: Sheet, beam: BeamReads) -> PlacedStack:
    """The stack as if it began at the tail: how long it is, and where its centroid lies in it."""
    return sheet.part(
        "at-tail",
        lambda sheet: placed_stack(sheet, stack_rows(sheet, beam), tail_gap=0.0),
        of=(beam,),
    )


def stack_rows(sheet: Sheet, beam: BeamReads) -> list[Rows]:
    """The groups of pieces with their masses and lengths, from the tail inwards."""
    return [
        Rows(
            sheet.read(group.count),
            group.per_row,
            sheet.read(group.mass),
            sheet.read(group.length),
        )
        for group in beam.groups
    ]


def arms(sheet: Sheet, beam: BeamReads) -> tuple[float, float]:
    """Reach and backspan alone: of a taped backspan nothing of the pieces is read.

    Where both are known it is the shorter, and only where that is the stack's are they read.
    """
    if beam.from_stack:
        built = as_built(sheet, beam)
        return built.reach, built.backspan
    return sheet.read(beam.reach), _shorter(sheet, beam, sheet.read(beam.backspan))


def inboard_of(sheet: Sheet, beam: BeamReads, reach: float) -> float:
    """Length of the beam from the fulcrum to its tail."""
    length, tip = sheet.read(beam.length), sheet.read(beam.tip)
    return sheet.do(inboard_length, beam_length=length, tip_beyond_line=tip, reach=reach)


def tip_or_none(sheet: Sheet, beam: BeamReads) -> float:
    """What the beam has beyond the line; none where nobody stated it: at the least."""
    return 0.0 if beam.tip.stated is None else sheet.read(beam.tip)


def own_weight(sheet: Sheet, beam: BeamReads, reach: float) -> OwnWeight:
    """The beam's own weight, its centroid in the middle where none is stated."""
    middle = _own_centroid(sheet, beam, reach)
    return OwnWeight(sheet.do(weight, mass=sheet.read(beam.mass)), middle)


def _own_centroid(sheet: Sheet, beam: BeamReads, reach: float) -> float:
    if beam.centroid_from_tail.stated is None:
        length, tip = sheet.read(beam.length), sheet.read(beam.tip)
        return sheet.do(uniform_beam_centroid, beam_length=length, tip_beyond_line=tip, reach=reach)
    from_tail = sheet.read(beam.centroid_from_tail)
    inboard = inboard_of(sheet, beam, reach)
    return sheet.do(beam_centroid, inboard=inboard, centroid_from_tail=from_tail)


def _unless_inboard(sheet: Sheet, beam: BeamReads, built: AsBuilt) -> OwnWeight | None:
    """Where nobody stated the tip: none if the middle lies inboard however far the beam sticks out.

    Inboard the beam is at least as long as the taped backspan b, so its middle lies at least
    b - L/2 inboard, or b less the stated centroid.
    """
    if beam.centroid_from_tail.stated is not None:
        inside = surely_above(built.backspan, limit=sheet.read(beam.centroid_from_tail))
    else:
        inside = surely_above(built.backspan + built.backspan, limit=sheet.read(beam.length))
    if inside:
        return None
    sheet.read(beam.tip)
    return OwnWeight(sheet.do(weight, mass=sheet.read(beam.mass)), UNKNOWN)


def weight_outboard(sheet: Sheet, beam: BeamReads, built: AsBuilt) -> OwnWeight | None:
    """The beam's own weight where it pulls outboard; None where it can not, and is left out.

    What would tell is not always stated: then weight and centroid are unknown, not none.
    """
    if beam.tip.stated is None and not beam.from_stack:
        return _unless_inboard(sheet, beam, built)
    tip = tip_or_none(sheet, beam)
    # Inboard the beam is at least as long as a backspan that was taped.
    inboard = built.inboard if beam.from_stack else built.backspan
    shorter_inboard = surely_below(inboard, limit=built.reach + tip)
    if not shorter_inboard and beam.centroid_from_tail.stated is None:
        return None
    middle = _own_centroid(sheet, beam, built.reach)
    if surely_nothing(middle) or surely_above(middle, limit=0.0):
        return None
    return OwnWeight(sheet.do(weight, mass=sheet.read(beam.mass)), middle)
