"""From what was found to one of the four answers: the only place where a verdict is made."""

from __future__ import annotations

from collections.abc import Sequence

from backspan.core.findings import Decider, Message, Need, Verdict
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
