"""Is each anchor rated for its use, for the load, and for the direction in which it is pulled.

No text gives the load of a tieback's anchor; the trade asks of it what a direct connection has to
resist. The pull of a tieback runs from its anchor along it, that of a lifeline to where it passes
the edge. A rating within half a turn holds in any direction. Of several ratings for one use the
least counts, and the pull has to be within each: nobody said which of them holds. One rating for
all uses is one of them too.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass, replace

from backspan.core.angles import HALF_TURN, direction, turned_within
from backspan.core.findings import DoesNotApply, Message
from backspan.core.mechanics.ropes import load_to_carry
from backspan.core.model.rigs import Lifeline
from backspan.core.model.site import Anchor, AnchorRating, AnchorUse
from backspan.core.model.topics import Topic
from backspan.core.numbers import smaller, surely_below
from backspan.core.quantities import ANGLE, FORCE
from backspan.core.rules.selected import SelectedValue
from backspan.core.rules.shape import FactorOnLoad
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.decide import ENDINGS
from backspan.core.sheet.limits import limit_of
from backspan.core.sheet.load_on_line import LineReads, line_reads, load_on_line
from backspan.core.sheet.question import Asked, Judged, Question, Told
from backspan.core.sheet.reads import UNKNOWN, Read, read_of
from backspan.core.sheet.sheet import Sheet
from backspan.core.sheet.subjects import in_force_or_practice
from backspan.core.sheet.tied import Ties, on_edge, outward, pull_of, share_of, ties_of

LOAD, DIRECTION = "anchor-load", "anchor-direction"
TIEBACK_KEYS = ("anchor.tieback-rated-load", "anchor.tieback-stall-load")
LIFELINE_KEY = "anchor.lifeline-load"


@dataclass(frozen=True, slots=True)
class OnTie:
    """The tieback that pulls: its direction, its share, the load on its suspension line."""

    ties: Ties
    index: int
    line: LineReads


@dataclass(frozen=True, slots=True)
class Paper:
    """A rating of an anchor for a use: the load, towards where, and within what of that."""

    load: Read
    toward: Read
    within: Read


@dataclass(frozen=True, slots=True)
class Pulled:
    """An anchor in one use: what its papers say, and what pulls."""

    anchor: str
    papers: tuple[Paper, ...]
    tie: OnTie | None = None
    pull: float = UNKNOWN
    """The direction of a lifeline's pull in plan; NaN where it passes the edge nobody said."""
    missing: Place = ()
    """Where that would be said."""


def load(sheet: Sheet, one: Asked[Pulled]) -> Iterator[Compared]:
    """What is asked of the anchor against what it is rated for."""
    pulled = one.subject
    rating = smaller(*(sheet.read(paper.load) for paper in pulled.papers))
    for value in one.values:
        if pulled.tie is None or not isinstance(value.content, FactorOnLoad):
            required = limit_of(value, FORCE)
        else:
            rule, tie = value.content, pulled.tie
            on_line = load_on_line(sheet, tie.line, rule.load)
            whole = sheet.do(load_to_carry, factor=rule.factor, load=on_line)
            required = share_of(sheet, tie.ties, tie.index, whole)
        numbers = (("rated", rating, FORCE), ("required", required, FORCE))
        words = (("anchor", pulled.anchor),)
        yield Compared(required, rating, words=words, numbers=numbers, value=value)


def turned(sheet: Sheet, one: Asked[Pulled]) -> Iterator[Compared]:
    """How far the pull turns off the direction the anchor is rated for."""
    pulled = one.subject
    words = (("anchor", pulled.anchor),)
    for paper in pulled.papers:
        within, off = sheet.read(paper.within), 0.0
        # Any direction is any: then nobody need say which.
        if surely_below(within, limit=HALF_TURN) or math.isnan(within):
            toward, pull = sheet.read(paper.toward), _pull(sheet, pulled)
            off = abs(turned_within(pull - toward))
        numbers = (("off", off, ANGLE), ("within", within, ANGLE))
        yield Compared(off, within, words=words, numbers=numbers)


def _pull(sheet: Sheet, pulled: Pulled) -> float:
    if pulled.tie is not None:
        return pull_of(sheet, pulled.tie.ties, pulled.tie.index)
    if pulled.missing:
        sheet.want("station", pulled.missing)
    return pulled.pull


def rated(judged: Judged[Pulled, Compared]) -> Told:
    """The anchor by name, whatever of its numbers is known."""
    shown, words = judged.weighed.shown, (("anchor", judged.asked.subject.anchor),)
    told = words if shown is None else tuple(shown.told())
    return Told(Message(f"{LOAD}.{ENDINGS[judged.weighed.met]}", told))


