"""Putting a description right: what nobody touched stays as it was stated, by whom and when."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import replace
from typing import Any

from backspan.core.model.evidence import Evidence
from backspan.core.quantities import Style
from backspan.web.asking import Ask, filled_in, value_said
from backspan.web.nested import listed, numbered, put, take_out


def as_it_stands(
    asks: Iterable[Ask], data: Mapping[str, Any], style: Style = Style.US
) -> tuple[Ask, ...]:
    """The questions with what a record says, each as it was stated."""
    return tuple(_with_its_own(one) for one in filled_in(asks, data, style))


def put_right(
    sent: Iterable[Ask],
    data: Mapping[str, Any],
    statement: Mapping[str, str] | None = None,
    style: Style = Style.US,
) -> dict[str, Any]:
    """A record's data with what was written otherwise than it stood; all else as it was.

    `data` is what `as_it_stands` showed. A field that was emptied says nothing any more.
    """
    asks = tuple(sent)
    shown = as_it_stands(asks, data, style)
    new: dict[str, Any] = numbered(dict(data))
    for one, before in zip(asks, shown, strict=True):
        if is_untouched(one, before):
            continue
        take_out(new, one.name)
        value = value_said(replace(one, evidence=before.evidence), statement)
        if value is not None:
            put(new, one.name, value)
    found = listed(new)
    return found if isinstance(found, dict) else {}


def is_untouched(sent: Ask, shown: Ask) -> bool:
    """Whether a question came back as it was shown."""
    told = len(shown.evidence) > 1 and bool(sent.value)
    return (
        sent.value == shown.value
        and set(sent.values) == set(shown.values)
        and (not told or sent.seen == (shown.seen or str(shown.evidence[0])))
    )


def _with_its_own(one: Ask) -> Ask:
    """With the word and the evidence that stand there among those that can be chosen.

    Else a browser would send another back than was stated, and nobody touched it.
    """
    known = {word for word, _ in one.words}
    held = (one.value, *one.values) if one.words else ()
    own = tuple((word, word) for word in held if word and word not in known)
    evidence = one.evidence
    if evidence and one.seen and one.seen not in evidence:
        evidence = (Evidence(one.seen), *evidence)
    return replace(one, words=(*own, *one.words), evidence=evidence)
