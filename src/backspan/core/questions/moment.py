"""How hard does a load turn a beam about its fulcrum, before any factor."""

from __future__ import annotations

from backspan.core.findings import Message
from backspan.core.mechanics.tipping import tipping_moment
from backspan.core.quantities import FORCE, LENGTH, MOMENT, Amount
from backspan.core.questions.parameters import LOAD, REACH
from backspan.core.questions.shape import Answer, Asked, Line, Topic


def _answer(asked: Asked) -> Answer:
    load, reach = asked.needed("load"), asked.needed("reach")
    step = tipping_moment(load=load, reach=reach)
    moment = Amount(step.value, MOMENT)
    words = (("load", Amount(load, FORCE)), ("reach", Amount(reach, LENGTH)), ("moment", moment))
    return Answer(
        message=Message("moment", words),
        lines=(Line("moment", moment),),
        steps=(step,),
        notes=(Message("note.moment-practice"), Message("note.asker-vouches")),
    )


TOPIC = Topic(
    "moment",
    "How hard does a load turn the beam about its fulcrum?",
    (LOAD, REACH),
    "load=2000lb reach=8ft",
    _answer,
)
