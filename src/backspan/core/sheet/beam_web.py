"""The web of a beam as numbers: its clear height, the shear it takes, what it takes over a stand.

A rolled I of the table has a stocky web as far as its text says so, a channel has none; plates that
somebody measured may be welded, and get no credit for it. Where the fillet is not known the flange
stands for it, which has less. Bearing longer than the beam is deep counts as long as that: nobody
knows that it bears evenly.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from backspan.core.mechanics import beam_web, sections
from backspan.core.numbers import at_most, surely_above, surely_below
from backspan.core.rules.shape import SectionForm
from backspan.core.sheet.beam_section import Do
from backspan.core.sheet.plain_beam import PlainBeam
from backspan.core.sheet.sheet import Sheet

SHEAR, SHEAR_STOCKY = "beam.safety-shear", "beam.safety-shear-stocky"
YIELDING, CRIPPLING = "beam.safety-yielding", "beam.safety-crippling"
_STOCKY, _WEB, _TUBE = "beam.stocky-web", "beam.shear-web", "beam.shear-tube"
#: The keys of the ratios that a form is asked by, beside the safety in shear.
KEYS_OF: Mapping[SectionForm, tuple[str, ...]] = {
    SectionForm.I_SHAPE: (SHEAR_STOCKY, _STOCKY, _WEB, YIELDING, CRIPPLING),
    SectionForm.CHANNEL: (_WEB, YIELDING, CRIPPLING),
    SectionForm.TUBE: (_TUBE,),
    SectionForm.PIPE: (),
}


@dataclass(frozen=True, slots=True)
class Sheared:
    """The shear a beam takes, nominal, and the rule value by which it is allowed in service."""

    nominal: float
    safety: str


@dataclass(frozen=True, slots=True)
class Slender:
    """The clear height of the web of an I, and that over its thickness."""

    height: float
    slender: float


def slenderness(sheet: Sheet, plain: PlainBeam) -> Slender:
    """How slender the web of an I is; outside its domain where its sizes leave none."""
    given, do = plain.given(sheet), sheet.do
    height = do(beam_web.web_height, section_depth=given["section_depth"], fillet=_fillet(given))
    height = sheet.positive("no_web", height)
    return Slender(height, _slender(do, height, given["web_thickness"]))


@dataclass(frozen=True, slots=True)
class Bears:
    """Where a beam bears: how far from its end, and on how much of its length."""

    from_end: float
    length: float


@dataclass(frozen=True, slots=True)
class Pressed:
    """The forces at which the web over a stand gives way, nominal."""

    yields: float
    cripples: float


def shear_taken(sheet: Sheet, plain: PlainBeam) -> Sheared:
    """The shear of the web, of both sides of a tube, or of half a pipe."""
    given, strength = plain.given(sheet), sheet.read(plain.yield_strength)
    depth, do = given["section_depth"], sheet.do
    if plain.form is SectionForm.PIPE:
        wall = given["wall"]
        stress = do(
            beam_web.shear_stress_of_pipe,
            yield_strength=strength,
            elastic_constant=plain.elastic,
            section_depth=depth,
            wall=wall,
        )
        area = given.get("area")
        if area is None:
            area = do(sections.area_of_pipe, section_depth=depth, wall=wall)
        return Sheared(do(beam_web.shear_of_pipe, shear_stress=stress, area=area), SHEAR)
    if plain.form is SectionForm.TUBE:
        wall = given["wall"]
        height = sheet.positive(
            "no_web", do(beam_web.web_height_of_tube, section_depth=depth, wall=wall)
        )
        _most(sheet, plain, strength, _slender(do, height, wall), _TUBE)
        taken = do(beam_web.shear_of_tube, yield_strength=strength, web_height=height, wall=wall)
        return Sheared(taken, SHEAR)
    web, slender = given["web_thickness"], slenderness(sheet, plain).slender
    _most(sheet, plain, strength, slender, _WEB)
    rolled = plain.of_table and plain.form is SectionForm.I_SHAPE
    stocky = _limit(do, plain, strength, _STOCKY) if rolled else 0.0
    taken = do(
        beam_web.shear_of_web, yield_strength=strength, section_depth=depth, web_thickness=web
    )
    return Sheared(taken, SHEAR_STOCKY if surely_below(slender, limit=stocky) else SHEAR)


def _slender(do: Do, height: float, thickness: float) -> float:
    return do(beam_web.slenderness_of_web, web_height=height, web_thickness=thickness)


def _limit(do: Do, plain: PlainBeam, strength: float, key: str) -> float:
    return do(
        beam_web.slenderness_up_to,
        slender_limit=plain.ratios[key],
        elastic_constant=plain.elastic,
        yield_strength=strength,
    )


def _most(sheet: Sheet, plain: PlainBeam, strength: float, slender: float, key: str) -> None:
    """A web thinner than the equations hold for buckles in shear before it yields."""
    sheet.positive("thin_web", _limit(sheet.do, plain, strength, key) - slender)


def _fillet(given: Mapping[str, float]) -> float:
    return given.get("fillet", given["flange_thickness"])


def pressed_taken(sheet: Sheet, plain: PlainBeam, bears: Bears) -> Pressed:
    """What the web of an I takes over a stand; not surely away from the end, at the end."""
    given, strength = plain.given(sheet), sheet.read(plain.yield_strength)
    depth, thick, web = (
        given[name] for name in ("section_depth", "flange_thickness", "web_thickness")
    )
    length = at_most(bears.length, most=depth)
    away = surely_above(bears.from_end, limit=depth)
    yields = sheet.do(
        beam_web.web_yields if away else beam_web.web_yields_at_end,
        yield_strength=strength,
        web_thickness=web,
        fillet=_fillet(given),
        bearing_length=length,
    )
    away = surely_above(bears.from_end + bears.from_end, limit=depth)
    cripples = sheet.do(
        beam_web.web_cripples if away else beam_web.web_cripples_at_end,
        elastic_constant=plain.elastic,
        yield_strength=strength,
        section_depth=depth,
        web_thickness=web,
        flange_thickness=thick,
        bearing_length=length,
    )
    return Pressed(yields, cripples)
