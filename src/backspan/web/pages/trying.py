"""Try-out: other numbers and what they would answer; a page that cannot write."""

from __future__ import annotations

from django.http import HttpRequest, HttpResponse
from django.views.decorators.http import require_safe

from backspan.core.model.project import Project
from backspan.core.review.front import front_data
from backspan.web.pages.common import filled, state_of, the_drop
from backspan.web.trying import tried


@require_safe
def page(request: HttpRequest, name: str) -> HttpResponse:
    """Sliders with the answer that they give, beside the one that is recorded."""
    state = state_of(request)
    drop = the_drop(state, name)
    project = state.described
    found = tried(state, name, request.GET)
    shown = [
        {
            "slider": slider,
            "steps": steps,
            "text": slider.text(steps, project.units),
            "stated": slider.text(slider.now, project.units),
            "moved": steps != slider.now,
        }
        for slider, steps in found.sliders
    ]
    front = front_data(found.review)
    return filled(
        request,
        "try.html",
        drop=drop,
        sliders=shown,
        hoists=[(point, hoist, _types(project, hoist)) for point, hoist in found.hoists],
        front=front,
        refused=[one for one in front["reasons"] if one["kind"] == "refused"],
        recorded=state.front(name),
    )


def _types(project: Project, hoist: str) -> list[tuple[str, str]]:
    """The hoists that may be tried: the one that hangs there, and each kind of the kit."""
    kinds = [(one.id, one.name) for one in project.kit.hoists]
    named = dict(kinds)
    return kinds if hoist in named else [(hoist, f"{hoist} (as it hangs)"), *kinds]
