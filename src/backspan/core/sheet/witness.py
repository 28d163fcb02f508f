"""Who saw a value, when, and whether that is good enough for what it is used for.

What was measured, or read from a label or a certificate, was seen by a person on a day. Without
both it counts as told. A role that may not state such a value does not settle it, and what was seen
long ago says nothing of the roof as it is: how old is too old depends on what may have changed.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from enum import StrEnum
from typing import Any

from backspan.core.findings import Message, MessageValue
from backspan.core.model.evidence import Evidence, StatedValue, day_of
from backspan.core.numbers import surely_below
from backspan.core.quantities import RATIO
from backspan.core.rules.selected import SelectedValue
from backspan.core.rules.shape import RuleError, WordList
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.limits import limit_of, needed_value


class EvidenceClass(StrEnum):
    """Kinds of value that ask for the same evidence; each is a value of the practice rules."""

    GEOMETRY = "evidence.geometry"
    RATING = "evidence.rating"
    MASS = "evidence.mass"
    SIZE = "evidence.size"
    COUNT = "evidence.count"
    OBSERVATION = "evidence.observation"

    @property
    def kind(self) -> str:
        """Its name alone, as the other values of the practice rules end with it."""
        return self.value.removeprefix("evidence.")


Words = tuple[tuple[str, MessageValue], ...]

#: Evidence that is nothing without a person who saw it, and the day.
_SEEN = frozenset({Evidence.MEASURED, Evidence.LABEL, Evidence.CERTIFICATE})
#: What may change from one day to the next, and so is seen anew.
_AGED = frozenset({EvidenceClass.GEOMETRY, EvidenceClass.COUNT, EvidenceClass.OBSERVATION})


@dataclass(frozen=True, slots=True)
class _Seen:
    """A stated value, with what it is used for."""

    case: Case
    stated: StatedValue[Any]
    asks: EvidenceClass
    place: Place


def why_weak(
    case: Case, name: str, stated: StatedValue[Any], asks: EvidenceClass, place: Place
) -> Message | None:
    """Why the evidence of a value does not settle a finding; None where it does.

    Raises RuleError where the practice rules lack a value that decides it.
    """
    seen = _Seen(case, stated, asks, place)
    key = ("why weak", stated.evidence, stated.by, stated.at, asks, _on_rig(seen))
    found = case.once(key, lambda: _first_reason(seen))
    if found is None:
        return None
    reason, told = found
    return Message(f"need.{reason}", (("input", name), ("place", where(place)), *told))


def _first_reason(seen: _Seen) -> tuple[str, Words] | None:
    for reason, words in _REASONS:
        told = words(seen)
        if told is not None:
            return reason, told
    return None


def _on_rig(seen: _Seen) -> bool:
    """Whether it is a length of the rig, which moves, and not of the roof or the kit."""
    return seen.asks is EvidenceClass.GEOMETRY and seen.place[0] == "drops"


def accepted_evidence(case: Case, asks: EvidenceClass) -> SelectedValue:
    """The practice value that lists the evidence good enough for a kind of input."""
    return needed_value(case.practice, str(asks))


def words_of(value: SelectedValue) -> tuple[str, ...]:
    """The words of a word-list value."""
    if not isinstance(value.content, WordList):
        raise RuleError(f"{value.rule_set}: {value.key} is not a word list")
    return value.content.words


def where(place: Place) -> str:
    """A place in the project as one text."""
    return "/".join(str(part) for part in place)


def _not_accepted(seen: _Seen) -> Words | None:
    accepted, evidence = words_of(accepted_evidence(seen.case, seen.asks)), seen.stated.evidence
    if evidence is not None and str(evidence) in accepted:
        return None
    found = "not stated" if evidence is None else str(evidence)
    return (("evidence", found), ("accepted", accepted))


def _nobody_saw_it(seen: _Seen) -> Words | None:
    stated = seen.stated
    if stated.evidence not in _SEEN or (stated.by and stated.at):
        return None
    return (("evidence", str(stated.evidence)),)


def _role_may_not(seen: _Seen) -> Words | None:
    if seen.stated.by is None:
        return None
    may = words_of(needed_value(seen.case.practice, f"witness.{seen.asks.kind}"))
    person = seen.case.person(seen.stated.by)
    if person is not None and person.role in may:
        return None
    name = seen.stated.by if person is None else f"{person.name}, {person.role}"
    return (("person", name), ("who", may))


def _too_old(seen: _Seen) -> Words | None:
    if seen.asks not in _AGED or seen.stated.at is None:
        return None
    most = _most_days(seen)
    day = day_of(seen.stated.at)
    days = (seen.case.on - day).days
    if surely_below(days, limit=most):
        return None
    return (("at", day.isoformat()), ("most", int(most)))


def _most_days(seen: _Seen) -> float:
    """For how many days it counts, its own day included: as the project says, else the trade."""
    kind = "rig-geometry" if _on_rig(seen) else seen.asks.kind
    own = seen.case.project.ages
    stated = None if own is None else getattr(own, kind.replace("-", "_"))
    if stated is not None:
        return float(stated)
    return limit_of(needed_value(seen.case.practice, f"age.{kind}"), RATIO)


#: In the order they are told: the first that is there is the reason.
_REASONS: tuple[tuple[str, Callable[[_Seen], Words | None]], ...] = (
    ("evidence", _not_accepted),
    ("witness", _nobody_saw_it),
    ("role", _role_may_not),
    ("age", _too_old),
)
