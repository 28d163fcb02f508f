"""An invented site with invented rigs, built in Python, for the tests of the drawings."""

from __future__ import annotations

import datetime
from dataclasses import replace

from backspan.core.model.basis import Basis, RuleChoice
from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.model.kit import Beam, Hoist, Kit, Piece, PieceKind, Stage
from backspan.core.model.project import FORMAT, Project
from backspan.core.model.rigs import (
    BackspanFrom,
    CounterweightedBeam,
    Drop,
    Fulcrum,
    FulcrumKind,
    HungStage,
    Lifeline,
    OtherSupport,
    OtherSupportKind,
    PieceGroup,
    Rig,
    Stack,
    SuspensionPoint,
    Tieback,
)
from backspan.core.model.site import (
    Anchor,
    AnchorStanding,
    Edge,
    Obstacle,
    Parapet,
    Point,
    Roof,
    Site,
)
from backspan.core.quantities import FORCE, LENGTH, MASS, Style, parse

ON = datetime.date(2026, 11, 25)


def length(text: str) -> float:
    """A length in metres."""
    return parse(text, LENGTH)


def measured(text: str, tolerance: str | None = None) -> StatedValue[float]:
    """A measured length."""
    return StatedValue(
        length(text), None if tolerance is None else length(tolerance), Evidence.MEASURED, text=text
    )


def stated_mass(text: str) -> StatedValue[float]:
    """A mass from a label."""
    return StatedValue(parse(text, MASS), evidence=Evidence.LABEL, text=text)


def at(x: str, y: str) -> Point:
    """A point in plan."""
    return (length(x), length(y))


def beam_support(
    *,
    reach: str | None = "4'-0\"",
    backspan: str | None = "11'-10 1/2\"",
    pieces: int = 28,
    setback: str | None = "2'-6\"",
    beam: str = "B18",
    kind: FulcrumKind = FulcrumKind.STAND,
    height: str | None = "4'-6\"",
    tip: str | None = '9"',
    gap: str | None = '6"',
    from_stack: bool = False,
) -> CounterweightedBeam:
    """A counterweighted beam; None leaves a value unstated."""
    return CounterweightedBeam(
        beam=beam,
        fulcrum=Fulcrum(
            kind,
            None if setback is None else measured(setback),
            None if height is None else measured(height),
        ),
        reach=None if reach is None else measured(reach, '1/4"'),
        backspan=None if backspan is None else measured(backspan, '1/2"'),
        backspan_from=BackspanFrom.STACK if from_stack else BackspanFrom.MEASURED,
        tip_beyond_line=None if tip is None else measured(tip),
        stack=Stack(
            (PieceGroup("P50", StatedValue(pieces, evidence=Evidence.MEASURED), per_row=2),),
            None if gap is None else measured(gap),
        ),
    )


def point(
    name: str, station: str, anchor: str | None, support: CounterweightedBeam | None = None
) -> SuspensionPoint:
    """A suspension point tied back to an anchor."""
    return SuspensionPoint(
        id=name,
        station=length(station),
        hoist="H1",
        counterweighted_beam=support or beam_support(),
        tiebacks=() if anchor is None else (Tieback(f"TB-{name}", anchor),),
    )


def drop(
    name: str,
    edge: str,
    start: str,
    points: tuple[SuspensionPoint, ...],
    lifelines: tuple[Lifeline, ...] = (),
) -> Drop:
    """A drop of one 20 ft stage."""
    rig = Rig(points, (HungStage("ST20", tuple(one.id for one in points)),), lifelines)
    return Drop(
        name,
        "main",
        edge,
        length(start),
        measured("20'-0\""),
        height=measured("148'-0\""),
        rig=rig if points else None,
    )


def kit() -> Kit:
    """Invented equipment."""
    return Kit(
        hoists=(
            Hoist("H1", "Hoist one", StatedValue(parse("1000 lb", FORCE), evidence=Evidence.LABEL)),
        ),
        beams=(
            Beam("B18", "Beam of three parts", measured("18'-0\"")),
            Beam("BX", "Beam of unknown length"),
        ),
        pieces=(
            Piece("P50", "Plate", PieceKind.STEEL_PLATE, stated_mass("50 lb"), measured('1 1/2"')),
            Piece("PX", "Plate of unknown length", PieceKind.STEEL_PLATE, stated_mass("25 kg")),
        ),
        stages=(Stage("ST20", "Stage", measured("20'-0\""), measured("2'-6\"")),),
    )


