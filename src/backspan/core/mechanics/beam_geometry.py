"""Where things are along a beam: inboard length, backspan, the beam's own centroid."""

from __future__ import annotations

from backspan.core.quantities import Length, Ratio
from backspan.core.worked.formula import formula


@formula(symbol="L_in")
def inboard_length(*, beam_length: Length, tip_beyond_line: Length, reach: Length) -> Length:
    """Length of the beam from the fulcrum to its tail end.

    Source: geometry; worked so in the Ontario safety talk on counterweights (L = 18 - 1 - ...).
    """
    return beam_length - tip_beyond_line - reach


@formula(symbol="b")
def backspan_to_stack(*, inboard: Length, stack_centroid: Length) -> Length:
    """Backspan: from the fulcrum to the centroid of the stack, given from the tail end.

    Source: Ontario safety talk on counterweights: the arm ends at the centre of the stack.
    """
    return inboard - stack_centroid


@formula(symbol="x_G")
def uniform_beam_centroid(*, beam_length: Length, tip_beyond_line: Length, reach: Length) -> Length:
    """Centroid of a uniform beam, inboard of the fulcrum (negative: outboard).

    Source: geometry.
    """
    return beam_length / 2 - tip_beyond_line - reach


@formula(symbol="x_G")
def beam_centroid(*, inboard: Length, centroid_from_tail: Length) -> Length:
    """Centroid of a beam whose centroid is known from its tail end, inboard of the fulcrum.

    Source: geometry.
    """
    return inboard - centroid_from_tail


@formula(symbol="r")
def inboard_to_outboard(*, inboard: Length, reach: Length) -> Ratio:
    """Inboard arm over outboard arm.

    Source: Quebec, S-2.1 r.4, s. 3.9.15.
    """
    return inboard / reach
