from dataclasses import replace

from backspan.core.model.order import id_order, ordered
from tests.unit.core.model.sample import project


def test_every_list_of_named_things_is_sorted_by_id() -> None:
    sample = ordered(project())
    rig = sample.drops[0].rig
    assert rig is not None
    assert [drop.id for drop in sample.drops] == ["D2", "D10"]
    assert [person.id for person in sample.people] == ["EL", "LE", "MT", "PE", "QP", "RA", "RB"]
    assert [hoist.id for hoist in sample.kit.hoists] == ["H", "WEAK"]
    assert [piece.id for piece in sample.kit.pieces] == ["P", "SAND"]
    assert [edge.id for edge in sample.site.roofs[0].edges] == ["E", "S"]
    assert [anchor.id for anchor in sample.site.roofs[0].anchors] == ["A1", "A2", "A10"]
    assert [point.id for point in rig.suspension_points] == ["L", "R"]
    assert [tieback.id for tieback in rig.suspension_points[0].tied] == ["T1", "T2"]
    assert [line.id for line in rig.lines] == ["LL1", "LL2"]


def test_lists_whose_order_means_something_stay() -> None:
    sample = project()
    after = ordered(sample)
    assert after.site.roofs[0].outline == sample.site.roofs[0].outline
    before, now = sample.drops[1].rig, after.drops[0].rig
    assert before is not None
    assert now is not None
    groups = [
        point.counterweighted_beam.stack.groups
        for rig in (before, now)
        for point in rig.suspension_points
        if point.counterweighted_beam
    ]
    kinds = [[group.piece for group in one] for one in groups]
    assert kinds == [["LOT"], ["LOT", "SAND"], ["LOT", "SAND"], ["LOT"]]


def test_what_is_in_order_is_left_as_it_is() -> None:
    sample = ordered(project())
    assert ordered(sample) is sample


def test_turning_the_lists_round_changes_nothing() -> None:
    sample = project()
    turned = replace(
        sample,
        drops=sample.drops[::-1],
        people=sample.people[::-1],
        kit=replace(sample.kit, hoists=sample.kit.hoists[::-1], pieces=sample.kit.pieces[::-1]),
    )
    assert ordered(turned) == ordered(sample)


def test_digits_in_an_id_count_as_numbers_and_equal_numbers_keep_one_order() -> None:
    names = ["D10", "D2", "D02", "10", "9", "D", "A-1-12", "A-1-3"]
    assert sorted(names, key=id_order) == [
        "9",
        "10",
        "A-1-3",
        "A-1-12",
        "D",
        "D02",
        "D2",
        "D10",
    ]
