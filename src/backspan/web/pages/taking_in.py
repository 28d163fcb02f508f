"""Take a project file, or the archive of the site, into the record: looked at first, then taken.

Of a project file only what is new in it becomes entries; of an archive whatever is not here yet,
once all of it was proven. Nothing that was found on the roof since is undone by either.
"""

from __future__ import annotations

import tempfile
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from django.core.files.uploadedfile import UploadedFile
from django.http import HttpRequest, HttpResponse

from backspan.core.errors import quoted
from backspan.core.ledger.chain import in_order
from backspan.core.ledger.described import no_longer_named, not_said_yet
from backspan.core.ledger.entry import Entry, Signer
from backspan.core.ledger.kinds import Body, kind_of
from backspan.core.model.identifiers import did_you_mean
from backspan.core.model.project import Project
from backspan.exchange.parse import parse_project
from backspan.web.application import workbench_of
from backspan.web.describing import signer_as
from backspan.web.falling import fallen
from backspan.web.pages.common import FormError, field, filled, state_of
from backspan.web.speaking import signer_of
from backspan.web.uploads import refuse_too_large

#: Where in a tar its kind is named, and how; a project file is text and has no such place.
_MAGIC_AT, _MAGIC = 257, b"ustar"
#: A project file of hundreds of drops is a tenth of it.
MOST_TEXT = 8_000_000


@dataclass(frozen=True, slots=True)
class Taken:
    """What a file brought, or would bring."""

    says: str
    kinds: tuple[tuple[str, int], ...] = ()
    stays: tuple[str, ...] = ()
    done: bool = False
    entries: tuple[Entry, ...] = ()


def page(request: HttpRequest) -> HttpResponse:
    """The form, and what the file that was sent brings."""
    taken = None
    if request.method == "POST":
        refuse_too_large(request)
        file = request.FILES.get("file")
        if file is None:
            raise FormError("Which file: found none, expected a project file or an archive")
        start = file.read(_MAGIC_AT + len(_MAGIC))
        file.seek(0)
        of = _archive if start[_MAGIC_AT:] == _MAGIC else _project
        taken = of(request, file, take=request.POST.get("does") == "take")
    state = state_of(request)
    ended = () if taken is None or state.project is None else fallen(state, taken.entries)
    return filled(request, "take_in.html", taken=taken, fallen=list(ended))


def _archive(request: HttpRequest, file: UploadedFile[Any], *, take: bool) -> Taken:
    """The entries of an archive of this site that are not here."""
    if not take:
        return Taken("An archive. It is proven whole before an entry of it is taken.")
    bench = workbench_of(request)
    at = bench.clock().isoformat(timespec="seconds")
    with tempfile.TemporaryDirectory() as name:
        path = Path(name) / "site.tar"
        with path.open("wb") as to:
            for piece in file.chunks():
                to.write(piece)
        with bench.saying:
            before = state_of(request).place
            new = bench.record.take_archive(path, received=at)
            entries = state_of(request).entries[before:]
    says = f"{new:,} entries that were not here yet." if new else "All of it was here already."
    return Taken(says, done=True, entries=tuple(entries))


def _project(request: HttpRequest, file: UploadedFile[Any], *, take: bool) -> Taken:
    """What of a project file is new."""
    project, bench = _read(request, file), workbench_of(request)
    signer = _signer(request, project)
    with bench.saying:
        state = state_of(request)
        new = list(not_said_yet(project, in_order(state.entries)))
        if take and new:
            bench.say(new, signer)
        written = state_of(request).entries[state.place :]
    stays = () if state.project is None else no_longer_named(project, state.project)
    return Taken(_said(project, new, signer, take=take), _kinds(new), stays, take, tuple(written))


def _read(request: HttpRequest, file: UploadedFile[Any]) -> Project:
    """The project of a file. Raises FormError where it is no text, ProjectError with its faults."""
    name = (file.name or "file")[:80]
    if (file.size or 0) > MOST_TEXT:
        raise FormError(f"found {quoted(name)} of {file.size:,} bytes, expected {MOST_TEXT:,}")
    try:
        text = file.read().decode("utf-8")
    except UnicodeDecodeError as error:
        raise FormError(
            f"found {quoted(name)}, which is no text (byte {error.start:,}), expected a project"
            " file, or the archive of a site as this record writes it"
        ) from error
    return parse_project(text, name, workbench_of(request).library)


def _signer(request: HttpRequest, project: Project) -> Signer:
    """Who speaks; at a record that nobody set up yet, one of the people of the file."""
    if state_of(request).project is not None:
        return signer_of(request)
    people = {one.id: one for one in project.people}
    by = field(request, "by", told="Who states it")
    if by not in people:
        meant = did_you_mean(by, people) or f"people: {', '.join(people) or 'none'}"
        raise FormError(f"Who states it: the file has no person {quoted(by)}; {meant}")
    return signer_as(people[by])


def _said(project: Project, new: Sequence[Body], signer: Signer, *, take: bool) -> str:
    if not new:
        return f"{project.site.name}: nothing new in the file; nothing was written."
    done = "entries by" if take else "entries would be written, stated by"
    return f"{project.site.name}: {len(new):,} {done} {signer.name}, {signer.role}."


def _kinds(new: Sequence[Body]) -> tuple[tuple[str, int], ...]:
    counted: Counter[Any] = Counter(kind_of(body)[0] for body in new)
    return tuple(counted.items())
