"""What of a review stands before all drops, taken from its data: answers and what they rest on."""

from __future__ import annotations

from collections.abc import Sequence

from backspan.core.review.plain import Data


def front_data(document: Data) -> Data:
    """What of one review's data stands before all drops: no more of it need be kept at hand.

    All but the findings and what was worked out beside them; of those the governing one, and the
    rule values that any rests on.
    """
    governing, findings = document["governing"], document["findings"]
    left = ("findings", "not_applicable", "comparison", "told", "envelopes")
    return {
        **{name: value for name, value in document.items() if name not in left},
        "finding": None if governing is None else findings[governing],
        "rules": cited(findings),
    }


def cited(holders: Sequence[Data]) -> list[Data]:
    """The rule values of some findings or fronts, by rule set, edition, key and reading; once."""
    names = ("rule_set", "edition", "value", "reading")
    found = {tuple(one[name] for name in names): one for each in holders for one in each["rules"]}
    return [found[key] for key in sorted(found)]
