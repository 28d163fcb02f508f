"""Says what is going on once a run takes longer than a person waits without wondering."""

from __future__ import annotations

import time
from dataclasses import dataclass, field

#: Seconds of silence before a word.
PATIENCE = 1.0


@dataclass(slots=True)
class Progress:
    """Speaks on standard error, and never twice within a second."""

    silent_since: float = field(default_factory=time.monotonic)

    def doing(self, what: str) -> None:
        """Say that `what` begins, if nothing was said for a while."""
        if time.monotonic() - self.silent_since > PATIENCE:
            from backspan.cli.screen import put_error

            put_error(f"{what} ...")
            self.silent_since = time.monotonic()
