"""The values that topics take, each described once."""

from __future__ import annotations

from dataclasses import replace

from backspan.core.model.evidence import Sign
from backspan.core.quantities import FORCE, LENGTH, MASS, RATIO
from backspan.core.questions.shape import Kind, Parameter

#: The rule set a question is asked under where it names none.
DEFAULT_RULES = "us-osha-1926-subpart-l@1996"

RATED = Parameter("rated", "rated load of the hoist, from its label", dimension=FORCE)
REACH = Parameter("reach", "from the fulcrum out to the suspension line", dimension=LENGTH)
BACKSPAN = Parameter(
    "backspan", "from the fulcrum in to the middle of the counterweight", dimension=LENGTH
)
PIECE = Parameter("piece", "mass of one piece, from its stamp", dimension=MASS)
PIECES = Parameter("pieces", "pieces on this one beam", Kind.COUNT, sign=Sign.NOT_NEGATIVE)
STALL = Parameter(
    "stall",
    "stall load of the hoist, or the load at which its limiter cuts power",
    dimension=FORCE,
    needed=False,
)
STALL_RATIO = Parameter(
    "stall-ratio", "stall load over rated load of the hoist", dimension=RATIO, needed=False
)
RULES = Parameter(
    "rules",
    f"rule set; without it {DEFAULT_RULES}",
    Kind.WORD,
    needed=False,
)
BEAM = Parameter("beam", "full length of the beam as assembled", dimension=LENGTH)
TIP = Parameter(
    "tip",
    "from the suspension line to the front end of the beam",
    dimension=LENGTH,
    sign=Sign.NOT_NEGATIVE,
)
TAIL_GAP = Parameter(
    "tail-gap",
    "from the tail end of the beam to the first piece",
    dimension=LENGTH,
    sign=Sign.NOT_NEGATIVE,
)
PIECE_LENGTH = Parameter(
    "piece-length", "length of beam that one row of pieces takes", dimension=LENGTH
)
PER_ROW = Parameter("per-row", "pieces side by side in one row (else 1)", Kind.COUNT, needed=False)
BEAM_MASS = Parameter(
    "beam-mass",
    "mass of the beam: wanted where its own weight counts",
    dimension=MASS,
    needed=False,
)
SHIFT = Parameter(
    "shift",
    "how far the fulcrum moves inboard (with a minus sign: outboard)",
    dimension=LENGTH,
    sign=Sign.ANY,
)
LOAD = Parameter("load", "load on the suspension line", dimension=FORCE)

#: What rules want that multiply another load than the hoist's.
STAGE_LOADS = (
    Parameter(
        "dead", "mass of all that hangs, without people and material", dimension=MASS, needed=False
    ),
    Parameter(
        "live",
        "mass of people, tools and material",
        dimension=MASS,
        needed=False,
        sign=Sign.NOT_NEGATIVE,
    ),
    Parameter("rope", "mass of the suspension line", dimension=MASS, needed=False),
    Parameter(
        "bottom",
        "weight hung on the line to steady it",
        dimension=MASS,
        needed=False,
        sign=Sign.NOT_NEGATIVE,
    ),
    Parameter(
        "limiter", "load at which the hoist's limiter cuts power", dimension=FORCE, needed=False
    ),
)


def optional(parameter: Parameter) -> Parameter:
    """The same value where a topic can do without it."""
    return replace(parameter, needed=False)


#: What may be wanted of the beam where its own weight counts.
BEAM_WEIGHT = (optional(BEAM), BEAM_MASS, optional(TIP))

#: The parameter that supplies an input of a check.
SUPPLIES = {
    "rated_load": "rated",
    "stall_load": "stall",
    "limiter_trip": "limiter",
    "rope_mass": "rope",
    "bottom_weight": "bottom",
    "dead_mass": "dead",
    "intended_load": "live",
    "beam_mass": "beam-mass",
    "beam_length": "beam",
    "tip_beyond_line": "tip",
    "tail_gap": "tail-gap",
    "piece_length": "piece-length",
    "piece_mass": "piece",
    "pieces": "pieces",
    "reach": "reach",
    "backspan": "backspan",
}
