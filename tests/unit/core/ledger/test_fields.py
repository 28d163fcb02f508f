"""What may be stated of a rig or a unit; the fifteen things looked at before a ride."""

from __future__ import annotations

import datetime
from dataclasses import replace

import pytest

from backspan.core.findings import Verdict
from backspan.core.ledger.document import PlaceError, checked
from backspan.core.ledger.fields import Stateable, field_at, rig_fields, type_fields, unit_fields
from backspan.core.ledger.stop_list import (
    ROWS,
    Known,
    also_wanted,
    stop_list,
    wanted,
    wanting_topics,
)
from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.model.project import Project
from backspan.core.model.rigs import Found
from backspan.core.model.topics import Topic
from backspan.core.quantities import LENGTH
from backspan.core.review import review
from backspan.core.words import say_input
from tests.unit.core.rigs import LIBRARY, ON, PROJECT, put

RIG = ("drops", "D", "rig")
REACH = (*RIG, "suspension_points", "L", "counterweighted_beam", "reach")


def of(path: tuple[str, ...], project: Project = PROJECT) -> Stateable:
    """The value at a path."""
    return field_at(project, path)


def test_a_number_a_count_and_a_word_are_told_apart_by_the_types() -> None:
    reach = of(REACH)
    assert (reach.dimension, reach.words, reach.is_count) == (LENGTH, (), False)
    count = of((*REACH[:-1], "stack", "groups", "0", "count"))
    assert (count.is_count, count.name) == (True, "pieces")
    power = of((*RIG, "power"))
    assert power.words[:2] == ("there and sound", "defective")


def test_every_value_has_words_and_can_be_written_where_it_stands() -> None:
    fields = [*rig_fields(PROJECT, "D"), *(f for u in PROJECT.kit.units for f in unit_fields(u))]
    assert len({one.path for one in fields}) == len(fields) > 80
    for one in fields:
        assert say_input(one.name)
        value = one.words[0] if one.words else 1 if one.is_count else 0.3
        said = {"value": value, "tolerance": None, "evidence": "measured", "text": ""}
        blank = dict.fromkeys(("by", "at", "document", "checked_by", "planned"))
        assert checked(one.path, {**said, **blank})


def test_every_value_of_a_makers_plate_has_words_and_can_stand_there() -> None:
    kinds = ("hoists", "ropes", "beams", "pieces", "stages")
    types = [(kind, one) for kind in kinds for one in getattr(PROJECT.kit, kind)]
    plates = [one for kind, of in types for one in type_fields(of, kinds=kind)]
    assert len({one.path for one in plates}) == len(plates) > 15
    for one in plates:
        assert say_input(one.name)
        said = {"value": 1 if one.is_count else 0.3, "tolerance": None, "evidence": "label"}
        blank = dict.fromkeys(("by", "at", "document", "checked_by", "planned"))
        assert checked(one.path, {**said, **blank, "text": ""})


@pytest.mark.parametrize("path", [("site", "name"), (*RIG, "stages"), ("drops", "X", "rig"), ()])
def test_where_nothing_is_stated_there_is_no_value(path: tuple[str, ...]) -> None:
    with pytest.raises(PlaceError, match=r"no such drop|nothing is stated there"):
        of(path)


def verdicts(project: Project) -> dict[str, Verdict | None]:
    """The answer of each item."""
    found = review(project, "D", LIBRARY, on=ON, compared=False)
    return {one.id: one.verdict for one in stop_list(project, "D", found)}


def listed(project: Project) -> dict[str, tuple[bool, tuple[Known, ...]]]:
    """Whether each item is open, and how far its values are known."""
    found = review(project, "D", LIBRARY, on=ON, compared=False)
    return {
        one.id: (one.open, tuple(each.known for each in one.asked))
        for one in stop_list(project, "D", found)
    }


def test_the_sound_rig_has_fifteen_items_and_none_is_open() -> None:
    items = listed(PROJECT)
    assert list(items) == [row.id for row in ROWS]
    assert len(items) == 15
    assert [name for name, (is_open, _) in items.items() if is_open] == []
    assert set(verdicts(PROJECT).values()) == {Verdict.PASS, None}


def test_a_blank_is_open_and_a_planned_value_is_not_found() -> None:
    blank = listed(put(PROJECT, REACH, None))
    assert blank["reach"] == (True, (Known.BLANK, Known.FOUND))
    drawn = StatedValue(0.6, None, Evidence.DRAWING, "MT", "2026-11-25")
    assert listed(put(PROJECT, REACH, drawn))["reach"] == (True, (Known.PLANNED, Known.FOUND))


def test_what_was_found_bad_is_open_with_its_answer() -> None:
    said = StatedValue(Found.ABSENT, None, Evidence.MEASURED, "MT", "2026-11-25")
    bad = put(PROJECT, (*RIG, "power"), said)
    assert listed(bad)["power"] == (True, (Known.FOUND,))
    assert verdicts(bad)["power"] is Verdict.FAIL


def test_a_drop_without_a_rig_has_all_items_and_no_values() -> None:
    bare = replace(PROJECT, drops=(replace(PROJECT.drops[0], rig=None),))
    left = {name: found for name, found in listed(bare).items() if name != "papers"}
    assert set(left.values()) == {(True, ())}


def test_what_was_seen_too_long_ago_is_looked_at_again() -> None:
    later = ON + datetime.timedelta(days=2)
    found = review(PROJECT, "D", LIBRARY, on=later, compared=False)
    items = {one.id: one for one in stop_list(PROJECT, "D", found)}
    assert {one.known for one in items["pin"].asked} == {Known.AGAIN}
    assert items["pin"].open
    more = [one.value for one in also_wanted(PROJECT, "D", found)]
    listed_too = {each.value.path for one in items.values() for each in one.asked}
    assert {"condition", "pin", "thimble", "end_stop"} <= {one.field for one in more}
    assert not listed_too & {one.path for one in more}


def test_a_value_is_waited_for_by_the_topic_of_its_finding_the_first_of_several() -> None:
    found = review(PROJECT, "D", LIBRARY, on=ON + datetime.timedelta(days=2), compared=False)
    topics = wanting_topics(found)
    assert set(topics) == wanted(found)
    thimble = (*RIG, "suspension_points", "L", "thimble")
    assert topics[thimble] is Topic.LINE
    waiting = [
        (topic.topic, dict(need.what.values).get("place"))
        for topic in found.topics
        for at in topic.findings
        for need in found.findings[at].needs
    ]
    for path, topic in topics.items():
        assert next(one for one, place in waiting if place == "/".join(path)) is topic


def test_nothing_more_is_wanted_of_the_sound_rig() -> None:
    found = review(PROJECT, "D", LIBRARY, on=ON, compared=False)
    assert also_wanted(PROJECT, "D", found) == ()
