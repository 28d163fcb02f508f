"""Names as people write them: a rule set, `us-wa-wac-296-874@2007`, and what was meant instead."""

from __future__ import annotations

from collections.abc import Iterable

from backspan.core.errors import quoted
from backspan.core.model.basis import RuleChoice
from backspan.core.model.identifiers import did_you_mean
from backspan.core.rules.selected import RuleLibrary
from backspan.core.rules.shape import RuleError, RuleSet


def chosen_rule_set(text: str, library: RuleLibrary) -> RuleSet:
    """The rule set that `text` names; without "@edition" the text must have one edition only.

    Raises RuleError that names what is there instead.
    """
    name, at, edition = text.partition("@")
    editions = {one.edition: one for one in library.editions(name)}
    if not editions:
        names = [one.id for one in library.rule_sets]
        expected = suggested(name, names, what="rule sets")
        raise RuleError(f"there is no rule set {quoted(name)}; {expected}")
    if at:
        if edition not in editions:
            expected = suggested(edition, editions, what="editions")
            raise RuleError(f"rule set {quoted(name)} has no edition {quoted(edition)}; {expected}")
        return editions[edition]
    if len(editions) > 1:
        expected = " or ".join(f"{name}@{one}" for one in sorted(editions))
        raise RuleError(f"rule set {quoted(name)} has several editions; name one: {expected}")
    return next(iter(editions.values()))


def rule_choice(text: str, library: RuleLibrary) -> RuleChoice:
    """As `chosen_rule_set`, in the form a basis takes."""
    found = chosen_rule_set(text, library)
    return RuleChoice(found.id, found.edition)


def suggested(wanted: str, choices: Iterable[str], *, what: str) -> str:
    """The choices most like `wanted` or holding it, else all there are, headed by `what`."""
    names = list(choices)
    holding = [name for name in names if wanted and wanted.casefold() in name.casefold()]
    meant = did_you_mean(wanted, names)
    if not meant and holding:
        meant = f"did you mean {' or '.join(holding)}?"
    return meant or f"{what}: {', '.join(names) or 'none'}"
