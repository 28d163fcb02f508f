"""A drop and the rig set up for it: suspension points with their supports, lines, stages."""

from __future__ import annotations

from dataclasses import dataclass, field
from enum import StrEnum
from typing import Any, ClassVar

from backspan.core.model.basis import RuleChoice
from backspan.core.model.beams import BeamFound, BeamSplice, Joined
from backspan.core.model.evidence import (
    STRICT,
    Stated,
    StatedNotNegative,
    StatedPositive,
    Statement,
)
from backspan.core.model.plan import Plan
from backspan.core.model.seen import (
    Grab,
    GrabHeight,
    HarnessState,
    Hooks,
    LowEnd,
    Pin,
    Route,
    Saddle,
    Splices,
    Swing,
    Tautness,
    TiedTo,
    Tightened,
)
from backspan.core.model.stages import HungStage
from backspan.core.quantities import Angle, Length, Mass, Moment, Pressure


class Fastening(StrEnum):
    """How the pieces are held on the beam."""

    LOCKED_PIN = "pin through the beam, locked"
    BOLTED = "bolted, tool needed"
    UNLOCKED_PIN = "pin, not locked"
    WIRE_TIE = "wire tie"
    RESTING = "resting only"


class FulcrumKind(StrEnum):
    """Where a beam bears at the front."""

    PAD = "pad"
    STAND = "stand"
    TOWER = "scaffold tower"
    PARAPET = "parapet"


@dataclass(frozen=True, slots=True)
class Pad:
    """A pad or plank under the plate of a stand; its length lies along that of the plate."""

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    length: StatedPositive[Length] | None = None
    width: StatedPositive[Length] | None = None
    thickness: StatedPositive[Length] | None = None


@dataclass(frozen=True, slots=True)
class Fulcrum:
    """The front bearing of a beam; `setback` is from the face of the edge to its centre.

    `height` is its own, from what it stands on: the parapet where the setback lies within the
    wall's thickness, the roof elsewhere. The plate is that of the stand itself; what lies under it
    on the surface, a plank too, is its `pad`. The surface's strength is the pressure it carries
    without failure. `bearing_length` is how much of the beam's length lies on the stand.
    """

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    kind: FulcrumKind
    setback: StatedNotNegative[Length] | None = None
    height: StatedNotNegative[Length] | None = None
    plate_length: StatedPositive[Length] | None = None
    plate_width: StatedPositive[Length] | None = None
    pad: Pad | None = None
    surface_strength: StatedPositive[Pressure] | None = None
    bearing_length: StatedPositive[Length] | None = None


@dataclass(frozen=True, slots=True)
class RearBearing:
    """The plate of the rear stand, the `pad` under it, and what the roof carries there."""

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    plate_length: StatedPositive[Length] | None = None
    plate_width: StatedPositive[Length] | None = None
    pad: Pad | None = None
    surface_strength: StatedPositive[Pressure] | None = None


@dataclass(frozen=True, slots=True)
class PieceGroup:
    """Equal pieces that stand together; `per_row` of them share one place on the beam."""

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    piece: str
    count: StatedNotNegative[int]
    per_row: int = 1


@dataclass(frozen=True, slots=True)
class Stack:
    """The counterweight on a beam: its groups from the tail inwards, and how it is held.

    `tail_gap` is from the beam's tail end to the outer end of the stack.
    """

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    groups: tuple[PieceGroup, ...] = ()
    tail_gap: StatedNotNegative[Length] | None = None
    fastening: Stated[Fastening] | None = None


class BackspanFrom(StrEnum):
    """How the backspan is known: taped on the roof, or worked out from beam and stack."""

    MEASURED = "measured"
    STACK = "worked out from the stack"


