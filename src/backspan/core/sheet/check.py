"""The shape of a registered check."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from backspan.core.findings import DoesNotApply, Finding, FindingKey, Margin
from backspan.core.model.topics import Topic
from backspan.core.sheet.case import Case

Answer = Finding | DoesNotApply


@dataclass(frozen=True, slots=True)
class Check:
    """One question asked of every drop.

    `judge` answers with findings, or says why there is nothing to judge. What it compares is asked
    at every corner of what is doubtful (question.py), so it declares no harmful direction.
    """

    id: str
    topic: Topic
    judge: Callable[[Case], Iterator[Answer]]
    margins: Callable[[Case], Iterator[tuple[FindingKey, tuple[Margin, ...]]]] | None = None
    """What is left of each of its findings, for whoever asks."""
