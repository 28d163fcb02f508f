"""The load a rule multiplies, where it is not simply the hoist's rated or stall load."""

from __future__ import annotations

from backspan.core.quantities import Force, Ratio
from backspan.core.worked.formula import formula


@formula(symbol="T_max")
def largest_rope_tension(*, hoist_pull: Force, rope_weight: Force, bottom_weight: Force) -> Force:
    """Largest tension at the top of a suspension line: hoist pull, rope, stabilising weight.

    Source: Australian regulator's alert 5616 on AS/NZS 1576.4.
    """
    return hoist_pull + rope_weight + bottom_weight


@formula(symbol="P")
def half_dead_full_live(*, dead_load: Force, live_load: Force) -> Force:
    """Load of one support of a two-point stage when everybody stands at its end.

    Source: New Zealand code of practice for scaffolding (1995), 8.3.4.
    """
    return dead_load / 2 + live_load


@formula(symbol="P")
def half_dead_half_live(*, dead_load: Force, live_load: Force) -> Force:
    """Load of one support of a two-point stage when everything is spread evenly.

    Source: statics of a symmetric two-point stage.
    """
    return dead_load / 2 + live_load / 2


@formula(symbol="P_cap")
def stall_cap(*, cap_factor: Ratio, rated_load: Force) -> Force:
    """Largest stall load a hoist may have for its rated load.

    Source: 29 CFR 1926.451(a)(5).
    """
    return cap_factor * rated_load