@dataclass(frozen=True, slots=True)
class CounterweightedBeam:
    """A support whose tail is held down by counterweight.

    `reach` is fulcrum to suspension line; `backspan` is fulcrum to the centroid of the stack;
    `tip_beyond_line` is from the suspension line to the beam's front end; `rear_stand` is from the
    fulcrum to what carries the beam behind, `rear` what that stands on. With `backspan_from`
    "worked out from the stack" the backspan follows from the beam's length and the stack. `joined`
    and where its `splices` lie are of the beam as it is put together, `found` is what was seen of
    it on a day. `unbraced_length` is the longest between what holds it sideways and upright.
    """

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    beam: str
    fulcrum: Fulcrum | None = None
    reach: StatedPositive[Length] | None = None
    backspan: StatedPositive[Length] | None = None
    backspan_from: BackspanFrom = BackspanFrom.MEASURED
    tip_beyond_line: StatedNotNegative[Length] | None = None
    rear_stand: StatedPositive[Length] | None = None
    rear: RearBearing | None = None
    stack: Stack = field(default_factory=Stack)
    joined: Stated[Joined] | None = None
    splices: tuple[BeamSplice, ...] = ()
    unbraced_length: StatedPositive[Length] | None = None
    found: BeamFound = field(default_factory=BeamFound)

    @property
    def joints(self) -> tuple[BeamSplice, ...]:
        """Its `splices` without those that somebody looked for in vain."""
        return tuple(one for one in self.splices if not one.absent)


class OtherSupportKind(StrEnum):
    """Supports that are named but not yet judged by this program."""

    BOLTED_TAIL = "beam with bolted tail"
    PARAPET_CLAMP = "parapet clamp"
    CORNICE_HOOK = "cornice hook"
    DAVIT = "davit"


@dataclass(frozen=True, slots=True)
class OtherSupport:
    """A support of another kind, with the paper it rests on."""

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    kind: OtherSupportKind
    reach: StatedPositive[Length] | None = None
    document: str | None = None


class Found(StrEnum):
    """What somebody found who went to look at a thing that has to be there."""

    SOUND = "there and sound"
    DEFECTIVE = "defective"
    ABSENT = "not there"
    NONE_NEEDED = "none needed"


class TiebackEnd(StrEnum):
    """What a tieback ends on, where that is no anchor of the roof."""

    STRUCTURE = "structural member"
    VENT = "vent"
    PIPE = "pipe"
    CONDUIT = "conduit"
    STANDPIPE = "standpipe"
    PARAPET_CAP = "cap of the parapet"
    OWN_BEAM = "its own beam"
    OTHER_SUPPORT = "another support"


class TiebackStart(StrEnum):
    """Where on the support a tieback is made fast."""

    TAIL = "tail of the beam"
    SHACKLE = "suspension shackle"
    STACK = "counterweight"
    STAND = "stand"


@dataclass(frozen=True, slots=True)
class Tieback:
    """A rope from the support back to an anchor; `found` is what was seen of it, to its end.

    `ends_on` says what it ends on that is no anchor. `angle` is how far it turns off the
    perpendicular to the face, more than zero towards the end of the edge; where nobody measured
    it, it follows from the plan.
    """

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    id: str
    anchor: str | None = None
    ends_on: Stated[TiebackEnd] | None = None
    rope: str | None = None
    termination: str | None = None
    attached: Stated[TiebackStart] | None = None
    taut: Stated[Tautness] | None = None
    route: Stated[Route] | None = None
    angle: Stated[Angle] | None = None
    found: Stated[Found] | None = None
    softener: Stated[Found] | None = None

    @property
    def goes_to(self) -> str:
        """What it ends on: its anchor by name, else the word for it; empty where nobody said."""
        word = "" if self.ends_on is None else str(self.ends_on.value)
        return self.anchor or word


@dataclass(frozen=True, slots=True)
class Lifeline:
    """A worker's own line from an anchor over the edge; `station` is where it passes.

    `found` is what was seen of it, both ends among that. `termination` is the end at its anchor,
    `lanyard` the kind its rider wears; the other words are what was seen of it in use.
    """

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    id: str
    anchor: str
    rope: str | None = None
    worker: str | None = None
    station: Length | None = None
    found: Stated[Found] | None = None
    softener: Stated[Found] | None = None
    termination: str | None = None
    lanyard: str | None = None
    grab: Stated[Grab] | None = None
    grab_height: Stated[GrabHeight] | None = None
    splices: Stated[Splices] | None = None
    tied_to: Stated[TiedTo] | None = None
    swing: Stated[Swing] | None = None
    harness: Stated[HarnessState] | None = None
    hooks: Stated[Hooks] | None = None
    low_end: Stated[LowEnd] | None = None


