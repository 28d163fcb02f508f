"""Does a beam without a rating take the load of its line: bending over the fulcrum, and idle.

The maker's label goes first: where it rates the beam, its load is the answer and nothing is
reckoned here. Else the section is: in service the moment stays below the allowed one, and four
times the load is carried without failure. Over the fulcrum the beam hogs; idle, a stack between
fulcrum and rear stand makes it sag, one behind the stand bends it over that.

A shape is only a name: that it is this one the depth and the thickness show that somebody measured.
Measured less than the table has, by more than rolling and a tape explain, it is another shape.

Nobody stated how the beam is held sideways: then all of it is taken as its unbraced length. Sagging
is most where the stack stands halfway; within a tape's doubt of that the ends of the doubt differ
from it by its square over the span, far less than a pound foot.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field, replace

from backspan.core.findings import Decider, DoesNotApply, Finding, Message, Need
from backspan.core.mechanics.beam_loading import (
    allowed_moment,
    hogging_moment,
    own_moment_outboard,
    sagging_moment,
    tail_moment,
)
from backspan.core.mechanics.tipping import weight
from backspan.core.model.beams import BeamSection, Joined
from backspan.core.model.kit import Beam
from backspan.core.model.topics import Topic
from backspan.core.numbers import surely_above
from backspan.core.quantities import MOMENT, PRESSURE, RATIO
from backspan.core.rules.selected import SelectedValue
from backspan.core.rules.shape import FactorOnLoad, LoadBasis, Section, SectionForm
from backspan.core.sheet.beam_as_built import as_built
from backspan.core.sheet.beam_section import (
    SIZES_OF,
    SLENDER,
    SLENDER_OF,
    Steel,
    by_its_section,
    nominal_moment,
    section_numbers,
)
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.decide import ENDINGS
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.limits import limit_of, needed_value
from backspan.core.sheet.load_on_line import load_on_line
from backspan.core.sheet.moments import SupportReads, factor_values, support_reads
from backspan.core.sheet.presence import judge_presence
from backspan.core.sheet.question import Asked, Compared, Judged, Question, Told
from backspan.core.sheet.reads import Read, read_of
from backspan.core.sheet.sheet import Sheet
from backspan.core.sheet.subjects import BeamSubject, counterweighted, in_force

ID, TOPIC = "beam-strength", "beam"
SAFETY, ELASTIC = "beam.safety-bending", "beam.elastic-constant"
APART = "beam.shape-sizes"
#: By what a shape is known again, of those that can be measured on a beam.
SHOWN_BY = {
    SectionForm.I_SHAPE: ("section_depth", "flange_thickness"),
    SectionForm.TUBE: ("section_depth", "wall"),
    SectionForm.PIPE: ("section_depth", "wall"),
}


@dataclass(slots=True, kw_only=True)
class Bent(Compared):
    """A moment that bends the beam against what it takes; `says` which of them."""

    says: str


@dataclass(frozen=True, slots=True)
class BySection:
    """A beam as built, its section by a table or its sizes, and how its strength is reckoned."""

    support: SupportReads
    form: SectionForm
    of_table: Mapping[str, float]
    sizes: Mapping[str, Read]
    yield_strength: Read
    unbraced: Read
    rear_stand: Read
    elastic: float
    apart: float
    slender: Mapping[str, float] = field(repr=False)


def work(sheet: Sheet, one: Asked[BySection]) -> Iterator[Bent]:
    """Each rule's load over the fulcrum, the load in service, and the idle stack."""
    beam, section = one.subject.support.beam, one.subject
    built = as_built(sheet, beam)
    nominal = sheet.part("moment", lambda sheet: _nominal(sheet, section))
    own = sheet.do(
        own_moment_outboard,
        beam_weight=sheet.do(weight, mass=sheet.read(beam.mass)),
        beam_length=sheet.read(beam.length),
        reach=built.reach,
        tip_beyond_line=sheet.read(beam.tip),
    )
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
            yield _bent(asked, allowed, value, "service")
            stand = sheet.positive("rear_stand", sheet.read(section.rear_stand))
            behind = surely_above(built.backspan, limit=stand)
            idle = sheet.do(
                tail_moment if behind else sagging_moment,
                counterweight=built.counterweight,
                backspan=built.backspan,
                rear_stand=stand,
            )
            yield _bent(idle, allowed, value, "idle")


def _hogs(sheet: Sheet, one: BySection, factor: float, basis: LoadBasis, own: float) -> float:
    """The moment over the fulcrum: the load by its factor, and the beam itself outboard."""
    load, reach = load_on_line(sheet, one.support.line, basis), sheet.read(one.support.beam.reach)
    return sheet.do(hogging_moment, factor=factor, load=load, reach=reach, own_outboard=own)


