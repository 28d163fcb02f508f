"""What each paper of a drop or a deficiency says, gathered from the record as it stands."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from backspan.core.errors import BackspanError
from backspan.core.ledger import bodies
from backspan.core.ledger.entry import Entry
from backspan.core.ledger.entry_lines import entry_line
from backspan.core.ledger.kinds import STATES_NOTHING
from backspan.core.ledger.matters import Deficiency
from backspan.core.ledger.reasons_in_words import say_reason
from backspan.core.ledger.standing import Standing, Why
from backspan.core.model.rigs import Drop
from backspan.core.words import say_state, say_state_meaning
from backspan.drawings import plan_figure, section_figure, to_svg
from backspan.papers import (
    Codes,
    DeficiencyNotice,
    DropDrawings,
    PaperContent,
    SheetItem,
    SheetValue,
    Stamp,
    Tag,
    deficiency_content,
    drop_content,
    sheet_content,
    stop_content,
    tag_content,
)
from backspan.web.blanks import blank_items, code_of
from backspan.web.stopping import is_of_all, stop_notice
from backspan.web.workbench import DayState, Workbench

#: The papers of a drop as people call them, by the name in their address.
TITLES: Mapping[str, str] = MappingProxyType(
    {
        "tag": "acceptance tag",
        "stop": "stop notice",
        "sheet": "roof sheet",
        "review": "review of the drop",
    }
)


class NoPaperError(BackspanError):
    """A paper that the record does not give now; says why."""


def last_place(state: DayState) -> int:
    """The place of the last entry that says something of the site: no paper or underlay does."""
    places = enumerate(state.entries, start=1)
    said = (at for at, one in places if not isinstance(one.body, STATES_NOTHING))
    return max(said, default=0)


def why_not(state: DayState, drop: Drop, paper: str) -> str:
    """Why there is no such paper of a drop now; empty where there is one."""
    standing = state.standing(drop.id)
    told = f"drop {drop.id} is {say_state(standing.state)}. {say_state_meaning(standing.state)}"
    if paper == "tag" and standing.permit is None:
        against = " ".join(say_reason(why, by) for why, by in standing.reasons)
        return f"A tag needs a permit in force, and found is none: {told} {against}".strip()
    if paper == "stop" and stop_notice(state.described, drop, standing) is None:
        return f"Found is no stop, hold or open deficiency to give notice of: {told}"
    if paper in {"sheet", "review"} and drop.rig is None:
        return f"Found is no rig to look at: {told}"
    return ""


def drop_paper(bench: Workbench, state: DayState, drop: Drop, paper: str) -> PaperContent:
    """What a paper of a drop says. Raises NoPaperError where the record gives none."""
    against = why_not(state, drop, paper)
    if against:
        raise NoPaperError(against)
    project, stamp = state.described, _stamp(bench, state, (drop.id,))
    match paper:
        case "tag":
            return tag_content(project, _tag(drop, state.standing(drop.id)), stamp)
        case "stop":
            notice = stop_notice(project, drop, state.standing(drop.id))
            if notice is None:
                raise NoPaperError(f"found no stop of drop {drop.id}")
            return stop_content(project, notice, stamp if notice.drop else _stamp(bench, state, ()))
        case "sheet":
            return _sheet(state, drop, stamp)
        case "review":
            return _review(state, drop, stamp)
        case _:
            raise NoPaperError(f"found the paper {paper[:40]!r}, expected {', '.join(TITLES)}")


def drops_of_paper(state: DayState, drop: Drop, paper: str) -> tuple[str, ...]:
    """The drops that a paper speaks of: none is the whole site."""
    everywhere = paper == "stop" and is_of_all(state.standing(drop.id))
    return () if everywhere else (drop.id,)


def deficiency_paper(
    bench: Workbench, state: DayState, one: Deficiency, evidence: Mapping[str, bytes | None]
) -> PaperContent:
    """What the notice of a deficiency says, with its evidence by hash."""
    raised = one.raised.envelope
    since = [*one.answers, *(entry for entry, _ in one.looked)]
    if one.closed is not None:
        since.append(one.closed)
    since.sort(key=lambda entry: entry.envelope.order)
    notice = DeficiencyNotice(
        number=one.says.id,
        drops=one.says.drops,
        about=one.says.about,
        says=one.says.says,
        by=f"{raised.signer.name}, {raised.signer.role}",
        at=raised.at,
        forbids=one.says.forbids_use,
        closed=one.closed is not None,
        until=one.says.until or "",
        since=tuple(
            (each.envelope.at, each.envelope.signer.name, entry_line(each)) for each in since
        ),
    )
    stamp = _stamp(bench, state, one.says.drops)
    return deficiency_content(state.described, notice, evidence, stamp)


def _stamp(bench: Workbench, state: DayState, drops: tuple[str, ...]) -> Stamp:
    place = last_place(state)
    receipt, _ = next(bench.record.ledger.entries(after=place - 1))
    codes = (Codes(one, *(state.folded.codes(one) or ("", ""))) for one in drops)
    return Stamp(place, receipt.head, state.on, tuple(codes))


def _tag(drop: Drop, standing: Standing) -> Tag:
    permit = standing.permit
    if permit is None:
        raise NoPaperError(f"found no permit of drop {drop.id}")
    signer = permit.entry.envelope.signer
    riders = None if drop.rig is None else drop.rig.riders
    # That today's shift check is still to come is what the tag asks for; anything else ends it.
    against = [one for one in standing.reasons if one[0] is not Why.NO_CHECK_TODAY]
    return Tag(
        drop=drop.id,
        name=drop.name or "",
        permitted_at=permit.entry.envelope.at,
        permitted_by=signer.name,
        role=signer.role,
        employer=signer.employer or "",
        card=signer.card or "",
        answer=permit.says.answer,
        riders="" if riders is None else str(riders.value),
        restrictions=tuple(_restriction(one) for one in standing.restrictions),
        against=tuple(say_reason(why, by) for why, by in against),
    )


def _restriction(entry: Entry) -> str:
    """What a restriction says, in the words of who stated it."""
    said = entry.body.says if isinstance(entry.body, bodies.UseRestricted) else entry_line(entry)
    return f"{said} ({entry.envelope.signer.name})"


def _sheet(state: DayState, drop: Drop, stamp: Stamp) -> PaperContent:
    items = blank_items(state, drop.id)
    shown = [
        SheetItem(
            item.number,
            item.title,
            tuple(
                SheetValue(
                    number=one.number,
                    name=one.value.name,
                    where=one.value.where,
                    words=one.value.words,
                    count=one.value.count,
                    like=one.value.like,
                    planned=one.value.planned,
                    found=one.value.found,
                    by=", ".join(each for each in (one.value.by, one.value.at) if each),
                )
                for one in item.blanks
            ),
            item.of_papers,
        )
        for item in items
    ]
    named = (drop.id, drop.name or "")
    return sheet_content(
        state.described, named, shown, code=code_of(state, drop.id, items), stamp=stamp
    )


def _review(state: DayState, drop: Drop, stamp: Stamp) -> PaperContent:
    project, found = state.described, state.review(drop.id)
    drawings = DropDrawings(
        section=to_svg(section_figure(project, drop.id, found)),
        plan=to_svg(plan_figure(project, drop.id, found)),
    )
    return drop_content(project, state.document(drop.id), drawings, stamp=stamp)
