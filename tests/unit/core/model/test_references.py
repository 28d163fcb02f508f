from dataclasses import replace
from typing import Any

import pytest

from backspan.core.model.identifiers import did_you_mean, near
from backspan.core.model.people import Person
from backspan.core.model.project import Project
from backspan.core.model.references import name_problems, place_problems, problems
from backspan.core.model.rigs import Drop, Lifeline, Rig
from backspan.core.model.site import Edge
from backspan.core.model.stages import HungStage
from backspan.core.wire import from_data, to_data
from tests.unit.core.model.sample import project, stated

Path = tuple[str | int, ...]


def edited(path: Path, value: Any) -> Project:
    """The sample with one field replaced."""
    data = to_data(project())
    place = data
    for step in path[:-1]:
        place = place[step]
    place[path[-1]] = value
    return from_data(Project, data)


def with_rig(rig: Rig) -> Project:
    sample = project()
    first, second = sample.drops
    return replace(sample, drops=(first, replace(second, rig=rig)))


def sample_rig() -> Rig:
    rig = project().drops[1].rig
    assert rig is not None
    return rig


RIG = ("drops", 1, "rig")
POINT = (*RIG, "suspension_points", 1)
BEAM = (*POINT, "counterweighted_beam")

ABSENT = [
    ((*POINT, "hoist"), "hoist"),
    ((*POINT, "rope"), "rope"),
    ((*POINT, "termination"), "termination"),
    ((*BEAM, "beam"), "beam"),
    ((*BEAM, "stack", "groups", 1, "piece"), "piece"),
    ((*POINT, "tiebacks", 0, "anchor"), "anchor"),
    ((*POINT, "tiebacks", 0, "rope"), "rope"),
    ((*RIG, "lifelines", 0, "anchor"), "anchor"),
    ((*RIG, "lifelines", 0, "rope"), "rope"),
    ((*RIG, "lifelines", 0, "worker"), "person"),
    ((*RIG, "stages", 0, "stage"), "stage"),
    ((*RIG, "stages", 0, "from_points", 0), "suspension point"),
    ((*RIG, "values_from", "by"), "person"),
    ((*BEAM, "backspan", "by"), "person"),
    ((*BEAM, "backspan", "checked_by"), "person"),
    (("drops", 1, "roof"), "roof"),
    (("drops", 1, "edge"), "edge"),
    (("prepared_by",), "person"),
    (("confirmations", 0, "by"), "person"),
    (("kit", "hoists", 1, "values_from", "by"), "person"),
]


def test_a_sound_project_has_no_problems() -> None:
    assert problems(project()) == ()


@pytest.mark.parametrize(("path", "kind"), ABSENT)
def test_a_name_that_leads_nowhere_is_found_where_it_stands(path: Path, kind: str) -> None:
    (problem,) = problems(edited(path, "Q9"))
    assert problem.path == path
    assert problem.found == f"the {kind} 'Q9', which is not there"
    assert problem.looked_in


DOUBLED = [
    (("people", 1, "id"), "RB", ("people", 0)),
    (("drops", 1, "id"), "D10", ("drops", 0)),
    (("kit", "hoists", 1, "id"), "WEAK", ("kit", "hoists", 0)),
    (("kit", "units", 1, "id"), "W-2", ("kit", "units", 0)),
    (("kit", "pieces", 1, "id"), "SAND", ("kit", "pieces", 0)),
    (("site", "roofs", 0, "anchors", 1, "id"), "A10", ("site", "roofs", 0, "anchors", 0)),
    (("site", "roofs", 0, "edges", 1, "id"), "S", ("site", "roofs", 0, "edges", 0)),
    ((*POINT, "id"), "R", (*RIG, "suspension_points", 0)),
    ((*POINT, "tiebacks", 1, "id"), "T2", (*POINT, "tiebacks", 0)),
    ((*RIG, "lifelines", 1, "id"), "LL2", (*RIG, "lifelines", 0)),
]


@pytest.mark.parametrize(("path", "name", "first"), DOUBLED)
def test_an_id_used_twice_is_found_at_its_second_use(path: Path, name: str, first: Path) -> None:
    found = [one for one in problems(edited(path, name)) if one.path == path]
    assert [one.found for one in found] == [f"the id {name!r} a second time"]
    assert found[0].first == first


def test_an_obstacle_id_used_twice_on_a_roof_is_found() -> None:
    sample = project()
    roof = sample.site.roofs[0]
    twice = replace(roof, obstacles=roof.obstacles * 2)
    (problem,) = problems(replace(sample, site=replace(sample.site, roofs=(twice,))))
    assert problem.path == ("site", "roofs", 0, "obstacles", 1, "id")


