"""From what was found to one of the four answers: the only place where a verdict is made."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from backspan.core.findings import Decider, Finding, Message, Need, Verdict
from backspan.core.rules.selected import SelectedValue
from backspan.core.sheet.inputs import Inputs

#: What ends the id of a sentence, by whether the comparison is met.
ENDINGS = {True: "pass", False: "fail", None: "missing"}


def decide(
    *,
    met: bool | None,
    inputs: Inputs,
    rules: Sequence[SelectedValue],
    refer: Sequence[Need] = (),
) -> tuple[Verdict, tuple[Need, ...]]:
    """The verdict, and what would settle it.

    `met` is the comparison at the case's corner: False fails whatever else is open, None means it
    could not be made. Not stated or weak evidence is `missing`; a decision that belongs to a
    person (`refer`), or a pass on a rule value nobody has seen in the text, is `refer`.
    """
    open_needs = (*inputs.not_stated, *inputs.weak)
    if met is False:
        return Verdict.FAIL, open_needs
    if met is None or open_needs:
        return Verdict.MISSING, open_needs
    remembered = tuple(to_confirm(value) for value in rules if value.only_remembered)
    if refer or remembered or inputs.refer:
        return Verdict.REFER, (*refer, *inputs.refer, *remembered)
    return Verdict.PASS, ()


def refused_by_a_person(found: Finding, need: Need) -> Finding:
    """A finding whose refusal is a person's to make: theirs, once what is not known is known.

    What leaves its domain stays refused, and whatever else the answer is stays as it is.
    """
    if found.verdict is not Verdict.FAIL or found.message.id.startswith("outside."):
        return found
    says = found.message.id.removesuffix(f".{ENDINGS[False]}")
    return replace(
        found,
        verdict=Verdict.MISSING if found.needs else Verdict.REFER,
        message=Message(f"{says}.refer", found.message.values),
        needs=(*found.needs, need),
        not_judged=not found.needs,
    )


def passed_by_a_person(found: Finding, need: Need, says: str) -> Finding:
    """A finding that would hold as far as it is asked, and whose pass is a person's to give."""
    if found.verdict not in {Verdict.PASS, Verdict.REFER}:
        return found
    return replace(
        found,
        verdict=Verdict.REFER,
        message=Message(f"{says}.refer", found.message.values),
        needs=(need, *found.needs),
        not_judged=found.not_judged or not found.needs,
    )


def to_confirm(value: SelectedValue) -> Need:
    """Who confirms a remembered value, and which."""
    return Need(
        Decider.OFFICE,
        Message(
            "need.confirmation",
            (
                ("rule_set", value.rule_set),
                ("edition", value.edition),
                ("clause", value.provenance.clause),
                ("value", value.key),
            ),
        ),
    )
