"""What was refused, as a page: what was found, what was expected, the way back."""

from __future__ import annotations

from django.http import HttpRequest, HttpResponse
from django.shortcuts import render

from backspan.core.errors import BackspanError, quoted
from backspan.web.speaking import came_from

#: Fields into which somebody writes sentences: what a refusal gives back, to be taken along.
_SENTENCES = ("says", "why", "about", "what", "test")


def refused(
    request: HttpRequest, text: str, *, status: int, gives_back: bool = False
) -> HttpResponse:
    """The page that says why nothing was done; with `gives_back` what was written stands on it.

    Only what a page of this machine sent, and could be read, is given back.
    """
    names = [one for one in _SENTENCES if gives_back and request.POST.get(one, "").strip()]
    typed = [request.POST[one] for one in names]
    said = {"text": text, "typed": typed, "back": came_from(request)}
    return render(request, "refused.html", said, status=status)


def bad_request(request: HttpRequest, exception: Exception) -> HttpResponse:
    """The page for a request that the framework refuses: too large, under another name, broken."""
    told = str(exception) if isinstance(exception, BackspanError) else "This cannot be read."
    return refused(request, f"{told} Nothing was written.", status=400)


def not_there(request: HttpRequest, exception: Exception) -> HttpResponse:  # noqa: ARG001 - as above
    """The page for an address that leads nowhere."""
    return refused(request, f"found no page {quoted(request.path[:80])}", status=404)


def broken(request: HttpRequest) -> HttpResponse:
    """The page for a fault of the program."""
    text = "Something is wrong with this program, not with what you gave it. Nothing was written."
    return refused(request, text, status=500)


def cross_site(request: HttpRequest, reason: str = "") -> HttpResponse:
    """The page for a form that did not come from a page of this machine."""
    text = (
        "The form did not come from a page of this workbench, or the page was open since before it"
        f" was started again ({reason}). Nothing was written. Open the page anew."
    )
    return refused(request, text, status=403)
