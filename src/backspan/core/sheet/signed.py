"""What a licensed engineer signed for a drop: whose paper counts, is the beam inside its limits.

Each limit is compared by itself; the share of it that is used ranks them. On the fulcrum may come
all that hangs at rated load and all that lies on the beam, P + W + G, which is what it carries when
the tail is about to lift, and never less than at rated load or idle, wherever the rear stand is. On
the rear stand comes most with nothing on the line. No factor is on either: the paper's limits are
of what comes on a stand in service.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.findings import Finding, MessageValue, Verdict
from backspan.core.mechanics.bearing import front_reaction
from backspan.core.mechanics.share import utilisation
from backspan.core.mechanics.tipping import weight
from backspan.core.model.evidence import is_before
from backspan.core.model.signed import LIMITS, SignedLimits
from backspan.core.numbers import surely_below, surely_nothing
from backspan.core.quantities import FORCE, LENGTH, RATIO, Dimension
from backspan.core.sheet.beam_as_built import as_built
from backspan.core.sheet.case import Case
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.limits import needed_value
from backspan.core.sheet.moments import SupportReads, support_reads
from backspan.core.sheet.question import Asked, Question
from backspan.core.sheet.reactions import most_behind, on_two_stands
from backspan.core.sheet.reads import Read, read_of
from backspan.core.sheet.sheet import Sheet
from backspan.core.sheet.subjects import BeamSubject
from backspan.core.sheet.witness import words_of

ID = "signed-limits"
Words = tuple[tuple[str, MessageValue], ...]

#: Who may sign what a beam stands on may say how far a paper reaches.
WHO = "take-over.what-it-stands-on"


@dataclass(frozen=True, slots=True)
class Limited:
    """A beam beside one paper."""

    support: SupportReads
    rear_stand: Read
    paper: SignedLimits


def papers_of(case: Case) -> tuple[tuple[int, SignedLimits], ...]:
    """The papers that name the drop, each with its place in the project."""
    papers = enumerate(case.project.signed_limits)
    return tuple((at, one) for at, one in papers if case.drop.id in one.drops)


def limits_of(paper: SignedLimits) -> tuple[str, ...]:
    """The limits a paper states, by their fields."""
    return tuple(name for name in LIMITS if getattr(paper, name) is not None)


def who_may(case: Case) -> tuple[str, ...]:
    """The roles whose paper counts."""
    return words_of(needed_value(case.practice, WHO))


def why_not(case: Case, paper: SignedLimits) -> str | None:
    """Why a paper has no effect today: who signed it, or that it ended; None where it has."""
    person = case.person(paper.by)
    if person is None or person.role not in who_may(case):
        return "role"
    if not person.card:
        return "no-card"
    return "ended" if is_before(paper.until, case.on.isoformat()) else None


def said(case: Case, paper: SignedLimits) -> Words:
    """The paper as sentences name it."""
    person = case.person(paper.by)
    return (
        ("document", paper.document),
        ("revision", paper.revision or "-"),
        ("person", paper.by if person is None else person.name),
        ("until", paper.until),
        ("ends", case.work_ends),
    )


def off_the_list(case: Case, beam: BeamSubject, paper: SignedLimits) -> tuple[str, ...]:
    """The hoist and the beam of a point that are not among those of the paper."""
    point, support = beam.point, beam.support
    listed = (
        (paper.hoists, {point.hoist, case.hoist(point.hoist).id}, point.hoist),
        (paper.beams, {support.beam, case.beam(support.beam).id}, support.beam),
    )
    return tuple(name for names, own, name in listed if names and not own & set(names))


def work(sheet: Sheet, one: Asked[Limited]) -> Iterator[Compared]:
    """Each limit of the paper against what is there, as the share of it that is used."""
    paper, support, stand = one.subject.paper, one.subject.support, one.subject.rear_stand
    beam, line = support.beam, support.line
    if paper.most_reach is not None:
        yield _used(sheet, "reach", sheet.read(beam.reach), paper.most_reach, LENGTH)
    if paper.least_backspan is not None:
        there = as_built(sheet, beam).backspan
        yield _used(sheet, "backspan", there, paper.least_backspan, LENGTH, least=True)
    if paper.most_rated_load is not None:
        rated = sheet.read(line.rated_load)
        yield _used(sheet, "rated_load", rated, paper.most_rated_load, FORCE)
    if paper.most_front is not None:
        rated = sheet.read(line.rated_load)
        front = sheet.do(
            front_reaction,
            load=rated,
            counterweight=as_built(sheet, beam).counterweight,
            beam_weight=sheet.do(weight, mass=sheet.read(beam.mass)),
            carried_behind=0.0,
        )
        yield _used(sheet, "front_reaction", front, paper.most_front, FORCE)
    if paper.most_rear is not None:
        stands = on_two_stands(sheet, beam, stand)
        behind = most_behind(sheet, stands, beam)
        # No limit covers a beam that turns about its rear stand: its bearings are asked then.
        sheet.positive("front", stands.front(sheet, 0.0, carried_behind=behind))
        yield _used(sheet, "rear_reaction", behind, paper.most_rear, FORCE)


def _used(
    sheet: Sheet, name: str, found: float, limit: float, of: Dimension, *, least: bool = False
) -> Compared:
    demand, capacity = (limit, found) if least else (found, limit)
    numbers = (("value", found, of), ("limit", limit, of))
    words: Words = (("input", name),)
    if surely_nothing(capacity) or surely_below(capacity, limit=0.0):
        return Compared(1.0, 0.0, words=words, numbers=numbers)
    share = sheet.do(utilisation, of=of, demand=demand, capacity=capacity)
    return Compared(share, 1.0, words=words, numbers=numbers)


QUESTION = Question(ID, "signed", RATIO, work, strength=False)


def within(case: Case, beam: BeamSubject, at: int, paper: SignedLimits) -> Finding:
    """The finding on the limits alone: met, not met, or not known."""
    stand = read_of("rear_stand", beam.support, beam.place)
    limited = Limited(support_reads(case, beam), stand, paper)
    return case.once(
        (ID, beam.name, at),
        lambda: QUESTION.judge(case, Asked(limited, beam.name, beam.place)),
    )


def signed_for(case: Case, beam: BeamSubject, limit: str) -> Words | None:
    """The paper that says what may come on a stand, where it counts and the beam is inside it."""
    for at, paper in papers_of(case):
        if getattr(paper, limit) is None or why_not(case, paper) is not None:
            continue
        inside = not off_the_list(case, beam, paper)
        if inside and within(case, beam, at, paper).verdict is Verdict.PASS:
            return said(case, paper)
    return None
