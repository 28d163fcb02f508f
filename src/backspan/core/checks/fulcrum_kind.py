"""A fulcrum on a tower or on the parapet: the structural engineer says what it may carry.

Told with the most that can come on it: what hangs at rated load, the counterweight and the beam, as
if the rear stand carried nothing.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace

from backspan.core.findings import Decider, DoesNotApply, Message, MessageValue, Need
from backspan.core.mechanics.tipping import weight
from backspan.core.model.rigs import Fulcrum, FulcrumKind
from backspan.core.model.site import Parapet
from backspan.core.model.topics import Topic
from backspan.core.numbers import surely_above
from backspan.core.quantities import FORCE, Amount
from backspan.core.sheet.beam_as_built import as_built, beam_reads
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.presence import judge_presence
from backspan.core.sheet.reads import hoist_reads
from backspan.core.sheet.sheet import BareSheet
from backspan.core.sheet.subjects import BeamSubject, counterweighted
from backspan.core.sheet.witness import EvidenceClass

ID = "fulcrum-kind"


def judge(case: Case) -> Iterator[Answer]:
    """One finding a beam."""
    for subject in counterweighted(case, ID):
        if isinstance(subject, DoesNotApply):
            yield subject
            continue
        inputs, fulcrum = Inputs(case), subject.support.fulcrum
        place = (*subject.place, "fulcrum")
        if fulcrum is None:
            inputs.want("fulcrum", EvidenceClass.OBSERVATION, place)
        kind = "" if fulcrum is None else _kind(fulcrum, case.edge.parapet)
        words: list[tuple[str, MessageValue]] = [("kind", kind)]
        most = _most(case, subject)
        if not math.isnan(most):
            words.append(("most", Amount(most, FORCE)))
        refer = tuple[Need, ...]()
        ending = "missing" if fulcrum is None else "pass"
        if kind in {str(FulcrumKind.TOWER), str(FulcrumKind.PARAPET)}:
            ending = "refer" if math.isnan(most) else "refer-with-load"
            refer = (Need(Decider.LICENSED_ENGINEER, Message("need.fulcrum", (("kind", kind),))),)
        found = judge_presence(
            inputs,
            check=ID,
            subject=subject.name,
            place=place,
            message=Message(f"fulcrum.{ending}", tuple(words)),
            met=None if fulcrum is None else True,
            refer=refer,
        )
        yield replace(found, not_judged=bool(refer))


def _kind(fulcrum: Fulcrum, wall: Parapet | None) -> str:
    """The kind stated; whatever stands within the thickness of the parapet stands on that."""
    there = wall is not None and surely_above(wall.height.value, limit=0.0)
    setback = fulcrum.setback
    if wall is None or not there or setback is None:
        return str(fulcrum.kind)
    behind = surely_above(setback.value, limit=wall.thickness.value)
    return str(fulcrum.kind if behind else FulcrumKind.PARAPET)


def _most(case: Case, subject: BeamSubject) -> float:
    sheet, beam = BareSheet({}, {}), beam_reads(case, subject)
    own = weight(mass=sheet.read(beam.mass)).value
    rated, _ = hoist_reads(case, subject.point)
    return rated.as_stated + as_built(sheet, beam).counterweight + own


CHECK = Check(ID, Topic.STANDS_ON, judge)
