"""From the basis a project names to the rule values that apply to one drop."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from backspan.core.findings import BasisLine
from backspan.core.model.basis import TOPICS, RuleChoice
from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop
from backspan.core.rules.selected import Confirmed, RuleLibrary, SelectedRules
from backspan.core.rules.shape import RuleError
from backspan.core.sheet.case import Case

#: What a rule set is used for where nothing names another.
EVERY_TOPIC = "every topic it speaks of"

#: The custom of the trade that questions values; part of every basis, chosen by edition too.
PRACTICE = RuleChoice("trade-practice", "2026")
#: How the strength of a steel beam is reckoned, and the table of shapes.
OF_STEEL = RuleChoice("us-aisc-360", "2016")
OF_SHAPES = RuleChoice("us-aisc-shapes", "15")
#: What two alloys of aluminium bear before they yield or break.
OF_ALUMINIUM = RuleChoice("us-aluminum-design-manual", "2015")


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
    made = SelectedRules(
        rule_set,
        {one.value: one.reading for one in choice.readings},
        confirmations(project, choice.rule_set, choice.edition),
    )
    return library.same(made)


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
    project: Project,
    drop: Drop,
    library: RuleLibrary,
    basis: Sequence[RuleChoice] | None = None,
) -> Mapping[str, tuple[SelectedRules, ...]]:
    """The rule sets a drop must meet on each topic: the basis given, else its project's and own.

    Raises RuleError for a rule set that is not at hand, and where a topic has none at all: a drop
    held against nothing would pass.
    """
    selected: dict[RuleChoice, SelectedRules] = {}
    found = {}
    for topic in TOPICS:
        of_project = project.basis.of(topic)
        choices = (*of_project, *drop.also_meets) if basis is None else tuple(basis)
        if not choices or not (of_project or basis):
            raise RuleError(f"the basis names no rule set for {topic}; name at least one")
        for choice in choices:
            if choice not in selected:
                selected[choice] = selected_rules(project, choice, library)
        found[topic] = tuple(selected[choice] for choice in choices)
    return found


def basis_lines(case: Case) -> tuple[BasisLine, ...]:
    """The basis as every paper prints it: each rule set with the topics it is used for."""
    of_project = {
        (one.rule_set, one.edition) for topic in TOPICS for one in case.project.basis.of(topic)
    }
    lines = []
    for rules in case.rules:
        topics = [topic for topic in TOPICS if rules in case.topics[topic]]
        name = EVERY_TOPIC if len(topics) == len(TOPICS) else ", ".join(topics)
        key = (rules.rule_set.id, rules.rule_set.edition)
        of_drop = {(one.rule_set, one.edition) for one in case.drop.also_meets}
        lines.append(_line(name, rules, added=key in of_drop - of_project))
    return (*lines, _line("evidence and plausible values", case.practice, added=False))


def _line(topic: str, rules: SelectedRules, *, added: bool) -> BasisLine:
    readings = tuple(
        (value.key, rules.select(value).reading)
        for value in rules.rule_set.values
        if len(value.readings) > 1
    )
    rule_set = rules.rule_set
    return BasisLine(topic, rule_set.id, rule_set.edition, rule_set.title, readings, added)
