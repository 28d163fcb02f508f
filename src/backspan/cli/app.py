"""The commands by name; each is imported only when it is asked for."""

from __future__ import annotations

import importlib
from typing import Any

import click

from backspan.core.errors import quoted
from backspan.core.model.identifiers import did_you_mean
from backspan.core.version import VERSION

#: Command to the module that holds it as `command`, in the order they are listed.
COMMANDS = {
    "review": "backspan.cli.review_command",
    "ask": "backspan.cli.ask_command",
    "rules": "backspan.cli.rules_command",
    "schema": "backspan.cli.schema_command",
    "import": "backspan.cli.import_command",
    "serve": "backspan.cli.serve_command",
    "standing": "backspan.cli.standing_command",
    "export": "backspan.cli.export_command",
    "ledger": "backspan.cli.ledger_command",
    "backup": "backspan.cli.backup_command",
    "restore": "backspan.cli.restore_command",
    "recheck": "backspan.cli.recheck_command",
    "completion": "backspan.cli.completion_command",
}


class SuggestingGroup(click.Group):
    """A group that answers a misspelled name with what was meant."""

    #: What the names of the group are, for messages.
    called = "command"

    def resolve_command(
        self, ctx: click.Context, args: list[str]
    ) -> tuple[str | None, click.Command | None, list[str]]:
        """The command named first, or an error that suggests one."""
        name = args[0]
        if self.get_command(ctx, name) is None and not name.startswith("-"):
            names = self.list_commands(ctx)
            meant = did_you_mean(name, names) or f"{self.called}s: {', '.join(names)}"
            raise click.UsageError(f"there is no {self.called} {quoted(name)}; {meant}", ctx)
        return super().resolve_command(ctx, args)


class LazyGroup(SuggestingGroup):
    """The commands of the program, imported when they are used or listed."""

    def list_commands(self, ctx: click.Context) -> list[str]:  # noqa: ARG002 - click's own form
        """The names, in the order of use."""
        return list(COMMANDS)

    def get_command(
        self,
        ctx: click.Context,  # noqa: ARG002 - click's own form
        cmd_name: str,
    ) -> click.Command | None:
        """The command of that name."""
        module = COMMANDS.get(cmd_name)
        if module is None:
            return None
        found: Any = importlib.import_module(module)
        command: click.Command = found.command
        return command


HELP = """\
Check the counterweight rigging of a two-point suspended scaffold.

Backspan reads what was measured on the roof, checks it against a rule set you name, and answers
each drop with one of four words: pass, fail, refer (a person must decide) or missing (something
is not known). It supports a qualified or licensed person and replaces nobody.

\b
The main job:
  backspan review site.yaml --out out
One question, without a project file:
  backspan ask counterweight rated=1000lb reach=4ft backspan=11ft6in piece=55lb
"""


@click.group(
    cls=LazyGroup,
    help=HELP,
    context_settings={"help_option_names": ["-h", "--help"]},
    epilog=(
        "Exit status: 0 pass, 10 fail, 11 undecided (missing or refer), 2 bad input or usage,"
        " 70 internal error."
    ),
)
@click.version_option(VERSION, prog_name="backspan", message="%(prog)s %(version)s")
def app() -> None:
    """The command line; each command answers with its exit status."""
