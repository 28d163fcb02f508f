"""What a beam's section is worth, from the sizes of its plates or its wall.

Sections of plates are reckoned without the fillets of rolled shapes: a little less than they have.
A tube has round corners: to leave them out would count steel that is not there. They are taken with
an outside radius of twice the wall, R = 2 t, as the shape tables of steel tubes do: a missing
corner has the area (1 - pi/4) R2 = 0.2146 R2, and its centroid lies 0.2234 R from the faces.
"""

from __future__ import annotations

from backspan.core.numbers import root
from backspan.core.quantities import Area, Length, Ratio, SecondMoment, SectionModulus
from backspan.core.worked.formula import formula

#: kg/m3. Steel 490 lb/ft3, as the tables of AISC weigh their shapes; aluminium from handbooks.
DENSITY_OF_STEEL, DENSITY_OF_ALUMINIUM = 7850.0, 2700.0


@formula(symbol="A")
def area_of_i(
    *,
    section_depth: Length,
    flange_width: Length,
    web_thickness: Length,
    flange_thickness: Length,
) -> Area:
    """Area of two flanges and a web.

    Source: geometry.
    """
    return 2 * flange_width * flange_thickness + web_thickness * (
        section_depth - 2 * flange_thickness
    )


@formula(symbol="I_x")
def second_moment_of_i(
    *,
    section_depth: Length,
    flange_width: Length,
    web_thickness: Length,
    flange_thickness: Length,
) -> SecondMoment:
    """Second moment of two flanges and a web about the axis across the web.

    Source: geometry: the whole rectangle less what is not there beside the web.
    """
    return (
        flange_width * section_depth * section_depth * section_depth
        - (flange_width - web_thickness)
        * (section_depth - 2 * flange_thickness)
        * (section_depth - 2 * flange_thickness)
        * (section_depth - 2 * flange_thickness)
    ) / 12


@formula(symbol="Z_x")
def plastic_modulus_of_i(
    *,
    section_depth: Length,
    flange_width: Length,
    web_thickness: Length,
    flange_thickness: Length,
) -> SectionModulus:
    """Plastic modulus of two flanges and a web about the axis across the web.

    Source: geometry: the first moment of both halves.
    """
    return (
        flange_width * flange_thickness * (section_depth - flange_thickness)
        + web_thickness
        * (section_depth - 2 * flange_thickness)
        * (section_depth - 2 * flange_thickness)
        / 4
    )


@formula(symbol="I_y")
def weak_second_moment_of_i(
    *,
    section_depth: Length,
    flange_width: Length,
    web_thickness: Length,
    flange_thickness: Length,
) -> SecondMoment:
    """Second moment of two flanges and a web about the axis along the web.

    Source: geometry.
    """
    return (
        2 * flange_thickness * flange_width * flange_width * flange_width
        + (section_depth - 2 * flange_thickness) * web_thickness * web_thickness * web_thickness
    ) / 12


@formula(symbol="J")
def torsion_of_i(
    *,
    section_depth: Length,
    flange_width: Length,
    web_thickness: Length,
    flange_thickness: Length,
) -> SecondMoment:
    """Torsion constant of thin plates joined to an open section: a third of b t3 of each.

    Source: Saint-Venant; any text-book on the strength of materials.
    """
    return (
        2 * flange_width * flange_thickness * flange_thickness * flange_thickness
        + (section_depth - flange_thickness) * web_thickness * web_thickness * web_thickness
    ) / 3


@formula(symbol="A")
def area_of_tube(*, section_depth: Length, flange_width: Length, wall: Length) -> Area:
    """Area of a rectangular tube with round corners.

    Source: geometry: 4 (0.2146 (2 t)2 - 0.2146 t2) is not there at the corners.
    """
    return 2 * wall * (section_depth + flange_width - 2 * wall) - 2575 * wall * wall / 1000


@formula(symbol="I_x")
def second_moment_of_tube(
    *, section_depth: Length, flange_width: Length, wall: Length
) -> SecondMoment:
    """Second moment of a rectangular tube with round corners, across its depth.

    Source: geometry: the sharp tube less its outer corners, with its inner ones; the last term is
    what they have about themselves.
    """
    return (
        (
            flange_width * section_depth * section_depth * section_depth
            - (flange_width - 2 * wall)
            * (section_depth - 2 * wall)
            * (section_depth - 2 * wall)
            * (section_depth - 2 * wall)
        )
        / 12
        - 34336
        * wall
        * wall
        * (section_depth / 2 - 4468 * wall / 10000)
        * (section_depth / 2 - 4468 * wall / 10000)
        / 10000
        + 8584
        * wall
        * wall
        * (section_depth / 2 - 12234 * wall / 10000)
        * (section_depth / 2 - 12234 * wall / 10000)
        / 10000
        - 4527 * wall * wall * wall * wall / 10000
    )


