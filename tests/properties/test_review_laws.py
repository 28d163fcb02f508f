"""Laws of a review: units, order, tolerance and what is known decide nothing they should not."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import replace
from typing import Any

from hypothesis import given, settings
from hypothesis import strategies as st

from backspan.core.checks import CHECKS
from backspan.core.findings import Finding, InputUsed, Review, Verdict
from backspan.core.judgement.case import Place
from backspan.core.model.basis import Basis
from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.model.kit import BeamLabel, LabelState, PieceKind
from backspan.core.model.order import ordered
from backspan.core.model.project import Project
from backspan.core.model.rigs import (
    Fastening,
    Lifeline,
    OtherSupport,
    OtherSupportKind,
    Tieback,
)
from backspan.core.quantities import FORCE, LENGTH, MASS, Dimension, Style, parse
from backspan.core.review import review, review_findings
from backspan.core.review.run import roll_up
from tests.properties.rig_strategies import (
    COUNT,
    CREDITED,
    RANK,
    Key,
    all_findings,
    is_stacked,
    rigs,
    tipping,
    walked,
)
from tests.unit.core.rigs import (
    ARM,
    BEAM,
    EN,
    HOIST,
    LEFT,
    LIBRARY,
    NEW_ZEALAND,
    ON,
    OSHA,
    PIECE,
    QUEBEC,
    RIG,
    STACK,
    STAGE,
    at,
    case,
    count,
    length,
    mass,
    on_basis,
    put,
)

FEW = settings(max_examples=30)
HARMFUL = {check.id: check.harmful for check in CHECKS}
#: Loads that leave most findings a pass, so that there is something to lose.
HELD = st.floats(0.9, 1.0)

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


def of(project: Project) -> Review:
    """The findings of the project's one drop, rolled up."""
    return review_findings(case(project))


def without_text(record: Any) -> Any:
    """A record without what its values were written as."""
    if isinstance(record, StatedValue):
        return replace(record, text="")
    return walked(record, without_text)


@given(rigs(), st.data())
@settings(max_examples=20)
def test_units_of_input_change_neither_answer_nor_configuration(
    rig: Project, data: st.DataObject
) -> None:
    """Of the whole review: findings, comparison, envelopes and configuration code."""
    one = other = rig
    for place, dimension, low, high in WRITTEN:
        number = data.draw(st.integers(low, high))
        us, metric = (spell(number) for spell in SPELLINGS[dimension])
        stated = at(rig, place)
        one = put(one, place, replace(stated, value=parse(us, dimension), text=us))
        other = put(other, place, replace(stated, value=parse(metric, dimension), text=metric))
    assert without_text(one) == without_text(other)
    assert review(one, "D", LIBRARY, on=ON) == review(other, "D", LIBRARY, on=ON)


@given(rigs())
@FEW
def test_the_style_of_units_changes_only_the_steps_of_margins(rig: Project) -> None:
    """Every finding and the configuration code are the same in feet and in metres."""
    us, metric = (of(replace(rig, units=style)) for style in (Style.US, Style.METRIC))
    assert us.configuration == metric.configuration
    assert us.verdict is metric.verdict
    assert [replace(one, margins=()) for one in us.findings] == [
        replace(one, margins=()) for one in metric.findings
    ]
    assert us.not_applicable == metric.not_applicable


@given(rigs(), st.data())
@settings(max_examples=20)
def test_the_order_of_named_lists_changes_nothing(rig: Project, data: st.DataObject) -> None:
    """Of the whole review: every list of records with an id, and of the ids a stage hangs from."""

    def mixed(record: Any) -> Any:
        changed = walked(record, mixed)
        if isinstance(changed, tuple) and named(changed):
            return tuple(data.draw(st.permutations(changed)))
        return changed

    full = crowded(rig)
    stirred = mixed(full)
    hung = at(stirred, (*RIG, "stages", "ST"))
    stirred = put(stirred, (*RIG, "stages"), (replace(hung, from_points=hung.from_points[::-1]),))
    one, other = (review(ordered(rig), "D", LIBRARY, on=ON) for rig in (full, stirred))
    assert one == other


def named(items: tuple[Any, ...]) -> bool:
    """Whether a list holds records that are told apart by their id."""
    return bool(items) and all(hasattr(one, "id") for one in items)


