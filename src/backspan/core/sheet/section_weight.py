"""What a beam of its section would weigh, beside what it weighs: a size that slipped shows there.

A flange of 2.15 in where 0.215 in were measured makes a beam strong on paper and far heavier.
"""

from __future__ import annotations

from collections.abc import Mapping

from backspan.core.mechanics.sections import DENSITY_OF_ALUMINIUM, DENSITY_OF_STEEL
from backspan.core.model.beams import Metal
from backspan.core.model.evidence import StatedValue
from backspan.core.numbers import surely_above
from backspan.core.rules.shape import SIZES_OF, Section
from backspan.core.sheet.beam_section import section_numbers
from backspan.core.sheet.case import Case
from backspan.core.sheet.plain_beam import form_of, with_plates
from backspan.core.sheet.sheet import BareSheet
from backspan.core.sheet.subjects import BeamSubject

DENSITY: Mapping[Metal, float] = {
    Metal.STEEL: DENSITY_OF_STEEL,
    Metal.ALLOY_6061: DENSITY_OF_ALUMINIUM,
    Metal.ALLOY_6063: DENSITY_OF_ALUMINIUM,
}


def section_over_mass(case: Case, subject: BeamSubject) -> StatedValue[float] | None:
    """What the section of a beam weighs over its mass, where both are known.

    Whoever looked again at the mass and at each size looked at this.
    """
    beam = case.beam(subject.support.beam)
    section, mass, length = beam.section, beam.mass, beam.length
    if section is None or mass is None or length is None:
        return None
    form, table = form_of(case, section)
    stated = [getattr(section, name) for name in SIZES_OF[form]]
    if table is not None and isinstance(table.content, Section):
        stated, given = [one for one in stated if one is not None], table.content.numbers
    elif all(one is not None for one in stated):
        given = {name: one.value for name, one in zip(SIZES_OF[form], stated, strict=True)}
    else:
        return None
    sheet = BareSheet({}, {})
    area = section_numbers(sheet.do, form, with_plates(sheet, form, given))["area"]
    if not surely_above(area, limit=0.0):
        return None
    weighs = area * length.value * DENSITY[section.material or Metal.STEEL]
    again = {one.checked_by for one in (mass, *stated)}
    return StatedValue(
        weighs / mass.value,
        by=mass.by,
        checked_by=again.pop() if len(again) == 1 else None,
    )
