from backspan.drawings.geometry import corners, overlap
from backspan.drawings.placing import Label, Placer, label_size
from backspan.drawings.scene import Layer, Text
from backspan.drawings.spots import Spot, around, beside

AREA = (0.0, 0.0, 100.0, 60.0)
LABEL = Label(("SP1", "28 pieces"), 2.5)


def test_a_label_takes_the_cheapest_free_spot() -> None:
    placed = Placer(AREA).place(LABEL, (50.0, 30.0), (Spot((50.0, 30.0), 1, 0),))
    assert placed is not None
    assert placed.box[0] == 50.0
    assert placed.leader is None


def test_labels_at_one_point_do_not_overlap() -> None:
    placer = Placer(AREA)
    placed = [placer.place(LABEL, (50.0, 30.0)) for _ in range(4)]
    boxes = [corners(one.box) for one in placed if one is not None]
    assert len(boxes) == 4
    assert not any(overlap(a, b) for i, a in enumerate(boxes) for b in boxes[i + 1 :])


def test_a_label_that_stands_away_gets_a_leader() -> None:
    placer = Placer(AREA)
    placer.block(corners((40.0, 20.0, 60.0, 40.0)))
    placed = placer.place(LABEL, (50.0, 30.0))
    assert placed is not None
    assert placed.leader is not None
    assert placed.leader[1] == (50.0, 30.0)


def test_a_spot_can_have_its_own_end_of_the_leader() -> None:
    spot = Spot((70.0, 30.0), 1, 0, points_at=(60.0, 30.0))
    placed = Placer(AREA).place(LABEL, (10.0, 30.0), (spot,))
    assert placed is not None
    assert placed.leader is not None
    assert placed.leader[1] == (60.0, 30.0)


def test_a_label_moves_off_a_line() -> None:
    placer = Placer(AREA)
    placer.cross((((0.0, 30.0), (100.0, 30.0)),))
    spots = (Spot((50.0, 30.0), 0, 0), Spot((50.0, 35.0), 0, 1, 3.0))
    placed = placer.place(LABEL, (50.0, 30.0), spots)
    assert placed is not None
    assert placed.box[1] == 35.0


def test_a_heavy_line_pushes_further() -> None:
    spots = (Spot((50.0, 30.0), 0, 0), Spot((50.0, 35.0), 0, 1, 15.0))
    for weight, bottom_edge in ((1, False), (3, True)):
        placer = Placer(AREA)
        placer.cross((((50.0, 28.0), (50.0, 29.0)),), weight=weight)
        placed = placer.place(LABEL, (50.0, 30.0), spots)
        assert placed is not None
        assert (placed.box[1] == 35.0) is bottom_edge


def test_what_finds_no_room_is_counted_and_not_drawn() -> None:
    placer = Placer(AREA)
    placer.block(corners(AREA))
    assert placer.place(LABEL, (50.0, 30.0)) is None
    assert placer.unplaced == [LABEL]


def test_a_near_label_is_not_sent_across_the_sheet() -> None:
    placer = Placer((0.0, 0.0, 300.0, 200.0))
    rows = [4.0 * row + 2.0 for row in range(50)]
    placer.cross((((0.0, up), (38.0, up)) for up in rows), weight=5)
    assert placer.place(LABEL, (2.0, 100.0), near=True) is None
    assert placer.place(LABEL, (2.0, 100.0)) is not None


def test_settled_texts_keep_their_room() -> None:
    placer = Placer(AREA)
    text = Text(Layer.LABEL, (50.0, 30.0), "Reach", 2.5)
    placer.fix((text,))
    assert not placer.free(corners((52.0, 30.0, 54.0, 31.0)))
    assert not placer.free(corners((-1.0, 30.0, 5.0, 31.0)))
    assert placer.free(corners((10.0, 10.0, 20.0, 12.0)))


def test_spots_lie_around_or_on_one_side() -> None:
    assert {(spot.across, spot.up) for spot in around((0.0, 0.0))} >= {(1, 0), (-1, 0), (0, 1)}
    assert all(spot.at[0] > 0.0 for spot in beside((0.0, 0.0), side=(1.0, 0.0)))


def test_a_label_is_as_high_as_its_lines() -> None:
    one, two = Label(("a",), 2.5), Label(("a", "b"), 2.5)
    assert label_size(two)[1] - label_size(one)[1] > 2.5
