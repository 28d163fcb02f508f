"""Every topic answers; what nobody looked at never passes; a take-over holds or says why not."""

from __future__ import annotations

import datetime
from dataclasses import replace
from typing import Any

import pytest

from backspan.core.findings import Review, TopicAnswer, Verdict
from backspan.core.model.basis import RuleChoice
from backspan.core.model.beams import Holes, Upright
from backspan.core.model.project import Project
from backspan.core.model.rigs import OtherSupport, OtherSupportKind
from backspan.core.model.topics import Topic
from backspan.core.model.units import LabelState
from backspan.core.review import review
from backspan.core.review.topics import JUDGED_WHOLE
from backspan.core.wire import configuration_code
from backspan.core.words import drop_answer
from tests.unit.core.checks.test_beam_sideways import held
from tests.unit.core.rigs import (
    ARM,
    AUSTRALIA,
    BEAM,
    BEAM_UNIT,
    EN,
    LEFT,
    LIBRARY,
    ON,
    PROJECT,
    QUEBEC,
    RIG,
    STACK,
    count,
    length,
    put,
    seen,
)

GROUP = (*STACK, "groups", 0, "count")


def made(project: Project, on: datetime.date = ON) -> Review:
    return review(project, "D", LIBRARY, on=on)


def topic(found: Review, which: Topic) -> TopicAnswer:
    return next(one for one in found.topics if one.topic is which)


def taken(which: Topic, project: Project = PROJECT, **changes: Any) -> Project:
    """The rig with the take-overs of one topic changed."""
    return replace(
        project,
        taken_over=tuple(
            replace(one, **changes) if which in one.topics else one for one in project.taken_over
        ),
    )


def coded(project: Project) -> Project:
    """Every take-over given for the rig as it is now."""
    code = configuration_code(project, project.drops[0])
    return replace(
        project,
        taken_over=tuple(
            replace(one, drops=tuple(replace(drop, configuration=code) for drop in one.drops))
            for one in project.taken_over
        ),
    )


def person(project: Project, name: str, **changes: Any) -> Project:
    return replace(
        project,
        people=tuple(replace(one, **changes) if one.id == name else one for one in project.people),
    )


def test_every_topic_answers_once_in_one_order() -> None:
    assert tuple(one.topic for one in made(PROJECT).topics) == tuple(Topic)


def test_a_beam_that_no_label_rates_is_not_judged_whole() -> None:
    """Each of its findings passes, and its web is not asked where its line hangs."""
    right = (*RIG, "suspension_points", "R", "counterweighted_beam", "unbraced_length")
    both = put(held("48 in"), right, length("48 in", tolerance="0 in"))
    for name in ("backspan", "rear_stand"):
        both = put(both, (*right[:-1], name), length("4 ft", tolerance="0 in"))
    both = put(both, ("kit", "units", "B-2", "label"), seen(LabelState.NONE))
    for name, word in (("upright", Upright.HELD), ("holes", Holes.NONE)):
        both = put(both, (*right[:-1], "found", name), seen(word))
    found = made(replace(both, taken_over=()))
    beam = topic(found, Topic.BEAM)
    assert {found.findings[at].verdict for at in beam.findings} == {Verdict.PASS}
    assert (beam.verdict, beam.not_judged) == (Verdict.REFER, True)


