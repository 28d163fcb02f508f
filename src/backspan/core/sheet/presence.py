"""One mechanism for what is there or not: a support, a stage, a line, a paper, a person."""

from __future__ import annotations

from collections.abc import Sequence

from backspan.core.findings import Finding, Message, Need
from backspan.core.rules.selected import SelectedValue
from backspan.core.sheet.case import Place
from backspan.core.sheet.decide import decide
from backspan.core.sheet.inputs import Inputs


def judge_presence(
    inputs: Inputs,
    *,
    check: str,
    subject: str,
    place: Place,
    message: Message,
    met: bool | None,
    rules: tuple[SelectedValue, ...] = (),
    refer: Sequence[Need] = (),
    question: str = "",
) -> Finding:
    """The finding on what was looked for: there as it should be, not so, or nobody said.

    `inputs` holds what was found, and what is wanted where nobody said. `refer` leaves the answer
    to a person although all is there.
    """
    verdict, needs = decide(met=met, inputs=inputs, rules=rules, refer=refer)
    return Finding(
        check=check,
        subject=subject,
        place=place,
        verdict=verdict,
        message=message,
        governing=rules[0].key if rules else None,
        question=question,
        rules=rules,
        inputs=tuple(inputs.used),
        needs=needs,
    )
