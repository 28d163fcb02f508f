"""The findings of one drop as text for a terminal, laid out as its document tells them."""

from __future__ import annotations

from collections.abc import Iterator

from backspan.cli.screen import Screen
from backspan.core.findings import Verdict
from backspan.core.review.plain import Data
from backspan.core.review.told import told
from backspan.core.words import Language

_INDENT, _HANGING = 2, 4


def drop_text(review: Data, screen: Screen, language: Language) -> str:
    """Every finding of one drop with its inputs and arithmetic."""
    lines = [_title(review, screen, language)]
    plain = []
    for subjects, (finding,) in told(review, "findings"):
        if finding["verdict"] == Verdict.PASS and not finding["steps"]:
            text = f"{finding['title']}, {subjects}: {finding['message']['text']}"
            plain.append(screen.paragraph(text, indent=_INDENT, hanging=_HANGING))
            continue
        lines += _finding(finding, subjects, screen, language, margins=finding["margins_text"])
        lines += [*_behind(finding, screen, language), ""]
    if plain:
        lines += [f"{language.paper['passed']}:", *plain, ""]
    lines += [*_topics(review, screen, language), "", f"{language.paper['does_not_apply']}:"]
    for subjects, (one,) in told(review, "not_applicable"):
        text = f"{one['title']}, {subjects}: {one['reason']['text']}"
        lines.append(screen.paragraph(text, indent=_INDENT, hanging=_HANGING))
    return "\n".join(lines)


def _title(review: Data, screen: Screen, language: Language) -> str:
    verdict = Verdict(review["verdict"])
    _, comma, counted = review["answer"].partition(", ")
    of_counterweight = screen.verdict(Verdict(review["counterweight"]), language)
    of_drop = f"{screen.verdict(verdict, language)}{comma}{counted}"
    answers = language.paper["both_answers"].format(counterweight=of_counterweight, drop=of_drop)
    return screen.paragraph(
        f"{review['drop']}  {review['configuration']}  {answers}", hanging=_INDENT
    )


def _topics(review: Data, screen: Screen, language: Language) -> Iterator[str]:
    """What was taken over, to no effect, and what nobody judged."""
    taken: dict[str, list[str]] = {}
    for one in review["topics"]:
        if one["taken_over"] is not None:
            taken.setdefault(one["taken_over"]["text"], []).append(one["name"])
        for note in one["notes"]:
            taken.setdefault(note["text"], []).append(one["name"])
    for text, topics in taken.items():
        yield screen.paragraph(f"{', '.join(topics)}: {text}", indent=_INDENT, hanging=_HANGING)
    left = [one["name"] for one in review["topics"] if one["not_judged"]]
    if left:
        text = language.not_judged.format(topics=", ".join(left))
        yield screen.paragraph(text, indent=_INDENT, hanging=_HANGING)


def _finding(
    finding: Data, subjects: str, screen: Screen, language: Language, *, margins: str
) -> Iterator[str]:
    share, verdict = finding["utilisation"], screen.verdict(Verdict(finding["verdict"]), language)
    used = "" if share is None else f", {language.paper['share_used'].format(share=share['text'])}"
    taken = f", {language.paper['taken_over']}" if finding["taken_over"] else ""
    head = f"{finding['title']}, {subjects}: {verdict}{taken}{used}"
    yield screen.paragraph(head, indent=_INDENT, hanging=_HANGING)
    yield screen.paragraph(finding["message"]["text"], indent=_HANGING)
    if margins:
        yield screen.paragraph(margins, indent=_HANGING)
    for rule in finding["rules"][:1]:
        yield _hung(rule["citation"], screen)
    for need in finding["needs"]:
        who, what = need["asked"], need["what"]["text"]
        yield _hung(language.paper["needed_of"].format(who=who, what=what), screen)


def _behind(finding: Data, screen: Screen, language: Language) -> Iterator[str]:
    """What a finding was worked out with, and how."""
    inputs = "; ".join(_input(one, language) for one in finding["inputs"] if one["told"])
    if inputs:
        yield _hung(language.paper["with"].format(inputs=inputs), screen)
    for step in finding["steps"]:
        yield _hung(step["line"], screen)
    for note in finding["notes"]:
        yield screen.paragraph(note["text"], indent=_HANGING)


def _input(one: Data, language: Language) -> str:
    text = f"{one['title']} {one['text']}"
    if one["used_text"]:
        text += f", {language.paper['used_at'].format(value=one['used_text'])}"
    known = [] if one["evidence"] is None else [one["evidence"]]
    known += [language.paper[f"said_{key}"].format(it=one[key]) for key in ("by", "at") if one[key]]
    return f"{text} ({' '.join(known)})" if known else text


def _hung(text: str, screen: Screen) -> str:
    return screen.paragraph(text, indent=_HANGING, hanging=_HANGING + _INDENT)
