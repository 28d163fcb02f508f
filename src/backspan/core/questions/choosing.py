"""A rule set named in a few words: `uk-bs-5974`, or with its edition `us-wa-wac-296-874@2007`."""

from __future__ import annotations

from backspan.core.model.basis import RuleChoice
from backspan.core.questions.shape import QuestionError
from backspan.core.questions.suggesting import suggested
from backspan.core.rules.selected import RuleLibrary
from backspan.core.rules.shape import RuleSet


def chosen_rule_set(text: str, library: RuleLibrary) -> RuleSet:
    """The rule set that `text` names; without "@edition" the text must have one edition only.

    Raises QuestionError that names what is there instead.
    """
    name, at, edition = text.partition("@")
    editions = {one.edition: one for one in library.editions(name)}
    if not editions:
        names = [one.id for one in library.rule_sets]
        expected = suggested(name, names, what="rule sets")
        raise QuestionError(f"there is no rule set {name!r}; {expected}")
    if at:
        if edition not in editions:
            expected = suggested(edition, editions, what="editions")
            raise QuestionError(f"rule set {name!r} has no edition {edition!r}; {expected}")
        return editions[edition]
    if len(editions) > 1:
        expected = " or ".join(f"{name}@{one}" for one in sorted(editions))
        raise QuestionError(f"rule set {name!r} has several editions; name one: {expected}")
    return next(iter(editions.values()))


def rule_choice(text: str, library: RuleLibrary) -> RuleChoice:
    """As `chosen_rule_set`, in the form a basis takes."""
    found = chosen_rule_set(text, library)
    return RuleChoice(found.id, found.edition)
