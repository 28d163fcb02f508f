"""How far a rider falls until the line has stopped them, and from which height that is in time.

The datum is the rider's feet, on the deck of the stage: the distance they go down is compared with
the deck's height above the level below, so the rider's own height is no term of it. Published sums
that start at an anchor or a D-ring count that height, or the lanyard's length, as a term more.

The line stretches in proportion to its length, which grows with depth: the same lanyard is in time
high up and too late below.
"""

from __future__ import annotations

from backspan.core.numbers import root
from backspan.core.quantities import Force, Length, Ratio
from backspan.core.worked.formula import formula


@formula(symbol="h_ff")
def free_fall(*, lanyard_length: Length, above_ring: Length) -> Length:
    """Free fall before the lanyard is taut, by its attachment's height above the D-ring.

    Source: makers' instructions for lanyards: length less that height; more, where it is below.
    """
    return lanyard_length - above_ring


@formula(symbol="L_l")
def lifeline_length(*, line_run: Length, wall_height: Length, drop_height: Length) -> Length:
    """Lifeline from its anchor over the parapet down to the lowest place of the drop.

    Source: geometry: across the roof, up the wall and down it, down the face.
    """
    return line_run + 2 * wall_height + drop_height


@formula(symbol="d_k")
def line_slack(*, line_aside: Length, line_inward: Length) -> Length:
    """Length of lifeline that goes slack where it slides along the edge to opposite its anchor.

    Source: geometry: the slanting way from the anchor to the edge, less the straight one.
    """
    return root(line_aside * line_aside + line_inward * line_inward) - line_inward


@formula(symbol="d_l")
def lifeline_stretch(*, elongation: Ratio, lifeline: Length) -> Length:
    """Length by which a lifeline stretches when it arrests a fall.

    Source: rope makers' sheets: elongation at a stated force, times the length of rope.
    """
    return elongation * lifeline


@formula(symbol="h_req")
def fall_distance(
    *,
    falls_free: Length,
    deceleration: Length,
    grab_slide: Length,
    harness_shift: Length,
    line_stretch: Length,
    line_slack: Length,
    fall_margin: Length,
) -> Length:
    """Height below the feet that a fall takes, with a margin.

    Source: makers' instructions for lanyards and for grabs on vertical lifelines: the sum of terms.
    """
    return (
        falls_free
        + deceleration
        + grab_slide
        + harness_shift
        + line_stretch
        + line_slack
        + fall_margin
    )


@formula(symbol="h_low")
def lowest_in_time(*, distance: Length, elongation: Ratio, above_level: Length) -> Length:
    """Lowest height of the deck at which a fall is stopped in time, from the distance at another.

    Source: the sum of terms, with a line that is shorter by as much as the deck is higher.
    """
    return (distance + elongation * above_level) / (1 + elongation)


@formula(symbol="F_d")
def slowing_force(*, mean_share: Ratio, most_force: Force, rider_weight: Force) -> Force:
    """Force that is left to slow a rider down, once the absorber carries their weight.

    Source: statics, with the absorber's mean force as a share of the most it arrests with.
    """
    return mean_share * most_force - rider_weight


@formula(symbol="d_req")
def opening_needed(
    *, rider_weight: Force, falls_free: Length, grab_slide: Length, slows: Force
) -> Length:
    """Length by which an absorber has to open until it has stopped its rider.

    Source: energy of the fall, taken up by a constant mean force.
    """
    return rider_weight * (falls_free + grab_slide) / slows
