"""Work on a file in a process of its own, with limits: a hostile file ends that process alone.

The file goes in on standard input; what came of it comes out, up to so many bytes.
"""

from __future__ import annotations

import signal
import subprocess
import sys
import threading
from collections.abc import Sequence
from dataclasses import dataclass
from tempfile import TemporaryFile
from typing import IO

from backspan.core.errors import BackspanError, quoted

#: What such a process may write to files: what it has to say, and no more.
_MOST_WRITTEN = 10_000_000
#: Of what it said last, so much is read.
_LAST_SAID = 2_000


@dataclass(frozen=True, slots=True)
class Limits:
    """How long a process may take, and how much it may answer, in bytes."""

    seconds: int
    output: int


class ApartError(BackspanError, RuntimeError):
    """A process that gave no answer; it says what was found instead. `slow` where time ran out."""

    def __init__(self, found: str, *, slow: bool = False) -> None:
        super().__init__(found)
        self.slow = slow


def run_apart(module: str, arguments: Sequence[str], content: bytes, limits: Limits) -> bytes:
    """What a module of this program answers of a content. Raises ApartError where it does not."""
    command = [sys.executable, "-P", "-m", module, *arguments]
    try:
        with TemporaryFile() as given, TemporaryFile() as said:
            given.write(content)
            given.seek(0)
            return _run(command, given, said, limits)
    except OSError as error:
        raise ApartError(f"no process for it ({error.strerror or error})") from error


def hold_to(*, seconds: int, memory: int) -> None:
    """Hold this process to its time and memory, where the system can; it leaves no image behind."""
    if sys.platform == "win32":
        return
    import resource

    for kind, most in (
        (resource.RLIMIT_AS, memory),
        (resource.RLIMIT_CPU, seconds),
        (resource.RLIMIT_FSIZE, _MOST_WRITTEN),
        (resource.RLIMIT_CORE, 0),
    ):
        _, hard = resource.getrlimit(kind)
        soft = most if hard == resource.RLIM_INFINITY else min(most, hard)
        resource.setrlimit(kind, (soft, hard))


def _run(command: list[str], given: IO[bytes], said: IO[bytes], limits: Limits) -> bytes:
    late = threading.Event()
    with subprocess.Popen(  # noqa: S603 - this very program
        command, stdin=given, stdout=subprocess.PIPE, stderr=said
    ) as process:

        def end() -> None:
            late.set()
            process.kill()

        timer = threading.Timer(limits.seconds, end)
        timer.start()
        try:
            answer = b"" if process.stdout is None else process.stdout.read(limits.output + 1)
            if len(answer) <= limits.output:
                process.wait()
        finally:
            timer.cancel()
            process.kill()
    if len(answer) > limits.output:
        raise ApartError(f"more than {limits.output:,} bytes that came of it")
    if process.returncode != 0:
        raise _ended(process.returncode, said, limits, late=late.is_set())
    return answer


def _ended(code: int, said: IO[bytes], limits: Limits, *, late: bool) -> ApartError:
    """Why a process ended without an answer."""
    name = _signal(code)
    if late or name == "SIGXCPU":
        return ApartError(f"no end of it within {limits.seconds} seconds", slow=True)
    said.seek(0, 2)
    said.seek(max(0, said.tell() - _LAST_SAID))
    lines = said.read().decode("utf-8", "replace").strip().splitlines()
    why = name or (quoted(lines[-1]) if lines else f"it ended with {code}")
    return ApartError(f"something that stopped the reading ({why})")


def _signal(code: int) -> str:
    """The name of the signal that ended a process; empty where none did."""
    if code >= 0:
        return ""
    try:
        return signal.Signals(-code).name
    except ValueError:
        return f"signal {-code}"
