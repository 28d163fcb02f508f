"""Do the tests of a thing last, did they hold, and was the brake of a hoist tested at all.

A test counts until the end of the planned work: on the day of the review it must, and what runs out
before the work ends somebody has to see to. One that did not hold speaks against the thing until a
later one of the same did, whoever wrote what papers.
"""

from __future__ import annotations

import datetime
from collections.abc import Iterator

from backspan.core.findings import Decider, Finding, Message, MessageValue, Need
from backspan.core.model.evidence import day_of, is_before
from backspan.core.model.units import Test, TestFound, Unit, UnitKind
from backspan.core.numbers import surely_above
from backspan.core.quantities import RATIO
from backspan.core.sheet.case import Case
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.limits import limit_of, needed_value
from backspan.core.sheet.presence import judge_presence
from backspan.core.sheet.uses import Use
from backspan.core.sheet.witness import EvidenceClass, words_of

_BRAKE_TEST, _BRAKE_TEST_AGE = "stage.brake-test", "age.brake-test"
_SAYS_FAILED = "stage.test-says-failed"

Words = tuple[tuple[str, MessageValue], ...]


def judge_tests(case: Case, check: str, use: Use, unit: Unit) -> Iterator[Finding]:
    """One finding a test; of a hoist one more on the test of its secondary brake."""
    for test in unit.tests:
        if not _made_good(test, unit.tests):
            yield _tested(case, check, use, unit, test)
    if unit.kind is UnitKind.HOIST:
        yield _brake_tested(case, check, use, unit)


def _made_good(test: Test, tests: tuple[Test, ...]) -> bool:
    """Whether a test that did not hold was made on a later day again, and held."""
    return test.found is TestFound.NOT_HELD and any(
        other.found is TestFound.HELD
        and other.of is not None
        and other.of is test.of
        and is_before(test.at, other.at)
        for other in tests
    )


def _tested(case: Case, check: str, use: Use, unit: Unit, test: Test) -> Finding:
    """Whether a test held, and counts to the end of the planned work."""
    inputs, ends = Inputs(case), case.work_ends
    place = ("kit", "units", unit.id, "tests")
    words = (("what", test.what), ("until", test.until), ("ends", ends), ("unit", unit.id))
    met: bool | None = True
    ending, refer = "pass", tuple[Need, ...]()
    if test.found is TestFound.NOT_HELD:
        met, ending = False, "failed"
        inputs.fact("test_found", str(test.found), place)
    elif is_before(test.until, case.on.isoformat()):
        met, ending = False, "over"
    elif _named_as_failed(case, test):
        met, ending = None, "named-failed"
        inputs.want("test_found", EvidenceClass.OBSERVATION, place)
    elif is_before(test.until, ends):
        ending = "lapses"
        refer = (Need(Decider.QUALIFIED_PERSON, Message("need.test", words)),)
    return judge_presence(
        inputs,
        check=check,
        subject=use.at,
        place=place,
        message=Message(f"test.{ending}", words),
        met=met,
        refer=refer,
        question=f"test {unit.id} {test.what} {test.until}",
    )


def _named_as_failed(case: Case, test: Test) -> bool:
    """Whether its name says what nobody stated of how it ended."""
    name = test.what.casefold()
    listed = words_of(needed_value(case.practice, _SAYS_FAILED))
    return test.found is None and any(word in name for word in listed)


def _brake_tested(case: Case, check: str, use: Use, unit: Unit) -> Finding:
    """Whether a test of the secondary brake counts; one that says not what it is of does not.

    How long one counts at the most is not for its own paper to say.
    """
    rule, age = (needed_value(case.practice, key) for key in (_BRAKE_TEST, _BRAKE_TEST_AGE))
    inputs, most = Inputs(case), int(limit_of(age, RATIO))
    place = ("kit", "units", unit.id, "tests")
    last = _last_that_counts(case, unit, words_of(rule))
    words: Words = (("unit", unit.id),)
    refer = tuple[Need, ...]()
    ending = "missing"
    if last is not None:
        until = (day_of(last.at) + datetime.timedelta(days=most)).isoformat()
        words = (*words, ("what", last.what), ("at", last.at), ("until", until))
        ending = "pass"
        if surely_above((case.on - day_of(last.at)).days, limit=most):
            ending = "old"
        elif is_before(until, case.work_ends):
            ending, words = "lapses", (*words, ("ends", case.work_ends))
            refer = (Need(Decider.QUALIFIED_PERSON, Message("need.test", words)),)
    words = (*words, ("most", most))
    met = True if ending in {"pass", "lapses"} else None
    if last is not None and met:
        inputs.fact("brake_test", last.what, place)
    else:
        inputs.want("brake_test", EvidenceClass.OBSERVATION, place)
    return judge_presence(
        inputs,
        check=check,
        subject=use.at,
        place=place,
        message=Message(f"brake-test.{ending}", words),
        met=met,
        rules=(rule, age),
        refer=refer,
        question=f"brake test {unit.id}",
    )


def _last_that_counts(case: Case, unit: Unit, asked: tuple[str, ...]) -> Test | None:
    """The last test of what is asked that has not run out, and of which nobody says it failed."""
    last: Test | None = None
    for test in unit.tests:
        over = is_before(test.until, case.on.isoformat())
        if test.of is None or str(test.of) not in asked or over:
            continue
        if test.found is TestFound.NOT_HELD:
            continue
        last = test if last is None or is_before(last.at, test.at) else last
    return last
