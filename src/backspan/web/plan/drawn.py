"""A draft of the roof plan at work: the site as drawn, what is drawn anew, what it would answer."""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from typing import Any

from backspan.core.drafting import Draft, DraftError, act_of, data_of, drawn
from backspan.core.drafting.acting import Hand
from backspan.core.findings import Review
from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop, Rig
from backspan.core.model.site import Roof
from backspan.core.review.front import front_data
from backspan.core.review.reasons import REFUSED
from backspan.core.review.run import case_of, review_findings
from backspan.core.sheet.uses import uses_of
from backspan.exchange.parse import ProjectError
from backspan.exchange.same_rig import point_moved, same_rig
from backspan.web.workbench import DayState

#: So many drops are asked again at once; the others say that they were not.
MOST_ASKED = 3
#: So many reasons to refuse a drop are told beside the plan; its own page has all.
_MOST_TOLD = 3


@dataclass(frozen=True, slots=True)
class Sheet:
    """A draft with the site it makes."""

    recorded: Project
    draft: Draft
    site: Project

    @property
    def text(self) -> str:
        """The draft as a page carries it."""
        return json.dumps([data_of(one) for one in self.draft.acts], separators=(",", ":"))

    @property
    def lines(self) -> tuple[str, ...]:
        """What is not signed, first to last."""
        return tuple(one.told(self.recorded.units) for one in self.draft.acts)


def sheet_of(recorded: Project, text: str) -> Sheet:
    """The draft that a page carries. Raises DraftError where it is none, or cannot be done."""
    draft = Draft(tuple(_acts(text)))
    return Sheet(recorded, draft, drawn(recorded, draft.acts, hand_of(recorded)))


def with_draft(sheet: Sheet, draft: Draft) -> Sheet:
    """Another draft on the same site. Raises DraftError where it cannot be done."""
    acts = draft.acts
    if acts[: len(sheet.draft.acts)] == sheet.draft.acts:
        site = drawn(sheet.site, acts[len(sheet.draft.acts) :], hand_of(sheet.recorded))
    else:
        site = drawn(sheet.recorded, acts, hand_of(sheet.recorded))
    return Sheet(sheet.recorded, draft, site)


def hand_of(project: Project) -> Hand:
    """The hand that draws before anybody signs: a value keeps the evidence of what it replaces."""
    return Hand(project.units, carried=carried)


def carried(project: Project, drop: str, source: str) -> Rig:
    """The rig of one drop as it comes along to another. Raises DraftError where it cannot."""
    before = next(one for one in project.drops if one.id == source)
    after = next(one for one in project.drops if one.id == drop)
    rig = before.rig or Rig()
    shift = after.start - before.start
    points = [point_moved(one, {}, by=shift) for one in rig.suspension_points]
    try:
        found = same_rig(project, drop, {"suspension_points": points}, source=source)
    except ProjectError as error:
        raise DraftError(str(error)) from error
    return found.rig or Rig()


def touched(before: Project, after: Project) -> tuple[str, ...]:
    """The drops whose review may answer otherwise: what it looks at is not as before.

    That is the drop itself, its roof's edges and obstacles, the anchors its lines end on; and what
    a drop that changed shares with it: lines of two drops may end on one anchor, and a thing with a
    tag is in one place, a lot of pieces only so often: where another rig names it otherwise now.
    Stages at one edge share no strip of it, and a roof may lie below drops of another.
    """
    if before is after:
        return ()
    stood, roofs = {one.id: one for one in before.drops}, {one.id: one for one in before.site.roofs}
    changed = [(stood.get(one.id), one) for one in after.drops if stood.get(one.id) != one]
    built, moved = set[str](), set[str]()
    for roof in after.site.roofs:
        was = roofs.get(roof.id)
        if was is None or (was.edges, was.obstacles) != (roof.edges, roof.obstacles):
            built.add(roof.id)
            # A lifeline may lead over this roof to the edge of another.
            moved |= {one.id for one in roof.anchors}
        known = set() if was is None else set(was.anchors)
        moved |= {one.id for one in roof.anchors if one not in known}
    shared = {name for was, now in changed for name in _meddles(was, now)} | moved
    own = {one.id for _, one in changed}
    if [_lies(one) for one in before.site.roofs] != [_lies(one) for one in after.site.roofs]:
        built = {one.id for one in after.site.roofs}
    return tuple(
        one.id
        for one in after.drops
        if one.id in own
        or (one.rig is not None and (one.roof in built or not shared.isdisjoint(_shares(one))))
    )


def _lies(roof: Roof) -> tuple[object, ...]:
    """Where a roof lies, for drops that pass another."""
    return roof.id, roof.level, roof.outline


