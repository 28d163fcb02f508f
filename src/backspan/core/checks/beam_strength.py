"""Does a beam without a rating take the load of its line: bending over the fulcrum, and idle.

The maker's label goes first: where it rates the beam, its load is the answer and nothing is
reckoned here. Else the section is: in service the moment stays below the allowed one, and four
times the load is carried without failure. Over the fulcrum the beam hogs; idle, a stack between
fulcrum and rear stand makes it sag, one behind the stand bends it over that.

Nobody stated how the beam is held sideways: then all of it is taken as its unbraced length. The
tip is free, and nothing that is stated holds the beam between its fulcrum and what is behind: no
less than either is unbraced, whatever somebody stated. Sagging is most where the stack stands
halfway; within a tape's doubt of that the ends of the doubt differ from it by its square over the
span, far less than a pound foot.

A single channel that would hold is left to an engineer: it twists besides.

How far the load bends the beam no rule limits, and what was seen of its bow is a word of its own:
both are told beside the answer and decide nothing. Behind the fulcrum the beam is held at its rear
stand or under its stack, whichever is further, for it bends most then.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.findings import Message
from backspan.core.mechanics.beam_loading import (
    allowed_moment,
    backspan_bow,
    hogging_moment,
    sagging_halfway,
    sagging_moment,
    tail_moment,
    tip_deflection,
)
from backspan.core.model.topics import Topic
from backspan.core.numbers import at_least, surely_above, surely_below
from backspan.core.quantities import LENGTH, MOMENT, RATIO, Amount
from backspan.core.rules.selected import SelectedValue
from backspan.core.rules.shape import FactorOnLoad, LoadBasis, SectionForm
from backspan.core.sheet.beam_as_built import BeamReads, as_built, every_way
from backspan.core.sheet.beam_section import (
    SLENDER,
    SLENDER_OF,
    Steel,
    nominal_moment,
    section_numbers,
)
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.decide import ENDINGS
from backspan.core.sheet.labelled_beam import unless_rated
from backspan.core.sheet.limits import limit_of
from backspan.core.sheet.load_on_line import load_on_line
from backspan.core.sheet.moments import SupportReads, support_reads
from backspan.core.sheet.own_bending import own_behind, own_between, own_over_fulcrum
from backspan.core.sheet.plain_beam import (
    PlainBeam,
    plain_beams,
    unbraced_of,
    unless_it_twists,
    with_plates,
)
from backspan.core.sheet.question import Asked, Judged, Question, Told
from backspan.core.sheet.reactions import stand_under
from backspan.core.sheet.reads import UNKNOWN, Read, read_of
from backspan.core.sheet.sheet import Sheet
from backspan.core.worked.formula import AnyFormula

ID = "beam-strength"
SAFETY = "beam.safety-bending"


@dataclass(slots=True, kw_only=True)
class Bent(Compared):
    """A moment that bends the beam against what it takes; `says` which of them."""

    says: str
    tip_down: float = UNKNOWN
    bow_up: float = UNKNOWN

    def bends(self) -> tuple[tuple[str, Amount], ...]:
        """How far the load of the line bends the beam, where that is known."""
        found = (("tip_down", self.tip_down), ("bow_up", self.bow_up))
        return tuple((name, Amount(far, LENGTH)) for name, far in found if not math.isnan(far))


@dataclass(frozen=True, slots=True)
class Taken:
    """The moment a beam takes, nominal, and the second moment by which it bends."""

    moment: float
    second_moment: float


@dataclass(frozen=True, slots=True)
class BySection:
    """A beam as built, and how its section is reckoned."""

    plain: PlainBeam
    support: SupportReads
    unbraced: Read
    rear_stand: Read


def work(sheet: Sheet, one: Asked[BySection]) -> Iterator[Bent]:
    """Each rule's load over the fulcrum, the load in service, and the idle stack."""
    beam, section = one.subject.support.beam, one.subject
    built = as_built(sheet, beam)
    taken = sheet.part("moment", lambda sheet: _nominal(sheet, section))
    nominal = taken.moment
    own = own_over_fulcrum(sheet, beam, built.reach)
    for value in one.values:
        rule = value.content
        if isinstance(rule, FactorOnLoad):
            load = load_on_line(sheet, section.support.line, rule.load)
            asked = sheet.do(
                hogging_moment, factor=rule.factor, load=load, reach=built.reach, own_outboard=own
            )
            yield _bent(asked, nominal, value, "four-times")
        elif value.key == SAFETY:
            allowed = sheet.do(
                allowed_moment, nominal_moment=nominal, safety_factor=limit_of(value, RATIO)
            )
            load = load_on_line(sheet, section.support.line, LoadBasis.HOIST_RATED)
            asked = sheet.do(
                hogging_moment, factor=1.0, load=load, reach=built.reach, own_outboard=own
            )
            stand = stand_under(sheet, beam, section.rear_stand, built.reach)
            service = _bent(asked, allowed, value, "service")
            held = at_least(built.backspan, least=stand)
            service.tip_down, service.bow_up = (
                sheet.do(
                    formula,
                    load=load,
                    reach=built.reach,
                    backspan=held,
                    elastic_constant=section.plain.elastic,
                    second_moment=taken.second_moment,
                )
                for formula in (tip_deflection, backspan_bow)
            )
            yield service
            for idle in _idle(sheet, beam, stand):
                yield _bent(idle, allowed, value, "idle")


