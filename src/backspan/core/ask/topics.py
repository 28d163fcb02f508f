"""The register of topics: each a check and what is sought of it, and what a dry run of it reads.

A topic's values are those its sums read of a beam on which all is stated: under the rule set that
is taken where none is named they are needed, those only other rules or the beam's own weight ask
for may be left out.
"""

from __future__ import annotations

import datetime
from collections.abc import Mapping, Sequence
from functools import partial

from backspan.core.ask.beam import SIZES as BEAM_SIZES
from backspan.core.ask.beam import WORDS as BEAM_WORDS
from backspan.core.ask.beam_aluminium import answer_beam_of
from backspan.core.ask.dry_run import dry_run
from backspan.core.ask.imagined import DEFAULT_RULES
from backspan.core.ask.on_stage import LOADS, answer_clearance, answer_lifeline, answer_share
from backspan.core.ask.others import (
    LABEL,
    answer_bearing,
    answer_compare,
    answer_formula,
    answer_hoist,
    answer_shift,
    answer_stack,
    answer_stall,
)
from backspan.core.ask.power import answer_cord, answer_generator
from backspan.core.ask.pulling_ropes import answer_sling, answer_stretch, answer_tieback
from backspan.core.ask.shape import (
    Answer,
    Asked,
    Given,
    Kind,
    Parameter,
    QuestionError,
    Topic,
    parameter_of,
)
from backspan.core.ask.sought import BACKSPAN, PIECES, REACH, answer_sought
from backspan.core.ask.suspension_line import answer_clips, answer_rope
from backspan.core.errors import quoted
from backspan.core.mechanics import FORMULAS
from backspan.core.mechanics.formula_table import FORMULA_TABLE
from backspan.core.model.basis import Confirmation
from backspan.core.model.evidence import Sign
from backspan.core.quantities import ANGLE, FORCE, LENGTH, PRESSURE, RATIO, Style
from backspan.core.review.naming import suggested
from backspan.core.rules.selected import RuleLibrary
from backspan.core.worked.symbols import SYMBOLS
from backspan.core.worked.table import describe

#: Loads that only rules ask for which set no hoist.
OF_OTHER_RULES = ("dead_mass", "intended_load", "rope_mass", "bottom_weight", "limiter_trip")

#: What the maker of clips says of them on a rope, and what is found of those in place.
OF_A_SHEET = ("rope_diameter", "sheet_clip_count", "sheet_turnback", "sheet_torque")
OF_CLIPS = ("clip_count", "clip_spacing", "clip_turnback", "clip_torque")

RULES = Parameter("rules", f"rule set; without it {DEFAULT_RULES}", Kind.WORD, needed=False)
PER_ROW = Parameter("per-row", "pieces side by side in one row (else 1)", Kind.COUNT, needed=False)
STALL_RATIO = Parameter(
    "stall-ratio", "stall load over rated load of the hoist", dimension=RATIO, needed=False
)
SHIFT = Parameter(
    "shift",
    "how far the fulcrum moves inboard (with a minus sign: outboard)",
    dimension=LENGTH,
    sign=Sign.ANY,
)


def takes(
    *without: str, optional: Sequence[str] = (), from_stack: bool = False
) -> tuple[Parameter, ...]:
    """What a dry run of the sums reads, less some names; what is `optional` may be left out."""
    needed, wanted = dry_run(from_stack=from_stack)
    found = [
        parameter_of(name, needed=name in needed and name not in optional)
        for name in (*needed, *wanted)
        if name not in without
    ]
    found += [PER_ROW] if from_stack else []
    return (*sorted(found, key=lambda one: not one.needed), RULES)


def _angle(name: str, help_text: str) -> Parameter:
    return Parameter(name, help_text, dimension=ANGLE, needed=False, sign=Sign.NOT_NEGATIVE)


def _force(name: str, help_text: str, *, needed: bool = False) -> Parameter:
    return Parameter(name, help_text, dimension=FORCE, needed=needed)


