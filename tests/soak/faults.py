"""Rigs with one fault planted in each, and sound ones: no fault passes, few sound ones stop."""

from __future__ import annotations

import random
from collections import Counter

from backspan.core.findings import Verdict
from backspan.core.review.run import case_of, review_findings
from tests.planted_faults import planted, sound
from tests.unit.core import rigs

ROUNDS = 20
FAULTY, SOUND = 500, 50
#: Sound rigs that may be stopped, of a hundred.
MOST_STOPPED = 2


def one_round(number: int) -> dict[str, int]:
    """Judge the rigs of one round; AssertionError with what passed, or what was stopped and why."""
    draw = random.Random(number)  # noqa: S311 - examples, not secrets
    counts = Counter[str]()
    for at in range(FAULTY):
        name, project = planted(draw)
        found = review_findings(case_of(project, "D", rigs.LIBRARY, on=rigs.ON))
        assert found.verdict is not Verdict.PASS, f"round {number}, rig {at}: {name} passes"
        counts["faults that did not pass"] += 1
        counts[f"{name}: {found.verdict}"] += 1
    stopped = []
    for at in range(SOUND):
        found = review_findings(case_of(sound(draw), "D", rigs.LIBRARY, on=rigs.ON))
        counts["sound rigs"] += 1
        if found.verdict is not Verdict.PASS:
            why = {one.message.id for one in found.findings if one.verdict is not Verdict.PASS}
            stopped.append(f"{at}: {', '.join(sorted(why))}")
            counts["sound rigs stopped"] += 1
    assert 100 * len(stopped) <= MOST_STOPPED * SOUND, "; ".join(stopped)
    return dict(counts)
