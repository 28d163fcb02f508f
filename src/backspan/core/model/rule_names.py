"""Rule sets, editions, readings and values that a project names but nobody has."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import fields

from backspan.core.errors import quoted
from backspan.core.model.basis import RuleChoice
from backspan.core.model.beams import BeamSection, Metal
from backspan.core.model.identifiers import Path, ReferenceProblem, near
from backspan.core.model.project import Project
from backspan.core.rules.selected import RuleLibrary
from backspan.core.rules.shape import SIZES_OF, RuleSet, Section, SectionForm

#: What is stated of a shape that a table has, beside the sizes by which it is known again.
_BESIDE_A_SHAPE = frozenset({"shape", "yield_strength"})

#: All that is stated of a section without a shape, beside its sizes.
_OF_ANY_FORM = frozenset({"form", "material", "weld", "yield_strength"})
#: That a shape of the table is of steel may be said again.
_NOTHING_MORE = (None, Metal.STEEL)

_Problems = Iterator[ReferenceProblem]


def rule_problems(project: Project, library: RuleLibrary) -> tuple[ReferenceProblem, ...]:
    """Every rule set, edition, reading or value that is named but not at hand, with its place."""
    return tuple(_problems(project, library))


def _problems(project: Project, library: RuleLibrary) -> _Problems:
    for topic in fields(project.basis):
        choices: tuple[RuleChoice, ...] = getattr(project.basis, topic.name)
        for index, choice in enumerate(choices):
            yield from _of_choice(choice, ("basis", topic.name, index), library)
    for number, drop in enumerate(project.drops):
        for index, choice in enumerate(drop.also_meets):
            yield from _of_choice(choice, ("drops", number, "also_meets", index), library)
    shapes = {
        value.readings[0].content.shape: value.readings[0].content.form
        for rule_set in library.rule_sets
        for value in rule_set.values
        if isinstance(value.readings[0].content, Section)
    }
    for index, beam in enumerate(project.kit.beams):
        if beam.section is not None:
            yield from _of_section(beam.section, ("kit", "beams", index, "section"), shapes)
    for index, one in enumerate(project.confirmations):
        path: Path = ("confirmations", index)
        found = _rule_set(one.rule_set, one.edition, library)
        if found is None:
            yield _no_rule_set(one.rule_set, one.edition, path, library)
        elif found.value(one.value) is None:
            known = [value.key for value in found.values]
            yield _absent("value", one.value, (*path, "value"), known)


def _of_section(section: BeamSection, path: Path, shapes: Mapping[str, SectionForm]) -> _Problems:
    """A shape that no table has; what is stated beside it, or beside a form, and is not of it."""
    form, beside = section.form, _OF_ANY_FORM
    if section.shape is not None:
        form, beside = shapes.get(section.shape), _BESIDE_A_SHAPE
        if form is None:
            yield _absent("shape", section.shape, (*path, "shape"), list(shapes))
    if form is None:
        return
    named = (
        f"the shape {section.shape}" if section.shape is not None else f"a section of form {form}"
    )
    for one in fields(section):
        of_it = one.name in SIZES_OF[form] or one.name in beside
        if of_it or getattr(section, one.name) in _NOTHING_MORE:
            continue
        found = f"{one.name.replace('_', ' ')} beside {named}"
        expected = f"only its sizes beside it: {', '.join(SIZES_OF[form]).replace('_', ' ')}"
        yield ReferenceProblem((*path, one.name), found, expected)


def _of_choice(choice: RuleChoice, path: Path, library: RuleLibrary) -> _Problems:
    found = _rule_set(choice.rule_set, choice.edition, library)
    if found is None:
        yield _no_rule_set(choice.rule_set, choice.edition, path, library)
        return
    for index, one in enumerate(choice.readings):
        value, place = found.value(one.value), (*path, "readings", index)
        if value is None:
            known = [known.key for known in found.values]
            yield _absent("value", one.value, (*place, "value"), known)
        elif one.reading not in (names := [reading.name for reading in value.readings]):
            yield _absent("reading", one.reading, (*place, "reading"), names)


def _rule_set(name: str, edition: str, library: RuleLibrary) -> RuleSet | None:
    return next((one for one in library.editions(name) if one.edition == edition), None)


def _no_rule_set(name: str, edition: str, path: Path, library: RuleLibrary) -> ReferenceProblem:
    editions = [one.edition for one in library.editions(name)]
    if not editions:
        known = [one.id for one in library.rule_sets]
        return _absent("rule set", name, (*path, "rule_set"), known)
    return _absent("edition", edition, (*path, "edition"), editions)


def _absent(kind: str, name: str, path: Path, known: list[str]) -> ReferenceProblem:
    expected = near(name, known, what=f"{kind}s there are")
    return ReferenceProblem(path, f"the {kind} {quoted(name)}, which is not there", expected)
