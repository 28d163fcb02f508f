"""The lines of a drop from end to end, as a detail sheet draws them: strips at no scale."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.model.kit import CLIPPED
from backspan.core.model.project import Project
from backspan.core.model.rigs import Clips, Drop, SuspensionPoint, Tieback
from backspan.core.model.seen import Route
from backspan.core.model.site import AnchorStanding
from backspan.core.words import Language
from backspan.drawings.scene import Layer
from backspan.drawings.section_softeners import passes_an_edge, softener_layer
from backspan.drawings.values import evidence_letter, length_text
from backspan.drawings.wording import tied_to


@dataclass(frozen=True, slots=True)
class Strip:
    """One line from the support to its end; `None` and empty texts are what nobody stated."""

    title: str
    start: tuple[str, ...]
    start_known: bool
    layer: Layer
    """The kind of line, or that its run is not known."""
    route: Route | None
    run: tuple[str, ...]
    clips: int | None
    """How many clips hold its end; None where it is not held by clips, or nobody counted."""
    ending: tuple[str, ...]
    ending_known: bool
    anchor: AnchorStanding | None
    """The sign at its end; None where it ends on something else."""
    end: tuple[str, ...]
    end_known: bool
    softener: Layer | None = None


def strips(project: Project, drop: Drop, language: Language) -> Iterator[Strip]:
    """Each tieback of a drop, and the upper end of each suspension line."""
    points = () if drop.rig is None else drop.rig.suspension_points
    for point in sorted(points, key=lambda one: one.station):
        for tieback in point.tied:
            yield _tieback(project, point, tieback, language)
    for point in sorted(points, key=lambda one: one.station):
        yield _suspension(project, point, language)


def _tieback(
    project: Project, point: SuspensionPoint, tieback: Tieback, language: Language
) -> Strip:
    blank = language.drawn("not_stated")
    attached = None if tieback.attached is None else tieback.attached.value
    route = None if tieback.route is None else tieback.route.value
    kind = None if tieback.termination is None else project.kit.termination(tieback.termination)
    standings = {one.id: one.standing for roof in project.site.roofs for one in roof.anchors}
    softener = softener_layer([tieback.softener]) if passes_an_edge(tieback) else None
    run = [language.drawn("rope", rope=tieback.rope or blank)]
    run.append(language.drawn("run", run=blank if route is None else language.word(route)))
    if passes_an_edge(tieback):
        found = blank if tieback.softener is None else language.word(tieback.softener.value)
        run.append(language.drawn("softener_is", found=found))
    return Strip(
        language.drawn("tieback_of", tieback=tieback.id, point=point.id),
        (blank if attached is None else language.word(attached),),
        attached is not None,
        Layer.NOT_KNOWN if route is None else Layer.TIEBACK,
        route,
        tuple(run),
        None,
        tuple(_ending(project, tieback.termination, None, language)),
        kind is not None,
        standings.get(tieback.anchor or ""),
        (tied_to(tieback, language),),
        bool(tieback.goes_to),
        softener,
    )


def _suspension(project: Project, point: SuspensionPoint, language: Language) -> Strip:
    blank = language.drawn("not_stated")
    kind = None if point.termination is None else project.kit.termination(point.termination)
    clipped = kind is not None and kind.kind in CLIPPED
    count = None if point.clips is None or point.clips.count is None else point.clips.count.value
    return Strip(
        language.drawn("line_of", point=point.id),
        tuple(_connectors(project, point, language)),
        bool(point.connectors),
        Layer.SUSPENSION if point.rope else Layer.NOT_KNOWN,
        Route.STRAIGHT,
        (language.drawn("rope", rope=point.rope or blank),),
        count if clipped or count else None,
        tuple(_ending(project, point.termination, point.clips, language)),
        kind is not None,
        None,
        (language.drawn("hoist", hoist=point.hoist),),
        end_known=True,
    )


def _connectors(project: Project, point: SuspensionPoint, language: Language) -> Iterator[str]:
    if point.connectors is None:
        yield language.drawn("hardware_not_stated")
        return
    for fitted in point.connectors:
        kind = project.kit.connector(fitted.connector)
        name = fitted.connector if kind is None else language.word(kind.kind)
        pin = (
            language.drawn("not_stated") if fitted.pin is None else language.word(fitted.pin.value)
        )
        yield f"{name}: {pin}"
    if not point.connectors:
        yield language.drawn("no_hardware")


def _ending(
    project: Project, name: str | None, clips: Clips | None, language: Language
) -> Iterator[str]:
    """The end of a rope: its kind, its thimble, its clips as they were found."""
    blank = language.drawn("not_stated")
    kind = None if name is None else project.kit.termination(name)
    if kind is None:
        yield language.drawn("ending", kind=name or blank)
    else:
        made = "" if kind.kind is None else language.word(kind.kind)
        yield language.drawn("ending", kind=made or kind.name)
    if kind is not None and kind.kind in CLIPPED and clips is None:
        yield language.drawn("clips", clips=blank)
    if clips is not None:
        yield language.drawn("clips", clips=clips_text(project, clips, language))


def clips_text(project: Project, clips: Clips, language: Language) -> str:
    """Their number, spacing and turnback, each with the letter of its evidence."""
    blank, units = language.drawn("not_stated"), project.units
    count = blank
    if clips.count is not None:
        count = f"{clips.count.value} {evidence_letter(clips.count.evidence, language)}".strip()
    spacing, turnback = (
        blank
        if one is None
        else f"{length_text(one.value, units)} {evidence_letter(one.evidence, language)}".strip()
        for one in (clips.spacing, clips.turnback)
    )
    return language.drawn("clips_are", count=count, spacing=spacing, turnback=turnback)
