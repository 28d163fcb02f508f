"""Random supports against a second working of the tipping check in fractions.

Each support is drawn near what it holds: both ways of knowing the backspan, stacks of one to three
kinds of piece, beams that reach far out, up to five doubtful values. The program passes it exactly
where tests/exact_support.py finds it to hold at every end of the doubts, and fails it where not;
points drawn inside the doubts are never worse than the ends.
"""

from __future__ import annotations

import random
from collections import Counter
from dataclasses import replace
from fractions import Fraction

from backspan.core.findings import Verdict
from backspan.core.model.basis import ReadingChoice
from backspan.core.model.evidence import StatedValue
from backspan.core.model.kit import Piece, PieceKind
from backspan.core.model.project import Project
from backspan.core.model.rigs import BackspanFrom, PieceGroup
from backspan.core.rules.shape import BeamWeight, FactorOnLoad
from backspan.core.sheet.case import Place
from backspan.core.sheet.moments import factor_values
from tests.exact_support import Answer, Rule, Support, answer, ends_of, support_of
from tests.unit.core import rigs

ROUNDS = 20
SUPPORTS, LEAST_OF_EACH = 1000, 100
MOST_CORNERS, INSIDE = 256, 4

#: The program takes moments within 1e-9 of each other as equal, so it is not asked this near.
NEAR = Fraction(1, 10**8)

FACTOR = "tipping.working-load-limit"
CREDITED = replace(rigs.EN, readings=(ReadingChoice(FACTOR, "beam credited"),))
EVEN = ReadingChoice("tipping.load-on-projecting-part", "even split")
HONG_KONG = (rigs.HONG_KONG, replace(rigs.HONG_KONG, readings=(EVEN,)))
TEXTS = (rigs.OSHA, rigs.EN, CREDITED, rigs.NEW_ZEALAND, rigs.AUSTRALIA, *HONG_KONG)

#: Kinds of piece: least and most mass in kg, least and most length in mm, most pieces.
PLATES = ((18, 30, 30, 80, 30), (35, 60, 50, 100, 20))
BLOCKS = ((6, 14, 250, 600, 6), (10, 25, 120, 300, 10))

REACH, BACKSPAN = (*rigs.ARM, "reach"), (*rigs.ARM, "backspan")
TIP, GAP = (*rigs.ARM, "tip_beyond_line"), (*rigs.STACK, "tail_gap")
CENTROID, GROUPS = (*rigs.BEAM, "centroid_from_tail"), (*rigs.STACK, "groups")
PIECES: Place = ("kit", "pieces")
#: What may be doubtful besides the pieces; how much of itself.
PLACES: tuple[Place, ...] = (
    *(REACH, BACKSPAN, TIP, GAP, CENTROID, (*rigs.BEAM, "length"), (*rigs.BEAM, "mass")),
    *((*rigs.HOIST, "rated_load"), (*rigs.HOIST, "stall_load"), (*rigs.HOIST, "limiter_trip")),
    *((*rigs.LEFT, "rope_mass"), (*rigs.STAGE, "dead_mass"), (*rigs.STAGE, "intended_load")),
)
SHARES = (0.002, 0.01, 0.03, 0.1, 0.25)

Drawn = StatedValue[float] | StatedValue[int]


def one_round(number: int) -> dict[str, int]:
    """Draw and compare the supports of the seed `number`; AssertionError on the first mismatch."""
    draw = random.Random(f"supports-{number}")  # noqa: S311 - a draw anyone can repeat
    counts: Counter[str] = Counter()
    for index in range(SUPPORTS):
        project = support_drawn(draw)
        support, rules = support_of(project, "D", "L"), rules_of(project)
        expected = answer(support, rules, draw=draw, inside=INSIDE)
        near = abs(expected.margin) < NEAR
        found = rigs.finding(project, "tipping", "D/L").verdict
        wanted = Verdict.PASS if expected.margin > 0 else Verdict.FAIL
        if support.both and wanted is Verdict.FAIL:
            longer = answer(replace(support, both=False), rules, draw=draw, inside=0).margin
            wanted = Verdict.REFER if longer > 0 else Verdict.FAIL
            near = near or abs(longer) < NEAR
        if expected.inside is not None or not (near or found is wanted):
            told = described(support, rules, expected, found)
            raise AssertionError(f"supports-{number}, support {index}: {told}")
        counts["supports"] += 1
        counts["doubtful"] += expected.ends > 1
        counts["mixed stacks"] += len(support.beam.stack.groups) > 1
        counts["both backspans"] += support.both
        counts["own weight harms"] += expected.beam_harms
        counts["too near to call" if near else str(found)] += 1
    assert min(counts["pass"], counts["fail"]) >= LEAST_OF_EACH, f"one-sided: {dict(counts)}"
    return dict(counts)


