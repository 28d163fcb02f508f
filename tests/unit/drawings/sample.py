"""The one sound rig on a roof of many edges, for the tests of the drawings. Invented."""

from __future__ import annotations

from dataclasses import replace

from backspan.core.model.kit import Kit
from backspan.core.model.project import Project
from backspan.core.model.rigs import (
    CounterweightedBeam,
    Drop,
    FulcrumKind,
    Lifeline,
    OtherSupport,
    OtherSupportKind,
    SuspensionPoint,
)
from backspan.core.model.site import Anchor, AnchorStanding, Edge, Obstacle, Point, Roof
from backspan.core.quantities import LENGTH, Style, parse
from backspan.core.sheet.case import Place
from tests.unit.core.rigs import ARM, BEAM, LEFT, PROJECT, STACKED, STAGE, at, count, length, put

GROUP: Place = ("stack", "groups", 0)

#: Where a beam states the lengths that tests change.
LENGTHS: dict[str, Place] = {
    "reach": ("reach",),
    "backspan": ("backspan",),
    "tip": ("tip_beyond_line",),
    "setback": ("fulcrum", "setback"),
    "height": ("fulcrum", "height"),
    "gap": ("stack", "tail_gap"),
}

#: Lower than the rig's drop goes, so that what reaches below the ground is drawn too.
ROOF = replace(PROJECT.site.roofs[0], level=length("100 ft"))


def metres(text: str) -> float:
    """A length in metres."""
    return parse(text, LENGTH)


def in_plan(x: int, y: int) -> Point:
    """A point in plan, given in feet."""
    return (metres(f"{x} ft"), metres(f"{y} ft"))


def rectangle(left: int, bottom: int, right: int, top: int) -> tuple[Point, ...]:
    """An outline in plan, given in feet."""
    corners = ((left, bottom), (right, bottom), (right, top), (left, top))
    return tuple(in_plan(*corner) for corner in corners)


def beam_support(
    *, pieces: int | None = None, kind: FulcrumKind | None = None, **lengths: str | None
) -> CounterweightedBeam:
    """The rig's left beam with what is given replaced; a length given as None is unstated."""
    support: CounterweightedBeam = put(at(PROJECT, ARM), ("stack", "tail_gap"), length("3 ft 6 in"))
    if pieces is not None:
        support = put(support, (*GROUP, "count"), count(pieces))
    if kind is not None:
        support = put(support, ("fulcrum", "kind"), kind)
    for name, text in lengths.items():
        support = put(support, LENGTHS[name], None if text is None else length(text))
    return support


def point(
    name: str, station: str, anchor: str | None, support: CounterweightedBeam | None = None
) -> SuspensionPoint:
    """The rig's left point elsewhere, tied back to another anchor or to none."""
    one: SuspensionPoint = at(PROJECT, LEFT)
    tied = tuple(replace(tieback, id=f"TB-{name}", anchor=anchor or "") for tieback in one.tied)
    return replace(
        one,
        id=name,
        station=metres(station),
        counterweighted_beam=support or beam_support(),
        tiebacks=() if anchor is None else tied,
    )


def lifeline(name: str, anchor: str, station: str | None = None) -> Lifeline:
    """The rig's first lifeline from another anchor, with or without its station."""
    one: Lifeline = at(PROJECT, ("drops", "D", "rig", "lifelines", "LL1"))
    passes = None if station is None else metres(station)
    return replace(one, id=name, anchor=anchor, station=passes)


def drop(
    name: str,
    edge: str,
    start: str,
    points: tuple[SuspensionPoint, ...],
    lifelines: tuple[Lifeline, ...] = (),
) -> Drop:
    """The rig's drop elsewhere, its stage hung from these points; no rig without a point."""
    one: Drop = at(PROJECT, ("drops", "D"))
    hung = put(one.rig, ("stages", 0, "from_points"), tuple(each.id for each in points))
    rig = put(put(hung, ("suspension_points",), points), ("lifelines",), lifelines)
    placed = replace(one, id=name, edge=edge, start=metres(start), height=length("100 ft"))
    return replace(placed, rig=rig if points else None)


def kit() -> Kit:
    """The rig's kit, its stage with a width, and a beam of unknown length."""
    unknown = replace(at(PROJECT, BEAM), id="BX", length=None)
    wide = put(PROJECT, (*STAGE, "width"), length("2'-6\"")).kit
    return replace(wide, beams=(*wide.beams, unknown))


