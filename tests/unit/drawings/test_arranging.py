"""Many labels on one paper: they make way for one another, or are left out and counted."""

from backspan.drawings.arranging import Request, arrange
from backspan.drawings.geometry import corners, meet, overlap
from backspan.drawings.placing import Label, Placer, label_size
from backspan.drawings.scene import Point
from backspan.drawings.spots import Spot

AREA = (0.0, 0.0, 100.0, 60.0)
LABEL = Label(("SP1",), 2.5)


def only_here(placer: Placer, at: Point) -> None:
    """Leave no room on the paper but for one label at two places above one another."""
    width, height = label_size(LABEL)
    left, bottom, _, top = AREA
    placer.block(corners((left, bottom, at[0] - 1.0, top)))
    placer.block(corners((at[0] + width + 1.0, bottom, AREA[2], top)))
    placer.block(corners((at[0] - 1.0, bottom, at[0] + width + 1.0, at[1] - height / 2 - 1.0)))
    placer.block(corners((at[0] - 1.0, at[1] + height * 2.0, at[0] + width + 1.0, top)))


def test_a_label_makes_way_for_one_that_has_no_other_place() -> None:
    placer = Placer(AREA)
    at = (50.0, 30.0)
    only_here(placer, at)
    above = (at[0], at[1] + label_size(LABEL)[1] + 1.0)
    lower, upper = Spot(at, 1, 0), Spot(above, 1, 0, 1.0)
    first = Request(LABEL, at, (lower, upper), near=True)
    second = Request(LABEL, at, (lower,), near=True)
    placed = arrange(placer, (first, second))
    assert [None if one is None else one.box[1] > at[1] for one in placed] == [True, False]
    assert placer.unplaced == []


def test_what_would_stand_badly_is_left_out_and_counted() -> None:
    placer = Placer(AREA)
    placed = arrange(placer, [Request(LABEL, (50.0, 30.0)) for _ in range(80)])
    kept = [one for one in placed if one is not None]
    assert 3 < len(kept) < 80
    assert len(kept) + len(placer.unplaced) == 80
    boxes = [corners(one.box) for one in kept]
    assert not any(overlap(a, b) for i, a in enumerate(boxes) for b in boxes[i + 1 :])
    leaders = [one.leader for one in kept if one.leader is not None]
    assert not any(overlap(leader, box) for leader in leaders for box in boxes)


def test_leaders_to_different_things_do_not_meet() -> None:
    placer = Placer(AREA)
    targets = [(30.0 + 2.0 * at, 30.0) for at in range(20)]
    placed = arrange(placer, [Request(LABEL, target) for target in targets])
    leaders = [one.leader for one in placed if one is not None and one.leader is not None]
    assert len(leaders) >= 3
    assert not any(meet(a, b) for i, a in enumerate(leaders) for b in leaders[i + 1 :])


def test_another_wording_is_taken_where_the_first_finds_no_room() -> None:
    placer = Placer((0.0, 0.0, 30.0, 60.0))
    long = Label(("height not measured",), 2.5, others=(("height not", "measured"),))
    (placed,) = arrange(placer, (Request(long, (2.0, 30.0)),))
    assert placed is not None
    assert [text.text for text in placed.texts] == ["height not", "measured"]


def test_a_label_without_a_leader_gets_none() -> None:
    placer = Placer(AREA)
    placer.block(corners((40.0, 20.0, 60.0, 40.0)))
    (placed,) = arrange(placer, (Request(Label(("S",), 2.5, led=False), (50.0, 30.0)),))
    assert placed is not None
    assert placed.leader is None
