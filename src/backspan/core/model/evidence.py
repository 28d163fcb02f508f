"""A value and where it comes from: who stated it, when, on what evidence, how exactly."""

from __future__ import annotations

import datetime
from dataclasses import dataclass
from enum import StrEnum
from typing import Annotated, Any, ClassVar, Generic, TypeVar

T = TypeVar("T")

#: Read by the validating library at the boundary: a field that is not declared is an error.
STRICT: dict[str, Any] = {"extra": "forbid"}


class Evidence(StrEnum):
    """How a value came to be known, strongest first."""

    MEASURED = "measured"
    LABEL = "label"
    CERTIFICATE = "certificate"
    DRAWING = "drawing"
    TOLD = "told"
    ASSUMED = "assumed"


@dataclass(frozen=True, slots=True)
class Statement:
    """Who stated the values of a record, and on what evidence, where a value does not say."""

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    evidence: Evidence
    by: str | None = None
    at: str | None = None
    document: str | None = None


@dataclass(frozen=True, slots=True)
class StatedValue(Generic[T]):
    """One value in SI, its tolerance, its evidence, and the text it was written as.

    `checked_by` is a second person who read the value again; `at` is an ISO date, with or
    without a time; `document` names the paper the value was read from; `planned` is what the
    contractor's plan says where `value` is what was found.
    """

    __pydantic_config__: ClassVar[dict[str, Any]] = STRICT

    value: T
    tolerance: T | None = None
    evidence: Evidence | None = None
    by: str | None = None
    at: str | None = None
    document: str | None = None
    checked_by: str | None = None
    text: str = ""
    planned: T | None = None


def day_of(at: str) -> datetime.date:
    """The day of a statement's `at`, with or without a time. ValueError where it is no date."""
    day, _, _ = at.replace(" ", "T").partition("T")
    return datetime.date.fromisoformat(day)


def is_before(at: str, other: str) -> bool:
    """Whether one stated day is earlier than another."""
    return day_of(at) < day_of(other)


def is_earlier(at: str, other: str) -> bool:
    """Whether one stated day or time is known to be earlier than another.

    On one day it is where both say a time; a time without an offset is that of the place.
    """
    if day_of(at) != day_of(other):
        return is_before(at, other)
    first, second = (datetime.datetime.fromisoformat(one) for one in (at, other))
    if "" in {at[10:], other[10:]}:
        return False
    if None in {first.tzinfo, second.tzinfo}:
        first, second = (one.replace(tzinfo=None) for one in (first, second))
    return first < second


class Sign(StrEnum):
    """Which values a field can hold without being impossible."""

    ANY = "any"
    NOT_NEGATIVE = "zero or more"
    POSITIVE = "more than zero"
    SHARE = "more than zero and at most one"

    def allows(self, value: float) -> bool:
        """Whether a field of that sign can hold the value."""
        if self is Sign.ANY:
            return True
        if self is Sign.NOT_NEGATIVE:
            return value >= 0
        return 0 < value <= 1 if self is Sign.SHARE else value > 0


#: Signs of values that are never zero.
_ABOVE_ZERO = frozenset({Sign.POSITIVE, Sign.SHARE})


@dataclass(frozen=True, slots=True)
class ShortForm:
    """Marks a stated value that may be written as bare text: `reach: 18 in`."""

    sign: Sign = Sign.ANY

    def __get_pydantic_core_schema__(self, source: Any, handler: Any) -> Any:
        """Widen text to a stated value and refuse an impossible sign (used at the boundary)."""
        from pydantic_core import PydanticCustomError, core_schema

        inner = handler(source)

        def widen(given: Any) -> Any:
            return {"value": given, "text": given} if isinstance(given, str) else given

        def within_sign(stated: Any) -> Any:
            if not self.sign.allows(stated.value):
                raise PydanticCustomError(
                    "sign", "must be {expected}", {"expected": str(self.sign), "found": stated.text}
                )
            if isinstance(stated.tolerance, int | float) and stated.tolerance < 0:
                raise PydanticCustomError(
                    "sign", "a tolerance must be {expected}", {"expected": "zero or more"}
                )
            planned = stated.planned
            if planned is not None and not self.sign.allows(planned):
                raise PydanticCustomError(
                    "sign", "a planned value must be {expected}", {"expected": str(self.sign)}
                )
            if self.sign in _ABOVE_ZERO and (stated.tolerance or 0) >= stated.value:
                raise PydanticCustomError(
                    "tolerance", "a tolerance must be smaller than the value it belongs to"
                )
            return stated

        return core_schema.no_info_after_validator_function(
            within_sign,
            core_schema.no_info_before_validator_function(
                widen,
                inner,
                json_schema_input_schema=core_schema.union_schema(
                    [core_schema.str_schema(), inner]
                ),
            ),
        )

    def why_impossible(self, stated: StatedValue[Any]) -> str | None:
        """What a value must be that this one is not; None where it can be."""
        tolerance, planned = stated.tolerance, stated.planned
        for number in (stated.value, *(() if planned is None else (planned,))):
            if not self.sign.allows(number):
                return f"a value of {self.sign}"
        if isinstance(tolerance, int | float):
            if tolerance < 0:
                return "a tolerance of zero or more"
            if self.sign in _ABOVE_ZERO and tolerance >= stated.value:
                return "a tolerance smaller than the value"
        return None


Stated = Annotated[StatedValue[T], ShortForm()]
StatedNotNegative = Annotated[StatedValue[T], ShortForm(Sign.NOT_NEGATIVE)]
StatedPositive = Annotated[StatedValue[T], ShortForm(Sign.POSITIVE)]
StatedShare = Annotated[StatedValue[T], ShortForm(Sign.SHARE)]
