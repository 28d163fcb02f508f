"""Files of evidence: kept by their hash, shown as pictures only where they are pictures."""

from __future__ import annotations

from typing import BinaryIO, cast

from django.http import FileResponse, HttpRequest, HttpResponse

from backspan.core.errors import quoted
from backspan.web.application import workbench_of
from backspan.web.pages.common import FormError
from backspan.web.uploads import refuse_too_large
from backspan.web.workbench import Workbench

#: How files begin that a page shows; anything else is only handed out to be kept.
_PICTURES = (
    (b"\xff\xd8\xff", "image/jpeg", "jpg"),
    (b"\x89PNG\r\n\x1a\n", "image/png", "png"),
    (b"RIFF", "image/webp", "webp"),
)
_TAKEN = (*_PICTURES, (b"%PDF-", "application/pdf", "pdf"))
_LONGEST_START = 16


def kept(request: HttpRequest) -> tuple[str, ...]:
    """Keep the files of a form; their hashes.

    Raises FormError for a file that is neither a photograph nor a PDF: what may carry a program
    (SVG, HTML, archives) is refused, and nothing of the form is written.
    """
    files = request.FILES.getlist("files")
    refuse_too_large(request)
    for one in files:
        start = one.read(_LONGEST_START)
        one.seek(0)
        if not any(start.startswith(how) for how, _, _ in _TAKEN):
            name = quoted((one.name or "")[:80])
            raise FormError(f"found {name}, expected a photograph (JPEG, PNG, WebP) or a PDF")
    keeping = workbench_of(request).record.evidence
    return tuple(dict.fromkeys(keeping.keep(cast("BinaryIO", one)) for one in files))


def file(request: HttpRequest, name: str) -> HttpResponse | FileResponse:
    """A file of evidence: a picture to look at, anything else to keep."""
    bench: Workbench = workbench_of(request)
    bench.record.evidence.check(name)
    stream = bench.record.evidence.open(name)
    start = stream.read(_LONGEST_START)
    stream.seek(0)
    kind = next((one for one in _TAKEN if start.startswith(one[0])), (b"", "", "bin"))
    picture = kind in _PICTURES
    answer = FileResponse(
        stream,
        as_attachment=not picture,
        filename=f"{name[:12]}.{kind[2]}",
        content_type=kind[1] if picture else "application/octet-stream",
    )
    answer.headers["Content-Security-Policy"] = "default-src 'none'; sandbox"
    answer.headers["Cache-Control"] = "private, max-age=31536000, immutable"
    return answer