def _length(name: str, help_text: str, sign: Sign = Sign.NOT_NEGATIVE) -> Parameter:
    return Parameter(name, help_text, dimension=LENGTH, needed=False, sign=sign)


def _placed(number: str) -> tuple[Parameter, ...]:
    """A load on the stage, and where it is."""
    needed = not number
    return (
        Parameter(f"load{number}", "weight of people or a thing", dimension=FORCE, needed=needed),
        Parameter(
            f"at{number}",
            "where that is, from the left line; beyond it with a minus sign",
            dimension=LENGTH,
            needed=needed,
            sign=Sign.ANY,
        ),
    )


def _hoists() -> tuple[Parameter, ...]:
    """What hoists draw on one cord or one generator."""
    return (
        parameter_of("supply_voltage", needed=True),
        parameter_of("running_current", needed=True),
        Parameter("hoists", "hoists on it, all lifting at once", Kind.COUNT),
        parameter_of("starting_current", needed=False),
        Parameter("starting", "hoists that start at once (else all)", Kind.COUNT, needed=False),
        Parameter("phases", "phases of the motors, 1 or 3", Kind.COUNT),
    )


def _of_formula(name: str) -> tuple[Parameter, ...]:
    described = describe(FORMULAS[name], FORMULA_TABLE)
    return tuple(
        Parameter(one, SYMBOLS[one].meaning, dimension=dimension)
        for one, dimension in described.parameters
    )


