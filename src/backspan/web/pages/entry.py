"""One entry as it is kept, and the correction that says it is not so."""

from __future__ import annotations

import json

from django.http import HttpRequest, HttpResponse

from backspan.core.errors import quoted
from backspan.core.ledger import bodies
from backspan.core.ledger.entry import Entry
from backspan.core.ledger.entry_lines import entry_line
from backspan.core.ledger.happenings import may_be_corrected
from backspan.web.application import workbench_of
from backspan.web.pages.common import FormError, field, filled, go_on, state_of
from backspan.web.speaking import signer_of
from backspan.web.workbench import DayState


def page(request: HttpRequest, name: str) -> HttpResponse:
    """An entry by its hash; corrected here where its kind may be."""
    state = state_of(request)
    place, entry = _entry(state, name)
    may = state.project is not None and may_be_corrected(state.folded, entry)
    done = name in state.folded.corrected
    if request.method == "POST":
        signer = signer_of(request)
        if not may or done:
            raise FormError("found an entry that no correction undoes, expected one that states")
        body = bodies.Corrected(name, field(request, "why", told="Why it is not so"))
        workbench_of(request).say([body], signer)
        return go_on("entry", name)
    return filled(
        request,
        "entry.html",
        entry=entry,
        line=entry_line(entry),
        at_place=place,
        may=may and not done,
        corrected=done,
        raw=json.dumps(json.loads(entry.raw), indent=1, ensure_ascii=False),
    )


def _entry(state: DayState, name: str) -> tuple[int, Entry]:
    for place, one in enumerate(state.entries, start=1):
        if one.hash == name:
            return place, one
    raise FormError(f"found no entry {quoted(name[:12])}")
