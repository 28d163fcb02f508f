"""A review as text for a terminal: a line a drop, worst first, then why and who must do what."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from pathlib import Path

from backspan.cli.comparing import comparison_text, envelope_text
from backspan.cli.finding_text import drop_text
from backspan.cli.screen import Screen
from backspan.core.findings import WORST_FIRST, Verdict
from backspan.core.model.project import Project
from backspan.core.review.asked import Asked
from backspan.core.review.plain import Data
from backspan.core.review.reasons import NOT_JUDGED, OPEN, REFUSED, of_site
from backspan.core.sheet.moments import TOPIC
from backspan.core.words import ENGLISH, Language
from backspan.exchange.output_set import INDEX

_INDENT = 2
#: Below this many columns a drop is a paragraph, not a line of columns.
_NARROW = 72
#: Columns of a configuration code.
_CODE = 11


@dataclass(slots=True)
class ReviewText:
    """The whole text. Drops are added one at a time, so that of each only its lines are kept."""

    project: Project
    screen: Screen
    asked: Asked
    language: Language = ENGLISH
    written: Path | None = None
    """The set that was written, if any."""
    parts: list[str] = field(default_factory=list)

    def add(self, review: Data) -> None:
        """Lay out what was asked for of one drop beside its answer."""
        if self.asked.worked:
            self.parts += ["", drop_text(review, self.screen, self.language)]
        if self.asked.compared:
            self.parts += comparison_text(
                review, self.screen, self.language, against=self.asked.against
            )
        if self.asked.envelope:
            self.parts += envelope_text(review, self.screen, self.language)

    def whole(self, fronts: Sequence[Data]) -> str:
        """All of it; `fronts` are the `front_data` of the drops that were added."""
        screen = self.screen
        parts = [*_header(self.project, fronts, screen, self.language), ""]
        if fronts:
            parts += [
                *_drops(fronts, screen, self.language),
                *_reasons(fronts, screen, self.language),
            ]
        else:
            parts.append(self.language.paper["no_drops"])
        parts += [*self.parts, "", screen.paragraph(self.language.one_line_caution)]
        if self.language.note:
            parts.append(screen.paragraph(self.language.note))
        if self.written is not None:
            parts += ["", _files(self.written, screen, self.language)]
        return "\n".join(parts) + "\n"


def _header(
    project: Project, reviews: Sequence[Data], screen: Screen, language: Language
) -> Iterator[str]:
    site = project.site
    reviewed = "".join(
        f", {language.paper['reviewed'].format(on=one['on'], program=one['program'])}"
        for one in reviews[:1]
    )
    yield screen.paragraph(f"{site.name}, {site.place}{reviewed}", hanging=_INDENT)
    if site.invented:
        yield screen.paragraph(site.invented)
    names = _basis(reviews, language)
    if names:
        yield screen.paragraph(f"{language.paper['basis']}: {', '.join(names)}", hanging=_INDENT)


def _basis(reviews: Sequence[Data], language: Language) -> list[str]:
    """The rule sets with their editions: first what tipping is held against, then the rest."""
    lines = [
        (f"{line['rule_set']} {line['edition']}", line)
        for review in reviews
        for line in review["basis"]
    ]
    counts = Counter(name for name, _ in lines)
    topics = {name: line["topic"] for name, line in reversed(lines)}
    ordered = sorted(counts, key=lambda name: (topics[name] != TOPIC, -counts[name]))
    some = language.paper["some_drops"]
    return [name if counts[name] == len(reviews) else f"{name} ({some})" for name in ordered]


def _drops(reviews: Sequence[Data], screen: Screen, language: Language) -> Iterator[str]:
    """A line a drop, the worst first."""
    said = {one: screen.verdict(one, language) for one in Verdict}
    first = max(map(len, said.values())) + 1
    width = max(len(one["drop"]) for one in reviews)
    for one in sorted(reviews, key=lambda one: WORST_FIRST.index(one["verdict"])):
        verdict = Verdict(one["verdict"])
        beside = _beside(one, said, language)
        if screen.width < _NARROW:
            text = f"{one['drop']}  {said[verdict]}, {beside}; {one['configuration']}"
            yield screen.paragraph(text, hanging=_INDENT)
            continue
        room = screen.width - first - width - _CODE - 3
        lines = screen.within(beside, room)
        blank = " " * (first - len(said[verdict]))
        head = f"{screen.coloured(said[verdict], verdict)}{blank} {one['drop'].ljust(width)} "
        yield f"{head}{lines[0].ljust(room)} {one['configuration']}"
        for line in lines[1:]:
            yield " " * (first + width + 2) + line


def _beside(review: Data, said: Mapping[Verdict, str], language: Language) -> str:
    """What is counted beside the answer, the counterweight's own, and of a pass what is left."""
    _, _, counted = review["answer"].partition(", ")
    of_counterweight = f"{language.paper['counterweight']} {said[Verdict(review['counterweight'])]}"
    if review["margin"] is not None and review["verdict"] == Verdict.PASS:
        of_counterweight += f", {review['margin']}"
    return "; ".join(part for part in (counted, of_counterweight) if part)


def _reasons(reviews: Sequence[Data], screen: Screen, language: Language) -> Iterator[str]:
    """What is refused, what is open, what nobody judged, and who must do what about it."""
    told = of_site(reviews)
    for kind, head in ((REFUSED, "refused"), (OPEN, "open")):
        if told[kind]:
            yield ""
            yield screen.paragraph(language.paper[head])
        for one in told[kind]:
            yield _told(one, screen, language)
            for act in one["acts"]:
                place = "" if act["place"] is None else f" ({act['place']})"
                text = f"{act['who']}: {act['text']}{place}"
                yield screen.paragraph(text, indent=2 * _INDENT, hanging=3 * _INDENT)
    if told[NOT_JUDGED]:
        yield ""
        yield screen.paragraph(language.paper["not_judged"])
    for one in told[NOT_JUDGED]:
        why = one["text"].removeprefix(language.phrase("not-judged-here")).strip()
        who = one["acts"][0]["who"]
        text = f"{', '.join(one['drops'])}  {', '.join(one['titles'])}: {who}"
        yield screen.paragraph(f"{text}. {why}".rstrip(), indent=_INDENT, hanging=2 * _INDENT)


def _told(one: Data, screen: Screen, language: Language) -> str:
    where = ", ".join(one["where"])
    drops = ", ".join(one["drops"])
    subject = f"{drops}, {where}" if where else drops
    sign = screen.verdict(Verdict(one["verdict"]), language)
    text = f"{subject}  {sign}  {'; '.join(one['titles'])}: {one['text']}"
    return screen.paragraph(text, indent=_INDENT, hanging=2 * _INDENT)


def _files(written: Path, screen: Screen, language: Language) -> str:
    count = sum(1 for _ in written.iterdir())
    index = written.parent / INDEX
    told = language.paper["written"].format(folder=written, count=count, index=index)
    return screen.paragraph(told)
