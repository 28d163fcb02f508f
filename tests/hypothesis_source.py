"""Where hypothesis draws from: the same draws whatever else happens to be imported.

Hypothesis collects the constants of every local module that is loaded and mixes them into its
draws, so that a law would see other rigs when an unrelated file gains a number or a test imports
one module more. Here no local constant is offered; the constants hypothesis ships itself stay.
"""

from __future__ import annotations

from typing import Any

from hypothesis.internal.conjecture.providers import HypothesisProvider
from hypothesis.internal.constants_ast import Constants

#: The name by which a profile asks for these draws.
BACKEND = "without-local-constants"

#: The attribute that is replaced; a release that renames it fails here instead of leaking again.
HOOK = "_local_constants"

if not hasattr(HypothesisProvider, HOOK):
    raise ImportError(f"hypothesis has no HypothesisProvider.{HOOK} any more: mend {__file__}")


class StableProvider(HypothesisProvider):
    """Hypothesis' own draws without the constants of loaded local modules."""

    @property
    def _local_constants(self) -> Any:
        return Constants()
