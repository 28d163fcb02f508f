"""The record: its entries as they came, its head and key, all of it as one file."""

from __future__ import annotations

import tempfile
from pathlib import Path

from django.http import FileResponse, HttpRequest, HttpResponse

from backspan.exchange.written import NoProjectFileError, project_text
from backspan.web.application import workbench_of
from backspan.web.history import entry_told
from backspan.web.pages.common import FormError, filled, state_of

_SHOWN = 200


def page(request: HttpRequest) -> HttpResponse:
    """The last entries, the head, the key."""
    state, record = state_of(request), workbench_of(request).record
    last = record.ledger.last()
    return filled(
        request,
        "record.html",
        entries=[entry_told(one) for one in reversed(state.entries[-_SHOWN:])],
        many=len(state.entries),
        head="" if last is None else last.head,
        key=record.key.public,
        clocks=[] if state.project is None else state.day["clocks"],
    )


def project(request: HttpRequest) -> HttpResponse:
    """The site as it stands, as a project file."""
    state = state_of(request)
    text = project_text(state.described)
    answer = HttpResponse(text, content_type="application/json")
    answer.headers["Content-Disposition"] = 'attachment; filename="project.json"'
    return answer


def archive(request: HttpRequest) -> FileResponse:
    """All of the record as one file, proven by itself."""
    bench, state = workbench_of(request), state_of(request)
    if state.project is None:
        raise FormError("found no site yet, expected one to write")
    try:
        said: bytes | None = project_text(state.project).encode("utf-8")
    except NoProjectFileError:
        said = None
    at = bench.clock().isoformat(timespec="seconds")
    with tempfile.TemporaryDirectory() as name:
        path = Path(name) / "site.tar"
        bench.record.write_archive(path, at=at, project=said)
        stream = path.open("rb")
    return FileResponse(stream, as_attachment=True, filename=f"site-{at[:10]}.tar")
