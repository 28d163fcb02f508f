"""The numbers of a worked line: written with enough digits, and read back."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class PrintedNumber:
    """One number of a worked line; `name` is the parameter, constant or formula it belongs to."""

    name: str
    symbol: str
    value: str
    unit: str

    @property
    def text(self) -> str:
        """The number with its unit, where it has one."""
        return f"{self.value} {self.unit}" if self.unit else self.value


def places_for(number: float, *, digits: int) -> int:
    """Decimal places that show `digits` significant digits; whole units are never rounded away."""
    exponent = int(f"{number:.{digits - 1}e}".partition("e")[2])
    return max(0, digits - 1 - exponent)


def half_of_last(places: int) -> float:
    """Half a unit of the last of `places` decimal places."""
    return float(f"5e-{places + 1}")


def write_number(number: float, *, places: int) -> str:
    """Decimal text with thousands commas, without idle zeros and without "-0"."""
    text = f"{number:,.{places}f}"
    if places:
        text = text.rstrip("0").rstrip(".")
    return "0" if text == "-0" else text


def read_number(text: str) -> float:
    """The number a text of `write_number` shows."""
    return float(text.replace(",", ""))
