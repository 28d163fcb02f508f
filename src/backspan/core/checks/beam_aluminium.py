"""A beam of aluminium without a rating: whether it yields or breaks over its fulcrum.

The stress at the edge of the section is held against the strength of its alloy: in service below
the allowed one, under four times the load below that at which it yields or breaks. Within an inch
of a weld an alloy of that temper has less than half: it counts as welded over the fulcrum until
somebody says that it is not. A yield strength that is stated counts where it is less.

This can only refuse. How a beam of aluminium turns over sideways and when its thin plates buckle,
and whether its web holds, no equation here says: one that would hold is left to an engineer. That
is why it is enough that the weld, and which alloy it is, are said without evidence.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.findings import Decider, DoesNotApply, Finding, Message, Need
from backspan.core.mechanics.beam_bending import moment_at_the_edge
from backspan.core.mechanics.beam_loading import allowed_moment, hogging_moment
from backspan.core.model.beams import BeamSection, Joined, Metal, Weld
from backspan.core.model.topics import Topic
from backspan.core.numbers import at_most
from backspan.core.quantities import MOMENT, PRESSURE, RATIO
from backspan.core.rules.selected import SelectedValue
from backspan.core.rules.shape import SIZES_OF, FactorOnLoad, LoadBasis, SectionForm
from backspan.core.sheet.beam_as_built import as_built
from backspan.core.sheet.beam_section import section_numbers
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.decide import ENDINGS, passed_by_a_person
from backspan.core.sheet.labelled_beam import unless_rated
from backspan.core.sheet.limits import limit_of
from backspan.core.sheet.load_on_line import load_on_line
from backspan.core.sheet.moments import SupportReads, factor_values, support_reads
from backspan.core.sheet.own_bending import own_over_fulcrum
from backspan.core.sheet.plain_beam import TOPIC, form_by_sizes, with_plates
from backspan.core.sheet.question import Asked, Judged, Question, Told
from backspan.core.sheet.reads import Read, read_of
from backspan.core.sheet.sheet import Sheet
from backspan.core.sheet.subjects import BeamSubject, counterweighted, in_force, no_rule

ID = "beam-aluminium"
YIELDS, BREAKS = "yield", "rupture"
#: The factor of safety of each way to fail.
SAFETY = {YIELDS: "beam.safety-aluminium-yielding", BREAKS: "beam.safety-aluminium-rupture"}
#: The alloys that a rule value may have a strength of, by their names in its key.
ALLOYS = {Metal.ALLOY_6061: "6061-t6", Metal.ALLOY_6063: "6063-t6"}


@dataclass(slots=True, kw_only=True)
class Bent(Compared):
    """A moment that bends the beam against what it takes; `says` which of them."""

    says: str


@dataclass(frozen=True, slots=True)
class OfAlloy:
    """A beam of an alloy: its form and sizes, and its strength in each way to fail."""

    support: SupportReads
    form: SectionForm
    sizes: dict[str, Read]
    stated: Read
    strengths: dict[str, float]
    maybe_welded: bool


def work(sheet: Sheet, one: Asked[OfAlloy]) -> Iterator[Bent]:
    """Each rule's load over the fulcrum, and the load in service, for both ways to fail."""
    alloy, beam = one.subject, one.subject.support.beam
    reach = as_built(sheet, beam).reach
    own = own_over_fulcrum(sheet, beam, reach)
    takes = sheet.part("moments", lambda sheet: _takes(sheet, alloy))
    for value in one.values:
        rule = value.content
        if isinstance(rule, FactorOnLoad):
            load = load_on_line(sheet, alloy.support.line, rule.load)
            asked = sheet.do(
                hogging_moment, factor=rule.factor, load=load, reach=reach, own_outboard=own
            )
            for nominal in takes.values():
                yield _bent(asked, nominal, value, "four-times")
        for way, key in SAFETY.items():
            if value.key == key:
                load = load_on_line(sheet, alloy.support.line, LoadBasis.HOIST_RATED)
                asked = sheet.do(
                    hogging_moment, factor=1.0, load=load, reach=reach, own_outboard=own
                )
                safety = limit_of(value, RATIO)
                allowed = sheet.do(allowed_moment, nominal_moment=takes[way], safety_factor=safety)
                yield _bent(asked, allowed, value, "service")


