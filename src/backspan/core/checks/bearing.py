"""Does the surface carry what the fulcrum presses on it, under each rule set that asks.

The place of the rear stand decides (core/sheet/reactions.py); where it is not known nothing is.

What lies behind the rear stand (b or x_G above c) presses the front less the heavier it is, once
the stand carries, and more until then: the worst of a doubtful mass then lies inside its range, at
N = 0, where no corner is. With one N is not taken off, which is never less than what is pressed.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.findings import DoesNotApply, Message
from backspan.core.mechanics.bearing import bearing_pressure, plate_area
from backspan.core.model.topics import Topic
from backspan.core.numbers import at_least, surely_above
from backspan.core.quantities import PRESSURE
from backspan.core.rules.shape import FactorOnLoad
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.decide import ENDINGS
from backspan.core.sheet.load_on_line import load_on_line
from backspan.core.sheet.moments import SupportReads, factor_values, support_reads
from backspan.core.sheet.question import Asked, Compared, Judged, Question, Told, asked_each
from backspan.core.sheet.reactions import on_two_stands
from backspan.core.sheet.reads import Read, read_of
from backspan.core.sheet.sheet import Sheet
from backspan.core.sheet.subjects import counterweighted, no_rule

ID = TOPIC = "bearing"


@dataclass(slots=True, kw_only=True)
class Pressed(Compared):
    """A pressure against the surface; whether what the rear stand carries was not taken off."""

    in_full: bool


@dataclass(frozen=True, slots=True)
class Standing:
    """A beam with what it stands on."""

    support: SupportReads
    rear_stand: Read
    plate_length: Read
    plate_width: Read
    strength: Read


def work(sheet: Sheet, one: Asked[Standing]) -> Iterator[Pressed]:
    """The pressure under each load of the rule against what the surface is said to carry."""
    standing, support = one.subject, one.subject.support
    stands = on_two_stands(sheet, support.beam, standing.rear_stand)
    built, own, stand = stands.built, stands.own, stands.stand
    length, width = sheet.read(standing.plate_length), sheet.read(standing.plate_width)
    area = sheet.positive("plate", sheet.do(plate_area, plate_length=length, plate_width=width))
    strength = sheet.read(standing.strength)
    furthest = built.inboard - built.tail_gap if support.beam.from_stack else built.backspan
    behind = any(surely_above(one, limit=stand) for one in (furthest, own.centroid_inboard))
    masses = (support.beam.mass, *(group.mass for group in support.beam.groups))
    in_full = behind and any(one.stated is not None and one.stated.tolerance for one in masses)
    for value in one.values:
        rule = value.content
        if not isinstance(rule, FactorOnLoad):
            continue
        load = load_on_line(sheet, support.line, rule.load)
        carried = 0.0 if in_full else at_least(stands.rear(load), least=0.0)
        front = stands.front(load, carried_behind=carried)
        # Less than nothing at the front: the beam would lift off and turn about its rear stand.
        sheet.positive("front", front)
        pressure = sheet.do(bearing_pressure, factor=rule.factor, reaction=front, plate_area=area)
        numbers = (("pressure", pressure, PRESSURE), ("strength", strength, PRESSURE))
        yield Pressed(pressure, strength, numbers=numbers, value=value, in_full=in_full)


def tells(judged: Judged[Standing, Pressed]) -> Told:
    """The pressure and the strength, and whether the rear stand got no credit."""
    ending = ENDINGS[judged.weighed.met]
    shown = judged.weighed.shown
    full = any(one.in_full for one in judged.weighed.branches)
    notes = (Message("note.behind-rear-stand"),) if full else ()
    return Told(Message(f"bearing.{ending}", () if shown is None else tuple(shown.told())), notes)


QUESTION = Question(ID, "bearing", PRESSURE, work, tells)


def judge(case: Case) -> Iterator[Answer]:
    """One finding a beam and rule set that says what its surface must carry."""
    return asked_each(QUESTION, case, asked(case))


def asked(case: Case) -> Iterator[Asked[Standing] | DoesNotApply]:
    """Each counterweighted beam under the branches of each rule set."""
    having = [values for rules in case.under(TOPIC) if (values := factor_values(rules, TOPIC))]
    for beam in counterweighted(case, ID):
        if isinstance(beam, DoesNotApply):
            yield beam
            continue
        if not having:
            yield DoesNotApply(ID, beam.name, beam.place, no_rule(case, TOPIC))
        fulcrum, place = beam.support.fulcrum, (*beam.place, "fulcrum")
        standing = Standing(
            support_reads(case, beam),
            read_of("rear_stand", beam.support, beam.place),
            read_of("plate_length", fulcrum, place),
            read_of("plate_width", fulcrum, place),
            read_of("surface_strength", fulcrum, place),
        )
        for values in having:
            yield Asked(standing, beam.name, beam.place, values)


CHECK = Check(ID, Topic.STANDS_ON, judge)
