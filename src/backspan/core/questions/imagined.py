"""A question as the smallest project that poses it, so that the same checks answer it.

Nothing is measured here: every value carries the evidence its check accepts, because the asker
vouches for it. Every answer says so.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import TypeVar

from backspan.core.model.basis import Basis, RuleChoice
from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.model.kit import Beam, Hoist, Kit, Piece, PieceKind, Stage
from backspan.core.model.project import FORMAT, Project
from backspan.core.model.rigs import (
    BackspanFrom,
    CounterweightedBeam,
    Drop,
    HungStage,
    PieceGroup,
    Rig,
    Stack,
    SuspensionPoint,
)
from backspan.core.model.site import Site
from backspan.core.questions.shape import Asked
from backspan.core.review.basis import PRACTICE, rules_of, selected_rules
from backspan.core.rules.selected import SelectedRules
from backspan.core.sheet.case import Case
from backspan.core.sheet.subjects import BeamSubject

T = TypeVar("T")

_DROP, _POINT = "asked", "point"
_HOIST, _BEAM, _PIECE, _STAGE = "on the line", "beam", "piece", "stage"
_SHORT_STAGE = 1.0  # metres: no question is about the stage's length


@dataclass(frozen=True, slots=True, kw_only=True)
class Rigged:
    """One beam as a question describes it, SI; None where it does not say.

    With `from_stack` the backspan follows from beam, tip, tail gap and pieces.
    """

    rated: float
    reach: float
    piece: float
    pieces: int
    backspan: float | None = None
    stall: float | None = None
    from_stack: bool = False
    beam: float | None = None
    beam_mass: float | None = None
    tip: float | None = None
    tail_gap: float | None = None
    piece_length: float | None = None
    per_row: int = 1
    dead: float | None = None
    live: float | None = None
    rope: float | None = None
    bottom: float | None = None
    limiter: float | None = None


def rigged_of(
    asked: Asked,
    *,
    rated: float | None = None,
    reach: float | None = None,
    backspan: float | None = None,
    pieces: int | None = None,
) -> Rigged:
    """The beam that the values describe; a number given here stands for one that is sought."""
    return Rigged(
        rated=asked.needed("rated") if rated is None else rated,
        reach=asked.needed("reach") if reach is None else reach,
        backspan=asked.number("backspan") if backspan is None else backspan,
        piece=asked.needed("piece"),
        pieces=(asked.count("pieces") or 0) if pieces is None else pieces,
        stall=asked.number("stall"),
        beam=asked.number("beam"),
        beam_mass=asked.number("beam-mass"),
        tip=asked.number("tip"),
        tail_gap=asked.number("tail-gap"),
        piece_length=asked.number("piece-length"),
        per_row=asked.count("per-row") or 1,
        dead=asked.number("dead"),
        live=asked.number("live"),
        rope=asked.number("rope"),
        bottom=asked.number("bottom"),
        limiter=asked.number("limiter"),
    )


def case_for(asked: Asked, rigged: Rigged, choices: Sequence[RuleChoice]) -> Case:
    """The case of that beam under those rule sets. Raises RuleError for one that is not there."""
    project = _project(asked, rigged, choices)
    drop = project.drops[0]
    practice = selected_rules(project, PRACTICE, asked.library)
    return Case(project, drop, rules_of(project, drop, asked.library), practice, asked.on)


def with_rig(case: Case, asked: Asked, rigged: Rigged) -> Case:
    """The same case with another beam in it."""
    project = _project(asked, rigged, case.project.basis.tipping)
    return replace(case, project=project, drop=project.drops[0])


def rules_of_case(case: Case) -> SelectedRules:
    """The one rule set a question is asked under."""
    return case.under("tipping")[0]


def subject_of(case: Case) -> BeamSubject:
    """The one beam of the case, as checks name it."""
    point = case.points[0]
    place = (*case.place_of(point), "counterweighted_beam")
    support = point.counterweighted_beam or CounterweightedBeam(_BEAM)
    return BeamSubject(point, support, case.name_of(point), place)


def _project(asked: Asked, rigged: Rigged, choices: Sequence[RuleChoice]) -> Project:
    support = CounterweightedBeam(
        beam=_BEAM,
        reach=_measured(rigged.reach),
        backspan=_measured(rigged.backspan),
        backspan_from=BackspanFrom.STACK if rigged.from_stack else BackspanFrom.MEASURED,
        tip_beyond_line=_measured(rigged.tip),
        stack=Stack(
            (PieceGroup(_PIECE, _sure(rigged.pieces, Evidence.MEASURED), rigged.per_row),),
            tail_gap=_measured(rigged.tail_gap),
        ),
    )
    point = SuspensionPoint(
        id=_POINT,
        station=0.0,
        hoist=_HOIST,
        counterweighted_beam=support,
        rope_mass=_measured(rigged.rope),
        bottom_weight=_measured(rigged.bottom),
    )
    stage = _sure(_SHORT_STAGE, Evidence.MEASURED)
    rig = Rig((point,), (HungStage(_STAGE, (_POINT,)),))
    return Project(
        format=FORMAT,
        site=Site("a question", "no place", ()),
        basis=Basis(tuple(choices)),
        kit=_kit(rigged),
        drops=(Drop(_DROP, "roof", "edge", 0.0, stage, rig=rig),),
        confirmations=asked.confirmations,
        units=asked.style,
    )


def _kit(rigged: Rigged) -> Kit:
    hoist = Hoist(
        _HOIST,
        "hoist",
        rated_load=_sure(rigged.rated, Evidence.LABEL),
        stall_load=_labelled(rigged.stall),
        limiter_trip=_labelled(rigged.limiter),
    )
    beam = Beam(_BEAM, "beam", length=_measured(rigged.beam), mass=_labelled(rigged.beam_mass))
    piece = Piece(
        _PIECE,
        "piece",
        PieceKind.STEEL_PLATE,
        mass=_sure(rigged.piece, Evidence.LABEL),
        length_on_beam=_measured(rigged.piece_length),
    )
    stage = Stage(
        _STAGE,
        "stage",
        length=_sure(_SHORT_STAGE, Evidence.MEASURED),
        dead_mass=_labelled(rigged.dead),
        intended_load=_labelled(rigged.live),
    )
    return Kit(hoists=(hoist,), beams=(beam,), pieces=(piece,), stages=(stage,))


def _sure(value: T, evidence: Evidence) -> StatedValue[T]:
    return StatedValue(value, evidence=evidence)


def _measured(value: float | None) -> StatedValue[float] | None:
    return None if value is None else StatedValue(value, 0.0, Evidence.MEASURED)


def _labelled(value: float | None) -> StatedValue[float] | None:
    return None if value is None else _sure(value, Evidence.LABEL)