@formula(symbol="Z_x")
def plastic_modulus_of_tube(
    *, section_depth: Length, flange_width: Length, wall: Length
) -> SectionModulus:
    """Plastic modulus of a rectangular tube with round corners, across its depth.

    Source: geometry, as its second moment.
    """
    return (
        (
            flange_width * section_depth * section_depth
            - (flange_width - 2 * wall) * (section_depth - 2 * wall) * (section_depth - 2 * wall)
        )
        / 4
        - 34336 * wall * wall * (section_depth / 2 - 4468 * wall / 10000) / 10000
        + 8584 * wall * wall * (section_depth / 2 - 12234 * wall / 10000) / 10000
    )


@formula(symbol="J")
def torsion_of_tube(*, section_depth: Length, flange_width: Length, wall: Length) -> SecondMoment:
    """Torsion constant of a thin rectangular tube: 4 A_m2 t over the length of its middle line.

    Source: Bredt's second formula; any text-book on the strength of materials.
    """
    return (
        2
        * wall
        * (section_depth - wall)
        * (section_depth - wall)
        * (flange_width - wall)
        * (flange_width - wall)
        / (section_depth + flange_width - 2 * wall)
    )


@formula(symbol="A")
def area_of_pipe(*, section_depth: Length, wall: Length) -> Area:
    """Area of a round pipe.

    Source: geometry; 355/113 for pi.
    """
    return 355 * wall * (section_depth - wall) / 113


@formula(symbol="I_x")
def second_moment_of_pipe(*, section_depth: Length, wall: Length) -> SecondMoment:
    """Second moment of a round pipe.

    Source: geometry; 355/113 for pi.
    """
    return (
        355
        * (
            section_depth * section_depth * section_depth * section_depth
            - (section_depth - 2 * wall)
            * (section_depth - 2 * wall)
            * (section_depth - 2 * wall)
            * (section_depth - 2 * wall)
        )
        / 7232
    )


@formula(symbol="Z_x")
def plastic_modulus_of_pipe(*, section_depth: Length, wall: Length) -> SectionModulus:
    """Plastic modulus of a round pipe.

    Source: geometry.
    """
    return (
        section_depth * section_depth * section_depth
        - (section_depth - 2 * wall) * (section_depth - 2 * wall) * (section_depth - 2 * wall)
    ) / 6


@formula(symbol="S_x")
def elastic_modulus(*, second_moment: SecondMoment, section_depth: Length) -> SectionModulus:
    """Elastic modulus of a section whose middle is half its depth.

    Source: geometry.
    """
    return 2 * second_moment / section_depth


@formula(symbol="r_y")
def radius_of_gyration(*, weak_second_moment: SecondMoment, area: Area) -> Length:
    """Radius of gyration about the axis along the web.

    Source: geometry.
    """
    return root(weak_second_moment / area)


@formula(symbol="I_y")
def weak_second_moment_by_radius(*, radius_y: Length, area: Area) -> SecondMoment:
    """Second moment about the axis along the web, from the radius that a table has.

    Source: geometry.
    """
    return area * radius_y * radius_y


@formula(symbol="r_ts")
def turning_radius(
    *, weak_second_moment: SecondMoment, between_flanges: Length, elastic_modulus_x: SectionModulus
) -> Length:
    """Radius by which a doubly symmetric I buckles sideways.

    Source: AISC 360-16 F2.2, note to equation F2-7 (from memory): r_ts2 = I_y h_o / (2 S_x).
    """
    return root(weak_second_moment * between_flanges / (2 * elastic_modulus_x))


@formula(symbol="h_o")
def flanges_apart(*, section_depth: Length, flange_thickness: Length) -> Length:
    """Distance between the middles of the flanges.

    Source: AISC 360-16 F2.2 (from memory).
    """
    return section_depth - flange_thickness


@formula(symbol="v")
def slenderness_of_flange(*, flange_width: Length, flange_thickness: Length) -> Ratio:
    """Half a flange's width over its thickness.

    Source: AISC 360-16 table B4.1b, case 10 (from memory).
    """
    return flange_width / (2 * flange_thickness)
