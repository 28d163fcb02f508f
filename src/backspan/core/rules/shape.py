"""The shape of a rule value: what a text asks for, where it says so, how far that was verified."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum

from backspan.core.errors import BackspanError
from backspan.core.quantities import Amount


class RuleError(BackspanError, ValueError):
    """A rule set or a value in it that is not as it must be; names the place."""


class Mark(StrEnum):
    """How far a value was verified against the text it is attributed to."""

    READ = "read"
    COPY = "copy"
    MEMORY = "memory"
    PRACTICE = "practice"


class LoadBasis(StrEnum):
    """Which load a factor multiplies; half the answer, and often the larger half."""

    HOIST_RATED = "hoist rated load"
    HOIST_STALL = "hoist stall load"
    LARGEST_ROPE_TENSION = "largest rope tension"
    HALF_DEAD_FULL_LIVE = "half the dead load and the full live load"
    HALF_DEAD_HALF_LIVE = "half the dead load and half the live load"


class BeamWeight(StrEnum):
    """Whether the beam's own weight may be counted where it helps, or is part of the load."""

    NO_CREDIT = "no credit"
    CREDITED = "credited"
    COUNTED = "counted"
    NO_PART = "no part"


@dataclass(frozen=True, slots=True)
class FactorOnLoad:
    """What is held against the rule must resist `factor` times what `load` does.

    On tipping that is its moment about the fulcrum, on bearing all it makes the fulcrum press,
    on a rope the load itself.
    """

    factor: float
    load: LoadBasis
    beam_weight: BeamWeight


@dataclass(frozen=True, slots=True)
class Limit:
    """A number with its unit."""

    amount: Amount


@dataclass(frozen=True, slots=True)
class WordList:
    """The words (kinds, states) a clause accepts or refuses."""

    words: tuple[str, ...]


class SectionForm(StrEnum):
    """What a beam's section looks like."""

    I_SHAPE = "I"
    CHANNEL = "channel"
    TUBE = "tube"
    PIPE = "pipe"


#: The sizes by which each form is known.
SIZES_OF: Mapping[SectionForm, tuple[str, ...]] = {
    SectionForm.I_SHAPE: ("section_depth", "flange_width", "web_thickness", "flange_thickness"),
    SectionForm.CHANNEL: ("section_depth", "flange_width", "web_thickness", "flange_thickness"),
    SectionForm.TUBE: ("section_depth", "flange_width", "wall"),
    SectionForm.PIPE: ("section_depth", "wall"),
}


@dataclass(frozen=True, slots=True)
class Section:
    """A rolled or hollow shape by its name: its form, and its numbers as a table has them."""

    shape: str
    form: SectionForm
    sizes: Mapping[str, Amount]

    @property
    def numbers(self) -> dict[str, float]:
        """What the table has of it, in SI, by the names that the formulas have."""
        return {name: one.value for name, one in self.sizes.items()}


@dataclass(frozen=True, slots=True)
class Remark:
    """A requirement without a number the program could compare: it is printed, never judged."""

    text: str


Content = FactorOnLoad | Limit | WordList | Section | Remark


@dataclass(frozen=True, slots=True)
class Provenance:
    """Where a value stands and how far that was verified."""

    clause: str
    mark: Mark
    source: str


@dataclass(frozen=True, slots=True)
class Reading:
    """One way to read a clause that can be read in several."""

    name: str
    content: Content
    provenance: Provenance
    description: str


@dataclass(frozen=True, slots=True)
class RuleValue:
    """One value of a rule set: its readings (one, when the clause is plain) and its default."""

    key: str
    topic: str
    description: str
    readings: tuple[Reading, ...]
    default: str
    note: str | None = None


@dataclass(frozen=True, slots=True)
class RuleSet:
    """One published text in one edition, as the values this program uses of it."""

    id: str
    edition: str
    title: str
    publisher: str
    jurisdiction: str
    scope: str
    values: tuple[RuleValue, ...]
    retrieved: str | None = None
    note: str | None = None

    def value(self, key: str) -> RuleValue | None:
        """The value named `key`, or None where this text does not have it."""
        return next((value for value in self.values if value.key == key), None)

    def topic(self, topic: str) -> tuple[RuleValue, ...]:
        """All values of one topic, in the order of the file."""
        return tuple(value for value in self.values if value.topic == topic)
