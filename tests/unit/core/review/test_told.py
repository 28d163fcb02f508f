"""What is told once, in which order, and what stays apart."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from backspan.core.findings import Decider, Finding, InputUsed, Margin, Message, Need, Verdict
from backspan.core.model.evidence import Evidence
from backspan.core.review.report import formula_descriptions, review_data
from backspan.core.review.told import told
from tests.unit.core.review.test_report import demo

FORMULAS = formula_descriptions()
REACH = InputUsed(
    "rated_load", "1 kN", "1 kN", Evidence.LABEL, by="A", at="2026-11-01", place=("x", 1)
)
ONE = Finding(
    "tipping", "D/L", ("drops", 0), Verdict.PASS, Message("compare.no-number"), inputs=(REACH,)
)
MORE, LESS = Margin("pieces-spare", 3), Margin("more-reach", "1 in")


def document(*findings: Finding, governing: int | None = 0) -> dict[str, Any]:
    """A review of these findings as data."""
    worst = findings[0].verdict
    made = replace(demo()[0], findings=findings, verdict=worst, governing=governing, topics=())
    return review_data(made, formulas=FORMULAS)


def entries(*findings: Finding) -> list[tuple[str, str]]:
    """Subjects and answer of what is told."""
    data = document(*findings)
    return [(names, one["verdict"]) for names, (one,) in told(data, "findings")]


def test_the_worst_is_told_first_and_equals_keep_their_order() -> None:
    findings = [
        replace(ONE, subject=f"{verdict}{number}", verdict=verdict, governing=str(number))
        for number in (1, 2)
        for verdict in (Verdict.PASS, Verdict.REFER, Verdict.MISSING, Verdict.FAIL)
    ]
    names = [subject for subject, _ in entries(*findings)]
    assert names == [f"{one}{n}" for one in ("fail", "missing", "refer", "pass") for n in (1, 2)]


def test_the_same_of_two_subjects_is_told_once_wherever_it_stands() -> None:
    other = replace(ONE, subject="D/R", place=("drops", 1), inputs=(replace(REACH, place=("y",)),))
    assert entries(ONE, other, ONE) == [("D/L, D/R", "pass")]


@pytest.mark.parametrize(
    "changed",
    [
        {"verdict": Verdict.FAIL},
        {"message": Message("compare.too-much-doubt")},
        {"utilisation": 0.5},
        {"inputs": (replace(REACH, evidence=Evidence.TOLD),)},
        {"inputs": (replace(REACH, by="B"),)},
        {"inputs": (replace(REACH, at="2026-11-02"),)},
        {"margins": (MORE,)},
        {"notes": (Message("compare.no-number"),)},
        {"needs": (Need(Decider.OWNER, Message("compare.no-number")),)},
    ],
    ids=lambda changed: " ".join(f"{name} {value}" for name, value in changed.items())[:30],
)
def test_what_differs_in_anything_told_stays_apart(changed: dict[str, Any]) -> None:
    names = [name for name, _ in entries(ONE, replace(ONE, subject="D/R", **changed))]
    assert sorted(names) == ["D/L", "D/R"]


def test_no_finding_reason_or_row_of_a_review_goes_untold() -> None:
    for one in demo():
        data = review_data(one, formulas=FORMULAS)
        for name in ("findings", "not_applicable"):
            texts = {
                (subject, _sentence(item), item.get("verdict"))
                for subjects, (item,) in told(data, name)
                for subject in subjects.split(", ")
            }
            assert texts == {
                (item["subject"], _sentence(item), item.get("verdict")) for item in data[name]
            }
        rows = sum(len(rows) * len(names.split(", ")) for names, rows in told(data, "comparison"))
        assert rows == len(data["comparison"])


def _sentence(item: dict[str, Any]) -> str:
    message = item.get("message") or item["reason"]
    return str(message["text"])


def test_a_list_of_what_is_open_tells_all_that_is_short_and_one_of_what_is_left() -> None:
    for verdict, in_short in (
        (Verdict.FAIL, (MORE, LESS)),
        (Verdict.MISSING, (MORE,)),
        (Verdict.REFER, (MORE,)),
    ):
        data = document(replace(ONE, verdict=verdict, margins=(MORE, LESS)))
        (finding,) = data["findings"]
        texts = [one["text"] for one in finding["margins"]]
        assert all(text in finding["margins_text"] for text in texts)
        shown = [text for text in texts if text in finding["margins_in_short"]]
        assert shown == texts[: len(in_short)]


def test_an_input_nobody_stated_is_told_where_its_evidence_is_asked() -> None:
    noted = replace(REACH, evidence=None, by=None)
    values = {"input": "rated_load", "evidence": "told", "accepted": "label", "place": "kit"}
    asked = Need(Decider.OWNER, Message("need.evidence", tuple(values.items())))
    for finding, is_told in (
        (ONE, True),
        (replace(ONE, inputs=(noted,)), False),
        (replace(ONE, inputs=(noted,), needs=(asked,)), True),
    ):
        (one,) = document(finding)["findings"][0]["inputs"]
        assert one["told"] is is_told


def test_the_margin_beside_a_drop_is_never_another_findings_unless_it_passes() -> None:
    tight = replace(ONE, subject="D/R", utilisation=0.9, margins=(LESS,))
    loose = replace(ONE, utilisation=0.2, margins=(MORE,))
    assert document(replace(ONE, verdict=Verdict.FAIL), tight)["margin"] is None
    assert document(ONE, loose, tight)["margin"] == document(tight)["margin"]
    assert document(loose, tight)["margin"] == document(loose)["margin"]
