"""Does the maker's label on the beam allow the counterweight that is on it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from backspan.core.findings import DoesNotApply, Finding, Message, MessageValue
from backspan.core.judgement.case import Case
from backspan.core.judgement.check import Answer, Check
from backspan.core.judgement.decide import decide
from backspan.core.judgement.inputs import EvidenceClass, Inputs
from backspan.core.judgement.limits import needed_value
from backspan.core.judgement.subjects import BeamSubject, counterweighted
from backspan.core.judgement.words_allowed import judge_words
from backspan.core.model.kit import Beam, BeamLabel, LabelState
from backspan.core.numbers import exact_sum, meets
from backspan.core.quantities import MASS, RATIO, Amount
from backspan.core.rules.selected import SelectedValue

ID = "beam-label"
STATE = "equipment.label-state"
COUNT = "equipment.label-count"


@dataclass(frozen=True, slots=True)
class OnBeam:
    """What stands on a beam: pieces and their mass, at the harmful end."""

    pieces: int
    mass: float


def judge(case: Case) -> Iterator[Answer]:
    """The label's state for each beam, then each of its limits where it can be read."""
    for subject in counterweighted(case, ID):
        if isinstance(subject, DoesNotApply):
            yield subject
            continue
        beam = case.beam(subject.support.beam)
        yield _judge_state(case, subject, beam)
        if beam.label is not None and beam.label.state is LabelState.READABLE:
            yield from _judge_limits(case, subject, beam.id, beam.label)


def _judge_state(case: Case, subject: BeamSubject, beam: Beam) -> Finding:
    inputs = Inputs(case)
    place = ("kit", "beams", beam.id, "label")
    if beam.label is None:
        inputs.want("label", EvidenceClass.OBSERVATION, place)
    else:
        inputs.fact("label_state", str(beam.label.state), (*place, "state"))
    return judge_words(
        check=ID,
        subject=subject.name,
        place=subject.place,
        message="label-state",
        words=None if beam.label is None else (str(beam.label.state),),
        rule=needed_value(case.practice, STATE),
        inputs=inputs,
    )


def _judge_limits(
    case: Case, subject: BeamSubject, beam: str, label: BeamLabel
) -> Iterator[Finding]:
    """One finding for each limit the label states; one that it is missing when it states none."""
    rule = needed_value(case.practice, COUNT)
    place = ("kit", "beams", beam, "label")
    if label.most_mass is not None:
        inputs = Inputs(case)
        on_beam = _on_beam(inputs, subject)
        most_mass = inputs.measure(
            "label_mass", label.most_mass, MASS, EvidenceClass.RATING, (*place, "most_mass")
        )
        yield _finding(subject, rule, inputs, on_beam, most_mass=most_mass)
    if label.most_pieces is not None or label.most_mass is None:
        inputs = Inputs(case)
        on_beam = _on_beam(inputs, subject)
        most = inputs.count(
            "label_pieces", label.most_pieces, EvidenceClass.RATING, (*place, "most_pieces")
        )
        yield _finding(subject, rule, inputs, on_beam, most=most)


def _on_beam(inputs: Inputs, subject: BeamSubject) -> OnBeam:
    counts: list[int] = []
    masses: list[float] = []
    for index, group in enumerate(subject.support.stack.groups):
        piece = inputs.case.piece(group.piece)
        count = inputs.count(
            "pieces",
            group.count,
            EvidenceClass.COUNT,
            (*subject.place, "stack", "groups", index, "count"),
        )
        mass = inputs.measure(
            "piece_mass",
            piece.mass,
            MASS,
            EvidenceClass.MASS,
            ("kit", "pieces", piece.id, "mass"),
        )
        counts.append(count or 0)
        masses.append((count or 0) * (mass or 0.0))
    return OnBeam(int(exact_sum(counts)), exact_sum(masses))


def _finding(
    subject: BeamSubject,
    rule: SelectedValue,
    inputs: Inputs,
    on_beam: OnBeam,
    *,
    most: int | None = None,
    most_mass: float | None = None,
) -> Finding:
    demand, capacity = (
        (on_beam.mass, most_mass) if most_mass is not None else (float(on_beam.pieces), most)
    )
    met = None if capacity is None else meets(demand=demand, capacity=float(capacity))
    verdict, needs = decide(met=met, inputs=inputs, rules=(rule,))
    values: list[tuple[str, MessageValue]] = [
        ("pieces", on_beam.pieces),
        ("mass", Amount(on_beam.mass, MASS)),
    ]
    if most is not None:
        values.append(("most", most))
    if most_mass is not None:
        values.append(("most_mass", Amount(most_mass, MASS)))
    ending = "missing" if met is None else "pass" if met else "fail"
    kind = "label-limit" if most_mass is None else "label-limit-mass"
    dimension = RATIO if most_mass is None else MASS
    return Finding(
        check=ID,
        subject=subject.name,
        place=subject.place,
        verdict=verdict,
        message=Message(f"{kind}.{ending}", tuple(values)),
        demand=None if capacity is None else Amount(demand, dimension),
        capacity=None if capacity is None else Amount(float(capacity), dimension),
        utilisation=demand / capacity if capacity is not None and capacity > 0 else None,
        governing=rule.key,
        question=kind,
        rules=(rule,),
        inputs=tuple(inputs.used),
        needs=needs,
    )


CHECK = Check(ID, judge)
