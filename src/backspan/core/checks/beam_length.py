"""Is the beam long enough for its stack: does the counterweight stand inboard of the fulcrum."""

from __future__ import annotations

from collections.abc import Iterator

from backspan.core.findings import (
    DoesNotApply,
    Finding,
    Message,
    MessageValue,
    Verdict,
)
from backspan.core.judgement import beam_as_built
from backspan.core.judgement.beam_as_built import AsBuilt
from backspan.core.judgement.case import Case
from backspan.core.judgement.check import Answer, Check
from backspan.core.judgement.decide import decide
from backspan.core.judgement.inputs import EvidenceClass, Inputs
from backspan.core.judgement.subjects import BeamSubject, counterweighted
from backspan.core.mechanics.beam_geometry import inboard_length
from backspan.core.model.rigs import BackspanFrom
from backspan.core.numbers import meets
from backspan.core.quantities import LENGTH, Amount
from backspan.core.worked.formula import Step

ID = "beam-length"


def judge(case: Case) -> Iterator[Answer]:
    """One finding a beam whose length is stated: the stack, or the taped backspan, fits."""
    for subject in counterweighted(case, ID):
        if isinstance(subject, DoesNotApply):
            yield subject
        elif subject.support.backspan_from is BackspanFrom.STACK:
            yield _stack_fits(case, subject)
        elif case.beam(subject.support.beam).length is None:
            yield DoesNotApply(ID, subject.name, subject.place, Message("na.beam-length"))
        else:
            found = _backspan_fits(case, subject)
            # A beam that reaches beyond the line has less inboard than the finding could take.
            open_tip = subject.support.tip_beyond_line is None and found.verdict is Verdict.PASS
            reason = Message("na.beam-tip")
            silent = DoesNotApply(ID, found.subject, found.place, reason, found.inputs)
            yield silent if open_tip else found


def _stack_fits(case: Case, subject: BeamSubject) -> Finding:
    inputs = Inputs(case)
    built = beam_as_built.read(inputs, subject)
    return _finding(
        subject,
        inputs,
        built,
        taken=built.stack_inner_end,
        inboard=built.inboard,
        kind="stack",
        steps=built.steps,
    )


def _backspan_fits(case: Case, subject: BeamSubject) -> Finding:
    inputs = Inputs(case)
    built = beam_as_built.read(inputs, subject)
    beam = case.beam(subject.support.beam)
    length = inputs.measure(
        "beam_length",
        beam.length,
        LENGTH,
        EvidenceClass.GEOMETRY,
        ("kit", "beams", beam.id, "length"),
    )
    if subject.support.tip_beyond_line is None:
        tip: float | None = 0.0
    else:
        tip = inputs.measure(
            "tip_beyond_line",
            subject.support.tip_beyond_line,
            LENGTH,
            EvidenceClass.GEOMETRY,
            (*subject.place, "tip_beyond_line"),
        )
    inboard = None
    if length is not None and tip is not None and built.reach is not None:
        inboard = inboard_length(beam_length=length, tip_beyond_line=tip, reach=built.reach)
    return _finding(
        subject,
        inputs,
        built,
        taken=built.backspan,
        inboard=None if inboard is None else inboard.value,
        kind="backspan",
        steps=() if inboard is None else (inboard,),
    )


def _finding(
    subject: BeamSubject,
    inputs: Inputs,
    built: AsBuilt,
    *,
    taken: float | None,
    inboard: float | None,
    kind: str,
    steps: tuple[Step, ...],
) -> Finding:
    met = None
    if taken is not None and inboard is not None:
        met = inboard > 0.0 and meets(demand=taken, capacity=inboard)
    verdict, needs = decide(met=met, inputs=inputs, rules=())
    ending = "missing" if met is None else "pass" if met else "fail"
    values: tuple[tuple[str, MessageValue], ...] = ()
    if taken is not None and inboard is not None:
        values = (
            ("taken", Amount(taken, LENGTH)),
            ("inboard", Amount(max(0.0, inboard), LENGTH)),
            ("pieces", built.pieces),
        )
    return Finding(
        check=ID,
        subject=subject.name,
        place=subject.place,
        verdict=verdict,
        message=Message(f"{kind}-fits.{ending}", values),
        demand=None if taken is None else Amount(taken, LENGTH),
        capacity=None if inboard is None else Amount(inboard, LENGTH),
        utilisation=None if not taken or not inboard or inboard < 0.0 else taken / inboard,
        inputs=tuple(inputs.used),
        steps=steps,
        needs=needs,
    )


CHECK = Check(ID, judge)