def rules_of(project: Project) -> tuple[Rule, ...]:
    """The branches of the one text the project is held against."""
    (chosen,) = rigs.case(project).rules
    return tuple(
        Rule(rule.factor, str(rule.load), rule.beam_weight is BeamWeight.CREDITED)
        for value in factor_values(chosen)
        for rule in (value.content,)
        if isinstance(rule, FactorOnLoad)
    )


def described(support: Support, rules: tuple[Rule, ...], expected: Answer, found: Verdict) -> str:
    """The values and both answers of a support, to be worked out by hand."""
    at = expected.inside or expected.worst
    lines = [
        f"the program says {found}, the fractions a margin of {float(expected.margin)}; here are",
        "values inside the doubts worse than any end" if expected.inside else "the worst ends",
        f"{support.beam.backspan_from}; {[one.per_row for one in support.beam.stack.groups]} a row",
        *(
            f"{name} {value.value!r} ± {value.tolerance or 0!r} at {float(at[name])!r}"
            for name, value in support.stated()
            if value is not None
        ),
    ]
    for rule in rules:
        required, resisting = support.moments(at, rule)
        lines.append(f"{rule}: {float(required)} required, {float(resisting)} resisting")
    return "\n".join(lines)


def support_drawn(draw: random.Random) -> Project:
    """A project with one support, every value stated on good evidence, under one text."""
    alone = (rigs.at(rigs.PROJECT, rigs.LEFT),)
    project = with_stack(draw, rigs.put(rigs.PROJECT, (*rigs.RIG, "suspension_points"), alone))
    long = draw.randint(2500, 7500)
    values = {
        (*rigs.BEAM, "length"): rigs.length(f"{long} mm"),
        (*rigs.BEAM, "mass"): rigs.mass(f"{draw.randint(25, 200)} kg"),
        TIP: rigs.length(f"{draw.randint(0, 300)} mm"),
        GAP: rigs.length(f"{draw.randint(0, 500)} mm"),
        REACH: rigs.length("100.5 mm"),
        **loads_drawn(draw, draw.choice((900, 2500, 2500))),
    }
    stacked, both = draw.random() < 0.5, draw.random() < 0.3
    if stacked:
        project = rigs.put(project, (*rigs.ARM, "backspan_from"), BackspanFrom.STACK)
    values[BACKSPAN] = rigs.length(f"{draw.randint(600, long)} mm")
    if not both:
        values[BACKSPAN if stacked else GAP] = None
    if draw.random() < 0.25:
        values[CENTROID] = rigs.length(f"{draw.randint(long // 3, long * 4 // 5)} mm")
    for place, value in values.items():
        project = rigs.put(project, place, value)
    project = rigs.confirmed(rigs.on_basis(project, draw.choice(TEXTS)), rigs.EN, FACTOR)
    project = with_doubt(draw, project)
    if both:
        project = without_doubt(project, stacked=stacked)
    held = reach_held(draw, support_of(project, "D", "L"), rules_of(project))
    held *= draw.uniform(*draw.choice(((0.65, 1.25), (0.97, 1.03))))
    # Half millimetres: no beam is as long outboard as inboard but for the rounding of a float.
    reach = rigs.length(f"{int(max(50.0, 1000 * held))}.5 mm").value
    return rigs.put(project, (*REACH, "value"), reach)


