"""A question as the smallest project that poses it, so that the same checks answer it.

Nothing is measured here: every value carries the evidence its check accepts, because the asker
vouches for it. Every answer says so. Where each value belongs is what the table of quantities says.
"""

from __future__ import annotations

import datetime
import math
from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from backspan.core.ask.shape import Asked
from backspan.core.model.basis import Basis, RuleChoice
from backspan.core.model.evidence import Evidence, StatedValue, Statement
from backspan.core.model.inherit import inherit
from backspan.core.model.kit import (
    Beam,
    ClipSheet,
    Hoist,
    Kit,
    Piece,
    PieceKind,
    Rope,
    RopeKind,
    Stage,
    Termination,
    TerminationKind,
)
from backspan.core.model.people import Person
from backspan.core.model.project import FORMAT, Project
from backspan.core.model.rigs import (
    BackspanFrom,
    Clips,
    CounterweightedBeam,
    Drop,
    Fulcrum,
    FulcrumKind,
    Pad,
    PieceGroup,
    Rig,
    Stack,
    SuspensionPoint,
)
from backspan.core.model.site import Site
from backspan.core.model.stages import HungStage
from backspan.core.quantities.named import QUANTITIES
from backspan.core.quantities.quantity import COUNT, GEOMETRY, OBSERVATION
from backspan.core.review.basis import PRACTICE, rules_of, selected_rules
from backspan.core.review.naming import rule_choice
from backspan.core.sheet.case import Case
from backspan.core.sheet.subjects import BeamSubject

#: The rule set a question is asked under where it names none.
DEFAULT_RULES = "us-osha-1926-subpart-l@1996"

_DROP, _POINT = "asked", "point"
_HOIST, _BEAM, _PIECE, _STAGE = "on the line", "beam", "piece", "stage"
_ROPE, _END = "suspension rope", "end"
_ASKER = Person("asker", "whoever asks", "owner's engineer")
_NO_NUMBER = StatedValue(0.0, 0.0, Evidence.LABEL)
_SHORT = StatedValue(1.0, 0.0, Evidence.MEASURED)  # metres: no question is about the stage's length


def case_of_question(asked: Asked, *, from_stack: bool) -> Case:
    """The case of the beam that is asked about. Raises RuleError for a rule set not there.

    With `from_stack` the backspan follows from beam, tip, tail gap and pieces.
    """
    choice = rule_choice(asked.word("rules") or DEFAULT_RULES, asked.library)
    given = {
        one.name: number
        for one in QUANTITIES.values()
        if one.asked and (number := asked.number(one.asked)) is not None
    }
    if not given.get("backspan", math.inf) < given.get("reach", 0.0):
        # A beam that is the longer inboard ends at its line unless the asker says more.
        given.setdefault("tip_beyond_line", 0.0)
    per_row = int(asked.number("per-row") or 1)
    project = replace(
        project_of(given, choice, on=asked.on, from_stack=from_stack, per_row=per_row),
        confirmations=asked.confirmations,
        units=asked.style,
    )
    drop = project.drops[0]
    practice = selected_rules(project, PRACTICE, asked.library)
    return Case(project, drop, rules_of(project, drop, asked.library), practice, asked.on)


def subject_of(case: Case) -> BeamSubject:
    """The one beam of the case, as checks name it."""
    point = case.points[0]
    place = (*case.place_of(point), "counterweighted_beam")
    support = point.counterweighted_beam or CounterweightedBeam(_BEAM)
    return BeamSubject(point, support, case.name_of(point), place)


def project_of(
    given: Mapping[str, float],
    choice: RuleChoice,
    *,
    on: datetime.date,
    from_stack: bool,
    per_row: int = 1,
) -> Project:
    """The smallest project on which these quantities are stated that day, by their names, in SI."""
    pieces = {"count": StatedValue(0, None, Evidence.MEASURED)} | _stated("piece_group", given)
    group = PieceGroup(_PIECE, **pieces, per_row=per_row)
    support = CounterweightedBeam(
        beam=_BEAM,
        fulcrum=Fulcrum(FulcrumKind.PAD, pad=_pad(given), **_stated("fulcrum", given)),
        backspan_from=BackspanFrom.STACK if from_stack else BackspanFrom.MEASURED,
        stack=Stack((group,), **_stated("stack", given)),
        **_stated("counterweighted_beam", given),
    )
    point = SuspensionPoint(
        _POINT,
        0.0,
        _HOIST,
        support,
        rope=_ROPE,
        termination=_END,
        clips=Clips(**_stated("clips", given)),
        **_stated("suspension_point", given),
    )
    kit = Kit(
        hoists=(Hoist(_HOIST, "hoist", **({"rated_load": _NO_NUMBER} | _stated("hoist", given))),),
        ropes=(_rope(given),),
        terminations=(_end(given),),
        beams=(Beam(_BEAM, "beam", **_stated("beam", given)),),
        pieces=(
            Piece(
                _PIECE,
                "piece",
                PieceKind.STEEL_PLATE,
                **({"mass": _NO_NUMBER} | _stated("piece", given)),
            ),
        ),
        stages=(Stage(_STAGE, "stage", **({"length": _SHORT} | _stated("stage", given))),),
    )
    rig = Rig((point,), (HungStage(_STAGE, (_POINT,)),))
    project = Project(
        format=FORMAT,
        site=Site("a question", "no place", ()),
        basis=Basis((choice,)),
        kit=kit,
        drops=(Drop(_DROP, "roof", "edge", 0.0, _SHORT, rig=rig),),
        people=(_ASKER,),
        values_from=Statement(Evidence.LABEL, _ASKER.id, on.isoformat()),
    )
    return inherit(project)


def _pad(given: Mapping[str, float]) -> Pad | None:
    """The pad under the plate, if anything is asked of one."""
    said = _stated("pad", given)
    return Pad(**said) if said else None


def _rope(given: Mapping[str, float]) -> Rope:
    return Rope(_ROPE, "rope", RopeKind.WIRE, **({"diameter": _SHORT} | _stated("rope", given)))


def _end(given: Mapping[str, float]) -> Termination:
    """The rope's end; what it is made with is asked of clips only."""
    sheet = ClipSheet(**_stated("clip_sheet", given))
    kind = TerminationKind.FIST_GRIP_CLIPS
    return Termination(_END, "end", kind, clips=sheet, **_stated("termination", given))


def _stated(record: str, given: Mapping[str, float]) -> dict[str, Any]:
    """The fields of a record that were given; Any, since each record has its own."""
    found: dict[str, Any] = {}
    for one in QUANTITIES.values():
        if one.record == record and one.name in given:
            measured = one.evidence in {GEOMETRY, COUNT, OBSERVATION}
            found[one.field] = StatedValue(
                given[one.name],
                None if one.dimension is None else 0.0,
                Evidence.MEASURED if measured else Evidence.LABEL,
            )
    return found
