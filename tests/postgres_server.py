"""A PostgreSQL server of the tests' own, in a folder of its own, on a socket that nobody else has.

It does not wait for the disk unless it is asked to: no test cuts the power, and a killed process
loses nothing that the system has taken.
"""

from __future__ import annotations

import contextlib
import os
import pwd
import shutil
import signal
import subprocess
import tempfile
import time
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from itertools import count
from pathlib import Path

from backspan.records.errors import StoreUnreachableError
from backspan.records.postgres import PostgresDatabase, read_address
from tools.check_environment import found_postgres_folder, postgres_problem

USER = "backspan"
#: Seconds after which a server that does not answer is a fault.
PATIENCE = 60.0
#: Who runs it when root runs the tests: a server refuses root.
SERVANTS = ("postgres", "nobody")


@dataclass(slots=True)
class Server:
    """A server that runs; each database of it is asked for once."""

    folder: Path
    programs: Path
    servant: str | None
    fsync: bool = False
    process: subprocess.Popen[bytes] | None = None
    _numbers: Iterator[int] = field(default_factory=lambda: count(1))

    def start(self) -> None:
        """Start it and wait until it answers."""
        log = (self.folder / "log").open("ab")
        waits = f"fsync={'on' if self.fsync else 'off'}"
        options = (waits, "listen_addresses=", "max_connections=30", "shared_buffers=16MB")
        switches = [word for one in options for word in ("-c", one)]
        command: list[str | Path] = [
            self.programs / "postgres",
            "-D",
            self.folder / "data",
            "-k",
            self.folder,
        ]
        with log:
            self.process = subprocess.Popen(
                [*command, *switches],
                cwd=self.folder,
                stdout=log,
                stderr=subprocess.STDOUT,
                user=self.servant,
            )
        end = time.monotonic() + PATIENCE
        while not self._answers():
            said = (self.folder / "log").read_text(encoding="utf-8")
            assert self.process.poll() is None, f"the server ended:\n{said}"
            assert time.monotonic() < end, f"the server does not answer:\n{said}"
            time.sleep(0.02)

    def stop(self, how: signal.Signals = signal.SIGINT) -> None:
        """Stop it, and wait until it is gone."""
        if self.process is not None:
            self.process.send_signal(how)
            self.process.wait(PATIENCE)
            self.process = None

    def crash(self, how: signal.Signals) -> None:
        """End it without its goodbye: SIGQUIT, or SIGKILL of all its processes at once."""
        assert self.process is not None
        # The first one goes first: it would start anew what dies under it.
        children = _children(self.process.pid) if how is signal.SIGKILL else []
        self.process.send_signal(how)
        for one in children:
            with contextlib.suppress(ProcessLookupError):
                os.kill(one, how)
        self.process.wait(PATIENCE)
        self.process = None

    def database(self) -> str:
        """The address of a new database."""
        name = f"ledger_{next(self._numbers)}"
        database = self._administered()
        database.run(f"CREATE DATABASE {name}")
        database.close()
        return f"postgresql://{USER}@/{name}?host={self.folder}"

    def _answers(self) -> bool:
        with contextlib.suppress(StoreUnreachableError):
            self._administered().close()
            return True
        return False

    def _administered(self) -> PostgresDatabase:
        address = read_address(f"postgresql://{USER}@/postgres?host={self.folder}")
        return PostgresDatabase(address)


@contextlib.contextmanager
def running_server(*, fsync: bool = False) -> Iterator[Server]:
    """A server from here to the end; AssertionError says what to install where there is none."""
    found = found_postgres_folder()
    assert found is not None, postgres_problem(None)
    servant = _servant() if os.geteuid() == 0 else None
    # Not below the folder of the tests, which only their own user may enter. A short path: the
    # system takes no socket with a long one.
    folder = Path(tempfile.mkdtemp(prefix="backspan-"))
    server = Server(folder, Path(found), servant, fsync)
    try:
        if servant is not None:
            shutil.chown(folder, servant)
        _run([server.programs / "initdb", "-D", folder / "data", "-U", USER], server)
        server.start()
        yield server
    finally:
        server.stop()
        shutil.rmtree(folder)


def _children(parent: int) -> list[int]:
    """The processes that a process started and that run."""
    found = []
    for status in Path("/proc").glob("[0-9]*/stat"):
        with contextlib.suppress(FileNotFoundError, ProcessLookupError):
            # Behind the name, which may hold anything: state and parent.
            _, _, rest = status.read_text(encoding="utf-8").rpartition(")")
            if int(rest.split()[1]) == parent:
                found.append(int(status.parent.name))
    return found


def _servant() -> str:
    there = {one.pw_name for one in pwd.getpwall()}
    return next(name for name in SERVANTS if name in there)


def _run(command: Sequence[str | Path], server: Server) -> None:
    switches = ["--auth=trust", "--no-sync", "--encoding=UTF8", "--locale=C"]
    run = subprocess.run(
        [*command, *switches],
        cwd=server.folder,
        capture_output=True,
        text=True,
        check=False,
        user=server.servant,
    )
    assert run.returncode == 0, run.stderr