@pytest.mark.parametrize(
    ("chosen", "silent"),
    [
        (("stage", "hoist"), {Topic.STAGE, Topic.PEOPLE}),
        (("stage",), {Topic.STAGE, Topic.PEOPLE}),
        (("hoist",), {Topic.STAGE}),
        (("fall",), {Topic.FALL_ARREST}),
        (("anchor",), {Topic.ANCHORS}),
        (("tieback",), {Topic.TIEBACK}),
    ],
)
@pytest.mark.parametrize("text", [EN, QUEBEC, AUSTRALIA, RuleChoice("us-aisc-shapes", "15")])
def test_where_a_text_is_silent_custom_does_not_pass(
    chosen: tuple[str, ...], silent: set[Topic], text: RuleChoice
) -> None:
    """A text that says nothing of a topic leaves it to a person, whatever custom is met."""
    basis = replace(PROJECT.basis, **dict.fromkeys(chosen, (text,)))
    found = made(replace(PROJECT, basis=basis, taken_over=()))
    before = made(replace(PROJECT, taken_over=()))
    fewer = {
        one.topic
        for one, was in zip(found.topics, before.topics, strict=True)
        if was.verdict is Verdict.PASS and one.verdict is Verdict.REFER
    }
    assert fewer == silent


def test_with_everything_taken_over_it_passes_and_says_how_much_was() -> None:
    found = made(PROJECT)
    assert found.verdict is Verdict.PASS
    assert drop_answer(found) == "pass, 8 topics taken over"
    assert topic(found, Topic.TIPPING).taken_over is None


@pytest.mark.parametrize(
    ("which", "until", "said"),
    [
        (Topic.INDEPENDENCE, "2026-12-19", "topic.taken-over-lapses"),
        (Topic.INDEPENDENCE, "2026-12-20", "topic.taken-over"),
        (Topic.SHIFT, "2026-11-25", "topic.taken-over"),
    ],
)
def test_a_letter_that_ends_before_the_work_says_so(which: Topic, until: str, said: str) -> None:
    told = topic(made(taken(which, until=until)), which).taken_over
    assert told is not None
    assert told.id == said


def test_with_nothing_taken_over_the_same_rig_does_not_pass() -> None:
    found = made(replace(PROJECT, taken_over=()))
    assert found.verdict is Verdict.REFER
    assert drop_answer(found) == "refer, 8 topics open"
    assert topic(found, Topic.TIPPING).verdict is Verdict.PASS
    assert all(one.not_judged for one in found.topics if one.topic not in JUDGED_WHOLE)


@pytest.mark.parametrize("which", [one for one in Topic if one not in JUDGED_WHOLE])
def test_one_topic_that_nobody_took_over_leaves_the_drop_open(which: Topic) -> None:
    left = tuple(
        replace(one, topics=tuple(name for name in one.topics if name is not which))
        for one in PROJECT.taken_over
    )
    found = made(replace(PROJECT, taken_over=left))
    assert found.verdict is Verdict.REFER
    assert [one.topic for one in found.topics if one.verdict is not Verdict.PASS] == [which]


def without_effect(project: Project, which: Topic, reason: str, on: datetime.date = ON) -> None:
    found = made(project, on)
    answer = topic(found, which)
    assert found.verdict is not Verdict.PASS
    assert answer.taken_over is None
    assert f"take-over.{reason}" in {note.id for note in answer.notes}


def test_a_fail_can_not_be_taken_over() -> None:
    unreadable = put(PROJECT, (*BEAM_UNIT, "label"), seen(LabelState.UNREADABLE))
    without_effect(coded(unreadable), Topic.BEAM, "answered")
    assert topic(made(unreadable), Topic.BEAM).verdict is Verdict.FAIL


def test_what_is_missing_can_not_be_taken_over() -> None:
    unlabelled = coded(put(PROJECT, (*BEAM_UNIT, "label"), None))
    without_effect(unlabelled, Topic.BEAM, "answered")
    assert topic(made(unlabelled), Topic.BEAM).verdict is Verdict.MISSING


def test_a_refer_that_the_program_gives_a_reason_for_can_not_be_taken_over() -> None:
    many = put(PROJECT, GROUP, count(41))
    unlikely = coded(taken(Topic.INDEPENDENCE, many, topics=(Topic.TIPPING,)))
    found = topic(made(put(unlikely, (*BEAM, "label", "most_pieces", "value"), 50)), Topic.TIPPING)
    assert found.verdict is Verdict.REFER
    assert {note.id for note in found.notes} == {"take-over.answered"}


