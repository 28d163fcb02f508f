"""Laws of a review: units, order, tolerance and what is known decide nothing they should not."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import fields, is_dataclass, replace
from typing import Any

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from backspan.core.checks import CHECKS
from backspan.core.findings import Finding, InputUsed, Verdict
from backspan.core.model.basis import Basis
from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.model.kit import BeamLabel, PieceKind
from backspan.core.model.order import ordered
from backspan.core.model.project import Project
from backspan.core.model.rigs import Fastening, OtherSupport, OtherSupportKind
from backspan.core.quantities import FORCE, LENGTH, MASS, Dimension, parse
from backspan.core.quantities.named import QUANTITIES
from backspan.core.review import review
from backspan.core.review.run import roll_up
from backspan.core.sheet.case import Place
from backspan.core.words import settled
from tests.properties.rig_strategies import (
    COUNT,
    CREDITED,
    RANK,
    all_findings,
    is_stacked,
    rigs,
    tipping,
)
from tests.unit.core.rigs import (
    ARM,
    AUSTRALIA,
    BEAM,
    EN,
    HOIST,
    HONG_KONG,
    LEFT,
    LIBRARY,
    NEW_ZEALAND,
    ON,
    OSHA,
    PIECE,
    PROJECT,
    QUEBEC,
    RIG,
    STACK,
    STACKED,
    STAGE,
    answers,
    at,
    count,
    labelled,
    length,
    mass,
    on_basis,
    place_of,
    put,
)

#: One value in two spellings, exactly equal: a pound is 0.45359237 kg, an inch 25.4 mm.
SPELLINGS: dict[Dimension, tuple[Callable[[int], str], Callable[[int], str]]] = {
    LENGTH: (lambda n: f"{n} in", lambda n: f"{254 * n / 10:g} mm"),
    MASS: (
        lambda n: f"{n} lb",
        lambda n: f"{n * 45_359_237 // 10**8}.{n * 45_359_237 % 10**8:08d} kg",
    ),
    FORCE: (
        lambda n: f"{n} lb",
        lambda n: f"{n * 45_359_237 // 10**8}.{n * 45_359_237 % 10**8:08d} kg",
    ),
}
WRITTEN: tuple[tuple[Place, Dimension, int, int], ...] = (
    ((*ARM, "reach"), LENGTH, 6, 60),
    ((*ARM, "tip_beyond_line"), LENGTH, 0, 12),
    ((*STACK, "tail_gap"), LENGTH, 0, 24),
    ((*BEAM, "length"), LENGTH, 150, 260),
    ((*BEAM, "mass"), MASS, 60, 400),
    ((*PIECE, "mass"), MASS, 20, 110),
    ((*PIECE, "length_on_beam"), LENGTH, 1, 6),
    ((*HOIST, "rated_load"), FORCE, 500, 1500),
    ((*HOIST, "stall_load"), FORCE, 600, 4500),
    ((*STAGE, "dead_mass"), MASS, 300, 1200),
)


def of(project: Project) -> Any:
    """The review of the project's one drop."""
    return review(project, "D", LIBRARY, on=ON)


def without_text(record: Any) -> Any:
    """A record without what its values were written as."""
    if isinstance(record, StatedValue):
        return replace(record, text="")
    if isinstance(record, InputUsed):
        return replace(record, written="")
    if isinstance(record, tuple):
        return tuple(without_text(one) for one in record)
    if is_dataclass(record) and not isinstance(record, type):
        changes = {one.name: without_text(getattr(record, one.name)) for one in fields(record)}
        return replace(record, **changes)
    return record


@given(rigs(), st.data())
def test_units_change_neither_answer_nor_configuration(rig: Project, data: st.DataObject) -> None:
    one = other = rig
    for place, dimension, low, high in WRITTEN:
        number = data.draw(st.integers(low, high))
        us, metric = (spell(number) for spell in SPELLINGS[dimension])
        stated = at(rig, place) or length("1 in")
        one = put(one, place, replace(stated, value=parse(us, dimension), text=us))
        other = put(other, place, replace(stated, value=parse(metric, dimension), text=metric))
    assert without_text(one) == without_text(other)
    assert without_text(of(one)) == without_text(of(other))


