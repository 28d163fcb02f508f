"""What is only looked at beside another number, or for one use of it. Rows of named.py."""

from __future__ import annotations

from backspan.core.quantities.quantity import MASSES, RATING, Quantity
from backspan.core.quantities.units import FORCE, LENGTH, LINEAR_MASS, MASS, PRESSURE, RATIO

BESIDE: tuple[Quantity, ...] = (
    Quantity(
        name="backspan_apart",
        words="difference between the taped backspan and the stack's own centroid",
        dimension=LENGTH,
        most="backspan-against-stack",
    ),
    Quantity(
        name="stall_load_to_rated",
        words="stall load over rated load",
        dimension=RATIO,
        least="pull-to-rated-load",
    ),
    Quantity(
        name="limiter_trip_to_stall",
        words="load at which the limiter cuts power, over stall load",
        dimension=RATIO,
        most="trip-to-stall-load",
    ),
    Quantity(
        name="limiter_trip_to_rated",
        words="load at which the limiter cuts power, over rated load",
        dimension=RATIO,
        least="pull-to-rated-load",
    ),
    Quantity(
        name="hoist_mass",
        words="hoist's own weight over its rated load",
        dimension=RATIO,
        most="hoist-mass-to-rated-load",
    ),
    Quantity(
        name="tip_to_inboard",
        words="beam beyond the line over all of it inboard of the fulcrum",
        dimension=RATIO,
        most="tip-to-inboard",
    ),
    Quantity(
        name="section_to_mass",
        words="what the sizes of the beam's section weigh over what it weighs",
        dimension=RATIO,
        most="section-to-mass",
    ),
    Quantity(
        name="to_face_apart",
        words="difference between the gap to the face and what reach, setback and width give",
        dimension=LENGTH,
        most="to-face-apart",
    ),
    Quantity(
        name="hanging_to_dead",
        words="hoists, ropes and bottom weights over all that hangs with the stage",
        dimension=RATIO,
        most="hanging-to-dead-mass",
    ),
    Quantity(
        name="deck_mass",
        words="what is left of all that hangs for a length of the stage itself",
        dimension=LINEAR_MASS,
        least="deck-mass",
    ),
    Quantity(
        name="person_mass",
        words="mass of a person on the stage",
        dimension=MASS,
        evidence=MASSES,
        least="person-mass",
        most="person-mass",
    ),
    Quantity(
        name="lifeline_strength_to_diameter",
        words="breaking force of the lifeline over its diameter squared",
        dimension=PRESSURE,
        evidence=RATING,
        most="lifeline-strength",
    ),
    Quantity(
        name="knot_efficiency",
        words="share of the lifeline's strength that a knot keeps",
        dimension=RATIO,
        evidence=RATING,
        most="knot-efficiency",
    ),
    Quantity(
        name="lifeline_breaking_force",
        words="breaking force of the lifeline",
        dimension=FORCE,
        evidence=RATING,
        most="lifeline-breaking-force",
    ),
    Quantity(
        name="below_ground",
        words="how far drop and height below it lead under the ground that roofs are measured from",
        dimension=LENGTH,
        most="below-ground",
    ),
)
