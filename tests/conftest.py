"""How laws are tried, and which tests are begun first.

Laws draw few examples in `make test`, many and other ones in `make soak`.
"""

from __future__ import annotations

import pytest
from hypothesis import HealthCheck, Phase, Verbosity, settings
from hypothesis.internal.conjecture.providers import AVAILABLE_PROVIDERS

from tests.hypothesis_source import BACKEND, StableProvider

AVAILABLE_PROVIDERS[BACKEND] = f"{StableProvider.__module__}.{StableProvider.__qualname__}"

#: Examples are drawn and judged, never shrunk: a law names what it drew, and that becomes a case.
PHASES = (Phase.explicit, Phase.generate)

settings.register_profile(
    "few",
    backend=BACKEND,
    database=None,
    deadline=None,
    derandomize=True,
    max_examples=15,
    phases=PHASES,
    suppress_health_check=[HealthCheck.too_slow, HealthCheck.filter_too_much],
)
settings.register_profile(
    "soak",
    settings.get_profile("few"),
    derandomize=False,
    max_examples=200,
    verbosity=Verbosity.normal,
)


@pytest.hookimpl(trylast=True)
def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Begin with what takes long; the order is else as it was."""
    items.sort(key=lambda item: item.get_closest_marker("long") is None)
