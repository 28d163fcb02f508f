"""A tieback and what the plan shows in its way, beyond what the cases of tests/cases say."""

from __future__ import annotations

import pytest

from backspan.core.findings import Verdict
from backspan.core.model.project import Project
from backspan.core.model.rigs import OtherSupport, OtherSupportKind, TiebackEnd, TiebackStart
from backspan.core.model.seen import Route
from backspan.core.sheet.case import Place
from tests.unit.core.rigs import (
    ARM,
    BEAM,
    LEFT,
    PROJECT,
    RIG,
    at,
    finding,
    findings,
    length,
    needs,
    put,
    reasons,
    seen,
)

ID = "tieback-way"
TIE: Place = (*LEFT, "tiebacks", "TL")
VENT: Place = ("site", "roofs", "ROOF", "obstacles", "VENT")
FOOT = 0.3048


def with_vent(low: float, high: float, *, across: float = 59.0, half: float = 0.5) -> Project:
    """The vent by its feet along the sheet and up it; the tieback is at 59, from 17 up to 30."""
    corners = ((across - half, low), (across + half, low), (across + half, high))
    spots = (*corners, (across - half, high))
    return put(PROJECT, (*VENT, "outline"), tuple((x * FOOT, y * FOOT) for x, y in spots))


def of(project: Project) -> tuple[Verdict, str]:
    found = finding(project, ID, "D/L/TL")
    return found.verdict, found.message.id.partition(".")[2]


#: From 17 ft inboard, where the tail is, to 30 ft, where the anchor is.
@pytest.mark.parametrize(
    ("low", "high", "says"),
    [
        (15.0, 16.7, "pass"),
        (15.0, 16.8, "in-the-way"),
        (17.5, 18.0, "in-the-way"),
        (16.0, 31.0, "in-the-way"),
        (30.2, 33.0, "in-the-way"),
        (30.3, 33.0, "pass"),
    ],
)
def test_the_way_is_from_the_tail_to_the_anchor(low: float, high: float, says: str) -> None:
    verdict = Verdict.PASS if says == "pass" else Verdict.MISSING
    assert of(with_vent(low, high)) == (verdict, says)


def test_from_the_shackle_it_passes_what_lies_under_the_beam() -> None:
    under = with_vent(8.0, 10.0)
    assert of(under)[0] is Verdict.PASS
    shackle = put(under, (*TIE, "attached"), seen(TiebackStart.SHACKLE))
    assert of(shackle) == (Verdict.MISSING, "in-the-way")


def test_a_davit_is_held_at_the_face() -> None:
    davit = put(put(with_vent(1.0, 3.0), ARM, None), (*LEFT, "other_support"), DAVIT)
    assert of(davit) == (Verdict.MISSING, "in-the-way")
    over = put(davit, (*TIE, "route"), seen(Route.ABOVE))
    # How high a davit holds its line nobody can state: the word of who saw it stands.
    assert of(over) == (Verdict.PASS, "word")


DAVIT = OtherSupport(OtherSupportKind.DAVIT)


def test_what_stands_in_the_way_is_never_refused_and_somebody_is_asked() -> None:
    found = finding(with_vent(20.0, 22.0), ID, "D/L/TL")
    assert found.verdict is Verdict.MISSING
    assert needs(found) == (("need.input", "route"),)
    assert dict(found.message.values)["obstacle"] == "VENT"


def test_the_worst_of_what_is_taped_counts() -> None:
    # 2 in past the three that the plan may be off by; a beam taped to 3 in ends nearer.
    free = with_vent(15.0, 17.0 - 5 / 12)
    assert of(free)[0] is Verdict.PASS
    doubtful = put(free, (*BEAM, "length", "tolerance"), 3 / 12 * FOOT)
    assert of(doubtful) == (Verdict.MISSING, "in-the-way")


@pytest.mark.parametrize("place", [(*BEAM, "length"), (*ARM, "tip_beyond_line"), (*ARM, "reach")])
@pytest.mark.parametrize("route", [Route.STRAIGHT, Route.ABOVE])
def test_where_it_begins_has_to_be_known(place: Place, route: Route) -> None:
    project = put(put(PROJECT, (*TIE, "route"), seen(route)), place, None)
    assert of(project) == (Verdict.MISSING, "missing")
    assert ("need.input", at_name(place)) in needs(finding(project, ID, "D/L/TL"))


def at_name(place: Place) -> str:
    return "beam_length" if place[-1] == "length" else str(place[-1])


def test_an_outline_that_nobody_drew_is_not_known_to_be_out_of_the_way() -> None:
    assert of(put(PROJECT, (*VENT, "outline"), ())) == (Verdict.MISSING, "missing")


def test_of_several_the_one_in_the_way_is_named() -> None:
    vent = at(PROJECT, VENT)
    closer = put(at(with_vent(20.0, 22.0), VENT), ("id",), "DUCT")
    both = put(PROJECT, VENT[:-1], (vent, closer))
    found = finding(both, ID, "D/L/TL")
    assert dict(found.message.values)["obstacle"] == "DUCT"
    assert finding(both, ID, "D/R/TR").verdict is Verdict.PASS


def test_the_height_counts_at_its_worst_and_on_good_evidence() -> None:
    over = put(with_vent(20.0, 22.0), (*TIE, "route"), seen(Route.ABOVE))
    assert of(over) == (Verdict.PASS, "above")
    close = put(over, (*VENT, "height"), length("47 in", tolerance="1 in"))
    assert of(close) == (Verdict.MISSING, "too-high")
    assert of(put(over, (*VENT, "height"), None)) == (Verdict.PASS, "word")
    for field in ("height", "setback"):
        unknown = put(over, (*ARM, "fulcrum", field), None)
        expected = (Verdict.PASS, "word") if field == "height" else (Verdict.MISSING, "missing")
        assert of(unknown) == expected


def test_what_is_no_straight_way_to_an_anchor_is_asked_elsewhere() -> None:
    close = with_vent(20.0, 22.0)
    for place, value, reason in (
        ((*TIE, "route"), None, "na.route-unsaid"),
        ((*TIE, "route"), seen(Route.BENT), "na.not-straight"),
        ((*TIE, "route"), seen(Route.OVER_AN_EDGE), "na.not-straight"),
        (VENT[:-1], (), "na.no-obstacle"),
    ):
        assert ("D/L/TL", reason) in reasons(put(close, place, value), ID)
    ends = put(put(close, (*TIE, "anchor"), None), (*TIE, "ends_on"), seen(TiebackEnd.STRUCTURE))
    assert ("D/L/TL", "na.ends-on-no-anchor") in reasons(ends, ID)
    assert ("D/L", "na.no-tieback") in reasons(put(close, (*LEFT, "tiebacks"), ()), ID)
    assert reasons(put(close, RIG, None), ID) == (("D", "na.no-suspension-point"),)


def test_the_word_above_counts_as_a_route() -> None:
    over = put(PROJECT, (*TIE, "route"), seen(Route.ABOVE))
    (found,) = findings(over, "tieback-route", "D/L/TL")
    assert found.verdict is Verdict.PASS
