"""What of a review stands before all else: the answer, its reasons and what it rests on.

A list of drops prints no more than this, so that nothing else of them need be made or kept at hand.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Sequence

from backspan.core.findings import WORST_FIRST, BasisLine, Finding, Review
from backspan.core.review.plain import Data, Writer
from backspan.core.review.reasons import KINDS, reasons
from backspan.core.review.told import beside_the_answer, why_open
from backspan.core.words import ENGLISH, Language, counterweight, drop_answer, say_check

#: The format number of the data written here.
FORMAT = 1


def front_data(
    review: Review, language: Language = ENGLISH, kinds: Collection[str] = KINDS
) -> Data:
    """The front of one review's data; texts are in that language and the review's own units.

    Of its reasons those of `kinds`, for whoever prints no others.
    """
    writer = Writer(review.units, {}, language)
    governing = None if review.governing is None else review.findings[review.governing]
    return {
        "format": FORMAT,
        "program": review.program,
        "site": review.site,
        "drop": review.drop,
        "configuration": review.configuration,
        "on": review.on.isoformat(),
        "units": str(review.units),
        "language": language.code,
        "verdict": str(review.verdict),
        "answer": drop_answer(review, language=language),
        "counterweight": str(counterweight(review)),
        "why_open": why_open(review, language=language),
        "governing": review.governing,
        "governs": None if governing is None else writer.text(governing.message),
        "margin": beside_the_answer(review, language=language),
        "reasons": reasons(review, writer, kinds),
        "strength": _most_used(review, writer, lambda one: one.strength),
        "limit": _most_used(review, writer, lambda one: not one.strength),
        "presence": _presence(review),
        "basis": [_basis(line) for line in review.basis],
        "cautions": list(language.cautions),
    }


def _most_used(review: Review, writer: Writer, wanted: Callable[[Finding], bool]) -> Data | None:
    """The finding of that kind that uses most of what is there: strength and limits never mix."""
    shares = [
        (-one.utilisation, at)
        for at, one in enumerate(review.findings)
        if one.utilisation is not None and wanted(one)
    ]
    if not shares:
        return None
    at = min(shares)[1]
    found = review.findings[at]
    return {
        "finding": at,
        "title": say_check(found.check, language=writer.language),
        "subject": found.subject,
        "verdict": str(found.verdict),
        "utilisation": writer.share(found.utilisation),
    }


def _presence(review: Review) -> Data:
    """How many findings that have no number there are of each answer: words, papers, presences."""
    verdicts = [str(one.verdict) for one in review.findings if one.utilisation is None]
    return {str(verdict): verdicts.count(verdict) for verdict in WORST_FIRST}


def _basis(line: BasisLine) -> Data:
    return {
        "topic": line.topic,
        "rule_set": line.rule_set,
        "edition": line.edition,
        "title": line.title,
        "readings": [{"value": value, "reading": reading} for value, reading in line.readings],
        "added_for_drop": line.added_for_drop,
    }


def cited(holders: Sequence[Data]) -> list[Data]:
    """The rule values of some findings, by rule set, edition, key and reading; once."""
    names = ("rule_set", "edition", "value", "reading")
    found = {tuple(one[name] for name in names): one for each in holders for one in each["rules"]}
    return [found[key] for key in sorted(found)]
