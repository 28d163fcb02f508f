"""Two statements of one place that did not know of each other, and differ.

Neither is taken for the truth: what the place belongs to is in dispute until somebody who has seen
both states it again. Where both say the same there is nothing to settle.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator
from dataclasses import dataclass, field

from backspan.core.ledger.document import Path, changes_a_fact, drop_of
from backspan.core.ledger.entry import Entry
from backspan.core.ledger.writes import Write


@dataclass(frozen=True, slots=True)
class Dispute:
    """A place of which two entries say different things."""

    path: Path
    one: Entry
    other: Entry

    @property
    def drop(self) -> str | None:
        """The drop it is about; None where it may be about any."""
        return drop_of(self.path)


@dataclass(frozen=True, slots=True)
class _Said:
    entry: Entry
    write: Write


@dataclass(slots=True)
class Disputes:
    """The last writes of each device at each place, and what is open between them."""

    unsettled: list[Dispute] = field(default_factory=list)
    _at: dict[Path, dict[str, _Said]] = field(default_factory=lambda: defaultdict(dict))
    _under: dict[Path, dict[Path, None]] = field(default_factory=lambda: defaultdict(dict))

    def take(self, entry: Entry, write: Write) -> Iterator[Dispute]:
        """Settle what this write settles; yields what it begins."""
        if write.joins:
            return
        self.unsettled = [one for one in self.unsettled if not _settles(entry, write, one)]
        for path in self._near(write.path):
            for said in self._at[path].values():
                if entry.has_seen(said.entry) or said.entry is entry:
                    continue
                if path == write.path and not changes_a_fact(said.write.value, write.value):
                    continue
                dispute = Dispute(max(path, write.path, key=len), said.entry, entry)
                self.unsettled.append(dispute)
                yield dispute
        self._at[write.path][entry.envelope.device] = _Said(entry, write)
        for depth in range(len(write.path)):
            self._under[write.path[:depth]][write.path] = None

    def copied(self) -> Disputes:
        """The same disputes to go on from."""
        at = {path: dict(said) for path, said in self._at.items()}
        under = {path: dict(written) for path, written in self._under.items()}
        return Disputes(list(self.unsettled), defaultdict(dict, at), defaultdict(dict, under))

    def _near(self, path: Path) -> list[Path]:
        """The places written before at a path, above it and under it."""
        above = [path[:depth] for depth in range(len(path) + 1) if path[:depth] in self._at]
        return [*above, *self._under.get(path, ())]


def _settles(entry: Entry, write: Write, dispute: Dispute) -> bool:
    covers = dispute.path[: len(write.path)] == write.path
    return covers and entry.has_seen(dispute.one) and entry.has_seen(dispute.other)
