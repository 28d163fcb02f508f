"""One value as it applies to a review: the reading chosen, and whether an office confirmed it."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field

from backspan.core.rules.shape import Content, Mark, Provenance, RuleError, RuleSet, RuleValue


@dataclass(frozen=True, slots=True)
class Confirmed:
    """Who found a remembered value in their own copy of the text, and when."""

    by: str
    at: str
    copy_seen: str


@dataclass(frozen=True, slots=True)
class SelectedValue:
    """The content that applies, with everything a paper prints about where it comes from."""

    rule_set: str
    edition: str
    title: str
    key: str
    reading: str
    of_readings: int
    description: str
    content: Content
    provenance: Provenance
    confirmed: Confirmed | None

    @property
    def only_remembered(self) -> bool:
        """Whether nobody has seen this value in the text: a pass on it needs a person."""
        return self.provenance.mark is Mark.MEMORY and self.confirmed is None


@dataclass(frozen=True, slots=True)
class SelectedRules:
    """A rule set with its chosen readings and the confirmations that bear on it."""

    rule_set: RuleSet
    readings: Mapping[str, str]
    confirmed: Mapping[str, Confirmed]
    _found: dict[str, SelectedValue | None] = field(
        default_factory=dict, init=False, repr=False, compare=False
    )
    """Values already looked up: a check asks for the same ones at every corner."""

    def select(self, value: RuleValue, reading: str | None = None) -> SelectedValue:
        """The reading that applies: the one asked for, the one chosen, else the default.

        Raises RuleError when the reading is not one of the value's.
        """
        wanted = reading or self.readings.get(value.key, value.default)
        found = next((one for one in value.readings if one.name == wanted), None)
        if found is None:
            names = ", ".join(one.name for one in value.readings)
            raise RuleError(
                f"{self.rule_set.id}: {value.key} has no reading {wanted!r}; it has: {names}"
            )
        return SelectedValue(
            rule_set=self.rule_set.id,
            edition=self.rule_set.edition,
            title=self.rule_set.title,
            key=value.key,
            reading=found.name,
            of_readings=len(value.readings),
            description=found.description,
            content=found.content,
            provenance=found.provenance,
            confirmed=self.confirmed.get(value.key),
        )

    def find(self, key: str) -> SelectedValue | None:
        """The value named `key` as it applies, or None where the text has no such value."""
        if key not in self._found:
            value = self.rule_set.value(key)
            self._found[key] = None if value is None else self.select(value)
        return self._found[key]

    def topic(self, topic: str) -> tuple[SelectedValue, ...]:
        """All values of a topic as they apply."""
        return tuple(self.select(value) for value in self.rule_set.topic(topic))


@dataclass(frozen=True, slots=True)
class RuleLibrary:
    """All rule sets at hand, found by text and edition."""

    rule_sets: tuple[RuleSet, ...]
    _chosen: dict[tuple[str, str], SelectedRules] = field(
        default_factory=dict, init=False, repr=False, compare=False
    )
    """The last choice of each text, with what was looked up in it."""

    def same(self, made: SelectedRules) -> SelectedRules:
        """The last choice of that text where it is equal: each drop of a site makes the same."""
        key = (made.rule_set.id, made.rule_set.edition)
        before = self._chosen.get(key)
        if before == made:
            return before
        self._chosen[key] = made
        return made

    def get(self, rule_set: str, edition: str) -> RuleSet:
        """The rule set of that name and edition; RuleError names what there is instead."""
        for candidate in self.rule_sets:
            if candidate.id == rule_set and candidate.edition == edition:
                return candidate
        editions = [one.edition for one in self.rule_sets if one.id == rule_set]
        if editions:
            raise RuleError(
                f"rule set {rule_set!r} has no edition {edition!r}; editions: {', '.join(editions)}"
            )
        names = ", ".join(sorted({one.id for one in self.rule_sets}))
        raise RuleError(f"there is no rule set {rule_set!r}; rule sets: {names}")

    def editions(self, rule_set: str) -> Iterable[RuleSet]:
        """Every edition of one text."""
        return (one for one in self.rule_sets if one.id == rule_set)
