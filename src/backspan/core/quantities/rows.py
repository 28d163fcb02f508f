"""How a row of the table of quantities begins, by what kind of number it is."""

from __future__ import annotations

from functools import partial

from backspan.core.quantities.quantity import COUNT, GEOMETRY, MASSES, OBSERVATION, RATING, Quantity
from backspan.core.quantities.units import FORCE, LENGTH, MASS

#: A length that is measured on the roof.
taped = partial(Quantity, dimension=LENGTH, evidence=GEOMETRY, tolerance="tolerance.taped-length")

#: A mass from a stamp or a label; what a label, a certificate or an engineer's paper rates.
mass = partial(Quantity, dimension=MASS, evidence=MASSES)
rated = partial(Quantity, evidence=RATING)
rated_force = partial(rated, dimension=FORCE)

#: What is counted, and what is seen of a thing, on the day.
counted = partial(Quantity, dimension=None, evidence=COUNT)
seen = partial(Quantity, evidence=OBSERVATION)
