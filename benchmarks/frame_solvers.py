"""The overhanging beam in two general frame solvers: build, solve, read the fulcrum's reaction.

Both are development tools only; anastruct is under the GPL and is never shipped.
"""

from __future__ import annotations

import math
from collections.abc import Callable

from anastruct.fem.system import SystemElements
from Pynite import FEModel3D

OVERHANG, BACKSPAN, LOAD = 24.0, 168.0, 1000.0
MODULUS, INERTIA, AREA = 29e6, 29.1, 4.43
#: P (a + b) / b, pounds; statics.
REACTION = LOAD * (OVERHANG + BACKSPAN) / BACKSPAN
CLOSE = 1e-6


def anastruct_beam() -> Callable[[], float]:
    """The beam in anastruct."""

    def solve() -> float:
        beam = SystemElements(EA=MODULUS * AREA, EI=MODULUS * INERTIA)
        beam.add_element([[0.0, 0.0], [BACKSPAN, 0.0]])
        beam.add_element([[BACKSPAN, 0.0], [BACKSPAN + OVERHANG, 0.0]])
        beam.add_support_hinged(1)
        beam.add_support_roll(2)
        beam.point_load(3, Fy=-LOAD)
        beam.solve()
        return abs(float(beam.get_node_results_system(2)["Fy"]))

    return _checked(solve)


def pynite_beam() -> Callable[[], float]:
    """The beam in PyNite."""

    def solve() -> float:
        model = FEModel3D()
        for name, x in (("A", 0.0), ("B", BACKSPAN), ("C", BACKSPAN + OVERHANG)):
            model.add_node(name, x, 0, 0)
        model.add_material("steel", MODULUS, 11.2e6, 0.3, 0.000284)
        model.add_section("section", AREA, 9.32, INERTIA, 0.101)
        model.add_member("back", "A", "B", "steel", "section")
        model.add_member("over", "B", "C", "steel", "section")
        model.def_support("A", True, True, True, True, False, False)  # noqa: FBT003  # the solver's own signature
        model.def_support("B", False, True, True, True, False, False)  # noqa: FBT003  # the solver's own signature
        model.add_node_load("C", "FY", -LOAD)
        model.analyze_linear(check_stability=False)
        return float(model.nodes["B"].RxnFY["Combo 1"])

    return _checked(solve)


def _checked(solve: Callable[[], float]) -> Callable[[], float]:
    found = solve()
    if not math.isclose(found, REACTION, rel_tol=CLOSE):
        raise RuntimeError(f"the solver gives {found}, statics {REACTION}")
    return solve
