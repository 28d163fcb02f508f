"""What permits said, asked again; and what a project file says that a site's entries do not."""

from __future__ import annotations

import datetime
from dataclasses import replace

from backspan.core.findings import Verdict
from backspan.core.ledger import bodies
from backspan.core.ledger.answers import Rechecked, answer_of, papers_of, recheck
from backspan.core.ledger.described import no_longer_named, not_said_yet
from backspan.core.ledger.drop_states import State
from backspan.core.ledger.writes import skeleton
from backspan.core.review import review
from backspan.core.rules.selected import RuleLibrary
from tests.unit.core.ledger.histories import (
    DROP,
    History,
    accepted,
    connected,
    described,
    permit,
    reach,
)
from tests.unit.core.rigs import LIBRARY, ON, PROJECT

REVIEW = review(PROJECT, DROP, LIBRARY, on=ON)


def permitted() -> History:
    """A drop whose permit says what its review answered."""
    history = connected()
    body = replace(permit(history), answer=answer_of(REVIEW), taken_over=papers_of(REVIEW))
    history.says(body)
    assert history.state is State.ACCEPTED
    return history


def rechecked(history: History, library: RuleLibrary = LIBRARY) -> list[Rechecked]:
    """What comes of it on a later day."""
    return list(recheck(history.entries, library, on=ON + datetime.timedelta(days=400)))


def test_the_answer_of_a_review_names_what_was_taken_over() -> None:
    taken = [one for one in REVIEW.topics if one.taken_over is not None]
    assert answer_of(REVIEW) == f"pass, {len(taken)} topics taken over"
    assert papers_of(REVIEW) == tuple(sorted({one.document for one in PROJECT.taken_over}))
    one = replace(REVIEW, topics=tuple(taken[:1]))
    assert answer_of(one) == "pass, 1 topic taken over"
    assert answer_of(replace(one, topics=())) == "pass"
    assert answer_of(replace(one, verdict=Verdict.REFER)) == "refer"


def test_a_permit_that_is_answered_the_same_needs_nobody() -> None:
    (found,) = rechecked(permitted())
    assert not found.differs
    assert (found.drop, found.verdict) == (DROP, Verdict.PASS)


def test_a_permit_that_said_something_else_needs_a_person() -> None:
    (found,) = rechecked(accepted())
    assert found.differs
    assert (found.said, found.answers) == ("pass", answer_of(REVIEW))


def test_a_rule_set_that_is_gone_needs_a_person() -> None:
    (found,) = rechecked(permitted(), RuleLibrary(()))
    assert found.differs
    assert found.verdict is None
    assert "cannot be reviewed" in found.answers


def test_what_was_said_after_a_permit_does_not_count_for_its_review() -> None:
    history = permitted()
    nobody = replace(PROJECT, people=())
    assert review(nobody, DROP, LIBRARY, on=ON).verdict is Verdict.MISSING
    history.says(bodies.SiteDescribed(skeleton(nobody)))
    assert [one.differs for one in rechecked(history)] == [False]


def test_a_drop_whose_permit_ended_is_not_asked() -> None:
    history = permitted()
    history.says(reach(1.0))
    assert rechecked(history) == []


def test_a_file_that_nobody_changed_says_nothing_new() -> None:
    history = described()
    history.says(reach(1.0))
    assert list(not_said_yet(PROJECT, history.entries)) == []


def test_a_file_says_only_what_was_changed_in_it() -> None:
    drop = PROJECT.drops[0]
    assert drop.rig is not None
    moved = replace(drop, name="another name", rig=replace(drop.rig, moved_from=None, power=None))
    changed = replace(PROJECT, drops=(moved, *PROJECT.drops[1:]))
    kinds = [type(one) for one in not_said_yet(changed, described().entries)]
    assert kinds == [bodies.DropDescribed, bodies.RigSetUp]


def test_a_file_that_goes_back_says_so() -> None:
    history = described()
    renamed = replace(PROJECT, number="another number")
    for body in not_said_yet(renamed, history.entries):
        history.says(body)
    (back,) = not_said_yet(PROJECT, history.entries)
    assert isinstance(back, bodies.SiteDescribed)
    assert back.project.number == PROJECT.number


def test_what_a_file_no_longer_names_is_told() -> None:
    assert no_longer_named(PROJECT, PROJECT) == ()
    without = replace(PROJECT, drops=PROJECT.drops[1:], taken_over=())
    told = no_longer_named(without, PROJECT)
    assert f"drop {DROP}" in told
    assert f"paper {PROJECT.taken_over[0].document}" in told
