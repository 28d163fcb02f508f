"""The text files of the repository: those that git tracks and those it would track."""

from __future__ import annotations

import subprocess
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from tests.architecture.source import ROOT


@dataclass(frozen=True)
class TextFile:
    """A file of the repository by its path from the root, and its text."""

    place: str
    text: str


def tracked_paths() -> list[Path]:
    """Every file that git tracks, and every new one that it does not ignore."""
    listed = subprocess.run(
        ["git", "ls-files", "-z", "--cached", "--others", "--exclude-standard"],
        cwd=ROOT,
        check=True,
        capture_output=True,
        text=True,
    ).stdout
    return sorted(ROOT / name for name in set(listed.split("\0")) if name)


def text_files() -> Iterator[TextFile]:
    """Those of the files that hold text."""
    for path in tracked_paths():
        if not path.is_file():  # removed, and git not told yet
            continue
        content = path.read_bytes()
        if b"\0" in content:
            continue
        yield TextFile(path.relative_to(ROOT).as_posix(), content.decode("utf-8"))
