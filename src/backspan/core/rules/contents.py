"""What a rule value asks for, read from its fields: a factor, a limit, words or a remark."""

from __future__ import annotations

from enum import StrEnum

from backspan.core import quantities
from backspan.core.quantities import Amount, QuantityError
from backspan.core.rules.fields import Table
from backspan.core.rules.shape import (
    BeamWeight,
    Content,
    FactorOnLoad,
    Limit,
    LoadBasis,
    Remark,
    WordList,
)


class Kind(StrEnum):
    """The kinds of content, as a rule file names them."""

    FACTOR_ON_LOAD = "factor on load"
    LIMIT = "limit"
    WORD_LIST = "word list"
    REMARK = "remark"


#: The fields that make up the content of each kind.
CONTENT_FIELDS = {
    Kind.FACTOR_ON_LOAD: ("factor", "load", "beam_weight"),
    Kind.LIMIT: ("value", "dimension"),
    Kind.WORD_LIST: ("words",),
    Kind.REMARK: ("text",),
}

#: A factor above this is a slip of the pen: the largest of any text is 4.
MOST_FACTOR = 20

DIMENSIONS = {one.name: one for one in quantities.DIMENSIONS}


def read_content(kind: Kind, table: Table) -> Content | None:
    """The content of a value or a reading; None where a problem was noted."""
    match kind:
        case Kind.FACTOR_ON_LOAD:
            return _factor_on_load(table)
        case Kind.LIMIT:
            return _limit(table)
        case Kind.WORD_LIST:
            words = table.words("words")
            return None if words is None else WordList(words)
        case Kind.REMARK:
            text = table.text("text")
            return None if text is None else Remark(text)


def _factor_on_load(table: Table) -> FactorOnLoad | None:
    factor = table.number("factor", most=MOST_FACTOR)
    load = table.word("load", LoadBasis)
    beam_weight = table.word("beam_weight", BeamWeight)
    if factor is None or load is None or beam_weight is None:
        return None
    return FactorOnLoad(factor, load, beam_weight)


def _limit(table: Table) -> Limit | None:
    name = table.text("dimension")
    text = table.text("value")
    if name is None or text is None:
        return None
    dimension = DIMENSIONS.get(name)
    if dimension is None:
        table.refuse("dimension", f"found {name!r}, expected one of: {', '.join(DIMENSIONS)}")
        return None
    try:
        value = quantities.parse(text, dimension)
    except QuantityError as error:
        table.refuse("value", str(error))
        return None
    if value <= 0:
        table.refuse("value", f"found {text!r}, expected a {name} above 0")
        return None
    return Limit(Amount(value, dimension))
