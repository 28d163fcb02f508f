"""What holds of every published file, whatever its source."""

from __future__ import annotations

import itertools

import pytest

from backspan.core.model.rigs import Drop
from tests.published.published_rig import FILES, project, reviewed

NAMES = sorted(path.stem for path in FILES.glob("*.yaml"))
DROPS = [(name, drop.id) for name in NAMES for drop in project(name).drops]


def text(name: str) -> str:
    return (FILES / name).read_text(encoding="utf-8")


@pytest.mark.parametrize("name", NAMES)
def test_it_says_where_its_numbers_are_from_and_that_it_is_no_real_site(name: str) -> None:
    lines = text(f"{name}.yaml").splitlines()
    head = [line for line in lines[: lines.index("format: 1")] if line.startswith("# ")]
    assert any(line.startswith(("# Source: ", "# Derived, not printed: ")) for line in head)
    assert len(head) == lines.index("format: 1")
    assert "not a real site" in (project(name).site.invented or "")


@pytest.mark.parametrize("name", NAMES)
def test_the_readme_has_a_row_for_it(name: str) -> None:
    assert f"\n| `{name}.yaml` |" in text("README.md")


def test_the_readme_has_no_other_rows() -> None:
    rows = [line for line in text("README.md").splitlines() if line.startswith("| `")]
    assert len(rows) == len(NAMES)


@pytest.mark.parametrize(("name", "drop"), DROPS, ids=str)
def test_every_drop_is_reviewed_and_every_stage_hangs_within_it(name: str, drop: str) -> None:
    assert reviewed(name, drop).findings
    found = next(one for one in project(name).drops if one.id == drop)
    start, end = strip(found)
    assert found.rig is not None
    for point in found.rig.suspension_points:
        assert point.station is not None
        assert start <= point.station <= end


@pytest.mark.parametrize("name", NAMES)
def test_the_drops_stand_side_by_side(name: str) -> None:
    strips = sorted(strip(drop) for drop in project(name).drops)
    for (_, end), (start, _) in itertools.pairwise(strips):
        assert end == pytest.approx(start, abs=1e-9)


def strip(drop: Drop) -> tuple[float, float]:
    """From where to where along its edge a drop goes, in metres."""
    return drop.start, drop.start + drop.width.value
