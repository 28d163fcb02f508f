"""Exit statuses, so that a script can act on an answer without reading it."""

from __future__ import annotations

from enum import IntEnum

from backspan.core.findings import Verdict


class Status(IntEnum):
    """What the command line ends with."""

    PASS = 0
    USAGE = 2
    FAIL = 10
    UNDECIDED = 11
    INTERNAL = 70
    STOPPED = 130


def status_of(verdict: Verdict | None) -> Status:
    """The status of an answer; a number worked out without a verdict is no failure."""
    if verdict is Verdict.FAIL:
        return Status.FAIL
    if verdict in (Verdict.MISSING, Verdict.REFER):
        return Status.UNDECIDED
    return Status.PASS
