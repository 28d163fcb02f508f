"""What may be read of a rope and its end: of a suspension line with its load, of a tieback."""

from __future__ import annotations

from dataclasses import dataclass

from backspan.core.mechanics.ropes import strength_at_end
from backspan.core.model.rigs import Lifeline, SuspensionPoint, Tieback
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.load_on_line import LineReads, line_reads
from backspan.core.sheet.reads import Read, read_of
from backspan.core.sheet.sheet import Sheet


@dataclass(frozen=True, slots=True)
class EndReads:
    """The breaking force of a rope, and what its end keeps of that."""

    breaking_force: Read
    efficiency: Read


@dataclass(frozen=True, slots=True)
class RopeReads(EndReads):
    """A suspension line: the load on it besides."""

    line: LineReads


def rope_reads(case: Case, point: SuspensionPoint) -> RopeReads:
    """The suspension line of a point."""
    end = end_reads(case, point, case.place_of(point))
    return RopeReads(end.breaking_force, end.efficiency, line_reads(case, point))


def end_reads(case: Case, on: SuspensionPoint | Tieback | Lifeline, place: Place) -> EndReads:
    """A rope by its tag, and its end; what nobody named is not stated."""
    kit = case.project.kit
    rope = None if on.rope is None else kit.rope(on.rope)
    end = None if on.termination is None else kit.termination(on.termination)
    of_rope = (*place, "rope") if rope is None else ("kit", "ropes", rope.id)
    of_end = (*place, "termination") if end is None else ("kit", "terminations", end.id)
    return EndReads(read_of("breaking_force", rope, of_rope), read_of("efficiency", end, of_end))


def strength_of(sheet: Sheet, rope: EndReads) -> float:
    """What a rope carries where its end is made, in newtons; NaN where either is not stated."""
    breaking, kept = sheet.read(rope.breaking_force), sheet.read(rope.efficiency)
    return sheet.do(strength_at_end, breaking_force=breaking, efficiency=kept)
