"""What happens with each kind of entry, besides what it writes: the steps of drops, and matters.

A step forward is asked here for all that stands against it before the table of states is; what
stops use is never asked for anything.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from types import MappingProxyType
from typing import Any

from backspan.core.ledger import bodies
from backspan.core.ledger.days import day_of
from backspan.core.ledger.document import at, drop_of, mentions
from backspan.core.ledger.drop_states import Event, Refusal
from backspan.core.ledger.entry import Entry
from backspan.core.ledger.folded import Folded
from backspan.core.ledger.kinds import Body
from backspan.core.ledger.matters import Matters
from backspan.core.ledger.standing import DropRecord, Permit, Refused, Why
from backspan.core.model.rigs import Found
from backspan.core.model.seen import Pin, Tautness
from backspan.core.model.units import Condition, RopeDamage

#: What may be taken back. What stops use, or happened to a thing, is not undone by a word.
_TO_CORRECT = (
    bodies.NumberFound,
    bodies.CountFound,
    bodies.WordFound,
    bodies.LineConnected,
    bodies.TopicTakenOver,
    bodies.LimitsSigned,
    bodies.UsePermitted,
    bodies.ShiftChecked,
    bodies.PaperIssued,
    bodies.UnderlayLaid,
)
_PASSES = "pass"
#: Words for a thing that is not as it has to be, under whatever rule. It is no part of what is
#: accepted whether a thing was found sound, but that it was found wrong ends the acceptance.
_WRONG = frozenset(
    {
        *(str(one) for one in (Found.DEFECTIVE, Found.ABSENT)),
        *(str(one) for one in (Condition.DEFECTIVE, Condition.WITHDRAWN)),
        *(str(one) for one in (Tautness.SLACK, Pin.OPEN)),
        *(str(one) for one in RopeDamage if one is not RopeDamage.NONE),
    }
)


def _set_up(site: Folded, entry: Entry, body: bodies.RigSetUp) -> None:
    record = site.record(body.drop)
    record.connected.clear()
    record.happens(Event.RIG_SET_UP, entry)


def _moved(site: Folded, entry: Entry, body: bodies.RigMoved) -> None:
    for record, event in (
        (site.record(body.drop), Event.MOVED_OFF),
        (site.record(body.to), Event.MOVED_HERE),
    ):
        record.connected.clear()
        record.happens(event, entry)


def lines_of(rig: Any) -> tuple[str, ...]:
    """The lines of a rig that two people connect: suspension lines and lifelines."""
    if rig is None:
        return ()
    return tuple(one["id"] for one in (*rig["suspension_points"], *(rig["lifelines"] or ())))


def _connected(site: Folded, entry: Entry, body: bodies.LineConnected) -> None:
    record, lines = site.record(body.drop), lines_of(site.rig(body.drop))
    if body.line not in lines:
        record.refuse(entry, Why.NOT_RIGGED)
    elif body.second in {entry.envelope.signer.person, ""}:
        record.refuse(entry, Why.ONE_PERSON)
    elif (unseen := record.unseen(entry)) is not None:
        record.refuse(entry, Why.UNSEEN, unseen)
    else:
        record.connected[body.line] = entry
        if set(lines) <= record.connected.keys():
            record.happens(Event.CONNECTED, entry)


def _permitted(site: Folded, entry: Entry, body: bodies.UsePermitted) -> None:
    record = site.record(body.drop)
    against = _against_a_permit(site, record, entry, body)
    if against is not None:
        record.refuse(entry, *against)
    elif not set(lines_of(site.rig(body.drop))) <= record.connected.keys():
        record.refuse(entry, Refusal.NOT_CONNECTED)
    elif record.happens(Event.PERMITTED, entry):
        record.permit = Permit(entry, body)
        record.stops.clear()
        record.restrictions.clear()


def _against_a_permit(
    site: Folded, record: DropRecord, entry: Entry, body: bodies.UsePermitted
) -> tuple[Why, Entry | None] | None:
    unseen = record.unseen(entry, values=True)
    if unseen is not None:
        return Why.UNSEEN, unseen
    found = site.against(record.id)
    if found is not None:
        return found
    if body.answer.split(",")[0] != _PASSES:
        return Why.NO_PASS, None
    if _own_rig(site, record.id, entry):
        return Why.OWN_RIG, None
    codes = site.codes(record.id)
    if codes is None or codes[0] != body.configuration:
        return Why.OTHER_CONFIGURATION, None
    return None if codes[1] == body.basis else (Why.OTHER_BASIS, None)


def _own_rig(site: Folded, drop: str, entry: Entry) -> bool:
    """Whether the contractor whose rig it is employs the one who signs."""
    plan = at(site.data, ("plan",))
    for one in site.data["drops"]:
        if one["id"] == drop and one["plan"] is not None:
            plan = one["plan"]
    employer = (entry.envelope.signer.employer or "").strip().casefold()
    return plan is not None and employer == plan["contractor"].strip().casefold()


def _checked(site: Folded, entry: Entry, body: bodies.ShiftChecked) -> None:
    record = site.record(body.drop)
    if not body.fit:
        record.happens(Event.UNFIT, entry)
        record.stops.append(entry)
        return
    unseen, against = record.unseen(entry, values=True), site.against(body.drop)
    permit = None if record.permit is None else record.permit.entry
    if permit is not None and not entry.has_seen(permit):
        unseen = permit  # it looked at what another permit allowed
    if unseen is not None:
        record.refuse(entry, Why.UNSEEN, unseen)
    elif against is not None:
        record.refuse(entry, *against)
    elif record.holds:
        record.refuse(entry, Why.ON_HOLD, record.holds[0])
    elif body.day != day_of(entry):
        record.refuse(entry, Why.OTHER_DAY)
    elif record.happens(Event.FIT, entry):
        record.fit = entry


def _stopped(site: Folded, entry: Entry, body: bodies.UseStopped) -> None:
    for record in site.named(body.drops):
        record.stops.append(entry)
        record.happens(Event.STOPPED, entry)


def _restricted(site: Folded, entry: Entry, body: bodies.UseRestricted) -> None:
    site.record(body.drop).restrictions.append(entry)


def _hold(site: Folded, entry: Entry, body: bodies.HoldBegun) -> None:
    for record in site.named(body.drops):
        record.holds.append(entry)
        record.happens(Event.HOLD_BEGUN, entry)


def _hold_ended(site: Folded, entry: Entry, body: bodies.HoldEnded) -> None:
    for record in site.named(body.drops):
        record.holds = [one for one in record.holds if not entry.has_seen(one)]
        if not record.holds:
            record.happens(Event.HOLD_ENDED, entry)


def _found(site: Folded, entry: Entry, body: bodies.WordFound) -> None:
    """A thing that was looked for and is wrong or not there: nobody rides until it is permitted."""
    if body.found.value in _WRONG:
        drop = drop_of(body.path)
        stopped = site.named(()) if drop is None else site.named((drop,))
        for record in stopped:
            if drop is not None or mentions(site.rig(record.id), body.path[-2]):
                record.happens(Event.CHANGED, entry)


def _looked_at(site: Folded, entry: Entry, body: bodies.UnitLookedAt) -> None:
    """A thing that is defective or withdrawn stops every drop whose rig has it."""
    unit = body.unit
    damage = None if unit.wear is None else unit.wear.damage
    bad_rope = damage is not None and damage.value is not RopeDamage.NONE
    if bad_rope or (unit.condition is not None and str(unit.condition.value) in _WRONG):
        for record in site.named(()):
            if mentions(site.rig(record.id), unit.id):
                record.happens(Event.CHANGED, entry)


def _matter(site: Folded, entry: Entry, body: Body) -> None:
    site.matters.take(entry)
    match body:
        case bodies.DeficiencyRaised(id=name) | bodies.DeficiencyReinspected(id=name, mended=False):
            found = site.matters.deficiencies.get(name, ())
            drops = (site.named(one.says.drops) for one in found if one.forbids)
            stopped = [record for some in drops for record in some]
        case bodies.ConcernNoted():
            concern, units = site.matters.concerns[body.id][-1], site.data["kit"]["units"]
            stopped = [
                record
                for record in site.named(())
                if Matters.meets(concern, record.id, site.rig(record.id), units)
            ]
        case _:
            return
    for record in stopped:
        record.happens(Event.STOPPED, entry)


def _issued(site: Folded, entry: Entry, _body: bodies.PaperIssued) -> None:
    site.papers.append(entry)


def _corrected(site: Folded, entry: Entry, body: bodies.Corrected) -> None:
    wrong = site.by_hash.get(body.entry)
    if wrong is None or not entry.has_seen(wrong):
        site.refused.append(Refused(entry, Why.UNKNOWN))
    elif not may_be_corrected(site, wrong):
        site.refused.append(Refused(entry, Why.NOT_TO_CORRECT, wrong))
    elif wrong.hash not in site.corrected:
        site.corrected.add(wrong.hash)
        site.unplaced = [one for one in site.unplaced if one.entry.hash != wrong.hash]
        site.papers = [one for one in site.papers if one.hash != wrong.hash]
        _take_back(site, entry, wrong)


def may_be_corrected(site: Folded, wrong: Entry) -> bool:
    """Also what has no place in the site: it changed nothing, and stands against use."""
    if any(one.entry is wrong for one in site.unplaced):
        return True
    return isinstance(wrong.body, _TO_CORRECT) and getattr(wrong.body, "fit", None) is not False


def _take_back(site: Folded, entry: Entry, wrong: Entry) -> None:
    for record in site.drops.values():
        for line in [line for line, one in record.connected.items() if one is wrong]:
            del record.connected[line]
            record.happens(Event.DISCONNECTED, entry)
        permit = None if record.permit is None else record.permit.entry
        if wrong is record.fit or wrong is permit:
            record.happens(Event.CHANGED, entry)
    site.take_back(wrong, entry)


#: What else happens with an entry of a kind; Any, since each takes the one record it stands beside.
HAPPENS: Mapping[type[Body], Callable[[Folded, Entry, Any], None]] = MappingProxyType(
    {
        bodies.RigSetUp: _set_up,
        bodies.RigMoved: _moved,
        bodies.WordFound: _found,
        bodies.UnitLookedAt: _looked_at,
        bodies.LineConnected: _connected,
        bodies.UsePermitted: _permitted,
        bodies.ShiftChecked: _checked,
        bodies.UseStopped: _stopped,
        bodies.UseRestricted: _restricted,
        bodies.HoldBegun: _hold,
        bodies.HoldEnded: _hold_ended,
        bodies.PaperIssued: _issued,
        bodies.Corrected: _corrected,
        bodies.DeficiencyRaised: _matter,
        bodies.DeficiencyAnswered: _matter,
        bodies.DeficiencyReinspected: _matter,
        bodies.DeficiencyClosed: _matter,
        bodies.ConcernNoted: _matter,
        bodies.ConcernClosed: _matter,
    }
)
