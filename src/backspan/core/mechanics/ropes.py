"""What a suspension line must carry, and what it carries where its end is made."""

from __future__ import annotations

from backspan.core.quantities import Force, Ratio
from backspan.core.worked.formula import formula


@formula(symbol="F_req")
def load_to_carry(*, factor: Ratio, load: Force) -> Force:
    """Force that a suspension line has to be able to carry, with the factor of the rule.

    Source: 29 CFR 1926.451(a)(4), a multiple of the load on the rope.
    """
    return factor * load


@formula(symbol="F_end")
def strength_at_end(*, breaking_force: Force, efficiency: Ratio) -> Force:
    """Force that a rope carries where its end is made: the share of its breaking force kept there.

    Source: rope makers' tables of end terminations: efficiency times breaking force.
    """
    return efficiency * breaking_force
