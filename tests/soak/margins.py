"""Margins of random supports: every step up to the promised room holds, one step more does not.

The supports are those of tests/soak/supports.py: mixed stacks, doubtful values, beams whose own
weight comes into the sum, every text with a factor. Each step of what is left is judged again by
the whole check, with its record, and at the room and one beyond by the second working in fractions.
What stands on the beam has to stay on it. Of what is short, that much is enough and one step less
is not. Of rooms with more than a hundred steps a hundred are judged, the ends among them.
"""

from __future__ import annotations

import random
from collections import Counter
from collections.abc import Callable
from fractions import Fraction

from backspan.core.findings import Finding, Margin, Verdict
from backspan.core.model.project import Project
from backspan.core.model.rigs import BackspanFrom
from backspan.core.quantities import TAPE_STEP, Amount
from backspan.core.review.run import with_margins
from tests.exact_support import answer, support_of
from tests.properties.rig_strategies import contradicted
from tests.soak.supports import BACKSPAN, GAP, NEAR, REACH, rules_of, support_drawn
from tests.unit.core import rigs

ROUNDS = 20
SUPPORTS, MOST_STEPS_JUDGED = 50, 100
#: No point inside the doubts is drawn here.
DRAW = random.Random(0)  # noqa: S311
COUNT = (*rigs.STACK, "groups", -1, "count")

Change = Callable[[Project, int], Project]


def one_round(number: int) -> dict[str, int]:
    """Draw supports from the seed `number`, try their margins; AssertionError on a false one."""
    draw = random.Random(f"margins-{number}")  # noqa: S311 - a draw anyone can repeat
    counts: Counter[str] = Counter()
    for index in range(SUPPORTS):
        project = support_drawn(draw)
        (found,) = with_margins(rigs.case(project), (tipping(project),))
        told = {one.id: one for one in found.margins}
        counts["supports"] += 1
        for name, change in changes(project).items():
            if name in told:
                where = f"margins-{number}, support {index}, {name}"
                counts["steps judged"] += hold_to(project, told[name], change, where)
                counts[f"{name}, {'short' if told[name].beyond else 'left'}"] += 1
        counts["beam weight counted"] += "beam_mass" in {one.name for one in found.inputs}
    return dict(counts)


def changes(project: Project) -> dict[str, Change]:
    """What each margin moves, and which way."""
    stacked = rigs.at(project, (*rigs.ARM, "backspan_from")) is BackspanFrom.STACK
    both = moving((REACH, 1)) if stacked else moving((REACH, 1), (BACKSPAN, -1))
    return {
        "more-reach": moving((REACH, 1)),
        "less-backspan": moving((GAP, 1)) if stacked else moving((BACKSPAN, -1)),
        "fulcrum-inboard": both,
        "pieces-spare": fewer,
    }


def moving(*moves: tuple[tuple[str | int, ...], int]) -> Change:
    """Lengths that change together, by so many steps of a tape."""

    def change(project: Project, steps: int) -> Project:
        by = steps * TAPE_STEP[project.units]
        for place, sign in moves:
            value = rigs.at(project, place).value
            project = rigs.put(project, (*place, "value"), value + sign * by)
        return project

    return change


def fewer(project: Project, steps: int) -> Project:
    """So many pieces of the innermost group less."""
    there = rigs.at(project, COUNT).value
    return rigs.put(project, (*COUNT, "value"), there - steps)


def hold_to(project: Project, margin: Margin, change: Change, where: str) -> int:
    """How many steps were judged; AssertionError where one is not as promised."""
    value, step = margin.value, TAPE_STEP[project.units]
    steps = round(value.value / step) if isinstance(value, Amount) else int(value)
    if margin.beyond:
        assert_holds(change(project, -steps), where, holds=True)
        assert_holds(change(project, 1 - steps), where, holds=False)
        return 2
    every = range(steps + 1)
    some = every if len(every) <= MOST_STEPS_JUDGED else spread(steps)
    fits = beam_fits(project)
    for count in some:
        there = change(project, count)
        assert tipping(there).verdict is Verdict.PASS, f"{where}: {count} of {steps} steps"
        assert beam_fits(there) or not fits, f"{where}: {count} of {steps} steps, off the beam"
    assert_holds(change(project, steps), where, holds=True)
    if isinstance(value, int) and rigs.at(project, COUNT).value == steps:
        return len(some)  # every piece of the group is spare, and there are no fewer than none
    beyond = change(project, steps + 1)
    if not fits or beam_fits(beyond):
        assert_holds(beyond, where, holds=False)
    return len(some) + 1


def spread(steps: int) -> list[int]:
    """A hundred counts from none to all, both among them."""
    return sorted({steps * part // MOST_STEPS_JUDGED for part in range(MOST_STEPS_JUDGED + 1)})


def assert_holds(project: Project, where: str, *, holds: bool) -> None:
    """The check and the second working both say so; the second one not where it is too near."""
    found = tipping(project)
    again = found.verdict is Verdict.REFER and contradicted(found)
    verdict = Verdict.FAIL if again else found.verdict
    assert verdict is (Verdict.PASS if holds else Verdict.FAIL), f"{where}: {verdict}"
    exact = answer(support_of(project, "D", "L"), rules_of(project), draw=DRAW, inside=0).margin
    assert abs(exact) < NEAR or (exact > Fraction(0)) is holds, f"{where}: {float(exact)}"


def tipping(project: Project) -> Finding:
    """The tipping finding of the one support, without its margins."""
    (found,) = (one for one in rigs.answers(project, "tipping") if isinstance(one, Finding))
    return found


def beam_fits(project: Project) -> bool:
    """Whether what stands on the beam, or the taped backspan, is not beyond it."""
    answers = rigs.answers(project, "beam-length")
    return all(one.verdict is not Verdict.FAIL for one in answers if isinstance(one, Finding))
