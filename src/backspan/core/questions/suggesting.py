"""What to write instead of a name that is not there."""

from __future__ import annotations

from collections.abc import Iterable

from backspan.core.model.identifiers import did_you_mean


def suggested(wanted: str, choices: Iterable[str], *, what: str) -> str:
    """The choices most like `wanted` or holding it, else all there are, headed by `what`."""
    names = list(choices)
    holding = [name for name in names if wanted and wanted.casefold() in name.casefold()]
    meant = did_you_mean(wanted, names)
    if not meant and holding:
        meant = f"did you mean {' or '.join(holding)}?"
    return meant or f"{what}: {', '.join(names) or 'none'}"
