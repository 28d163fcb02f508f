"""What a licensed engineer signed: whose paper counts, how far it reaches, what it settles.

1,000 lb on the line, 880 lb of plates, a beam of 200 lb: at most 2,080 lb come on the fulcrum, and
1,010 lb on the rear stand with nothing on the line.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from backspan.core.findings import Finding, Verdict
from backspan.core.model.project import Project
from backspan.core.model.rigs import FulcrumKind
from backspan.core.model.signed import SignedLimits
from backspan.core.model.topics import Topic
from backspan.core.quantities import FORCE, LENGTH, PRESSURE, Style, parse
from backspan.core.review import review
from backspan.core.review.dates import DatedAheadError
from backspan.core.words import say
from tests.unit.core.rigs import (
    ARM,
    BEAM,
    LIBRARY,
    ON,
    PROJECT,
    QUEBEC,
    TODAY,
    finding,
    length,
    needs,
    on_basis,
    put,
    reasons,
    stated,
)

PAPER = SignedLimits(
    "LE",
    "S-301",
    TODAY,
    "2026-12-20",
    ("D",),
    revision="C",
    most_reach=parse("2 ft", LENGTH),
    least_backspan=parse("10 ft", LENGTH),
    most_rated_load=parse("1000 lb", FORCE),
    most_front=parse("2080 lb", FORCE),
    most_rear=parse("1010 lb", FORCE),
    hoists=("H",),
    beams=("B-1", "B-2"),
)
STRENGTH = (*ARM, "fulcrum", "surface_strength")
REAR_STRENGTH = (*ARM, "rear", "surface_strength")


def signed(project: Project = PROJECT, **changes: Any) -> Project:
    return replace(project, signed_limits=(replace(PAPER, **changes),))


def limits(project: Project) -> Finding:
    return finding(project, "signed-limits")


def test_on_every_limit_it_passes_on_the_papers_authority() -> None:
    found = limits(signed())
    assert found.verdict is Verdict.PASS
    told = say(found.message, Style.US)
    assert told == "Within S-301, revision C, signed by L. Enders, until 2026-12-20."


@pytest.mark.parametrize(
    ("field", "limit", "dimension", "said"),
    [
        ("most_reach", "23 in", LENGTH, "2'-0\", its limit 1'-11\""),
        ("least_backspan", "10 ft 1 in", LENGTH, "10'-0\", its limit 10'-1\""),
        ("most_rated_load", "999 lb", FORCE, "1,000 lb, its limit 999 lb"),
        ("most_front", "2079 lb", FORCE, "2,080 lb, its limit 2,079 lb"),
        ("most_rear", "1009 lb", FORCE, "1,010 lb, its limit 1,009 lb"),
    ],
)
def test_beyond_a_limit_it_is_neither_pass_nor_fail(
    field: str, limit: str, dimension: Any, said: str
) -> None:
    changed: dict[str, Any] = {field: parse(limit, dimension)}
    found = limits(signed(**changed))
    assert (found.verdict, found.message.id) == (Verdict.REFER, "signed.outside")
    assert said in say(found.message, Style.US)
    assert [one.who for one in found.needs] == ["licensed engineer"]


@pytest.mark.parametrize("changes", [{"hoists": ("WEAK",)}, {"beams": ("B-2",)}])
def test_a_hoist_or_beam_that_is_not_listed_is_outside(changes: dict[str, Any]) -> None:
    found = limits(signed(**changes))
    assert (found.verdict, found.message.id) == (Verdict.REFER, "signed.off-the-list")


def test_a_limit_whose_value_is_not_known_is_missing() -> None:
    found = limits(signed(put(PROJECT, (*BEAM, "mass"), None)))
    assert (found.verdict, found.message.id) == (Verdict.MISSING, "signed.missing")
    assert needs(found) == (("need.input", "beam_mass"),)


def test_beyond_one_limit_and_unknown_of_another_is_missing_and_says_both() -> None:
    found = limits(signed(put(PROJECT, (*BEAM, "mass"), None), most_reach=0.1))
    assert (found.verdict, found.message.id) == (Verdict.MISSING, "signed.outside")
    assert [one.what.id for one in found.needs] == ["need.input", "need.signed"]


def test_a_limit_that_is_not_stated_is_none_of_the_papers() -> None:
    far = put(PROJECT, (*ARM, "reach"), length("5 ft"))
    assert limits(signed(far, most_reach=None)).verdict is Verdict.PASS
    unknown = put(PROJECT, (*BEAM, "mass"), None)
    assert limits(signed(unknown, most_front=None, most_rear=None)).verdict is Verdict.PASS


@pytest.mark.parametrize(
    ("changes", "message"),
    [
        ({"until": "2026-11-24"}, "signed.ended"),
        ({"until": "2026-12-19"}, "signed.lapses"),
        ({"by": "PE"}, "signed.role"),
    ],
)
def test_a_paper_that_ended_or_will_or_that_nobody_may_sign(
    changes: dict[str, Any], message: str
) -> None:
    found = limits(signed(**changes))
    assert (found.verdict, found.message.id) == (Verdict.REFER, message)


def test_the_drop_passes_on_the_engineers_answer_without_a_strength() -> None:
    rig = put(put(PROJECT, STRENGTH, None), REAR_STRENGTH, None)
    assert finding(rig, "bearing").verdict is Verdict.MISSING
    said = signed(rig)
    for check in ("bearing", "rear-bearing"):
        assert ("D/L", "na.signed-for") in reasons(said, check)
    topics = {one.topic: one for one in review(said, "D", LIBRARY, on=ON).topics}
    assert topics[Topic.STANDS_ON].verdict is Verdict.PASS
    assert topics[Topic.STANDS_ON].taken_over is None


@pytest.mark.parametrize(
    "changes",
    [
        {"most_front": None},
        {"most_reach": 0.1},
        {"until": "2026-11-24"},
        {"by": "PE"},
        {"hoists": ("WEAK",)},
        {"drops": ()},
    ],
)
def test_a_paper_that_does_not_cover_the_beam_replaces_nothing(changes: dict[str, Any]) -> None:
    rig = signed(put(PROJECT, STRENGTH, None), **changes)
    assert finding(rig, "bearing").verdict is Verdict.MISSING
    tower = put(rig, (*ARM, "fulcrum", "kind"), FulcrumKind.TOWER)
    assert finding(tower, "fulcrum-kind").verdict is Verdict.REFER


def test_a_tower_passes_on_the_engineers_answer_and_names_it() -> None:
    found = finding(
        signed(put(PROJECT, (*ARM, "fulcrum", "kind"), FulcrumKind.TOWER)), "fulcrum-kind"
    )
    assert (found.verdict, found.message.id) == (Verdict.PASS, "fulcrum.signed-for")
    assert "S-301" in say(found.message, Style.US)


def test_a_stated_strength_that_fails_still_fails() -> None:
    weak = put(PROJECT, STRENGTH, stated("1 psi", PRESSURE))
    assert finding(signed(weak), "bearing").verdict is Verdict.FAIL


def test_no_paper_covers_a_beam_that_turns_about_its_rear_stand() -> None:
    """880 lb at 10 ft, 200 lb at 6 ft 6 in: over a stand at 8 ft the fulcrum lifts."""
    rig = put(put(PROJECT, STRENGTH, None), REAR_STRENGTH, None)
    rig = signed(put(rig, (*ARM, "rear_stand"), length("8 ft")), most_rear=1e6)
    assert limits(rig).verdict is Verdict.MISSING
    for check in ("bearing", "rear-bearing"):
        assert finding(rig, check).message.id == "outside.front"


def test_under_a_silent_rule_set_only_the_paper_passes() -> None:
    silent = on_basis(put(put(PROJECT, STRENGTH, None), REAR_STRENGTH, None), QUEBEC)
    verdicts = [
        one.verdict
        for rig in (silent, signed(silent))
        for one in review(replace(rig, taken_over=()), "D", LIBRARY, on=ON).topics
        if one.topic is Topic.STANDS_ON
    ]
    assert verdicts == [Verdict.REFER, Verdict.PASS]


def test_a_paper_of_nothing_says_nothing() -> None:
    bare = SignedLimits("LE", "S-302", TODAY, "2026-12-20", ("D",))
    assert limits(replace(PROJECT, signed_limits=(bare,))).verdict is Verdict.MISSING
    listed = replace(bare, hoists=("H-1", "H-2"))
    assert limits(replace(PROJECT, signed_limits=(listed,))).verdict is Verdict.PASS


def test_without_a_paper_it_does_not_apply() -> None:
    assert ("D/L", "na.nothing-signed") in reasons(PROJECT, "signed-limits")


def test_a_limit_of_nothing_is_never_kept() -> None:
    found = limits(signed(most_reach=0.0))
    assert found.verdict is Verdict.REFER


def test_a_paper_of_a_later_day_is_refused() -> None:
    with pytest.raises(DatedAheadError, match=r"signed_limits\[0\]\.at: found 2026-11-26"):
        review(signed(at="2026-11-26"), "D", LIBRARY, on=ON)
