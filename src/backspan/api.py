"""The program as a library: load a project file, review a drop of it."""

from __future__ import annotations

import datetime
import functools
from collections.abc import Sequence

from backspan.core.findings import Review
from backspan.core.model.basis import RuleChoice
from backspan.core.model.project import Project
from backspan.core.review import review as review_drop
from backspan.core.rules.selected import RuleLibrary
from backspan.exchange.files import load, load_rule_library

__all__ = ["load", "review", "rule_library"]


def review(
    project: Project,
    drop: str,
    *,
    on: datetime.date,
    basis: Sequence[RuleChoice] | None = None,
    library: RuleLibrary | None = None,
) -> Review:
    """The review of one drop on a day, the same that the command line prints.

    `basis` replaces the project's own rule sets; `library` the rule sets that come with the
    program. Raises AbsentError for a drop the project does not have, RuleError for a rule set
    that is not at hand, NoDayError where `on` is no date, or has a time.
    """
    rules = rule_library() if library is None else library
    return review_drop(project, drop, rules, on=on, basis=basis)


@functools.cache
def rule_library() -> RuleLibrary:
    """The rule sets that come with the program, read once."""
    return load_rule_library()
