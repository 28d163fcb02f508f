"""What each beam presses on the roof, for the structural engineer: as stated, decides nothing.

Idle, at the rated load of its hoist, with the factors of the rules in force, and the most that can
come on the fulcrum in service: all that hangs at rated load and lies on the beam, the tail about to
lift. Of a backspan known two ways the fulcrum is told by the shorter and the rear stand by the
longer, whichever presses it more. What is not known is None, never nought.
"""

from __future__ import annotations

import math

from backspan.core.checks.bearing import TOPIC
from backspan.core.findings import DoesNotApply, Imposed, Pressed, Reactions
from backspan.core.mechanics.bearing import imposed_load
from backspan.core.model.evidence import StatedValue
from backspan.core.model.rigs import Fulcrum, RearBearing
from backspan.core.model.site import Edge
from backspan.core.numbers import at_least, root, surely_nothing
from backspan.core.quantities import FORCE, LENGTH, PRESSURE, Amount, Dimension
from backspan.core.rules.shape import FactorOnLoad
from backspan.core.sheet.case import Case
from backspan.core.sheet.load_on_line import load_on_line
from backspan.core.sheet.moments import factor_values, support_reads
from backspan.core.sheet.reactions import most_behind, on_two_stands
from backspan.core.sheet.reads import UNKNOWN, read_of
from backspan.core.sheet.sheet import BareSheet
from backspan.core.sheet.subjects import BeamSubject, counterweighted


def reactions(case: Case) -> tuple[Reactions, ...]:
    """One for each counterweighted beam of the drop."""
    beams = counterweighted(case, TOPIC)
    return tuple(_of_beam(case, one) for one in beams if not isinstance(one, DoesNotApply))


def _of_beam(case: Case, beam: BeamSubject) -> Reactions:
    support, sheet = support_reads(case, beam), BareSheet({}, {})
    stand = read_of("rear_stand", beam.support, beam.place)
    stands = on_two_stands(sheet, support.beam, stand)
    rated = sheet.read(support.line.rated_load)
    idle = most_behind(sheet, stands, support.beam)

    def behind(load: float) -> float:
        return at_least(stands.rear(sheet, load), least=0.0)

    def front(load: float) -> float:
        return stands.front(sheet, load, carried_behind=behind(load))

    fulcrum = beam.support.fulcrum
    setback = _number(None if fulcrum is None else fulcrum.setback)
    values = [one for rules in case.under(TOPIC) for one in factor_values(rules, TOPIC)]
    factored = [
        (value, rule.factor, load_on_line(sheet, support.line, rule.load))
        for value in values
        if isinstance(rule := value.content, FactorOnLoad)
    ]
    return Reactions(
        subject=beam.name,
        kind=None if fulcrum is None else str(fulcrum.kind),
        rated_load=_force(rated),
        front=Pressed(
            at=_place(case.edge, beam.point.station, setback),
            idle=_force(front(0.0)),
            rated=_force(front(rated)),
            imposed=tuple(
                Imposed(value, _force(sheet.do(imposed_load, factor=factor, reaction=front(load))))
                for value, factor, load in factored
            ),
            most=_force(stands.front(sheet, rated, carried_behind=0.0)),
            **_plate(fulcrum),
            pad=_pad(fulcrum),
        ),
        rear=Pressed(
            at=_place(case.edge, beam.point.station, setback + stand.as_stated),
            idle=_force(idle),
            rated=_force(behind(rated)),
            imposed=tuple(
                Imposed(value, _force(sheet.do(imposed_load, factor=factor, reaction=idle)))
                for value, factor, _ in factored
            ),
            most=_force(idle),
            **_plate(beam.support.rear),
            pad=_pad(beam.support.rear),
        ),
    )


def _plate(stands_on: Fulcrum | RearBearing | None) -> dict[str, Amount | None]:
    """The plate and the strength of its surface, as stated."""
    fields: tuple[tuple[str, Dimension], ...] = (
        ("plate_length", LENGTH),
        ("plate_width", LENGTH),
        ("surface_strength", PRESSURE),
    )
    return {
        name: _amount(_number(None if stands_on is None else getattr(stands_on, name)), of)
        for name, of in fields
    }


def _pad(
    stands_on: Fulcrum | RearBearing | None,
) -> tuple[Amount | None, Amount | None, Amount | None] | None:
    """A pad under the plate, as stated; None where there is none."""
    pad = None if stands_on is None else stands_on.pad
    if pad is None:
        return None
    length, width, thickness = (
        _amount(_number(one), LENGTH) for one in (pad.length, pad.width, pad.thickness)
    )
    return length, width, thickness


def _place(edge: Edge, station: float, inward: float) -> tuple[Amount, Amount] | None:
    """A place on the plan: along the edge from its start, then in from the face to its right."""
    (x, y), (end_x, end_y) = edge.start, edge.end
    run, rise = end_x - x, end_y - y
    long = root(run * run + rise * rise)
    if surely_nothing(long) or math.isnan(inward):
        return None
    along = (run / long, rise / long)
    return (
        Amount(x + along[0] * station + along[1] * inward, LENGTH),
        Amount(y + along[1] * station - along[0] * inward, LENGTH),
    )


def _number(stated: StatedValue[float] | None) -> float:
    return UNKNOWN if stated is None else stated.value


def _force(value: float) -> Amount | None:
    return _amount(value, FORCE)


def _amount(value: float, of: Dimension) -> Amount | None:
    return None if math.isnan(value) else Amount(value, of)
