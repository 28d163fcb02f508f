"""Write docs/commands.md: the help of every command, as it is printed.

Run it after any change to the command line: `python tools/write_commands_page.py`.
"""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import click

from backspan.cli.app import app

PAGE = Path(__file__).resolve().parent.parent / "docs" / "commands.md"
WIDTH = 80

OPENING = """\
# The commands

This page is written by `tools/write_commands_page.py` from the commands' own help; change the
commands, not the page. Values are typed with their unit: `4ft`, `11ft6in`, `66.5in`, `1.69m`,
`1000lb`, `6.2kN`, `500kg`. [json-review.md](json-review.md) describes what `--format json` prints.

| exit status | means |
|---|---|
| 0 | every drop passes; a number was worked out |
| 10 | a drop fails |
| 11 | undecided: something is missing, or a person must decide |
| 2 | the input or the command cannot be used as it is |
| 70 | something is wrong with the program: no answer was given |

No other status than 0 is a pass. An answer supports the judgement of a qualified or licensed
person; local codes come first.

Set `NO_COLOR` for text without colour, `BACKSPAN_TRACEBACK=1` to see where an internal error came
from.
"""


def page() -> str:
    """The whole page."""
    sections = [OPENING]
    for path, text in helps():
        sections.append(f"## {' '.join(path)}\n\n```text\n{text}```\n")
    return "\n".join(sections)


def helps() -> Iterator[tuple[tuple[str, ...], str]]:
    """Each command by its words, with its help."""
    yield from _helps(app, ("backspan",), None)


def _helps(
    command: click.Command, path: tuple[str, ...], above: click.Context | None
) -> Iterator[tuple[tuple[str, ...], str]]:
    context = command.make_context(
        path[-1], [], parent=above, resilient_parsing=True, terminal_width=WIDTH
    )
    text = command.get_help(context)
    yield path, "\n".join(line.rstrip() for line in text.splitlines()) + "\n"
    if isinstance(command, click.Group):
        for name in command.list_commands(context):
            inner = command.get_command(context, name)
            if inner is not None:
                yield from _helps(inner, (*path, name), context)


if __name__ == "__main__":
    PAGE.write_text(page(), encoding="utf-8")
