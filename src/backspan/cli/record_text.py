"""What the commands of the record print."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from backspan.cli.screen import harmless, screen_of

if TYPE_CHECKING:
    from backspan.core.ledger.answers import Rechecked
    from backspan.core.ledger.entry import Entry, Signer
    from backspan.core.ledger.kinds import Body
    from backspan.core.model.project import Project
    from backspan.records.api import SiteRecord
    from backspan.records.archive import Damage, Report
    from backspan.records.archive.manifest import Manifest

NOBODY = (
    "Nobody may ride by this: a drop carries people once its lines were seen connected, it was"
    " accepted, and a shift check of the day found it fit."
)
ALONE = (
    "It proves by itself that it is whole, not that nothing was cut off or written anew. For that,"
    " give a head that was kept elsewhere (--head) or the key of the record (--key)."
)
#: So many damaged places are printed.
MOST_SHOWN = 40


def imported_text(
    project: Project,
    before: Sequence[Entry],
    written: Sequence[Entry],
    new: Sequence[Body],
    signer: Signer,
) -> str:
    """What of a project file became entries, and what that did to accepted drops."""
    from backspan.core.ledger.described import no_longer_named
    from backspan.core.ledger.fold import fold
    from backspan.core.ledger.kinds import kind_of

    lines: list[str] = []
    if not new:
        lines.append(f"{project.site.name}: nothing new in the file; nothing was written.")
    else:
        done = "entries by" if written else "entries would be written, stated by"
        lines.append(f"{project.site.name}: {len(new)} {done} {signer.name}, {signer.role}")
        kinds = Counter(kind_of(body)[0] for body in new)
        lines += [f"  {count:>4}  {kind}" for kind, count in kinds.items()]
    stays = no_longer_named(project, fold(before).project) if before else ()
    if stays:
        lines.append(f"Not in the file any longer, and still in the record: {', '.join(stays)}.")
    lines += list(ended(before, written))
    return _page([*lines, NOBODY] if written else lines)


def ended(before: Sequence[Entry], written: Sequence[Entry]) -> Iterator[str]:
    """The acceptances that these entries ended, and the entries that found no place."""
    from backspan.core.ledger.fold import fold

    now = fold([*before, *written])
    new = {one.hash for one in written}
    for drop, record in now.drops.items():
        for one in record.ended:
            if one.by.hash in new:
                yield f"The acceptance of drop {drop} ended: {one.by.envelope.kind}."
    for lost in now.unplaced:
        if lost.entry.hash in new:
            yield f"Without a place in the site: {lost.entry.envelope.kind}: {lost.says}."


def taken_text(record: SiteRecord, new: int) -> str:
    """How many entries of an archive were new here."""
    if not new:
        return _page([f"{record.site}: all of the archive was here already."])
    return _page([f"{record.site}: {new:,} entries that were not here yet.", *_where(record)])


def restored_text(record: SiteRecord) -> str:
    """What was brought back from an archive."""
    return _page(
        [
            f"{record.site}: brought back to {record.folder}.",
            *_where(record),
            f"device    {record.device} (new: entries made here are told from the old folder's)",
            f"key       {record.key.public} (new)",
            "Compare the head with one that was kept elsewhere: an older archive is whole too.",
        ]
    )


def archived_text(path: Path, manifest: Manifest, record: SiteRecord, why: str) -> str:
    """What stands in an archive that was written."""
    there = sum(one.name.startswith("evidence/") for one in manifest.members)
    lines = [
        f"{record.site}: written to {path}.",
        f"entries   {manifest.entries:,}",
        f"evidence  {there:,} files",
        f"head      {manifest.head}",
        f"key       {record.key.public}",
    ]
    if why:
        lines.append(f"Without a project file: {why}")
    lines.append("Keep the head and the key somewhere else, on paper too: they prove this file.")
    return _page(lines)


def proof_text(path: Path, report: Report, *, kept: bool = True) -> str:
    """Whether an archive is what was written."""
    if not report.whole:
        return _page([f"{path}: DAMAGED", *_damage(report.damage)])
    signed = f"up to entry {report.signed:,}" if report.signed else "nowhere"
    lines = [
        f"{path}: whole",
        f"site      {report.site}",
        f"entries   {report.entries:,}",
        f"head      {report.head}",
        f"signed    {signed}",
    ]
    return _page(lines if kept else [*lines, ALONE])


def folder_proof_text(
    folder: Path, key: str | None, heads: Iterable[str], database: str | None
) -> tuple[str, bool]:
    """Whether a record's folder is what was written, and the same as a word."""
    from backspan.records.api import open_record
    from backspan.records.errors import StoreDamagedError

    try:
        with open_record(folder, database=database) as record:
            damage = record.damage(trusted_key=key, known_heads=heads)
            where = _where(record)
    except StoreDamagedError as error:
        return _page([f"{folder}: DAMAGED", f"  {error}"]), False
    if damage:
        return _page([f"{folder}: DAMAGED", *_damage(damage)]), False
    return _page([f"{folder}: whole", *where]), True


def rechecked_text(found: Sequence[Rechecked]) -> str:
    """Which accepted drops are answered differently now."""
    from backspan.core.version import PROGRAM

    if not found:
        return _page([f"No drop is accepted; {PROGRAM} has nothing to ask again."])
    differing = [one for one in found if one.differs]
    lines = [
        f"drop {one.drop}: accepted {one.permit.envelope.at[:10]} by"
        f' {one.permit.envelope.signer.name} on "{one.said}"; now "{one.answers}"'
        for one in differing
    ]
    same = len(found) - len(differing)
    if same:
        lines.append(f"Answered the same by {PROGRAM}: {same} of {len(found)} accepted drops.")
    if differing:
        lines.append(
            "A person has to decide on each: stop it, or look again and accept it anew. Until"
            " then it stays as it was accepted."
        )
    return _page(lines)


def _where(record: SiteRecord) -> list[str]:
    last = record.ledger.last()
    if last is None:
        return ["entries   none"]
    return [f"entries   {last.place:,}, the last {last.received}", f"head      {last.head}"]


def _damage(damage: Sequence[Damage]) -> list[str]:
    more = len(damage) - MOST_SHOWN
    lines = [f"  {one}" for one in damage[:MOST_SHOWN]]
    return [*lines, f"  and {more:,} more places"] if more > 0 else lines


def _page(lines: Iterable[str]) -> str:
    """Lines as they stand, and whole sentences in the screen's width."""
    screen = screen_of()
    shown = (screen.paragraph(one) if one.endswith(".") else harmless(one) for one in lines)
    return "\n".join(shown) + "\n"
