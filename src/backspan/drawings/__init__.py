"""Drawings: a project and its reviews as a scene of shapes, and that scene as SVG or DXF."""

from backspan.drawings.details import drop_details
from backspan.drawings.dxf import to_dxf
from backspan.drawings.elevation import elevation, elevation_figure
from backspan.drawings.envelope import envelope_picture
from backspan.drawings.figure_plan import plan_figure
from backspan.drawings.figure_section import section_figure
from backspan.drawings.plan import roof_plan
from backspan.drawings.plan_reactions import reactions_plan
from backspan.drawings.scene import DrawingError, Scene
from backspan.drawings.section import drop_section
from backspan.drawings.svg import to_svg

__all__ = [
    "DrawingError",
    "Scene",
    "drop_details",
    "drop_section",
    "elevation",
    "elevation_figure",
    "envelope_picture",
    "plan_figure",
    "reactions_plan",
    "roof_plan",
    "section_figure",
    "to_dxf",
    "to_svg",
]
