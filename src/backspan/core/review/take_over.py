"""Does a take-over of a topic hold: who, in which role, for which rig, until when.

Each row of `_OBSTACLES` is one reason why it does not; the first that is there is told.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from backspan.core.findings import Message, MessageValue
from backspan.core.model.evidence import is_before
from backspan.core.model.people import Person
from backspan.core.model.plan import Plan
from backspan.core.model.topics import TakeOver, Topic
from backspan.core.sheet.case import Case
from backspan.core.wire import WireError, read_code

Words = tuple[tuple[str, MessageValue], ...]


@dataclass(frozen=True, slots=True)
class _Held:
    """A take-over beside all it is held against."""

    case: Case
    one: TakeOver
    person: Person | None
    plan: Plan | None
    who: Sequence[str]
    configuration: str


def given_for(case: Case, topic: Topic) -> list[TakeOver]:
    """The take-overs that name the topic and the case's drop."""
    return [
        one
        for one in case.project.taken_over
        if topic in one.topics and any(drop.drop == case.drop.id for drop in one.drops)
    ]


def why_not(case: Case, one: TakeOver, *, who: Sequence[str], configuration: str) -> Message | None:
    """Why a take-over has no effect on the case's drop; None where it holds.

    `who` are the roles that may take the topic over, `configuration` the code of the rig as it is.
    """
    held = _Held(case, one, case.person(one.by), case.plan, who, configuration)
    for reason, stands_in_the_way, words in _OBSTACLES:
        if stands_in_the_way(held):
            said = (("document", one.document), *words(held))
            return Message(f"take-over.{reason}", said)
    return None


def as_told(case: Case, one: TakeOver, topic: Topic) -> Message:
    """A take-over that holds, as every paper prints it; that it ends before the work does, too.

    Of a shift inspection that is not told: it is for its own day.
    """
    person, ends = case.person(one.by), case.work_ends
    lapses = topic is not Topic.SHIFT and is_before(one.until, ends)
    return Message(
        "topic.taken-over-lapses" if lapses else "topic.taken-over",
        (
            ("person", one.by if person is None else person.name),
            ("role", "" if person is None else person.role),
            ("card", "" if person is None else person.card or ""),
            ("document", one.document),
            ("at", one.at),
            ("until", one.until),
            ("ends", ends),
        ),
    )


def _name(held: _Held) -> Words:
    return (("person", held.one.by if held.person is None else held.person.name),)


def _role_may_not(held: _Held) -> bool:
    return held.person is None or held.person.role not in held.who


def _of_the_contractor(held: _Held) -> bool:
    """Nobody judges a rig of the firm that pays them, nor one they designed."""
    if held.person is None or held.plan is None:
        return True
    employer = (held.person.employer or "").strip().casefold()
    own = employer == held.plan.contractor.strip().casefold()
    return own or held.person.id == held.plan.designer


def _of_another_rig(held: _Held) -> bool:
    """Whether no code given for the drop is the code of the rig as it is now."""
    return not any(_reads_as(code, held.configuration) for code in _codes(held))


def _codes(held: _Held) -> tuple[str, ...]:
    drop = held.case.drop.id
    return tuple(one.configuration for one in held.one.drops if one.drop == drop)


def _reads_as(text: str, code: str) -> bool:
    try:
        return read_code(text) == code
    except WireError:
        return False  # no code at all names no rig


def _both_codes(held: _Held) -> Words:
    return (("given", ", ".join(_codes(held))), ("now", held.configuration))


def _employer_unknown(held: _Held) -> bool:
    return held.person is not None and not (held.person.employer or "").strip()


_OBSTACLES: tuple[tuple[str, Callable[[_Held], bool], Callable[[_Held], Words]], ...] = (
    ("role", _role_may_not, lambda held: (*_name(held), ("who", tuple(held.who)))),
    ("no-card", lambda held: held.person is None or not held.person.card, _name),
    ("no-contractor", lambda held: held.plan is None, lambda _: ()),
    ("no-employer", _employer_unknown, _name),
    ("own-rig", _of_the_contractor, _name),
    (
        "ended",
        lambda held: held.one.until < held.case.on.isoformat(),
        lambda held: (("until", held.one.until),),
    ),
    ("configuration", _of_another_rig, _both_codes),
)
