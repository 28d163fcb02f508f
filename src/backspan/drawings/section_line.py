"""What hangs: suspension line, hoist and the stage below the break."""

from __future__ import annotations

from collections.abc import Iterator

from backspan.core.model.kit import Hoist, Stage
from backspan.core.model.units import UnitKind
from backspan.drawings.canvas import Rank
from backspan.drawings.scene import Layer, Line, Point, Polygon
from backspan.drawings.section_building import break_mark
from backspan.drawings.section_points import Section
from backspan.drawings.spots import Spot
from backspan.drawings.symbols import WHITE
from backspan.drawings.tags import tagged
from backspan.drawings.values import force_text, length_text

RAIL = 5.0
STAGE_WIDTH = 0.75
"""The width a stage is drawn with where it is not stated, in metres; dashed."""


def draw_line_and_stage(section: Section) -> None:
    """The suspension line down to the stage, cut by a break, with hoist and rated load."""
    first = section.view.first
    line = first.picture.line
    sure = line.known and first.picture.fulcrum.known
    layer = Layer.SUSPENSION if sure else Layer.NOT_KNOWN
    top, cut = first.bearing.x, -section.real(section.layout.break_at)
    end = -section.real(section.layout.stage_top - 1.0)
    gap = section.real(1.2)
    hung = section.at(inward=line.x, above=top)
    section.canvas.add(
        Line(layer, hung, section.at(inward=line.x, above=cut + gap)),
        break_mark(section, inward=line.x, above=cut + gap),
        break_mark(section, inward=line.x, above=cut - gap),
    )
    section.canvas.arrow(
        layer, section.at(inward=line.x, above=cut - gap), section.at(inward=line.x, above=end)
    )
    _draw_stage(section, line.x)
    _name_line(section, section.at(inward=line.x, above=(top + cut) / 2))


def _name_line(section: Section, target: Point) -> None:
    hoist = _hoist(section)
    kit, units, language = section.project.kit, section.project.units, section.language
    points = [one.point for one in section.view.points]
    ropes = [point.rope for point in points if point.rope]
    lines = [language.drawn("suspension_line")]
    if ropes:
        tags = tagged(kit, UnitKind.ROPE, ropes, language)
        lines = [f"{lines[0]},", language.drawn("rope", rope=tags)]
    not_stated = language.drawn("not_stated")
    if hoist is None:
        lines.append(language.drawn("hoist", hoist=not_stated))
    else:
        tags = tagged(kit, UnitKind.HOIST, (point.hoist for point in points), language)
        lines.append(f"{language.drawn('hoist', hoist=tags)},")
        lines.append(f"{hoist.name}:")
        rated, stall = hoist.rated_load, hoist.stall_load
        lines.append(language.drawn("rated_load", load=force_text(rated.value, units)))
        load = not_stated if stall is None else force_text(stall.value, units)
        lines.append(language.drawn("stall_load", load=load))
    # Where a small figure lacks the room, the name of the hoist is left to the tables.
    without = [line for line in lines if hoist is None or line != f"{hoist.name}:"]
    section.canvas.later(
        section.beside_line(lines),
        target,
        spots=_beside_line(section, target),
        rank=_rank(section),
        others=(section.beside_line(without),) if section.layout.narrow else (),
    )


def _rank(section: Section) -> Rank:
    """In a narrow column these take their places before the wall, which may go to its right."""
    return Rank.POINT if section.layout.narrow else Rank.NAME


def _beside_line(section: Section, target: Point) -> Iterator[Spot]:
    """Left of the line: about the middle of it, or from the beam down in a narrow column."""
    x, y = section.canvas.frame.to_paper(target)
    if not section.layout.narrow:
        for up in (0, 5, -5, 10, -10, 15, -15, 20):
            yield Spot((x - 5.0, y + up), -1, 0, abs(up) / 3)
        return
    left, _ = section.canvas.frame.to_paper(section.at(inward=section.view.left, above=0.0))
    _, beam = section.canvas.frame.to_paper(section.at(inward=0.0, above=section.view.height))
    # The words of another support stand above it, where a beam has its dimensions.
    highest = beam + (4.0 if section.view.first.point.counterweighted_beam is None else 14.0)
    for down in range(0, 40, 2):
        top = highest - down
        yield Spot((left - 4.0, top), -1, -1, down / 6, points_at=(x, min(top - 7.0, beam - 2.0)))


def _draw_stage(section: Section, line: float) -> None:
    stage = _stage(section)
    width = None if stage is None or stage.width is None else stage.width.value
    half = (STAGE_WIDTH if width is None else width) / 2
    layer = Layer.NOT_KNOWN if width is None else Layer.STAGE
    down, high = section.layout.stage_top, section.layout.stage_height
    top, bottom = -section.real(down), -section.real(down + high)
    deck = bottom + section.real(high - RAIL) / 2
    box = ((-half, bottom), (half, bottom), (half, deck), (-half, deck))
    rails = tuple(
        Line(
            layer,
            section.at(inward=line + side, above=deck),
            section.at(inward=line + side, above=top),
        )
        for side in (-half, half)
    )
    section.canvas.add(
        Polygon(layer, tuple(section.at(inward=line + x, above=y) for x, y in box), WHITE),
        *rails,
        Line(
            layer,
            section.at(inward=line - half, above=top),
            section.at(inward=line + half, above=top),
        ),
    )
    target = section.at(inward=line - half, above=(top + bottom) / 2)
    x, y = section.canvas.frame.to_paper(target)
    spots = [Spot((x - 3.0, y + up), -1, 0, abs(up) / 3) for up in (0, 3, -3, 6, -6)]
    words = section.beside_line(_stage_words(section, stage))
    section.canvas.later(words, target, spots=spots, rank=_rank(section))


def _stage_words(section: Section, stage: Stage | None) -> list[str]:
    language = section.language
    if stage is None:
        return [language.drawn("stage_not_stated")]
    units, width = section.project.units, stage.width
    names = (one.stage for one in section.view.points if one.stage)
    tags = tagged(section.project.kit, UnitKind.STAGE, names, language)
    return [
        language.drawn("stage", stage=tags),
        language.drawn("long", length=length_text(stage.length.value, units)),
        language.drawn("width_not_stated")
        if width is None
        else language.drawn("wide", width=length_text(width.value, units)),
    ]


def _hoist(section: Section) -> Hoist | None:
    return section.project.kit.hoist(section.view.first.point.hoist)


def _stage(section: Section) -> Stage | None:
    name = section.view.first.stage
    return None if name is None else section.project.kit.stage(name)
