"""Words of a beam that its section, as stated, cannot have: no pass, and they stay open."""

from __future__ import annotations

import pytest

from backspan.core.findings import Finding, Verdict
from backspan.core.model.beams import BeamBow, Channels, Web
from backspan.core.model.project import Project
from tests.unit.core.checks.test_beam_strength import CHANNEL, SOUND, W6X12, answers, by
from tests.unit.core.checks.test_beam_web import TUBE
from tests.unit.core.rigs import ARM, PROJECT, needs, put, seen


def told(project: Project, begins: str) -> Finding:
    """The finding on a word of the left beam."""
    (found,) = (
        one
        for one in answers(project, "beam-seen")
        if isinstance(one, Finding)
        and one.subject.endswith("/L")
        and one.message.id.startswith(begins)
    )
    return found


@pytest.mark.parametrize("project", [SOUND, by(CHANNEL)])
def test_a_beam_of_two_flanges_has_a_web(project: Project) -> None:
    found = told(put(project, (*ARM, "found", "web"), seen(Web.NONE)), "beam-web")
    assert (found.verdict, found.message.id) == (
        Verdict.MISSING,
        "beam-web-contradicts.missing",
    )
    assert ("need.input", "web") in needs(found)


@pytest.mark.parametrize("project", [by(TUBE), PROJECT])
def test_a_tube_and_a_beam_of_no_known_section_may_have_none(project: Project) -> None:
    found = told(put(project, (*ARM, "found", "web"), seen(Web.NONE)), "beam-web")
    assert found.verdict is Verdict.PASS


@pytest.mark.parametrize("project", [SOUND, by(CHANNEL), by(TUBE)])
def test_one_section_is_no_pair_of_channels(project: Project) -> None:
    pair = put(project, (*ARM, "found", "channels"), seen(Channels.FASTENED))
    found = told(pair, "beam-channels")
    assert (found.verdict, found.message.id) == (
        Verdict.MISSING,
        "beam-channels-contradicts.missing",
    )
    assert ("need.input", "channels") in needs(found)
    loose = put(project, (*ARM, "found", "channels"), seen(Channels.LOOSE))
    assert told(loose, "beam-channels").verdict is Verdict.FAIL
    single = put(project, (*ARM, "found", "channels"), seen(Channels.NO_PAIR))
    assert told(single, "beam-channels").verdict is Verdict.PASS


def test_a_plain_beam_has_no_maker_who_allows_a_bow() -> None:
    project = put(by(W6X12), (*ARM, "found", "beam_bow"), seen(BeamBow.ALLOWED))
    found = told(project, "beam-bow")
    assert (found.verdict, found.message.id) == (Verdict.MISSING, "beam-bow-contradicts.missing")
    straight = put(project, (*ARM, "found", "beam_bow"), seen(BeamBow.STRAIGHT))
    assert told(straight, "beam-bow").verdict is Verdict.PASS
