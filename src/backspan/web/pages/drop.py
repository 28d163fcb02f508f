"""A drop: the answer, what is looked at before anybody rides, what is decided, its history."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from django.http import HttpRequest, HttpResponse

from backspan.core.ledger.entry import Entry
from backspan.core.ledger.entry_lines import drops_of, entry_line
from backspan.core.ledger.happenings import lines_of
from backspan.core.ledger.stop_list import things_of
from backspan.core.model.project import Project
from backspan.drawings import section_figure, to_svg
from backspan.web.history import MOST, entry_told
from backspan.web.owed import owed
from backspan.web.pages.common import filled, state_of, the_drop
from backspan.web.shown import shown_items
from backspan.web.topics_told import findings_told, lines_of_topics, not_passed
from backspan.web.values_told import by_topic, opened, other_values
from backspan.web.workbench import DayState


def page(request: HttpRequest, name: str) -> HttpResponse:
    """All of one drop, worst first."""
    state = state_of(request)
    drop = the_drop(state, name)
    project: Project = state.described
    document, front = state.document(name), state.front(name)
    review = state.review(name)
    items, wanted = state.stop_list(name), state.also_wanted(name)
    waited = by_topic(wanted, review, project)
    about = [one for one in state.entries if _is_about(one, name)]
    standing = next(one for one in state.day["drops"] if one["drop"] == name)
    waiting = [one for one in front["reasons"] if one["kind"] != "refused"]
    return filled(
        request,
        "drop.html",
        drop=drop,
        standing=standing,
        front=front,
        refused=[one for one in front["reasons"] if one["kind"] == "refused"],
        owed=owed((one["where"], one) for one in waiting),
        waiting=len(waiting),
        items=list(shown_items(items, project)),
        left=sum(item.open for item in items),
        wanted=len(wanted),
        waited=waited,
        opened=opened(waited, request.GET.get("open", "")),
        rigged=[name for name, _ in project.standing_rigs],
        things=() if drop.rig is None else things_of(project, drop.rig),
        beams=drop.rig is not None
        and any(one.counterweighted_beam for one in drop.rig.suspension_points),
        others=len(other_values(project, name, items, wanted)),
        findings=not_passed(findings_told(document)),
        topics=lines_of_topics(document),
        lines=list(_lines(state, name)),
        people=project.people,
        against=list(against_a_permit(state, name)),
        deficiencies=list(_deficiencies(state, name)),
        history=[entry_told(one) for one in reversed(about[-MOST:])],
    )


def section(request: HttpRequest, name: str) -> HttpResponse:
    """The section of a drop, to scale."""
    state = state_of(request)
    the_drop(state, name)
    drawn = to_svg(section_figure(state.described, name, state.review(name)))
    answer = HttpResponse(drawn, content_type="image/svg+xml")
    if request.GET.get("at") == str(state.place):
        # Its address names the place of the ledger: another place is another picture.
        answer.headers["Cache-Control"] = "private, max-age=600"
    return answer


def against_a_permit(state: DayState, name: str) -> Iterator[str]:
    """Why nobody can permit the use of a drop as it stands now."""
    front = state.front(name)
    if front["verdict"] != "pass":
        yield f"The review of today answers: {front['answer']}."
    waiting = [line for line, entry in _lines(state, name) if entry is None]
    if waiting:
        yield f"Not seen connected by two people: {', '.join(waiting)}."
    if not list(_lines(state, name)):
        yield "Nothing is rigged here."
    found = state.folded.against(name)
    if found is not None:
        yield f"It stands against it: {entry_line(found[1])}."


def _lines(state: DayState, name: str) -> Iterator[tuple[str, Entry | None]]:
    """Each line of the rig with the entry by which two people saw it connected."""
    connected = state.folded.record(name).connected
    for line in lines_of(state.folded.rig(name)):
        yield line, connected.get(line)


def _deficiencies(state: DayState, name: str) -> Iterator[Any]:
    for several in state.folded.matters.deficiencies.values():
        for one in several:
            if not one.says.drops or name in one.says.drops:
                yield one


def _is_about(entry: Entry, name: str) -> bool:
    to = getattr(entry.body, "to", None)
    return name in drops_of(entry.body) or to == name