#: Every topic, in the order they are listed.
TOPICS: tuple[Topic, ...] = (
    Topic(
        "counterweight",
        "How many pieces does this beam need, or do these hold?",
        takes(optional=("pieces",)),
        "rated=1000lb stall=1250lb reach=4ft backspan=11ft6in piece=55lb",
        partial(answer_sought, what=PIECES, notes=LABEL),
    ),
    Topic(
        "reach",
        "How far out may the suspension line hang with these pieces?",
        takes("reach"),
        "rated=1000lb stall=1250lb backspan=11ft6in pieces=40 piece=55lb",
        partial(answer_sought, what=REACH, notes=LABEL),
    ),
    Topic(
        "backspan",
        "How short may the backspan be with these pieces?",
        takes("backspan"),
        "rated=1000lb stall=1250lb reach=2ft pieces=20 piece=55lb",
        partial(answer_sought, what=BACKSPAN, notes=LABEL),
    ),
    Topic(
        "shift",
        "The fulcrum moves and the pieces stay: does it still hold?",
        (SHIFT, *takes()),
        "shift=6in rated=1000lb stall=1250lb reach=2ft backspan=11ft pieces=18 piece=55lb",
        answer_shift,
    ),
    Topic(
        "hoist",
        "How large a hoist may hang here with these pieces?",
        (*takes("rated_load", "stall_load", *OF_OTHER_RULES), STALL_RATIO),
        "reach=4ft backspan=11ft6in pieces=26 piece=55lb stall-ratio=1.25",
        answer_hoist,
    ),
    Topic(
        "stack",
        "Where is the middle of the stack, does it fit, how many pieces?",
        takes(optional=("pieces", "rated_load"), from_stack=True),
        "beam=18ft tip=0in reach=3ft tail-gap=0in piece-length=12in piece=55lb rated=1000lb",
        answer_stack,
    ),
    Topic(
        "bearing",
        "What does the fulcrum ask of its surface, or does that carry it?",
        (
            *takes(optional=("beam_length", "tip_beyond_line", "beam_mass")),
            parameter_of("rear_stand", needed=True),
            parameter_of("plate_length", needed=True),
            parameter_of("plate_width", needed=True),
            *(parameter_of(f"pad_{one}", needed=False) for one in ("length", "width", "thickness")),
            parameter_of("surface_strength", needed=False),
        ),
        "rated=1000lb stall=2500lb reach=2ft backspan=10ft piece=55lb pieces=16 beam=18ft tip=6in"
        " beam-mass=200lb rear-stand=10ft plate-length=2ft plate-width=2ft",
        answer_bearing,
    ),
    Topic(
        "stall",
        "At what load may this hoist stall?",
        (parameter_of("rated_load", needed=True), parameter_of("stall_load", needed=False), RULES),
        "rated=1000lb stall=3000lb",
        answer_stall,
    ),
    Topic(
        "rope",
        "How large a hoist does this rope carry, where its end is made?",
        (
            parameter_of("breaking_force", needed=True),
            parameter_of("efficiency", needed=True),
            parameter_of("rated_load", needed=False),
            parameter_of("stall_load", needed=False),
            RULES,
        ),
        "breaking=8520lb keeps=0.8 rated=1000lb stall=2500lb",
        answer_rope,
    ),
    Topic(
        "clips",
        "How are the clips of this sheet set on the rope, or do these hold?",
        (
            *(parameter_of(name, needed=True) for name in OF_A_SHEET),
            *(parameter_of(name, needed=False) for name in OF_CLIPS),
            RULES,
        ),
        "diameter=5/16in maker-clips=2 maker-turnback=5.5in maker-torque=30ft-lb",
        answer_clips,
    ),
    Topic(
        "tieback",
        "Does a tieback at this angle hold alone, or do two as a pair; what do they pull?",
        (
            parameter_of("tieback_angle", needed=True),
            _angle("other-angle", "the same of one on the other side of the beam"),
            _force("held", "force along the beam that is held, such as the rope's strength"),
            _angle("down", "by how much they fall away from the level"),
            RULES,
        ),
        "angle=20deg other-angle=35deg held=6800lb down=15deg",
        answer_tieback,
    ),
    Topic(
        "sling",
        "What does each leg of a sling pull?",
        (
            _force("load", "load that hangs on the two legs", needed=True),
            _angle("from-horizontal", "angle of a leg above the horizontal"),
            _angle("from-vertical", "angle of a leg off the vertical"),
        ),
        "load=2000lb from-horizontal=60deg",
        answer_sling,
    ),
    Topic(
        "stretch",
        "How far does a rope stretch, and how far out of level does that bring a stage?",
        (
            _force("load", "load on the rope", needed=True),
            _force("other-load", "load on the rope of the stage's other end"),
            Parameter("length", "length of rope that hangs", dimension=LENGTH),
            parameter_of("rope_diameter", needed=True),
            Parameter(
                "metal",
                "section of the wires over the diameter squared, from the maker's sheet",
                dimension=RATIO,
                needed=False,
            ),
            Parameter(
                "modulus",
                "modulus of elasticity, from the maker's sheet",
                dimension=PRESSURE,
                needed=False,
            ),
        ),
        "load=1085lb other-load=415lb length=200ft diameter=5/16in",
        answer_stretch,
    ),
    Topic(
        "hoist-share",
        "What does each hoist carry, with people and things where they are?",
        (
            parameter_of("dead_mass", needed=True),
            parameter_of("stirrup_spacing", needed=True),
            *(one for number in LOADS for one in _placed(number)),
            parameter_of("rated_load", needed=False),
        ),
        "dead=600lb apart=20ft load=500lb at=3ft load-2=400lb at-2=2ft rated=1000lb",
        answer_share,
    ),
    Topic(
        "clearance",
        "How far down does a fall go, and is that in time above what is below?",
        (
            parameter_of("lanyard_length", needed=True),
            parameter_of("deceleration", needed=True),
            parameter_of("elongation", needed=True),
            Parameter("line", "length of lifeline from its anchor to the rider", dimension=LENGTH),
            parameter_of("grab_slide", needed=True),
            _length("above", "lanyard's attachment above the D-ring; below: minus", Sign.ANY),
            _length("shift", "what harness and D-ring give way by"),
            _length("slack", "line that goes slack where it slides along the edge"),
            _length("height", "height of the deck above the level below"),
        ),
        "lanyard=3ft deceleration=3.5ft elongation=0.03 line=150ft slide=6in height=25ft",
        answer_clearance,
    ),
    Topic(
        "lifeline-length",
        "How long does a lifeline have to be for this drop?",
        (
            Parameter("run", "across the roof, from its anchor to the edge", dimension=LENGTH),
            _length("wall", "height of the parapet it goes over"),
            Parameter("drop", "from the roof down to the lowest place", dimension=LENGTH),
        ),
        "run=12ft wall=42in drop=130ft",
        answer_lifeline,
    ),
    Topic(
        "cord",
        "What does this cord leave of the voltage at the hoists, or how long may it be?",
        (
            *_hoists(),
            parameter_of("conductor_area", needed=False),
            parameter_of("conductor_resistance", needed=False),
            parameter_of("cord_length", needed=False),
            _length("more", "cord to be added to that", Sign.POSITIVE),
            parameter_of("least_voltage", needed=False),
            parameter_of("most_drop", needed=False),
            parameter_of("cord_linear_mass", needed=False),
        ),
        "volts=220V amps=10A hoists=2 phases=1 start-amps=40A gage=8AWG length=200ft more=100ft"
        " least-volts=198V cord-mass=0.5lb/ft",
        answer_cord,
    ),
    Topic(
        "generator",
        "Does this generator run and start the hoists?",
        (
            *_hoists(),
            parameter_of("generator_rating", needed=True),
            parameter_of("generator_starting", needed=False),
        ),
        "volts=230V amps=10A hoists=2 phases=1 start-amps=45A starting=1 set=5kVA"
        " set-start=12.5kVA",
        answer_generator,
    ),
    Topic(
        "beam",
        "Does this beam take its line's load over the fulcrum, and how far may it reach?",
        (
            *BEAM_WORDS,
            *(parameter_of(name, needed=False) for name in BEAM_SIZES),
            *(parameter_of(one, needed=True) for one in ("yield_strength", "rated_load", "reach")),
            parameter_of("unbraced_length", needed=False),
            parameter_of("backspan", needed=False),
            *(parameter_of(name, needed=False) for name in ("beam_mass", "beam_length")),
            parameter_of("tip_beyond_line", needed=False),
            RULES,
        ),
        "shape=W6x12 yield=50ksi rated=1000lb reach=5ft backspan=10ft unbraced=12ft beam=18ft"
        " beam-mass=216lb tip=6in",
        answer_beam_of,
    ),
    Topic(
        "moment",
        "How hard does a load turn the beam about its fulcrum?",
        _of_formula("tipping_moment"),
        "load=2000lb reach=8ft",
        partial(answer_formula, "tipping_moment", "moment", "note.moment-practice"),
    ),
    Topic(
        "compare",
        "How many pieces does each rule set ask for?",
        takes(optional=("pieces",)),
        "rated=1000lb stall=1250lb reach=4ft backspan=11ft6in piece=55lb dead=900lb live=700lb",
        answer_compare,
    ),
)


def topic_of(name: str) -> Topic:
    """The topic of that name; QuestionError with what was meant."""
    found = next((topic for topic in TOPICS if topic.id == name), None)
    if found is None:
        names = [topic.id for topic in TOPICS]
        expected = suggested(name, names, what="topics")
        raise QuestionError(f"there is no topic {quoted(name)}; {expected}")
    return found


def answer(
    topic: Topic,
    values: Mapping[str, Given],
    library: RuleLibrary,
    *,
    style: Style,
    on: datetime.date,
    confirmations: Sequence[Confirmation] = (),
) -> Answer:
    """What a topic answers for values read by `read_values`, told in one style of units.

    Raises QuestionError for values that make no question, such as a fulcrum moved past the line.
    """
    return topic.answer(Asked(values, library, style, on, tuple(confirmations)))
