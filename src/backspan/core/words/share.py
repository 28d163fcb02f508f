"""A share of a capacity in words."""

from __future__ import annotations

from backspan.core.numbers import meets

_HUNDRED = 100.0
_MOST_PLACES = 9


def per_cent(share: float) -> str:
    """A share of a capacity as text, such as "98 %".

    It is rounded to whole per cents, with more places where a rounded 100 % would hide on which
    side the share lies.
    """
    met = meets(demand=share, capacity=1.0) and meets(demand=1.0, capacity=share)
    texts = (f"{share * _HUNDRED:.{places}f}" for places in range(_MOST_PLACES))
    told = next((text for text in texts if met or float(text) != _HUNDRED), "100")
    return f"{told} %"
