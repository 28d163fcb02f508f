"""Is a drop in service on a day: its state, what stands against it, and what has lapsed by then.

A shift check counts for its own day. A paper that a permit leans on, and the dates of anchors in
use, end it with the day after their last. What somebody stated since, and a review of the day
refuses, stands against it; what grew old does not, that is what the shift check is for.
"""

from __future__ import annotations

import datetime
from collections.abc import Callable, Iterator

from backspan.core.checks import anchor_dates
from backspan.core.findings import Finding, Review, Verdict
from backspan.core.ledger import bodies
from backspan.core.ledger.days import day_of
from backspan.core.ledger.drop_states import TABLE, Event, Refusal, State
from backspan.core.ledger.entry import Entry
from backspan.core.ledger.folded import Folded
from backspan.core.ledger.standing import DropRecord, Standing, Why
from backspan.core.review.run import case_of, review
from backspan.core.rules.selected import RuleLibrary

Reason = tuple[Why | Refusal, Entry | None]


def standing_on(
    site: Folded,
    drop: str,
    library: RuleLibrary,
    *,
    on: datetime.date,
    reviewed: Callable[[str], Review] | None = None,
) -> Standing:
    """Where a drop stands on a day, by a site folded to the end of that day.

    `reviewed` gives its review of that day where somebody has it already.
    Raises LedgerError where no site is described, RuleError for a rule set that is not at hand.
    """
    record, state = site.record(drop), site.record(drop).state
    reasons = list(_against(site, record))
    if record.permit is not None:
        lapsed = list(_lapsed(site, record, library, on))
        reasons += lapsed
        # What was accepted then is not what people know now: what is stated by now may fail.
        found = _review(site, drop, library, on) if reviewed is None else reviewed(drop)
        refused = found.verdict is Verdict.FAIL
        reasons += [(Why.REFUSED, None)] if refused else []
        if lapsed or refused:
            state = _after(state, Event.CHANGED)
    if state is State.IN_SERVICE and not _is_of(record.fit, on):
        state = _after(state, Event.DAY_ENDS)
    if state is State.ACCEPTED:
        reasons.append((Why.NO_CHECK_TODAY, None))
    return Standing(
        drop,
        on,
        state,
        tuple(reasons),
        record.permit,
        tuple(record.restrictions),
        tuple(record.connected),
        tuple(record.refused),
        tuple(record.ended),
    )


def _review(site: Folded, drop: str, library: RuleLibrary, on: datetime.date) -> Review:
    return review(site.project, drop, library, on=on, compared=False)


def _is_of(fit: Entry | None, day: datetime.date) -> bool:
    """Whether a shift check is for that day."""
    body = None if fit is None else fit.body
    return isinstance(body, bodies.ShiftChecked) and body.day == day.isoformat()


def _after(state: State, event: Event) -> State:
    following = TABLE[(state, event)]
    return state if isinstance(following, Refusal) else following


def _against(site: Folded, record: DropRecord) -> Iterator[Reason]:
    stop = record.stops[-1] if record.state is State.STOPPED and record.stops else None
    if stop is not None:
        yield Why.STOPPED, stop
    if record.state is State.STOPPED and record.ended and record.ended[-1].by is not stop:
        yield Why.ENDED, record.ended[-1].by
    found = site.against(record.id)
    if found is not None:
        yield found
    if record.holds:
        yield Why.ON_HOLD, record.holds[-1]


def _lapsed(
    site: Folded, record: DropRecord, library: RuleLibrary, on: datetime.date
) -> Iterator[Reason]:
    """Papers and anchors that an acceptance leans on and that do not reach this day."""
    permit = record.permit
    if permit is None:
        return
    leans = permit.says.taken_over
    for entry in site.stating:
        match entry.body:
            case bodies.TopicTakenOver(taken=paper) | bodies.LimitsSigned(limits=paper):
                if paper.document in leans and paper.until < on.isoformat():
                    yield Why.LAPSED, entry
            case _:
                continue
    then = datetime.date.fromisoformat(day_of(permit.entry))
    passed = {_key(one) for one in _dates(site, record.id, library, then) if _passes(one)}
    for found in _dates(site, record.id, library, on):
        if _key(found) in passed and not _passes(found):
            yield Why.LAPSED, _stated_anchor(site, _key(found)[0])


def _dates(site: Folded, drop: str, library: RuleLibrary, on: datetime.date) -> list[Finding]:
    case = case_of(site.project, drop, library, on=on)
    return [one for one in anchor_dates.CHECK.judge(case) if isinstance(one, Finding)]


def _passes(finding: Finding) -> bool:
    return finding.verdict is Verdict.PASS


def _key(finding: Finding) -> tuple[str, str]:
    """The anchor a finding is about, and which of its papers."""
    words = dict(finding.message.values)
    return str(words["anchor"]), str(words["input"])


def _stated_anchor(site: Folded, anchor: str) -> Entry | None:
    """The last entry that stated something of an anchor."""
    last = None
    for entry in site.stating:
        match entry.body:
            case bodies.AnchorRegistered(anchor=one) if one.id == anchor:
                last = entry
            case bodies.AnchorInspected(anchor=name) if name == anchor:
                last = entry
            case _:
                continue
    return last
