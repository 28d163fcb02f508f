"""`backspan standing`: which drops may carry people on a day, by the record, and why not."""

from __future__ import annotations

import datetime
from collections.abc import Iterator
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from backspan.cli.site_source import DATABASE, FORM, ON, day, entries_at, language_option
from backspan.cli.status import Status
from backspan.core.errors import quoted

if TYPE_CHECKING:
    from backspan.cli.screen import Screen
    from backspan.core.words import Language

HELP = """\
Tell which drops are in service on a day by the record, and why the others are not.

A drop is in service when its lines were seen connected by two people, it was accepted as it stands
there, nothing was stopped, changed, disputed or run out since, and a shift check of the day found
it fit. The record holds what people stated: it does not look at the roof.

\b
Examples:
  backspan standing record
  backspan standing record --drop S1 --on 2026-11-25
  backspan standing site.tar --format json

Exit status: 0 every drop asked about is in service, 11 one is not, 2 bad input or usage.
"""


@click.command("standing", help=HELP, short_help="Tell which drops are in service on a day.")
@click.argument("record", type=click.Path(path_type=Path))
@click.option(
    "--drop", "drops", multiple=True, metavar="DROP", help="This drop only; may be given again."
)
@ON
@language_option(of="sentences")
@FORM
@DATABASE
def command(
    *,
    record: Path,
    drops: tuple[str, ...],
    on: datetime.datetime | None,
    code: str,
    form: str,
    database: str | None,
) -> int:
    """Fold the record to the day and tell."""
    from backspan.cli.screen import put, screen_of
    from backspan.core.ledger.day_told import day_data
    from backspan.core.review.naming import suggested
    from backspan.core.review.report import report_text
    from backspan.core.words import language_of
    from backspan.exchange.files import load_rule_library

    language = language_of(code)
    entries = entries_at(record, database=database)
    told = day_data(entries, load_rule_library(), on=day(on), language=language)
    there = [one["drop"] for one in told["drops"]]
    for name in drops:
        if name not in there:
            meant = suggested(name, there, what="drops")
            raise click.UsageError(f"the record has no drop {quoted(name)}; {meant}")
    if drops:
        told["drops"] = [one for one in told["drops"] if one["drop"] in drops]
        told["in_service"] = len([one for one in told["drops"] if one["in_service"]])
    as_json = form == "json"
    put(report_text(told).encode("utf-8") if as_json else _text(told, screen_of(), language))
    every = told["drops"] and all(one["in_service"] for one in told["drops"])
    return Status.PASS if every else Status.UNDECIDED


def _text(told: dict[str, Any], screen: Screen, language: Language) -> str:
    lines = [
        language.phrase(
            "record-in-service",
            site=told["site"],
            on=told["on"],
            count=str(told["in_service"]),
            all=str(len(told["drops"])),
        )
    ]
    for one in told["drops"]:
        lines += _drop(one, screen, language)
    beside = [*told["refused"], *told["clocks"], language.note, told["caution"]]
    lines += ["", *(screen.paragraph(one) for one in beside if one)]
    return "\n".join(lines) + "\n"


def _drop(one: dict[str, Any], screen: Screen, language: Language) -> Iterator[str]:
    yield ""
    yield screen.paragraph(f"{one['drop']}  {one['state_text']}. {one['text']}", hanging=4)
    restricted = (language.phrase("record-restricted", line=line) for line in one["restrictions"])
    for line in (*one["reasons"], *restricted, *one["refused"]):
        yield screen.paragraph(line, indent=4)
    if one["permit"]:
        at = f"{one['permit']} - {one['permit_by']}, {one['permit_at']}"
        yield screen.paragraph(at, indent=4, hanging=6)
