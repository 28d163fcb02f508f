"""What each kind of entry says: one record a kind and version, in the trade's words.

A record here is never changed once entries of it are kept: a further version is a record of its
own, and the older one goes on being read (kinds.py). `drop`, `anchor` and the like are ids of the
site; `path` leads to a value through names and ids, as errors of project files print it.
"""

from __future__ import annotations

from dataclasses import dataclass

from backspan.core.model.evidence import StatedValue
from backspan.core.model.plan import Plan
from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop, Rig
from backspan.core.model.signed import SignedLimits
from backspan.core.model.site import Anchor, AnchorStanding
from backspan.core.model.topics import TakeOver
from backspan.core.model.underlay import Underlay
from backspan.core.model.units import Unit
from backspan.core.model.work import WorkStep


@dataclass(frozen=True, slots=True)
class SiteDescribed:
    """The building, its people, its kinds of kit, the basis: no drop, anchor, unit or paper."""

    project: Project


@dataclass(frozen=True, slots=True)
class DropDescribed:
    """A drop and its place; what is rigged there is another entry."""

    drop: Drop


@dataclass(frozen=True, slots=True)
class AnchorRegistered:
    """An anchor with what its papers say; registered once more, it is another anchor or paper."""

    roof: str
    anchor: Anchor


@dataclass(frozen=True, slots=True)
class AnchorInspected:
    """What an inspection says of an anchor, from that day on."""

    roof: str
    anchor: str
    inspected: str
    standing: AnchorStanding
    certified: str | None = None
    says: str = ""


@dataclass(frozen=True, slots=True)
class AnchorWithdrawn:
    """An anchor that nobody uses any more."""

    roof: str
    anchor: str
    why: str


@dataclass(frozen=True, slots=True)
class PlanReceived:
    """The contractor's plan of the project, or of one drop."""

    plan: Plan
    drop: str | None = None


@dataclass(frozen=True, slots=True)
class UnitRegistered:
    """A thing with its tag."""

    unit: Unit


@dataclass(frozen=True, slots=True)
class UnitLookedAt:
    """The same thing as it was seen that day: condition, label, wear, tests."""

    unit: Unit


@dataclass(frozen=True, slots=True)
class UnitExchanged:
    """Another unit in the place of one, at a place of a drop's rig."""

    drop: str
    path: tuple[str, ...]
    taken_out: str
    put_in: str


@dataclass(frozen=True, slots=True)
class RigSetUp:
    """The rig of a drop as it stands there, looked at; it goes before all that was stated of it."""

    drop: str
    rig: Rig


@dataclass(frozen=True, slots=True)
class RigMoved:
    """A rig on its way to another drop: nobody uses it until it is set up there and looked at."""

    drop: str
    to: str


@dataclass(frozen=True, slots=True)
class WorkPlanned:
    """Who and what is on a stage, step by step; it takes the place of what was planned before."""

    drop: str
    stage: str
    steps: tuple[WorkStep, ...]


@dataclass(frozen=True, slots=True)
class NumberFound:
    """A number that was measured or read, in SI."""

    path: tuple[str, ...]
    found: StatedValue[float]


@dataclass(frozen=True, slots=True)
class CountFound:
    """A count."""

    path: tuple[str, ...]
    found: StatedValue[int]


@dataclass(frozen=True, slots=True)
class WordFound:
    """A word of a list, such as a condition."""

    path: tuple[str, ...]
    found: StatedValue[str]


@dataclass(frozen=True, slots=True)
class LineConnected:
    """A suspension line or lifeline that two people saw connected; `second` is not who signs."""

    drop: str
    line: str
    second: str


@dataclass(frozen=True, slots=True)
class TopicTakenOver:
    """Topics that a named person judged in writing."""

    taken: TakeOver


@dataclass(frozen=True, slots=True)
class LimitsSigned:
    """The limits of an engineer's paper."""

    limits: SignedLimits


@dataclass(frozen=True, slots=True)
class DeficiencyRaised:
    """Something wrong; where it `forbids_use` its drops are stopped until it is closed."""

    id: str
    drops: tuple[str, ...]
    about: str
    says: str
    forbids_use: bool
    until: str | None = None


@dataclass(frozen=True, slots=True)
class DeficiencyAnswered:
    """What the contractor says was done."""

    id: str
    says: str


@dataclass(frozen=True, slots=True)
class DeficiencyReinspected:
    """What was found when somebody looked again."""

    id: str
    mended: bool
    says: str


@dataclass(frozen=True, slots=True)
class DeficiencyClosed:
    """A deficiency that was looked at again and found mended."""

    id: str


@dataclass(frozen=True, slots=True)
class ConcernNoted:
    """Anybody's remark about a unit, an anchor or a drop: not used until a test settles it."""

    id: str
    about: str
    says: str


@dataclass(frozen=True, slots=True)
class ConcernClosed:
    """A concern that a named test settled; that it was mended is no test."""

    id: str
    test: str
    says: str


@dataclass(frozen=True, slots=True)
class UseStopped:
    """Nobody on it; no drop named is the whole site."""

    drops: tuple[str, ...]
    why: str


@dataclass(frozen=True, slots=True)
class UsePermitted:
    """A drop in this configuration, on this basis, may carry people.

    It says what the review of that day answered.
    """

    drop: str
    configuration: str
    basis: str
    answer: str
    taken_over: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class UseRestricted:
    """A permitted drop with a named restriction."""

    drop: str
    says: str


@dataclass(frozen=True, slots=True)
class ShiftChecked:
    """What a competent person saw before a shift of that day."""

    drop: str
    day: str
    fit: bool
    says: str = ""


@dataclass(frozen=True, slots=True)
class HoldBegun:
    """Wind, storm, power: use pauses; no drop named is the whole site."""

    drops: tuple[str, ...]
    why: str


@dataclass(frozen=True, slots=True)
class HoldEnded:
    """The pause is over; each drop needs its shift check again."""

    drops: tuple[str, ...]
    says: str


@dataclass(frozen=True, slots=True)
class PaperIssued:
    """A paper that left the office: its file is the entry's evidence."""

    name: str
    drops: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class UnderlayLaid:
    """A drawing or picture laid under a roof's plan and checked; its file is the entry's evidence.

    It states nothing of the site. The last one of a roof that was not corrected counts.
    """

    roof: str
    underlay: Underlay


@dataclass(frozen=True, slots=True)
class Corrected:
    """An entry that says what is not so: what it said no longer counts.

    What is so instead is an entry of its own. What stops use is not undone by it.
    """

    entry: str
    why: str