def crowded(project: Project) -> Project:
    """The project with several of everything that has an id."""
    lines = tuple(Lifeline(name, "A1") for name in ("LL1", "LL2", "LL10"))
    ties = tuple(Tieback(name, "A1") for name in ("T1", "T2", "T10"))
    project = put(put(project, (*RIG, "lifelines"), lines), (*LEFT, "tiebacks"), ties)
    project = put(project, ("drops",), twice(project.drops))
    for place in (("hoists",), ("beams",), ("pieces",), ("stages",)):
        project = put(project, ("kit", *place), twice(at(project, ("kit", *place))))
    roof = project.site.roofs[0]
    roof = replace(roof, edges=twice(roof.edges), anchors=twice(roof.anchors))
    return put(project, ("site", "roofs"), twice((roof,)))


def twice(items: tuple[Any, ...]) -> tuple[Any, ...]:
    """The records, and each of them once more under another id."""
    return (*items, *(replace(one, id=f"{one.id}2") for one in items))


#: Inputs a finding can do without: what is not told of them is taken in the usual way.
MAY_BE_LEFT_OUT = {
    "centroid_from_tail",  # a beam of which no centroid is stated counts as uniform
    "tip_beyond_line",  # with a taped backspan a front end that nobody taped counts as none
}


def removed(project: Project, used: InputUsed) -> Project:
    """The project without an input: not stated, or, where it must be, stated by nobody."""
    place = used.place
    if used.name == "label_state":
        return put(project, place[:-1], None)
    if used.name == "support":
        return put(project, place, None)
    if used.name in {"stage", "from_points"}:
        return put(project, (*RIG, "stages"), ())
    if used.name == "piece_kind":
        for point in ("L", "R"):
            stack = (*RIG, "suspension_points", point, "counterweighted_beam", "stack")
            project = put(project, (*stack, "groups"), ())
        return project
    stated = at(project, place)
    assert isinstance(stated, StatedValue)
    if place[-1] in {"rated_load", "count"} or (
        place[:2] == ("kit", "pieces") and place[-1] == "mass"
    ):
        return put(project, place, replace(stated, evidence=None))
    return put(project, place, None)


@given(rigs(share=HELD))
@settings(max_examples=30)
def test_no_finding_stays_a_pass_without_an_input_it_lists(rig: Project) -> None:
    """Each input of each passing finding is removed by the place it names."""
    rig = on_basis(rig, OSHA, QUEBEC, *rig.basis.tipping)
    passing = {key: one for key, one in all_findings(rig).items() if one.verdict is Verdict.PASS}
    listed = {(used.name, used.place): used for one in passing.values() for used in one.inputs}
    for used in listed.values():
        if used.name == "centroid_from_tail" or (
            used.name == "tip_beyond_line" and not is_stacked(rig)
        ):
            assert used.name in MAY_BE_LEFT_OUT
            continue
        after = all_findings(removed(rig, used))
        for key, one in passing.items():
            if (used.name, used.place) in names_and_places(one.inputs):
                left = [other for found, other in after.items() if same_question(key, found)]
                assert not [other for other in left if other.verdict is Verdict.PASS], (key, used)


def names_and_places(inputs: Iterable[InputUsed]) -> set[tuple[str, Place]]:
    return {(one.name, one.place) for one in inputs}


def same_question(one: Key, other: Key) -> bool:
    """Whether two findings are of one check on one subject, about one rule."""
    check, subject, _, topic, rules = one
    return (check, subject, rules) == (other[0], other[1], other[4]) and (
        topic == other[3] or check == "tipping"
    )


@given(rigs())
@FEW
def test_a_rule_set_more_in_the_basis_never_improves_the_review(rig: Project) -> None:
    """Of the rolled-up answer: every rule set of the basis must be met."""
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
    ((*BEAM, "label"), BeamLabel(LabelState.READABLE)),
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
@settings(max_examples=60)
def test_whatever_is_missing_or_impossible_there_is_an_answer(
    rig: Project, changes: list[tuple[Place, Any]]
) -> None:
    """Every check is heard, the worst finding is the answer, what is open says what it needs."""
    for place, value in changes:
        try:
            rig = put(rig, place, value)
        except (AttributeError, LookupError, TypeError, ZeroDivisionError):
            continue  # an earlier change took away what this one would change
    made = review(rig, "D", LIBRARY, on=ON)
    assert made.verdict is roll_up(made.findings)
    heard = {one.check for one in made.findings} | {one.check for one in made.not_applicable}
    assert heard == {check.id for check in CHECKS}
    for one in made.findings:
        assert isinstance(one, Finding)
        assert one.needs or one.verdict in {Verdict.PASS, Verdict.FAIL}


@given(rigs())
@FEW
def test_a_review_passes_only_where_every_finding_does(rig: Project) -> None:
    """And the tipping finding is among them."""
    made = of(rig)
    passed = all(one.verdict is Verdict.PASS for one in made.findings)
    assert (made.verdict is Verdict.PASS) is passed
    if not passed:
        assert tipping(rig) in made.findings
