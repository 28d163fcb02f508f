"""What a beam on two stands presses on: its rear stand where it stands, and its fulcrum."""

from __future__ import annotations

from backspan.core.quantities import Area, Force, Length, Moment, Pressure, Ratio
from backspan.core.worked.formula import formula


@formula(symbol="N")
def rear_reaction(*, resisting: Moment, load: Force, reach: Length, rear_stand: Length) -> Force:
    """Reaction of the rear stand while it still carries; negative where the tail would lift.

    Source: statics: moments about the fulcrum.
    """
    return (resisting - load * reach) / rear_stand


@formula(symbol="R")
def front_reaction(
    *, load: Force, counterweight: Force, beam_weight: Force, carried_behind: Force
) -> Force:
    """Reaction of the fulcrum: all that hangs and lies on the beam, less what the rear carries.

    Source: statics: vertical forces.
    """
    return load + counterweight + beam_weight - carried_behind


@formula(symbol="F")
def imposed_load(*, factor: Ratio, reaction: Force) -> Force:
    """What a surface has to carry without failure: the factor of a rule on what is imposed.

    Source: 29 CFR 1926.451(d)(1).
    """
    return factor * reaction


@formula(symbol="w_r")
def room_across(*, to_edge: Length, in_doubt: Length) -> Length:
    """How wide a plate counts whose centre is this far from the edge of what it stands on.

    Source: geometry; what presses evenly presses around its own centre.
    """
    return 2 * (to_edge - in_doubt)


@formula(symbol="d_s")
def spread_side(*, plate_side: Length, pad_spread: Ratio, pad_thickness: Length) -> Length:
    """Side of what a plate presses through a pad under it, if the pad is large enough for that.

    Source: geometry; how far it spreads is the rule value's.
    """
    return plate_side + 2 * pad_spread * pad_thickness


@formula(symbol="A")
def pressed_area(*, pressed_length: Length, pressed_width: Length) -> Area:
    """Area that a plate or a pad presses: no more of a pad than a plate spreads to.

    Source: geometry.
    """
    return pressed_length * pressed_width


@formula(symbol="p")
def bearing_pressure(*, factor: Ratio, reaction: Force, plate_area: Area) -> Pressure:
    """Pressure that the surface has to carry, with the factor of the rule.

    Source: 29 CFR 1926.451(d)(1), a multiple of the load that is imposed, over its area.
    """
    return factor * reaction / plate_area
