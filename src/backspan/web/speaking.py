"""Who speaks at this machine: chosen by the person, named on every page and in every entry.

There is no account and no password: the machine is in the hand of who speaks. What an entry says
of its signer is what that person chose here, and the record says so.
"""

from __future__ import annotations

from typing import Any
from urllib.parse import urlsplit, urlunsplit

from django.http import HttpRequest

from backspan.core.errors import BackspanError
from backspan.core.ledger.entry import Signer
from backspan.core.model.people import Person
from backspan.web.application import KEY, workbench_of

COOKIE = "backspan-speaker"


class NobodySpeaksError(BackspanError):
    """Something was to be written, and nobody said who speaks."""


def speaker_of(request: HttpRequest) -> Person | None:
    """The person who speaks, one of the site's; None where nobody said, or is not there."""
    project = workbench_of(request).today().project
    name = request.COOKIES.get(COOKIE, "")
    people = () if project is None else project.people
    return next((one for one in people if one.id == name), None)


def signer_of(request: HttpRequest) -> Signer:
    """Who signs what this request writes. Raises NobodySpeaksError where nobody said."""
    one = speaker_of(request)
    if one is None:
        raise NobodySpeaksError("Nobody said who speaks. Choose who you are first, then do it.")
    return Signer(one.id, one.name, one.role, one.employer, one.card)


def page_of(request: HttpRequest) -> str:
    """The page that is read, or that a form was sent from: where to come back to."""
    if request.method != "GET":
        return came_from(request)
    return "/" if request.path == "/speaker" else request.get_full_path()


def came_from(request: HttpRequest) -> str:
    """The page of this machine that a request came from; the first page where it is none."""
    came = urlsplit(request.headers.get("Referer", ""))
    ours = came.netloc == request.META.get("HTTP_HOST") and not came.path.startswith("//")
    return (urlunsplit(("", "", came.path, came.query, "")) or "/") if ours else "/"


def in_every_page(request: HttpRequest) -> dict[str, Any]:
    """What every page shows: the site, the day, who speaks, where the ledger stands."""
    if KEY not in request.META:
        return {}
    state = workbench_of(request).today()
    project = state.project
    return {
        "site": None if project is None else project.site,
        "on": state.on,
        "place": state.place,
        "speaker": speaker_of(request),
        "here": page_of(request),
        "scripted": request.headers.get("HX-Request") == "true",
    }
