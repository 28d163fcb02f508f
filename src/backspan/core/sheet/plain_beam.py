"""A beam of one piece: what is stated of its section, and by which values.

A shape is only a name: that it is this one the sizes show that somebody measured, all of them, as
neighbours of a table differ in one alone (W6x12 and W6x15 in the flanges' width, S6x12.5 and
S6x17.25 in the web). Measured less than the table has, by more than rolling and a tape explain, it
is another shape; so it is where it is much deeper or wider. A thicker plate is no worse.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, replace

from backspan.core.findings import Decider, DoesNotApply, Finding, Message, Need
from backspan.core.model.beams import BeamSection, Joined, Metal
from backspan.core.numbers import at_least, at_most, surely_above, surely_below
from backspan.core.quantities import PRESSURE, RATIO
from backspan.core.rules.selected import SelectedRules, SelectedValue
from backspan.core.rules.shape import SIZES_OF, Section, SectionForm
from backspan.core.sheet.beam_as_built import BeamReads, furthest_backspan
from backspan.core.sheet.beam_section import OPEN
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer
from backspan.core.sheet.decide import passed_by_a_person
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.limits import limit_of, needed_value
from backspan.core.sheet.moments import factor_values
from backspan.core.sheet.presence import judge_presence
from backspan.core.sheet.reads import UNKNOWN, Read, read_of
from backspan.core.sheet.sheet import Sheet
from backspan.core.sheet.subjects import BeamSubject, counterweighted, in_force
from backspan.core.sheet.witness import EvidenceClass

TOPIC = "beam"
ELASTIC, APART = "beam.elastic-constant", "beam.shape-sizes"
SIDEWAYS = "beam.sideways-constant"
#: The values that are pressures; all others of a form are ratios.
_PRESSURES = {ELASTIC, SIDEWAYS}
#: Sizes of which another shape may have more, and be the weaker one.
_BOTH_WAYS = ("section_depth", "flange_width")
#: The keys of the ratios by which a form is reckoned.
KeysOf = Callable[[SectionForm], tuple[str, ...]]


@dataclass(frozen=True, slots=True)
class PlainBeam:
    """A beam as it is reckoned: its section by a table or its sizes, its steel, the rule values."""

    subject: BeamSubject
    form: SectionForm
    of_table: Mapping[str, float]
    sizes: Mapping[str, Read]
    yield_strength: Read
    elastic: float
    apart: float
    ratios: Mapping[str, float]
    """What the rule values say by their keys; `beam.sideways-constant` is a pressure."""
    values: tuple[SelectedValue, ...]

    def given(self, sheet: Sheet) -> Mapping[str, float]:
        """The numbers of its section that are given; it is the shape that is named."""
        sizes = {name: sheet.read(read) for name, read in self.sizes.items()}
        for name, measured in sizes.items() if self.of_table else ():
            listed = self.of_table[name]
            over, apart = measured - listed, listed * self.apart
            sheet.positive("other_shape", apart + over)
            if name in _BOTH_WAYS:
                sheet.positive("other_shape", apart - over)
        return self.of_table or sizes


def plain_beams(
    case: Case, check: str, safety: str, keys_of: KeysOf
) -> Iterator[PlainBeam | Answer]:
    """Each beam whose section is stated; of the others why it is not reckoned, or who does it.

    `safety` is the rule value without which no text in force says how.
    """
    for subject in counterweighted(case, check):
        if isinstance(subject, DoesNotApply):
            yield subject
            continue
        beam = case.beam(subject.support.beam)
        if beam.section is None:
            yield DoesNotApply(check, subject.name, subject.place, Message("na.no-section"))
        elif unsaid := _unsaid(beam.section):
            yield _not_said(case, check, subject, unsaid)
        else:
            found = _plain_beam(case, subject, beam.section, safety, keys_of)
            if isinstance(found, str):
                yield left_to_engineer(case, check, check, subject, found)
            else:
                yield found


def _unsaid(section: BeamSection) -> tuple[str, ...]:
    """What somebody has to say of a section of which only sizes are stated.

    Aluminium bends three times as far as steel, and a channel twists: neither is taken for granted.
    """
    if section.shape is not None:
        return ()
    made = () if section.material is not None else ("section_material",)
    open_web = section.wall is None and section.form is None
    return (*made, "section_form") if open_web else made


def _not_said(case: Case, check: str, subject: BeamSubject, unsaid: tuple[str, ...]) -> Finding:
    inputs = Inputs(case)
    for name in unsaid:
        place = ("kit", "beams", subject.support.beam, "section", name.removeprefix("section_"))
        inputs.want(name, EvidenceClass.SIZE, place)
    return judge_presence(
        inputs,
        check=check,
        subject=subject.name,
        place=subject.place,
        message=Message("section-unsaid.missing"),
        met=None,
        rules=(needed_value(case.practice, APART),),
        question=check,
    )


def left_to_engineer(
    case: Case, check: str, question: str, subject: BeamSubject, says: str
) -> Finding:
    """What only an engineer can reckon of a beam: not judged here."""
    beam = (("beam", case.beam(subject.support.beam).id),)
    who = Need(Decider.LICENSED_ENGINEER, Message(f"need.{says}", beam))
    return replace(
        judge_presence(
            Inputs(case),
            check=check,
            subject=subject.name,
            place=subject.place,
            message=Message(f"{says}.refer"),
            met=True,
            refer=(who,),
            question=question,
        ),
        not_judged=True,
    )


def with_plates(sheet: Sheet, form: SectionForm, given: Mapping[str, float]) -> Mapping[str, float]:
    """The numbers of a section whose sizes leave it a web and flanges; else its domain is left."""
    if form not in OPEN:
        return given
    depth, thick = given["section_depth"], given["flange_thickness"]
    width, web = given["flange_width"], given["web_thickness"]
    between = sheet.positive("no_web", depth - thick - thick)
    beside = sheet.positive("no_flange", width - web)
    known = surely_above(at_most(between, most=beside), limit=0.0)
    return given if known else {**given, "section_depth": UNKNOWN, "flange_width": UNKNOWN}


def unbraced_of(sheet: Sheet, unbraced: Read, beam: BeamReads, rear_stand: Read) -> float:
    """How far the beam lies unheld: as stated, all of it where nobody stated it.

    The tip of an outrigger is free, so it is no less than the reach; outside its domain where less
    is stated, as whoever stated it measured something else. Nothing that a project states holds the
    beam between its fulcrum and what is behind, so that it is no less than that either.
    """
    if unbraced.stated is None:
        return sheet.read(beam.length)
    stated, reach = sheet.read(unbraced), sheet.read(beam.reach)
    over = unbraced.as_stated - beam.reach.as_stated
    if surely_below(over, limit=0.0):
        return sheet.positive("unbraced", over)
    behind = at_least(furthest_backspan(sheet, beam), least=sheet.read(rear_stand))
    return at_least(at_least(stated, least=reach), least=behind)


def unless_it_twists(case: Case, plain: PlainBeam, found: Finding, says: str) -> Finding:
    """The finding; of a channel that would hold, left to an engineer, whatever else is stated.

    A load in or beside the web of a channel goes past its shear centre and turns the beam about its
    own length. Its line hangs at a tip that nothing holds, and that a beam cannot move sideways is
    not that it cannot turn: nothing that a project states takes the twist away, so that no single
    channel passes here. One that fails without twist fails.
    """
    if plain.form is not SectionForm.CHANNEL:
        return found
    beam = (("beam", case.beam(plain.subject.support.beam).id),)
    who = Need(Decider.LICENSED_ENGINEER, Message("need.beam-twists", beam))
    return passed_by_a_person(found, who, says)


def _plain_beam(
    case: Case,
    subject: BeamSubject,
    section: BeamSection,
    safety: str,
    keys_of: KeysOf,
) -> PlainBeam | str:
    """How the beam is reckoned, with its rule values; else why only an engineer can."""
    support, beam = subject.support, case.beam(subject.support.beam)
    if support.splices or (support.joined and support.joined.value is Joined.SECTIONS):
        return "beam-spliced"
    if section.material not in {None, Metal.STEEL}:
        return "beam-aluminium"
    steel = next(iter(in_force(case, safety)), None)
    form, table = form_of(case, section)
    if steel is None or (section.shape is not None and table is None):
        return "beam-silent"
    texts = _texts(steel[0], (safety, ELASTIC, *keys_of(form)))
    if texts is None:
        return "beam-silent"
    place = ("kit", "beams", beam.id, "section")
    apart = needed_value(case.practice, APART)
    factors = tuple(value for held in case.under(TOPIC) for value in factor_values(held, TOPIC))
    return PlainBeam(
        subject=subject,
        form=form,
        of_table=table.content.numbers if table and isinstance(table.content, Section) else {},
        sizes={name: read_of(name, section, place) for name in SIZES_OF[form]},
        yield_strength=read_of("yield_strength", section, place),
        elastic=limit_of(texts[ELASTIC], PRESSURE),
        apart=limit_of(apart, RATIO),
        ratios={
            key: limit_of(one, PRESSURE if key in _PRESSURES else RATIO)
            for key, one in texts.items()
        },
        values=(*factors, *texts.values(), *(() if table is None else (table, apart))),
    )


def _texts(rules: SelectedRules, keys: tuple[str, ...]) -> dict[str, SelectedValue] | None:
    """The values of these keys; none where the text lacks one of them."""
    found = {key: value for key in keys if (value := rules.find(key)) is not None}
    return found if found.keys() == set(keys) else None


def form_of(case: Case, section: BeamSection) -> tuple[SectionForm, SelectedValue | None]:
    """The form of a section, and the rule value of the table where its shape is named there."""
    for rules in case.under(TOPIC):
        for value in rules.topic(TOPIC):
            shape = value.content
            if isinstance(shape, Section) and shape.shape == section.shape:
                return shape.form, value
    return form_by_sizes(section), None


def form_by_sizes(section: BeamSection) -> SectionForm:
    """The form that is stated of a section, else the one that its sizes make."""
    if section.form is not None:
        return section.form
    if section.wall is None:
        return SectionForm.I_SHAPE
    return SectionForm.PIPE if section.flange_width is None else SectionForm.TUBE
