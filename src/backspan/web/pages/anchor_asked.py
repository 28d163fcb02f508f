"""What is asked of an anchor: its place along and back from an edge, what its papers say."""

from __future__ import annotations

from django.http import HttpRequest

from backspan.core.model.project import Project
from backspan.core.model.site import Anchor, AnchorUse, Roof
from backspan.core.model.walked import edge_length, is_within, on_plan
from backspan.core.quantities import LENGTH, Length, display
from backspan.web.asking import PAPER, Ask, ask
from backspan.web.describing import statement
from backspan.web.pages.common import FormError
from backspan.web.pages.edges import edge_named, edges_of, length_in

ROUND = "180 deg"
#: What the form asks for that an anchor's record says otherwise, or does not.
OF_THE_FORM = frozenset({"edge", "along", "back", "any-way", "document", "rated"})
_USES = tuple((str(one), str(one)) for one in AnchorUse)


def of_anchor(project: Project) -> tuple[Ask, ...]:
    """What is asked of a new anchor; its load counts for each of its uses."""
    return (
        ask(Anchor, "id", "Its mark", like="such as A01"),
        Ask("edge", "Seen from edge", words=edges_of(project), needed=True),
        Ask(
            "along", "Along it, from its left end as you look out", needed=True, like="such as 8 ft"
        ),
        Ask("back", "Back from its face", needed=True, like="such as 12 ft"),
        ask(Anchor, "kind", "What it is", like="such as through-bolted post"),
        ask(Anchor, "uses", "Its papers allow", words=_USES, many=True),
        ask(Anchor, "ratings.0.load", "Carries, for each of these uses", evidence=PAPER),
        Ask("any-way", "Pulled in", words=(("yes", "any direction"), ("", "nobody said"))),
        ask(Anchor, "inspected", "Inspected on"),
        ask(Anchor, "certified", "Load test or certificate of"),
        ask(Anchor, "fixed_by", "Fixed in the building"),
        Ask("document", "Paper that says so", more=True, like="such as anchor letter of 3 March"),
        ask(Anchor, "standing", "Standing", more=True, needed=False),
    )


def placed(
    project: Project, text: dict[str, str], wrong: list[str]
) -> tuple[Roof | None, tuple[Length, Length]]:
    """The roof and the place on its plan that were written; what is wrong with them is added."""
    along = length_in(text["along"], "Along it", wrong)
    back = length_in(text["back"], "Back from its face", wrong)
    try:
        of, one = edge_named(project, text["edge"])
    except FormError:
        wrong.append("Seen from edge: found none, expected an edge of a roof")
        return None, (0.0, 0.0)
    if along is None or back is None:
        return of, (0.0, 0.0)
    at = on_plan(one, along=along, back=back)
    if not is_within(of.outline, at):
        wrong.append(
            f"Along and back: found a place outside {of.name}, expected one on it; edge"
            f" {one.id} is {display(edge_length(one), LENGTH, project.units)} long"
        )
    return of, at


def with_paper(request: HttpRequest, text: dict[str, str]) -> dict[str, str]:
    """Who states its values, when, and on which paper."""
    paper = {"document": text["document"]} if text["document"] else {}
    return {**statement(request), **paper}


def shown(length: Length, project: Project) -> str:
    """A length in the units of the site."""
    return display(length, LENGTH, project.units)
