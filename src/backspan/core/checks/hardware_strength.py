"""Does each piece of connecting hardware carry what hangs on the line, as the rope must.

The rule asks the same factor of the rope and of what joins it. A working load limit is not a
strength: with the factor its maker took, it is, and with a factor of 5 loaded to its limit a piece
does not hold 6 times.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.findings import DoesNotApply
from backspan.core.mechanics.ropes import hardware_strength
from backspan.core.model.topics import Topic
from backspan.core.quantities import FORCE
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.fitted import FittedPiece, fitted_on, without_hardware
from backspan.core.sheet.line_strength import (
    Carried,
    RuledPoint,
    carried,
    told_as,
    under_line_rules,
)
from backspan.core.sheet.load_on_line import LineReads, line_reads
from backspan.core.sheet.question import Asked, Question
from backspan.core.sheet.reads import Read, read_of
from backspan.core.sheet.sheet import Sheet

ID = "hardware-strength"


@dataclass(frozen=True, slots=True)
class OnThePiece:
    """A piece of hardware: the load on its line, and how its strength is known."""

    line: LineReads
    breaking_force: Read
    working_load: Read
    factor: Read


def work(sheet: Sheet, one: Asked[OnThePiece]) -> Iterator[Carried]:
    """What each branch of the rule asks against the piece's own strength."""
    piece = one.subject
    if piece.breaking_force.stated is None and piece.working_load.stated is not None:
        limit, factor = sheet.read(piece.working_load), sheet.read(piece.factor)
        strength = sheet.do(
            hardware_strength, connector_working_load=limit, connector_factor=factor
        )
    else:
        strength = sheet.read(piece.breaking_force)
    yield from carried(sheet, piece.line, one.values, strength)


QUESTION = Question(ID, "hardware", FORCE, work, told_as("hardware"))


def judge(case: Case) -> Iterator[Answer]:
    """One finding for each piece under each rule set; of a point without any, so much."""
    for one in under_line_rules(case, ID):
        if isinstance(one, DoesNotApply):
            yield one
            continue
        pieces = fitted_on(case, one.point)
        if not pieces:
            yield without_hardware(case, ID, one.point)
        for piece in pieces:
            for values in one.having:
                asked = Asked(_on(case, one, piece), piece.name, piece.place, values)
                yield QUESTION.judge(case, asked)


def _on(case: Case, one: RuledPoint, piece: FittedPiece) -> OnThePiece:
    kit = piece.fitted.connector
    connector, place = case.project.kit.connector(kit), ("kit", "connectors", kit)
    return OnThePiece(
        line_reads(case, one.point),
        read_of("connector_breaking_force", connector, place),
        read_of("connector_working_load", connector, place),
        read_of("connector_factor", connector, place),
    )


CHECK = Check(ID, Topic.LINE, judge)
