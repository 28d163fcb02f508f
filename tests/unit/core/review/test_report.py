from __future__ import annotations

import functools
import json
import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from typing import Any

import pytest

from backspan.core.ask import TOPICS, answer, read_values
from backspan.core.ask.report import answer_data
from backspan.core.findings import Review, Verdict
from backspan.core.model.basis import RuleChoice
from backspan.core.quantities import Style
from backspan.core.review import review
from backspan.core.review.report import (
    formula_descriptions,
    report_text,
    review_data,
    reviews_data,
)
from backspan.core.review.topics import worst
from backspan.core.wire import canonical
from backspan.core.words import per_cent
from backspan.exchange.files import load
from tests.architecture.source import ROOT
from tests.unit.core.ask.asking import LIBRARY, ON

PAGE = ROOT / "docs" / "json-review.md"
FORMULAS = formula_descriptions()
ROW = re.compile(r"^\| `(?P<field>\w+)` \| (?P<type>[^|]+) \|", re.MULTILINE)
SECTION = re.compile(r"^## (?P<name>.+)$", re.MULTILINE)
PLAIN: Mapping[str, tuple[type, ...]] = {
    "text": (str,),
    "number": (int, float),
    "whole number": (int,),
    "true or false": (bool,),
    "path": (list,),
}


@functools.cache
def demo() -> tuple[Review, ...]:
    """Every drop of the demonstration, and one under other rules."""
    project = load(ROOT / "examples" / "demo" / "site.yaml")
    basis = (RuleChoice("ca-qc-s21-r4", "undated"), RuleChoice("uk-bs-5974", "undated"))
    found = [review(project, drop.id, LIBRARY, on=ON) for drop in project.drops]
    return (*found, review(project, "S1", LIBRARY, on=ON, basis=basis))


@functools.cache
def answers() -> tuple[dict[str, Any], ...]:
    """An answer of every topic."""
    made = []
    for topic in TOPICS:
        values = read_values(topic, [topic.example])
        for style in Style:
            found = answer(topic, values, LIBRARY, style=style, on=ON)
            made.append(answer_data(topic, values, found, style=style, formulas=FORMULAS))
    return tuple(made)


def documented() -> dict[str, dict[str, str]]:
    """Kind of record to its fields with their types, as the page says."""
    text = PAGE.read_text(encoding="utf-8")
    starts = list(SECTION.finditer(text))
    ends = [*(one.start() for one in starts[1:]), len(text)]
    return {
        one["name"]: {
            row["field"]: row["type"].strip() for row in ROW.finditer(text, one.end(), end)
        }
        for one, end in zip(starts, ends, strict=True)
    }


@dataclass
class Walk:
    """Compares data with the kinds a page describes, and notes which fields it has met."""

    pages: Mapping[str, Mapping[str, str]]
    seen: set[tuple[str, str]] = field(default_factory=set)

    def disagreements(self, data: Any, kind: str, at: str) -> Iterator[str]:
        """Where data is not what the page says of that kind."""
        if kind.endswith(" or null"):
            kind = kind.removesuffix(" or null")
            yield from () if data is None else self.disagreements(data, kind, at)
        elif kind.startswith("list of "):
            for index, item in enumerate(data):
                yield from self.disagreements(item, kind.removeprefix("list of "), f"{at}[{index}]")
        elif kind.startswith("map of "):
            for name, item in data.items():
                yield from self.disagreements(item, kind.removeprefix("map of "), f"{at}.{name}")
        elif kind == "value":
            amount, names = isinstance(data, dict), isinstance(data, list)
            kind = "amount" if amount else "list of text" if names else "text"
            yield from self.disagreements(data, kind, at)
        elif kind in PLAIN:
            yield from () if is_plain(data, kind) else (f"{at}: {data!r} is no {kind}",)
        else:
            yield from self.of_record(data, kind, at)

    def of_record(self, data: Any, kind: str, at: str) -> Iterator[str]:
        """Where a record has other fields than the page says, or in another order."""
        fields = self.pages[kind]
        always = {name for name, of in fields.items() if ";" not in of}
        if not always <= set(data) <= set(fields):
            yield f"{at}: a {kind} has {sorted(data)}, the page says {sorted(fields)}"
        known = [name for name in data if name in fields]
        if known != [name for name in fields if name in data]:
            yield f"{at}: a {kind} has its fields in another order than the page"
        for name in known:
            self.seen.add((kind, name))
            yield from self.disagreements(data[name], fields[name].split(";")[0], f"{at}.{name}")


