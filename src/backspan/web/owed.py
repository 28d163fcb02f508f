"""What is owed by whom: the acts that the reasons of a review want, by who must act."""

from __future__ import annotations

from collections.abc import Iterable

from backspan.core.review.plain import Data


def owed(
    reasons: Iterable[tuple[Iterable[str], Data]],
) -> list[tuple[str, list[tuple[str, str]]]]:
    """By who must act: what, and where; each reason comes with the places it is told for."""
    acts: dict[str, dict[str, list[str]]] = {}
    for places, reason in reasons:
        for act in reason["acts"]:
            where = acts.setdefault(act["who"], {}).setdefault(act["text"], [])
            where += [one for one in places if one not in where]
    return [
        (who, [(text, ", ".join(where)) for text, where in wanted.items()])
        for who, wanted in sorted(acts.items())
    ]
