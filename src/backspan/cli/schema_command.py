"""`backspan schema`: the JSON Schema of the project file."""

from __future__ import annotations

import click

from backspan.cli.status import Status

HELP = """\
Print the JSON Schema of the project file.

Give it to your editor and it checks and completes the file as you type.

\b
Example:
  backspan schema > backspan.schema.json
"""


@click.command("schema", help=HELP)
def command() -> int:
    """Print the schema."""
    from backspan.cli.screen import put
    from backspan.core.review.report import report_text
    from backspan.exchange.parse.schema import project_schema

    put(report_text(project_schema()).encode("utf-8"))
    return Status.PASS