def _nominal(sheet: Sheet, one: BySection) -> float:
    whole = one.unbraced.stated is None
    unbraced = sheet.read(one.support.beam.length if whole else one.unbraced)
    sizes = {name: sheet.read(read) for name, read in one.sizes.items()}
    for name, measured in sizes.items() if one.of_table else ():
        sheet.positive(
            "other_shape", measured + one.of_table[name] * one.apart - one.of_table[name]
        )
    given = one.of_table or sizes
    steel = Steel(sheet.read(one.yield_strength), one.elastic, one.slender)
    numbers = section_numbers(sheet.do, one.form, given)
    nominal = nominal_moment(sheet.do, one.form, numbers, steel, unbraced)
    sheet.positive("thin_plates", nominal.plate_left)
    return nominal.moment


def _bent(demand: float, capacity: float, value: SelectedValue, says: str) -> Bent:
    numbers = (("moment", demand, MOMENT), ("takes", capacity, MOMENT))
    return Bent(demand, capacity, numbers=numbers, value=value, says=says)


def tells(judged: Judged[BySection, Bent]) -> Told:
    """Which of the moments governs, and whether all of the beam was taken as unbraced."""
    shown, met = judged.weighed.shown, judged.weighed.met
    whole = judged.asked.subject.unbraced.stated is None
    notes = (Message("note.whole-beam"),) if whole else ()
    if shown is None or met is None:
        return Told(Message("beam-moment.missing"), notes)
    return Told(Message(f"beam-{shown.says}.{ENDINGS[met]}", tuple(shown.told())), notes)


QUESTION = Question(ID, ID, MOMENT, work, tells)


def judge(case: Case) -> Iterator[Answer]:
    """One finding a beam that its label does not rate and whose section somebody stated."""
    for subject in counterweighted(case, ID):
        if isinstance(subject, DoesNotApply):
            yield subject
            continue
        beam = case.beam(subject.support.beam)
        if beam.section is None:
            yield DoesNotApply(ID, subject.name, subject.place, Message("na.no-section"))
        elif not by_its_section(beam):
            yield DoesNotApply(ID, subject.name, subject.place, Message("na.rated-by-label"))
        else:
            yield _judged(case, subject, beam, beam.section)


def _judged(case: Case, subject: BeamSubject, beam: Beam, section: BeamSection) -> Finding:
    found = _by_section(case, subject, beam, section)
    if isinstance(found, str):
        who = Need(Decider.LICENSED_ENGINEER, Message(f"need.{found}", (("beam", beam.id),)))
        return replace(
            judge_presence(
                Inputs(case),
                check=ID,
                subject=subject.name,
                place=subject.place,
                message=Message(f"{found}.refer"),
                met=True,
                refer=(who,),
                question=ID,
            ),
            not_judged=True,
        )
    one, values = found
    return QUESTION.judge(case, Asked(one, subject.name, subject.place, values))


def _by_section(
    case: Case, subject: BeamSubject, beam: Beam, section: BeamSection
) -> tuple[BySection, tuple[SelectedValue, ...]] | str:
    """How the beam is reckoned, with its rule values; else why only an engineer can."""
    support = subject.support
    if support.splices or (support.joined and support.joined.value is Joined.SECTIONS):
        return "beam-spliced"
    steel = next(iter(in_force(case, SAFETY)), None)
    if steel is None:
        return "beam-silent"
    rules, safety = steel
    texts = {name: rules.find(key) for name, key in SLENDER.items()}
    elastic = rules.find(ELASTIC)
    slender = {name: limit_of(one, RATIO) for name, one in texts.items() if one is not None}
    form, table = _form_of(case, section)
    if section.shape is not None and table is None:
        return "beam-silent"
    if form not in SIZES_OF:
        return "beam-form"
    if elastic is None or None in texts.values():
        return "beam-silent"
    place = ("kit", "beams", beam.id, "section")
    names = SIZES_OF[form] if table is None else SHOWN_BY[form]
    apart = needed_value(case.practice, APART)
    section_asked = BySection(
        support_reads(case, subject),
        form,
        table.content.numbers if table and isinstance(table.content, Section) else {},
        {name: read_of(name, section, place) for name in names},
        read_of("yield_strength", section, place),
        read_of("unbraced_length", support, subject.place),
        read_of("rear_stand", support, subject.place),
        limit_of(elastic, PRESSURE),
        limit_of(apart, RATIO),
        slender,
    )
    factors = tuple(value for held in case.under(TOPIC) for value in factor_values(held, TOPIC))
    of_shape = () if table is None else (table, apart)
    of_plates = (one for name in SLENDER_OF[form] if (one := texts[name]) is not None)
    return section_asked, (*factors, safety, elastic, *of_plates, *of_shape)


def _form_of(case: Case, section: BeamSection) -> tuple[SectionForm, SelectedValue | None]:
    """The form of a section, and the rule value of the table where its shape is named there."""
    for rules in case.under(TOPIC):
        for value in rules.topic(TOPIC):
            shape = value.content
            if isinstance(shape, Section) and shape.shape == section.shape:
                return shape.form, value
    if section.wall is None:
        return SectionForm.I_SHAPE, None
    return (SectionForm.PIPE if section.flange_width is None else SectionForm.TUBE), None


CHECK = Check(ID, Topic.BEAM, judge)