def _takes(sheet: Sheet, alloy: OfAlloy) -> dict[str, float]:
    """The moment at which the section yields, and at which it breaks, nominal."""
    given = {name: sheet.read(read) for name, read in alloy.sizes.items()}
    numbers = section_numbers(sheet.do, alloy.form, with_plates(sheet, alloy.form, given))
    strengths = dict(alloy.strengths)
    if alloy.stated.stated is not None:
        strengths[YIELDS] = at_most(strengths[YIELDS], most=sheet.read(alloy.stated))
    return {
        way: sheet.do(
            moment_at_the_edge,
            edge_strength=strength,
            elastic_modulus_x=numbers["elastic_modulus_x"],
        )
        for way, strength in strengths.items()
    }


def _bent(demand: float, capacity: float, value: SelectedValue, says: str) -> Bent:
    numbers = (("moment", demand, MOMENT), ("takes", capacity, MOMENT))
    return Bent(demand, capacity, numbers=numbers, value=value, says=says)


def tells(judged: Judged[OfAlloy, Bent]) -> Told:
    """Which of the moments governs, and whether a weld was counted that nobody spoke of."""
    shown, met = judged.weighed.shown, judged.weighed.met
    notes = (Message("note.maybe-welded"),) if judged.asked.subject.maybe_welded else ()
    if shown is None or met is None:
        return Told(Message("beam-moment.missing"), notes)
    return Told(Message(f"beam-{shown.says}.{ENDINGS[met]}", tuple(shown.told())), notes)


QUESTION = Question(ID, ID, MOMENT, work, tells)


def judge(case: Case) -> Iterator[Answer]:
    """One finding a beam of aluminium whose section is stated."""
    for subject in counterweighted(case, ID):
        if isinstance(subject, DoesNotApply):
            yield subject
            continue
        beam = case.beam(subject.support.beam)
        section = beam.section
        alloy = None if section is None else ALLOYS.get(section.material or Metal.STEEL)
        if section is None or alloy is None:
            yield DoesNotApply(ID, subject.name, subject.place, Message("na.no-aluminium"))
            continue
        joined = subject.support.joined
        if subject.support.splices or (joined and joined.value is Joined.SECTIONS):
            yield DoesNotApply(ID, subject.name, subject.place, Message("na.sections-joined"))
            continue
        yield _judge(case, subject, section, alloy)


def _judge(case: Case, subject: BeamSubject, section: BeamSection, alloy: str) -> Answer:
    beam = subject.support.beam
    place = ("kit", "beams", beam, "section")
    ending = "" if section.weld is Weld.NONE else "-weld"
    keys = (*SAFETY.values(), *(f"beam.{way}-{alloy}{ending}" for way in SAFETY))
    texts = {key: next((one for _, one in in_force(case, key)), None) for key in keys}
    values = tuple(one for one in texts.values() if one is not None)
    lacks = next((key for key, one in texts.items() if one is None), None)
    if lacks is not None or section.shape is not None:
        return DoesNotApply(ID, subject.name, subject.place, no_rule(case, lacks or TOPIC))
    form = form_by_sizes(section)
    one = OfAlloy(
        support_reads(case, subject),
        form,
        {name: read_of(name, section, place) for name in SIZES_OF[form]},
        read_of("yield_strength", section, place),
        {way: _strength(values, f"beam.{way}-{alloy}{ending}") for way in SAFETY},
        section.weld is None,
    )
    factors = tuple(value for held in case.under(TOPIC) for value in factor_values(held, TOPIC))
    asked = Asked(one, subject.name, subject.place, (*factors, *values))
    return _unless_it_holds(QUESTION.judge(case, asked), beam)


def _strength(values: tuple[SelectedValue, ...], key: str) -> float:
    return next(limit_of(one, PRESSURE) for one in values if one.key == key)


def _unless_it_holds(found: Finding, beam: str) -> Finding:
    """The finding; what would hold is an engineer's, whose sum says more than this one."""
    who = Need(Decider.LICENSED_ENGINEER, Message("need.beam-aluminium", (("beam", beam),)))
    return passed_by_a_person(found, who, "aluminium-holds")


CHECK = Check(ID, Topic.BEAM, unless_rated(ID, judge))
