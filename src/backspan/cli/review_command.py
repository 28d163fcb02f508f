"""`backspan review`: the main job, from a project file to an answer for every drop."""

from __future__ import annotations

import datetime
from collections.abc import Iterable, Iterator, Sequence
from contextlib import ExitStack, closing
from pathlib import Path
from typing import TYPE_CHECKING

import click

from backspan.cli.site_source import DATABASE, FORM, ON, day, language_option, project_at
from backspan.cli.status import status_of
from backspan.core.errors import quoted

if TYPE_CHECKING:
    from backspan.cli.package import Package
    from backspan.core.findings import Review
    from backspan.core.model.project import Project
    from backspan.core.review.asked import Asked
    from backspan.core.review.plain import Data
    from backspan.core.rules.selected import RuleLibrary
    from backspan.core.words import Language

HELP = """\
Review the drops of a project file: may each rig carry people, as far as backspan can tell.

FILE is the project file (YAML): the site, the kit, each drop's rig as it was measured, and who
stated what. It may also be the folder of a record, or its archive: then the site as it stood at the
end of the day. Every drop is answered pass, fail, refer (a named person must decide) or missing
(something is not known). A line for each drop, the worst first, then what is refused with what
mends it, what is open with who must settle it, and what was not judged. With --out the review of
the contractor's rig and a paper for each drop (PDF), the drawings (SVG and DXF) and the review as
data (JSON) are written to a new folder in FOLDER; current.txt there names the set in force.

\b
Examples:
  backspan review site.yaml
  backspan review site.yaml --drop S4 --worked
  backspan review site.yaml --out out
  backspan review site.yaml --rules us-wa-wac-296-874@2007

Exit status: 0 every drop passes, 10 one fails, 11 one is undecided (missing or refer) and none
fails, 2 bad input or usage, 130 stopped by the keyboard.
"""


@click.command("review", help=HELP, short_help="Review the drops of a project file.")
@click.argument("file", type=click.Path(path_type=Path))
@click.option(
    "--drop",
    "drops",
    multiple=True,
    metavar="DROP",
    help="Review this drop only; may be given again.",
)
@click.option(
    "--rules",
    "rule_sets",
    multiple=True,
    metavar="SET[@EDITION]",
    help="Use this rule set in place of the project's own; may be given again.",
)
@click.option("--worked", is_flag=True, help="Tell every finding with its inputs and arithmetic.")
@click.option("--compare", is_flag=True, help="Tell the counterweight under other rule sets too.")
@click.option(
    "--against",
    multiple=True,
    metavar="SET",
    help="Compare with this rule set in place of all that apply; may be given again.",
)
@click.option("--envelope", is_flag=True, help="Tell how far out the pieces that are there hold.")
@language_option(of="sentences and papers")
@FORM
@click.option(
    "--out",
    type=click.Path(path_type=Path),
    metavar="FOLDER",
    help="Also write the package, the drawings and the data to this folder.",
)
@ON
@DATABASE
def command(
    *,
    file: Path,
    drops: tuple[str, ...],
    rule_sets: tuple[str, ...],
    worked: bool,
    compare: bool,
    against: tuple[str, ...],
    envelope: bool,
    code: str,
    form: str,
    out: Path | None,
    on: datetime.datetime | None,
    database: str | None,
) -> int:
    """Load, review, write, print; the exit status of the worst answer."""
    from backspan.core.review.asked import Asked
    from backspan.core.review.naming import rule_choice
    from backspan.core.words import language_of
    from backspan.exchange.files import load_rule_library
    from backspan.exchange.output_set import refuse_unwritable

    if out is not None:
        refuse_unwritable(out)
    library = load_rule_library()
    asked_day = day(on)
    project = project_at(file, library, on=asked_day, database=database)
    named = tuple(rule_choice(name, library).rule_set for name in against)
    asked = Asked(worked=worked, compare=compare, against=named, envelope=envelope)
    whole = out is not None or form == "json"
    made = reviews_of(
        project,
        drops,
        rule_sets,
        library,
        on=asked_day,
        compared=whole or asked.beyond,
        in_short=not (whole or asked.more),
    )
    return _told(project, made, asked, language_of(code), as_json=form == "json", out=out)


def _told(
    project: Project,
    made: Iterable[Review],
    asked: Asked,
    language: Language,
    *,
    as_json: bool,
    out: Path | None,
) -> int:
    """Write and print each review as it is made; the exit status of the worst answer."""
    from backspan.cli.review_text import ReviewText
    from backspan.cli.screen import put, screen_of
    from backspan.core.findings import Verdict
    from backspan.core.review.front import front_data
    from backspan.core.review.report import (
        formula_descriptions,
        report_text,
        review_data,
        reviews_text,
    )
    from backspan.core.review.topics import worst

    formulas = formula_descriptions()
    text = ReviewText(project, screen_of(), asked, language)
    fronts: list[Data] = []
    reports: list[str] = []
    with ExitStack() as stack:
        package = None
        for review in made:
            front = front_data(review, language)
            fronts.append(front)
            if not (as_json or out is not None or asked.more):
                continue
            document = review_data(review, formulas=formulas, language=language, front=front)
            if out is not None:
                package = package or _package(project, out, asked, language, stack)
                package.add(review, document)
            if as_json or out is not None:
                reports.append(report_text(document))
            if not as_json:
                text.add(document)
        verdict = worst([Verdict(one["verdict"]) for one in fronts])
        whole = reviews_text(verdict, reports)
        if package is not None and out is not None:
            text.written = package.finish(fronts, whole)
    put(whole.encode("utf-8") if as_json else text.whole(fronts))
    return status_of(verdict)


def _package(
    project: Project, out: Path, asked: Asked, language: Language, stack: ExitStack
) -> Package:
    """The set that is written to a folder; what it needs is closed with the stack."""
    from backspan.cli.package import Package
    from backspan.exchange.output_set import OutputSet
    from backspan.papers import Typesetter

    into = stack.enter_context(OutputSet(out))
    return Package(project, into, stack.enter_context(closing(Typesetter())), asked, language)


def reviews_of(
    project: Project,
    drops: Sequence[str],
    rule_sets: Sequence[str],
    library: RuleLibrary,
    *,
    on: datetime.date,
    compared: bool = True,
    in_short: bool = False,
) -> Iterator[Review]:
    """The reviews of the drops named, else of all, in the project's order, one at a time.

    Raises a usage error for a drop the project does not have.
    """
    from backspan.core.review import reviews
    from backspan.core.review.naming import rule_choice, suggested

    basis = [rule_choice(name, library) for name in rule_sets] or None
    there = [drop.id for drop in project.drops]
    for name in drops:
        if name not in there:
            meant = suggested(name, there, what="drops")
            raise click.UsageError(f"the project has no drop {quoted(name)}; {meant}")
    wanted = [name for name in there if not drops or name in drops]
    return reviews(
        project, wanted, library, on=on, basis=basis, compared=compared, in_short=in_short
    )
