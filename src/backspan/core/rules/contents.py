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
    Section,
    SectionForm,
    WordList,
)


class Kind(StrEnum):
    """The kinds of content, as a rule file names them."""

    FACTOR_ON_LOAD = "factor on load"
    LIMIT = "limit"
    WORD_LIST = "word list"
    SECTION = "section"
    REMARK = "remark"


#: The fields that make up the content of each kind.
CONTENT_FIELDS = {
    Kind.FACTOR_ON_LOAD: ("factor", "load", "beam_weight"),
    Kind.LIMIT: ("value", "dimension"),
    Kind.WORD_LIST: ("words",),
    Kind.SECTION: ("shape", "form", "sizes"),
    Kind.REMARK: ("text",),
}

#: The numbers of a section, by the names that the formulas have for them.
SECTION_SIZES = {
    **dict.fromkeys(
        (
            *("section_depth", "flange_width", "web_thickness", "flange_thickness", "wall"),
            *("fillet", "radius_y", "effective_radius", "between_flanges"),
        ),
        quantities.LENGTH,
    ),
    "area": quantities.AREA,
    **dict.fromkeys(("elastic_modulus_x", "plastic_modulus"), quantities.SECTION_MODULUS),
    **dict.fromkeys(
        ("second_moment", "weak_second_moment", "torsion_constant"), quantities.SECOND_MOMENT
    ),
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
        case Kind.SECTION:
            return _section(table)
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


def _section(table: Table) -> Section | None:
    shape, form = table.text("shape"), table.word("form", SectionForm)
    given = table.content.get("sizes")
    if shape is None or form is None:
        return None
    if not isinstance(given, dict) or not given:
        table.refuse("sizes", f"found {given!r}, expected a table of the section's numbers")
        return None
    sizes = {}
    for name, text in given.items():
        dimension = SECTION_SIZES.get(name)
        if dimension is None or not isinstance(text, str):
            known = ", ".join(SECTION_SIZES)
            table.refuse("sizes", f"found {name} = {text!r}, expected text, of one of: {known}")
            continue
        try:
            value = quantities.parse(text, dimension)
        except QuantityError as error:
            table.refuse("sizes", f"{name}: {error}")
            continue
        if value <= 0:
            table.refuse("sizes", f"{name}: found {text!r}, expected more than none")
            continue
        sizes[name] = Amount(value, dimension)
    return Section(shape, form, sizes) if len(sizes) == len(given) else None