@dataclass(frozen=True, slots=True)
class Fitted:
    """A piece of connecting hardware where it is fitted: how its pin is held, what was found."""

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    connector: str
    pin: Stated[Pin] | None = None
    found: Stated[Found] | None = None


@dataclass(frozen=True, slots=True)
class Clips:
    """What was found of the clips at a rope's end; `spacing` is from middle to middle."""

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    count: StatedNotNegative[int] | None = None
    spacing: StatedPositive[Length] | None = None
    turnback: StatedPositive[Length] | None = None
    torque: StatedPositive[Moment] | None = None
    saddle: Stated[Saddle] | None = None
    tightened: Stated[Tightened] | None = None


@dataclass(frozen=True, slots=True)
class SuspensionPoint:
    """One place where a suspension line hangs; `station` is along the edge from its start.

    `rope_ends` is what was seen of the suspension rope's termination and of its lower end,
    `end_stop` of what keeps that end from running through the hoist. Of a hoist that winds its rope
    up, `drum_turns` are left on the drum with the stage at its lowest point. An empty list of
    tiebacks, or of connecting hardware, says that there is none; no list, that nobody said.
    """

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    id: str
    station: Length
    hoist: str
    counterweighted_beam: CounterweightedBeam | None = None
    other_support: OtherSupport | None = None
    rope: str | None = None
    termination: str | None = None
    rope_length: StatedPositive[Length] | None = None
    rope_mass: StatedPositive[Mass] | None = None
    bottom_weight: StatedNotNegative[Mass] | None = None
    rope_ends: Stated[Found] | None = None
    thimble: Stated[Found] | None = None
    end_stop: Stated[Found] | None = None
    drum_turns: StatedNotNegative[int] | None = None
    clips: Clips | None = None
    connectors: tuple[Fitted, ...] | None = None
    softener: Stated[Found] | None = None
    tiebacks: tuple[Tieback, ...] | None = None

    @property
    def tied(self) -> tuple[Tieback, ...]:
        """The tiebacks that are stated."""
        return self.tiebacks or ()


@dataclass(frozen=True, slots=True)
class Rig:
    """All that is set up for one drop.

    `moved_from` names the drop that this rig hung at before, whose own rig is then no longer there.
    `riders` is the most people on the stage at once, visitors among them. An empty list of
    lifelines says that there is none; no list, that nobody said.
    """

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    suspension_points: tuple[SuspensionPoint, ...] = ()
    stages: tuple[HungStage, ...] = ()
    lifelines: tuple[Lifeline, ...] | None = None
    moved_from: str | None = None
    riders: StatedPositive[int] | None = None
    power: Stated[Found] | None = None
    rescue: Stated[Found] | None = None
    values_from: Statement | None = None

    @property
    def lines(self) -> tuple[Lifeline, ...]:
        """The lifelines that are stated."""
        return self.lifelines or ()

    @property
    def anchors(self) -> frozenset[str]:
        """The anchors that its tiebacks and lifelines end on."""
        ties = (tie.anchor for point in self.suspension_points for tie in point.tied)
        return frozenset(one for one in (*ties, *(line.anchor for line in self.lines)) if one)


@dataclass(frozen=True, slots=True)
class Drop:
    """One vertical strip of facade, one stage width; `start` is along the edge from its start.

    `height` is from its roof to its lowest place, `clear_below` from the stage's deck there down to
    the level below. `also_meets` names rule sets this drop must meet besides those of the project's
    basis. A `plan` of its own goes before the project's.
    """

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    id: str
    roof: str
    edge: str
    start: Length
    width: StatedPositive[Length]
    name: str | None = None
    height: StatedPositive[Length] | None = None
    rig: Rig | None = None
    also_meets: tuple[RuleChoice, ...] = ()
    plan: Plan | None = None
    clear_below: StatedNotNegative[Length] | None = None
    values_from: Statement | None = None
