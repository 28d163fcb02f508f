"""Branches asked one by one at their own corners come to what all come to at all corners."""

from __future__ import annotations

import random
from dataclasses import replace

import pytest

from backspan.core.checks.splice_clear import UNDER_STACK, Joint
from backspan.core.model.beams import BeamSplice
from backspan.core.model.project import Project
from backspan.core.sheet.beam_as_built import beam_reads
from backspan.core.sheet.limits import needed_value
from backspan.core.sheet.question import Asked
from backspan.core.sheet.reads import read_of
from backspan.core.sheet.subjects import BeamSubject, counterweighted
from tests.unit.core.rigs import ARM, BEAM, PROJECT, STACK, case, length, put

RIGS = 60


def drawn(draw: random.Random) -> Project:
    """A rig whose backspan and tail gap are each known, known within much, or not known."""
    rig = PROJECT
    for place, texts in (
        ((*ARM, "backspan"), ("11 ft", "9 ft", None)),
        ((*STACK, "tail_gap"), ("2 ft", "6 in", None)),
        ((*BEAM, "length"), ("18 ft", "20 ft")),
        ((*ARM, "tip_beyond_line"), ("6 in", "1 ft", None)),
    ):
        text, doubt = draw.choice(texts), draw.choice(("0 in", "2 in", "9 in"))
        rig = put(rig, place, None if text is None else length(text, tolerance=doubt))
    return rig


def test_the_worst_is_the_same_and_both_answers_were_seen() -> None:
    draw, seen = random.Random(20261129), set()  # noqa: S311 - rigs, no secrets
    for _ in range(RIGS):
        at = case(drawn(draw))
        beam = next(one for one in counterweighted(at, "x") if isinstance(one, BeamSubject))
        text = f"{draw.randint(1, 17)} ft"
        splice = BeamSplice("J1", length(text, tolerance=draw.choice(("0 in", "3 in"))))
        place = (*beam.place, "splices", "J1")
        joint = Joint(
            read_of("splice_from_tail", splice, place),
            read_of("splice_sleeve", splice, place),
            beam_reads(at, beam),
        )
        keys = ("beam.splice-clear", "beam.longest-sleeve")
        asked = Asked(joint, "J1", place, tuple(needed_value(at.practice, key) for key in keys))
        by_branch = UNDER_STACK.worst(at, asked)
        at_once = replace(UNDER_STACK, apart=()).worst(at, asked)
        assert by_branch is not None
        assert at_once is not None
        assert by_branch.found.met is at_once.found.met
        assert by_branch.reads.keys() == at_once.reads.keys()
        # Of what is missing no number counts: a sleeve is wanted by one branch or by both.
        if by_branch.found.met is not None:
            assert by_branch.found.rank == pytest.approx(at_once.found.rank)
        seen.add(by_branch.found.met)
    assert seen == {True, False, None}
