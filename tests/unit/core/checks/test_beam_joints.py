"""Where a beam is joined: what is not known stays open, and what a person has to say of it."""

from __future__ import annotations

from dataclasses import replace

import pytest

from backspan.core.findings import Decider, Verdict
from backspan.core.model.beams import BeamFound, BeamSplice, Joined, JointThere, Square
from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.model.references import place_problems
from backspan.core.wire import configuration_code
from tests.unit.core.rigs import (
    ARM,
    LEFT,
    PROJECT,
    QUEBEC,
    STACK,
    at,
    findings,
    length,
    needs,
    on_basis,
    put,
    reasons,
    seen,
)
from tests.unit.core.words.lacking_beams import FOUND, JOINED, JOINT, OF_SPLICE, SPLICE

ON_JOINT = "D/L/J1"


def verdicts(project: object, subject: str = ON_JOINT) -> dict[str, Verdict]:
    """The answer to each question on a joint."""
    found = findings(project, "splice-clear", subject)  # type: ignore[arg-type]
    return {one.question: one.verdict for one in found}


def test_a_joint_clear_of_stack_and_reach_passes_both_questions() -> None:
    assert verdicts(JOINED) == {"splice-clear": Verdict.PASS, "splice-reach": Verdict.PASS}


def test_one_that_reaches_out_is_for_a_qualified_person() -> None:
    found = findings(put(JOINED, (*SPLICE, "from_tail"), length("16 ft")), "splice-clear", ON_JOINT)
    out = next(one for one in found if one.question == "splice-reach")
    assert out.verdict is Verdict.REFER
    assert [one.who for one in out.needs] == [Decider.QUALIFIED_PERSON]
    assert out.not_judged


def test_one_beyond_the_end_of_the_beam_is_refused_however_it_was_stated() -> None:
    found = findings(put(JOINED, (*SPLICE, "from_tail"), length("19 ft")), "splice-clear", ON_JOINT)
    out = next(one for one in found if one.question == "splice-reach")
    assert (out.verdict, out.message.id) == (Verdict.FAIL, "outside.joint")


def test_a_sleeve_counts_on_either_side_and_is_told() -> None:
    for text, answer in (("10 in", Verdict.PASS), ("12 in", Verdict.REFER)):
        at_place = put(JOINED, (*SPLICE, "from_tail"), length("15 ft"))
        found = findings(put(at_place, (*SPLICE, "sleeve"), length(text)), "splice-clear", ON_JOINT)
        assert {one.question: one.verdict for one in found}["splice-reach"] is answer
        assert {note.id for one in found for note in one.notes} >= {"note.splice-sleeve"}


def test_each_way_in_which_the_stack_is_known_is_asked() -> None:
    # By its gap the stack ends at 7 ft, by the taped backspan at 7 ft 6 in.
    both = put(JOINED, (*STACK, "tail_gap"), length("3 ft"))
    for text, answer in (("7 ft 3 in", Verdict.FAIL), ("3 ft 3 in", Verdict.FAIL)):
        at_place = put(both, (*SPLICE, "from_tail"), length(text))
        assert verdicts(at_place)["splice-clear"] is answer


@pytest.mark.parametrize("name", ["backspan", "reach", "tip_beyond_line"])
def test_what_the_stack_follows_from_has_to_be_known(name: str) -> None:
    assert verdicts(put(JOINED, (*ARM, name), None))["splice-clear"] is Verdict.MISSING


def test_no_splices_is_no_answer_unless_the_beam_is_of_one_piece() -> None:
    for joined in (None, seen(Joined.SECTIONS)):
        project = put(PROJECT, (*ARM, "joined"), joined)
        (found,) = findings(project, "splice-clear")
        assert found.verdict is Verdict.MISSING
        assert needs(found) == (("need.input", "beam_splices"),)
    assert ("D/L", "na.one-piece") in reasons(PROJECT, "splice-clear")


def test_splices_of_a_beam_of_one_piece_are_asked_and_the_word_is_open() -> None:
    both = put(JOINED, (*ARM, "joined"), seen(Joined.ONE_PIECE))
    assert set(verdicts(both)) == {"splice-clear", "splice-reach"}
    found = next(one for one in findings(both, "beam-seen") if one.question == "beam-joined")
    assert found.verdict is Verdict.MISSING


