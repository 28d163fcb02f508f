"""Loading in a process of its own, with limits: a hostile file ends that process and no other.

The file goes in on standard input; what was read, or what is wrong with it, comes out as one text.
"""

from __future__ import annotations

import json
import logging
import subprocess
import sys
from typing import Any

from backspan.core.errors import quoted
from backspan.exchange.drawings_in.errors import DrawingError, DrawingProblem, refused

#: How long a drawing may take, and how much memory.
SECONDS, MOST_MEMORY = 120, 2_000_000_000
_MODULE = "backspan.exchange.drawings_in.apart"
_SIMPLER = "a simpler drawing: save the roof's layers alone"


def loaded_apart(content: bytes, origin: str, factor: float, *, seconds: int = SECONDS) -> Any:
    """What `loading.loaded` answers, from a process of its own. Raises DrawingError as it does."""
    command = [sys.executable, "-P", "-m", _MODULE, origin, repr(factor), str(seconds)]
    try:
        ran = subprocess.run(  # noqa: S603 - this very program
            command, input=content, capture_output=True, timeout=seconds, check=False
        )
    except subprocess.TimeoutExpired as error:
        raise refused(origin, f"no end of it within {seconds} seconds", _SIMPLER) from error
    if ran.returncode != 0:
        lines = ran.stderr.decode("utf-8", "replace").strip().splitlines()
        why = quoted(lines[-1]) if lines else f"it ended with {ran.returncode}"
        found = f"something that stopped the reading ({why})"
        raise refused(origin, found, "a DXF file as it was saved")
    told = json.loads(ran.stdout)
    if "wrong" in told:
        raise DrawingError(DrawingProblem(*one) for one in told["wrong"])
    return told


def main(origin: str, factor: str, seconds: str) -> int:
    """Load what stands on standard input within the limits, and print what came of it."""
    _limit(int(seconds))
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


def _limit(seconds: int) -> None:
    """Hold this process to its time and memory, where the system can."""
    if sys.platform == "win32":
        return
    import resource

    for kind, most in ((resource.RLIMIT_AS, MOST_MEMORY), (resource.RLIMIT_CPU, seconds)):
        _, hard = resource.getrlimit(kind)
        soft = most if hard == resource.RLIM_INFINITY else min(most, hard)
        resource.setrlimit(kind, (soft, hard))


if __name__ == "__main__":
    raise SystemExit(main(*sys.argv[1:]))
