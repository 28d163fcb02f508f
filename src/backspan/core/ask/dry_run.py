"""What the sums of a beam read: a topic's values are found by running its check on nothing."""

from __future__ import annotations

import datetime

from backspan.core.ask.imagined import project_of, subject_of
from backspan.core.model.basis import RuleChoice
from backspan.core.quantities.named import QUANTITIES
from backspan.core.rules.selected import SelectedRules
from backspan.core.rules.shape import LoadBasis, RuleSet
from backspan.core.sheet.beam_as_built import as_built, own_weight
from backspan.core.sheet.case import Case
from backspan.core.sheet.load_on_line import load_on_line
from backspan.core.sheet.moments import support_reads
from backspan.core.sheet.reads import Read
from backspan.core.sheet.sheet import BareSheet

_NONE = SelectedRules(RuleSet("", "", "", "", "", "", ()), {}, {})
_TILL_NOW = datetime.date.max


def dry_run(*, from_stack: bool) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """Names the sums read: with the hoist's rated load alone, and what may be wanted besides.

    Besides are the loads that other branches and rules multiply, and the beam's own weight.
    """
    stated = {one.name: 1 for one in QUANTITIES.values() if one.asked}
    project = project_of(stated, RuleChoice("", ""), on=_TILL_NOW, from_stack=from_stack)
    case = Case(project, project.drops[0], {}, _NONE, _TILL_NOW)
    support, reads = support_reads(case, subject_of(case)), dict[tuple[str | int, ...], Read]()
    sheet = BareSheet({}, reads)
    load_on_line(sheet, support.line, LoadBasis.HOIST_RATED)
    built = as_built(sheet, support.beam)
    needed = _names(reads)
    for basis in LoadBasis:
        load_on_line(sheet, support.line, basis)
    own_weight(sheet, support.beam, built.reach)
    return needed, tuple(name for name in _names(reads) if name not in needed)


def _names(reads: dict[tuple[str | int, ...], Read]) -> tuple[str, ...]:
    return tuple(one.quantity.name for one in reads.values() if one.quantity.asked)
