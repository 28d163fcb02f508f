"""Answers kept from one state of a site to the next, against the same site reviewed anew.

A round walks over the demo with one store: each step changes a few fields of what one drop may
lean on, and what the drop then answers is held to a review that knows nothing of before.
"""

from __future__ import annotations

from tests.properties.test_kept import Counted, answered, demo, walk

ROUNDS = 48
STEPS = 40


def one_round(number: int) -> dict[str, int]:
    """One walk by one drop. Raises AssertionError where a kept answer is not the one worked out."""
    drop = demo().drops[number % len(demo().drops)].id
    kept, answers = Counted(), set[str]()
    for step, site in enumerate(walk(drop, 1000 + number, STEPS)):
        anew = answered(site, drop)
        found = answered(site, drop, kept)
        assert found == anew, f"{drop}, seed {1000 + number}, step {step}"
        answers.add(repr(anew))
    return {
        "states": STEPS,
        "different answers": len(answers),
        "questions asked": len(kept.asked),
        "of them worked out": len(kept.made),
    }