def _strips(drop: Drop | None) -> tuple[str, tuple[object, ...]]:
    """The edge at which a drop's stages hang, and where along it."""
    if drop is None or drop.rig is None:
        return "", ()
    stations = {one.id: one.station for one in drop.rig.suspension_points}
    hung = tuple(
        (one.stage, tuple(stations.get(name) for name in one.from_points))
        for one in drop.rig.stages
    )
    return f"edge {drop.roof}/{drop.edge}", hung


def _meddles(was: Drop | None, now: Drop) -> frozenset[str]:
    """What a drop that changed may do to others: its anchors, and things it names otherwise."""
    rigs = [one.rig for one in (was, now) if one is not None and one.rig is not None]
    anchors = frozenset(name for rig in rigs for name in rig.anchors)
    if len({rig.moved_from for rig in rigs}) > 1:
        # Where a rig left, its things hang no longer: all of them do another thing to others.
        return anchors.union(*(_shares(one) for one in (was, now)))
    before, after = _named(was), _named(now)
    if _strips(was) != _strips(now):
        anchors |= {_strips(one)[0] for one in (was, now)}
    return anchors | {
        name for name in before.keys() | after.keys() if before.get(name) != after.get(name)
    }


def _shares(drop: Drop | None) -> frozenset[str]:
    """What a drop's rig names that another one's may: things of the kit, and anchors."""
    if drop is None or drop.rig is None:
        return frozenset()
    return drop.rig.anchors | _named(drop).keys() | {_strips(drop)[0]}


def _named(drop: Drop | None) -> dict[str, list[float]]:
    """The things of the kit that a drop's rig names, with how many at each place."""
    found: dict[str, list[float]] = {}
    if drop is not None and drop.rig is not None:
        for use in uses_of(drop.rig, drop.id):
            if use.name:
                found.setdefault(use.name, []).append(use.count)
    return {name: sorted(counts) for name, counts in found.items()}


@dataclass(frozen=True, slots=True)
class Reviews(Mapping[str, Review]):
    """The reviews that hold for a site as drawn: recorded where nothing was touched, else asked.

    A drop that was touched and not asked again has none: what it answered before holds no longer.
    """

    state: DayState
    touched: frozenset[str]
    asked: Mapping[str, Review]

    def __getitem__(self, name: str) -> Review:
        """The review of a drop. Raises KeyError where none holds."""
        if name in self.touched:
            return self.asked[name]
        if all(one.id != name for one in self.state.described.drops):
            raise KeyError(name)
        return self.state.review(name)

    def __iter__(self) -> Iterator[str]:
        yield from self.asked
        yield from (one.id for one in self.state.described.drops if one.id not in self.touched)

    @property
    def waiting(self) -> str:
        """The drop that was asked first, where others may still be asked; empty where none may."""
        few = len(self.asked) < min(len(self.touched), MOST_ASKED)
        return next(iter(self.asked), "") if few else ""

    def __len__(self) -> int:
        return sum(1 for _ in self)


def reviews_of(
    state: DayState, sheet: Sheet, first: str = "", *, most: int = MOST_ASKED
) -> Reviews:
    """The reviews of a site as drawn. Of the drops touched a few are asked, `first` before all."""
    drops = touched(sheet.recorded, sheet.site)
    order = sorted(drops, key=lambda one: one != first)[:most]
    asked = {name: reviewed(state, sheet.site, name) for name in order}
    return Reviews(state, frozenset(drops), asked)


def answers(state: DayState, found: Reviews) -> Iterator[dict[str, Any]]:
    """What each drop that was touched would answer, beside what it answers as recorded."""
    there = {one.id for one in state.described.drops}
    order = [*found.asked, *sorted(found.touched - found.asked.keys())]
    for name in order:
        front = front_data(found.asked[name], kinds=(REFUSED,)) if name in found.asked else None
        yield {
            "drop": name,
            "front": front,
            "refused": [] if front is None else front["reasons"][:_MOST_TOLD],
            "recorded": state.front(name) if front is not None and name in there else None,
        }


def reviewed(state: DayState, site: Project, name: str) -> Review:
    """The review of a drop of the site as drawn, on the day."""
    return review_findings(case_of(site, name, state.library, on=state.on, kept=state.answered))


def signed(sheet: Sheet, hand: Hand) -> Project:
    """The site as whoever signs draws it."""
    return drawn(sheet.recorded, sheet.draft.acts, replace(hand, carried=carried))


def _acts(text: str) -> Iterator[Any]:
    try:
        data = json.loads(text or "[]")
    except (ValueError, RecursionError) as error:
        raise DraftError(
            "found a draft that cannot be read, expected the one of the page"
        ) from error
    if not isinstance(data, list):
        raise DraftError("found a draft that is no list of acts, expected the page's")
    yield from map(act_of, data)
