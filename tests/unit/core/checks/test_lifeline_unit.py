"""A lifeline that names the tag of its rope hangs on that very rope."""

from __future__ import annotations

from dataclasses import replace

import pytest

from backspan.core.findings import Verdict
from backspan.core.model.project import Project
from backspan.core.model.units import Condition, RopeDamage, RopeWear, Unit, UnitKind
from tests.unit.core.rigs import PROJECT, RIG, at, findings, put, reasons, seen

LINES = at(PROJECT, (*RIG, "lifelines"))
FIRST, SECOND = ((*RIG, "lifelines", one.id) for one in LINES[:2])
SOUND = seen(Condition.SOUND)


def tagged(unit: Unit, *places: tuple[str | int, ...]) -> Project:
    """The rig with the rope of these lifelines named by its tag."""
    project = PROJECT
    for place in places or (FIRST,):
        project = put(project, (*place, "rope"), unit.id)
    kit = project.kit
    return replace(project, kit=replace(kit, units=(*kit.units, unit)))


def rope(**changes: object) -> Unit:
    unit = Unit("LL-77", UnitKind.ROPE, LINES[0].rope, serial="77", condition=SOUND)
    return replace(unit, **changes)  # type: ignore[arg-type]


def verdicts(project: Project, line: int = 0) -> dict[str, Verdict]:
    found = findings(project, "lifeline-unit", f"D/{LINES[line].id}")
    return {one.message.id: one.verdict for one in found}


def test_a_type_alone_is_no_question() -> None:
    assert ("D", "na.nothing-of-it") in reasons(PROJECT, "lifeline-unit")


def test_a_sound_one_passes() -> None:
    assert verdicts(tagged(rope())) == {"condition.pass": Verdict.PASS}


@pytest.mark.parametrize("state", [Condition.WITHDRAWN, Condition.DEFECTIVE])
def test_one_that_was_withdrawn_is_refused(state: Condition) -> None:
    assert verdicts(tagged(rope(condition=seen(state)))) == {"condition.fail": Verdict.FAIL}


def test_one_of_no_known_condition_is_missing() -> None:
    assert verdicts(tagged(rope(condition=None))) == {"condition.missing": Verdict.MISSING}


def test_one_that_heat_has_touched_is_refused() -> None:
    burnt = rope(wear=RopeWear(damage=seen(RopeDamage.HEAT)))
    assert verdicts(tagged(burnt))["rope-damage.fail"] is Verdict.FAIL
    fine = rope(wear=RopeWear(damage=seen(RopeDamage.NONE)))
    assert verdicts(tagged(fine))["rope-damage.pass"] is Verdict.PASS


def test_one_rope_is_no_two_lines() -> None:
    both = tagged(rope(), FIRST, SECOND)
    assert verdicts(both)["unit.twice"] is Verdict.FAIL
    assert verdicts(both, 1)["unit.twice"] is Verdict.FAIL
