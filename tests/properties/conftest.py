"""A law that never saw its check pass, or never saw it fail, has proven nothing: it is red."""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from backspan.core.findings import Verdict
from tests.properties.rig_strategies import HEARD


@pytest.fixture(autouse=True)
def _both_answers_are_heard(request: pytest.FixtureRequest) -> Iterator[None]:
    HEARD.clear()
    yield
    law = request.node.get_closest_marker("law")
    if law is None:
        return
    check = law.args[0] if law.args else request.node.callspec.params["check"]
    heard = HEARD[check]
    for verdict in (Verdict.PASS, Verdict.FAIL):
        assert heard[verdict], f"{check} never answered {verdict} in this law: {dict(heard)}"
