"""The findings of one drop as text for a terminal, laid out as its document tells them."""

from __future__ import annotations

from collections.abc import Iterator

from backspan.cli.screen import Screen
from backspan.core.findings import Verdict
from backspan.core.review.plain import Data
from backspan.core.review.told import told

_INDENT, _HANGING = 2, 4


def drop_text(review: Data, screen: Screen) -> str:
    """Every finding of one drop with its inputs and arithmetic."""
    lines = [_title(review, screen)]
    plain = []
    for subjects, (finding,) in told(review, "findings"):
        if finding["verdict"] == Verdict.PASS and not finding["steps"]:
            text = f"{finding['title']}, {subjects}: {finding['message']['text']}"
            plain.append(screen.paragraph(text, indent=_INDENT, hanging=_HANGING))
            continue
        lines += _finding(finding, subjects, screen, margins=finding["margins_text"])
        lines += [*_behind(finding, screen), ""]
    if plain:
        lines += ["Found as it has to be:", *plain, ""]
    lines += [*_topics(review, screen), "", "Does not apply:"]
    for subjects, (one,) in told(review, "not_applicable"):
        text = f"{one['title']}, {subjects}: {one['reason']['text']}"
        lines.append(screen.paragraph(text, indent=_INDENT, hanging=_HANGING))
    return "\n".join(lines)


def _title(review: Data, screen: Screen) -> str:
    verdict = Verdict(review["verdict"])
    beside = review["answer"].removeprefix(str(verdict))
    of_counterweight = screen.verdict(Verdict(review["counterweight"]))
    answers = f"counterweight: {of_counterweight} - drop: {screen.verdict(verdict)}{beside}"
    return screen.paragraph(
        f"{review['drop']}  {review['configuration']}  {answers}", hanging=_INDENT
    )


def _topics(review: Data, screen: Screen) -> Iterator[str]:
    """What was taken over, to no effect, and what nobody judged."""
    taken: dict[str, list[str]] = {}
    for one in review["topics"]:
        if one["taken_over"] is not None:
            taken.setdefault(one["taken_over"]["text"], []).append(one["topic"])
        for note in one["notes"]:
            taken.setdefault(note["text"], []).append(one["topic"])
    for text, topics in taken.items():
        yield screen.paragraph(f"{', '.join(topics)}: {text}", indent=_INDENT, hanging=_HANGING)
    left = [one["topic"] for one in review["topics"] if one["not_judged"]]
    if left:
        text = f"Not judged, nobody took it over: {', '.join(left)}."
        yield screen.paragraph(text, indent=_INDENT, hanging=_HANGING)


def _finding(finding: Data, subjects: str, screen: Screen, *, margins: str) -> Iterator[str]:
    share, verdict = finding["utilisation"], screen.verdict(Verdict(finding["verdict"]))
    used = "" if share is None else f", {share['text']} used"
    taken = ", taken over" if finding["taken_over"] else ""
    head = f"{finding['title']}, {subjects}: {verdict}{taken}{used}"
    yield screen.paragraph(head, indent=_INDENT, hanging=_HANGING)
    yield screen.paragraph(finding["message"]["text"], indent=_HANGING)
    if margins:
        yield screen.paragraph(margins, indent=_HANGING)
    for rule in finding["rules"][:1]:
        yield _hung(rule["citation"], screen)
    for need in finding["needs"]:
        yield _hung(f"Needed from {need['asked']}: {need['what']['text']}", screen)


def _behind(finding: Data, screen: Screen) -> Iterator[str]:
    """What a finding was worked out with, and how."""
    inputs = "; ".join(_input(one) for one in finding["inputs"] if one["told"])
    if inputs:
        yield _hung(f"With {inputs}", screen)
    for step in finding["steps"]:
        yield _hung(step["line"], screen)
    for note in finding["notes"]:
        yield screen.paragraph(note["text"], indent=_HANGING)


def _input(one: Data) -> str:
    text = f"{one['title']} {one['text']}"
    if one["used_text"]:
        text += f", used at {one['used_text']}"
    known = [] if one["evidence"] is None else [one["evidence"]]
    known += [f"{word} {one[key]}" for word, key in (("by", "by"), ("on", "at")) if one[key]]
    return f"{text} ({' '.join(known)})" if known else text


def _hung(text: str, screen: Screen) -> str:
    return screen.paragraph(text, indent=_HANGING, hanging=_HANGING + _INDENT)
