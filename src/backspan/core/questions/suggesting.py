"""What to write instead of a name that is not there."""

from __future__ import annotations

from collections.abc import Iterable

from backspan.core.model.identifiers import did_you_mean


def suggested(wanted: str, choices: Iterable[str], *, what: str) -> str:
    """The choices most like `wanted`, else all there are under the heading `what`."""
    names = list(choices)
    return did_you_mean(wanted, names) or f"{what}: {', '.join(names) or 'none'}"
