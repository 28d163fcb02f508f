"""Does what stands on the beam fit between its tail and the fulcrum.

Of a stack it is the inner end of its rows that must not pass the fulcrum; of a backspan that was
taped, the backspan must not be longer than the beam is inboard, and where the length of its pieces
is known, neither end of the stack around it may pass the tail or the fulcrum.
"""

from __future__ import annotations

from collections.abc import Iterator

from backspan.core.mechanics.beam_geometry import inboard_length
from backspan.core.numbers import total
from backspan.core.quantities import LENGTH
from backspan.core.sheet.beam_as_built import BeamReads, inboard_of, stack_at_tail, tip_or_none
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.question import Asked, Question
from backspan.core.sheet.reads import UNKNOWN
from backspan.core.sheet.sheet import Sheet
from backspan.core.sheet.stack import Rows, inner_end

CHECK = "beam-length"


def _stack(sheet: Sheet, one: Asked[BeamReads]) -> Iterator[Compared]:
    beam = one.subject
    rows = [
        Rows(sheet.read(group.count), group.per_row, UNKNOWN, sheet.read(group.length))
        for group in beam.groups
    ]
    reach, gap = sheet.read(beam.reach), sheet.read(beam.tail_gap)
    inboard = sheet.positive("inboard", inboard_of(sheet, beam, reach))
    end = inner_end(sheet, rows, tail_gap=gap)
    yield _compared(end, inboard, total(group.count for group in rows))


def _taped(sheet: Sheet, one: Asked[BeamReads]) -> Iterator[Compared]:
    beam = one.subject
    reach, backspan = sheet.read(beam.reach), sheet.read(beam.backspan)
    length, tip = sheet.read(beam.length), tip_or_none(sheet, beam)
    inboard = sheet.do(inboard_length, beam_length=length, tip_beyond_line=tip, reach=reach)
    inboard = sheet.positive("inboard", inboard)
    yield _compared(backspan, inboard, UNKNOWN)


def _stands(sheet: Sheet, one: Asked[BeamReads]) -> Iterator[Compared]:
    """Both ends of a stack whose middle was taped, against the tail and the fulcrum."""
    beam = one.subject
    stack = stack_at_tail(sheet, beam)
    reach, backspan = sheet.read(beam.reach), sheet.read(beam.backspan)
    inboard = sheet.positive("inboard", inboard_of(sheet, beam, reach))
    yield _compared(backspan + stack.centroid_from_tail, inboard, UNKNOWN)
    inner = stack.inner_end_from_tail - stack.centroid_from_tail
    yield _compared(inner, backspan, UNKNOWN)


def _compared(taken: float, inboard: float, pieces: float) -> Compared:
    numbers = (("taken", taken, LENGTH), ("inboard", inboard, LENGTH))
    return Compared(taken, inboard, numbers=numbers, counts=(("pieces", pieces),))


STACK_FITS = Question(CHECK, "stack-fits", LENGTH, _stack, strength=False)
BACKSPAN_FITS = Question(CHECK, "backspan-fits", LENGTH, _taped, strength=False)
STACK_STANDS = Question("stack-stands", "stack-stands", LENGTH, _stands, strength=False)
