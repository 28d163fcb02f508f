"""The languages there are, by their codes."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from backspan.core.words.language import ENGLISH, Language, WordsError
from backspan.core.words.spanish import SPANISH

#: English first: it is the default.
LANGUAGES: Mapping[str, Language] = MappingProxyType({one.code: one for one in (ENGLISH, SPANISH)})


def language_of(code: str) -> Language:
    """The language of a code such as "en"; WordsError when there is none."""
    if code not in LANGUAGES:
        raise WordsError(f"no language {code!r}; there are: {', '.join(LANGUAGES)}")
    return LANGUAGES[code]
