"""From the basis a project names to the rule values that apply to one drop."""

from __future__ import annotations

from collections.abc import Sequence

from backspan.core.findings import BasisLine
from backspan.core.model.basis import RuleChoice
from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop
from backspan.core.rules.selected import Confirmed, RuleLibrary, SelectedRules
from backspan.core.rules.shape import RuleError

#: The custom of the trade that questions values; part of every basis, chosen by edition too.
PRACTICE = RuleChoice("trade-practice", "2026")


def selected_rules(project: Project, choice: RuleChoice, library: RuleLibrary) -> SelectedRules:
    """One rule set with the readings chosen and what the project's office confirmed of it.

    Raises RuleError when the rule set, the edition or a reading is not there.
    """
    rule_set = library.get(choice.rule_set, choice.edition)
    for reading in choice.readings:
        value = rule_set.value(reading.value)
        if value is None:
            raise RuleError(f"{rule_set.id} has no value {reading.value!r} to choose a reading of")
        if reading.reading not in {one.name for one in value.readings}:
            names = ", ".join(one.name for one in value.readings)
            raise RuleError(
                f"{rule_set.id}: {value.key} has no reading {reading.reading!r}; it has: {names}"
            )
    return SelectedRules(
        rule_set,
        {one.value: one.reading for one in choice.readings},
        confirmations(project, choice.rule_set, choice.edition),
    )


def confirmations(project: Project, rule_set: str, edition: str) -> dict[str, Confirmed]:
    """What the project's office confirmed of one text in one edition, by value."""
    people = {person.id: person for person in project.people}
    found: dict[str, Confirmed] = {}
    for one in project.confirmations:
        if (one.rule_set, one.edition) == (rule_set, edition):
            person = people.get(one.by)
            name = one.by if person is None else f"{person.name}, {person.role}"
            found[one.value] = Confirmed(name, one.at, one.copy_seen)
    return found


def rules_of(
    project: Project, drop: Drop, library: RuleLibrary, basis: Sequence[RuleChoice] | None = None
) -> tuple[SelectedRules, ...]:
    """The rule sets a drop must meet: the basis given, else the project's and the drop's own."""
    choices = basis if basis is not None else (*project.basis.tipping, *drop.also_meets)
    return tuple(selected_rules(project, choice, library) for choice in choices)


def basis_lines(
    project: Project, drop: Drop, rules: Sequence[SelectedRules], practice: SelectedRules
) -> tuple[BasisLine, ...]:
    """The basis as every paper prints it."""
    of_project = {(one.rule_set, one.edition) for one in project.basis.tipping}
    of_drop = {(one.rule_set, one.edition) for one in drop.also_meets} - of_project
    lines = [
        _line(
            "tipping",
            one,
            added=(one.rule_set.id, one.rule_set.edition) in of_drop,
        )
        for one in rules
    ]
    return (*lines, _line("evidence and plausible values", practice, added=False))


def _line(topic: str, rules: SelectedRules, *, added: bool) -> BasisLine:
    readings = tuple(
        (value.key, rules.select(value).reading)
        for value in rules.rule_set.values
        if len(value.readings) > 1
    )
    rule_set = rules.rule_set
    return BasisLine(topic, rule_set.id, rule_set.edition, rule_set.title, readings, added)
