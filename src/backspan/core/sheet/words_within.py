"""Which words of a list stand in a text that somebody wrote freely."""

from __future__ import annotations

import re
from collections.abc import Iterable

_WORD = re.compile(r"\w+")


def words_within(text: str, listed: Iterable[str], *, but: Iterable[str] = ()) -> tuple[str, ...]:
    """Those of `listed` that the text has as whole words, in any case of letters.

    What stands in one of the turns of phrase in `but` is not looked at.
    """
    said = _plain(text)
    for turn in but:
        said = said.replace(_plain(turn), " , ")
    return tuple(one for one in listed if _plain(one) in said)


def _plain(text: str) -> str:
    return f" {' '.join(_WORD.findall(text.casefold()))} "