def is_plain(data: Any, kind: str) -> bool:
    """Whether data is of a kind that is no record."""
    if kind == "path":
        return isinstance(data, list) and all(type(one) in (str, int) for one in data)
    return type(data) in PLAIN[kind]


def test_the_page_says_what_is_written() -> None:
    walk = Walk(documented())
    wrong = list(walk.disagreements(reviews_data(demo(), formulas=FORMULAS), "document", "reviews"))
    for one in answers():
        wrong += walk.disagreements(one, "answer", one["topic"])
    assert wrong == []
    assert walk.seen == {(kind, name) for kind, fields in walk.pages.items() for name in fields}


def test_the_walk_sees_what_is_wrong() -> None:
    walk = Walk({"thing": {"a": "text", "b": "list of number", "c": "true or false; only once"}})
    good = {"a": "x", "b": [1.5, 2], "c": True}
    for bad, what in (
        ({**good, "a": 1}, "1 is no text"),
        ({**good, "b": ["x"]}, "'x' is no number"),
        ({**good, "c": "yes"}, "'yes' is no true or false"),
        ({**good, "d": 1}, "the page says"),
        ({"a": "x"}, "the page says"),
        ({"b": [], "a": "x"}, "another order"),
    ):
        (told,) = walk.disagreements(bad, "thing", "here")
        assert what in told
    assert list(walk.disagreements({"a": "x", "b": []}, "thing", "here")) == []


def numbers(data: Any) -> Iterator[float]:
    """Every float in plain data."""
    if isinstance(data, dict):
        for item in data.values():
            yield from numbers(item)
    elif isinstance(data, list):
        for item in data:
            yield from numbers(item)
    elif isinstance(data, float):
        yield data


def test_numbers_carry_ten_digits_and_are_never_minus_nought() -> None:
    found = list(numbers(reviews_data(demo(), formulas=FORMULAS)))
    assert len(found) > 1000
    for number in found:
        assert number == float(f"{number:.9e}")
        assert str(number) != "-0.0"
        assert number == 0.0 or abs(number) >= 1e-9


def test_the_text_is_the_data_with_the_same_numbers() -> None:
    data = reviews_data(demo(), formulas=FORMULAS)
    assert canonical(json.loads(report_text(data))) == canonical(data)


def test_the_same_review_gives_the_same_bytes() -> None:
    first, again = (
        report_text(reviews_data(demo(), formulas=formula_descriptions())) for _ in range(2)
    )
    assert first == again


def test_a_number_that_is_not_finite_is_refused() -> None:
    with pytest.raises(ValueError, match="not JSON compliant"):
        report_text({"x": float("nan")})


def test_every_finding_and_row_is_there() -> None:
    for one in demo():
        data = review_data(one, formulas=FORMULAS)
        assert [found["verdict"] for found in data["findings"]] == [
            str(found.verdict) for found in one.findings
        ]
        assert len(data["comparison"]) == len(one.comparison)
        assert data["configuration"] == one.configuration
        assert data["cautions"]


def test_the_worst_answer_speaks_for_all() -> None:
    assert worst([Verdict.PASS, Verdict.REFER, Verdict.MISSING]) is Verdict.MISSING
    assert worst([Verdict.PASS, Verdict.FAIL, Verdict.MISSING]) is Verdict.FAIL
    assert worst([]) is Verdict.MISSING
    assert reviews_data((), formulas=FORMULAS)["verdict"] == "missing"


@pytest.mark.parametrize(
    ("share", "text"),
    [
        (0.79, "79 %"),
        (0.97294, "97 %"),
        (1.0, "100 %"),
        (1.0 + 1e-12, "100 %"),
        (1.0000000000000002, "100 %"),
        (0.9999, "99.99 %"),
        (0.99996, "99.996 %"),
        (1.00108, "100.1 %"),
        (1.0000001, "100.00001 %"),
        (0.0, "0 %"),
        (1.2121, "121 %"),
        (12.3456, "1235 %"),
    ],
)
def test_a_share_never_hides_on_which_side_of_full_it_lies(share: float, text: str) -> None:
    assert per_cent(share) == text