def test_anchors_share_one_set_of_ids_across_roofs() -> None:
    sample = project()
    roof = sample.site.roofs[0]
    other = replace(roof, id="R2")
    found = problems(replace(sample, site=replace(sample.site, roofs=(roof, other))))
    doubled = [one.path for one in found]
    assert doubled == [("site", "roofs", 1, "anchors", index, "id") for index in range(3)]


def test_a_tieback_id_is_one_of_the_whole_rig_but_not_of_the_site() -> None:
    first, second = sample_rig().suspension_points
    doubled = with_rig(
        replace(
            sample_rig(),
            suspension_points=(replace(first, tiebacks=second.tied[:1]), second),
        )
    )
    (problem,) = problems(doubled)
    assert problem.path == (*POINT, "tiebacks", 0, "id")
    sample = project()
    again = replace(sample.drops[1], id="D3")
    assert problems(replace(sample, drops=(*sample.drops, again))) == ()


def test_what_a_rig_lacks_is_no_problem_of_the_file() -> None:
    first, second = sample_rig().suspension_points
    bare = replace(first, counterweighted_beam=None)
    twice = replace(
        sample_rig(),
        suspension_points=(bare, second),
        stages=(HungStage("ST-1", ("L",)), HungStage("ST-1", ("L",))),
    )
    for rig in (Rig(), twice):
        assert problems(with_rig(rig)) == ()


OUTSIDE = [
    (("drops", 0, "start"), -0.002, "a drop that starts"),
    (("drops", 0, "start"), 12.194, "a drop that ends at"),
    ((*POINT, "station"), 18.29, "a station at"),
    ((*POINT, "station"), -0.002, "a station at"),
    ((*RIG, "lifelines", 0, "station"), 18.29, "a station at"),
]


@pytest.mark.parametrize(("path", "value", "found"), OUTSIDE)
def test_a_place_outside_its_edge_is_found(path: Path, value: float, found: str) -> None:
    (problem,) = problems(edited(path, value))
    assert problem.found.startswith(found)
    assert "within edge S, which is " in problem.expected


@pytest.mark.parametrize(
    ("path", "value"),
    [(("drops", 0, "start"), -0.0009), (("drops", 0, "start"), 12.1929)]
    + [((*POINT, "station"), value) for value in (-0.0009, 18.2889)],
)
def test_a_millimetre_over_the_end_is_no_contradiction(path: Path, value: float) -> None:
    assert problems(edited(path, value)) == ()


def test_an_edge_without_length_is_found_and_its_drops_are_not_judged_by_it() -> None:
    sample = project()
    roof = sample.site.roofs[0]
    edges = (replace(roof.edges[0], end=roof.edges[0].start), roof.edges[1])
    site = replace(sample.site, roofs=(replace(roof, edges=edges),))
    (problem,) = place_problems(replace(sample, site=site))
    assert problem.path == ("site", "roofs", 0, "edges", 0, "end")


def test_a_slanting_edge_has_its_length_along_itself() -> None:
    sample = project()
    roof = replace(sample.site.roofs[0], edges=(Edge("S", (0.0, 0.0), (3.0, 4.0)),))
    drops = (Drop("D1", "ROOF", "S", 0.0, stated(5.0)), Drop("D2", "ROOF", "S", 0.0, stated(5.1)))
    slanting = replace(sample, site=replace(sample.site, roofs=(roof,)), drops=drops)
    assert [one.path for one in place_problems(slanting)] == [("drops", 1, "width")]


def test_order_changes_no_problem() -> None:
    sample = edited((*POINT, "hoist"), "Q9")
    turned = replace(sample, people=sample.people[::-1], drops=sample.drops[::-1])
    assert {one.found for one in name_problems(sample)} == {
        one.found for one in name_problems(turned)
    }


def test_names_are_looked_up_also_where_ids_could_not_be_read() -> None:
    nameless: Any = None
    sample = project()
    unread = Person(nameless, "X", "engineer")
    line = Lifeline("LL9", nameless)
    rig = replace(sample_rig(), lifelines=(line,))
    found = name_problems(replace(with_rig(rig), people=(*sample.people, unread)))
    assert found == ()


def test_advice_names_what_is_like_the_name_else_all_there_is() -> None:
    assert near("A-1", ["A1", "B7"], what="anchors") == "one of the anchors; did you mean A1?"
    assert near("a1", ["A1"], what="anchors") == "one of the anchors; did you mean A1?"
    assert near("Z", ["A2", "A1"], what="anchors") == "one of the anchors: A1, A2"
    assert near("Z", [], what="anchors") == "one of the anchors, of which there are none"
    assert near("Z", [f"A{n:02}" for n in range(20)], what="anchors").endswith("A11, ...")
    assert did_you_mean("zzz", ["reach"]) == ""
