"""A review as text for a terminal: the drops in a table, then what is open."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from pathlib import Path

from backspan.cli.finding_text import drop_text, open_text
from backspan.cli.screen import Screen
from backspan.core.findings import Verdict
from backspan.core.model.project import Project
from backspan.core.review.plain import Data
from backspan.core.sheet.moments import TOPIC
from backspan.core.words import english
from backspan.exchange.output_set import INDEX

_INDENT = 2
#: Below this many columns there is no table.
_NARROW = 72


@dataclass(slots=True)
class ReviewText:
    """The whole text; `detailed` shows every finding of the drops with its arithmetic.

    Drops are added one at a time, so that of each only its lines are kept.
    """

    project: Project
    screen: Screen
    detailed: bool
    written: Path | None = None
    """The set that was written, if any."""
    parts: list[str] = field(default_factory=list)

    def add(self, review: Data) -> None:
        """Lay out what is told of one drop."""
        if self.detailed:
            self.parts += ["", drop_text(review, self.screen)]
        elif review["verdict"] != Verdict.PASS:
            self.parts += ["", open_text(review, self.screen)]

    def whole(self, fronts: Sequence[Data]) -> str:
        """All of it; `fronts` are the `front_data` of the drops that were added."""
        screen = self.screen
        parts = [*_header(self.project, fronts, screen), ""]
        if fronts:
            parts.append(_drops(fronts, screen))
        else:
            parts.append("The project has no drops: there is nothing to answer.")
        parts += [*self.parts, "", *_who_may(fronts, screen), *_cautions(screen)]
        if self.written is not None:
            parts += ["", *_files(self.written, screen)]
        return "\n".join(parts) + "\n"


def _header(project: Project, reviews: Sequence[Data], screen: Screen) -> Iterator[str]:
    site = project.site
    yield screen.paragraph(f"{site.name}, {site.place}")
    if site.invented:
        yield screen.paragraph(site.invented)
    for review in reviews[:1]:
        yield screen.paragraph(f"Reviewed on {review['on']} by {review['program']}")
    names = _basis(reviews)
    if names:
        yield screen.paragraph(f"Basis: {', '.join(names)}", hanging=len("Basis: "))


def _basis(reviews: Sequence[Data]) -> list[str]:
    """The rule sets with their editions: first what tipping is held against, then the rest."""
    lines = [
        (f"{line['rule_set']} {line['edition']}", line)
        for review in reviews
        for line in review["basis"]
    ]
    counts = Counter(name for name, _ in lines)
    topics = {name: line["topic"] for name, line in reversed(lines)}
    ordered = sorted(counts, key=lambda name: (topics[name] != TOPIC, -counts[name]))
    return [name if counts[name] == len(reviews) else f"{name} (some drops)" for name in ordered]


def _drops(reviews: Sequence[Data], screen: Screen) -> str:
    """A row a drop; on a narrow screen a paragraph: a column of single letters tells nothing."""
    if screen.width < _NARROW:
        return "\n".join(line for review in reviews for line in _drop_lines(review, screen))
    table = screen.table("drop", "answer", "counterweight", "what governs", "configuration")
    for column in (table.columns[0], table.columns[2], table.columns[4]):
        column.no_wrap = True
    for number, review in enumerate(reviews, 1):
        table.add_row(
            review["drop"],
            screen.answer(Verdict(review["verdict"]), review["answer"]),
            screen.coloured(Verdict(review["counterweight"])),
            _governs(review),
            review["configuration"],
            end_section=number < len(reviews),
        )
    return screen.drawn(table)


def _drop_lines(review: Data, screen: Screen) -> Iterator[str]:
    verdict = Verdict(review["verdict"])
    beside = review["answer"].removeprefix(str(verdict))
    yield screen.paragraph(f"{review['drop']}  {screen.verdict(verdict)}{beside}", hanging=_INDENT)
    of_counterweight = screen.verdict(Verdict(review["counterweight"]))
    yield screen.paragraph(f"counterweight: {of_counterweight}", indent=_INDENT)
    for line in _governs(review).splitlines():
        yield screen.paragraph(line, indent=_INDENT)
    yield screen.paragraph(review["configuration"], indent=_INDENT)


def _governs(review: Data) -> str:
    """The governing sentence; below it the margin that is told beside the answer."""
    finding = review["finding"]
    if review["why_open"] is not None:
        return str(review["why_open"])
    if finding is None:
        return "nothing was found"
    share, margin = finding["utilisation"], review["margin"]
    used = "" if share is None else f"{share['text']} used. "
    said = f"{used}{finding['message']['text']}"
    return said if margin is None else f"{said}\n{margin}"


def _who_may(reviews: Sequence[Data], screen: Screen) -> Iterator[str]:
    """Who may judge, in writing, what this version does not: once for all drops."""
    who: dict[tuple[str, ...], dict[str, None]] = {}
    for review in reviews:
        for one in review["topics"]:
            if one["not_judged"]:
                who.setdefault(tuple(one["who"]), {})[one["topic"]] = None
    if who:
        head = "Not judged by this version; a person may take it over in writing:"
        yield screen.paragraph(head)
    for roles, topics in who.items():
        text = f"{', '.join(topics)}: {' or '.join(roles)}"
        yield screen.paragraph(text, indent=_INDENT, hanging=2 * _INDENT)


def _cautions(screen: Screen) -> Iterator[str]:
    yield "Cautions:"
    for text in english.CAUTIONS:
        yield screen.paragraph(text, indent=_INDENT, hanging=2 * _INDENT)


def _files(written: Path, screen: Screen) -> Iterator[str]:
    count = sum(1 for _ in written.iterdir())
    told = f"Written to {written}: package.pdf, a paper for each drop, drawings and data"
    yield screen.paragraph(f"{told}, {count} files. {written.parent / INDEX} names this set.")
