"""One mechanism for clauses that list words: kinds accepted or refused, ways of fastening."""

from __future__ import annotations

from backspan.core.findings import Finding, Message
from backspan.core.rules.selected import SelectedValue
from backspan.core.sheet.case import Place
from backspan.core.sheet.decide import ENDINGS, decide
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.witness import words_of


def judge_words(
    *,
    check: str,
    subject: str,
    place: Place,
    message: str,
    words: tuple[str, ...] | None,
    rule: SelectedValue,
    inputs: Inputs,
    refused: bool = False,
    never_fails: bool = False,
) -> Finding:
    """Whether every word stated is on the clause's list (or, for a list of refused ones, off it).

    `message` is the id of the sentence; ".pass", ".fail" or ".missing" is added to it. With
    `never_fails` (a custom of the trade, not a rule) a word off the list leaves it open.
    """
    listed = words_of(rule)
    wrong = tuple(one for one in words or () if (one in listed) is refused)
    met = None if words is None or (wrong and never_fails) else not wrong
    verdict, needs = decide(met=met, inputs=inputs, rules=(rule,))
    return Finding(
        check=check,
        subject=subject,
        place=place,
        verdict=verdict,
        message=Message(
            f"{message}.{ENDINGS[met]}",
            (("found", wrong or words or ()), ("listed", listed)),
        ),
        question=message,
        rules=(rule,),
        inputs=tuple(inputs.used),
        needs=needs,
    )
