"""Does each tieback pull straight back from the face, or two of them as an opposing pair.

A single tieback at an angle pulls its beam sideways, and is refused. Two of which one is at an
angle hold only from opposite sides of the beam; on one side no forces of both balance.
"""

from __future__ import annotations

from collections.abc import Iterator

from backspan.core.angles import RIGHT_ANGLE
from backspan.core.findings import DoesNotApply, Message
from backspan.core.model.rigs import SuspensionPoint
from backspan.core.model.topics import Topic
from backspan.core.numbers import surely_above
from backspan.core.quantities import ANGLE
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.compared import Compared
from backspan.core.sheet.decide import ENDINGS
from backspan.core.sheet.limits import needed_value
from backspan.core.sheet.question import Asked, Judged, Question, Told, asked_each
from backspan.core.sheet.sheet import Sheet
from backspan.core.sheet.subjects import in_force
from backspan.core.sheet.tied import MOST_ANGLE, Ties, angle_of, is_pair, ties_of

ID = "tieback-angle"
KEY = "tieback.perpendicular"


def work(sheet: Sheet, one: Asked[Ties]) -> Iterator[Compared]:
    """Each angle against the most a single tieback may have; of a pair that the sides differ."""
    each, most = one.subject.each, one.subject.most
    angles = [angle_of(sheet, tie) for tie in each]
    pair = is_pair(angles, most)
    if pair:
        product = angles[0] * angles[1]
        sheet.positive("one_side", -product)
    for tie, angle in zip(each, angles, strict=True):
        # A pair may stand at any angle that still pulls back: its pulls are asked by its strength.
        allowed = RIGHT_ANGLE if pair else most
        numbers = (("angle", abs(angle), ANGLE), ("most", allowed, ANGLE))
        yield Compared(abs(angle), allowed, words=(("tieback", tie.tie.id),), numbers=numbers)


def tells(judged: Judged[Ties, Compared]) -> Told:
    """The angle furthest off, and whether it is one of a pair."""
    shown, met = judged.weighed.shown, judged.weighed.met
    alone = shown is None or not surely_above(shown.capacity, limit=judged.asked.subject.most)
    words = () if shown is None else tuple(shown.told())
    return Told(Message(f"tieback-{'angle' if alone else 'pair'}.{ENDINGS[met]}", words))


QUESTION = Question(ID, ID, ANGLE, work, tells, strength=False)


def judge(case: Case) -> Iterator[Answer]:
    """One finding a suspension point with tiebacks."""
    return asked_each(QUESTION, case, asked(case))


def asked(case: Case) -> Iterator[Asked[Ties] | DoesNotApply]:
    """The tiebacks of each point under the rule in force and the trade's own angle."""
    usual = needed_value(case.practice, MOST_ANGLE)
    values = (*(value for _, value in in_force(case, KEY)), usual)
    for point, name, place in tied_points(case, ID):
        if isinstance(point, DoesNotApply):
            yield point
        else:
            yield Asked(ties_of(case, point), name, place, values)


def tied_points(
    case: Case, check: str
) -> Iterator[tuple[SuspensionPoint | DoesNotApply, str, tuple[str | int, ...]]]:
    """The suspension points that tiebacks hold; the others with the reason."""
    for point in case.points:
        name, place = case.name_of(point), case.place_of(point)
        none = DoesNotApply(check, name, place, Message("na.no-tieback"))
        yield point if point.tied else none, name, place
    if not case.points:
        reason = Message("na.no-suspension-point")
        yield DoesNotApply(check, case.subject, case.place, reason), case.subject, case.place


CHECK = Check(ID, Topic.TIEBACK, judge)
