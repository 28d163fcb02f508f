"""The only room that opens files: projects, confirmations and rule sets in, results out."""

from __future__ import annotations

import contextlib
import os
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING, TypeVar

from backspan.core.errors import BackspanError
from backspan.core.model.basis import Confirmation
from backspan.core.model.project import Project
from backspan.core.rules.selected import RuleLibrary

if TYPE_CHECKING:
    from backspan.exchange.drawings_in import DrawingUnit, DrawnIn
    from backspan.exchange.tables import Table

T = TypeVar("T")


class FileError(BackspanError, OSError):
    """A file or folder that cannot be used as asked: which one, why, and what would do."""

    def __init__(self, path: Path, *, found: str, expected: str) -> None:
        self.path = path
        self.found = found
        self.expected = expected
        super().__init__(f"{path}: {found}; expected {expected}")


def load(path: Path | str, library: RuleLibrary | None = None) -> Project:
    """The project written in the file at `path`, whose rule sets are in `library`.

    Without one they are those that come with the program.
    Raises FileError where there is no file to read, and ProjectError, with every problem and its
    place, where the file is no sound project.
    """
    from backspan.exchange.parse import parse_project

    def parse(text: str, origin: str) -> Project:
        return parse_project(text, origin, load_rule_library() if library is None else library)

    return _parsed(Path(path), parse)


def load_confirmations(path: Path | str) -> tuple[Confirmation, ...]:
    """The confirmations of rule values that an office keeps in the file at `path`.

    Raises FileError and ProjectError as `load` does.
    """
    from backspan.exchange.parse import parse_confirmations

    return _parsed(Path(path), parse_confirmations)


def load_rule_library() -> RuleLibrary:
    """Every rule set that comes with the program, in the order of text and edition.

    Raises RuleError where one of them is not as it must be.
    """
    from importlib import resources

    from backspan.core.rules.loader import load as load_rule_set

    folders = sorted(
        (folder for folder in resources.files("backspan.rulesets").iterdir() if folder.is_dir()),
        key=lambda folder: folder.name,
    )
    files = [
        (f"{folder.name}/{file.name}", file)
        for folder in folders
        for file in sorted(folder.iterdir(), key=lambda file: file.name)
        if file.name.endswith(".toml")
    ]
    return RuleLibrary(
        tuple(load_rule_set(file.read_text(encoding="utf-8"), origin) for origin, file in files)
    )


def load_table(path: Path, what: str) -> Table:
    """The table in the file at `path`, of a workbook the sheet called `what`, or its only one.

    Raises FileError where there is no file to read, TableError with every problem of its cells.
    """
    from backspan.exchange.tables import MOST_BYTES, read_table

    return read_table(_content(path, MOST_BYTES, "a table that can be read"), path.name, what)


def load_drawing(path: Path, units: DrawingUnit | None = None) -> DrawnIn:
    """The drawing in the DXF file at `path`, in metres; `units` is what the caller says of it.

    Raises FileError where there is no file to read, DrawingError with all that is wrong in it.
    """
    from backspan.exchange.drawings_in import MOST_BYTES, read_drawing

    content = _content(path, MOST_BYTES, "a drawing that can be read")
    return read_drawing(content, path.name, units=units)


def write_text(path: Path, content: str) -> None:
    """Write `content` to `path` in UTF-8: whole, or not at all. Lines end as they are given.

    Raises FileError, and leaves what was there, where it cannot be written.
    """
    write_bytes(path, content.encode("utf-8"))


def write_bytes(path: Path, content: bytes) -> None:
    """Write `content` to `path`: whole, or not at all.

    Raises FileError, and leaves what was there, where it cannot be written.
    """
    part = path.parent / f".{_token()}.part"
    try:
        with part.open("xb") as file:
            file.write(content)
            file.flush()
            os.fsync(file.fileno())
        part.replace(path)
    except OSError as error:
        _discard(part)
        expected = "a file that can be written"
        raise FileError(path, found=reason_of(error), expected=expected) from error
    except BaseException:
        _discard(part)
        raise


def _parsed(path: Path, parse: Callable[[str, str], T]) -> T:
    from backspan.exchange.parse.text import MOST_BYTES, decoded

    return parse(
        decoded(_content(path, MOST_BYTES, "a text file that can be read"), str(path)), str(path)
    )


def _content(path: Path, most: int, expected: str) -> bytes:
    """The bytes of a file, and no more of a huge one than shows that it is too large."""
    try:
        if path.is_dir():
            found = "a folder"
        elif path.exists() and not path.is_file():
            found = "no ordinary file"
        else:
            with path.open("rb") as file:
                return file.read(most + 1)
    except (OSError, ValueError) as error:
        raise FileError(path, found=reason_of(error), expected=expected) from error
    raise FileError(path, found=found, expected=expected)


def _token() -> str:
    """A name that nothing else has."""
    return os.urandom(8).hex()


def _discard(part: Path) -> None:
    # Whatever stopped the writing is what the caller is told, not that tidying up failed too.
    with contextlib.suppress(OSError):
        part.unlink()


def reason_of(error: OSError | ValueError) -> str:
    """Why the system refused, in its own words and without its numbers."""
    if isinstance(error, FileNotFoundError):
        return "no such file or folder"
    words = getattr(error, "strerror", None) or str(error)
    return str(words).lower()
