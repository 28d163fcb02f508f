"""The basis of a review: which rule sets, which editions, which readings, what is confirmed."""

from __future__ import annotations

from dataclasses import dataclass, fields
from typing import Any, ClassVar

from backspan.core.model.evidence import STRICT


@dataclass(frozen=True, slots=True)
class ReadingChoice:
    """The reading chosen of a value that has several (default: the stricter)."""

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    value: str
    reading: str


@dataclass(frozen=True, slots=True)
class RuleChoice:
    """One rule set by name and edition."""

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    rule_set: str
    edition: str
    readings: tuple[ReadingChoice, ...] = ()


@dataclass(frozen=True, slots=True)
class Basis:
    """The rule sets used for each topic; every rule set named must be met.

    A topic that names none is held against those of tipping.
    """

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    tipping: tuple[RuleChoice, ...]
    hoist: tuple[RuleChoice, ...] = ()
    counterweight: tuple[RuleChoice, ...] = ()
    geometry: tuple[RuleChoice, ...] = ()
    bearing: tuple[RuleChoice, ...] = ()
    line: tuple[RuleChoice, ...] = ()
    tieback: tuple[RuleChoice, ...] = ()
    design: tuple[RuleChoice, ...] = ()
    anchor: tuple[RuleChoice, ...] = ()
    stage: tuple[RuleChoice, ...] = ()
    fall: tuple[RuleChoice, ...] = ()
    beam: tuple[RuleChoice, ...] = ()

    def of(self, topic: str) -> tuple[RuleChoice, ...]:
        """The rule sets of a topic, its own or those of tipping."""
        own: tuple[RuleChoice, ...] = getattr(self, topic)
        return own or self.tipping


#: The topics a project may choose rule sets for.
TOPICS = tuple(one.name for one in fields(Basis))


@dataclass(frozen=True, slots=True)
class Confirmation:
    """A person's statement that a remembered value stands so in their own copy of the text."""

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    rule_set: str
    edition: str
    value: str
    by: str
    at: str
    copy_seen: str
