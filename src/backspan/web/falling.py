"""Which acceptances fall with a statement: told before it is made, and after."""

from __future__ import annotations

from collections.abc import Collection, Iterator
from dataclasses import dataclass

from backspan.core.ledger import bodies
from backspan.core.ledger.codes import basis_code
from backspan.core.ledger.document import changes_a_fact
from backspan.core.ledger.entry import Entry
from backspan.core.ledger.entry_lines import entry_line
from backspan.core.ledger.kinds import Body
from backspan.core.ledger.matters import touches
from backspan.core.ledger.standing import Permit
from backspan.core.ledger.writes import writes_of
from backspan.core.model.project import Project
from backspan.core.wire import WireError, configuration_code
from backspan.web.workbench import DayState


@dataclass(frozen=True, slots=True)
class Fallen:
    """A drop whose acceptance an entry ended, and that nobody permitted since."""

    drop: str
    line: str
    by: str
    at: str


def ended_by(state: DayState, body: Body) -> tuple[str, ...]:
    """The drops whose acceptance a statement would end if it were made now.

    Raises LedgerError where the statement has no place in the site.
    """
    permits = _permits(state)
    if not permits:
        return ()
    if isinstance(body, bodies.ConcernNoted):
        meant = set(stopped_by(state, body.about))
        return tuple(name for name in permits if name in meant)
    data, writes = state.folded.data, writes_of(body, state.folded.data)
    for write in writes:
        data = write.on(data)
    if not changes_a_fact(state.folded.data, data):
        return ()
    about, project = {one.drop for one in writes}, state.folded.project_with(data)
    return tuple(
        name
        for name, one in permits.items()
        if (None in about or name in about) and not _holds(one, project, name)
    )


def stopped_by(state: DayState, about: str) -> tuple[str, ...]:
    """The drops that an open concern about a thing, a type or a drop stands against."""
    folded = state.folded
    units = folded.data["kit"]["units"]
    names = (one["id"] for one in folded.data["drops"])
    return tuple(name for name in names if touches(about, name, folded.rig(name), units))


def fallen(state: DayState, entries: Collection[Entry]) -> Iterator[Fallen]:
    """The drops that stand without acceptance since one of these entries."""
    hashes = {one.hash for one in entries}
    for name, record in state.folded.drops.items():
        if record.permit is None and record.ended and record.ended[-1].by.hash in hashes:
            entry = record.ended[-1].by
            at = entry.envelope.at[:16].replace("T", " ")
            yield Fallen(name, entry_line(entry), entry.envelope.signer.name, at)


def ended_with(state: DayState, entry: Entry) -> tuple[str, ...]:
    """The drops whose acceptance that entry ended, whatever was permitted since."""
    drops = state.folded.drops.items()
    return tuple(
        name for name, record in drops if any(one.by.hash == entry.hash for one in record.ended)
    )


def accepted(state: DayState) -> frozenset[str]:
    """The drops whose use is permitted by the record."""
    return frozenset(_permits(state))


def _permits(state: DayState) -> dict[str, Permit]:
    found = {name: record.permit for name, record in state.folded.drops.items()}
    return {name: permit for name, permit in found.items() if permit is not None}


def _holds(permit: Permit, project: Project, name: str) -> bool:
    """Whether what a permit names is there in a project."""
    drop = next((one for one in project.drops if one.id == name), None)
    if drop is None:
        return False
    try:
        codes = configuration_code(project, drop), basis_code(project, drop)
    except WireError:
        return False
    return codes == (permit.says.configuration, permit.says.basis)


def fallen_with(state: DayState, project: Project) -> tuple[str, ...]:
    """The drops whose acceptance would not hold if the site were this one."""
    permits = _permits(state).items()
    return tuple(name for name, one in permits if not _holds(one, project, name))
