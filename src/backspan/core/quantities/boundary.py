"""The hook by which pydantic reads a quantity; pydantic itself is loaded only when it asks."""

from typing import Any

from backspan.core.quantities.dimension import Dimension
from backspan.core.quantities.errors import QuantityError
from backspan.core.quantities.parse import parse


def core_schema_for(dimension: Dimension) -> Any:  # a type of pydantic, which loads late
    """A pydantic core schema that reads text with a unit and refuses everything else.

    The validation error has type "quantity" and carries `found`, `expected` and `message`.
    """
    from pydantic_core import PydanticCustomError, core_schema

    def validate(value: object) -> float:
        try:
            return read_field(value, dimension)
        except QuantityError as error:
            context = {
                "message": str(error),
                "found": error.found,
                "expected": list(error.expected),
            }
            raise PydanticCustomError("quantity", "{message}", context) from error

    return core_schema.no_info_plain_validator_function(validate)


def read_field(value: object, dimension: Dimension) -> float:
    """The SI value of a field, which must be text.

    Raises QuantityError if it is anything else: a bare number does not say its unit.
    """
    if isinstance(value, str):
        return parse(value, dimension)
    raise QuantityError(
        reason=f"not text; {dimension.wanted} is written as text, which can carry a unit",
        found=repr(value),
        expected=dimension.forms,
    )
