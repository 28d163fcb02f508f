"""The shape of a registered check."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field

from backspan.core.findings import Direction, DoesNotApply, Finding
from backspan.core.judgement.case import Case

Answer = Finding | DoesNotApply


@dataclass(frozen=True, slots=True)
class Check:
    """One question asked of every drop.

    `harmful` declares which way each measured input does harm; the check is made at that end of
    the input's tolerance. `judge` answers with findings, or says why there is nothing to judge.
    """

    id: str
    judge: Callable[[Case], Iterator[Answer]]
    harmful: Mapping[str, Direction] = field(default_factory=dict)