def test_where_no_rule_lists_words_the_trade_s_own_do() -> None:
    found = findings(on_basis(PROJECT, QUEBEC), "beam-seen")
    assert {one.verdict for one in found} == {Verdict.PASS}
    assert {value.rule_set for one in found for value in one.rules} == {"trade-practice"}


def test_no_letter_stands_for_an_obstruction_that_was_seen_on_the_day() -> None:
    project = put(PROJECT, (*FOUND, "square"), seen(Square.OBSTRUCTED))
    found = next(one for one in findings(project, "beam-seen") if one.question == "beam-square")
    assert (found.verdict, found.not_judged) == (Verdict.REFER, False)


def test_a_joint_beyond_the_beam_is_no_project() -> None:
    (problem,) = place_problems(put(JOINED, (*SPLICE, "from_tail"), length("18 ft")))
    assert problem.path[-3:] == ("splices", 0, "from_tail")
    assert "18'-0\"" in problem.expected
    assert place_problems(JOINED) == ()


def test_two_joints_at_one_place_are_no_project() -> None:
    first = at(JOINED, SPLICE)
    joints = SPLICE[:-1]
    twice = put(JOINED, joints, (first, replace(first, id="J2")))
    (problem,) = place_problems(twice)
    assert problem.path[-3:] == ("splices", 1, "from_tail")
    assert "J1" in problem.found
    apart = replace(first, id="J2", from_tail=length("12 ft"))
    assert place_problems(put(JOINED, joints, (first, apart))) == ()
    gone = replace(BeamSplice("J2", first.from_tail), there=seen(JointThere.NOT_THERE))
    assert place_problems(put(JOINED, joints, (first, gone))) == ()


def test_where_a_beam_is_joined_is_of_the_configuration_what_was_seen_is_not() -> None:
    def code(place: tuple[str | int, ...], value: object) -> str:
        changed = put(JOINED, place, value)
        return configuration_code(changed, changed.drops[0])

    now = configuration_code(JOINED, JOINED.drops[0])
    assert code((*ARM, "found"), BeamFound()) == now
    for name, kind in OF_SPLICE.items():
        assert {code((*SPLICE, name), seen(word)) for word in kind} == {now}
    others = {
        code((*SPLICE, "from_tail"), length("10 ft")),
        code((*SPLICE, "sleeve"), length("1 ft")),
        code((*ARM, "joined"), None),
        code((*ARM, "splices"), ()),
        code((*ARM, "splices"), (JOINT, replace(JOINT, id="J2"))),
    }
    assert len(others) == 5
    assert now not in others


def test_a_joint_that_is_not_there_is_none_of_the_configuration() -> None:
    gone = replace(JOINT, pins=None, order=None, marks=None, there=seen(JointThere.NOT_THERE))
    without, with_it = put(JOINED, (*ARM, "splices"), ()), put(JOINED, (*ARM, "splices"), (gone,))
    codes = {configuration_code(one, one.drops[0]) for one in (without, with_it)}
    assert len(codes) == 1
    there = put(JOINED, (*SPLICE, "there"), seen(JointThere.THERE))
    assert configuration_code(there, there.drops[0]) == configuration_code(JOINED, JOINED.drops[0])


def test_a_drawing_says_of_no_joint_that_it_is_not_there() -> None:
    gone = StatedValue(JointThere.NOT_THERE, None, Evidence.DRAWING)
    bare = replace(JOINT, pins=None, order=None, marks=None, there=gone)
    project = put(
        put(PROJECT, (*ARM, "splices"), (bare,)), (*ARM, "joined"), seen(Joined.ONE_PIECE)
    )
    (found,) = findings(project, "beam-seen", ON_JOINT)
    assert found.verdict is Verdict.MISSING


def test_a_support_of_another_kind_has_no_beam_to_look_at() -> None:
    project = put(put(PROJECT, ARM, None), (*LEFT, "other_support"), None)
    for check in ("beam-seen", "splice-clear"):
        assert ("D/L", "na.no-counterweight") in reasons(project, check)
    assert at(PROJECT, FOUND) is not None
