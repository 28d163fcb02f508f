"""The shape of a registered check."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from backspan.core.findings import DoesNotApply, Finding
from backspan.core.judgement.case import Case

Answer = Finding | DoesNotApply


@dataclass(frozen=True, slots=True)
class Check:
    """One question asked of every drop.

    `judge` answers with findings, or says why there is nothing to judge. It is asked at every
    corner of what is doubtful (corners.py), so it declares no harmful direction.
    """

    id: str
    judge: Callable[[Case], Iterator[Answer]]
    finds_worst_corner: bool = False
    """Whether its questions do that themselves (core/sheet), so that nobody asks them again."""
