"""The reasons of a drop: which, in which order, what is told once, and who must act."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from backspan.core.findings import Decider, Finding, Message, Need, Review, TopicAnswer, Verdict
from backspan.core.model.topics import Topic
from backspan.core.review.front import front_data
from backspan.core.review.reasons import of_site
from tests.unit.core.review.test_report import demo

TESTED = Message("need.test", (("unit", "H-1"), ("what", "a"), ("until", "b")))
STATE = Need(Decider.QUALIFIED_PERSON, TESTED)
PASSED = Finding("tipping", "S1/L", (), Verdict.PASS, Message("plan.pass"))
FAILED = replace(PASSED, verdict=Verdict.FAIL, message=Message("stack-fits.missing"))
LACKING = replace(PASSED, verdict=Verdict.MISSING, message=Message("plan.missing"), needs=(STATE,))


def made(*findings: Finding, topics: tuple[TopicAnswer, ...] = ()) -> Review:
    """A review of drop S1 with these findings."""
    worst = Verdict.MISSING if topics else findings[0].verdict
    first = demo()[0]
    return replace(
        first, drop="S1", findings=findings, verdict=worst, governing=None, topics=topics
    )


def reasons(*findings: Finding, topics: tuple[TopicAnswer, ...] = ()) -> list[dict[str, Any]]:
    """The reasons of such a review."""
    found: list[dict[str, Any]] = front_data(made(*findings, topics=topics))["reasons"]
    return found


def test_a_pass_is_no_reason() -> None:
    assert reasons(PASSED) == []


def test_what_is_refused_comes_before_what_is_open_and_names_who_mends_it() -> None:
    told = reasons(PASSED, LACKING, replace(FAILED, needs=(STATE,)))
    assert [(one["kind"], one["verdict"], one["findings"]) for one in told] == [
        ("refused", "fail", [2]),
        ("open", "missing", [1]),
    ]
    assert [act["who"] for act in told[0]["acts"]] == ["contractor", "qualified person"]
    assert [act["who"] for act in told[1]["acts"]] == ["qualified person"]


def test_two_points_that_want_the_same_are_one_reason() -> None:
    right = replace(LACKING, subject="S1/R", check="stall-cap")
    (one,) = reasons(LACKING, right)
    assert one["where"] == ["L", "R"]
    assert one["titles"] == ["Counterweight against tipping", "Stall load of the hoist"]
    assert one["findings"] == [0, 1]


def test_two_refusals_are_two_reasons_and_so_are_two_that_ask_for_nothing() -> None:
    other = replace(FAILED, subject="S1/R", message=Message("plan.missing"))
    assert len(reasons(FAILED, other)) == 2
    silent = replace(LACKING, needs=())
    assert len(reasons(silent, replace(silent, message=Message("rig.none")))) == 2


def test_topics_that_nobody_judged_are_one_reason_for_the_same_people() -> None:
    def topic(name: Topic, who: str, **more: Any) -> TopicAnswer:
        return TopicAnswer(name, Verdict.REFER, (who,), not_judged=True, **more)

    topics = (
        topic(Topic.WIND, "owner's engineer"),
        topic(Topic.RESCUE, "owner's engineer"),
        topic(Topic.POWER, "licensed electrician", findings=(0,)),
        topic(Topic.DESIGN, "licensed engineer", findings=(1,)),
    )
    told = reasons(PASSED, LACKING, topics=topics)
    assert [(one["kind"], one["titles"], one["acts"][0]["who"]) for one in told] == [
        ("open", ["Counterweight against tipping"], "qualified person"),
        ("not judged", ["wind", "rescue"], "owner's engineer"),
        ("not judged", ["power"], "licensed electrician"),
    ]


def test_reasons_of_a_site_name_every_drop_they_are_of_the_worst_drop_first() -> None:
    worse = front_data(made(FAILED))
    one, two = front_data(made(LACKING)), {**front_data(made(LACKING)), "drop": "S2"}
    told = of_site([one, two, worse])
    assert [row["drops"] for row in told["open"]] == [["S1", "S2"]]
    assert [row["drops"] for row in told["refused"]] == [["S1"]]
    assert told["not judged"] == []
