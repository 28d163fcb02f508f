"""How the end of the suspension rope is made: with what, by whom, and for which rope.

U-bolt clips and knots hold no hoist's rope; an end formed on the rope is its maker's work or a
qualified person's; an end made for another diameter holds neither.
"""

from __future__ import annotations

from collections.abc import Iterator

from backspan.core.findings import DoesNotApply
from backspan.core.model.topics import Topic
from backspan.core.quantities import LENGTH
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.question import Question
from backspan.core.sheet.rope_end import Roped, end_on_rope, end_seen, fits, maker_seen
from backspan.core.sheet.words_seen import each_point

ID = "termination-kind"

#: Which list refuses a kind of end, and the sentence that says so.
REFUSED = (("line.refused-clips", "end-clips"), ("line.refused-knot", "end-knot"))
FITS = Question(ID, "end-fits", LENGTH, fits, strength=False, share=False)


def judge(case: Case) -> Iterator[Answer]:
    """What each point's rope end is made with, who made it, and whether it is for that rope."""
    for one in each_point(case, ID):
        if isinstance(one, DoesNotApply):
            yield one
            continue
        rope = Roped(one.point, one.name, one.place)
        for key, message in REFUSED:
            yield from end_seen(case, ID, rope).against(key, message, refused=True)
        maker = maker_seen(case, ID, rope)
        if maker is not None:
            yield from maker.against("line.end-maker", "end-maker")
        yield FITS.judge(case, end_on_rope(case, rope))


CHECK = Check(ID, Topic.LINE, judge)
