"""An outline onto a roof of a site: its edges anew, with the parapets of those called the same."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from backspan.core.errors import quoted
from backspan.core.model.project import Project
from backspan.core.model.references import problems
from backspan.core.model.site import Edge, Obstacle, Point, Roof
from backspan.core.model.walked import edge_length, is_within
from backspan.exchange.drawings_in.drawn import DrawnIn
from backspan.exchange.drawings_in.errors import DrawingError, refused
from backspan.exchange.drawings_in.outline import DrawnOutline
from backspan.exchange.wrong import Wrong

#: The cosine of the angle by which an edge of one name may have turned: some 18 degrees.
_SAME_WAY = 0.95


def with_outline(project: Project, roof: str, found: DrawnOutline, drawn: DrawnIn) -> Project:
    """The project with a roof's outline and edges as they were drawn.

    Raises DrawingError with all on the roof that the outline has no place for.
    """
    of = next((one for one in project.site.roofs if one.id == roof), None)
    if of is None:
        names = ", ".join(one.id for one in project.site.roofs) or "none yet"
        raise refused("the site", f"no roof {quoted(roof)}", f"one of its roofs: {names}")
    wrong = [*_outside(of, found, drawn), *_other_edges(of, found)]
    before = {one.id: one for one in of.edges}
    edges = tuple(
        replace(one, parapet=before[one.id].parapet, faces=before[one.id].faces)
        if one.id in before
        else one
        for one in found.edges
    )
    new = replace(of, outline=found.outline, edges=edges)
    roofs = tuple(new if one is of else one for one in project.site.roofs)
    after = replace(project, site=replace(project.site, roofs=roofs))
    known = set(problems(project))
    wrong.extend(
        Wrong(" ".join(str(step) for step in one.path), one.found, one.expected)
        for one in problems(after)
        if one not in known
    )
    if wrong:
        raise DrawingError(dict.fromkeys(wrong))
    return after


def _outside(of: Roof, found: DrawnOutline, drawn: DrawnIn) -> Iterator[Wrong]:
    """What stands on the roof and would stand outside of it."""
    things = [(f"anchor {one.id}", one.at) for one in of.anchors]
    things += [(f"the middle of obstacle {one.id}", _middle(one)) for one in of.obstacles]
    for name, at in things:
        if not is_within(found.outline, at):
            told = f"{name} at {drawn.units.place(at)}, outside the outline"
            expected = "an outline round all that stands on the roof; the drawing's origin is the"
            yield Wrong(of.name, told, f"{expected} site's datum")


def _middle(one: Obstacle) -> Point:
    across, up = ([at[axis] for at in one.outline] for axis in (0, 1))
    return (min(across) + max(across)) / 2, (min(up) + max(up)) / 2


def _other_edges(of: Roof, found: DrawnOutline) -> Iterator[Wrong]:
    """Edges with a parapet that the outline has not, or that run another way there."""
    drawn = {one.id: one for one in found.edges}
    for edge in of.edges:
        other = drawn.get(edge.id)
        if other is None:
            if edge.parapet is not None:
                names = ", ".join(drawn)
                told = f"edge {edge.id} with a parapet, and no edge {edge.id} in the drawing"
                yield Wrong(of.name, told, f"it to be one of: {names}")
        elif not _run_alike(edge, other):
            told = f"edge {edge.id} running another way than in the drawing"
            yield Wrong(of.name, told, "edges of one name to look the same way")


def _run_alike(one: Edge, other: Edge) -> bool:
    across = (one.end[0] - one.start[0]) * (other.end[0] - other.start[0])
    up = (one.end[1] - one.start[1]) * (other.end[1] - other.start[1])
    return across + up >= _SAME_WAY * edge_length(one) * edge_length(other)
