"""The equipment brought to the roof: hoists, ropes, terminations, beams, pieces, stages."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from enum import StrEnum
from typing import Any, ClassVar, Protocol, TypeVar

from backspan.core.model.beams import BeamSection
from backspan.core.model.evidence import (
    STRICT,
    StatedNotNegative,
    StatedPositive,
    StatedShare,
    Statement,
)
from backspan.core.model.units import Unit, UnitKind
from backspan.core.quantities import Force, Length, LinearMass, Mass, Moment, Ratio


class HoistRope(StrEnum):
    """What a hoist does with its rope."""

    CLIMBS = "climbs the rope"
    WINDS = "winds the rope on a drum"


class LabTested(StrEnum):
    """Whether a laboratory tested a hoist."""

    TESTED = "tested by a qualified laboratory"
    NOT_TESTED = "not tested"


class SecondBrake(StrEnum):
    """What a hoist has besides its normal brake."""

    BY_ITSELF = "acts by itself on overspeed"
    NONE = "no second brake"


class Listing(StrEnum):
    """Whether a laboratory tested and listed a stage of light metal."""

    LISTED = "tested and listed"
    NOT_LISTED = "not listed"
    NOT_LIGHT = "not of light metal"


@dataclass(frozen=True, slots=True)
class Hoist:
    """A powered hoist: rated and stall load, the trip point of its limiter, its own mass.

    `limiter_trip` is the load at which power is cut; a hoist without a limiter trips at its
    stall load. `takes_rope` says whether it climbs its rope or winds it up, `rope_diameter` is of
    the rope that its plate asks for.
    """

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    id: str
    name: str
    rated_load: StatedPositive[Force]
    stall_load: StatedPositive[Force] | None = None
    limiter_trip: StatedPositive[Force] | None = None
    mass: StatedPositive[Mass] | None = None
    takes_rope: HoistRope | None = None
    rope_diameter: StatedPositive[Length] | None = None
    values_from: Statement | None = None
    tested_by: LabTested | None = None
    secondary_brake: SecondBrake | None = None


class RopeKind(StrEnum):
    """What a rope is made of."""

    WIRE = "wire"
    SYNTHETIC = "synthetic fibre"
    NATURAL = "natural fibre"


@dataclass(frozen=True, slots=True)
class Rope:
    """A rope as its certificate describes it.

    Of a lifeline `elongation` is how far it stretches for its length when it arrests a fall.
    """

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    id: str
    name: str
    kind: RopeKind
    diameter: StatedPositive[Length]
    breaking_force: StatedPositive[Force] | None = None
    mass_per_length: StatedPositive[LinearMass] | None = None
    elongation: StatedPositive[Ratio] | None = None
    values_from: Statement | None = None


class TerminationKind(StrEnum):
    """What the end of a rope is made with."""

    SWAGED = "swaged"
    SPLICED = "hand-tucked splice"
    POURED_SOCKET = "poured socket"
    WEDGE_SOCKET = "wedge socket"
    U_BOLT_CLIPS = "U-bolt clips"
    FIST_GRIP_CLIPS = "fist grip clips"
    KNOT = "knot"
    SEWN = "sewn eye"


#: Ends that are held by clips, which are counted, spaced, tightened and tightened again.
CLIPPED = frozenset({TerminationKind.U_BOLT_CLIPS, TerminationKind.FIST_GRIP_CLIPS})


#: Ends that are formed on the rope, which only its maker or a qualified person may do.
FORMED = frozenset({TerminationKind.SWAGED, TerminationKind.SPLICED, TerminationKind.SEWN})

#: Ends without an eye, which need no thimble in it.
SOCKETS = frozenset({TerminationKind.POURED_SOCKET, TerminationKind.WEDGE_SOCKET})


class TerminationMaker(StrEnum):
    """Who made the end of a rope."""

    ROPE_MAKER = "rope maker"
    QUALIFIED_PERSON = "qualified person"
    CREW = "crew"


@dataclass(frozen=True, slots=True)
class ClipSheet:
    """What the maker of clips asks for, on ropes of the termination's diameter.

    `turnback` is the length of rope turned back for that count of clips.
    """

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    count: StatedPositive[int] | None = None
    turnback: StatedPositive[Length] | None = None
    torque: StatedPositive[Moment] | None = None


@dataclass(frozen=True, slots=True)
class Termination:
    """How a rope end is made, and the share of the rope's strength it keeps.

    `rope_diameter` is of the ropes that its maker made it for; of clips `clips` is their sheet.
    """

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    id: str
    name: str
    kind: TerminationKind | None = None
    made_by: TerminationMaker | None = None
    efficiency: StatedShare[Ratio] | None = None
    rope_diameter: StatedPositive[Length] | None = None
    clips: ClipSheet | None = None
    values_from: Statement | None = None


class ConnectorKind(StrEnum):
    """What joins a rope end to what holds it."""

    SHACKLE = "shackle"
    CLEVIS = "clevis"
    LINK = "link"
    HOOK = "hook with latch"


@dataclass(frozen=True, slots=True)
class Connector:
    """A piece of connecting hardware as its maker marks it.

    `working_load` times `working_load_factor` stands for a breaking force nobody states.
    """

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    id: str
    name: str
    kind: ConnectorKind
    size: StatedPositive[Length] | None = None
    breaking_force: StatedPositive[Force] | None = None
    working_load: StatedPositive[Force] | None = None
    working_load_factor: StatedPositive[Ratio] | None = None
    values_from: Statement | None = None


@dataclass(frozen=True, slots=True)
class BeamLabel:
    """What the maker's label or table says of a beam: the counterweight and the load it allows.

    `most_load` is the largest rated load of the hoist on its line, up to a reach of `most_reach`
    and with no less backspan than `least_backspan`, which is zero where it asks for none. A table
    with several rows is several kinds.
    """

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    most_pieces: StatedPositive[int] | None = None
    most_mass: StatedPositive[Mass] | None = None
    most_load: StatedPositive[Force] | None = None
    most_reach: StatedPositive[Length] | None = None
    least_backspan: StatedNotNegative[Length] | None = None


@dataclass(frozen=True, slots=True)
class Beam:
    """An outrigger beam: full length as assembled, own mass, label, and its steel section."""

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    id: str
    name: str
    length: StatedPositive[Length] | None = None
    mass: StatedPositive[Mass] | None = None
    centroid_from_tail: StatedPositive[Length] | None = None
    label: BeamLabel | None = None
    section: BeamSection | None = None
    values_from: Statement | None = None


class PieceKind(StrEnum):
    """What a counterweight piece is."""

    STEEL_PLATE = "purpose-made steel plate"
    CAST_IRON = "purpose-made cast iron"
    CONCRETE_CAST = "purpose-made concrete block"
    SAND = "sand"
    GRAVEL = "gravel"
    WATER = "water"
    MASONRY_UNIT = "masonry unit"
    ROOFING_ROLL = "roll of roofing felt"
    SCRAP = "scrap or site material"


@dataclass(frozen=True, slots=True)
class Piece:
    """One counterweight: stamped mass, how much of the beam's length it takes."""

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    id: str
    name: str
    kind: PieceKind
    mass: StatedPositive[Mass]
    length_on_beam: StatedPositive[Length] | None = None
    values_from: Statement | None = None


