"""Histories of two devices, other and many more than `make test` merges: one folded state."""

from __future__ import annotations

from tests.unit.core.ledger.test_merging import (
    SEEDS,
    test_two_devices_make_one_state_whatever_the_order,
)

ROUNDS, HISTORIES = 10, 100


def one_round(number: int) -> dict[str, int]:
    """Draw histories from seeds that no test takes; AssertionError where an order shows."""
    first = SEEDS + number * HISTORIES
    for seed in range(first, first + HISTORIES):
        test_two_devices_make_one_state_whatever_the_order(seed)
    return {"histories": HISTORIES}
