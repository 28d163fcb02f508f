"""How much paper a section takes around what it draws to scale: on a whole sheet, in a figure."""

from __future__ import annotations

from dataclasses import dataclass, replace


@dataclass(frozen=True, slots=True)
class SectionLayout:
    """Distances on paper, in millimetres; none of them is a length of the thing drawn."""

    left: float
    """Room for the texts left of the outermost thing."""
    right: float
    """Room for the tieback right of the innermost thing."""
    above: float
    """Room for the dimensions above the beam."""
    below: float
    """Room for the cut stage below the roof surface."""
    first_tier: float
    """From the beam up to the first row of dimensions."""
    tier: float
    """From one row of dimensions to the next."""
    setback: float
    """From the roof surface down to the dimension of the setback."""
    break_at: float
    """From the roof surface down to the break of the suspension line."""
    stage_top: float
    """From the roof surface down to the rail of the stage."""
    stage_height: float
    cut: float
    """From the roof surface down to where the face of the building is cut off."""
    tieback_end: float
    """From the tail to where a tieback is shown to end."""
    rear: float = 0.0
    """From the roof surface down to the dimension of the rear stand; at 0 it is told in words."""
    joints: int = 0
    """Rows of dimensions for joints of a beam, under that of the whole beam."""
    narrow: bool = False
    """Whether texts left of the line are broken and the answer stands below the point's name."""
    widest_left: float = 0.0
    """Paper that the texts at the left take where there is more, on a narrow layout."""
    first_right: float = 0.0
    """Of paper to spare, so much goes to the anchors at the right before the texts at the left."""


WHOLE_SHEET = SectionLayout(
    left=56.0,
    right=46.0,
    above=50.0,
    below=44.0,
    first_tier=14.0,
    tier=10.0,
    setback=9.0,
    break_at=12.0,
    stage_top=24.0,
    stage_height=9.0,
    cut=36.0,
    tieback_end=13.0,
)

IN_A_FIGURE = SectionLayout(
    left=44.0,
    right=22.0,
    above=32.0,
    below=22.0,
    first_tier=11.5,
    tier=8.0,
    setback=7.5,
    break_at=7.0,
    stage_top=13.0,
    stage_height=7.0,
    cut=21.0,
    tieback_end=9.0,
    rear=16.5,
    narrow=True,
    widest_left=68.0,
    first_right=12.0,
)


MOST_JOINTS = 3
"""Joints that have a dimension of their own; of more the words tell the distance."""


def with_joints(layout: SectionLayout, joints: int) -> SectionLayout:
    """The layout with a row of dimensions for each joint, and the paper that they take."""
    rows = min(joints, MOST_JOINTS)
    return replace(layout, joints=rows, above=layout.above + rows * layout.tier)
