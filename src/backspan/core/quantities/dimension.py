"""A dimension, its units, and how a unit is looked up by the text a person wrote."""

import re
from dataclasses import dataclass, field
from fractions import Fraction
from typing import Any

_DOT_AFTER_ABBREVIATION = re.compile(r"\.(?=[\s/-]|$)")
_PER = re.compile(r"\s*/\s*|\s+per\s+", re.IGNORECASE)
_TIMES = re.compile(r"\s*[-·*.]\s*|\s+")


def unit_key(text: str) -> str:
    """One spelling for "lb-ft", "lb ft", "lb·ft" and "lb. ft."; letter case is kept."""
    plain = text.strip().replace("²", "2").replace("^", "")
    plain = _DOT_AFTER_ABBREVIATION.sub("", plain)
    return _TIMES.sub("·", _PER.sub("/", plain))


@dataclass(frozen=True)
class Unit:
    """One unit: the text it is shown by, its exact factor to SI, and the spellings that are read.

    `symbols` must match in letter case too (m, N, MPa); `words` match in any case (ft, LB).
    """

    label: str
    factor: Fraction
    symbols: frozenset[str] = frozenset()
    words: frozenset[str] = frozenset()

    def is_written(self, text: str) -> bool:
        """Whether `text` is one of this unit's spellings."""
        key = unit_key(text)
        return key in self.symbols or key.casefold() in self.words


@dataclass(frozen=True)
class Dimension:
    """What kind of quantity a number is; also the marker in `Annotated[float, LENGTH]`.

    `forms` are accepted examples, shown when a text is refused.
    """

    name: str
    si: str
    units: tuple[Unit, ...] = field(compare=False, repr=False)
    forms: tuple[str, ...] = field(compare=False, repr=False)

    @property
    def wanted(self) -> str:
        """The name with its article, for a sentence: "a length", "an area"."""
        return f"{'an' if self.name[0] in 'aeiou' else 'a'} {self.name}"

    def unit(self, text: str) -> Unit | None:
        """The unit of this dimension that `text` spells, if any."""
        return next((unit for unit in self.units if unit.is_written(text)), None)

    def __get_pydantic_core_schema__(  # Any: the types are of pydantic, which is not loaded here
        self, source: Any, handler: Any
    ) -> Any:
        """How pydantic reads a field marked with this dimension: from text with its unit."""
        from backspan.core.quantities import boundary  # noqa: PLC0415 - it imports this module

        return boundary.core_schema_for(self)

    def __get_pydantic_json_schema__(  # Any: as above
        self, schema: Any, handler: Any
    ) -> dict[str, Any]:
        """What the JSON Schema of such a field says."""
        return {
            "type": "string",
            "description": f"{self.wanted} written as text, such as {', '.join(self.forms)}",
            "examples": list(self.forms),
        }
