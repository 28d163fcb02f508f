"""Sound rigs drawn at random, and faults planted in them one at a time: none of these may pass.

A sound rig holds with room to spare, is stated whole and on the day, and is taken over for itself
as it is. A fault is one thing that anybody would stop from the stair door; each is drawn with
numbers of its own.
"""

from __future__ import annotations

import math
import random
from collections.abc import Callable, Mapping
from dataclasses import replace
from typing import Any

from backspan.core.model.evidence import Evidence
from backspan.core.model.kit import HoistRope, PieceKind, TerminationKind, TerminationMaker
from backspan.core.model.project import Project
from backspan.core.model.rigs import (
    Fastening,
    Found,
)
from backspan.core.model.seen import (
    Pin,
    Saddle,
    Tightened,
)
from backspan.core.model.site import AnchorStanding, AnchorUse
from backspan.core.model.units import Condition, LabelState, RopeDamage
from backspan.core.quantities import LENGTH, MOMENT, RATIO, parse
from backspan.core.sheet.case import Place
from backspan.core.wire import configuration_code
from tests.unit.core import rigs
from tests.unit.core.rigs import ARM, LEFT, PROJECT, RIG, STACK, put
from tests.unit.core.words.lacking_beams import BEAM_FAULTS
from tests.unit.core.words.lacking_stages import LACKS

Draw = random.Random
SITE: Place = ("site", "roofs", "ROOF")
EDGE: Place = (*SITE, "edges", "S", "parapet")
FULCRUM: Place = (*ARM, "fulcrum")
SIDES = ("L", "R")
#: Words of a stage and its hoists that stop a drop.
REFUSED = frozenset(
    {
        *("defective", "not there", "something it has to be held off", "held by suction cups"),
        *("tied to window cleaners' anchors", "not tied", "not yet", "a second level or canopy"),
        *("not insulated or not grounded", "both on one control", "not tested", "not listed"),
        "no second brake",
    }
)


def inches(number: float) -> Any:
    """An exact length taped on the roof."""
    return rigs.length(f"{round(16 * number) / 16} in")


def _on_the_way(draw: Draw) -> tuple[tuple[float, float], ...]:
    """An outline over the left tieback, which ends 59 ft along the sheet and 30 ft up it."""
    across, up = 59 * 0.3048 + draw.uniform(-0.5, 0.5), draw.uniform(7.0, 9.0)
    half, deep = draw.uniform(0.5, 2.0), draw.uniform(0.05, 0.5)
    return ((across - half, up), (across + half, up), (across, up + deep))


def sound(draw: Draw) -> Project:
    """A rig that holds, with numbers of its own, everything stated and taken over."""
    project = PROJECT
    wall, thick = draw.uniform(40.0, 46.0), draw.uniform(4.0, 16.0)
    project = put(project, (*EDGE, "height"), inches(wall))
    project = put(project, (*EDGE, "thickness"), inches(thick))
    for side in SIDES:
        arm = side_of(side)
        # A plate of 24 in has to have room behind the wall.
        setback = draw.uniform(thick + 13.0, thick + 16.0)
        reach = setback + draw.uniform(5.0, 12.0)
        backspan = draw.uniform(104.0, 130.0)
        length = draw.uniform(212.0, 240.0)
        tip = draw.uniform(2.0, 10.0)
        needed = 4 * 1000 * reach / (backspan * 55)
        # Whole rows, and at least two pieces more than hold.
        pieces = 2 * (int(needed / 2) + draw.randint(2, 4))
        stack = pieces / 2 * 3.0
        gap = length - tip - reach - backspan - stack / 2
        if gap < 1.0:
            return sound(draw)
        for place, value in (
            ((*arm, "reach"), inches(reach)),
            ((*arm, "backspan"), inches(backspan)),
            ((*arm, "rear_stand"), inches(backspan)),
            ((*arm, "tip_beyond_line"), inches(tip)),
            ((*arm, "fulcrum", "setback"), inches(setback)),
            ((*arm, "fulcrum", "height"), inches(wall + draw.uniform(1.0, 24.0))),
            ((*arm, "stack", "tail_gap"), inches(gap)),
            ((*arm, "stack", "groups", "LOT", "count"), rigs.count(pieces)),
            ((*arm, "stack", "groups", "LOT", "per_row"), 2),
        ):
            project = put(project, place, value)
        # Each side has a beam of its own length: a type of its own too.
        kind = replace(rigs.at(project, rigs.BEAM), id=f"B{side}", length=inches(length))
        kind = replace(kind, label=rigs.labelled(60))
        unit = "B-1" if side == "L" else "B-2"
        project = put(project, ("kit", "beams"), (*project.kit.beams, kind))
        project = put(project, ("kit", "units", unit, "of"), f"B{side}")
    return coded(project)


