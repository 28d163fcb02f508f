"""Runs the command line: every error ends as a plain text on standard error and a status."""

from __future__ import annotations

import os
import sys
import traceback
from collections.abc import Sequence

import click

from backspan.cli.app import app
from backspan.cli.screen import open_closed_streams
from backspan.cli.status import Status
from backspan.core.errors import BackspanError

PROGRAM = "backspan"
TRACEBACK = "BACKSPAN_TRACEBACK"


def run(arguments: Sequence[str] | None = None) -> int:
    """Run on `arguments` (else the process's own) and return the exit status."""
    open_closed_streams()
    try:
        result = app.main(
            args=None if arguments is None else list(arguments),
            prog_name=PROGRAM,
            standalone_mode=False,
        )
    except click.ClickException as error:
        return _refused(_usage_text(error))
    except click.Abort:
        _say("stopped")
        return Status.STOPPED
    except BackspanError as error:
        if _is_our_fault(error):
            return _internal(error)
        return _refused(_text(error))
    except OSError as error:
        return _refused(_system_text(error))
    except Exception as error:  # noqa: BLE001 - the last resort: nobody shall read a traceback
        return _internal(error)
    return result if isinstance(result, int) else Status.PASS


def _refused(text: str) -> Status:
    _say(text)
    return Status.USAGE


def _text(error: BackspanError) -> str:
    from backspan.exchange.parse.problems import ProjectError

    if not isinstance(error, ProjectError):
        return str(error)
    several = "s" if len(error.problems) > 1 else ""
    return f"{len(error.problems)} problem{several} in what was read\n{error}"


def _system_text(error: OSError) -> str:
    from backspan.exchange.files import reason_of

    where = "" if error.filename is None else f"{error.filename}: "
    return f"{where}{reason_of(error)}; expected files and outputs that can be read and written"


def _usage_text(error: click.ClickException) -> str:
    text = error.format_message()
    if isinstance(error, click.UsageError) and error.ctx is not None:
        text += f"\nFor help: {error.ctx.command_path} --help"
    return text


def _is_our_fault(error: BackspanError) -> bool:
    """Whether an error tells of the program, not of what it was given."""
    from backspan.core.words import WordsError
    from backspan.core.worked.expression import WorkedError
    from backspan.drawings import DrawingError
    from backspan.papers import PaperError

    return isinstance(error, WordsError | WorkedError | DrawingError | PaperError)


def _internal(error: Exception) -> Status:
    if os.environ.get(TRACEBACK) == "1":
        traceback.print_exception(error, file=sys.stderr)
        return Status.INTERNAL
    from backspan.core.version import PROGRAM as VERSION

    _say(
        "something is wrong with this program, not with what you gave it. Sorry.\n"
        "No answer was given: do not read one into what was printed before.\n"
        "Please report it with these lines, the command you typed and, if you may,\n"
        "the project file:\n"
        f"  {VERSION}, Python {sys.version.split()[0]} on {sys.platform}\n"
        f"  {type(error).__name__}: {_short(str(error))}\n"
        f"Run it again with {TRACEBACK}=1 set to see where it went wrong."
    )
    return Status.INTERNAL


def _short(text: str) -> str:
    line = " ".join(text.split())
    return line if len(line) <= _LONGEST else line[:_LONGEST] + "..."


_LONGEST = 300


def _say(text: str) -> None:
    from backspan.cli.screen import put_error

    put_error(f"{PROGRAM}: {text}")
