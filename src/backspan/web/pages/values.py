"""What else may be stated of a drop's rig: values that neither stop list nor review waits for."""

from __future__ import annotations

from django.http import HttpRequest, HttpResponse

from backspan.web.pages.common import filled, state_of, the_drop
from backspan.web.values_told import by_part, opened, other_values


def page(request: HttpRequest, name: str) -> HttpResponse:
    """The other values of a rig, by what they are of."""
    state = state_of(request)
    drop, project = the_drop(state, name), state.described
    items = state.stop_list(name)
    others = other_values(project, name, items, state.also_wanted(name))
    groups = by_part(others, project)
    standing = next(one for one in state.day["drops"] if one["drop"] == name)
    return filled(
        request,
        "values.html",
        drop=drop,
        front=state.front(name),
        standing=standing,
        left=sum(item.open for item in items),
        count=len(others),
        groups=groups,
        opened=opened(groups, request.GET.get("open", "")),
    )
