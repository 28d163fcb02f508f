"""A fulcrum on a tower or on the parapet: the structural engineer says what it may carry.

What an engineer signed for it, and the beam keeps within, stands. Else it is told with what comes
on it and on the rear stand, as stated: at rated load and with nothing on the line. Where the rear
stand or the beam's own weight is not known, with the most that can come on it: all that hangs at
rated load and all that lies on the beam.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace

from backspan.core.findings import Decider, DoesNotApply, Message, MessageValue, Need
from backspan.core.model.rigs import Fulcrum, FulcrumKind
from backspan.core.model.site import Parapet
from backspan.core.model.topics import Topic
from backspan.core.numbers import at_least, ends_around, meets, smaller, surely_above, surely_below
from backspan.core.quantities import FORCE, Amount
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.moments import support_reads
from backspan.core.sheet.presence import judge_presence
from backspan.core.sheet.reactions import on_two_stands
from backspan.core.sheet.reads import hoist_reads, read_of
from backspan.core.sheet.sheet import BareSheet
from backspan.core.sheet.signed import signed_for
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
        on_wall = fulcrum is not None and _may_be_on_wall(fulcrum, case.edge.parapet)
        if on_wall:
            inputs.want("setback", EvidenceClass.GEOMETRY, place)
        words: list[tuple[str, MessageValue]] = [("kind", kind)]
        refer = tuple[Need, ...]()
        ending = "missing" if fulcrum is None else "on-wall-missing" if on_wall else "pass"
        signed = signed_for(case, subject, "most_front")
        if kind in {str(FulcrumKind.TOWER), str(FulcrumKind.PARAPET)} and signed is not None:
            ending, words = "signed-for", [*words, *signed]
        elif kind in {str(FulcrumKind.TOWER), str(FulcrumKind.PARAPET)}:
            ending, loads = _loads(case, subject)
            words += loads
            refer = (Need(Decider.LICENSED_ENGINEER, Message("need.fulcrum", (("kind", kind),))),)
        found = judge_presence(
            inputs,
            check=ID,
            subject=subject.name,
            place=place,
            message=Message(f"fulcrum.{ending}", tuple(words)),
            met=None if fulcrum is None or on_wall else True,
            refer=refer,
        )
        yield replace(found, not_judged=bool(refer))


def _kind(fulcrum: Fulcrum, wall: Parapet | None) -> str:
    """The kind stated; what stands within the thickness of the parapet stands on that.

    So does a plate whose centre is behind it and that reaches on to it.
    """
    setback = fulcrum.setback
    if wall is None or not _has_wall(wall) or setback is None:
        return str(fulcrum.kind)
    sides = [one.value for one in (fulcrum.plate_length, fulcrum.plate_width) if one is not None]
    _, half = ends_around(0.0, long=smaller(*sides) if sides else 0.0)
    behind = meets(demand=wall.thickness.value + half, capacity=setback.value) and surely_above(
        setback.value, limit=wall.thickness.value
    )
    return str(fulcrum.kind if behind else FulcrumKind.PARAPET)


def _has_wall(wall: Parapet | None) -> bool:
    return wall is not None and surely_above(wall.height.value, limit=0.0)


def _may_be_on_wall(fulcrum: Fulcrum, wall: Parapet | None) -> bool:
    """Whether nobody can tell if it stands within the thickness of the wall."""
    asked = fulcrum.kind not in {FulcrumKind.TOWER, FulcrumKind.PARAPET}
    return asked and fulcrum.setback is None and _has_wall(wall)


def _loads(case: Case, subject: BeamSubject) -> tuple[str, list[tuple[str, MessageValue]]]:
    """How the message ends, and what comes on the two stands as far as it is known."""
    beam = support_reads(case, subject).beam
    rated, _ = hoist_reads(case, subject.point)
    stand = read_of("rear_stand", subject.support, subject.place)
    sheet = BareSheet({}, {})
    stands = on_two_stands(sheet, beam, stand)
    found: list[tuple[str, MessageValue]] = []
    for name, load in (("loaded", rated.as_stated), ("idle", 0.0)):
        rear = at_least(stands.rear(sheet, load), least=0.0)
        front = stands.front(sheet, load, carried_behind=rear)
        if math.isnan(front) or surely_below(front, limit=0.0):
            most = stands.front(sheet, rated.as_stated, carried_behind=0.0)
            known = not math.isnan(most)
            return ("refer-with-load", [("most", Amount(most, FORCE))]) if known else ("refer", [])
        found += [(f"front_{name}", Amount(front, FORCE)), (f"rear_{name}", Amount(rear, FORCE))]
    return "refer-with-reactions", found


CHECK = Check(ID, Topic.STANDS_ON, judge)
