"""What was kept of an earlier state of a site is what the site as it is would answer anew.

A kept answer that no longer holds would be a false pass. So one store follows a walk over the demo:
at each step a few fields take another value that such a field has somewhere on the site, or near
it; whole records, lists and who stated what are fields like any other.
"""

from __future__ import annotations

import datetime
from collections import defaultdict
from collections.abc import Callable, Hashable, Iterator
from dataclasses import dataclass, field, fields, is_dataclass
from enum import StrEnum
from functools import cache
from random import Random
from typing import Any, TypeVar

import pytest

from backspan import load
from backspan.core.errors import BackspanError
from backspan.core.findings import Review
from backspan.core.model.evidence import StatedValue
from backspan.core.model.project import Project
from backspan.core.review import review
from backspan.core.rules.selected import RuleLibrary
from backspan.core.sheet.kept import Kept
from backspan.exchange.files import load_rule_library
from tests.architecture.source import ROOT
from tests.unit.core.rigs import put

ON = datetime.date(2026, 11, 25)
T = TypeVar("T")
STEPS = 24
Place = tuple[str | int, ...]


@dataclass(frozen=True)
class Field:
    """A field of a record of the site, as it is and where."""

    kind: tuple[type, str]
    place: Place
    value: Any


@dataclass(frozen=True)
class Counted(Kept):
    """Kept answers, with what was asked for and what was worked out."""

    asked: list[Hashable] = field(default_factory=list)
    made: list[Hashable] = field(default_factory=list)

    def same(self, key: Hashable, of: tuple[object, ...], make: Callable[[], T]) -> T:
        def made() -> T:
            self.made.append(key)
            return make()

        self.asked.append(key)
        return Kept.same(self, key, of, made)


@cache
def library() -> RuleLibrary:
    return load_rule_library()


@cache
def demo() -> Project:
    return load(ROOT / "examples" / "demo" / "site.yaml")


def each_field(record: Any, place: Place = ()) -> Iterator[Field]:
    """Every field of a record and of all that it holds."""
    for one in fields(record):
        value, there = getattr(record, one.name), (*place, one.name)
        yield Field((record.__class__, one.name), there, value)
        items = enumerate(value) if isinstance(value, tuple) else [(None, value)]
        for index, item in items:
            if is_dataclass(item):
                yield from each_field(item, there if index is None else (*there, index))


@cache
def seen() -> dict[tuple[type, str], list[Any]]:
    """All values that the fields of one name have on the site."""
    found: dict[tuple[type, str], list[Any]] = defaultdict(list)
    for one in each_field(demo()):
        if one.value not in found[one.kind]:
            found[one.kind].append(one.value)
    return found


def another(one: Field, random: Random) -> Any:
    """Another value that the field could have."""
    value = one.value
    if isinstance(value, StrEnum) and random.random() < 0.7:
        return random.choice(list(type(value)))
    if isinstance(value, float) and random.random() < 0.7:
        return value * random.choice([0.25, 0.9, 0.99, 1.01, 1.1, 4.0])
    if isinstance(value, int) and not isinstance(value, bool) and random.random() < 0.7:
        return max(1, value + random.choice([-3, -1, 1, 3]))
    if isinstance(value, tuple) and value and random.random() < 0.5:
        gone = random.randrange(len(value))
        return value[:gone] + value[gone + 1 :]
    others = seen()[one.kind]
    if one.kind[0] is StatedValue:
        # A number and a word are both values that somebody stated.
        others = [other for other in others if type(other) is type(value)]
    return random.choice(others or [value])


def picked(site: Project, drop: str, random: Random) -> Field:
    """A field of the site: most often a number or a word of the drop's rig."""
    index = next(at for at, one in enumerate(site.drops) if one.id == drop)
    named = ("drops",), ("drops", index, "id")
    whole = [one for one in each_field(site) if one.place not in named]
    own = [one for one in whole if one.place[:2] == ("drops", index)]
    there = own if random.random() < 0.7 else whole
    plain = [one for one in there if isinstance(one.value, float | int | StrEnum)]
    return random.choice(plain if random.random() < 0.8 else there)


def answered(site: Project, drop: str, kept: Kept | None = None) -> Review | str:
    """The review of a drop, or why there is none."""
    try:
        return review(site, drop, library(), on=ON, compared=False, kept=kept)
    except BackspanError as error:
        return str(error)


def walk(drop: str, seed: int, steps: int) -> Iterator[Project]:
    """States of the site, each a few fields from the one before, now and then the first again."""
    random, site = Random(seed), demo()  # noqa: S311 - a walk, no secret
    for step in range(steps):
        if step % 6 == 5:
            site = demo()
        for _ in range(random.choice([1, 1, 2, 4])):
            one = picked(site, drop, random)
            site = put(site, one.place, another(one, random))
        yield site


@pytest.mark.parametrize(("drop", "seed"), [("S1", 1), ("S2", 2), ("N1", 3)])
def test_what_was_kept_is_what_the_site_would_answer_anew(drop: str, seed: int) -> None:
    kept, answers = Counted(), set[str]()
    for site in walk(drop, seed, STEPS):
        anew = answered(site, drop)
        assert answered(site, drop, kept) == anew
        answers.add(repr(anew))
    # The walk saw different answers, and most of what was asked was kept from the state before.
    assert len(answers) > STEPS / 2
    assert len(kept.made) < len(kept.asked) / 2


def test_a_value_by_another_person_is_weighed_anew() -> None:
    drop = next(one for one in demo().drops if one.id == "S1")
    assert drop.rig is not None
    point = drop.rig.suspension_points[0]
    beam = point.counterweighted_beam
    assert beam is not None
    place = ("drops", demo().drops.index(drop), "rig", "suspension_points", 0)
    reach = (*place, "counterweighted_beam", "reach")
    kept = Kept()
    first = answered(demo(), "S1", kept)
    site = put(demo(), (*reach, "by"), None)
    assert isinstance(beam.reach, StatedValue)
    assert answered(site, "S1", kept) == answered(site, "S1") != first