def with_stack(draw: random.Random, project: Project) -> Project:
    """One to three groups of different pieces, from the tail inwards."""
    kinds = draw.choices(PLATES + BLOCKS, k=draw.randint(1, 3))
    if draw.random() < 0.5:
        kinds.sort(reverse=True, key=lambda kind: kind[3])  # blocks outside plates
    pieces, groups = [], []
    for name, (light, heavy, short, long, most) in zip("ABC", kinds, strict=False):
        mass = rigs.mass(f"{draw.randint(light, heavy)} kg")
        length = rigs.length(f"{draw.randint(short, long)} mm")
        pieces.append(Piece(name, f"piece {name}", PieceKind.STEEL_PLATE, mass, length))
        groups.append(PieceGroup(name, rigs.count(draw.randint(1, most)), draw.randint(1, 3)))
    return rigs.put(rigs.put(project, PIECES, tuple(pieces)), GROUPS, tuple(groups))


def loads_drawn(draw: random.Random, low: int) -> dict[Place, Drawn | None]:
    """What hangs, from `low` newtons up; little of it, and the reach that holds is long."""
    high = 3 * low
    rated = draw.randint(low, high)
    return {
        (*rigs.HOIST, "rated_load"): rigs.force(f"{rated} N"),
        (*rigs.HOIST, "stall_load"): rigs.force(f"{rated * draw.randint(11, 32) // 10} N"),
        (*rigs.HOIST, "limiter_trip"): rigs.force(f"{rated * draw.randint(10, 15) // 10} N"),
        (*rigs.LEFT, "rope_mass"): rigs.mass(f"{draw.randint(1, 40)} kg"),
        (*rigs.LEFT, "bottom_weight"): rigs.mass(f"{draw.randint(0, 20)} kg"),
        (*rigs.STAGE, "dead_mass"): rigs.mass(f"{draw.randint(low // 10, high // 10)} kg"),
        (*rigs.STAGE, "intended_load"): rigs.mass(f"{draw.randint(0, high // 20)} kg"),
    }


def reach_held(draw: random.Random, support: Support, rules: tuple[Rule, ...]) -> float:
    """About the longest reach that holds at a few ends of the doubts."""
    ends = {name: ends_of(one) for name, one in support.stated() if one is not None}
    corners = [{name: draw.choice(any_of) for name, any_of in ends.items()} for _ in range(8)]
    least, most = Fraction(0), Fraction(4)
    for _ in range(10):
        reach = (least + most) / 2
        tried = (support.moments({**at, "reach": reach}, rule) for at in corners for rule in rules)
        least, most = (reach, most) if all(one.spare >= 0 for one in tried) else (least, reach)
    return float(least)


def without_doubt(project: Project, *, stacked: bool) -> Project:
    """Known both ways: the one that is not asked for is looked at without a doubt of its own."""
    lengths = [(*PIECES, one.id, "length_on_beam") for one in rigs.at(project, PIECES)]
    stack: tuple[Place, ...] = (TIP, GAP, (*rigs.BEAM, "length"), *lengths)
    for place in (BACKSPAN,) if stacked else stack:
        project = rigs.put(project, (*place, "tolerance"), 0.0)
    return project


def with_doubt(draw: random.Random, project: Project) -> Project:
    """The project with up to five values in doubt, as long as their ends are not too many."""
    groups = rigs.at(project, GROUPS)
    places: list[Place] = [*PLACES, *((*GROUPS, n, "count") for n in range(len(groups)))]
    for one in groups:
        places += [(*PIECES, one.piece, "mass"), (*PIECES, one.piece, "length_on_beam")]
    corners = 1
    for place in draw.sample(places, draw.choice((0, 1, 2, 3, 3, 4, 5))):
        stated: Drawn | None = rigs.at(project, place)
        if stated is None:
            continue
        share = draw.choice(SHARES) * (6 if place in {TIP, GAP} else 1)  # more than all of it
        doubt = draw.randint(1, 3) if place[-1] == "count" else stated.value * share
        corners *= 2 * int(doubt) + 1 if place[-1] == "count" else 2
        if corners <= MOST_CORNERS:
            project = rigs.put(project, (*place, "tolerance"), doubt)
    return project
