"""The two pages of a drop: answer, reasons and dimensions; then the calculation that governs."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import Any

from backspan.core.findings import Verdict
from backspan.core.model.project import Project
from backspan.core.review.plain import Data
from backspan.core.review.told import told
from backspan.core.words import SIGNS, Language, say_verdict
from backspan.papers.dimensions_part import dimensions_part
from backspan.papers.facts_part import facts_part
from backspan.papers.reasons_part import reasons_part

#: Of what passes, how many sentences of one check a page has.
MOST_SENTENCES = 1


def drop_part(project: Project, review: Data, language: Language) -> dict[str, Any]:
    """The pages of one drop as plain data, but for its drawings."""
    drop = review["drop"]
    calculation, dimensions = (
        _calculation(project, review, language),
        dimensions_part(project, drop, language),
    )
    return {
        "drop": drop,
        "name": next((one.name for one in project.drops if one.id == drop), None) or "",
        "answer": say_verdict(Verdict(review["verdict"]), language=language),
        "counted": review["answer"].partition(", ")[2],
        "configuration": review["configuration"],
        "facts": facts_part(project, review, language),
        "basis": "; ".join(dict.fromkeys(_basis(review))),
        "reasons": reasons_part([review], language),
        "dimensions": dimensions,
        "planned": any(row["planned"] for row in dimensions["rows"]),
        "calculation": calculation,
        "topics": [_topic(one, language) for one in review["topics"] if not one["taken_over"]],
        "letters": _letters(review),
        "settled": _settled(review),
        "passed": _passed(review, None if calculation is None else calculation["number"]),
    }


def findings_of(project: Project, review: Data, language: Language) -> list[Data]:
    """Every finding of a drop as it is told, worst first, numbered."""
    return [
        _finding(project, finding, subjects, number, language)
        for number, (subjects, (finding,)) in enumerate(told(review, "findings"), 1)
    ]


def _basis(review: Data) -> Iterator[str]:
    for line in review["basis"]:
        readings = ", ".join(one["reading"] for one in line["readings"])
        yield f"{line['rule_set']} {line['edition']}{f' ({readings})' if readings else ''}"


def _calculation(project: Project, review: Data, language: Language) -> Data | None:
    """The finding whose sums govern: the governing one, else the worst of strength, with steps."""
    strength = None if review["strength"] is None else review["strength"]["finding"]
    for at in (review["governing"], strength):
        wanted = {} if at is None else review["findings"][at]
        for one in findings_of(project, review, language) if wanted.get("steps") else ():
            if all(one[name] == wanted[name] for name in ("check", "message", "steps")):
                return one
    return None


def _finding(
    project: Project, finding: Data, subjects: str, number: int, language: Language
) -> Data:
    """A finding with its number among those of the drop, and people by their names."""
    names = {one.id: one.name for one in project.people}
    taken = f"{SIGNS[Verdict.PASS]} {language.paper['taken_over']}"
    return {
        **finding,
        "number": str(number),
        "subject": subjects,
        "answer": taken
        if finding["taken_over"]
        else say_verdict(Verdict(finding["verdict"]), language=language),
        "inputs": [
            {
                **one,
                "evidence": one["evidence"] or language.paper["not_stated"],
                "by": names.get(one["by"], one["by"]),
                "checked_by": names.get(one["checked_by"], one["checked_by"]),
            }
            for one in finding["inputs"]
            if one["told"]
        ],
    }


def _topic(one: Data, language: Language) -> dict[str, str]:
    """The answer of a topic that nobody took over."""
    return {
        "topic": one["name"],
        "answer": say_verdict(Verdict(one["verdict"]), language=language),
    }


def _letters(review: Data) -> list[dict[str, str]]:
    """What was taken over, or to no effect: each letter once with the topics it names."""
    letters: dict[str, list[str]] = {}
    for one in review["topics"]:
        notes = [note["text"] for note in one["notes"]]
        for text in ([one["taken_over"]["text"]] if one["taken_over"] else []) + notes:
            letters.setdefault(text, []).append(one["name"])
    return [{"text": text, "topics": ", ".join(topics)} for text, topics in letters.items()]


def _settled(review: Data) -> list[dict[str, Any]]:
    """What is open by the findings and was taken over in writing: what the letters answer for."""
    return _joined(
        (finding["title"], [_line(review, subjects, finding["message"]["text"])])
        for subjects, (finding,) in told(review, "findings")
        if finding["taken_over"]
    )


def _passed(review: Data, but: str | None) -> list[dict[str, Any]]:
    """What passes, by check: a line for each finding but the one whose sums are shown.

    What has a share is told by that; of a check that says more than one thing it is told for whom.
    The appendix has each sentence.
    """
    titles: dict[str, list[dict[str, Any]]] = {}
    for number, (subjects, (finding,)) in enumerate(told(review, "findings"), 1):
        if finding["verdict"] == Verdict.PASS and str(number) != but:
            line = _line(review, subjects, finding["message"]["text"], finding["utilisation"])
            titles.setdefault(finding["title"], []).append(line)
    return _joined((title, _short(lines)) for title, lines in titles.items())


def _line(review: Data, subjects: str, text: str, share: Data | None = None) -> dict[str, Any]:
    """What is told of some subjects: its share where it has one, else its sentence."""
    where = [_where(review, one) for one in subjects.split(", ")]
    return {
        "where": ", ".join(one for one in where if not _names(text, one)),
        "text": text if share is None else "",
        "share": "" if share is None else share["text"],
        "of": where,
        "value": 0.0 if share is None else share["value"],
    }


def _joined(told_of: Iterable[tuple[str, list[dict[str, Any]]]]) -> list[dict[str, Any]]:
    """Checks that say the same of the same are one line; what has a share stands by itself."""
    joined: dict[tuple[str, ...], tuple[list[str], list[dict[str, Any]]]] = {}
    for title, lines in told_of:
        shares = any(one["share"] for one in lines)
        said = (part for one in lines for part in (one["where"], one["text"]))
        titles, _ = joined.setdefault((title if shares else "", *said), ([], lines))
        titles.append(title)
    return [{"title": "; ".join(titles), "lines": lines} for titles, lines in joined.values()]


def _short(lines: list[dict[str, Any]]) -> list[dict[str, Any]]:
    if len(lines) <= MOST_SENTENCES:
        return lines
    subjects = dict.fromkeys(name for line in lines for name in line["of"] if name)
    if not subjects:  # of the whole drop: only its sentences say anything
        return lines
    most = max(lines, key=lambda line: line["value"])
    return [{"where": ", ".join(subjects), "text": "", "share": most["share"]}]


def _where(review: Data, subject: str) -> str:
    return subject.removeprefix(review["drop"]).removeprefix("/")


def _names(text: str, subject: str) -> bool:
    """Whether a sentence names its subject, so that it need not stand beside it."""
    return subject in text.replace(",", " ").replace(".", " ").replace(":", " ").split()
