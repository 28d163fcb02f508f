"""Constants of nature and convention that formulas name."""

from backspan.core.quantities import Acceleration

#: Standard gravity, m/s2, exact by convention.
#: Source: 3rd CGPM (1901), Resolution 2; ISO 80000-3.
STANDARD_GRAVITY: Acceleration = 9.80665
