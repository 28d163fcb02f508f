"""Words that a plate says of a kind are as good as the evidence of the record around them."""

from __future__ import annotations

import pytest

from backspan.core.findings import Verdict
from backspan.core.model.evidence import Evidence, Statement
from backspan.core.sheet.case import Place
from tests.unit.core.rigs import HOIST, PROJECT, STAGE, TODAY, findings, put

Plate = tuple[Place, str, str, str]
ASKED: tuple[Plate, ...] = (
    (HOIST, "hoist-kind", "D/L", "hoist-tested"),
    (HOIST, "hoist-kind", "D/L", "second-brake"),
    (STAGE, "stage-seen", "D/ST-1", "listed"),
)


def answered(plate: Plate, said: Statement | None) -> Verdict:
    record, check, subject, says = plate
    found = findings(put(PROJECT, (*record, "values_from"), said), check, subject)
    (only,) = (one for one in found if one.message.id.startswith(says))
    return only.verdict


@pytest.mark.parametrize("plate", ASKED)
@pytest.mark.parametrize(
    ("evidence", "verdict"),
    [
        (Evidence.LABEL, Verdict.PASS),
        (Evidence.CERTIFICATE, Verdict.PASS),
        (Evidence.DRAWING, Verdict.MISSING),
        (Evidence.TOLD, Verdict.MISSING),
        (Evidence.ASSUMED, Verdict.MISSING),
    ],
)
def test_what_somebody_was_told_settles_nothing(
    plate: Plate, evidence: Evidence, verdict: Verdict
) -> None:
    said = Statement(evidence, "MT", TODAY)
    assert answered(plate, said) is verdict


@pytest.mark.parametrize("plate", ASKED)
def test_a_statement_taken_away_leaves_that_of_the_kit(plate: Plate) -> None:
    """Of the kit here it is that it was measured, which no plate is."""
    assert answered(plate, None) is Verdict.MISSING
