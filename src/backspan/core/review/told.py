"""What of a review is told, in which order, and what is told once: for every printed form of it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from backspan.core.findings import WORST_FIRST, Finding, InputUsed, Review, Verdict
from backspan.core.review.plain import Data
from backspan.core.words import ENGLISH, Language, say_margin

#: What names the subject, and a question that the sentence answers: not what is said of it.
_WHERE = {"subject", "place", "question"}


def told(document: Data, name: str) -> Iterator[tuple[str, list[Data]]]:
    """The subjects of each group of `findings`, `not_applicable` or `comparison`, and its items."""
    for group in document["told"][name]:
        yield ", ".join(group["subjects"]), [document[name][at] for at in group["at"]]


def groups(items: Sequence[Data]) -> list[Data]:
    """Findings or reasons, worst first; those that say the same of two subjects are one."""
    merged: dict[str, Data] = {}
    for at in sorted(range(len(items)), key=lambda at: _rank(items[at])):
        group = merged.setdefault(_said(items[at]), {"subjects": [], "at": [at]})
        _add(group, items[at]["subject"])
    return list(merged.values())


def tables(rows: Sequence[Data]) -> list[Data]:
    """The rows of each subject; those of two subjects that say the same are one table."""
    merged: dict[str, Data] = {}
    for subject in dict.fromkeys(row["subject"] for row in rows):
        of_subject = [at for at, row in enumerate(rows) if row["subject"] == subject]
        said = repr([_said(rows[at]) for at in of_subject])
        _add(merged.setdefault(said, {"subjects": [], "at": of_subject}), subject)
    return list(merged.values())


def wanted_rows(rows: Sequence[Data], against: Sequence[str]) -> list[Data]:
    """The rows of a comparison that are told: of the rule sets named, else those with a number."""
    if against:
        return [row for row in rows if row["in_basis"] or row["rule"]["rule_set"] in against]
    return [row for row in rows if row["required"] is not None]


def _add(group: Data, subject: str) -> None:
    if subject not in group["subjects"]:
        group["subjects"].append(subject)


def _rank(item: Data) -> int:
    return WORST_FIRST.index(item["verdict"]) if "verdict" in item else 0


def _said(item: Data) -> str:
    """All that is said of a subject, down to who stated each input and who must settle what."""
    said = {name: value for name, value in item.items() if name not in _WHERE}
    said["inputs"] = [{**one, "place": None} for one in item.get("inputs", ())]
    return repr(said)


def is_told(one: InputUsed, finding: Finding) -> bool:
    """Whether a person stated it; what the program noted by itself stands in the sentence."""
    wanting = [need.what for need in finding.needs if need.what.id == "need.evidence"]
    return bool(
        one.by or one.evidence or any(("input", one.name) in what.values for what in wanting)
    )


def why_open(review: Review, *, language: Language = ENGLISH) -> str | None:
    """The topics that nobody judged, where they and no finding leave the drop open."""
    governing = None if review.governing is None else review.findings[review.governing]
    if governing is not None and governing.verdict is review.verdict:
        return None
    left = [language.word(one.topic) for one in review.topics if one.not_judged]
    return language.not_judged.format(topics=", ".join(left)) if left else None


def beside_the_answer(review: Review, *, language: Language = ENGLISH) -> str | None:
    """The first margin of the governing finding; on a pass without one, the tightest margin."""
    governing = None if review.governing is None else review.findings[review.governing]
    found = [governing] if governing is not None and governing.margins else []
    if review.verdict is Verdict.PASS:
        others = [one for one in review.findings if one.margins]
        found += sorted(others, key=lambda one: -(one.utilisation or 0.0))
    if not found:
        return None
    return say_margin(found[0].margins[0], review.units, language=language)
