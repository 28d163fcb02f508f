"""An independent frame solver (Pynite) on the same beam: reactions tell when it is about to tip.

A beam on two supports, fulcrum and tail, with a load outboard and the counterweight inboard at the
tail's support: the tail reaction is what is left of the counterweight. Where the factored load just
balances, nothing is left.
"""

from __future__ import annotations

import pytest
from Pynite import FEModel3D

from backspan.core.mechanics.beam_loading import backspan_bow, hogging_moment, tip_deflection
from backspan.core.mechanics.tipping import (
    required_counterweight,
    required_counterweight_with_beam,
    required_moment,
    resisting_moment,
    resisting_moment_with_beam,
)


def reactions(
    *, reach: float, backspan: float, load: float, beam_weight: float = 0.0, centroid: float = 0.0
) -> tuple[float, float]:
    """Upward reactions at fulcrum and tail; the beam's weight acts at its centroid, inboard."""
    model = FEModel3D()
    model.add_node("line", -reach, 0, 0)
    model.add_node("fulcrum", 0, 0, 0)
    model.add_node("tail", backspan, 0, 0)
    model.add_material("steel", 200e9, 77e9, 0.3, 7850)
    model.add_section("section", 4e-3, 1e-5, 1e-5, 1e-6)
    model.add_member("outboard", "line", "fulcrum", "steel", "section")
    model.add_member("inboard", "fulcrum", "tail", "steel", "section")
    model.def_support(
        "fulcrum",
        support_DX=True,
        support_DY=True,
        support_DZ=True,
        support_RX=True,
        support_RY=True,
    )
    model.def_support("tail", support_DY=True, support_DZ=True)
    model.add_node_load("line", "FY", -load)
    if beam_weight:
        if centroid >= 0.0:
            model.add_member_pt_load("inboard", "FY", -beam_weight, centroid)
        else:
            model.add_member_pt_load("outboard", "FY", -beam_weight, reach + centroid)
    model.analyze(check_statics=False)
    at = model.nodes
    return at["fulcrum"].RxnFY["Combo 1"], at["tail"].RxnFY["Combo 1"]


@pytest.mark.parametrize(
    ("reach", "backspan", "load", "factor"),
    [(0.5, 4.0, 4903.325, 4.0), (0.3048, 4.8768, 4448.2216, 4.0), (1.524, 3.0, 13344.66, 1.5)],
)
def test_the_counterweight_asked_for_is_the_uplift_at_the_tail(
    reach: float, backspan: float, load: float, factor: float
) -> None:
    fulcrum, tail = reactions(reach=reach, backspan=backspan, load=factor * load)
    required = required_moment(factor=factor, load=load, reach=reach).value
    weight = required_counterweight(required=required, backspan=backspan).value
    assert -tail == pytest.approx(weight, rel=1e-9)
    assert fulcrum == pytest.approx(factor * load + weight, rel=1e-9)
    held = resisting_moment(counterweight=weight, backspan=backspan).value
    assert held == pytest.approx(required, rel=1e-12)


@pytest.mark.parametrize("centroid", [1.75, 0.25, -0.4])
def test_the_beam_s_own_weight_helps_inboard_and_harms_outboard(centroid: float) -> None:
    _, tail = reactions(
        reach=0.5, backspan=4.0, load=3 * 4903.325, beam_weight=588.399, centroid=centroid
    )
    required = required_moment(factor=3.0, load=4903.325, reach=0.5).value
    weight = required_counterweight_with_beam(
        required=required,
        backspan=4.0,
        beam_weight=588.399,
        beam_centroid_inboard=centroid,
    ).value
    assert -tail == pytest.approx(weight, rel=1e-9)
    held = resisting_moment_with_beam(
        counterweight=weight,
        backspan=4.0,
        beam_weight=588.399,
        beam_centroid_inboard=centroid,
    ).value
    assert held == pytest.approx(required, rel=1e-12)


@pytest.mark.parametrize(("reach", "backspan", "load"), [(0.6, 3.5, 4448.0), (1.5, 4.2, 6672.0)])
def test_the_beam_bends_as_the_solver_says(reach: float, backspan: float, load: float) -> None:
    elastic, second = 200e9, 9.2e-6
    model = FEModel3D()
    for name, x in (("line", -reach), ("fulcrum", 0.0), ("tail", backspan)):
        model.add_node(name, x, 0, 0)
    model.add_material("steel", elastic, 77e9, 0.3, 7850)
    model.add_section("section", 4e-3, 1e-6, second, 1e-6)
    model.add_member("outboard", "line", "fulcrum", "steel", "section")
    model.add_member("inboard", "fulcrum", "tail", "steel", "section")
    model.def_support("fulcrum", support_DX=True, support_DY=True, support_DZ=True, support_RX=True)
    model.def_support("tail", support_DY=True, support_DZ=True)
    model.add_node_load("line", "FY", -load)
    model.analyze(check_statics=False)
    at = {
        "load": load,
        "reach": reach,
        "backspan": backspan,
        "elastic_constant": elastic,
        "second_moment": second,
    }
    down = -model.nodes["line"].DY["Combo 1"]
    assert tip_deflection(**at).value == pytest.approx(down, rel=1e-6)
    # The bow is largest at b / sqrt(3) from the tail; the solver's curve is asked just there.
    bow = model.members["inboard"].deflection("dy", backspan * (1 - 3**-0.5), "Combo 1")
    assert backspan_bow(**at).value == pytest.approx(abs(bow), rel=1e-6)
    hogs = hogging_moment(factor=1.0, load=load, reach=reach, own_outboard=0.0).value
    assert abs(model.members["inboard"].moment("Mz", 0.0, "Combo 1")) == pytest.approx(
        hogs, rel=1e-6
    )