#: A paper against what is asked of it: no share of strength that is ranked with others.
RATED = Question(LOAD, LOAD, FORCE, load, rated, strength=False, share=False)
AIMED = Question(DIRECTION, DIRECTION, ANGLE, turned, strength=False)


def judge_load(case: Case) -> Iterator[Answer]:
    """One finding a line and its anchor."""
    for kind, one in pulled_anchors(case, LOAD):
        if isinstance(one, DoesNotApply):
            yield one
            continue
        for values in _values(case, kind):
            yield RATED.judge(case, Asked(one.subject, one.name, one.place, values))


def judge_direction(case: Case) -> Iterator[Answer]:
    """One finding a line and its anchor."""
    for _, one in pulled_anchors(case, DIRECTION):
        yield one if isinstance(one, DoesNotApply) else AIMED.judge(case, one)


def _values(case: Case, kind: AnchorUse) -> Iterator[tuple[SelectedValue, ...]]:
    """What is asked of an anchor in this use, each text's branches together."""
    keys = (LIFELINE_KEY,) if kind is AnchorUse.FALL_ARREST else TIEBACK_KEYS
    of_keys = [in_force_or_practice(case, key) for key in keys]
    yield from zip(*of_keys, strict=True)


def pulled_anchors(
    case: Case, check: str
) -> Iterator[tuple[AnchorUse, Asked[Pulled] | DoesNotApply]]:
    """Each tieback and each lifeline of the drop with its anchor."""
    anchors = {
        one.id: (one, ("site", "roofs", roof.id, "anchors", one.id))
        for roof in case.project.site.roofs
        for one in roof.anchors
    }
    none = True
    for point in case.points:
        ties, line = ties_of(case, point), line_reads(case, point)
        for index, tie in enumerate(ties.each):
            if tie.tie.anchor in anchors:
                none = False
                anchor, place = anchors[tie.tie.anchor]
                said = _papers(anchor, place, AnchorUse.TIEBACK)
                pulled = Pulled(anchor.id, said, tie=OnTie(ties, index, line))
                yield AnchorUse.TIEBACK, Asked(pulled, tie.name, place)
    rig = case.drop.rig
    for life in () if rig is None else rig.lines:
        if life.anchor in anchors:
            none = False
            anchor, place = anchors[life.anchor]
            at = (*case.place, "rig", "lifelines", life.id)
            said = _papers(anchor, place, AnchorUse.FALL_ARREST)
            missing = (*at, "station") if life.station is None else ()
            pulled = Pulled(anchor.id, said, pull=_over(case, anchor, life), missing=missing)
            yield AnchorUse.FALL_ARREST, Asked(pulled, f"{case.subject}/{life.id}", place)
    if none:
        reason = Message("na.no-anchor")
        yield AnchorUse.TIEBACK, DoesNotApply(check, case.subject, case.place, reason)


def _papers(anchor: Anchor, place: Place, use: AnchorUse) -> tuple[Paper, ...]:
    """Load and direction that each paper gives for a use, and the one rating for all its uses.

    That one says no direction: beside papers for the use it stands with that of the first.
    """
    own = tuple(
        _paper(one, (*place, "ratings", index))
        for index, one in enumerate(anchor.ratings)
        if one.use is use
    )
    aimed = own or (_paper(None, (*place, "ratings")),)
    if use in anchor.uses and (anchor.rating is not None or not own):
        return (*own, replace(aimed[0], load=read_of("anchor_rating", anchor, place)))
    return aimed


def _paper(rating: AnchorRating | None, at: Place) -> Paper:
    names = ("anchor_load", "anchor_toward", "anchor_within")
    load_read, toward, within = (read_of(name, rating, at) for name in names)
    return Paper(load_read, toward, within)


def _over(case: Case, anchor: Anchor, life: Lifeline) -> float:
    """The direction in plan from an anchor to where its lifeline passes the edge."""
    if life.station is None:
        return UNKNOWN
    station, inward = on_edge(case, anchor.at)
    out = outward(case)
    along = (-out[1], out[0])
    back = station - life.station
    return direction(
        across=out[0] * inward + along[0] * back, along=out[1] * inward + along[1] * back
    )


CHECKS = (
    Check(LOAD, Topic.ANCHORS, judge_load),
    Check(DIRECTION, Topic.ANCHORS, judge_direction),
)
