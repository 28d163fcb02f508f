"""Why a drop does not plainly pass: what is refused, what is open, what nobody judged.

The one list that terminal, papers and pages print first. What is said of two points is said once,
and findings that want the same of the same people are one reason.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence

from backspan.core.findings import (
    WORST_FIRST,
    Decider,
    Finding,
    Message,
    Review,
    TopicAnswer,
    Verdict,
)
from backspan.core.review.plain import Data, Writer
from backspan.core.words import Language, say_check, say_input, say_mend, settled

#: The need of a value that nobody stated.
_STATE = "need.input"

#: Kinds of reasons, in the order they are told.
REFUSED, OPEN, NOT_JUDGED = KINDS = ("refused", "open", "not judged")


def reasons(review: Review, writer: Writer, kinds: Collection[str] = KINDS) -> list[Data]:
    """Every reason of some kinds, worst first: sentence, subjects, who must do what about it."""
    told: dict[str, Data] = {}
    for at in _worst_first(review):
        if _kind(review.findings[at]) not in kinds:
            continue
        one = _of_finding(review, at, writer)
        first = told.setdefault(repr((one["kind"], one["verdict"], _asked(one))), one)
        if first is not one:
            _join(first, one)
            first["text"] = _waits_for(review.findings[at], first["text"], writer.language)
    of_topics = _of_topics(review, writer) if NOT_JUDGED in kinds else ()
    return [*told.values(), *of_topics]


def _kind(finding: Finding) -> str:
    return REFUSED if finding.verdict is Verdict.FAIL else OPEN


def _worst_first(review: Review) -> list[int]:
    """Places of the findings that are no pass and that nobody took over."""
    taken = settled(review)
    left = [
        at
        for at, one in enumerate(review.findings)
        if one.verdict is not Verdict.PASS and at not in taken
    ]
    return sorted(left, key=lambda at: (_rank(review.findings[at]), at))


def _rank(finding: Finding) -> tuple[int, float]:
    share = (finding.utilisation or 0.0) if finding.strength else 0.0
    return WORST_FIRST.index(finding.verdict), -share


def _of_finding(review: Review, at: int, writer: Writer) -> Data:
    finding = review.findings[at]
    refused = finding.verdict is Verdict.FAIL
    acts = [
        _act(
            writer.language.word(need.who),
            writer.text(need.what, places=False),
            _place(need.what),
        )
        for need in finding.needs
    ]
    if refused:
        acts.insert(
            0,
            _act(
                writer.language.word(Decider.CONTRACTOR),
                say_mend(finding, writer.style, language=writer.language),
            ),
        )
    return {
        "kind": _kind(finding),
        "verdict": str(finding.verdict),
        "titles": [say_check(finding.check, language=writer.language)],
        "where": _where(review, finding),
        "text": writer.text(finding.message),
        "acts": acts,
        "findings": [at],
    }


def _act(who: str, text: str, place: str | None = None) -> Data:
    """Who must do what; `place` is where in the project's file a value belongs."""
    return {"who": who, "text": text, "place": place}


def _place(what: Message) -> str | None:
    place = dict(what.values).get("place")
    return None if place is None else str(place)


def _where(review: Review, finding: Finding) -> list[str]:
    """The part of the drop it is about; nothing where it is the drop itself."""
    inner = finding.subject.removeprefix(review.drop).removeprefix("/")
    return [inner] if inner else []


def _asked(one: Data) -> object:
    """What makes two reasons one: the acts; two that want nothing, or are refused, differ."""
    wanted = [tuple(act.values()) for act in one["acts"]]
    return wanted if one["kind"] == OPEN and wanted else (one["titles"], one["text"], wanted)


def _join(first: Data, other: Data) -> None:
    for name in ("titles", "where", "findings"):
        first[name] += [item for item in other[name] if item not in first[name]]


def _waits_for(finding: Finding, text: str, language: Language) -> str:
    """What several findings wait for, where it is values that nobody stated; else their worst."""
    lacking = [dict(one.what.values)["input"] for one in finding.needs if one.what.id == _STATE]
    if finding.verdict is not Verdict.MISSING or len(lacking) < len(finding.needs):
        return text
    told = "; ".join(say_input(str(one), language=language) for one in lacking)
    return language.phrase("waits-for", inputs=told) if lacking else text


def _of_topics(review: Review, writer: Writer) -> Iterator[Data]:
    """Topics that nobody judged and no open finding tells of: a reason for the same people."""
    language = writer.language
    told: dict[tuple[str, ...], Data] = {}
    for one in review.topics:
        if not one.not_judged or _is_told(review, one):
            continue
        why = [writer.text(note) for note in one.notes]
        key = (*one.who, *why)
        text = " ".join([language.phrase("not-judged-here"), *why])
        who = language.phrase("or").join(language.word(role) for role in one.who)
        acts = [_act(who, language.phrase("judge-in-writing"))]
        reason = told.setdefault(
            key,
            {
                "kind": NOT_JUDGED,
                "verdict": str(one.verdict),
                "titles": [],
                "where": [],
                "text": text,
                "acts": acts,
                "findings": [],
            },
        )
        reason["titles"].append(language.word(one.topic))
    yield from told.values()


def _is_told(review: Review, topic: TopicAnswer) -> bool:
    return any(review.findings[at].verdict is not Verdict.PASS for at in topic.findings)


def of_site(fronts: Sequence[Data]) -> dict[str, list[Data]]:
    """The reasons of several drops by kind, worst first; those that say the same name their drops.

    `fronts` are the `front_data` of the drops.
    """
    told: dict[str, dict[str, Data]] = {kind: {} for kind in KINDS}
    for front in sorted(fronts, key=lambda one: WORST_FIRST.index(one["verdict"])):
        for one in front["reasons"]:
            said = repr([one[name] for name in ("verdict", "titles", "where", "text", "acts")])
            found = told[one["kind"]].setdefault(said, {**one, "drops": []})
            found["drops"].append(front["drop"])
    return {
        kind: sorted(found.values(), key=lambda one: WORST_FIRST.index(one["verdict"]))
        for kind, found in told.items()
    }
