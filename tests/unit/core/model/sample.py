"""The one sound rig told with gaps: lists out of order, values without evidence. Invented.

What names, order, evidence and codes need and a sound rig has not: lists that are not sorted, a
second drop without a rig, a stack of two kinds of pieces, a point tied back twice, and values that
leave it to the records around them to say where they come from.
"""

from __future__ import annotations

from dataclasses import fields, is_dataclass, replace
from typing import Any, TypeVar, cast

from backspan.core.model.evidence import Evidence, StatedValue, Statement
from backspan.core.model.kit import Kit, Termination
from backspan.core.model.project import Project
from backspan.core.model.rigs import (
    CounterweightedBeam,
    Drop,
    Lifeline,
    PieceGroup,
    Rig,
    Tieback,
)
from backspan.core.model.site import AnchorUse, Edge, Obstacle, Roof
from backspan.core.model.stages import HungStage
from tests.unit.core.rigs import ARM, PROJECT, STACK, at, put

R = TypeVar("R")

MEASURED = Statement(Evidence.MEASURED, by="MT", at="2026-11-24", document="Roof sheet 1")
DRAWN = Statement(Evidence.DRAWING, document="A-101")


def stated(value: float, **more: object) -> StatedValue[float]:
    """A value as a file states it."""
    return StatedValue(value, **more)  # type: ignore[arg-type]  # each test names real fields


def bare(record: R) -> R:
    """The record with nothing said of where its values come from."""
    if isinstance(record, tuple):
        return cast("R", tuple(bare(one) for one in record))
    if not is_dataclass(record) or isinstance(record, type):
        return record
    said: dict[str, Any] = {one.name: bare(getattr(record, one.name)) for one in fields(record)}
    if isinstance(record, StatedValue):
        said |= dict.fromkeys(("evidence", "by", "at", "document"))
    elif "values_from" in said:
        said["values_from"] = None
    return cast("R", replace(cast("Any", record), **said))


SOUND = bare(PROJECT)


def beam() -> CounterweightedBeam:
    """The rig's left beam with a second kind of pieces; its backspan is from a drawing."""
    whole, half = PieceGroup("LOT", StatedValue(6)), PieceGroup("SAND", StatedValue(4), per_row=2)
    stacked = put(at(SOUND, STACK), ("groups",), (whole, half))
    stacked = replace(stacked, tail_gap=stated(0.0762))
    drawn = stated(3.048, evidence=Evidence.DRAWING, checked_by="PE")
    reach = stated(0.6096, tolerance=0.006, text="2 ft")
    arm: CounterweightedBeam = at(SOUND, ARM)
    return replace(arm, stack=stacked, reach=reach, backspan=drawn, joined=None)


def rig() -> Rig:
    """The rig's points and lifelines turned round; the left point is tied back twice."""
    one: Rig = at(SOUND, ("drops", "D", "rig"))
    left, right = one.suspension_points
    tied = (Tieback("T2", "A2"), Tieback("T1", "A1", rope="W-1"))
    left = replace(left, counterweighted_beam=beam(), rope_length=stated(70.0), tiebacks=tied)
    # Nobody said how a beam is joined: a code from before that could be said stays what it was.
    right = put(right, ("counterweighted_beam", "joined"), None)
    right = replace(right, tiebacks=(), termination="E1")
    lines = (
        Lifeline("LL2", "A2", worker="MT", station=3.0),
        Lifeline("LL1", "A10", rope="W-2", worker="PE"),
    )
    hung = (HungStage("ST-1", ("L", "R")),)
    points = (right, left)
    return replace(
        one, suspension_points=points, lifelines=lines, stages=hung, values_from=MEASURED
    )


def kit() -> Kit:
    """The rig's kit with a rope end; hoists, ropes, pieces and units turned round."""
    one = SOUND.kit
    hoist = replace(one.hoists[0], values_from=Statement(Evidence.CERTIFICATE))
    return replace(
        one,
        hoists=(one.hoists[1], hoist),
        pieces=one.pieces[::-1],
        units=one.units[::-1],
        terminations=(*one.terminations, Termination("E1", "Thimble end")),
    )


def roof() -> Roof:
    """The rig's roof with a second edge and an obstacle; three anchors, turned round."""
    (one,) = SOUND.site.roofs
    (south,), (first, second, third, *_) = one.edges, one.anchors
    tenth = replace(third, id="A10", uses=(AnchorUse.FALL_ARREST, AnchorUse.TIEBACK))
    return replace(
        one,
        edges=(
            replace(south, faces="South"),
            Edge("E", (south.start[0], 12.0), south.start),
        ),
        obstacles=(Obstacle("O1", "Fan", ((5.0, 5.0), (6.0, 5.0), (6.0, 6.0))),),
        anchors=(tenth, second, replace(first, rating=stated(22000.0))),
        values_from=DRAWN,
    )


def project() -> Project:
    """The whole project; its first drop in the file, D10, has no rig."""
    one: Drop = at(SOUND, ("drops", "D"))
    tenth = replace(one, id="D10", name="Tenth", start=10.0, rig=None)
    second = replace(one, id="D2", start=2.0, rig=rig(), values_from=DRAWN)
    told = replace(SOUND, site=replace(SOUND.site, roofs=(roof(),)), kit=kit(), prepared_by="PE")
    return replace(told, drops=(tenth, second), people=SOUND.people[::-1], taken_over=())
