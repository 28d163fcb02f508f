"""A published case is a project file; it is loaded and reviewed as a user would."""

from __future__ import annotations

import datetime
import functools
from dataclasses import dataclass
from pathlib import Path

import pytest

from backspan.core.findings import ComparisonRow, Finding, Review
from backspan.core.model.basis import RuleChoice
from backspan.core.model.project import Project
from backspan.core.quantities import Amount, Dimension, Style, display
from backspan.core.review import review
from backspan.exchange.files import load, load_rule_library

FILES = Path(__file__).resolve().parents[2] / "examples" / "published"
LIBRARY = load_rule_library()
ON = datetime.date(2026, 11, 25)


@dataclass(frozen=True)
class Printed:
    """One number of a source: as printed, as it is exactly, how far apart they may be, and why."""

    printed: float
    exact: float
    within: float
    reason: str

    def check(self, found: float) -> None:
        """Hold a number found against both."""
        assert found == pytest.approx(self.exact, rel=1e-9), self.reason
        assert found == pytest.approx(self.printed, abs=self.within), self.reason


@functools.cache
def project(name: str) -> Project:
    """The project of one published file."""
    return load(FILES / f"{name}.yaml")


@functools.cache
def reviewed(name: str, drop: str, basis: tuple[RuleChoice, ...] | None = None) -> Review:
    """The review of one drop of a published file."""
    return review(project(name), drop, LIBRARY, on=ON, basis=basis)


def finding(made: Review, check: str, side: str = "L") -> Finding:
    """The only finding of a check on one side of a drop."""
    subject = f"{made.drop}/{side}"
    (only,) = (one for one in made.findings if (one.check, one.subject) == (check, subject))
    return only


def failed(made: Review, side: str = "L") -> set[tuple[str, str]]:
    """Check and message of what fails on one side of a drop."""
    return {
        (one.check, one.message.id)
        for one in made.findings
        if one.verdict == "fail" and one.subject == f"{made.drop}/{side}"
    }


def row(
    made: Review, rule_set: str, key: str, reading: str = "as written", side: str = "L"
) -> ComparisonRow:
    """The row of the rule comparison for one rule value and reading."""
    wanted = (f"{made.drop}/{side}", rule_set, key, reading)
    (only,) = (
        one
        for one in made.comparison
        if (one.subject, one.rule.rule_set, one.rule.key, one.rule.reading) == wanted
    )
    return only


def spare(found: Finding) -> int:
    """Pieces spare, negative where they are short."""
    one = next(one for one in found.margins if one.id == "pieces-spare")
    assert isinstance(one.value, int)
    return -one.value if one.beyond else one.value


def step(found: Finding, formula: str) -> float:
    """The result of the first use of a formula in a finding's steps."""
    return next(one.value for one in found.steps if one.formula == formula)


def in_unit(amount: Amount | None, unit: str) -> float:
    """An amount as a number in the unit a source prints."""
    assert amount is not None
    return value_in(amount.value, amount.dimension, unit)


def value_in(value: float, dimension: Dimension, unit: str) -> float:
    """A value in SI as a number in the unit a source prints."""
    text = display(value, dimension, Style.US, digits=15, unit=unit)
    return float(text.removesuffix(unit).replace(",", ""))