def anchor(name: str, x: int, y: int, standing: AnchorStanding | None = None) -> Anchor:
    """The rig's first anchor at a point given in feet."""
    one = replace(ROOF.anchors[0], id=name, at=in_plan(x, y))
    return replace(one, standing=standing or one.standing)


def roof() -> Roof:
    """The rig's roof made L-shaped, with parapets, a penthouse, a skylight and anchors."""
    parapet = ROOF.edges[0].parapet
    wall = put(parapet, ("material",), "brick")
    low = put(put(parapet, ("height",), length("18 in")), ("thickness",), length("8 in"))
    corners = ((0, 0), (0, 62), (110, 62), (110, 22), (70, 22), (70, 0))
    a, b, c, d, e, f = (in_plan(*corner) for corner in corners)
    return replace(
        ROOF,
        outline=(a, b, c, d, e, f),
        edges=(
            Edge("W", a, b, wall, "Plum Lane"),
            Edge("N", b, c, wall, "Amber Street"),
            Edge("E", c, d, low),
            Edge("SE", d, e, low),
            Edge("S2", e, f, None),
            Edge("S", f, a, wall),
        ),
        obstacles=(
            Obstacle("P1", "Penthouse", rectangle(30, 22, 52, 34), length("12 ft")),
            Obstacle("K1", "Skylight", rectangle(80, 34, 90, 40)),
        ),
        anchors=(
            anchor("A1", 14, 40),
            anchor("A2", 28, 40),
            anchor("A3", 44, 40),
            anchor("A4", 60, 40, AnchorStanding.CONDITIONAL),
            anchor("A5", 96, 46),
            anchor("A6", 20, 12, AnchorStanding.OUT_OF_SERVICE),
        ),
    )


def with_tolerance() -> CounterweightedBeam:
    """The rig's left beam, its reach and backspan taped with a tolerance."""
    one = put(beam_support(), ("reach", "tolerance"), metres("1/4 in"))
    return put(one, ("backspan", "tolerance"), metres("1/2 in"))


def on_stand() -> CounterweightedBeam:
    """A beam on a stand, of other lengths than the rig's; they agree with one another."""
    lengths = {"height": "4'-6\"", "reach": "3 ft", "backspan": "10'-11 1/4\"", "gap": "1'-0 3/4\""}
    return beam_support(pieces=20, kind=FulcrumKind.STAND, **lengths)


def little_stated() -> CounterweightedBeam:
    """A beam of unknown length; its place, its reach and what holds its stack are not stated."""
    one = replace(beam_support(setback=None, reach=None), beam="BX")
    return put(one, ("stack", "fastening"), None)


def drops() -> tuple[Drop, ...]:
    """Five drops: two alike, one with gaps in what is stated, one on another edge, one empty."""
    taped, stacked = with_tolerance(), at(STACKED, ARM)
    alike = (point("SP1", "6 ft", "A1", taped), point("SP2", "22 ft", "A2", taped))
    unlike = (point("SP1", "26 ft", "A2", on_stand()), point("SP2", "42 ft", "A3", stacked))
    clamp = OtherSupport(OtherSupportKind.PARAPET_CLAMP, length("1'-2\""))
    clamped = replace(point("SP2", "68 ft", None), counterweighted_beam=None, other_support=clamp)
    with_gaps = (point("SP1", "52 ft", "A4", little_stated()), clamped)
    west = (point("SP1", "12 ft", "A6"), point("SP2", "28 ft", "A1"))
    lines = (lifeline("LL1", "A1", "11 ft"), lifeline("LL2", "A2", "17 ft"))
    return (
        drop("N-01", "N", "4 ft", alike, lines),
        drop("N-02", "N", "24 ft", unlike, (lifeline("LL1", "A3"),)),
        drop("N-03", "N", "50 ft", with_gaps),
        drop("W-01", "W", "10 ft", west),
        drop("E-01", "E", "5 ft", ()),
    )


def project(units: Style = Style.US) -> Project:
    """The rig's project with that kit, that roof and those drops; its name is one to escape."""
    site = replace(PROJECT.site, name="Quince Court <Tower> & Annex", roofs=(roof(),), north=0.35)
    owned = replace(PROJECT, site=replace(site, owner="Quince Owners"), kit=kit(), drops=drops())
    return replace(owned, units=units, prepared_by="J. Doe (invented)", number="TEST-1")


def with_site_name(name: str) -> Project:
    """The project with another name of its site."""
    return put(project(), ("site", "name"), name)
