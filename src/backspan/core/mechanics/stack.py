"""Formulas of a stack of counterweight; core/sheet/stack.py says how a stack is put together."""

from __future__ import annotations

from backspan.core.quantities import Force, Length, Moment, Ratio
from backspan.core.worked.formula import formula


@formula(symbol="l")
def rows_length(*, rows: Ratio, piece_length: Length) -> Length:
    """Length of beam that rows of equal pieces take.

    Source: geometry.
    """
    return rows * piece_length


@formula(symbol="c_row")
def rows_centroid(*, outer_end: Length, stack_length: Length) -> Length:
    """Centroid of equal rows, from the tail end of the beam.

    Source: geometry; Ontario safety talk on counterweights (half the length the stack takes).
    """
    return outer_end + stack_length / 2


@formula(symbol="W")
def pieces_weight(*, pieces: Ratio, piece_weight: Force) -> Force:
    """Weight of a number of equal pieces.

    Source: arithmetic.
    """
    return pieces * piece_weight


@formula(symbol="S")
def moment_about_tail(*, moment_before: Moment, counterweight: Force, centroid: Length) -> Moment:
    """First moment of the stack about the tail end, one more group added.

    Source: statics.
    """
    return moment_before + counterweight * centroid


@formula(symbol="W_sum")
def added_weight(*, weight_before: Force, counterweight: Force) -> Force:
    """Weight of the stack, one more group added.

    Source: arithmetic.
    """
    return weight_before + counterweight


@formula(symbol="x_in")
def added_length(*, length_before: Length, stack_length: Length) -> Length:
    """Distance from the tail end to the inner end of the rows so far.

    Source: geometry.
    """
    return length_before + stack_length


@formula(symbol="c")
def stack_centroid(*, moment: Moment, counterweight: Force) -> Length:
    """Centroid of the whole stack, from the tail end of the beam.

    Source: statics.
    """
    return moment / counterweight
