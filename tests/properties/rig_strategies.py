"""Rigs drawn at random: both ways of knowing the backspan, several texts, beams that may harm."""

from __future__ import annotations

from collections import Counter, defaultdict
from dataclasses import replace

from hypothesis import strategies as st

from backspan.core.findings import Finding, FindingKey, Verdict
from backspan.core.model.basis import ReadingChoice, RuleChoice
from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.model.kit import Piece, PieceKind
from backspan.core.model.project import Project
from backspan.core.model.rigs import BackspanFrom, Fastening, PieceGroup
from backspan.core.model.units import Condition, Unit, UnitKind
from backspan.core.quantities import PRESSURE, Style
from backspan.core.sheet.case import Place
from tests.unit.core.rigs import (
    ARM,
    AUSTRALIA,
    BEAM,
    EN,
    HOIST,
    HONG_KONG,
    LEFT,
    NEW_ZEALAND,
    OSHA,
    PROJECT,
    QUEBEC,
    STACK,
    STAGE,
    answers,
    at,
    confirmed,
    count,
    force,
    labelled,
    length,
    mass,
    on_basis,
    put,
    seen,
    stated,
)

FACTOR = "tipping.working-load-limit"
CREDITED = replace(EN, readings=(ReadingChoice(FACTOR, "beam credited"),))
HONG_KONG_EVEN = replace(
    HONG_KONG, readings=(ReadingChoice("tipping.load-on-projecting-part", "even split"),)
)
TEXTS = (OSHA, EN, CREDITED, NEW_ZEALAND, AUSTRALIA, QUEBEC, HONG_KONG, HONG_KONG_EVEN)

#: The worst answer first.
RANK = {Verdict.FAIL: 0, Verdict.MISSING: 1, Verdict.REFER: 2, Verdict.PASS: 3}

#: How often each check gave each answer in the law that runs (conftest.py).
HEARD: defaultdict[str, Counter[Verdict]] = defaultdict(Counter)

COUNT = (*STACK, "groups", -1, "count")
TIE: Place = (*LEFT, "tiebacks", "TL")
ANCHOR: Place = ("site", "roofs", "ROOF", "anchors", "A1")


def inches(low: int, high: int) -> st.SearchStrategy[StatedValue[float]]:
    """Lengths in sixteenths of an inch, between two numbers of inches."""
    return st.integers(16 * low, 16 * high).map(lambda n: length(f"{n / 16} in"))


def pounds(low: int, high: int) -> st.SearchStrategy[str]:
    """Whole pounds."""
    return st.integers(low, high).map(lambda n: f"{n} lb")


SOUND = seen(Condition.SOUND)


def _pieces() -> tuple[Piece, ...]:
    plate = PieceKind.STEEL_PLATE
    return (
        Piece("P", "plate", plate, mass("55 lb"), length("3 in")),
        Piece("Q", "plate of 50 lb", plate, mass("50 lb"), length("4 in")),
        Piece("M", "bag of 25 kg", PieceKind.SAND, mass("25 kg"), length("40 mm")),
    )


def groups() -> st.SearchStrategy[tuple[PieceGroup, ...]]:
    """One or two groups of pieces, from the tail inwards; never the same kind twice."""
    one = st.builds(
        lambda number, per_row: (number, per_row), st.integers(1, 30), st.integers(1, 3)
    )
    kinds = st.lists(st.sampled_from(["P", "Q", "M"]), min_size=1, max_size=2, unique=True)
    return kinds.flatmap(
        lambda names: st.tuples(*[one] * len(names)).map(
            lambda drawn: tuple(
                PieceGroup(f"LOT-{name}", count(number), per_row)
                for name, (number, per_row) in zip(names, drawn, strict=True)
            )
        )
    )


