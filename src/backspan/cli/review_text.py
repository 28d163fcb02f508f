"""A review as text for a terminal: the drops in a table, then what is open."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from pathlib import Path

from backspan.cli.finding_text import drop_text, open_text
from backspan.cli.screen import Screen
from backspan.core.findings import Verdict
from backspan.core.model.project import Project
from backspan.core.review.plain import Data
from backspan.core.sheet.moments import TOPIC
from backspan.core.words import english

_INDENT = 2
#: More files than this are told by their number.
_MOST_NAMED = 4
#: Below this many columns there is no table.
_NARROW = 72


def review_text(
    project: Project,
    reviews: Sequence[Data],
    written: Sequence[Path],
    screen: Screen,
    *,
    detailed: bool,
) -> str:
    """The whole text; `detailed` shows every finding of the drops with its arithmetic."""
    parts = [*_header(project, reviews, screen), ""]
    if reviews:
        parts.append(_drops(reviews, screen))
    else:
        parts.append("The project has no drops: there is nothing to answer.")
    for review in reviews:
        if detailed:
            parts += ["", drop_text(review, screen)]
        elif review["verdict"] != Verdict.PASS:
            parts += ["", open_text(review, screen)]
    parts += ["", *_who_may(reviews, screen), *_cautions(screen)]
    if written:
        parts += ["", *_files(written, screen)]
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
        at = review["governing"]
        finding = None if at is None else review["findings"][at]
        table.add_row(
            review["drop"],
            screen.answer(Verdict(review["verdict"]), review["answer"]),
            screen.coloured(Verdict(review["counterweight"])),
            _governs(review, finding),
            review["configuration"],
            end_section=number < len(reviews),
        )
    return screen.drawn(table)


def _drop_lines(review: Data, screen: Screen) -> Iterator[str]:
    verdict, at = Verdict(review["verdict"]), review["governing"]
    beside = review["answer"].removeprefix(str(verdict))
    yield screen.paragraph(f"{review['drop']}  {screen.verdict(verdict)}{beside}", hanging=_INDENT)
    of_counterweight = screen.verdict(Verdict(review["counterweight"]))
    yield screen.paragraph(f"counterweight: {of_counterweight}", indent=_INDENT)
    finding = None if at is None else review["findings"][at]
    for line in _governs(review, finding).splitlines():
        yield screen.paragraph(line, indent=_INDENT)
    yield screen.paragraph(review["configuration"], indent=_INDENT)


def _governs(review: Data, finding: Data | None) -> str:
    """The governing sentence; below it the margin that is told beside the answer."""
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


def _files(written: Sequence[Path], screen: Screen) -> Iterator[str]:
    folder = written[0].parent
    names = [path.name for path in written]
    shown = names if len(names) <= _MOST_NAMED else names[: _MOST_NAMED - 2]
    more = len(names) - len(shown)
    ending = f" and {more} drawings" if more else ""
    yield screen.paragraph(f"Written to {folder}: {', '.join(shown)}{ending}")
    older = sorted({path.name for path in folder.iterdir()} - set(names))
    if older:
        told = ", ".join(older[:_MOST_NAMED]) + (", ..." if len(older) > _MOST_NAMED else "")
        yield screen.paragraph(f"Not of this review, there from before: {told}")
