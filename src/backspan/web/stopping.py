"""What stops a drop, as its notice tells it: each thing with who said it, and who may lift it."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from types import MappingProxyType

from backspan.core.ledger import bodies
from backspan.core.ledger.drop_states import Refusal, State
from backspan.core.ledger.entry import Entry
from backspan.core.ledger.entry_lines import drops_of, entry_line
from backspan.core.ledger.standing import Standing, Why
from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop
from backspan.core.words import LANGUAGES, Language, say_state_meaning
from backspan.papers import Lift, StopNotice, StopReason

#: Reasons that stop use, with the step that lifts each. A check still to come is none.
_LIFTS: Mapping[object, Lift] = MappingProxyType(
    {
        Why.STOPPED: Lift.PERMIT,
        Why.ENDED: Lift.PERMIT,
        Why.LAPSED: Lift.PERMIT,
        Why.DISPUTED: Lift.PERMIT,
        Why.NOT_PLACED: Lift.PERMIT,
        Why.DEFICIENT: Lift.DEFICIENCY,
        Why.CONCERN: Lift.CONCERN,
        Why.ON_HOLD: Lift.HOLD,
    }
)


def stop_notice(project: Project, drop: Drop, standing: Standing) -> StopNotice | None:
    """What stops a drop on a day, worst first; None where nothing does."""
    reasons = tuple(_reasons(standing))
    if not reasons:
        return None
    who = next((one for one in project.people if one.id == project.prepared_by), None)
    everywhere = is_of_all(standing)
    return StopNotice(
        drop="" if everywhere else drop.id,
        name="" if everywhere else drop.name or "",
        who="" if who is None else f"{who.name}, {who.role}",
        reasons=reasons,
    )


def is_of_all(standing: Standing) -> bool:
    """Whether what stops a drop before all else stops the whole site."""
    first = next((by for why, by in standing.reasons if why in _LIFTS), None)
    if first is None:
        return False
    whole = isinstance(first.body, bodies.UseStopped | bodies.HoldBegun | bodies.DeficiencyRaised)
    return whole and not drops_of(first.body)


def _reasons(standing: Standing) -> Iterator[StopReason]:
    """Each thing once: what also ended the permit is told with all that settles it."""
    found: dict[str, tuple[Entry | None, list[Why | Refusal]]] = {}
    for why, by in standing.reasons:
        if why in _LIFTS:
            found.setdefault("" if by is None else by.hash, (by, []))[1].append(why)
    for entry, whys in found.values():
        signer = None if entry is None else entry.envelope.signer
        yield StopReason(
            said="" if entry is None else _said(entry),
            by="" if signer is None else f"{signer.name}, {signer.role}",
            at="" if entry is None else entry.envelope.at,
            settles={
                code: " ".join(_settles(why, one) for why in whys)
                for code, one in LANGUAGES.items()
            },
            lifts=tuple(_LIFTS[why] for why in whys),
        )
    if not found and standing.state is State.STOPPED:
        told = {c: say_state_meaning(standing.state, language=one) for c, one in LANGUAGES.items()}
        yield StopReason(said=told["en"], by="", at="", settles=told, lifts=(Lift.PERMIT,))


def _settles(why: Why | Refusal, language: Language) -> str:
    """What settles a reason: its sentence behind the entry, which the notice tells by itself."""
    told = language.reasons[why]
    return told.partition("{by}. ")[2] or told


def _said(entry: Entry) -> str:
    """Why, in the words of who stopped it; of anything else the line of its entry."""
    match entry.body:
        case bodies.UseStopped(why=why) | bodies.HoldBegun(why=why):
            return why
        case _:
            return entry_line(entry)
