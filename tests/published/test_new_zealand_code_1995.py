"""Approved Code of Practice for the Safe Erection and Use of Scaffolding (New Zealand, 1995).

Clause 8.3.4, worked: dead 300 kg and live 240 kg give 390 kg on one outrigger; factor 3.
"""

from __future__ import annotations

import pytest

from backspan.core.findings import Verdict
from backspan.core.quantities import FORCE
from tests.published.published_rig import finding, in_unit, reviewed, row, value_in

FILE = "new-zealand-code-1995"
RULE = ("nz-acop-scaffolding", "tipping.load-at-one-end")


def test_half_the_dead_load_and_all_of_the_live_load() -> None:
    load = row(reviewed(FILE, "N6"), *RULE).load
    assert load is not None
    assert load.dimension == FORCE
    assert value_in(load.value, FORCE, "kg") == pytest.approx(390.0, rel=1e-9)


def test_three_times_its_moment() -> None:
    found = row(reviewed(FILE, "N6"), *RULE)
    assert in_unit(found.required, "kg") == pytest.approx(3 * 390 * 0.5 / 4, rel=1e-9)
    assert found.pieces == 6
    assert finding(reviewed(FILE, "N6"), "tipping").verdict is Verdict.PASS
    assert finding(reviewed(FILE, "N5"), "tipping").verdict is Verdict.FAIL
