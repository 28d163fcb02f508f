"""A beam's section as numbers, and the moment it takes: from a shape table, or from its sizes.

What a table has is taken as it stands; what it lacks follows from the sizes. The way a beam fails
decides which equation holds: an I by its unbraced length, and by its flange where that is thin; a
tube by its unbraced length, which hardly tells; a pipe by yielding alone. Sections so thin that a
plate buckles first are outside these equations. A channel bends as an I does, and turns over as one
whose flanges are so far apart that it warps as much; a flange of it that is thin is outside them.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass

from backspan.core.mechanics import beam_bending, channels, sections
from backspan.core.model.kit import Beam
from backspan.core.numbers import at_most, root, surely_above
from backspan.core.rules.shape import SIZES_OF, SectionForm

#: A formula worked out by its arguments, noted or not.
Do = Callable[..., float]
#: Forms of a web and two flanges.
OPEN = frozenset({SectionForm.I_SHAPE, SectionForm.CHANNEL})


@dataclass(frozen=True, slots=True)
class Steel:
    """The steel of a beam, SI, and how slender its plates may be, each by its rule value."""

    yield_strength: float
    elastic_constant: float
    slender: Mapping[str, float]

    @property
    def constants(self) -> dict[str, float]:
        """Its two numbers, by the names that the formulas have."""
        return {
            "yield_strength": self.yield_strength,
            "elastic_constant": self.elastic_constant,
        }


#: Which of them a form is asked by.
SLENDER_OF: Mapping[SectionForm, tuple[str, ...]] = {
    SectionForm.I_SHAPE: ("web", "flange"),
    SectionForm.CHANNEL: ("web",),
    SectionForm.TUBE: ("tube-flange", "tube-web"),
    SectionForm.PIPE: ("pipe",),
}
#: The rule values of how slender plates may be, by the names that `Steel` has for them.
SLENDER = {
    one: f"beam.slender-{one}" for one in ("web", "flange", "tube-flange", "tube-web", "pipe")
}


@dataclass(frozen=True, slots=True)
class Nominal:
    """The moment a beam takes; how much its thinnest plate has left before the equations end."""

    moment: float
    plate_left: float


def by_its_section(beam: Beam) -> bool:
    """Whether a beam is judged by its section: one is stated, and no label rates the beam."""
    return beam.section is not None and not rated(beam)


def rated(beam: Beam) -> bool:
    """Whether its label rates the beam."""
    return beam.label is not None and beam.label.most_load is not None


def section_numbers(do: Do, form: SectionForm, given: Mapping[str, float]) -> dict[str, float]:
    """All numbers of a section: those given, else what follows from its sizes."""
    found = dict(given)

    def follows(name: str, formula: object, *names: str, **renamed: str) -> None:
        if name not in found:
            arguments = {one: found[one] for one in names}
            arguments |= {one: found[other] for one, other in renamed.items()}
            found[name] = do(formula, **arguments)

    sizes = SIZES_OF[form]
    if form in OPEN:
        _open(follows, form, given)
    elif form is SectionForm.TUBE:
        turned = {"section_depth": "flange_width", "flange_width": "section_depth", "wall": "wall"}
        follows("area", sections.area_of_tube, *sizes)
        follows("second_moment", sections.second_moment_of_tube, *sizes)
        follows("plastic_modulus", sections.plastic_modulus_of_tube, *sizes)
        follows("torsion_constant", sections.torsion_of_tube, *sizes)
        follows("weak_second_moment", sections.second_moment_of_tube, **turned)
    else:
        follows("area", sections.area_of_pipe, *sizes)
        follows("second_moment", sections.second_moment_of_pipe, *sizes)
        follows("plastic_modulus", sections.plastic_modulus_of_pipe, *sizes)
    follows("elastic_modulus_x", sections.elastic_modulus, "second_moment", "section_depth")
    if form is not SectionForm.PIPE:
        follows("radius_y", sections.radius_of_gyration, "weak_second_moment", "area")
    if form in OPEN:
        _turning(follows, form)
    return found


def _open(follows: Callable[..., None], form: SectionForm, given: Mapping[str, float]) -> None:
    sizes = SIZES_OF[form]
    follows("area", sections.area_of_i, *sizes)
    follows("second_moment", sections.second_moment_of_i, *sizes)
    follows("plastic_modulus", sections.plastic_modulus_of_i, *sizes)
    if form is SectionForm.CHANNEL:
        follows("torsion_constant", channels.torsion_of_channel, *sizes)
        follows("weak_second_moment", channels.weak_second_moment_of_channel, *sizes)
        return
    follows("torsion_constant", sections.torsion_of_i, *sizes)
    if "radius_y" in given:
        follows("weak_second_moment", sections.weak_second_moment_by_radius, "radius_y", "area")
    follows("weak_second_moment", sections.weak_second_moment_of_i, *sizes)


def _turning(follows: Callable[..., None], form: SectionForm) -> None:
    follows("between_flanges", sections.flanges_apart, "section_depth", "flange_thickness")
    if form is SectionForm.CHANNEL:
        follows(
            "warping_distance",
            channels.warping_distance_of_channel,
            *("flange_width", "web_thickness", "flange_thickness", "between_flanges"),
            "weak_second_moment",
        )
        follows(
            "effective_radius",
            channels.turning_radius_of_channel,
            *("weak_second_moment", "warping_distance", "elastic_modulus_x"),
        )
        return
    follows(
        "effective_radius",
        sections.turning_radius,
        *("weak_second_moment", "between_flanges", "elastic_modulus_x"),
    )


def nominal_moment(
    do: Do,
    form: SectionForm,
    numbers: Mapping[str, float],
    steel: Steel,
    unbraced: float,
    *,
    rolled: bool,
) -> Nominal:
    """The moment at which a beam yields or turns over, with C_b = 1 as of a free overhang.

    Of an I known by its sizes alone nobody says that it is `rolled`: welded plates buckle sooner.
    """
    plastic = do(
        beam_bending.moment_of_plastic_section,
        yield_strength=steel.yield_strength,
        plastic_modulus=numbers["plastic_modulus"],
    )
    if form is SectionForm.I_SHAPE:
        moment = at_most(
            _turning_over(do, numbers, steel, unbraced, plastic),
            most=_by_flange(do, numbers, steel, plastic, rolled=rolled),
        )
    elif form is SectionForm.CHANNEL:
        moment = _turning_over(do, numbers, steel, unbraced, plastic)
    elif form is SectionForm.TUBE:
        moment = _tube_turning_over(do, numbers, steel, unbraced, plastic)
    else:
        moment = plastic
    left = _plate_left(form, numbers, steel)
    if form is SectionForm.I_SHAPE and not rolled:
        left = at_most(left, most=_noncompact(do, steel, rolled=False) - _flange(do, numbers))
    if form is SectionForm.CHANNEL:
        left = at_most(left, most=_channel_flange_left(do, numbers, steel))
    return Nominal(moment, left)


def _turning_over(
    do: Do, numbers: Mapping[str, float], steel: Steel, unbraced: float, plastic: float
) -> float:
    modulus, radius = numbers["elastic_modulus_x"], numbers["effective_radius"]
    stiff = {"torsion_constant": numbers["torsion_constant"], "elastic_modulus_x": modulus}
    if "warping_distance" in numbers:
        apart = numbers["warping_distance"]
        share = do(beam_bending.share_of_torsion_of_channel, warping_distance=apart, **stiff)
    else:
        apart = numbers["between_flanges"]
        share = do(beam_bending.share_of_torsion, between_flanges=apart, **stiff)
    short = do(beam_bending.length_still_plastic, radius_y=numbers["radius_y"], **steel.constants)
    long = do(
        beam_bending.length_elastic, effective_radius=radius, torsion_share=share, **steel.constants
    )
    if surely_above(unbraced, limit=long):
        return do(
            beam_bending.buckling_moment,
            moment_shape=1.0,
            elastic_constant=steel.elastic_constant,
            elastic_modulus_x=modulus,
            effective_radius=radius,
            unbraced_length=unbraced,
            torsion_share=share,
            plastic_moment=plastic,
        )
    return _between(do, modulus, steel, (unbraced, short, long), plastic)


def _between(
    do: Do, modulus: float, steel: Steel, lengths: tuple[float, float, float], plastic: float
) -> float:
    """Nothing is lost up to the first length; which is a sum of its own only beyond it."""
    unbraced, short, long = lengths
    if surely_above(short, limit=unbraced):
        return plastic
    return do(
        beam_bending.inelastic_moment,
        moment_shape=1.0,
        plastic_moment=plastic,
        yield_strength=steel.yield_strength,
        elastic_modulus_x=modulus,
        unbraced_length=unbraced,
        plastic_length=short,
        elastic_length=long,
    )


def _flange(do: Do, numbers: Mapping[str, float]) -> float:
    return do(
        sections.slenderness_of_flange,
        flange_width=numbers["flange_width"],
        flange_thickness=numbers["flange_thickness"],
    )


def _noncompact(do: Do, steel: Steel, *, rolled: bool) -> float:
    if rolled:
        return do(beam_bending.slenderness_noncompact, **steel.constants)
    return do(beam_bending.slenderness_noncompact_of_plates, **steel.constants)


def _by_flange(
    do: Do, numbers: Mapping[str, float], steel: Steel, plastic: float, *, rolled: bool
) -> float:
    slender = _flange(do, numbers)
    compact = do(beam_bending.slenderness_compact, **steel.constants)
    if surely_above(compact, limit=slender):
        return plastic
    return do(
        beam_bending.flange_moment,
        plastic_moment=plastic,
        yield_strength=steel.yield_strength,
        elastic_modulus_x=numbers["elastic_modulus_x"],
        flange_slenderness=slender,
        compact_flange=compact,
        noncompact_flange=_noncompact(do, steel, rolled=rolled),
    )


def _channel_flange_left(do: Do, numbers: Mapping[str, float], steel: Steel) -> float:
    """What a channel's flange has left before it is no more compact, and outside the equations."""
    slender = do(
        channels.slenderness_of_channel_flange,
        flange_width=numbers["flange_width"],
        flange_thickness=numbers["flange_thickness"],
    )
    return do(beam_bending.slenderness_compact, **steel.constants) - slender


