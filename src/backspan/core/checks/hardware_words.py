"""What was seen of the hardware: each piece and its pin, and the thimble in the rope's eye.

No thimble is needed where the rope ends in a socket; everywhere else the rope bends round the pin.
"""

from __future__ import annotations

from collections.abc import Iterator

from backspan.core.findings import DoesNotApply
from backspan.core.model.kit import SOCKETS
from backspan.core.model.rigs import Found
from backspan.core.model.topics import Topic
from backspan.core.sheet.case import Case
from backspan.core.sheet.check import Answer, Check
from backspan.core.sheet.fitted import fitted_on, without_hardware
from backspan.core.sheet.inputs import Inputs
from backspan.core.sheet.rope_end import end_kind
from backspan.core.sheet.witness import EvidenceClass
from backspan.core.sheet.words_seen import Point, WordSeen, each_point

ID = "hardware-seen"

#: Of each piece: what is looked at, and the field of the piece that says what was found.
OF_A_PIECE = (("connector", "found"), ("pin", "pin"))


def judge(case: Case) -> Iterator[Answer]:
    """Of each piece whether it is sound and how its pin is held; of each point its thimble."""
    for one in each_point(case, ID):
        if isinstance(one, DoesNotApply):
            yield one
            continue
        pieces = fitted_on(case, one.point)
        if not pieces:
            yield without_hardware(case, ID, one.point)
        for piece in pieces:
            for name, field in OF_A_PIECE:
                inputs, at = Inputs(case), (*piece.place, field)
                stated = getattr(piece.fitted, field)
                word = inputs.word(name, stated, EvidenceClass.OBSERVATION, at)
                seen = WordSeen(ID, piece.name, piece.place, inputs, word)
                yield from seen.against(f"line.{name}", name)
        yield from _thimble(case, one)


def _thimble(case: Case, one: Point) -> Iterator[Answer]:
    inputs, at = Inputs(case), (*one.place, "thimble")
    word = inputs.word("thimble", one.point.thimble, EvidenceClass.OBSERVATION, at)
    # A thimble that is sound is so whatever the end is made with.
    other = word not in {None, Found.SOUND}
    socket = other and end_kind(inputs, one.point, one.place) in SOCKETS
    key = "line.thimble-at-socket" if socket else "line.thimble"
    yield from WordSeen(ID, one.name, at, inputs, word).against(key, "thimble")


CHECK = Check(ID, Topic.LINE, judge)
