"""Whose units an answer is told in: those asked for, else those the values were written in."""

from __future__ import annotations

import re
from collections.abc import Sequence

from backspan.core.quantities import Style

_METRIC = re.compile(r"\d\s*(?:mm|cm|m|kg|g|t|k?N|k?Pa|MPa)\b(?!\s*/)")
_US = re.compile(r"\d\s*(?:ft|in|inch|inches|feet|foot|lbs?|lbf|kips?|oz|'|\"|′|″)", re.IGNORECASE)


def style_of(asked: str | None, values: Sequence[str]) -> Style:
    """The style asked for; else metric where every unit written is metric; else US."""
    if asked is not None:
        return Style(asked)
    text = " ".join(values)
    metric = _METRIC.search(text) is not None and _US.search(text) is None
    return Style.METRIC if metric else Style.US
