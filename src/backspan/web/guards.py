"""What every page is guarded by: headers that forbid script of others, errors told as pages."""

from __future__ import annotations

import logging
from collections.abc import Callable

from django.http import HttpRequest, HttpResponse

from backspan.core.errors import BackspanError
from backspan.core.sheet.case import AbsentError
from backspan.records.errors import StoreFullError
from backspan.web.pages.refused import broken, refused

Next = Callable[[HttpRequest], HttpResponse]
_POLICY = (
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
    " connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'"
)
_HEADERS = {
    "Content-Security-Policy": _POLICY,
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "same-origin",
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cross-Origin-Resource-Policy": "same-origin",
    "Cache-Control": "no-store",
}
_LOG = logging.getLogger("backspan.web")


class SafeHeaders:
    """Sets the headers on every answer that does not set its own."""

    def __init__(self, following: Next) -> None:
        self._following = following

    def __call__(self, request: HttpRequest) -> HttpResponse:
        """The page, with the headers."""
        answer = self._following(request)
        for name, value in _HEADERS.items():
            answer.headers.setdefault(name, value)
        return answer


class Refusals:
    """Tells what was refused as a page that says what was found and what was expected."""

    def __init__(self, following: Next) -> None:
        self._following = following

    def __call__(self, request: HttpRequest) -> HttpResponse:
        """The page as it is: errors come to `process_exception`."""
        return self._following(request)

    def process_exception(self, request: HttpRequest, error: Exception) -> HttpResponse | None:
        """The page of an error that is ours; None leaves any other to the framework."""
        if isinstance(error, AbsentError):
            return refused(request, str(error), status=404)
        if isinstance(error, StoreFullError):
            return refused(request, f"Nothing was kept: {error}", status=507, gives_back=True)
        if isinstance(error, BackspanError):
            return refused(request, str(error), status=400, gives_back=True)
        _LOG.exception("a page could not be made", exc_info=error)
        return broken(request)