def roof() -> Roof:
    """An L-shaped roof with parapets, a penthouse and anchors."""
    wall = Parapet(measured("3'-6\""), measured('12"'), "brick")
    low = Parapet(measured('18"'), measured('8"'))
    a, b, c, d, e, f = (
        at("0 ft", "0 ft"),
        at("0 ft", "62 ft"),
        at("110 ft", "62 ft"),
        at("110 ft", "22 ft"),
        at("70 ft", "22 ft"),
        at("70 ft", "0 ft"),
    )
    return Roof(
        "main",
        "Main roof",
        measured("148'-0\""),
        (a, b, c, d, e, f),
        (
            Edge("W", a, b, wall, "Plum Lane"),
            Edge("N", b, c, wall, "Amber Street"),
            Edge("E", c, d, low),
            Edge("SE", d, e, low),
            Edge("S2", e, f, None),
            Edge("S", f, a, wall),
        ),
        (
            Obstacle(
                "P1",
                "Penthouse",
                (
                    at("30 ft", "22 ft"),
                    at("52 ft", "22 ft"),
                    at("52 ft", "34 ft"),
                    at("30 ft", "34 ft"),
                ),
                measured("12'-0\""),
            ),
            Obstacle(
                "K1",
                "Skylight",
                (
                    at("80 ft", "34 ft"),
                    at("90 ft", "34 ft"),
                    at("90 ft", "40 ft"),
                    at("80 ft", "40 ft"),
                ),
            ),
        ),
        (
            Anchor("A1", at("14 ft", "40 ft"), "bolted"),
            Anchor("A2", at("28 ft", "40 ft"), "bolted"),
            Anchor("A3", at("44 ft", "40 ft"), "bolted"),
            Anchor("A4", at("60 ft", "40 ft"), "bolted", standing=AnchorStanding.CONDITIONAL),
            Anchor("A5", at("96 ft", "46 ft"), "bolted"),
            Anchor("A6", at("20 ft", "12 ft"), "bolted", standing=AnchorStanding.OUT_OF_SERVICE),
        ),
    )


def drops() -> tuple[Drop, ...]:
    """Five drops: two alike, one with gaps in what is stated, one on another edge, one empty."""
    return (
        drop(
            "N-01",
            "N",
            "4 ft",
            (point("SP1", "6 ft", "A1"), point("SP2", "22 ft", "A2")),
            (
                Lifeline("LL1", "A1", station=length("11 ft")),
                Lifeline("LL2", "A2", station=length("17 ft")),
            ),
        ),
        drop(
            "N-02",
            "N",
            "24 ft",
            (
                point(
                    "SP1",
                    "26 ft",
                    "A2",
                    beam_support(reach="5'-0\"", backspan="11'-1 1/2\"", pieces=20),
                ),
                point("SP2", "42 ft", "A3", beam_support(backspan=None, from_stack=True)),
            ),
            (Lifeline("LL1", "A3"),),
        ),
        drop(
            "N-03",
            "N",
            "50 ft",
            (
                point("SP1", "52 ft", "A4", beam_support(setback=None, beam="BX", reach=None)),
                SuspensionPoint(
                    "SP2",
                    length("68 ft"),
                    "H1",
                    other_support=OtherSupport(OtherSupportKind.PARAPET_CLAMP, measured("1'-2\"")),
                ),
            ),
        ),
        drop("W-01", "W", "10 ft", (point("SP1", "12 ft", "A6"), point("SP2", "28 ft", "A1"))),
        drop("E-01", "E", "5 ft", ()),
    )


def project(units: Style = Style.US) -> Project:
    """The invented project."""
    return Project(
        FORMAT,
        Site(
            "Quince Court <Tower> & Annex",
            "Invented City",
            (roof(),),
            owner="Quince Owners",
            north=0.35,
            invented="a made-up building for tests",
        ),
        Basis((RuleChoice("us-osha-1926-subpart-l", "1996"),)),
        kit(),
        drops(),
        units=units,
        prepared_by="J. Doe (invented)",
        number="TEST-1",
    )


def with_site_name(name: str) -> Project:
    """The project with another name of its site."""
    one = project()
    return replace(one, site=replace(one.site, name=name))
