"""Who speaks at this machine."""

from __future__ import annotations

from django.http import HttpRequest, HttpResponse

from backspan.core.errors import quoted
from backspan.web.pages.common import FormError, filled, go_on, state_of
from backspan.web.speaking import COOKIE

#: A shift: after it somebody says again who speaks.
_LASTS = 12 * 3600


def page(request: HttpRequest) -> HttpResponse:
    """Choose one of the site's people."""
    project = state_of(request).project
    people = () if project is None else project.people
    if request.method != "POST":
        return filled(request, "speaker.html", people=people, back=_back(request))
    name = request.POST.get("person", "")
    if name not in {one.id for one in people}:
        raise FormError(f"found the person {quoted(name)}, expected one of the site's people")
    answer = go_on("today")
    answer.headers["Location"] = _back(request)
    return speaks(answer, name)


def speaks(answer: HttpResponse, name: str) -> HttpResponse:
    """The answer, from which on that person speaks at this machine."""
    answer.set_cookie(COOKIE, name, max_age=_LASTS, httponly=True, samesite="Strict")
    return answer


def _back(request: HttpRequest) -> str:
    """Where the reader came from: a page of this machine, never another address."""
    asked = request.POST.get("back") or request.GET.get("back") or "/"
    here = asked.startswith("/") and not asked.startswith(("//", "/\\"))
    return asked if here and asked.isprintable() else "/"
