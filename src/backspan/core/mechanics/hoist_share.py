"""What each of two hoists of a stage carries, by where people stand and material lies.

Statics of a deck on two lines, L apart. A weight W at x from the left line brings W (L - x)/L on it
and W x/L on the right one: its arm is how far it is from the other line. Beyond a line the arm is
longer than L, so more than W comes on the near hoist, and the far line is lifted by what is too
much. All that hangs besides is taken as even: half of it on each line (common practice, no source).
"""

from __future__ import annotations

from backspan.core.quantities import Force, Length
from backspan.core.worked.formula import formula


@formula(symbol="x_o")
def deck_beyond_line(*, stage_length: Length, stirrup_spacing: Length) -> Length:
    """How far the deck reaches beyond each line, with the lines placed evenly.

    Source: geometry.
    """
    return (stage_length - stirrup_spacing) / 2


@formula(symbol="x_m")
def half_way(*, whole: Length) -> Length:
    """The middle of a length.

    Source: geometry.
    """
    return whole / 2


@formula(symbol="P_x")
def share_of_load(*, placed_load: Force, arm: Length, stirrup_spacing: Length) -> Force:
    """What one load brings on a line: its weight by its distance from the other line.

    Source: statics, moments about the other line.
    """
    return placed_load * arm / stirrup_spacing


@formula(symbol="P_h")
def hoist_share(*, dead_load: Force, shares: Force) -> Force:
    """What a hoist carries: half of what hangs even, and what comes of each load.

    Source: statics of a symmetric two-point stage.
    """
    return dead_load / 2 + shares


@formula(symbol="P_D2")
def half_of_dead(*, dead_load: Force) -> Force:
    """What holds the far line taut when nobody stands near it.

    Source: statics of a symmetric two-point stage.
    """
    return dead_load / 2