def side_of(side: str) -> Place:
    """Where the beam of a side stands."""
    return (*RIG, "suspension_points", side, "counterweighted_beam")


def coded(project: Project) -> Project:
    """Every take-over given for the rig as it is."""
    code = configuration_code(project, project.drops[0])
    return replace(
        project,
        taken_over=tuple(
            replace(one, drops=tuple(replace(drop, configuration=code) for drop in one.drops))
            for one in project.taken_over
        ),
    )


def _at(place: Place, value: object) -> Callable[[Draw, Project], Project]:
    return lambda _, project: put(project, place, value)


def _number(place: Place, low: float, high: float) -> Callable[[Draw, Project], Project]:
    """A length between two numbers of inches."""
    return lambda draw, project: put(project, place, inches(draw.uniform(low, high)))


def _beyond(name: str, of: str, more: tuple[float, float]) -> Callable[[Draw, Project], Project]:
    """A length of the left fulcrum beside another of the beam, in inches further."""

    def plant(draw: Draw, project: Project) -> Project:
        other = rigs.at(project, (*ARM, of)).value / LENGTH_INCH
        return put(project, (*FULCRUM, name), inches(other + draw.uniform(*more)))

    return plant


LENGTH_INCH = parse("1 in", LENGTH)


def _fewer(draw: Draw, project: Project) -> Project:
    """At most half the plates, and fewer than hold: with few asked for, half of a stack may do."""
    place = (*STACK, "groups", "LOT", "count", "value")
    reach, backspan = (rigs.at(project, (*ARM, name)).value for name in ("reach", "backspan"))
    needed = math.ceil(4 * 1000 * reach / (backspan * 55))
    most = max(1, min(rigs.at(project, place) // 2, needed - 1))
    return put(project, place, draw.randint(1, most))


def _shifted(draw: Draw, project: Project) -> Project:
    """The plan says another place than was found."""
    name = draw.choice(("reach", "backspan", "rear_stand"))
    found = rigs.at(project, (*ARM, name)).value
    off = draw.choice((-1, 1)) * draw.uniform(0.6, 6.0) * LENGTH_INCH
    return put(project, (*ARM, name, "planned"), found + off)


def _nobody(draw: Draw, project: Project) -> Project:
    name = draw.choice(("reach", "backspan", "tip_beyond_line", "rear_stand"))
    return put(project, (*ARM, name, draw.choice(("by", "at"))), None)


def _old(draw: Draw, project: Project) -> Project:
    day = f"{draw.randint(2019, 2025)}-{draw.randint(1, 11):02d}-{draw.randint(1, 28):02d}"
    return put(project, (*ARM, draw.choice(("reach", "backspan", "rear_stand")), "at"), day)


def _unstated(draw: Draw, project: Project) -> Project:
    name = draw.choice(("reach", "backspan", "rear_stand", "tip_beyond_line"))
    return put(project, (*ARM, name), None)


def _seen_on_the_rig(draw: Draw, project: Project) -> Project:
    name = draw.choice(("power", "rescue"))
    found = draw.choice((None, rigs.seen(Found.ABSENT), rigs.seen(Found.DEFECTIVE)))
    return put(project, (*RIG, name), found)


def _unit(draw: Draw, project: Project) -> Project:
    tag = draw.choice(("H-1", "W-1", "B-1", "LOT", "ST-1"))
    found = draw.choice((None, rigs.seen(Condition.DEFECTIVE), rigs.seen(Condition.WITHDRAWN)))
    return put(project, ("kit", "units", tag, "condition"), found)


def _anchor(draw: Draw, project: Project) -> Project:
    name, use = draw.choice((("A1", AnchorUse.SWAY_TIE), ("A3", AnchorUse.TIEBACK)))
    place = (*SITE, "anchors", name)
    field, value = draw.choice(
        (
            ("standing", AnchorStanding.OUT_OF_SERVICE),
            ("standing", AnchorStanding.CONDITIONAL),
            ("uses", (use,)),
            ("uses", ()),
            ("inspected", f"2025-{draw.randint(1, 11):02d}-{draw.randint(1, 28):02d}"),
            ("certified", f"20{draw.randint(10, 15)}-06-01"),
        )
    )
    return put(project, (*place, field), value)


def _clips(draw: Draw, project: Project) -> Project:
    """Too few, too close, too little turned back, too loose or too tight, or nobody said."""
    field, value = draw.choice(
        (
            ("count", rigs.count(draw.randint(0, 2))),
            ("spacing", inches(draw.uniform(0.5, 1.8))),
            ("turnback", inches(draw.uniform(1.0, 8.1))),
            ("torque", rigs.stated(f"{draw.uniform(1.0, 29.5):.1f} lb ft", MOMENT)),
            ("torque", rigs.stated(f"{draw.uniform(38.0, 90.0):.1f} lb ft", MOMENT)),
            ("saddle", rigs.seen(Saddle.DEAD)),
            ("saddle", rigs.seen(Saddle.MIXED)),
            ("tightened", rigs.seen(Tightened.FIRST_LOADING)),
            ("tightened", rigs.seen(Tightened.NOT_AGAIN)),
        )
    )
    stated: object = draw.choice((value, None))
    return put(project, (*rigs.RIGHT, "clips", field), stated)


def _worn(draw: Draw, project: Project) -> Project:
    """Broken or worn wires, other damage, or nobody looked."""
    share = replace(rigs.stated("0.1", RATIO), value=draw.uniform(1 / 3, 0.9))
    damages = [one for one in RopeDamage if one is not RopeDamage.NONE]
    field, value = draw.choice(
        (
            ("broken_in_lay", rigs.count(draw.randint(6, 30))),
            ("broken_in_strand", rigs.count(draw.randint(3, 9))),
            ("wire_worn", share),
            ("damage", rigs.seen(draw.choice(damages))),
        )
    )
    stated: object = draw.choice((value, None))
    return put(project, ("kit", "units", "W-1", "wear", field), stated)


#: Every fault, by what anybody would say of it.
#: A stage or hoist with one thing that nobody said, or that is refused.
STAGE_FAULTS: tuple[tuple[Place, Any], ...] = tuple(
    (place, value)
    for place, value in LACKS
    if value is None or str(getattr(value, "value", value)) in REFUSED
)

FAULTS: Mapping[str, Callable[[Draw, Project], Project]] = {
    "half the plates are gone": _fewer,
    "the line hangs inside the face": _beyond("setback", "reach", (0.0, 12.0)),
    "the beam goes through the parapet": lambda draw, project: put(
        put(project, (*EDGE, "height"), inches(draw.uniform(40.0, 46.0))),
        (*FULCRUM, "height"),
        inches(draw.uniform(0.0, 39.0)),
    ),
    "a parapet too low to rig at": _number((*EDGE, "height"), 1.0, 38.0),
    "the lines hang splayed": _number((*rigs.STAGE, "stirrup_spacing"), 100.0, 205.0),
    "the drop is narrower than its stage": _number(("drops", "D", "width"), 60.0, 220.0),
    "more hangs than the hoists lift": lambda draw, project: put(
        project, (*rigs.STAGE, "intended_load"), rigs.mass(f"{draw.randint(1301, 3000)} lb")
    ),
    "something of the stage is not as it has to be": lambda draw, project: put(
        project, *draw.choice(STAGE_FAULTS)
    ),
    "something of the beam is not as it has to be": lambda draw, project: put(
        project, *draw.choice(BEAM_FAULTS)
    ),
    "a top rail too low": _number((*RIG, "stages", 0, "found", "rail_height"), 10.0, 35.4),
    "far from the face, and nobody tied": _number(
        (*RIG, "stages", 0, "found", "to_face"), 14.6, 60.0
    ),
    "a roof too weak under the rear stand": lambda draw, project: put(
        project, (*ARM, "rear", "surface_strength", "value"), 6894.8 * draw.uniform(0.1, 2.0)
    ),
    "nobody knows what the rear stand stands on": lambda draw, project: put(
        project, (*ARM, "rear", draw.choice(("plate_length", "surface_strength"))), None
    ),
    "a rope too weak for its hoist": lambda draw, project: put(
        project, ("kit", "ropes", "W", "breaking_force", "value"), 4448.2 * draw.uniform(1.0, 6.6)
    ),
    "a rope end that keeps too little": lambda draw, project: put(
        project, ("kit", "terminations", "EYE", "efficiency", "value"), draw.uniform(0.1, 0.74)
    ),
    "hardware too weak for its hoist": lambda draw, project: put(
        project,
        ("kit", "connectors", "SH", "breaking_force", "value"),
        4448.2 * draw.uniform(1, 5.9),
    ),
    "nobody knows the strength of a shackle": lambda draw, project: put(
        project,
        ("kit", "connectors", "WLL", draw.choice(("working_load", "working_load_factor"))),
        None,
    ),
    "no hardware joins the eye": lambda draw, project: put(
        project, (*LEFT, "connectors"), draw.choice(((), None))
    ),
    "a pin that can come out": lambda draw, project: put(
        project,
        (*LEFT, "connectors", 0, "pin"),
        draw.choice((None, rigs.seen(Pin.NOT_MOUSED), rigs.seen(Pin.OPEN))),
    ),
    "a piece of hardware that is not sound": lambda draw, project: put(
        project,
        (*LEFT, "connectors", 1, "found"),
        draw.choice((None, rigs.seen(Found.ABSENT), rigs.seen(Found.DEFECTIVE))),
    ),
    "no sound thimble": lambda draw, project: put(
        project,
        (*LEFT, "thimble"),
        draw.choice((None, *(rigs.seen(one) for one in Found if one is not Found.SOUND))),
    ),
    "an end that holds no hoist's rope": lambda draw, project: put(
        project,
        ("kit", "terminations", "GRIPS", "kind"),
        draw.choice((None, TerminationKind.KNOT, TerminationKind.U_BOLT_CLIPS)),
    ),
    "an end that the crew made": lambda draw, project: put(
        project,
        ("kit", "terminations", "EYE", "made_by"),
        draw.choice((None, TerminationMaker.CREW)),
    ),
    "an end for another rope": lambda draw, project: put(
        project,
        ("kit", "terminations", "EYE", "rope_diameter", "value"),
        draw.choice((0.006, 0.0079, 0.0081, 0.0095)),
    ),
    "clips that do not hold": _clips,
    "a rope that is to be replaced": _worn,
    "a rope that ends above the street": lambda draw, project: put(
        project, (*rigs.RIGHT, "rope_length"), draw.choice((None, inches(draw.uniform(60, 1230))))
    ),
    "a hoist that may wind its rope up": lambda draw, project: put(
        project, (*rigs.HOIST, "takes_rope"), draw.choice((None, HoistRope.WINDS))
    ),
    "too few turns left on the drum": lambda draw, project: put(
        put(project, (*rigs.HOIST, "takes_rope"), HoistRope.WINDS),
        (*LEFT, "drum_turns"),
        rigs.count(draw.randint(0, 3)),
    ),
    "a vent in the way of the tieback, by the plan": lambda draw, project: put(
        project, (*SITE, "obstacles", "VENT", "outline"), _on_the_way(draw)
    ),
    "a pad under the fulcrum that nobody measured whole": lambda draw, project: put(
        project, (*FULCRUM, "pad", draw.choice(("length", "width", "thickness"))), None
    ),
    "a rope with no stop that nobody measured": lambda draw, project: put(
        project,
        (*LEFT, "end_stop"),
        draw.choice((None, *(rigs.seen(one) for one in Found if one is not Found.SOUND))),
    ),
    "nobody knows the rope or its end": lambda draw, project: put(
        project, (*LEFT, draw.choice(("rope", "termination"))), None
    ),
    "an anchor is not what it must be": _anchor,
    "a lifeline shares the anchor of a tieback": _at((*RIG, "lifelines", "LL1", "anchor"), "A1"),
    "two lifelines share an anchor": _at((*RIG, "lifelines", "LL1", "anchor"), "A4"),
    "no tieback": lambda draw, project: put(project, (*LEFT, "tiebacks"), draw.choice(((), None))),
    "no lifeline": lambda draw, project: put(project, (*RIG, "lifelines"), draw.choice(((), None))),
    "more riders than lines": lambda draw, project: put(
        project, (*RIG, "riders", "value"), draw.randint(3, 8)
    ),
    "nobody said who rides": _at((*RIG, "riders"), None),
    "sand for plates": lambda draw, project: put(
        project,
        (*rigs.PIECE, "kind"),
        draw.choice([one for one in PieceKind if not one.startswith("purpose-made")]),
    ),
    "a stack that is not locked": lambda draw, project: put(
        project,
        (*STACK, "fastening"),
        rigs.seen(draw.choice((Fastening.RESTING, Fastening.WIRE_TIE, Fastening.UNLOCKED_PIN))),
    ),
    "a label that cannot be read": lambda draw, project: put(
        project,
        (*rigs.BEAM_UNIT, "label"),
        rigs.seen(draw.choice((LabelState.UNREADABLE, LabelState.NONE))),
    ),
    "a thing that is not sound": _unit,
    "one hoist at two points": _at((*LEFT, "hoist"), "H-2"),
    "something on the rig is not there": _seen_on_the_rig,
    "not where the plan says": _shifted,
    "no plan": lambda _, project: replace(project, plan=None),
    "measured by nobody, or on no day": _nobody,
    "measured long ago": _old,
    "not measured at all": _unstated,
    "told, not measured": lambda draw, project: put(
        project,
        (*ARM, draw.choice(("reach", "backspan", "rear_stand")), "evidence"),
        draw.choice((Evidence.TOLD, Evidence.ASSUMED, Evidence.DRAWING)),
    ),
}


def planted(draw: Draw) -> tuple[str, Project]:
    """A sound rig with one fault, taken over for itself as it then is."""
    name = draw.choice(list(FAULTS))
    return name, coded(FAULTS[name](draw, sound(draw)))
