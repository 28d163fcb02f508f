"""What a cord leaves of the voltage at the hoists, and what they ask of a generator.

What is refused is refused by a number that somebody stated: the maker's least voltage, a share, a
rating. Without the maker's least voltage, or without the current of a start, nothing passes.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from backspan.core.ask.answering import posed
from backspan.core.ask.shape import Answer, Asked, Line, QuestionError
from backspan.core.findings import Decider, Message, MessageValue, Need, Verdict
from backspan.core.mechanics import FORMULAS
from backspan.core.mechanics.power import (
    cord_mass,
    current_on_cord,
    drop_by_least,
    drop_by_share,
    share_lost,
    voltage_left,
)
from backspan.core.mechanics.tipping import weight
from backspan.core.numbers import at_most, meets, step_down, surely_below
from backspan.core.quantities import (
    APPARENT_POWER,
    CONDUCTOR_AREA,
    CURRENT,
    FORCE,
    LENGTH,
    LINEAR_RESISTANCE,
    RATIO,
    TAPE_STEP,
    VOLTAGE,
    Amount,
    display,
)
from backspan.core.quantities.conductors import conductor_size
from backspan.core.rules.selected import SelectedRules, SelectedValue
from backspan.core.sheet.decide import to_confirm
from backspan.core.sheet.limits import limit_of, needed_value
from backspan.core.worked.formula import Step

_VOUCHED = Message("note.asker-vouches")
_RESISTANCE, _MOST_DROP = "power.resistance-", "power.most-cord-drop"
#: Which formulas hold, by the number of phases.
PHASES = {1: "single_phase", 3: "three_phase"}

_Words = tuple[tuple[str, MessageValue], ...]


@dataclass(frozen=True, slots=True)
class Drawn:
    """What all hoists on one cord draw while they lift, and at the worst of a start, if told."""

    phase: str
    lifting: Step
    starting: Step | None
    notes: tuple[Message, ...]

    @property
    def steps(self) -> tuple[Step, ...]:
        """Each of them that there is."""
        return (self.lifting,) if self.starting is None else (self.lifting, self.starting)


@dataclass(frozen=True, slots=True)
class Conductor:
    """What its resistance is for its length, and by which rule value where nobody stated it."""

    resistance: float
    rule: SelectedValue | None


def answer_cord(asked: Asked) -> Answer:
    """What a cord leaves at the hoists; without its length, how long it may be."""
    practice, most = posed(asked).case.practice, asked.number("most-drop")
    if most is not None and not surely_below(most, limit=1.0):
        raise QuestionError("most-drop: a share below all of it is expected, such as 5%")
    conductor, drawn = _conductor(asked, practice), _drawn(asked)
    if asked.number("length") is None:
        if asked.number("more") is not None:
            raise QuestionError("more: nothing follows from it without length=..., what is there")
        return _longest(asked, conductor, drawn, needed_value(practice, _MOST_DROP))
    return _lost(asked, conductor, drawn, needed_value(practice, _MOST_DROP))


def answer_generator(asked: Asked) -> Answer:
    """What hoists draw while they lift and as they start, against what a generator gives."""
    drawn, volts = _drawn(asked), asked.number("volts") or 0.0
    draw = FORMULAS[f"power_{drawn.phase}"]
    powers = [draw(supply_voltage=volts, current=one.value) for one in drawn.steps]
    given, momentary = asked.values["set"], asked.values.get("set-start", asked.values["set"])
    told = [Amount(one.value, APPARENT_POWER) for one in powers]
    words: _Words = (("running", told[0]), ("given", given), ("given_start", momentary))
    if told[1:]:
        words = (*words, ("start", told[1]))
    notes = [Message("note.generator-rating"), Message("note.generator-in-kw"), *drawn.notes]
    if "set-start" not in asked.values:
        notes.append(Message("note.start-by-rating"))
    needs = _not_told("start-amps", asked)
    ending, verdict = "enough", Verdict.PASS
    if not _meets(told[0], given):
        ending, verdict, needs = "low", Verdict.FAIL, ()
    elif not told[1:]:
        ending, verdict = "open", Verdict.MISSING
    elif not _meets(told[1], momentary):
        ending, verdict = "low-start", Verdict.FAIL
    return Answer(
        Message(f"ask.generator-{ending}", words),
        verdict=verdict,
        lines=tuple(
            Line(name, one)
            for name, one in zip(("power-running", "power-starting"), told, strict=False)
        ),
        steps=(*drawn.steps, *powers),
        notes=(*notes, _VOUCHED),
        needs=needs,
    )


def _drawn(asked: Asked) -> Drawn:
    phases, hoists = int(asked.number("phases") or 0), int(asked.number("hoists") or 0)
    amps, at_start = asked.number("amps") or 0.0, asked.number("start-amps")
    at_once = asked.number("starting")
    problems = []
    if phases not in PHASES:
        problems.append(f"phases: found {phases}, expected 1 or 3")
    if at_once is not None and at_once > hoists:
        problems.append(f"starting: found {at_once:g}, expected no more than the {hoists} hoists")
    if at_once is not None and at_start is None:
        problems.append("starting: nothing follows from it without start-amps=...")
    if at_start is not None and not meets(demand=amps, capacity=at_start):
        problems.append("start-amps: a hoist that starts draws no less than one that lifts")
    if problems:
        raise QuestionError(*problems)
    phase = PHASES[phases]
    notes = [Message(f"note.{phase.replace('_', '-')}")]
    starting = None
    if at_start is not None:
        number = hoists if at_once is None else at_once
        notes += [] if at_once is not None else [Message("note.all-start")]
        starting = current_on_cord(
            running_hoists=hoists - number,
            running_current=amps,
            starting_hoists=number,
            starting_current=at_start,
        )
    lifting = current_on_cord(
        running_hoists=hoists,
        running_current=amps,
        starting_hoists=0,
        starting_current=amps if at_start is None else at_start,
    )
    return Drawn(phase, lifting, starting, tuple(notes))


def _conductor(asked: Asked, practice: SelectedRules) -> Conductor:
    """Resistance as stated, else by the gage; QuestionError for a gage that has no row."""
    stated, area = asked.number("ohms"), asked.number("gage")
    if (stated is None) == (area is None):
        found = "neither" if stated is None else "both"
        raise QuestionError(f"{found} of gage and ohms is given; give the one that is known")
    if stated is not None or area is None:
        return Conductor(stated or 0.0, None)
    size = conductor_size(Fraction(area)) or ""
    value = practice.find(_RESISTANCE + size.lower().replace(" ", "-"))
    if value is None:
        known = [
            one.key.removeprefix(_RESISTANCE).replace("-awg", " AWG")
            for one in practice.topic("power")
            if one.key.startswith(_RESISTANCE)
        ]
        found = display(area, CONDUCTOR_AREA, asked.style)
        expected = f"expected one of {', '.join(known)}, or ohms=... from its maker"
        raise QuestionError(f"gage: the table has no {found}; {expected}")
    return Conductor(limit_of(value, LINEAR_RESISTANCE), value)


def _lost(asked: Asked, conductor: Conductor, drawn: Drawn, practice: SelectedValue) -> Answer:
    """What a cord of a stated length loses, and whether enough is left."""
    volts, before = asked.number("volts") or 0.0, asked.number("length") or 0.0
    length = before + (asked.number("more") or 0.0)
    lose = FORMULAS[f"drop_{drawn.phase}"]

    def lost(along: float, current: Step) -> Step:
        return lose(
            cord_length=along, conductor_resistance=conductor.resistance, current=current.value
        )

    drops = [lost(length, one) for one in drawn.steps]
    left = [voltage_left(supply_voltage=volts, drop=one.value) for one in drops]
    share = share_lost(drop=drops[0].value, supply_voltage=volts)
    steps = [*drawn.steps, *drops, *left, share]
    lines = [
        Line("cord-drop", Amount(drops[0].value, VOLTAGE)),
        Line("cord-left", Amount(left[0].value, VOLTAGE)),
    ]
    if drops[1:]:
        lines.append(Line("cord-drop-start", Amount(drops[1].value, VOLTAGE)))
        lines.append(Line("cord-left-start", Amount(left[1].value, VOLTAGE)))
    if length > before:
        shorter = lost(before, drawn.lifting)
        steps.append(shorter)
        lines.append(Line("cord-drop-before", Amount(shorter.value, VOLTAGE)))
        lines.append(Line("cord-length", Amount(length, LENGTH)))
    hung, hanging = _weight(asked, length)
    ending, verdict, needs = _judged(asked, conductor, share.value, left, practice)
    words: list[tuple[str, MessageValue]] = [
        ("drop", Amount(drops[0].value, VOLTAGE)),
        ("lost", Amount(share.value, RATIO)),
        ("left", Amount(left[0].value, VOLTAGE)),
        ("most_lost", asked.values.get("most-drop", Amount(limit_of(practice, RATIO), RATIO))),
    ]
    words += [("start", Amount(left[1].value, VOLTAGE))] if left[1:] else []
    words += [("least", asked.values["least-volts"])] if "least-volts" in asked.values else []
    return Answer(
        Message(f"ask.cord-{ending}", tuple(words)),
        verdict=verdict,
        lines=(*lines, *hanging),
        steps=(*steps, *hung),
        rules=_rules(asked, conductor, practice),
        notes=_notes(conductor, drawn, hangs=bool(hanging)),
        needs=needs,
    )


def _judged(
    asked: Asked, conductor: Conductor, share: float, left: list[Step], practice: SelectedValue
) -> tuple[str, Verdict, tuple[Need, ...]]:
    """The ending of the sentence, the verdict, what would settle it: worst first."""
    least, most = asked.number("least-volts"), asked.number("most-drop")
    if left[0].value <= 0.0:
        return "nothing-left", Verdict.FAIL, ()
    if least is not None and not meets(demand=least, capacity=left[0].value):
        return "low", Verdict.FAIL, ()
    if least is not None and left[1:] and not meets(demand=least, capacity=left[1].value):
        return "low-start", Verdict.FAIL, ()
    if most is not None and not meets(demand=share, capacity=most):
        return "over", Verdict.FAIL, ()
    usual = most is not None or meets(demand=share, capacity=limit_of(practice, RATIO))
    told = (("lost", Amount(share, RATIO)),)
    beyond = () if usual else (Need(Decider.CONTRACTOR, Message("ask.need-of-drop", told)),)
    not_told = (*_not_told("least-volts", asked), *_not_told("start-amps", asked))
    doubted = (*beyond, *_remembered(conductor))
    if not_told:
        ending = "drop" if usual else "over-practice"
        return ending, Verdict.MISSING, (*not_told, *doubted)
    if not usual:
        return "over-practice", Verdict.REFER, doubted
    return "enough", Verdict.REFER if doubted else Verdict.PASS, doubted


def _longest(asked: Asked, conductor: Conductor, drawn: Drawn, practice: SelectedValue) -> Answer:
    """The longest cord by the share it may lose, and by the maker's least voltage where told."""
    volts, least = asked.number("volts") or 0.0, asked.number("least-volts")
    most = asked.number("most-drop")
    share = drop_by_share(
        most_drop=limit_of(practice, RATIO) if most is None else most, supply_voltage=volts
    )
    allowed, wanted = [share], [(share, drawn.lifting)]
    if least is not None:
        spare = drop_by_least(supply_voltage=volts, least_voltage=least)
        allowed.append(spare)
        wanted += [(spare, current) for current in drawn.steps]
    reached = FORMULAS[f"longest_{drawn.phase}"]
    lengths = [
        reached(
            allowed_drop=one.value,
            conductor_resistance=conductor.resistance,
            current=current.value,
        )
        for one, current in wanted
    ]
    longest = lengths[0].value
    for one in lengths[1:]:
        longest = at_most(longest, most=one.value)
    longest = step_down(longest, step=TAPE_STEP[asked.style])
    needs = (*_not_told("least-volts", asked), *_not_told("start-amps", asked))
    doubted = _remembered(conductor)
    verdict = Verdict.MISSING if needs else Verdict.REFER if doubted else None
    message = Message("ask.cord-longest", (("value", Amount(longest, LENGTH)),))
    lines: tuple[Line, ...] = (Line("cord-longest", Amount(longest, LENGTH)),)
    hung: tuple[Step, ...] = ()
    if least is not None and not surely_below(least, limit=volts):
        given = (("least", asked.values["least-volts"]), ("volts", asked.values["volts"]))
        message, verdict, lines = Message("ask.cord-no-length", given), Verdict.FAIL, ()
    else:
        hung, hanging = _weight(asked, longest)
        lines = (*lines, *hanging)
    lines = (*lines, Line("cord-current", Amount(drawn.lifting.value, CURRENT)))
    notes = (Message("note.rounded-down"), *_notes(conductor, drawn, hangs=bool(hung)))
    return Answer(
        message,
        verdict=verdict,
        lines=lines,
        steps=(*drawn.steps, *allowed, *lengths, *hung),
        rules=_rules(asked, conductor, practice),
        notes=notes,
        needs=(*needs, *doubted),
    )


