"""`backspan ask`: one question of the roof, answered without a project file."""

from __future__ import annotations

import datetime
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from backspan.cli.app import SuggestingGroup
from backspan.cli.status import Status, status_of

if TYPE_CHECKING:
    from backspan.core.ask import Topic

HELP = """\
Answer one question of the roof from a few values.

Write each value as name=value with its unit and without quotes: reach=4ft backspan=11ft6in
piece=55lb. Without a topic the topics are listed, each with an example. Nothing is measured here:
you vouch for the values. The review of a project file judges evidence; this does not.

\b
Examples:
  backspan ask counterweight rated=1000lb stall=1250lb reach=4ft backspan=11ft6in piece=55lb
  backspan ask counterweight --help
"""

TOPIC_HELP = """\
{question}

\b
Example:
  backspan ask {topic} {example}
"""


class Topics(SuggestingGroup):
    """The topics as commands, made from their register."""

    called = "topic"

    def list_commands(self, ctx: click.Context) -> list[str]:  # noqa: ARG002 - click's own form
        """The topics, in the order of the register."""
        from backspan.core.ask import TOPICS

        return [topic.id for topic in TOPICS]

    def get_command(
        self,
        ctx: click.Context,  # noqa: ARG002 - click's own form
        cmd_name: str,
    ) -> click.Command | None:
        """The command that asks a topic."""
        from backspan.core.ask import TOPICS

        return next((_asking(topic) for topic in TOPICS if topic.id == cmd_name), None)


class TopicCommand(click.Command):
    """A topic, whose help also lists the values it takes."""

    def __init__(self, topic: Topic, **settings: Any) -> None:
        """A command that asks `topic`."""
        super().__init__(**settings)
        self.topic = topic

    def format_options(self, ctx: click.Context, formatter: click.HelpFormatter) -> None:
        """The values that are needed, those that are not, then the options."""
        for title, needed in (("Values", True), ("Values that may be left out", False)):
            rows = [
                (f"{one.name}={one.typed}", one.help)
                for one in self.topic.parameters
                if one.needed is needed
            ]
            if rows:
                with formatter.section(title):
                    formatter.write_dl(rows)
        super().format_options(ctx, formatter)


@click.group(
    "ask",
    cls=Topics,
    help=HELP,
    invoke_without_command=True,
    subcommand_metavar="[TOPIC [NAME=VALUE]...]",
)
@click.pass_context
def command(context: click.Context) -> int:
    """List the topics where none is named."""
    if context.invoked_subcommand is None:
        from backspan.cli.ask_text import topics_text
        from backspan.cli.screen import put

        put(topics_text())
    return Status.PASS


def _asking(topic: Topic) -> click.Command:
    def ask(values: tuple[str, ...], **options: Any) -> int:
        return answer_question(topic, values, **options)

    return TopicCommand(
        topic,
        name=topic.id,
        callback=ask,
        help=TOPIC_HELP.format(question=topic.question, topic=topic.id, example=topic.example),
        short_help=topic.question,
        params=[
            click.Argument(["values"], nargs=-1, metavar="NAME=VALUE..."),
            click.Option(
                ["--format", "form"],
                type=click.Choice(["text", "json"]),
                default="text",
                show_default=True,
                help="How to print the answer.",
            ),
            click.Option(
                ["--worked"],
                is_flag=True,
                help="Also the numbers, the arithmetic, every rule and every caution.",
            ),
            click.Option(
                ["--style"],
                type=click.Choice(["us", "metric"]),
                help="Units of the answer; without it, those of the values.",
            ),
            click.Option(
                ["--confirmations"],
                type=click.Path(path_type=Path),
                help="File of rule values that your office found in its own copy of the text.",
            ),
        ],
    )


def answer_question(
    topic: Topic,
    values: tuple[str, ...],
    *,
    form: str,
    worked: bool,
    style: str | None,
    confirmations: Path | None,
) -> int:
    """Read the values, answer, print; the exit status of the answer."""
    from backspan.cli.ask_text import answer_text, short_text
    from backspan.cli.screen import put, screen_of
    from backspan.cli.units import style_of
    from backspan.core.ask import answer, read_values
    from backspan.core.ask.report import answer_data
    from backspan.core.review.report import formula_descriptions, report_text
    from backspan.core.words import say_margins
    from backspan.exchange.files import load_confirmations, load_rule_library

    given = read_values(topic, values)
    units = style_of(style, values)
    found = answer(
        topic,
        given,
        load_rule_library(),
        style=units,
        on=datetime.datetime.now().astimezone().date(),
        confirmations=() if confirmations is None else load_confirmations(confirmations),
    )
    data = answer_data(topic, given, found, style=units, formulas=formula_descriptions())
    if form == "json":
        put(report_text(data).encode("utf-8"))
    elif worked:
        put(answer_text(data, say_margins(found.margins, units), screen_of()))
    else:
        put(short_text(data, screen_of()))
    return status_of(found.verdict)
