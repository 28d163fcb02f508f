"""A pad or plank under the plate of a stand; the sums are the same as in test_bearing.py.

The fulcrum carries 1,270 lb at rated load, four times that is 5,080 lb. A plate of 6 in by 8 in on
a plank of 36 in by 10 in, 1 1/2 in thick, presses 6 + 3 = 9 in by 8 + 3 = 11 in, of which the plank
has 10: 90 sq in, 56.444 psi. The plate alone has 48 sq in: 105.833 psi.
"""

from __future__ import annotations

import pytest

from backspan.core.findings import Finding, Verdict
from backspan.core.mechanics.bearing import pressed_area, spread_side
from backspan.core.model.evidence import Evidence
from backspan.core.model.project import Project
from backspan.core.model.rigs import Pad
from backspan.core.quantities import PRESSURE, parse
from backspan.core.sheet.case import Place
from tests.unit.core.rigs import ARM, PROJECT, finding, length, needs, put, stated

FULCRUM: Place = (*ARM, "fulcrum")
REAR: Place = (*ARM, "rear")


def on_pad(
    pad: tuple[str, str, str] | None,
    plate: tuple[str, str] = ("6 in", "8 in"),
    stand: Place = FULCRUM,
) -> Project:
    project = PROJECT
    for name, text in zip(("plate_length", "plate_width"), plate, strict=True):
        project = put(project, (*stand, name), length(text, tolerance="0 in"))
    project = put(
        project, (*stand, "surface_strength"), stated("200 psi", PRESSURE, Evidence.CERTIFICATE)
    )
    sides = () if pad is None else (length(text, tolerance="0 in") for text in pad)
    return put(project, (*stand, "pad"), None if pad is None else Pad(*sides))


def pressure(found: Finding) -> float:
    assert found.demand is not None
    return found.demand.value / parse("1 psi", PRESSURE)


@pytest.mark.parametrize(
    ("pad", "asked"),
    [
        (None, 5080 / 48),
        (("36 in", "10 in", "1 1/2 in"), 5080 / (9 * 10)),
        (("36 in", "36 in", "1 1/2 in"), 5080 / (9 * 11)),
        # From the middle of the plate to the wall there are 13 in, less half an inch of doubt.
        (("36 in", "36 in", "20 in"), 5080 / (36 * 25)),
        # A pad smaller than the plate presses by its own size.
        (("4 in", "5 in", "1 1/2 in"), 5080 / (4 * 5)),
        (("4 in", "36 in", "1 1/2 in"), 5080 / (4 * 11)),
    ],
)
def test_by_hand(pad: tuple[str, str, str] | None, asked: float) -> None:
    found = finding(on_pad(pad), "bearing")
    assert pressure(found) == pytest.approx(asked, rel=1e-9)
    assert any(rule.key == "bearing.pad-spread" for rule in found.rules) is (pad is not None)


def test_the_formulas() -> None:
    side = spread_side(plate_side=0.2, pad_spread=1.0, pad_thickness=0.05)
    assert side.value == pytest.approx(0.3)
    assert pressed_area(pressed_length=0.3, pressed_width=0.4).value == pytest.approx(0.12)


def test_a_wide_thin_plank_is_no_larger_plate() -> None:
    thin = on_pad(("96 in", "48 in", "1/8 in"))
    assert pressure(finding(thin, "bearing")) == pytest.approx(5080 / (6.25 * 8.25), rel=1e-9)


@pytest.mark.parametrize(("stand", "check"), [(FULCRUM, "bearing"), (REAR, "rear-bearing")])
@pytest.mark.parametrize("field", ["length", "width", "thickness"])
def test_what_of_it_is_not_known_is_missing(stand: Place, check: str, field: str) -> None:
    whole = on_pad(("36 in", "10 in", "1 1/2 in"), stand=stand)
    assert finding(whole, check).verdict is Verdict.PASS
    found = finding(put(whole, (*stand, "pad", field), None), check)
    assert found.verdict is Verdict.MISSING
    assert needs(found) == (("need.input", f"pad_{field}"),)


def test_a_pad_does_not_stand_for_the_plate() -> None:
    project = put(on_pad(("36 in", "10 in", "1 1/2 in")), (*FULCRUM, "plate_length"), None)
    assert finding(project, "bearing").verdict is Verdict.MISSING


def test_the_rear_stand_has_a_pad_of_its_own() -> None:
    # 1,010 lb lie there with nothing on the line, four times that is 4,040 lb.
    found = finding(on_pad(("36 in", "10 in", "1 1/2 in"), stand=REAR), "rear-bearing")
    assert pressure(found) == pytest.approx(4040 / 90, rel=1e-9)
    assert finding(on_pad(None, stand=REAR), "rear-bearing").verdict is Verdict.PASS


def test_a_thickness_taped_to_a_tolerance_counts_at_its_thinnest() -> None:
    rough = on_pad(("36 in", "36 in", "1 1/2 in"))
    rough = put(rough, (*FULCRUM, "pad", "thickness"), length("1 1/2 in", tolerance="1/2 in"))
    assert pressure(finding(rough, "bearing")) == pytest.approx(5080 / (8 * 10), rel=1e-9)


@pytest.mark.parametrize("place", [(*FULCRUM, "plate_width"), (*FULCRUM, "pad", "width")])
def test_a_side_that_may_be_none_at_all_is_refused(place: Place) -> None:
    whole = on_pad(("36 in", "10 in", "1 1/2 in"))
    found = finding(put(whole, place, length("3 in", tolerance="3 in")), "bearing")
    assert (found.verdict, found.message.id) == (Verdict.FAIL, "outside.plate")
