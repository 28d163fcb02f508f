"""Does the web of an I or a channel without a rating stay upright over the fulcrum that presses it.

Outboard loads press the lower flange over the fulcrum: between flanges that nothing holds the web
may buckle sideways there, the sooner the longer the beam lies unheld. Whether the pressed flange
may turn nobody is asked: it is taken as free. Where nobody stated how the beam is held sideways all
of it counts as unbraced. So strict an answer refuses nothing: a beam that is held at its fulcrum,
or has stiffeners there, may take far more, which an engineer says who knows how it is held.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.findings import Decider, DoesNotApply, Finding, Message, Need
from backspan.core.mechanics.beam_web import allowed_force, sideways_slenderness, web_sideways
from backspan.core.mechanics.bearing import imposed_load
from backspan.core.model.topics import Topic
from backspan.core.numbers import surely_above
from backspan.core.quantities import FORCE, RATIO
from backspan.core.rules.selected import SelectedValue
from backspan.core.rules.shape import FactorOnLoad, LoadBasis
from backspan.core.sheet.beam_section import OPEN
from backspan.core.sheet.beam_web import slenderness
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.decide import ENDINGS, refused_by_a_person
from backspan.core.sheet.labelled_beam import unless_rated
from backspan.core.sheet.limits import limit_of
from backspan.core.sheet.load_on_line import load_on_line
from backspan.core.sheet.moments import SupportReads, support_reads
from backspan.core.sheet.plain_beam import (
    SIDEWAYS,
    PlainBeam,
    plain_beams,
    unbraced_of,
    unless_it_twists,
)
from backspan.core.sheet.question import Asked, Judged, Question, Told
from backspan.core.sheet.reactions import rear_stand_read, standing
from backspan.core.sheet.reads import Read, read_of
from backspan.core.sheet.sheet import Sheet

ID = "beam-sideways"
SAFETY, BRACED = "beam.safety-sideways", "beam.sideways-ratio"


@dataclass(slots=True, kw_only=True)
class Sideways(Compared):
    """What presses the web against what it takes sideways; `says` which of them."""

    says: str


@dataclass(frozen=True, slots=True)
class Upright:
    """A beam as built, how its section is reckoned, and how far it lies unheld."""

    plain: PlainBeam
    support: SupportReads
    rear_stand: Read
    unbraced: Read


def work(sheet: Sheet, one: Asked[Upright]) -> Iterator[Sideways]:
    """What the fulcrum presses, under each rule's load and in service."""
    upright = one.subject
    beam, line = upright.support.beam, upright.support.line
    stands = standing(sheet, beam, upright.rear_stand)
    nominal = sheet.part("sideways", lambda sheet: _taken(sheet, upright))
    for value in one.values:
        rule = value.content
        if isinstance(rule, FactorOnLoad):
            reaction = stands.front(sheet, load_on_line(sheet, line, rule.load))
            force = sheet.do(imposed_load, factor=rule.factor, reaction=reaction)
            yield _against(force, nominal, value, "four")
        elif value.key == SAFETY:
            force = stands.front(sheet, load_on_line(sheet, line, LoadBasis.HOIST_RATED))
            safety = limit_of(value, RATIO)
            allowed = None if nominal is None else _allowed(sheet, nominal, safety)
            yield _against(force, allowed, value, "service")


def _allowed(sheet: Sheet, nominal: float, safety: float) -> float:
    return sheet.do(allowed_force, nominal_force=nominal, safety_factor=safety)


def _taken(sheet: Sheet, one: Upright) -> float | None:
    """The force at which the web buckles sideways; None where the beam is held so near it does not.

    Unknown where a size or the length is.
    """
    plain = one.plain
    unbraced = unbraced_of(sheet, one.unbraced, one.support.beam, one.rear_stand)
    given, web = plain.given(sheet), slenderness(sheet, plain)
    slender = sheet.do(
        sideways_slenderness,
        web_slenderness=web.slender,
        unbraced_length=sheet.positive("unbraced", unbraced),
        flange_width=given["flange_width"],
    )
    if surely_above(slender, limit=plain.ratios[BRACED]):
        return None
    return sheet.do(
        web_sideways,
        sideways_constant=plain.ratios[SIDEWAYS],
        web_thickness=given["web_thickness"],
        flange_thickness=given["flange_thickness"],
        web_height=web.height,
        sideways_slenderness=slender,
    )


def _against(force: float, takes: float | None, value: SelectedValue, says: str) -> Sideways:
    if takes is None:
        # It does not buckle so, whatever presses it.
        return Sideways(0.0, force, value=value, says="held")
    numbers = (("force", force, FORCE), ("takes", takes, FORCE))
    return Sideways(force, takes, numbers=numbers, value=value, says=says)


def tells(judged: Judged[Upright, Sideways]) -> Told:
    """Which of the forces governs, and whether all of the beam was taken as unbraced."""
    shown, met = judged.weighed.shown, judged.weighed.met
    whole = judged.asked.subject.unbraced.stated is None
    notes = (Message(f"note.{'whole-beam' if whole else 'held-upright'}"),)
    if shown is None or met is None:
        return Told(Message("sideways.missing"), notes)
    return Told(Message(f"sideways-{shown.says}.{ENDINGS[met]}", tuple(shown.told())), notes)


QUESTION = Question(ID, "sideways", FORCE, work, tells)


def judge(case: Case) -> Iterator[Answer]:
    """One finding a beam that is an I and is reckoned by its section."""
    for plain in plain_beams(case, ID, SAFETY, lambda _: (BRACED, SIDEWAYS)):
        if not isinstance(plain, PlainBeam):
            yield plain
            continue
        subject = plain.subject
        if plain.form not in OPEN:
            yield DoesNotApply(ID, subject.name, subject.place, Message("na.no-open-web"))
            continue
        upright = Upright(
            plain,
            support_reads(case, subject),
            rear_stand_read(case, subject),
            read_of("unbraced_length", subject.support, subject.place),
        )
        found = QUESTION.judge(case, Asked(upright, subject.name, subject.place, plain.values))
        held = found.message.id == "sideways-held.pass"
        says = "web-twists-held" if held else "web-twists"
        yield unless_it_twists(case, plain, _to_an_engineer(found, upright), says)


def _to_an_engineer(found: Finding, one: Upright) -> Finding:
    """A web that may buckle sideways as reckoned here may be held: who knows says so."""
    beam = (("beam", one.plain.subject.support.beam),)
    return refused_by_a_person(
        found, Need(Decider.LICENSED_ENGINEER, Message("need.sideways", beam))
    )


CHECK = Check(ID, Topic.BEAM, unless_rated(ID, judge))
