"""What the checks found of a drop: all of it, or what one topic rests on."""

from __future__ import annotations

from django.http import HttpRequest, HttpResponse

from backspan.core.errors import quoted
from backspan.core.sheet.case import AbsentError
from backspan.web.pages.common import filled, state_of, the_drop
from backspan.web.topics_told import findings_told, topics_told


def page(request: HttpRequest, name: str) -> HttpResponse:
    """Every finding of a drop, worst first."""
    state = state_of(request)
    drop = the_drop(state, name)
    findings = findings_told(state.document(name))
    return filled(request, "findings.html", drop=drop, front=state.front(name), findings=findings)


def of_topic(request: HttpRequest, name: str, topic: str) -> HttpResponse:
    """Every finding of one topic, worst first. Raises AbsentError for a topic that is none."""
    state = state_of(request)
    drop = the_drop(state, name)
    topics = {one.slug: one for one in topics_told(state.document(name))}
    if topic not in topics:
        raise AbsentError(f"found no topic {quoted(topic)}, expected one of: {', '.join(topics)}")
    return filled(request, "topic.html", drop=drop, topic=topics[topic])