@st.composite
def rigs(
    draw: st.DrawFn, *, texts: tuple[RuleChoice, ...] = TEXTS, stacked: bool | None = None
) -> Project:
    """A rig whose every value is known and well evidenced, against one text."""
    project = put(PROJECT, ("kit", "pieces"), _pieces())
    lots = (Unit(f"LOT-{one.id}", UnitKind.PIECE, one.id, condition=SOUND) for one in _pieces())
    project = put(project, ("kit", "units"), (*PROJECT.kit.units, *lots))
    label = draw(st.sampled_from([labelled(500, "8000 lb"), labelled(12, "600 lb")]))
    project = put(project, (*BEAM, "label"), label)
    fastening = draw(st.sampled_from([Fastening.LOCKED_PIN, Fastening.RESTING]))
    held = StatedValue(fastening, evidence=Evidence.MEASURED)
    project = put(project, (*STACK, "fastening"), held)
    project = put(project, (*BEAM, "length"), draw(inches(120, 300)))
    project = put(project, (*BEAM, "mass"), mass(draw(pounds(60, 400))))
    project = put(project, (*HOIST, "rated_load"), force(draw(pounds(500, 1500))))
    project = put(project, (*HOIST, "stall_load"), force(draw(pounds(600, 4500))))
    project = put(project, (*HOIST, "limiter_trip"), force(draw(pounds(600, 2000))))
    project = put(project, (*STAGE, "dead_mass"), mass(draw(pounds(300, 1200))))
    project = put(project, (*STAGE, "intended_load"), mass(draw(pounds(0, 900))))
    project = put(project, (*ARM, "reach"), draw(inches(6, 96)))
    project = put(project, (*ARM, "tip_beyond_line"), draw(inches(0, 12)))
    project = put(project, (*STACK, "tail_gap"), draw(inches(0, 24)))
    project = put(project, (*STACK, "groups"), draw(groups()))
    if draw(st.booleans()) if stacked is None else stacked:
        project = put(project, (*ARM, "backspan"), None)
        project = put(project, (*ARM, "backspan_from"), BackspanFrom.STACK)
    else:
        project = put(project, (*ARM, "backspan"), draw(inches(24, 240)))
        if draw(st.booleans()):  # else it is known both ways
            project = put(project, (*STACK, "tail_gap"), None)
    if draw(st.integers(0, 4)) == 0:
        project = put(project, (*BEAM, "centroid_from_tail"), draw(inches(60, 260)))
    project = put(project, (*ARM, "rear_stand"), draw(inches(36, 200)))
    strength = stated(f"{draw(st.integers(200, 6000))} psf", PRESSURE, Evidence.CERTIFICATE)
    for stand in ("fulcrum", "rear"):
        project = put(project, (*ARM, stand, "surface_strength"), strength)
    own = replace(at(PROJECT, ("kit", "ropes", "W")), id="T")
    own = replace(own, breaking_force=force(draw(pounds(6000, 12000))))
    project = put(project, ("kit", "ropes"), (*PROJECT.kit.ropes, own))
    project = put(project, (*TIE, "rope"), "T")
    # Straight behind the beam, or off to one side of it, in metres.
    x = draw(st.sampled_from([17.9832, 17.5, 14.0, 9.0]))
    project = put(project, (*ANCHOR, "at"), (x, draw(st.sampled_from([9.0, 12.0]))))
    project = put(project, (*ANCHOR, "ratings", 0, "load"), force(draw(pounds(2000, 9000))))
    project = replace(project, units=draw(st.sampled_from(list(Style))))
    return confirmed(on_basis(project, draw(st.sampled_from(texts))), EN, FACTOR)


def is_stacked(project: Project) -> bool:
    """Whether the backspan is worked out from the stack."""
    return bool(at(project, (*ARM, "backspan_from")) is BackspanFrom.STACK)


def tipping(project: Project) -> Finding:
    """The tipping finding of the left point."""
    (only,) = (
        one
        for one in answers(project, "tipping")
        if isinstance(one, Finding) and one.subject == "D/L"
    )
    return heard(only)


def contradicted(found: Finding) -> bool:
    """Whether only the longer of two backspans holds: measured again, it may be none."""
    return any(need.what.id == "need.two-backspans" for need in found.needs)


def holds(project: Project) -> bool:
    """Whether the left point passes against tipping."""
    return tipping(project).verdict is Verdict.PASS


def moved(project: Project, place: Place, by: float) -> Project:
    """The project with a stated value changed, and nothing else of it."""
    stated = at(project, place)
    return put(project, place, replace(stated, value=stated.value + by))


def stack_fits(project: Project) -> bool:
    """Whether the stack ends before the fulcrum; always so where the backspan was taped."""
    return all(
        one.verdict is Verdict.PASS
        for one in answers(project, "beam-length")
        if isinstance(one, Finding) and one.subject == "D/L" and is_stacked(project)
    )


def beam_fits(project: Project) -> bool:
    """Whether what stands on the left beam, or its taped backspan, is not beyond it."""
    return all(
        one.verdict is not Verdict.FAIL
        for one in answers(project, "beam-length")
        if isinstance(one, Finding) and one.subject == "D/L"
    )


def all_findings(project: Project, check: str) -> dict[FindingKey, Finding]:
    """Every finding of one check, by its key."""
    found = {one.key: one for one in answers(project, check) if isinstance(one, Finding)}
    for one in found.values():
        heard(one)
    return found


def heard(found: Finding) -> Finding:
    """The finding, noted for the law that asked for it."""
    HEARD[found.check][found.verdict] += 1
    return found
