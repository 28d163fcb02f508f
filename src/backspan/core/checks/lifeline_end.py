"""How the end of a lifeline at its anchor is made: with what, by whom, and for which rope.

A line of fibre ends in a sewn eye, a splice or a knot; of a knot its record says what it keeps. A
clip or a swage made for wire holds no fibre, whatever share of the strength somebody states.
"""

from __future__ import annotations

from collections.abc import Iterator

from backspan.core.findings import DoesNotApply
from backspan.core.model.kit import FORMED, RopeKind, TerminationKind
from backspan.core.model.topics import Topic
from backspan.core.quantities import LENGTH
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.lifelines import each_lifeline
from backspan.core.sheet.question import Question
from backspan.core.sheet.rope_end import Roped, end_on_rope, end_seen, fits, maker_seen
from backspan.core.sheet.rope_of import rope_of

ID = "lifeline-end"
OF_FIBRE, OF_WIRE, MAKER = "fall.end-kind", "fall.wire-end-kind", "fall.end-maker"
#: Ends of which somebody has to say who made them: a knot holds as well as who tied it.
MADE = FORMED | {TerminationKind.KNOT}
FITS = Question(ID, "life-end-fits", LENGTH, fits, strength=False, share=False)


def judge(case: Case) -> Iterator[Answer]:
    """Two or three findings a lifeline: the kind of its end, its maker, the diameter."""
    for one in each_lifeline(case, ID):
        if isinstance(one, DoesNotApply):
            yield one
            continue
        line = Roped(one.line, one.name, one.place)
        rope = rope_of(case, one.line)
        wire = rope is not None and rope.kind is RopeKind.WIRE
        key = OF_WIRE if wire else OF_FIBRE
        yield from end_seen(case, ID, line).against(key, "life-end-kind")
        maker = maker_seen(case, ID, line, MADE)
        if maker is not None:
            yield from maker.against(MAKER, "life-end-maker")
        yield FITS.judge(case, end_on_rope(case, line))


CHECK = Check(ID, Topic.FALL_ARREST, judge)
