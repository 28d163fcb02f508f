"""backspan: may this temporary suspended scaffold carry people, and the record that shows why.

from datetime import date
from backspan import load, review

answer = review(load("site.yaml"), "S1", on=date(2026, 11, 25))
answer.verdict
"""

from __future__ import annotations

import importlib
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from backspan.api import load, review

__all__ = ["load", "review"]


def __getattr__(name: str) -> Any:
    """What `backspan.api` offers, imported when it is first used."""
    if name not in __all__:
        raise AttributeError(f"module 'backspan' has no attribute {name!r}")
    return getattr(importlib.import_module("backspan.api"), name)
