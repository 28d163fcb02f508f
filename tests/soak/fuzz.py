"""Damaged files and wire documents by the thousand: answers or documented errors, nothing else."""

from __future__ import annotations

import random
from collections import Counter
from pathlib import Path

from backspan.core.errors import BackspanError
from backspan.core.review import review
from backspan.exchange.parse import parse_project
from tests.mutations import NUMBERS, changed, damaged, mutated, number_places, outcome
from tests.unit.core.rigs import LIBRARY, ON

ROUNDS = 10
WIRE, FILES = 300, 200
TEXT = (Path(__file__).resolve().parents[1] / "cases" / "rig.yaml").read_text(encoding="utf-8")


def one_round(number: int) -> dict[str, int]:
    """Try one round; the exception that is no documented one is told with what led to it."""
    draw = random.Random(f"fuzz-{number}")  # noqa: S311 - a draw anyone can repeat
    counts = Counter[str]()
    for place in number_places()[number::ROUNDS]:
        for value in NUMBERS:
            counts[f"number: {tried(lambda p=place, v=value: outcome(changed(p, v)), place)}"] += 1
    for at in range(WIRE):
        data = mutated(draw)
        counts[f"wire: {tried(lambda d=data: outcome(d), (number, at))}"] += 1
    for at in range(FILES):
        text = damaged(draw, TEXT)
        counts[f"file: {tried(lambda t=text: of_file(t), (number, at))}"] += 1
    return dict(counts)


def of_file(text: str) -> str:
    try:
        project = parse_project(text, "damaged.yaml", LIBRARY)
        drop = project.drops[0].id if project.drops else "none"
        return str(review(project, drop, LIBRARY, on=ON).verdict)
    except BackspanError as error:
        return type(error).__name__


def tried(attempt: object, what: object) -> str:
    try:
        return attempt()  # type: ignore[operator, no-any-return]
    except Exception as error:
        raise AssertionError(f"{what}: {type(error).__name__}: {error}") from error
