"""Every page in a real browser: no fault of access, nothing cut off from phone to wall screen."""

from __future__ import annotations

import json
from typing import Any

import pytest

from tests.architecture.source import ROOT
from tests.chromium.conftest import Looked

AXE = ROOT / "tests" / "browser" / "node_modules" / "axe-core" / "axe.min.js"
PATHS = (
    "/",
    "/drops/S1/",
    "/drops/S4/",
    "/drops/T2/",
    "/drops/S1/values",
    "/drops/S1/joints",
    "/drops/S1/findings/",
    "/drops/S4/findings/tipping",
    "/drops/N2/findings/power-lines",
    "/drops/S1/shift",
    "/drops/S1/try",
    "/drops/S1/papers/",
    "/drops/S1/sheet",
    "/drops/N1/take-over",
    "/deficiencies/DEMO-1/",
    "/kit/",
    "/kit/new",
    "/kit/H-01/",
    "/kit/LOT-P55/",
    "/anchors/",
    "/plan/MAIN/",
    "/plan/MAIN/?of=drops/S1/rig/suspension_points/L",
    "/plan/R1/",
    "/plan/MAIN/edges/S/",
    "/plan/TERRACE/edges/TE/",
    "/plan/MAIN/under",
    "/set-up/confirm",
    "/set-up/people",
    "/set-up/roofs",
    "/set-up/anchors",
    "/set-up/anchors?of=A01",
    "/set-up/roofs/MAIN/",
    "/set-up/roofs/MAIN/obstacles",
    "/set-up/roofs/MAIN/table/anchors",
    "/set-up/roofs/MAIN/table/drops",
    "/set-up/limits",
    "/set-up/drops?like=S5",
    "/set-up/units?of=H-01",
    "/set-up/kit",
    "/set-up/units",
    "/set-up/plan",
    "/set-up/drops",
    "/set-up/drops/S1/steps",
    "/set-up/drops/S1/rig",
    "/set-up/drops/S1/point",
    "/set-up/drops/N2/rig-of/S1",
    "/set-up/kit/hoist",
    "/anchors/MAIN/A01/",
    "/record/",
    "/record/take-in",
    "/speaker",
    "/drops/NONE/",
)
WIDTHS = (360, 768, 1280, 3840)
CHECKED = (360, 1280)
#: Looks at what is folded away too.
UNFOLD = "document.querySelectorAll('details').forEach((one) => { one.open = true; })"


def faults(page: Any) -> list[str]:
    """What the checker of access finds, of WCAG 2.2 to level AA and good practice."""
    page.evaluate(UNFOLD)
    page.evaluate(AXE.read_text("utf-8"))
    found = page.evaluate("async () => await axe.run(document, {resultTypes: ['violations']})")
    return [
        f"{one['id']}: {one['help']}: {json.dumps([node['target'] for node in one['nodes']][:3])}"
        for one in found["violations"]
    ]


@pytest.mark.parametrize("path", PATHS)
def test_a_page_has_no_fault_of_access_and_nothing_is_cut_off(looked: Looked, path: str) -> None:
    """From a phone to a wall screen; the checker of access looks at phone and desk."""
    page = looked(path, 1280)
    page.evaluate(UNFOLD)
    for width in WIDTHS:
        page.set_viewport_size({"width": width, "height": 800})
        wide = page.evaluate("document.documentElement.scrollWidth")
        assert wide <= width, width
        if width in CHECKED:
            assert faults(page) == []


def test_every_target_is_large_enough_for_gloves(looked: Looked) -> None:
    """48 px, as long as it is no word within a sentence."""
    page = looked("/drops/S1/", 360)
    page.evaluate(UNFOLD)
    small = page.evaluate(
        """() => [...document.querySelectorAll('button, select, summary, input:not([type=hidden])')]
        .filter((one) => one.offsetParent !== null)
        .filter((one) => !['checkbox', 'radio'].includes(one.type))
        .filter((one) => one.getBoundingClientRect().height < 47.5)
        .map((one) => one.outerHTML.slice(0, 80))"""
    )
    assert small == []
