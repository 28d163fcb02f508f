"""What the value at a path of a site is called, and how it was written, where that is certain."""

from __future__ import annotations

from collections.abc import Sequence

from backspan.core.quantities import parse
from backspan.core.quantities.errors import QuantityError
from backspan.core.quantities.named import QUANTITIES
from backspan.core.quantities.quantity import Quantity
from backspan.core.words import Language, say_input
from backspan.core.words.say import WORD_INPUTS


def input_at(path: Sequence[str], language: Language) -> str | None:
    """The trade's words for what stands there; None where its field is a name of several things."""
    if path and path[-1] in WORD_INPUTS:
        return say_input(path[-1], language=language)
    quantity = _quantity_at(path)
    return None if quantity is None else say_input(quantity.name, language=language)


def is_written(text: str, path: Sequence[str], *, value: float) -> bool:
    """Whether a text surely names this value: a person may have written one and stated another."""
    quantity = _quantity_at(path)
    if quantity is None or quantity.dimension is None:
        return False
    try:
        return parse(text, quantity.dimension) == value
    except QuantityError:
        return False


def _quantity_at(path: Sequence[str]) -> Quantity | None:
    if not path:
        return None
    field, record = path[-1], path[-2] if len(path) > 1 else ""
    found = [one for one in QUANTITIES.values() if one.field == field]
    if len(found) > 1:
        found = [one for one in found if one.record == record]
    return found[0] if len(found) == 1 else None
