"""The shape of a row in the table of quantities (named.py)."""

from __future__ import annotations

from dataclasses import dataclass

from backspan.core.quantities.dimension import Dimension


@dataclass(frozen=True, slots=True, kw_only=True)
class Quantity:
    """One named number; `dimension` is None for a count.

    `evidence` and `tolerance` are keys of the practice rules, `least` and `most` too, less their
    "plausible.least-" and "plausible.most-". `record` and `field` say where it is stated: of
    derived numbers there is no record. `asked` is its name in a question, `hint` what is told
    beside it where its words do not say enough.
    """

    name: str
    words: str
    dimension: Dimension | None
    evidence: str = ""
    record: str = ""
    field: str = ""
    symbol: str = ""
    asked: str = ""
    hint: str = ""
    zero: bool = False
    """Whether none of it is a value like any other."""
    share: bool = False
    """Whether it is a share of something, of which there is no more than all."""
    least: str = ""
    most: str = ""
    tolerance: str = ""


GEOMETRY, RATING, MASSES = "evidence.geometry", "evidence.rating", "evidence.mass"
COUNT, OBSERVATION = "evidence.count", "evidence.observation"
SIZE = "evidence.size"
