"""A concern: who noted it about what, which drops it stands against; closed by a named test."""

from __future__ import annotations

from django.http import HttpRequest, HttpResponse

from backspan.core.errors import quoted
from backspan.core.ledger import bodies
from backspan.core.model.project import Project
from backspan.web.falling import fallen, stopped_by
from backspan.web.history import entries_about, history_of
from backspan.web.pages.common import FormError, field, filled, go_on, state_of
from backspan.web.pages.saying import refuse_since, say_placed
from backspan.web.speaking import signer_of


def page(request: HttpRequest, name: str) -> HttpResponse:
    """A concern, and the form that closes it by a test."""
    state = state_of(request)
    found = state.folded.matters.concerns.get(name)
    if not found:
        raise FormError(f"found no concern {quoted(name)}")
    one = found[-1]
    if request.method == "POST":
        signer_of(request)
        if one.closed is not None:
            raise FormError(f"Concern {name} is closed already")
        refuse_since(request, state, lambda body: getattr(body, "id", None) == name)
        test = field(request, "test", told="Which test settled it", most=200)
        says = field(request, "says", told="What the test showed")
        say_placed(request, state, bodies.ConcernClosed(name, test, says))
        return go_on("concern", name)
    entries = entries_about(
        state,
        lambda body: (
            isinstance(body, bodies.ConcernNoted | bodies.ConcernClosed) and body.id == name
        ),
    )
    return filled(
        request,
        "concern.html",
        number=name,
        one=one,
        about=_about(state.described, one.says.about),
        stops=stopped_by(state, one.says.about),
        fallen=list(fallen(state, entries)),
        history=list(history_of(state, entries)),
    )


def _about(project: Project, name: str) -> tuple[str, tuple[str, ...]]:
    """What kind of thing a concern is about, and the page it has: its name and parts."""
    for unit in project.kit.units:
        if unit.id == name:
            return str(unit.kind), ("thing", name)
    for roof in project.site.roofs:
        if any(one.id == name for one in roof.anchors):
            return "anchor", ("anchor", roof.id, name)
    if any(one.id == name for one in project.drops):
        return "drop", ("drop", name)
    return "", ()