def _tube_turning_over(
    do: Do, numbers: Mapping[str, float], steel: Steel, unbraced: float, plastic: float
) -> float:
    of_tube = {
        "elastic_constant": steel.elastic_constant,
        "radius_y": numbers["radius_y"],
        "torsion_constant": numbers["torsion_constant"],
        "area": numbers["area"],
    }
    modulus = numbers["elastic_modulus_x"]
    short = do(beam_bending.plastic_length_of_tube, plastic_moment=plastic, **of_tube)
    long = do(
        beam_bending.elastic_length_of_tube,
        yield_strength=steel.yield_strength,
        elastic_modulus_x=modulus,
        **of_tube,
    )
    if surely_above(unbraced, limit=long):
        return do(
            beam_bending.buckling_moment_of_tube,
            moment_shape=1.0,
            unbraced_length=unbraced,
            plastic_moment=plastic,
            **of_tube,
        )
    return _between(do, modulus, steel, (unbraced, short, long), plastic)


def _plate_left(form: SectionForm, numbers: Mapping[str, float], steel: Steel) -> float:
    """What the thinnest plate has left; below nothing it buckles before these equations say so.

    Of a tube the whole side is taken for its flat, which is a little shorter.
    """
    stiff, most = steel.elastic_constant / steel.yield_strength, steel.slender
    depth, limit = numbers["section_depth"], root(stiff)
    if form is SectionForm.PIPE:
        return most["pipe"] * stiff - depth / numbers["wall"]
    width = numbers["flange_width"]
    if form is SectionForm.TUBE:
        wall = numbers["wall"]
        web = most["tube-web"] * limit - depth / wall
        return at_most(web, most=most["tube-flange"] * limit - width / wall)
    thin = numbers["flange_thickness"]
    web = most["web"] * limit - (depth - thin - thin) / numbers["web_thickness"]
    if form is SectionForm.CHANNEL:
        return web
    return at_most(web, most=most["flange"] * limit - width / (thin + thin))