def _idle(sheet: Sheet, beam: BeamReads, stand: float) -> Iterator[float]:
    """The moments of an idle beam: at each known backspan, and halfway where it lies between two.

    Sagging is most halfway, bending over the rear stand further out: neither is by the shorter.
    """
    short = far = False
    for beside, built in every_way(sheet, beam):
        if surely_above(built.backspan, limit=stand):
            formula: AnyFormula = tail_moment
            own = own_behind(sheet, beam, reach=built.reach, rear_stand=stand)
        else:
            formula, own = sagging_moment, own_between(sheet, beam, rear_stand=stand)
        yield beside.do(
            formula,
            counterweight=built.counterweight,
            backspan=built.backspan,
            rear_stand=stand,
            own_idle=own,
        )
        twice = built.backspan + built.backspan
        short = short or surely_below(twice, limit=stand)
        far = far or surely_above(twice, limit=stand)
    if short and far:
        yield sheet.do(
            sagging_halfway,
            counterweight=built.counterweight,
            rear_stand=stand,
            own_idle=own_between(sheet, beam, rear_stand=stand),
        )


def _nominal(sheet: Sheet, one: BySection) -> Taken:
    plain = one.plain
    unbraced = unbraced_of(sheet, one.unbraced, one.support.beam, one.rear_stand)
    given = with_plates(sheet, plain.form, plain.given(sheet))
    slender = {name: plain.ratios[key] for name, key in _slender(plain.form).items()}
    steel = Steel(sheet.read(plain.yield_strength), plain.elastic, slender)
    numbers = section_numbers(sheet.do, plain.form, given)
    nominal = nominal_moment(
        sheet.do, plain.form, numbers, steel, unbraced, rolled=bool(plain.of_table)
    )
    sheet.positive("thin_plates", nominal.plate_left)
    return Taken(nominal.moment, numbers["second_moment"])


def _slender(form: SectionForm) -> dict[str, str]:
    return {name: SLENDER[name] for name in SLENDER_OF[form]}


def _bent(demand: float, capacity: float, value: SelectedValue, says: str) -> Bent:
    numbers = (("moment", demand, MOMENT), ("takes", capacity, MOMENT))
    return Bent(demand, capacity, numbers=numbers, value=value, says=says)


def tells(judged: Judged[BySection, Bent]) -> Told:
    """Which of the moments governs, and whether all of the beam was taken as unbraced."""
    shown, met = judged.weighed.shown, judged.weighed.met
    whole = judged.asked.subject.unbraced.stated is None
    notes: tuple[Message, ...] = (Message(f"note.{'whole-beam' if whole else 'held-upright'}"),)
    bends = next((found for one in judged.weighed.branches if (found := one.bends())), ())
    notes += (Message("note.beam-bends", bends),) if bends else ()
    if shown is None or met is None:
        return Told(Message("beam-moment.missing"), notes, bends)
    return Told(Message(f"beam-{shown.says}.{ENDINGS[met]}", tuple(shown.told())), notes, bends)


QUESTION = Question(ID, ID, MOMENT, work, tells)


def judge(case: Case) -> Iterator[Answer]:
    """One finding a beam that its label does not rate and whose section somebody stated."""
    for plain in plain_beams(case, ID, SAFETY, lambda form: tuple(_slender(form).values())):
        if not isinstance(plain, PlainBeam):
            yield plain
            continue
        subject = plain.subject
        one = BySection(
            plain,
            support_reads(case, subject),
            read_of("unbraced_length", subject.support, subject.place),
            read_of("rear_stand", subject.support, subject.place),
        )
        found = QUESTION.judge(case, Asked(one, subject.name, subject.place, plain.values))
        yield unless_it_twists(case, plain, found, "beam-twists")


CHECK = Check(ID, Topic.BEAM, unless_rated(ID, judge))