def _weight(asked: Asked, length: float) -> tuple[tuple[Step, ...], tuple[Line, ...]]:
    """What the cord weighs, where the mass for its length is told."""
    linear = asked.number("cord-mass")
    if linear is None:
        return (), ()
    mass = cord_mass(cord_linear_mass=linear, cord_length=length)
    hung = weight(mass=mass.value)
    return (mass, hung), (Line("cord-weight", Amount(hung.value, FORCE)),)


def _rules(
    asked: Asked, conductor: Conductor, practice: SelectedValue
) -> tuple[SelectedValue, ...]:
    by_table = () if conductor.rule is None else (conductor.rule,)
    return by_table if "most-drop" in asked.values else (*by_table, practice)


def _notes(conductor: Conductor, drawn: Drawn, *, hangs: bool) -> tuple[Message, ...]:
    names = ["resistance-alone", *(["table-of-gages"] if conductor.rule else [])]
    names += ["same-least-at-start"] if drawn.starting is not None else []
    names += ["cord-itself", *(["cord-hangs"] if hangs else [])]
    return (*(Message(f"note.{one}") for one in names), *drawn.notes, _VOUCHED)


def _remembered(conductor: Conductor) -> tuple[Need, ...]:
    rule = conductor.rule
    return (to_confirm(rule),) if rule is not None and rule.only_remembered else ()


#: The inputs without which nothing passes, by how they are asked: from the hoist's papers.
_LACKING = {"least-volts": "least_voltage", "start-amps": "starting_current"}


def _not_told(parameter: str, asked: Asked) -> tuple[Need, ...]:
    if parameter in asked.values:
        return ()
    said = (("input", _LACKING[parameter]), ("parameter", parameter))
    return (Need(Decider.CONTRACTOR, Message("ask.need", said)),)


def _meets(demand: Amount, capacity: object) -> bool:
    return isinstance(capacity, Amount) and meets(demand=demand.value, capacity=capacity.value)
