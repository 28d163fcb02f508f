"""Numbers of a counterweighted beam that the trade has a band for, some worked out of others."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace

from backspan.core.model.evidence import StatedValue
from backspan.core.model.rigs import CounterweightedBeam
from backspan.core.numbers import exact_sum, surely_above
from backspan.core.quantities.named import QUANTITIES
from backspan.core.sheet.beam_as_built import BeamReads, as_built, beam_reads, inboard_of
from backspan.core.sheet.case import Case, Place
from backspan.core.sheet.reads import Read, beside, read_of
from backspan.core.sheet.section_weight import section_over_mass
from backspan.core.sheet.sheet import BareSheet
from backspan.core.sheet.subjects import BeamSubject


def of_fulcrum(support: CounterweightedBeam, place: Place) -> Iterator[Read]:
    """Where the beam bears, at the front and behind, and what it bears on."""
    yield read_of("rear_stand", support, place)
    of_plate = ("plate_length", "plate_width", "surface_strength", "bearing_length")
    for name in ("setback", "fulcrum_height", *of_plate):
        yield read_of(name, support.fulcrum, (*place, "fulcrum"))


def of_beam(case: Case, subject: BeamSubject) -> Iterator[Read]:
    """What was taped, counted and read of the beam, its stack and its label."""
    beam = beam_reads(case, subject)
    yield from (beam.reach, beam.backspan)
    yield from _taped_against_stack(beam)
    yield from _tip_against_inboard(beam)
    yield from _of_section(case, subject)
    yield from _of_label(case, subject)
    yield from (group.mass for group in beam.groups)
    counts = [group.count for group in subject.support.stack.groups]
    if counts:
        # Whoever counted a group and counted it again is still one person.
        again = [one.checked_by if one.by not in {None, one.checked_by} else None for one in counts]
        whole = StatedValue(
            exact_sum(one.value for one in counts),
            by=counts[0].by,
            checked_by=again[0] if all(again) else None,
        )
        yield Read(QUANTITIES["pieces"], whole, (*subject.place, "stack", "groups"))


def _of_section(case: Case, subject: BeamSubject) -> Iterator[Read]:
    """How strong its metal is, and what the sizes of its section weigh over what it weighs."""
    beam = case.beam(subject.support.beam)
    place = ("kit", "beams", beam.id, "section")
    if beam.section is not None:
        yield read_of("yield_strength", beam.section, place)
    share = section_over_mass(case, subject)
    if share is not None:
        yield Read(QUANTITIES["section_to_mass"], share, place)


def _of_label(case: Case, subject: BeamSubject) -> Iterator[Read]:
    """What the label of the beam allows."""
    beam = case.beam(subject.support.beam)
    place = ("kit", "beams", beam.id, "label")
    for name in ("label_load", "label_reach", "label_pieces", "label_mass"):
        yield read_of(name, beam.label, place)


def _taped_against_stack(beam: BeamReads) -> Iterator[Read]:
    """The taped backspan against the one the beam and the stack give, where both are known."""
    taped = beam.backspan.stated
    if taped is None:
        return
    built = as_built(BareSheet({}, {}), replace(beam, from_stack=True, both=False))
    if math.isnan(built.backspan) or not surely_above(built.counterweight, limit=0.0):
        return
    apart = abs(taped.value - built.backspan)
    yield beside("backspan_apart", apart, taped, beam.backspan.place)


def _tip_against_inboard(beam: BeamReads) -> Iterator[Read]:
    """What the beam has beyond the line over what it has inboard, where both are known."""
    tip = beam.tip.stated
    inboard = inboard_of(BareSheet({}, {}), beam, beam.reach.as_stated)
    if tip is not None and surely_above(inboard, limit=0.0):
        yield beside("tip_to_inboard", tip.value / inboard, tip, beam.tip.place)