@given(rigs(), st.data())
def test_the_order_of_named_lists_changes_nothing(rig: Project, data: st.DataObject) -> None:
    def shuffled(items: tuple[Any, ...]) -> tuple[Any, ...]:
        return tuple(data.draw(st.permutations(items)))

    mixed = rig
    for place in (("people",), ("kit", "pieces"), (*RIG, "suspension_points")):
        mixed = put(mixed, place, shuffled(at(rig, place)))
    extra = put(mixed.kit.hoists[0], ("id",), "H2")
    two, swapped = (*mixed.kit.hoists, extra), (extra, *mixed.kit.hoists)
    one = put(rig, ("kit", "hoists"), two)
    other = put(mixed, ("kit", "hoists"), swapped)
    assert of(ordered(one)) == of(ordered(other))


#: Checks with a number, and those of one word.
MEASURED = (
    *("tipping", "stall-cap", "beam-length", "beam-label", "beam-proportion", "bearing"),
    *("rear-bearing", "rope-strength", "hardware-strength"),
    *("tieback-strength", "tieback-angle", "anchor-load"),
)
JUDGED = (*MEASURED, "counterweight-kind", "counterweight-fastening")


@pytest.mark.law
@pytest.mark.parametrize("check", MEASURED)
@given(rigs())
def test_a_tolerance_of_zero_is_no_tolerance(check: str, rig: Project) -> None:
    rig = on_basis(rig, *rig.basis.tipping, OSHA, QUEBEC)
    exact = rig
    for place in ((*ARM, "reach"), (*HOIST, "rated_load"), (*PIECE, "mass"), (*BEAM, "mass")):
        exact = put(exact, (*place, "tolerance"), 0.0)
    exact = put(exact, (*COUNT, "tolerance"), 0)
    stated = all_findings(rig, check)
    for key, found in all_findings(exact, check).items():
        plain = stated[key]
        assert (found.verdict, found.utilisation, found.margins, found.notes) == (
            plain.verdict,
            plain.utilisation,
            plain.margins,
            plain.notes,
        )


#: Without these a check goes on: a tip nobody stated is taken as none (CHANGELOG, known gaps), a
#: beam whose centroid nobody stated as uniform.
DONE_WITHOUT = {"tip_beyond_line", "centroid_from_tail"}

#: How much of itself a value may be off by.
MOST_DOUBT = 0.3


def read_by(check: str) -> set[str]:
    """The quantities a check reads of rigs that differ in all that matters to it."""
    far = put(put(PROJECT, (*ARM, "reach"), length("9 ft")), (*ARM, "backspan"), length("8 ft"))
    label = labelled(20, "2000 lb")
    samples = (PROJECT, STACKED, far, put(PROJECT, (*BEAM, "label"), label))
    answered = [
        answer
        for sample in samples
        for answer in answers(on_basis(sample, OSHA, QUEBEC, AUSTRALIA, HONG_KONG), check)
    ]
    return {used.name for answer in answered for used in answer.inputs}


#: Every check with every measure it reads, as the table of quantities has them.
VAGUE = [
    (check, name)
    for check in MEASURED
    for name in sorted(read_by(check))
    if name in QUANTITIES and QUANTITIES[name].dimension is not None
]


@pytest.mark.law
@pytest.mark.parametrize(("check", "name"), VAGUE, ids=[f"{check}-{name}" for check, name in VAGUE])
@given(rigs(), st.floats(0.0, MOST_DOUBT), st.floats(0.0, MOST_DOUBT))
def test_a_larger_tolerance_never_improves(
    check: str, name: str, rig: Project, one: float, other: float
) -> None:
    place = place_of(name)
    assume(at(rig, place) is not None)
    rig = on_basis(rig, *rig.basis.tipping, OSHA, QUEBEC)
    small, large = sorted(share * at(rig, place).value for share in (one, other))
    narrow = all_findings(put(rig, (*place, "tolerance"), small), check)
    wide = all_findings(put(rig, (*place, "tolerance"), large), check)
    for key in narrow.keys() & wide.keys():
        assert RANK[wide[key].verdict] <= RANK[narrow[key].verdict], key


def removed(project: Project, used: InputUsed) -> Project:
    """The project without an input: not stated, or, where it must be, stated by nobody."""
    place = used.place
    if used.name in {"label_state", "condition"}:
        return put(project, place, None)
    if used.name == "support":
        return put(project, place, None)
    if used.name in {"stage", "from_points"}:
        return put(project, (*RIG, "stages"), ())
    if used.name == "piece_kind":
        return put(project, (*STACK, "groups"), ())
    stated = at(project, place)
    assert isinstance(stated, StatedValue)
    if place[-1] in {"rated_load", "count"} or (
        place[:2] == ("kit", "pieces") and place[-1] == "mass"
    ):
        return put(project, place, replace(stated, evidence=None))
    return put(project, place, None)


