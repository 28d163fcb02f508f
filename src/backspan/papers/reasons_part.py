"""The reasons of one drop or of all, as rows: answer, drops, sentence, who must do what."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Any

from backspan.core.findings import Verdict
from backspan.core.review.plain import Data
from backspan.core.review.reasons import NOT_JUDGED, OPEN, REFUSED, of_site
from backspan.core.words import Language, say_verdict

_HEADS = {REFUSED: "refused", OPEN: "open", NOT_JUDGED: "not_judged"}


def reasons_part(fronts: Sequence[Data], language: Language) -> list[dict[str, Any]]:
    """A group for each kind of reason that there is, worst first; then the drops that pass."""
    told = of_site(fronts)
    groups = [
        {"head": language.paper[_HEADS[kind]], "rows": [_row(one, language) for one in rows]}
        for kind, rows in told.items()
        if rows
    ]
    passed = [_passed(one, language) for one in fronts if one["verdict"] == Verdict.PASS]
    return [*groups, {"head": language.paper["pass"], "rows": passed}] if passed else groups


def _row(one: Data, language: Language) -> dict[str, Any]:
    where = f", {', '.join(one['where'])}" if one["where"] else ""
    return {
        "answer": say_verdict(Verdict(one["verdict"]), language=language),
        "subject": f"{', '.join(one['drops'])}{where}",
        "title": "; ".join(one["titles"]),
        "text": one["text"].removeprefix(language.phrase("not-judged-here")).strip(),
        "acts": one["acts"],
    }


def _passed(front: Data, language: Language) -> dict[str, Any]:
    _, _, counted = front["answer"].partition(", ")
    return {
        "answer": say_verdict(Verdict.PASS, language=language),
        "subject": front["drop"],
        "title": counted,
        "text": "; ".join(_held(front, language)),
        "acts": [],
    }


def _held(front: Data, language: Language) -> Iterator[str]:
    if front["strength"] is not None:
        yield f"{language.paper['strength']}: {front['strength']['utilisation']['text']}"
    if front["margin"] is not None:
        yield f"{language.paper['left']}: {front['margin']}"
