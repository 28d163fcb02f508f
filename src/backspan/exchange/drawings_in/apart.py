"""Loading in a process of its own, with limits: a hostile file ends that process and no other.

What was read, or what is wrong with it, comes out as one text.
"""

from __future__ import annotations

import json
import logging
import sys
from typing import Any

from backspan.exchange.apart import ApartError, Limits, hold_to, run_apart
from backspan.exchange.drawings_in.errors import DrawingError, refused
from backspan.exchange.wrong import Wrong

#: How long a drawing may take, how much memory, and how long what was read of it may be.
SECONDS, MOST_MEMORY, _MOST_TOLD = 120, 2_000_000_000, 1_000_000_000
_MODULE = "backspan.exchange.drawings_in.apart"
_SIMPLER = "a simpler drawing: save the roof's layers alone"


def loaded_apart(content: bytes, origin: str, factor: float, *, seconds: int = SECONDS) -> Any:
    """What `loading.loaded` answers, from a process of its own. Raises DrawingError as it does."""
    arguments = [origin, repr(factor), str(seconds)]
    try:
        told = json.loads(run_apart(_MODULE, arguments, content, Limits(seconds, _MOST_TOLD)))
    except ApartError as error:
        expected = _SIMPLER if error.slow else "a DXF file as it was saved"
        raise refused(origin, str(error), expected) from error
    if "wrong" in told:
        raise DrawingError(Wrong(*one) for one in told["wrong"])
    return told


def main(origin: str, factor: str, seconds: str) -> int:
    """Load what stands on standard input within the limits, and print what came of it."""
    hold_to(seconds=int(seconds), memory=MOST_MEMORY)
    logging.disable()  # what the library remarks on is told by its audit
    told: dict[str, Any]
    try:
        from backspan.exchange.drawings_in.loading import loaded

        told = loaded(sys.stdin.buffer.read(), origin, float(factor))
        text = json.dumps(told)
    except DrawingError as error:
        text = json.dumps(
            {"wrong": [[one.where, one.found, one.expected] for one in error.problems]}
        )
    except MemoryError:
        found = f"more than {MOST_MEMORY:,} bytes of memory needed for it"
        text = json.dumps({"wrong": [[origin, found, _SIMPLER]]})
    sys.stdout.write(text)
    return 0


if __name__ == "__main__":
    raise SystemExit(main(*sys.argv[1:]))
