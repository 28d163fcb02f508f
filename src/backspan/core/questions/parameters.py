"""The values that topics take, each described once."""

from __future__ import annotations

from dataclasses import replace

from backspan.core.model.evidence import Sign
from backspan.core.quantities import FORCE, LENGTH, RATIO
from backspan.core.quantities.named import QUANTITIES
from backspan.core.questions.shape import Kind, Parameter

#: The rule set a question is asked under where it names none.
DEFAULT_RULES = "us-osha-1926-subpart-l@1996"


def _of(name: str, *, needed: bool = True) -> Parameter:
    """The value of a question that is a number of the project."""
    one = QUANTITIES[name]
    return Parameter(
        one.asked,
        f"{one.words}, {one.hint}" if one.hint else one.words,
        Kind.COUNT if one.dimension is None else Kind.QUANTITY,
        dimension=one.dimension,
        needed=needed,
        sign=Sign.NOT_NEGATIVE if one.zero else Sign.POSITIVE,
    )


RATED, REACH, BACKSPAN = _of("rated_load"), _of("reach"), _of("backspan")
PIECE, PIECES, PIECE_LENGTH = _of("piece_mass"), _of("pieces"), _of("piece_length")
STALL = _of("stall_load", needed=False)
BEAM, TIP, TAIL_GAP = _of("beam_length"), _of("tip_beyond_line"), _of("tail_gap")
BEAM_MASS = _of("beam_mass", needed=False)
STALL_RATIO = Parameter(
    "stall-ratio", "stall load over rated load of the hoist", dimension=RATIO, needed=False
)
RULES = Parameter(
    "rules",
    f"rule set; without it {DEFAULT_RULES}",
    Kind.WORD,
    needed=False,
)
PER_ROW = Parameter("per-row", "pieces side by side in one row (else 1)", Kind.COUNT, needed=False)
SHIFT = Parameter(
    "shift",
    "how far the fulcrum moves inboard (with a minus sign: outboard)",
    dimension=LENGTH,
    sign=Sign.ANY,
)
LOAD = Parameter("load", "load on the suspension line", dimension=FORCE)

#: What rules want that multiply another load than the hoist's.
STAGE_LOADS = tuple(
    _of(name, needed=False)
    for name in ("dead_mass", "intended_load", "rope_mass", "bottom_weight", "limiter_trip")
)


def optional(parameter: Parameter) -> Parameter:
    """The same value where a topic can do without it."""
    return replace(parameter, needed=False)


#: What may be wanted of the beam where its own weight counts.
BEAM_WEIGHT = (optional(BEAM), BEAM_MASS, optional(TIP))

#: The parameter that supplies an input of a check.
SUPPLIES = {one.name: one.asked for one in QUANTITIES.values() if one.asked}