@dataclass(frozen=True, slots=True)
class Stage:
    """A suspended stage: size, and its masses for rules that count what hangs.

    `stirrup_spacing` is from the middle of one stirrup to that of the other.
    `dead_mass` is all that hangs without people and material: stage, stirrups, hoists, ropes
    and cord. `intended_load` is the people, tools and material expected at any one time,
    `most_load` what its maker allows of them on a stage of this length.
    """

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    id: str
    name: str
    length: StatedPositive[Length]
    width: StatedPositive[Length] | None = None
    stirrup_spacing: StatedPositive[Length] | None = None
    dead_mass: StatedPositive[Mass] | None = None
    intended_load: StatedNotNegative[Mass] | None = None
    values_from: Statement | None = None
    most_load: StatedPositive[Mass] | None = None
    listed: Listing | None = None


@dataclass(frozen=True, slots=True)
class Lanyard:
    """A rider's lanyard with its absorber and the grab it is used with, as their makers state them.

    `deceleration` is how far the absorber opens, `slide` how far the grab slips before it holds,
    `stretch` how far harness and D-ring give way, `most_force` the most the body is arrested with.
    `breaking_force` is of the weakest of lanyard, hooks and links.
    """

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    id: str
    name: str
    length: StatedPositive[Length] | None = None
    deceleration: StatedPositive[Length] | None = None
    slide: StatedNotNegative[Length] | None = None
    stretch: StatedNotNegative[Length] | None = None
    most_force: StatedPositive[Force] | None = None
    values_from: Statement | None = None
    breaking_force: StatedPositive[Force] | None = None


@dataclass(frozen=True, slots=True)
class Kit:
    """All equipment a project names: types, and the units of them that came to the roof.

    A rig names a unit by its tag, or only a type where nobody knows which thing it is: the
    functions below find the type by either.
    """

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    hoists: tuple[Hoist, ...] = ()
    ropes: tuple[Rope, ...] = ()
    terminations: tuple[Termination, ...] = ()
    connectors: tuple[Connector, ...] = ()
    beams: tuple[Beam, ...] = ()
    pieces: tuple[Piece, ...] = ()
    stages: tuple[Stage, ...] = ()
    units: tuple[Unit, ...] = ()
    lanyards: tuple[Lanyard, ...] = ()
    values_from: Statement | None = None

    def unit(self, kind: UnitKind, tag: str) -> Unit | None:
        """The unit of that tag; None where only a type is called so, or nothing."""
        return next((one for one in self.units if one.kind is kind and one.id == tag), None)

    def hoist(self, name: str) -> Hoist | None:
        """The type of a hoist, by its tag or its own name."""
        return _named(self.hoists, self._type(UnitKind.HOIST, name))

    def rope(self, name: str) -> Rope | None:
        """The type of a rope, likewise."""
        return _named(self.ropes, self._type(UnitKind.ROPE, name))

    def termination(self, name: str) -> Termination | None:
        """The way a rope end is made, by its name."""
        return _named(self.terminations, name)

    def connector(self, name: str) -> Connector | None:
        """A piece of connecting hardware, by its name."""
        return _named(self.connectors, name)

    def lanyard(self, name: str) -> Lanyard | None:
        """A kind of lanyard, by its name."""
        return _named(self.lanyards, name)

    def beam(self, name: str) -> Beam | None:
        """The type of a beam, likewise."""
        return _named(self.beams, self._type(UnitKind.BEAM, name))

    def piece(self, name: str) -> Piece | None:
        """The type of a piece, by its lot or its own name."""
        return _named(self.pieces, self._type(UnitKind.PIECE, name))

    def stage(self, name: str) -> Stage | None:
        """The type of a stage, likewise."""
        return _named(self.stages, self._type(UnitKind.STAGE, name))

    def _type(self, kind: UnitKind, name: str) -> str:
        unit = self.unit(kind, name)
        return name if unit is None else unit.of


class _Named(Protocol):
    @property
    def id(self) -> str: ...


N = TypeVar("N", bound=_Named)


def _named(items: Iterable[N], name: str) -> N | None:
    return next((one for one in items if one.id == name), None)
