"""A counterweighted beam as it stands on the roof: how it is joined, what somebody found of it."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import Any, ClassVar

from backspan.core.model.evidence import STRICT, Stated, StatedPositive
from backspan.core.quantities import Length, Pressure
from backspan.core.rules.shape import SectionForm


class Metal(StrEnum):
    """What a beam is made of; an alloy by its name and temper."""

    STEEL = "steel"
    ALLOY_6061 = "aluminium 6061-T6"
    ALLOY_6063 = "aluminium 6063-T6"


class Weld(StrEnum):
    """Whether a beam of aluminium has a weld within an inch of where it bends most."""

    WELDED = "welded over the fulcrum"
    NONE = "no weld over the fulcrum"


@dataclass(frozen=True, slots=True)
class BeamSection:
    """The section of a beam: a shape of a table by its name, or the sizes of its plates.

    An I has flanges and a web, a tube a width and a wall, a pipe a wall alone. A channel has the
    plates of an I: that it is one its `form` says, which nobody needs to state of the others.
    It is of steel where its `material` says no more. Beside a weld aluminium has less than half of
    its strength: it counts as welded over the fulcrum until `weld` says that it is not.
    """

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    shape: str | None = None
    form: SectionForm | None = None
    material: Metal | None = None
    weld: Weld | None = None
    section_depth: StatedPositive[Length] | None = None
    flange_width: StatedPositive[Length] | None = None
    web_thickness: StatedPositive[Length] | None = None
    flange_thickness: StatedPositive[Length] | None = None
    wall: StatedPositive[Length] | None = None
    yield_strength: StatedPositive[Pressure] | None = None


class Joined(StrEnum):
    """Whether a beam is of one piece."""

    ONE_PIECE = "one piece"
    SECTIONS = "sections joined"


class Web(StrEnum):
    """How the web of a beam stands; a pipe or a square tube has none."""

    VERTICAL = "web vertical"
    LEANING = "web leaning"
    NONE = "no web"


class StopBolts(StrEnum):
    """Stop bolts or shackles that keep what hangs or stands on a beam from sliding off it."""

    BOTH_ENDS = "at both ends"
    ONE_LACKS = "one end lacks one"
    NEITHER = "at neither end"


class Square(StrEnum):
    """How a beam lies on its bearing."""

    SQUARE = "square to its bearing"
    OBSTRUCTED = "at an angle, obstruction cannot be moved"
    ANGLED = "at an angle to its bearing"


class Shackle(StrEnum):
    """Where the shackle of the suspension rope hangs."""

    OVER = "directly over the stirrup"
    ASIDE = "to one side of the stirrup"


class BeamLevel(StrEnum):
    """How a beam lies, along itself and across."""

    AS_MADE = "level, or tail low as its maker shows"
    TAIL_HIGH = "tail high"
    LEANS = "leans sideways"


class BeamBow(StrEnum):
    """How far the backspan bows under its load."""

    STRAIGHT = "straight"
    ALLOWED = "bowed as its maker allows"
    MORE = "bowed more, or kinked"


class Restraint(StrEnum):
    """Whether a beam can move sideways."""

    RESTRAINED = "restrained"
    FREE = "free to move"


class Upright(StrEnum):
    """Whether a beam can turn over about its own length where it bears and is held down."""

    HELD = "held upright at each support"
    CAN_ROLL = "can roll over at a support"


class Holes(StrEnum):
    """Holes and cuts that take from the section of a beam where it bends."""

    NONE = "none where it bends"
    SOME = "holes or cuts where it bends"


class Channels(StrEnum):
    """How the channels of a pair make one beam."""

    FASTENED = "fastened, flanges out"
    LOOSE = "not fastened together"
    FLANGES_IN = "flanges in"
    NO_PAIR = "no pair of channels"


class SplicePins(StrEnum):
    """The pins or bolts of a joint between two sections."""

    LOCKED = "all in and locked"
    ONE_MISSING = "one missing"
    NOT_LOCKED = "not all locked"
    OTHERS = "other than the maker's"


class SpliceOrder(StrEnum):
    """Whether the sections that meet at a joint are those which their maker puts there."""

    MAKERS = "in the maker's order"
    OTHER = "in another order"
    NOT_KNOWN = "order not known"


class SpliceMarks(StrEnum):
    """The marks of the sections that meet at a joint."""

    MATCH = "marks match"
    NONE = "no marks"
    OTHER_SET = "marks of another set"


class JointThere(StrEnum):
    """Whether a joint is there that a plan shows, or that somebody stated."""

    THERE = "joint there"
    NOT_THERE = "no joint there"


@dataclass(frozen=True, slots=True)
class BeamSplice:
    """A joint between two sections of a beam, `from_tail` along it, and what was seen of it.

    `there` says that somebody looked for it; nobody has to where its pins, order or marks were
    seen. `sleeve` is how long the joint is along the beam, half of it on either side.
    """

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    id: str
    from_tail: StatedPositive[Length] | None = None
    pins: Stated[SplicePins] | None = None
    order: Stated[SpliceOrder] | None = None
    marks: Stated[SpliceMarks] | None = None
    there: Stated[JointThere] | None = None
    sleeve: StatedPositive[Length] | None = None

    @property
    def absent(self) -> bool:
        """Whether somebody looked for it and found none, and nobody saw anything of one."""
        seen = (self.pins, self.order, self.marks)
        gone = self.there is not None and self.there.value is JointThere.NOT_THERE
        return gone and all(one is None for one in seen)


@dataclass(frozen=True, slots=True)
class BeamFound:
    """What was found of a beam where it stands.

    `square` is of the beam on its bearings, `shackle` of the suspension rope's over the stirrup.
    `upright` and `holes` are asked of a beam that is judged by its section.
    """

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    web: Stated[Web] | None = None
    stop_bolts: Stated[StopBolts] | None = None
    square: Stated[Square] | None = None
    shackle: Stated[Shackle] | None = None
    beam_level: Stated[BeamLevel] | None = None
    beam_bow: Stated[BeamBow] | None = None
    restrained: Stated[Restraint] | None = None
    channels: Stated[Channels] | None = None
    upright: Stated[Upright] | None = None
    holes: Stated[Holes] | None = None
