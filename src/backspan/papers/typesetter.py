"""Papers set in a process of their own, one after another, while the caller goes on.

The typesetter keeps what it set in memory and gives none of it back: after some papers its process
is replaced by a new one, so that many drops take no more room than a few. It ends when its input
does, so that none outlives a caller that was killed.
"""

from __future__ import annotations

import contextlib
import datetime
import json
import subprocess
import sys
import tempfile
from dataclasses import dataclass
from pathlib import Path
from typing import IO

from backspan.papers.content import PaperContent
from backspan.papers.errors import PaperError
from backspan.papers.pdf import set_in, write_into

#: Papers that one process sets.
_MOST_PAPERS = 6
_PDF = "paper.pdf"


_ENDED = "the paper could not be set: the typesetter ended"


@dataclass(frozen=True, slots=True)
class _Running:
    """A process that sets papers, with what it is asked and what it answers."""

    process: subprocess.Popen[bytes]
    asks: IO[bytes]
    answers: IO[bytes]

    def end(self) -> None:
        """Close its input, which ends it."""
        for stream in (self.asks, self.answers):
            with contextlib.suppress(OSError):  # of one that has ended already
                stream.close()
        self.process.wait()


@dataclass(slots=True)
class Typesetter:
    """Sets one paper at a time; the next may begin when the one before was taken."""

    _running: _Running | None = None
    _count: int = 0
    _folder: tempfile.TemporaryDirectory[str] | None = None

    def close(self) -> None:
        """End the process and take away what it was given."""
        self._end()
        self._clear()

    def begin(self, content: PaperContent, *, issued: datetime.date) -> None:
        """Begin to set a paper; OSError where what it is made of cannot be written."""
        self._clear()
        self._folder = tempfile.TemporaryDirectory(prefix="backspan-")
        write_into(Path(self._folder.name), content)
        if self._count % _MOST_PAPERS == 0:
            self._end()
        running = self._running = self._running or _start()
        self._count += 1
        asked = json.dumps([self._folder.name, content.template, issued.isoformat()])
        try:
            running.asks.write(asked.encode("ascii") + b"\n")
            running.asks.flush()
        except OSError as error:
            raise PaperError(_ENDED) from error

    def take(self) -> bytes:
        """The paper that was begun, as PDF.

        PaperError where it could not be set, OSError where the system refused to write it.
        """
        if self._running is None or self._folder is None:
            raise ValueError("no paper was begun")
        try:
            line = self._running.answers.readline()
            if not line:
                raise PaperError(_ENDED)
            told = json.loads(line)
            if "paper" in told:
                raise PaperError(told["paper"])
            if "system" in told:
                raise OSError(*told["system"])
            return (Path(self._folder.name) / _PDF).read_bytes()
        finally:
            self._clear()

    def _clear(self) -> None:
        if self._folder is not None:
            self._folder.cleanup()
            self._folder = None

    def _end(self) -> None:
        if self._running is not None:
            self._running.end()
            self._running = None


def _start() -> _Running:
    command = [sys.executable, "-m", "backspan.papers.typesetter"]
    process = subprocess.Popen(  # noqa: S603 - this very program
        command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL
    )
    if process.stdin is None or process.stdout is None:
        raise PaperError(_ENDED)
    return _Running(process, process.stdin, process.stdout)


def main() -> int:
    """Set what is asked for on standard input, a line each, and answer each: what went wrong."""
    for line in sys.stdin:
        folder, template, issued = json.loads(line)
        try:
            pdf = set_in(Path(folder), template, issued=datetime.date.fromisoformat(issued))
            (Path(folder) / _PDF).write_bytes(pdf)
            told: dict[str, object] = {}
        except PaperError as error:
            told = {"paper": str(error)}
        except OSError as error:
            told = {"system": [error.errno, error.strerror, error.filename or folder]}
        sys.stdout.write(json.dumps(told) + "\n")
        sys.stdout.flush()
    return 0


if __name__ == "__main__":
    raise SystemExit(main())