@pytest.mark.law
@pytest.mark.parametrize("check", JUDGED)
@given(rigs())
def test_a_pass_does_not_survive_the_loss_of_an_input_it_lists(check: str, rig: Project) -> None:
    """Removing an input listed in a passing finding never leaves that finding a pass."""
    rig = on_basis(rig, OSHA, QUEBEC, *rig.basis.tipping)
    # Of a backspan that is known both ways, what is left without the one is the other.
    assume(is_stacked(rig) or at(rig, (*STACK, "tail_gap")) is None)
    for key, found in all_findings(rig, check).items():
        if found.verdict is not Verdict.PASS or not found.subject.endswith("/L"):
            continue
        for used in found.inputs:
            if used.name in DONE_WITHOUT:
                continue
            left = all_findings(removed(rig, used), check).get(key)
            assert left is None or left.verdict is not Verdict.PASS, (key, used.name)


@given(rigs())
def test_a_stricter_basis_never_improves(rig: Project) -> None:
    alone = of(rig).verdict
    for more in (OSHA, NEW_ZEALAND, EN, CREDITED, QUEBEC):
        both = replace(rig, basis=Basis((*rig.basis.tipping, more)))
        assert RANK[of(both).verdict] <= RANK[alone]


ABSENT: tuple[tuple[Place, Any], ...] = (
    (RIG, None),
    ((*RIG, "suspension_points"), ()),
    ((*RIG, "stages"), ()),
    (ARM, None),
    ((*LEFT, "other_support"), OtherSupport(OtherSupportKind.CORNICE_HOOK)),
    ((*ARM, "reach"), None),
    ((*ARM, "backspan"), None),
    ((*ARM, "tip_beyond_line"), None),
    ((*STACK, "groups"), ()),
    ((*COUNT,), count(0)),
    ((*COUNT,), count(400, tolerance=500)),
    ((*STACK, "tail_gap"), None),
    ((*STACK, "tail_gap"), length("40 ft")),
    ((*STACK, "fastening"), StatedValue(Fastening.RESTING, evidence=Evidence.TOLD)),
    ((*BEAM, "length"), None),
    ((*BEAM, "length"), length("1/16 in")),
    ((*BEAM, "mass"), None),
    ((*BEAM, "label"), None),
    ((*BEAM, "label"), BeamLabel()),
    ((*PIECE, "kind"), PieceKind.WATER),
    ((*PIECE, "mass"), mass("55 lb", tolerance="60 lb")),
    ((*PIECE, "mass"), mass("55 lb", tolerance="55 lb")),
    ((*PIECE, "length_on_beam"), None),
    ((*HOIST, "stall_load"), None),
    ((*HOIST, "limiter_trip"), None),
    ((*HOIST, "rated_load", "tolerance"), parse("2000 lb", FORCE)),
    ((*STAGE, "dead_mass"), None),
)


@given(rigs(), st.lists(st.sampled_from(ABSENT), min_size=1, max_size=4))
def test_whatever_is_missing_or_impossible_there_is_an_answer(
    rig: Project, changes: list[tuple[Place, Any]]
) -> None:
    for place, value in changes:
        try:
            rig = put(rig, place, value)
        except (AttributeError, LookupError, TypeError, ZeroDivisionError):
            continue  # an earlier change took away what this one would change
    made = of(rig)
    taken = settled(made)
    left = [one for at, one in enumerate(made.findings) if at not in taken]
    assert RANK[made.verdict] <= RANK[roll_up(left)]
    heard = {one.check for one in made.findings} | {one.check for one in made.not_applicable}
    assert heard == {check.id for check in CHECKS}
    for one in made.findings:
        assert isinstance(one, Finding)
        assert one.needs or one.verdict in {Verdict.PASS, Verdict.FAIL}


@given(rigs())
def test_a_review_passes_only_where_every_finding_does(rig: Project) -> None:
    made = of(rig)
    passed = all(one.verdict is Verdict.PASS for one in made.findings)
    assert (made.verdict is Verdict.PASS) is passed
    if not passed:
        (left,) = (one for one in made.findings if one.key == tipping(rig).key)
        assert left == replace(tipping(rig), margins=left.margins)