def test_a_support_this_version_does_not_judge_can_be() -> None:
    davit = put(
        put(PROJECT, ARM, None), (*LEFT, "other_support"), OtherSupport(OtherSupportKind.DAVIT)
    )
    assert topic(made(davit), Topic.TIPPING).not_judged
    davit = taken(Topic.INDEPENDENCE, davit, topics=(Topic.TIPPING, *PROJECT.taken_over[0].topics))
    assert topic(made(coded(davit)), Topic.TIPPING).taken_over is not None


def test_the_rig_s_own_people_can_not_take_over() -> None:
    rigger = person(PROJECT, "QP", employer="upline access ")
    without_effect(
        taken(Topic.RESCUE, rigger, by="QP", topics=(Topic.RESCUE,)),
        Topic.RESCUE,
        "own-rig",
    )
    consultant = person(PROJECT, "QP", employer="Another office")
    without_effect(
        taken(Topic.RESCUE, consultant, by="QP", topics=(Topic.RESCUE,)),
        Topic.RESCUE,
        "own-rig",
    )


def test_without_a_contractor_nobody_can_tell_whose_people_they_are() -> None:
    without_effect(replace(PROJECT, plan=None), Topic.WIND, "no-contractor")


def test_without_an_employer_nor_a_card_it_has_no_effect() -> None:
    without_effect(person(PROJECT, "PE", employer=None), Topic.WIND, "no-employer")
    without_effect(person(PROJECT, "PE", employer=" "), Topic.WIND, "no-employer")
    without_effect(person(PROJECT, "PE", card=None), Topic.WIND, "no-card")


def test_a_role_that_may_not() -> None:
    without_effect(person(PROJECT, "LE", role="painter"), Topic.INDEPENDENCE, "role")
    without_effect(taken(Topic.SHIFT, by="PE"), Topic.SHIFT, "role")


def test_it_holds_through_its_last_day_and_no_longer() -> None:
    last = taken(Topic.INDEPENDENCE, until="2026-11-25")
    assert topic(made(last), Topic.INDEPENDENCE).taken_over is not None
    without_effect(last, Topic.INDEPENDENCE, "ended", on=datetime.date(2026, 11, 26))


def test_a_moved_beam_ends_every_take_over_and_says_so() -> None:
    moved = put(PROJECT, (*ARM, "reach", "value"), 0.6)
    found = made(moved)
    assert found.verdict is Verdict.REFER
    for one in found.topics:
        if one.topic not in JUDGED_WHOLE:
            assert {note.id for note in one.notes} == {"take-over.configuration"}
    assert made(coded(moved)).verdict is Verdict.PASS


def test_a_code_read_aloud_is_understood_and_no_code_is_none() -> None:
    code = PROJECT.taken_over[0].drops[0].configuration
    spoken = replace(PROJECT.taken_over[0].drops[0], configuration=code.lower().replace("-", " "))
    given = made(taken(Topic.INDEPENDENCE, drops=(spoken,)))
    assert topic(given, Topic.INDEPENDENCE).taken_over is not None
    none = replace(spoken, configuration="any")
    without_effect(taken(Topic.INDEPENDENCE, drops=(none,)), Topic.INDEPENDENCE, "configuration")


def test_another_document_may_hold_where_one_does_not() -> None:
    ended = replace(PROJECT.taken_over[0], until="2026-11-24")
    both = replace(PROJECT, taken_over=(ended, *PROJECT.taken_over))
    assert made(both).verdict is Verdict.PASS


def test_a_drop_s_own_plan_goes_before_the_project_s() -> None:
    own = replace(PROJECT.plan, contractor="Ennis Office") if PROJECT.plan else None
    without_effect(put(PROJECT, ("drops", "D", "plan"), own), Topic.WIND, "own-rig")
