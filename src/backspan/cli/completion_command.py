"""`backspan completion`: what a shell needs to complete commands, topics and rule sets."""

from __future__ import annotations

import click
from click.shell_completion import ShellComplete, get_completion_class

from backspan.cli.status import Status

SHELLS = ("bash", "zsh", "fish")
VARIABLE = "_BACKSPAN_COMPLETE"

HELP = """\
Print what makes the Tab key complete backspan's commands in your shell.

\b
Examples (bash and zsh: put the line into ~/.bashrc or ~/.zshrc to keep it):
  eval "$(backspan completion bash)"
  eval "$(backspan completion zsh)"
  backspan completion fish | source
"""


@click.command("completion", help=HELP, short_help="Print what makes Tab complete commands.")
@click.argument("shell", type=click.Choice(SHELLS))
def command(shell: str) -> int:
    """Print the completion script of a shell."""
    from backspan.cli.app import app
    from backspan.cli.screen import put

    found = get_completion_class(shell)
    if found is None:
        raise click.UsageError(f"there is no completion for {shell}")
    # The base class's text: bash's own would first start a bash to ask its version.
    text = ShellComplete.source(found(app, {}, "backspan", VARIABLE))
    put((text + "\n").encode("utf-8"))
    return Status.PASS
